import type { Point, Ring } from '../core/roof.ts';
import { parseMeasure } from '../units/parse-measure.ts';
import { compassPoint, feetInches, inches, plainNumber } from '../units/print.ts';
import type { Proposal } from '../units/reading.ts';
import { tidy } from '../units/tidy.ts';
import type { InputLog } from './problems.ts';
import { readAs } from './read-measures.ts';

/**
 * Closing error that a careful tape leaves and that is spread without a question: half an inch, or 1 part in 500 of
 * the perimeter. Common practice in tape surveys, from memory; no source.
 */
const CLOSES_WITHIN_FT = 0.5 / 12;
const CLOSES_WITHIN_SHARE = 1 / 500;
const EXACT_FT = 1e-6;
const LONGEST_WALK = 100_000;

interface Leg {
  lengthFt: number;
  /** Degrees counter-clockwise from the first side. */
  headingDeg: number;
  east: number;
  north: number;
}

interface Walked {
  legs: Leg[];
  /** Heading after the last step. */
  headingDeg: number;
  /** The text ends with a turn: the last side is left to be closed. */
  endsWithTurn: boolean;
}

const turnPattern = /^(?:(?:turn|go|bear) )*(?:(\S+(?: ?deg(?:rees?)?)?) )?(left|right)(?: turn)?(?: (?:by )?(.+))?$/;

/** Steps of a walk in order: commas, semicolons, new lines and "then" part them, and so does every turn. */
function steps(text: string): string[] {
  return tidy(text.replace(/\n/g, ', '))
    .replace(/ ?\b((?:turn )?(?:left|right))\b(?! \d+(?:\.\d+)?(?: ?deg(?:rees?)?)?(?: ?[,;]|$))/g, ', $1, ')
    .split(/(?<!\d),|,(?!\d{3}(?!\d))|;|\bthen\b/)
    .map((step) => step.trim())
    .filter((step) => step !== '');
}

function readTurn(step: string, log: InputLog, path: string): number | null {
  const parts = turnPattern.exec(step);
  if (!parts) return null;
  const angleText = parts[1] ?? parts[3];
  const angleDeg = angleText === undefined ? 90 : readAs(angleText, 'angle', path, log);
  if (angleDeg === null) return 0;
  return parts[2] === 'left' ? angleDeg : -angleDeg;
}

const beforeLength = /^(?:(?:and|go|walk|ahead|forward|straight) )+/;
const afterLength = / (?:ahead|forward|straight|along|to|past|by|on|beside|at|across|up|down)\b.*$/;

