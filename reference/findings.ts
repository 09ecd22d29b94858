import type { Cited } from './sources.ts';

/**
 * What a finding bears on when it is decided what to do with the roof. `local`: can be put right where it is. `surface`:
 * the top is worn, nothing is said of what lies below. `stain`: water stood here. `bare`: the top is gone. `pond`: water
 * stays. `inside`: water has been below the covering. `deck`: the deck itself gives. `edge-wood`: wood of the eave is
 * rotten, which says nothing of the deck behind it. `wet` and `dry`: the insulation was looked at. `off`: the old roof has
 * been taken off. `none`: decides nothing.
 */
export type FindingBearing =
  | 'local'
  | 'surface'
  | 'stain'
  | 'bare'
  | 'pond'
  | 'inside'
  | 'deck'
  | 'edge-wood'
  | 'wet'
  | 'dry'
  | 'off'
  | 'none';

export interface FindingKindRow extends Cited {
  kind: string;
  /** As it stands in a list to choose from. */
  title: string;
  bears: FindingBearing;
  /** What it tells. */
  tells: string;
  /** What it does not tell, so that nobody decides on it alone. */
  tellsNot: string;
  /** Other words that people write for it. */
  also: readonly string[];
}

const practice = { source: 'practice', grade: 'practice' } as const;

/**
 * What an inspection notes. Nearly all of it is common practice: no document was found that grades these signs. Two are
 * read in a document (rot and moisture of wood, seams of rubber sheet). The share of resistance at which insulation counts
 * as wet is from memory and is shown so.
 */
