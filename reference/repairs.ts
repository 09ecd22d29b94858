import type { FindingKind } from './findings.ts';
import type { Cited } from './sources.ts';

const practice = { source: 'practice', grade: 'practice' } as const;

/** Roll that seams are counted from where nobody measured: stated, not known. */
export const seamRoll = {
  widthFt: 10,
  lapFt: 0.25,
  ...practice,
  at: 'usual roll of single-ply sheet, lapped 3 in',
} as const satisfies Cited & Record<string, unknown>;

export interface RepairRow extends Cited {
  finding: FindingKind;
  /** What is done, as the crew reads it; `{patch}` is what this covering is patched with. */
  lines: readonly string[];
  /** Other words where the covering is of another kind altogether. */
  instead?: readonly { covering: string; lines: readonly string[] }[];
  /** The cure is often got wrong: it belongs in the answer itself. */
  oftenWrong: boolean;
}

export interface PatchWords extends Cited {
  covering: string;
  words: string;
}

/** What a covering is patched with where it is not sheet of the same kind; the maker has the last word. */
export const patchWords = [
  {
    covering: 'bur-gravel',
    words: 'plies of the same kind, the gravel swept off first',
    ...practice,
    at: 'patches of built-up roofs',
  },
  { covering: 'bur-smooth', words: 'plies of the same kind', ...practice, at: 'patches of built-up roofs' },
  { covering: 'coating', words: 'the same coating with fabric in it', ...practice, at: 'patches of coatings' },
  {
    covering: 'spray-foam',
    words: 'foam cut level, and the same coating on it',
    ...practice,
    at: 'patches of sprayed foam',
  },
  { covering: 'metal', words: 'metal of the same kind, sealed and riveted', ...practice, at: 'patches of metal' },
  { covering: 'other', words: 'what the covering’s maker names', ...practice, at: 'patches of other coverings' },
] as const satisfies readonly PatchWords[];

export const usualPatch = {
  words: 'sheet of the same kind',
  ...practice,
  at: 'patches of sheet',
} as const satisfies Cited & { words: string };

/** Repairs of local faults where the roof stays. The maker of the sheet has the last word on patches and primers. */
export const repairs = [
  {
    finding: 'wet-insulation',
    lines: [
      'Cut out the covering and what is wet down to the deck, 1 to 2 ft past the marked line, until board and deck are dry.',
      'Look at the deck: soft, split or rusted deck is replaced, and what carries is an engineer’s question.',
      'Fill up to the old level with dry board in layers, joints staggered, and close the same day with {patch}.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'wet part cut out where the roof stays',
  },
  {
    finding: 'leak-below',
    lines: [
      'Mark the stain from inside. From above look uphill of it: laps, pipes, curbs, walls, edge.',
      'Run water on one part after the other, from below upward, with somebody inside, until it shows; mend what lets it in.',
      'In cold weather it may be condensation: look again when it is mild and wet.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'looking for a leak',
  },
  {
    finding: 'bridging',
    lines: [
      'Cut the flashing free where it stands off, let the sheet lie back into the angle, and fasten it in the sheet along every wall and curb. Then flash anew.',
      'Patching seams does not cure this: the sheet goes on pulling.',
    ],
    oftenWrong: true,
    ...practice,
    at: 'securement of shrinking sheet at angles',
  },
  {
    finding: 'failed-weld',
    lines: [
      'Probe every foot of every seam with a blunt hook once it is cold; mark what opens.',
      'Clean the sheet, cut a test weld and pull it apart before going on, then weld a cover strip over every seam that opened.',
      'Seal every cut edge of reinforced sheet the same day.',
    ],
    oftenWrong: true,
    ...practice,
    at: 'repair of welded seams',
  },
  {
    finding: 'open-lap',
    lines: [
      'Press beside the lap: where it is soft, cut it open, take out what is wet and dry the place before it is closed.',
      'Clean and prime both faces, close the lap, and lay a strip of {patch} over it, well past its ends.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of laps',
  },
  {
    finding: 'cold-lap',
    lines: [
      'Pull at every lap of the same day’s work and mark what comes apart by hand.',
      'Clean the faces, bond the lap again over its whole width, and strip it with {patch}.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of laps',
  },
  {
    finding: 'blister',
    lines: [
      'Leave a whole blister alone, and keep feet and stock off it.',
      'Cut a broken one crosswise, dry it, bond the flaps down, and patch past the cuts on all sides.',
    ],
    instead: [
      {
        covering: 'spray-foam',
        lines: [
          'Cut the blister out to sound, dry foam. Fill it with foam, cut it level, and coat it again past the cut.',
        ],
      },
      { covering: 'metal', lines: ['Metal does not blister: find out what lies on it, and ask its maker.'] },
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of bitumen roofs',
  },
  {
    finding: 'split',
    lines: [
      'Find what moved below first: a joint of the deck or of the boards. Fasten that down.',
      'Lay a loose strip along the split so that it can move, and a patch of {patch} over it, past it on all sides.',
    ],
    instead: [
      {
        covering: 'spray-foam',
        lines: [
          'Cut the crack out to sound, dry foam. Fill it with foam, cut it level, and coat it again past the cut.',
        ],
      },
      {
        covering: 'metal',
        lines: [
          'Metal moves with heat: let the split move, with a plate and a sealant that stretches, as its maker says.',
        ],
      },
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of bitumen roofs',
  },
  {
    finding: 'puncture',
    lines: [
      'Press round the hole: where it is soft, cut out what is wet down to what is dry, and fill it level.',
      'Clean, prime, and patch with {patch}, round corners, past the hole on all sides.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of holes',
  },
  {
    finding: 'old-patch',
    lines: [
      'Look uphill of the patch for where the water enters.',
      'Cut off mastic and loose patches down to sheet that holds, press for soft places, and patch once with {patch}.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of old repairs',
  },
  {
    finding: 'failed-pipe-sealant',
    lines: [
      'Take the old collar and sealant off, press and probe the deck round the pipe.',
      'Set a new boot made for this covering, at least 8 in up, clamped and sealed at its top.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of penetrations',
  },
  {
    finding: 'exposed-fastener',
    lines: [
      'Take out what backs out; fasten beside it where the deck holds, after a pull test.',
      'Patch every hole with {patch}. No new screw through the sheet without a cover.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of fasteners',
  },
  {
    finding: 'bolted-through',
    lines: [
      'Ask whose it is, and move it to a wall or onto a curb or a weighted base.',
      'Close every hole as a hole in the sheet, from the deck up.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of penetrations',
  },
  {
    finding: 'loose-edge-metal',
    lines: [
      'Take the loose pieces off and look at the wood behind: soft wood is replaced first.',
      'Fasten the metal anew at its flange and its cleat, and strip its flange in with {patch}.',
    ],
    oftenWrong: false,
    ...practice,
    at: 'repair of edges',
  },
] as const satisfies readonly RepairRow[];
