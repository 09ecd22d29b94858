import { AnswerReader } from './six-answers/answer-reader.ts';
import type { AnswersRead, SixAnswers } from './six-answers/answers.ts';
import { belowChoices, lowestKindChoices, pondLastsChoices, pondPlaceChoices } from './six-answers/choices.ts';
import { type Place, readEdges, readOutlets, type Size, sideOrder } from './six-answers/leaves.ts';
import { readCurb, readLowestOnSide } from './six-answers/lowest.ts';

export {
  type AnswersRead,
  blankAnswers,
  type SixAnswers,
  type Supposed,
  type Understood,
} from './six-answers/answers.ts';

function readSize(read: AnswerReader): Size | null {
  const sizes = (['lengthText', 'depthText'] as const).map((field) => {
    const value = read.measure(1, field, 'length');
    if (value !== null && value > 0) return value;
    if (read.problems.some(({ path }) => path === field)) return null;
    const what = field === 'lengthText' ? 'the length along the low side' : 'the depth from the low side to the back';
    read.problem(1, field, 'missing', `${what} is needed before anything can be drawn.`, {
      got: read.answers[field],
      instead: `a guess will do: "about 30 ft" (pace it off at 2 1/2 ft a step, or hold a tape at the fascia)`,
    });
    return null;
  });
  return sizes[0] === null || sizes[1] === null ? null : [sizes[0], sizes[1]];
}

/** Where a pond is drawn: shares of the length and of the depth. */
const pondPlaces: Readonly<Record<string, Place>> = {
  middle: [0.5, 0.5],
  'low-side': [0.5, 0.1],
  'back-side': [0.5, 0.9],
  'left-side': [0.1, 0.5],
  'right-side': [0.9, 0.5],
  'low-left': [0.1, 0.1],
  'low-right': [0.9, 0.1],
  'back-left': [0.1, 0.9],
  'back-right': [0.9, 0.9],
};

const AFTER_TWO_DAYS_H = 48;

function readPonds(read: AnswerReader, [lengthFt, depthFt]: Size): object {
  const { pondWhere, pondLasts } = read.answers;
  read.say(3, 'pondWhere', pondPlaceChoices[pondWhere]);
  const depthIn = read.measure(3, 'pondDepthText', 'thickness');
  const stands = (depthIn ?? 0) > 0 || pondLasts === 'two-days';
  if (pondWhere === 'none' && stands)
    read.problem(3, 'pondWhere', 'conflict', 'it says that no water stands, and how deep or how long it stands.', {
      got: pondPlaceChoices.none,
      instead: 'the place where it stands, or "not known"; where none stands leave the depth empty',
    });
  if (pondWhere === 'none') return { seenDryAfter48h: true };
  const share = pondPlaces[pondWhere];
  if (!share && !stands && pondLasts === 'unknown') return {};
  read.say(3, 'pondLasts', pondLastsChoices[pondLasts]);
  const hoursAfterRain = pondLasts === 'two-days' ? AFTER_TWO_DAYS_H : null;
  // Water that was seen somewhere counts, also where nobody remembers the place.
  const at = share ? [share[0] * lengthFt, share[1] * depthFt] : null;
  const seen = at === null && !stands ? [] : [{ at, depthIn, hoursAfterRain }];
  return {
    ...(seen.length === 0 ? {} : { seenPonds: seen }),
    ...(pondLasts === 'gone' ? { seenDryAfter48h: true } : {}),
  };
}

function readBelow(read: AnswerReader): string | null {
  const { below, deckSeen } = read.answers;
  read.say(5, 'below', belowChoices[below]);
  if (below === 'unknown') return null;
  if (below !== 'living') return below;
  if (deckSeen !== 'unknown') return deckSeen === 'yes' ? 'living-exposed-deck' : 'living-ceiling';
  const text = 'the deck is taken as the ceiling of the room below: no screw may come through it';
  read.suppose(5, 'deckSeen', text, 'a look at the ceiling from inside');
  return 'living-exposed-deck';
}

/**
 * A roof file from the six first answers; every one of them may be "not known", except that length and depth need at
 * least a guess. Give `file` to `parseRoofObject`. Beside each answer stands what was understood; what had to be put
 * in without an answer is listed under `supposed` with the cheapest way to find out.
 */
export function roofFromAnswers(answers: SixAnswers): AnswersRead {
  const read = new AnswerReader(answers);
  read.checkChoices();
  const { understood, supposed, problems } = read;
  if (problems.length > 0) return { file: null, understood, supposed, problems };
  const size = readSize(read);
  // The other answers are read even without a size, so that all problems come at once.
  const usable: Size = size ?? [1, 1];
  const edges = readEdges(read);
  const outlets = readOutlets(read, edges, usable);
  const drain = (outlets[0] as { at?: Place } | undefined)?.at ?? null;
  const ponds = readPonds(read, usable);
  const { lowestKind } = answers;
  const heightIn = read.measure(4, 'lowestHeightText', 'height');
  const curbs = lowestKind === 'curb' ? [readCurb(read, usable, drain, heightIn)] : [];
  if (lowestKind === 'none' || lowestKind === 'unknown') read.say(4, 'lowestKind', lowestKindChoices[lowestKind]);
  else if (lowestKind !== 'curb') readLowestOnSide(read, edges, heightIn);
  const below = readBelow(read);
  const town = answers.town.trim();
  read.say(6, 'town', town === '' ? 'not known' : town);
  if (problems.length > 0) return { file: null, understood, supposed, problems };
  const [lengthFt, depthFt] = usable;
  const file = {
    version: 1,
    label: answers.label.trim() || 'Flat section',
    place: { city: town || null },
    building: { below },
    outline: [
      [0, 0],
      [lengthFt, 0],
      [lengthFt, depthFt],
      [0, depthFt],
    ],
    edges: sideOrder.map((place) => edges[place]).filter((edge) => edge !== null),
    curbs,
    outlets,
    existing: { readOn: 'covering', ...ponds },
  };
  return { file, understood, supposed, problems };
}
