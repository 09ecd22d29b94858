import { slopeInWords } from '../../units/print.ts';
import {
  cricketSlopes,
  fourWay,
  pyramid,
  type SlopePattern,
  slopedValley,
  twoWayWithCrickets,
} from '../taper/pattern.ts';

/**
 * A form of taper about every outlet, at any slope of its fields. Heights of one shape grow with the slope alone, so one
 * surface tells those at every slope.
 */
export interface TaperShape {
  id: string;
  /** Quarter turns that make a difference. */
  turnsDeg: readonly number[];
  patternAt(slopeInPerFt: number, turnDeg: number): SlopePattern;
  /** Slopes of boards it takes, times the slope of the fields. */
  boardShares: readonly number[];
  /** Least slope of valleys, times the slope of the fields. */
  valleyShare: number;
  title(slopeInPerFt: number): string;
  why: string;
  /** Tried on roofs with many outlets too. */
  forMany: boolean;
}

export const fourWayShape: TaperShape = {
  id: 'four-way',
  turnsDeg: [0],
  patternAt: fourWay,
  boardShares: [1],
  valleyShare: Math.SQRT1_2,
  title: (slope) => `boards at ${slopeInWords(slope)}`,
  why: 'Four planes to each outlet: one sort of board and valleys that fall well.',
  forMany: true,
};

/** Boards of a cricket over those of its field: the trade's double, never flatter in its face than the field. */
const CRICKET_BOARDS = 2;

function cricketShape(lengthToWidth: number): TaperShape {
  const widthToLength = 1 / lengthToWidth;
  const shapeAt = (fieldInPerFt: number) => ({
    fieldInPerFt,
    boardInPerFt: CRICKET_BOARDS * fieldInPerFt,
    widthToLength,
  });
  const { valleyInPerFt } = cricketSlopes(shapeAt(1));
  return {
    id: `crickets-${String(lengthToWidth).replace('.', '-')}`,
    turnsDeg: [0, 90],
    patternAt: (slope, turn) => twoWayWithCrickets(shapeAt(slope), turn),
    boardShares: [1, CRICKET_BOARDS],
    valleyShare: valleyInPerFt,
    title: (slope) =>
      `two fields at ${slopeInWords(slope)} with crickets, width to length 1:${lengthToWidth}, of boards at ${slopeInWords(CRICKET_BOARDS * slope)}`,
    why: 'Two fields and crickets between the outlets: less board than four planes, for flatter valleys and more cutting.',
    forMany: lengthToWidth === 1.5 || lengthToWidth === 2,
  };
}

const slopedValleyShape: TaperShape = {
  id: 'sloped-valley',
  turnsDeg: [0, 90],
  patternAt: (slope, turn) => slopedValley(slope / 2, slope, turn),
  boardShares: [0.5, 1],
  valleyShare: 0.5,
  title: (slope) => `two fields at ${slopeInWords(slope)} on a valley that falls ${slopeInWords(slope / 2)} itself`,
  why: 'Two layers of boards laid square to each other: no mitre in the field, for two slopes of board.',
  forMany: false,
};

const pyramidShape: TaperShape = {
  id: 'pyramid',
  turnsDeg: [0, 90],
  patternAt: (slope, turn) => pyramid(slope, 2 * slope, turn),
  boardShares: [1, 2],
  valleyShare: 2 / Math.sqrt(5),
  title: (slope) => `long planes at ${slopeInWords(slope)}, short ones at ${slopeInWords(2 * slope)}`,
  why: 'Steeper planes on the short sides keep the walls level in height, with steeper valleys.',
  forMany: false,
};

/** Every shape that is tried, the plainest first. */
export const shapes: readonly TaperShape[] = [
  fourWayShape,
  cricketShape(1),
  cricketShape(1.5),
  cricketShape(2),
  cricketShape(3),
  slopedValleyShape,
  pyramidShape,
];