/** East and north of a heading; the quarter turns exactly, so that square roofs stay square. */
function unitVector(headingDeg: number): Point {
  const quarter = (((headingDeg / 90) % 4) + 4) % 4;
  if (Number.isInteger(quarter))
    return (
      [
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ] as const
    )[quarter];
  const angle = (headingDeg * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

function follow(text: string, path: string, log: InputLog): Walked | null {
  const walked: Walked = { legs: [], headingDeg: 0, endsWithTurn: false };
  const problemsBefore = log.problems.length;
  for (const step of steps(text)) {
    const turnDeg = readTurn(step, log, path);
    walked.endsWithTurn = turnDeg !== null;
    if (turnDeg !== null) {
      walked.headingDeg += turnDeg;
      continue;
    }
    const lengthText = step.replace(beforeLength, '').replace(afterLength, '');
    if (!/\d/.test(lengthText) && parseMeasure(lengthText, 'length').action === 'reject') {
      const instead = `lengths and turns: 30' ahead, left, 24', left, 30', left, 24'`;
      log.problem(path, 'walk', `"${step}" is neither a length nor a turn.`, { got: step, instead });
      continue;
    }
    const lengthFt = readAs(lengthText, 'length', path, log);
    if (lengthFt === null) continue;
    const [east, north] = unitVector(walked.headingDeg);
    walked.legs.push({ lengthFt, headingDeg: walked.headingDeg, east: east * lengthFt, north: north * lengthFt });
  }
  return log.problems.length > problemsBefore ? null : walked;
}

interface Gap {
  east: number;
  north: number;
  lengthFt: number;
  perimeterFt: number;
}

function gapOf(legs: readonly Leg[]): Gap {
  const east = legs.reduce((sum, leg) => sum + leg.east, 0);
  const north = legs.reduce((sum, leg) => sum + leg.north, 0);
  const perimeterFt = legs.reduce((sum, leg) => sum + leg.lengthFt, 0);
  return { east, north, lengthFt: Math.hypot(east, north), perimeterFt };
}

const closes = ({ lengthFt, perimeterFt }: Gap): boolean =>
  lengthFt <= Math.max(CLOSES_WITHIN_FT, perimeterFt * CLOSES_WITHIN_SHARE);

const partIn = ({ lengthFt, perimeterFt }: Gap): string =>
  `1 part in ${plainNumber(perimeterFt / lengthFt)} of the perimeter`;

/** The last side where the text ends with a turn that faces the start; null where it does not. */
function closingLeg(walked: Walked, path: string, log: InputLog): Leg | null {
  const gap = gapOf(walked.legs);
  const [east, north] = unitVector(walked.headingDeg);
  const lengthFt = -(gap.east * east + gap.north * north);
  if (!walked.endsWithTurn || lengthFt <= CLOSES_WITHIN_FT) return null;
  const leg = { lengthFt, headingDeg: walked.headingDeg, east: east * lengthFt, north: north * lengthFt };
  if (!closes(gapOf([...walked.legs, leg]))) return null;
  log.note(path, 'closing', `the last side was not given: ${feetInches(lengthFt)} closes the walk`, lengthFt);
  return leg;
}

/** Lengths that would close the walk if one leg alone were wrong. */
function legRepairs(legs: readonly Leg[], gap: Gap): Proposal[] {
  return legs.flatMap((leg, i) => {
    const [east, north] = unitVector(leg.headingDeg);
    const along = gap.east * east + gap.north * north;
    const aside = Math.abs(gap.east * north - gap.north * east);
    const lengthFt = leg.lengthFt - along;
    if (aside > CLOSES_WITHIN_FT || lengthFt <= CLOSES_WITHIN_FT) return [];
    return [
      {
        value: lengthFt,
        unit: 'ft',
        text: `${feetInches(lengthFt)} for leg ${i + 1} (${feetInches(leg.lengthFt)} is written)`,
      },
    ];
  });
}

/** The side that would close the walk after one more turn, where a square turn does it. */
function missingSide(walked: Walked, gap: Gap): Proposal[] {
  return [90, -90].flatMap((turnDeg) => {
    const [east, north] = unitVector(walked.headingDeg + turnDeg);
    const lengthFt = -(gap.east * east + gap.north * north);
    const aside = Math.abs(gap.east * north - gap.north * east);
    const backOverTheFirst = east < -0.999;
    if (backOverTheFirst || aside > CLOSES_WITHIN_FT || lengthFt <= CLOSES_WITHIN_FT) return [];
    return [
      {
        value: lengthFt,
        unit: 'ft',
        text: `${turnDeg > 0 ? 'left' : 'right'}, ${feetInches(lengthFt)} as one more side at the end`,
      },
    ];
  });
}

function reportGap(walked: Walked, gap: Gap, path: string, log: InputLog): void {
  const bearing = (Math.atan2(gap.east, gap.north) * 180) / Math.PI;
  const where = `${plainNumber(gap.lengthFt * 12, 2)} in ${compassPoint(bearing)} of its start, the first side counted as running east`;
  log.problem(path, 'does-not-close', `the walk does not close: it ends ${where} (${partIn(gap)}).`, {
    got: `${plainNumber(gap.lengthFt * 12, 2)} in`,
    instead: `the leg that was read wrong, or one that was left out; up to ${inches(CLOSES_WITHIN_FT * 12)} or 1 part in 500 is spread over the sides`,
    proposals: [...legRepairs(walked.legs, gap), ...missingSide(walked, gap)],
  });
}

/** Without the last digits that turns of 45 degrees leave: 1e-15 ft is 0. */
const onGrid = (valueFt: number): number => Math.round(valueFt * 1e9) / 1e9 + 0;

/**
 * Corners of a walked perimeter, starting at (0, 0) with the first side running east.
 * A gap within the tolerance is spread over the sides in proportion to their east and north parts, which keeps
 * square corners square (the transit rule of surveying).
 */
export function ringOfWalk(text: string, path: string, log: InputLog): Ring | null {
  if (text.length > LONGEST_WALK) {
    log.problem(path, 'too-large', 'the walk is too long to be one perimeter.', { instead: 'a list of corners' });
    return null;
  }
  const walked = follow(text, path, log);
  if (walked === null) return null;
  if (walked.legs.length === 0) {
    log.problem(path, 'walk', 'the walk has no sides.', { instead: `30' ahead, left, 24', left, 30', left, 24'` });
    return null;
  }
  const last = closingLeg(walked, path, log);
  const legs = last ? [...walked.legs, last] : walked.legs;
  const gap = gapOf(legs);
  if (!closes(gap)) {
    reportGap(walked, gap, path, log);
    return null;
  }
  if (gap.lengthFt > EXACT_FT) {
    const message = `the walk closes to ${plainNumber(gap.lengthFt * 12, 2)} in (${partIn(gap)}); the gap is spread over the sides`;
    log.note(path, 'closing', message, gap.lengthFt * 12);
  }
  const eastSum = legs.reduce((sum, leg) => sum + Math.abs(leg.east), 0) || 1;
  const northSum = legs.reduce((sum, leg) => sum + Math.abs(leg.north), 0) || 1;
  let at: Point = [0, 0];
  const corners: Point[] = [];
  for (const leg of legs) {
    corners.push([onGrid(at[0]), onGrid(at[1])]);
    const east = leg.east - (gap.east * Math.abs(leg.east)) / eastSum;
    const north = leg.north - (gap.north * Math.abs(leg.north)) / northSum;
    at = [at[0] + east, at[1] + north];
  }
  return corners;
}
