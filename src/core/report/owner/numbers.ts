import { inches } from '../../../units/print.ts';
import { degreesF } from '../page-heat.ts';
import { areaWords } from '../words.ts';
import { standInTown } from './heat.ts';
import { keepsOldRoof, type Situation } from './situation.ts';
import { type OwnerStatement, say, standingOn, type Taker, takerOf } from './statement.ts';
import { deepest, fallWords, slopeAsked, slopeToday } from './today.ts';

/** One of the numbers that matter: today, and with the new roof; null = there is nothing to set beside it. */
export interface OwnerNumber {
  id: 'water' | 'level' | 'drains' | 'room' | 'sun' | 'slope' | 'thickness';
  title: string;
  today: OwnerStatement;
  next: OwnerStatement | null;
}

const MOST = 3;
/** Room that nobody has to think about. */
const PLENTY_IN = 6;

const isDry = ({ layout, plan }: Situation): boolean =>
  plan === 'taper' && layout !== null && layout.ponds.length + layout.flats.length === 0;

/** "None", standing on the layout that was proven. */
const none = ({ at }: Situation, take: Taker): OwnerStatement =>
  standingOn(say`none`, take.quote('answer-layouts', 'The layout', `${at}.title`));

function water(situation: Situation, take: Taker): OwnerNumber[] {
  const { today, assessment } = situation;
  const next = isDry(situation) ? none(situation, take) : null;
  if (today === 'stands' || today === 'may-stand')
    return [
      {
        id: 'water',
        title: today === 'stands' ? 'Standing water' : 'Water it can hold',
        today: say`${deepest(situation, take)} deep`,
        next,
      },
    ];
  if (today === 'seen') {
    const paths = assessment.plan.seenPonds.flatMap(({ depthIn }, i) =>
      depthIn === null ? [] : [`plan.seenPonds.${i}.depthIn`],
    );
    if (paths.length === 0) return [];
    const depth = take.figure('answer-water', 'Depth that was seen', 'greatest', paths, inches);
    return [{ id: 'water', title: 'Water that was seen', today: say`${depth} deep`, next }];
  }
  if (today === 'drains')
    return [
      {
        id: 'drains',
        title: 'Places where rain stays',
        today: standingOn(say`none found`, take.quote('answer-water', 'Verdict on the roof as it is', 'existing.why')),
        next,
      },
    ];
  if (today !== 'level-area') return [];
  const area = take.figure('answer-water', 'Level area', 'is', ['existing.undrainedAreaSqFt'], areaWords);
  return [{ id: 'level', title: 'Roof without slope', today: say`${area}`, next }];
}

const roomWords = (leftIn: number): string =>
  leftIn < -1 / 32 ? `${inches(-leftIn)} short` : `${inches(Math.max(0, leftIn))} left`;

/** The place with the least room under a door, a wall or the shingles. */
function room({ assessment, layout, at, plan }: Situation, take: Taker): OwnerNumber[] {
  const uses = layout === null || plan !== 'taper' ? [] : layout.budgets;
  const rows = assessment.budgets.flatMap(({ id, hardness, availableIn }, i) => {
    if (hardness !== 'stop' || availableIn === null) return [];
    const use = uses.findIndex((each) => each.id === id);
    return [{ i, use, leftIn: use < 0 ? availableIn : uses[use].leftIn }];
  });
  const tight = rows.sort((a, b) => a.leftIn - b.leftIn)[0];
  if (tight === undefined || tight.leftIn > PLENTY_IN) return [];
  const where = take.quote('answer-heights', 'Tightest place', `budgets.${tight.i}.where`);
  const before = take.figure(
    'answer-heights',
    'Height there before any board',
    'is',
    [`budgets.${tight.i}.availableIn`],
    roomWords,
  );
  const after = take.figure(
    'answer-heights',
    'Height left there',
    'is',
    [`${at}.budgets.${tight.use}.leftIn`],
    roomWords,
  );
  return [
    {
      id: 'room',
      title: `Room at the tightest place`,
      today: say`${before}: ${where}`,
      next: tight.use < 0 ? null : say`${after}`,
    },
  ];
}

