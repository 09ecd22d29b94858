import { type Attachment, attachments, exposedDeckLimit } from '../../../reference/membranes/limits.ts';
import { pondAcceptance } from '../../../reference/membranes/vetoes.ts';
import { situationWeights } from '../../../reference/membranes/weights.ts';
import { sourceNote } from '../finding.ts';
import type { Finding } from '../report/types.ts';
import { figure, listed } from '../safety/figure.ts';
import { fireWatchMin } from '../safety/fire-watch.ts';
import type { MembraneFacts } from './facts.ts';
import { sentenceStart } from './flip-words.ts';
import { isMembraneId, membraneOf, membranes } from './options.ts';
import { finishedSlope } from './slope.ts';
import { woodInReach } from './vetoes.ts';
import { type WeighedSituation, waterStays } from './weights.ts';

const practice = { source: 'practice', at: 'membrane choice', grade: 'practice' } as const;
const ways: readonly Attachment[] = attachments;

function note(id: string, level: Finding['level'], message: string, rest: Partial<Finding> = {}): Finding {
  return { id, level, where: 'membrane', message, value: null, limit: null, source: sourceNote(practice), ...rest };
}

function slopeNotes(facts: MembraneFacts): Finding[] {
  const slope = facts.leastSlopeInPerFt;
  if (slope === null) return [];
  const value = `${figure(slope, 3)} in per ft`;
  const standing = finishedSlope('modified-bitumen', slope, facts.reRoofException);
  if (standing === 'printed-percent')
    return [
      note(
        'slope-two-percent',
        'note',
        `The slope meets "2 percent" but is ${(0.25 - slope).toFixed(3)} short of 1/4 in per ft.`,
        {
          value,
          limit: '0.25 in per ft',
        },
      ),
    ];
  if (standing === 're-roof-exception')
    return [
      note(
        'slope-re-roof-exception',
        'note',
        'The slope stays below 1/4 in per ft. A replacement may do that where the roof drains within 48 hours; state the exception to the permit desk.',
        {
          value,
          limit: '0.25 in per ft',
          source: sourceNote({ source: 'iebc-2018', at: '705.1 exception 1', grade: 'found' }),
        },
      ),
    ];
  if (standing === 'too-flat')
    return [
      note(
        'slope-too-flat',
        'stop',
        'The finished roof is flatter than 1/4 in per ft and is not shown to drain: change the slope, not the covering.',
        {
          value,
          limit: '0.25 in per ft',
        },
      ),
    ];
  return [];
}

function temperatureNotes(facts: MembraneFacts): Finding[] {
  const work = facts.workTemperatureF;
  const named = (test: (way: Attachment) => boolean) => [
    ...new Set(ways.filter(test).map((way) => membraneOf(way.membrane).shortName)),
  ];
  if (work === null)
    return [
      note(
        'work-temperature-not-known',
        'note',
        "The temperature during the work is not known. Self-adhered and cold-adhesive sheet need 50 F and rising, adhered single-ply 40 F; check the maker's data before the date is set.",
      ),
    ];
  const cold = named((way) => way.leastWorkF !== null && work < way.leastWorkF);
  if (cold.length === 0) return [];
  return [
    note(
      'cold-application',
      'fix',
      `At ${figure(work, 0)} F these cannot be put on in the usual way: ${listed(cold)}. Wait for a warmer day, keep the rolls in a heated room for 24 hours, or use a sheet the maker rates for the cold. A torch is not the substitute for a cold day: changing the method means planning the job again.`,
      { value: `${figure(work, 0)} F`, limit: '50 F' },
    ),
  ];
}