export const findingKinds = [
  {
    kind: 'ponding',
    title: 'Water that stands',
    bears: 'pond',
    tells:
      'The roof does not drain here. Every inch of water weighs 5.2 pounds on each square foot, and feeds every leak below it.',
    tellsNot: 'Whether it is gone 48 hours after rain: look again then, and measure its depth.',
    also: ['pond', 'standing water', 'puddle'],
    ...practice,
    at: 'inspection of low-slope roofs',
  },
  {
    kind: 'pond-stain',
    title: 'Ring of dirt where water stood',
    bears: 'stain',
    tells: 'Water has stood here, as far as the ring reaches.',
    tellsNot: 'How deep, how long, and whether anything below is wet.',
    also: ['pond stains', 'water mark', 'dirt ring'],
    ...practice,
    at: 'inspection of low-slope roofs',
  },
  {
    kind: 'granule-loss',
    title: 'Granules lost',
    bears: 'surface',
    tells: 'The sheet has lost its shade from the sun and ages faster from here on.',
    tellsNot: 'Whether it leaks, and whether anything below is wet.',
    also: ['granules gone', 'bald spots'],
    ...practice,
    at: 'inspection of bitumen sheet',
  },
  {
    kind: 'bare-reinforcement',
    title: 'Bare reinforcement',
    bears: 'bare',
    tells: 'The bitumen above the mat is gone: the sheet is at the end of its service here.',
    tellsNot: 'Whether what lies below is wet: a core shows that.',
    also: ['exposed mat', 'exposed fleece', 'bare mat'],
    ...practice,
    at: 'inspection of bitumen sheet',
  },
  {
    kind: 'alligatoring',
    title: 'Alligatoring (a net of cracks in the bitumen)',
    bears: 'surface',
    tells: 'The top coat has dried out in the sun and cracked.',
    tellsNot:
      'How deep the cracks go, whether plies below are sound, and whether insulation is wet. Cores or a scan do.',
    also: ['alligator cracking', 'cracked coating', 'mud cracking'],
    ...practice,
    at: 'inspection of built-up roofs',
  },
  {
    kind: 'worn-coating',
    title: 'Coating worn or peeling',
    bears: 'surface',
    tells: 'The coat no longer shields what lies under it.',
    tellsNot: 'Whether the roof under it is dry and would hold another coat: test the bond.',
    also: ['chalking', 'peeling coating'],
    ...practice,
    at: 'inspection of coatings',
  },
  {
    kind: 'open-lap',
    title: 'Open lap',
    bears: 'local',
    tells: 'Water can run in between two sheets here.',
    tellsNot: 'How far it has run: look below, or cut a core at the low side.',
    also: ['open seam', 'lifted lap'],
    ...practice,
    at: 'inspection of seams',
  },
  {
    kind: 'cold-lap',
    title: 'Shiny lap (cold lap)',
    bears: 'local',
    tells: 'The lap was never fused: its faces are still smooth and come apart by hand.',
    tellsNot: 'Whether the others hold: pull at every lap of the same day’s work.',
    also: ['shiny laps', 'unbonded lap'],
    ...practice,
    at: 'inspection of seams',
  },
  {
    kind: 'failed-weld',
    title: 'Weld that opens under the probe',
    bears: 'local',
    tells: 'The seam was welded too cold, too hot or dirty. It is a fault of the work, not of the sheet’s age.',
    tellsNot: 'How many others are like it: probe every foot of every seam once it is cold.',
    also: ['failed welds', 'bad welds', 'weld voids', 'cold weld'],
    ...practice,
    at: 'probing of welded seams',
  },
  {
    kind: 'blister',
    title: 'Blister',
    bears: 'local',
    tells: 'Air or moisture was shut in between plies, or under the sheet.',
    tellsNot: 'Whether it leaks: a whole blister is left alone, a broken one is cut and patched.',
    also: ['bubble'],
    ...practice,
    at: 'inspection of bitumen roofs',
  },
  {
    kind: 'split',
    title: 'Split',
    bears: 'local',
    tells: 'Something below has moved, or the sheet has shrunk: a patch without a cause comes apart again.',
    tellsNot: 'What moved: look for a joint of the deck or of the boards under it.',
    also: ['tear', 'crack', 'ridge crack'],
    ...practice,
    at: 'inspection of bitumen roofs',
  },
  {
    kind: 'puncture',
    title: 'Hole or cut',
    bears: 'local',
    tells: 'Water runs in here.',
    tellsNot: 'Since when: press beside it, and cut a core where it is soft.',
    also: ['hole', 'cut'],
    ...practice,
    at: 'inspection of low-slope roofs',
  },
  {
    kind: 'old-patch',
    title: 'Patches and mastic over old repairs',
    bears: 'local',
    tells: 'Somebody has chased a leak here before.',
    tellsNot: 'Whether it was found. Water often enters uphill of the patch.',
    also: ['patches', 'mastic', 'tar patch', 'old repair'],
    ...practice,
    at: 'inspection of low-slope roofs',
  },
  {
    kind: 'failed-pipe-sealant',
    title: 'Failed sealant at a pipe',
    bears: 'local',
    tells: 'The collar lets water down along the pipe.',
    tellsNot: 'Whether the deck round the pipe is sound: press and probe it.',
    also: ['failed sealant', 'pipe boot', 'cracked sealant'],
    ...practice,
    at: 'inspection of penetrations',
  },
  {
    kind: 'exposed-fastener',
    title: 'Fasteners that show or back out',
    bears: 'local',
    tells: 'Every one is a hole; one that backs out cuts the sheet above it.',
    tellsNot: 'Whether the deck still holds a screw: that takes a pull test.',
    also: ['exposed nails', 'backed-out screw', 'nail pops'],
    ...practice,
    at: 'inspection of low-slope roofs',
  },
  {
    kind: 'bolted-through',
    title: 'Something bolted through the roof (cables, dishes)',
    bears: 'local',
    tells: 'Holes without a flashing.',
    tellsNot: 'Who owns it and whether it is still in use: ask before it is taken down.',
    also: ['satellite dish', 'cables', 'bracket'],
    ...practice,
    at: 'inspection of penetrations',
  },
  {
    kind: 'bridging',
    title: 'Flashing pulled off its wall (bridging)',
    bears: 'local',
    tells:
      'The sheet has shrunk and pulls at the angle: it was never fastened there, or has come loose. The cure is to fasten it along every wall and curb.',
    tellsNot: 'Nothing about water that stands, and patching the seams does not cure it: the pull stays.',
    also: ['tented flashing', 'shrinkage', 'pulled flashing'],
    source: 'epdm-army-survey',
    at: 'seams and flashings as the main trouble of rubber sheet',
    grade: 'found',
  },
  {
    kind: 'loose-edge-metal',
    title: 'Loose edge metal',
    bears: 'local',
    tells: 'Wind gets under the edge, where it pulls hardest, and rain behind the fascia.',
    tellsNot: 'Whether the wood behind it still holds a nail: lift a piece and probe.',
    also: ['loose drip edge', 'loose coping'],
    ...practice,
    at: 'inspection of edges',
  },
  {
    kind: 'soft-deck',
    title: 'Deck that gives underfoot',
    bears: 'deck',
    tells: 'The deck below is wet, rotten or has come apart. Stay off it.',
    tellsNot: 'How far it reaches. Where it is of wood: decay begins at 25 to 30 % water, and early decay looks sound.',
    also: ['soft spot', 'spongy deck', 'rotten deck', 'rotten sheathing'],
    source: 'mo-312',
    at: 'moisture at which wood decays',
    grade: 'found',
  },
  {
    kind: 'stained-eave',
    title: 'Stained eave or soffit',
    bears: 'inside',
    tells: 'Water gets behind the edge.',
    tellsNot: 'Whether the wood is still sound: colour misleads, an awl does not.',
    also: ['stained soffit', 'peeling fascia paint'],
    source: 'mo-312',
    at: 'early decay looks sound',
    grade: 'found',
  },
  {
    kind: 'rotten-eave',
    title: 'Rotten eave',
    bears: 'edge-wood',
    tells: 'The edge of the deck and what carries the gutter are gone here.',
    tellsNot: 'How far it runs on behind the metal: known when the old edge is off.',
    also: ['rot at the eave', 'rotted eave', 'rotten edge'],
    source: 'mo-312',
    at: 'moisture at which wood decays',
    grade: 'found',
  },
  {
    kind: 'rotten-fascia',
    title: 'Rotten fascia',
    bears: 'edge-wood',
    tells: 'The board behind the gutter no longer holds it.',
    tellsNot: 'Whether rafter tails and deck behind it are sound.',
    also: ['rotted fascia', 'soft fascia'],
    source: 'mo-312',
    at: 'moisture at which wood decays',
    grade: 'found',
  },
  {
    kind: 'rotten-rafter-tails',
    title: 'Rotten rafter tails',
    bears: 'edge-wood',
    tells: 'What carries the eave is losing its strength: a carpenter looks before anybody leans on it.',
    tellsNot: 'How far up the rafter it goes: probe to sound wood.',
    also: ['rotten rafter', 'rotted tails'],
    source: 'mo-312',
    at: 'moisture at which wood decays',
    grade: 'found',
  },
  {
    kind: 'wet-insulation',
    title: 'Wet insulation',
    bears: 'wet',
    tells:
      'It no longer insulates (below 80 % of its resistance it counts as wet) and dries in years, not weeks: it is taken out, never covered.',
    tellsNot: 'How far it reaches, unless a scan drew its outline and a core proved it.',
    also: ['wet board', 'soaked insulation', 'wet core'],
    source: 'memory',
    at: 'thermal resistance ratio of 80 % as the mark of wet insulation',
    grade: 'memory',
  },
  {
    kind: 'dry-insulation',
    title: 'Insulation found dry',
    bears: 'dry',
    tells: 'Here the roof may be kept, as far as moisture goes.',
    tellsNot: 'Anything of other places, where it was one core; a scan speaks for the whole section.',
    also: ['dry core', 'dry'],
    ...practice,
    at: 'cores and scans',
  },
  {
    kind: 'leak-below',
    title: 'Leak or stain below',
    bears: 'inside',
    tells: 'Water has come through. It is rarely straight above the stain.',
    tellsNot: 'Whether it still does, and whether it is a leak at all: in cold weather it may be condensation.',
    also: ['stained ceiling', 'leak', 'ceiling stain', 'drip inside'],
    ...practice,
    at: 'inspection from below',
  },
  {
    kind: 'deck-stripped',
    title: 'Deck taken off to the joists',
    bears: 'off',
    tells: 'Fall can be built into the new deck.',
    tellsNot: 'Whether the joists are straight: string them.',
    also: ['bare joists', 'stripped to the joists'],
    ...practice,
    at: 'state of the work',
  },
  {
    kind: 'other',
    title: 'Something else (say it in the note)',
    bears: 'none',
    tells: 'What the note says.',
    tellsNot: 'Nothing is decided by it here.',
    also: ['else', 'misc'],
    ...practice,
    at: 'note of the inspection',
  },
] as const satisfies readonly FindingKindRow[];

export type FindingKind = (typeof findingKinds)[number]['kind'];