function sun(situation: Situation, take: Taker): OwnerNumber[] {
  const { assessment, call } = situation;
  if (assessment.heat === undefined) return [];
  const of = (label: string, key: string) => take.figure('answer-heat', label, 'is', [`heat.figures.${key}`], degreesF);
  const next =
    assessment.heat.figures.peakSurfaceNewF === null
      ? null
      : say`about ${of('New surface at its hottest', 'peakSurfaceNewF')}`;
  const old = of('Old surface at its hottest', 'peakSurfaceOldF');
  const town = standInTown(situation);
  return [
    {
      id: 'sun',
      title: 'Surface on a hot clear day',
      today:
        call === 'off'
          ? say`the old roof is off`
          : town === null
            ? say`about ${old}`
            : say`about ${old}, by the weather of ${town}`,
      next,
    },
  ];
}

function slope({ assessment, layout, at, plan, today }: Situation, take: Taker): OwnerNumber[] {
  const fresh = take.figure(
    'answer-layouts',
    'Least slope of the new roof',
    'is',
    [`${at}.leastFaceSlopeInPerFt`],
    fallWords,
  );
  const next = plan === 'taper' && layout !== null && layout.leastFaceSlopeInPerFt !== null ? say`${fresh}` : null;
  const asked = slopeAsked(take);
  if (assessment.existing.leastFaceSlopeInPerFt === null)
    return [{ id: 'slope', title: 'Least slope', today: say`not measured; ${asked} is asked for`, next }];
  const old = slopeToday(take);
  const now = today === 'drains' || today === 'shallow' ? say`${old}, and ${asked} is asked for` : say`${old}`;
  return [{ id: 'slope', title: 'Least slope', today: now, next }];
}

function thickness({ layout, at, plan }: Situation, take: Taker): OwnerNumber[] {
  if (layout === null || plan !== 'taper') return [];
  const of = (label: string, key: string) => take.figure('answer-layouts', label, 'is', [`${at}.${key}`], inches);
  return [
    {
      id: 'thickness',
      title: 'Sloped boards',
      today: say`none`,
      next: say`${of('Thinnest board', 'leastThicknessIn')} to ${of('Thickest board', 'greatestThicknessIn')}`,
    },
  ];
}

/**
 * The three numbers that matter, by what was computed: water first, then the place with the least room, then the sun,
 * then slope and thickness; of a roof that drains its slope comes before room and sun. Where the old roof is kept,
 * nothing new stands beside them.
 */
export function ownerNumbers(situation: Situation): OwnerNumber[] {
  const take = takerOf(situation.assessment);
  const drains = situation.today === 'drains' || situation.today === 'shallow';
  const order = drains ? [water, slope, room, sun, thickness] : [water, room, sun, slope, thickness];
  const rows = order.flatMap((of) => of(situation, take)).slice(0, MOST);
  const nothingNew =
    keepsOldRoof(situation.call) || situation.plan === 'edge-first' || situation.plan === 'wishes-clash';
  return nothingNew ? rows.map((row) => ({ ...row, next: null })) : rows;
}

/** What the numbers stand for, where a new roof is not what is planned. */
export function numbersLead(situation: Situation): OwnerStatement | null {
  const { today, call, plan, layout, assessment } = situation;
  const answer = () => takerOf(assessment).quote('answer-scope', 'What to do with the old roof', 'scope.answer');
  const drains = today === 'drains' || today === 'shallow';
  if (keepsOldRoof(call))
    return standingOn(
      drains
        ? say`This roof drains, and nothing that was found asks for a new one. So only today’s numbers stand here.`
        : say`Nothing that was found asks for a new roof. So only today’s numbers stand here.`,
      answer(),
    );
  if (call !== 'open' || plan !== 'taper' || layout === null) return null;
  return standingOn(
    drains
      ? say`This roof drains. It is not settled whether it needs a new one; the numbers say what one would be.`
      : say`It is not settled yet whether it gets a new roof; the numbers say what one would be.`,
    answer(),
  );
}