function pondNotes(facts: MembraneFacts): Finding[] {
  const out: Finding[] = [];
  if (waterStays(facts))
    out.push(note('pond-acceptance', 'fix', pondAcceptance.why, { source: sourceNote(pondAcceptance) }));
  if (facts.base === 'old-covering' && (waterStays(facts) || facts.existing.ponds))
    out.push(
      note(
        'coating-on-pond',
        'stop',
        'A coating does not move water: the pond stays where it is. Give the roof slope or an outlet first.',
      ),
    );
  if (facts.base === 'old-covering' && facts.existing.wet === null)
    out.push(
      note(
        'moisture-not-known',
        'stop',
        'Nobody knows whether the old roof is dry. Cut a core at a low spot before anything is laid over it.',
      ),
    );
  return out;
}

function contactNotes(facts: MembraneFacts): Finding[] {
  const out: Finding[] = [];
  if (facts.grease)
    out.push(
      note(
        'grease',
        'fix',
        'Grease reaches the roof: fit a containment tray below the exhaust and empty it. PVC and KEE sheet resist grease best; no sheet is immune.',
      ),
    );
  if (facts.deck.undersideExposed !== false) {
    const thick = facts.deck.thicknessIn !== null && facts.deck.thicknessIn >= exposedDeckLimit.leastThicknessIn;
    out.push(
      thick
        ? note(
            'points-stay-inside',
            'fix',
            `Where the underside of the deck can be seen, the point of every screw stays ${exposedDeckLimit.pointCoverIn} in inside it; boards that are too uneven for that are adhered, as the list of materials says.`,
            { source: sourceNote(exposedDeckLimit) },
          )
        : note(
            'no-field-fasteners',
            'fix',
            'Where the underside of the deck can be seen, no screw or nail goes through it in the field: boards and sheet are adhered, the edge is fastened to its nailer.',
          ),
    );
  }
  return out;
}

/** Where an open flame is asked for: what that makes of the job. It is never a change of tool on the day. */
function askedFlameNotes(facts: MembraneFacts): Finding[] {
  const asked = membranes.find(({ id }) => id === facts.askedFor);
  if (!asked?.traits.includes('open-flame')) return [];
  const watchMin = fireWatchMin('torch');
  const out = [
    note(
      'hot-work-asked',
      'fix',
      `${sentenceStart(asked.shortName)} is hot work: a permit, extinguishers at hand, a fire watch of ${watchMin} minutes after the last flame, and the consent of the insurer and the owner. It may not take the place of another method on the day: plan, price and cautions are made again first.`,
      { value: 'open flame', limit: `${watchMin} min watch` },
    ),
  ];
  const wood = woodInReach(facts);
  if (wood !== null)
    out.push(
      note('combustible-deck', 'stop', `No torch here. ${wood} What burns below a flame shows only hours later.`, {
        source: sourceNote({ source: 'torch-guidance-2019', at: 'assemblies over wood decks', grade: 'found' }),
      }),
    );
  return out;
}

function weightNotes(weighed: WeighedSituation): Finding[] {
  const row = weighed.situations[0] ?? situationWeights[0];
  const out = [note('membrane-weights', 'note', weighed.why, { source: sourceNote(row) })];
  if (weighed.climateAssumed)
    out.push(
      note(
        'climate-not-known',
        'note',
        'The climate zone is not known: a roof in a cool place would count summer heat less. Give the town or the zone.',
      ),
    );
  return out;
}

/** What the facts of the job alone say about the covering, whatever wins. */
export function membraneNotes(facts: MembraneFacts, weighed: WeighedSituation): readonly Finding[] {
  const unread = facts.askedFor !== null && !isMembraneId(facts.askedFor);
  return [
    ...slopeNotes(facts),
    ...pondNotes(facts),
    ...temperatureNotes(facts),
    ...contactNotes(facts),
    ...askedFlameNotes(facts),
    ...weightNotes(weighed),
    ...(unread
      ? [
          note(
            'asked-membrane-unread',
            'note',
            `"${facts.askedFor}" is not an option here. Write one of: ${membranes.map((row) => row.id).join(', ')}.`,
          ),
        ]
      : []),
  ];
}
