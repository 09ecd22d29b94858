import { heightIn, slopeInPerFt } from '../core/geometry/plane.ts';
import { between, centroid, direction, distanceFt, signedAreaSqFt } from '../core/geometry/vector.ts';
import type { Assessment, BoardPiece, Layout, Point } from '../core/report/types.ts';
import { inches } from '../units/print.ts';
import { type Contour, contourStepIn, contoursOf } from './contours.ts';
import { type DrawList, lettering, type Mark, polygon } from './draw-list.ts';
import { readingAngleDeg } from './edge-strings.ts';
import { flowMarks } from './flow-marks.ts';
import type { FreeRoom } from './free-room.ts';
import { creaseLines, lowestIn, newRoofFrame, planeArrows } from './new-roof.ts';
import type { Fill } from './pens.ts';
import { planFrame } from './plan-frame.ts';
import type { Cut } from './section-profile.ts';

/** Least distance between two lines, in letters. */
const APART_LETTERS = 1.3;
/** A line shorter than this carries no number. */
const LEAST_LETTERS = 3;
const MOST_NUMBERS = 3;

interface Heights {
  lowIn: number;
  highIn: number;
  stepIn: number;
}

function heightsOf(layout: Layout, letterFt: number): Heights {
  const lowIn = lowestIn(layout);
  const highIn = Math.max(...layout.facets.flatMap(({ outline, plane }) => outline.map((p) => heightIn(plane, p))));
  const steepest = Math.max(...layout.facets.map(({ plane }) => slopeInPerFt(plane)));
  return { lowIn, highIn, stepIn: contourStepIn(highIn - lowIn, steepest, APART_LETTERS * letterFt) };
}

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-9;

/** Every second line is heavy; the lines of half an inch are the fine ones between whole inches. */
const isHeavy = (heightIn_: number, stepIn: number): boolean => isWhole(heightIn_ / (2 * stepIn));

function contourMarks(contours: readonly Contour[], stepIn: number): Mark[] {
  const mark = ({ points, heightIn: z }: Contour): Mark => ({
    kind: 'polyline',
    points: [...points],
    pen: isHeavy(z, stepIn) ? 'contour-heavy' : 'contour',
  });
  return contours.map(mark);
}

/** The height on its line, in the middle of the longest straight parts; the long lines first. */
function contourNumbers(contours: readonly Contour[], letterFt: number, room: FreeRoom): Mark[] {
  const straights = contours.flatMap(({ heightIn: z, points }) =>
    points.slice(1).map((b, i) => ({ z, a: points[i], b, lengthFt: distanceFt(points[i], b) })),
  );
  const said = new Map<number, number>();
  return straights
    .filter(({ lengthFt }) => lengthFt > LEAST_LETTERS * letterFt)
    .sort((p, q) => q.lengthFt - p.lengthFt)
    .flatMap(({ z, a, b }) => {
      const times = said.get(z) ?? 0;
      if (times >= MOST_NUMBERS) return [];
      const angleDeg = readingAngleDeg(direction(a, b));
      const spots = [0.5, 0.3, 0.7, 0.15, 0.85].map((t) =>
        lettering(between(a, b, t), inches(z), { size: 'tiny', angleDeg }),
      );
      const placed = room.place(spots);
      said.set(z, times + placed.length);
      return placed;
    });
}

/** Greys of flat fill, thin to thick; lines and numbers stay readable on them. */
const fillGreys: readonly Fill[] = ['grey-1', 'grey-2', 'grey-3', 'grey-4', 'grey-5'];

interface Zone {
  fillIn: number;
  pieces: readonly BoardPiece[];
}

/** Where the boards lie on flat fill, one zone for each thickness of it. */
export function fillZones({ pieces }: Pick<Layout, 'pieces'>): Zone[] {
  const zones = new Map<string, BoardPiece[]>();
  for (const piece of pieces) {
    if (piece.fillIn < 1e-9 || piece.layer !== 0) continue;
    const key = piece.fillIn.toFixed(4);
    zones.set(key, [...(zones.get(key) ?? []), piece]);
  }
  return [...zones.values()].map((own) => ({ fillIn: own[0].fillIn, pieces: own })).sort((a, b) => a.fillIn - b.fillIn);
}

const MOST_FILL_WORDS = 3;
/** On a sheet of larger letters the words would hide the rows that they name. */
const MOST_LETTER_FT = 6;

function fillWords(zones: readonly Zone[], letterFt: number, room: FreeRoom): Mark[] {
  if (letterFt > MOST_LETTER_FT) return [];
  return zones.flatMap(({ fillIn, pieces }) => {
    const large = [...pieces].sort((a, b) => signedAreaSqFt(b.outline) - signedAreaSqFt(a.outline));
    const placed: Point[] = [];
    const out: Mark[] = [];
    for (const { outline } of large) {
      if (placed.length >= MOST_FILL_WORDS) break;
      const [x, y] = centroid(outline);
      if (placed.some((p) => distanceFt(p, [x, y]) < 12 * letterFt)) continue;
      const words = [0, 0.9, -0.9].map((by) =>
        lettering([x, y + by * letterFt], `fill ${inches(fillIn)}`, { size: 'tiny', tone: 'soft' }),
      );
      const found = room.place(words);
      if (found.length === 0) continue;
      placed.push([x, y]);
      out.push(...found);
    }
    return out;
  });
}

/** What the plan of heights shows, in words under it. */
export function heightsCaption(assessment: Assessment, layout: Layout): string {
  const { letterFt } = planFrame(assessment).sheet;
  const { stepIn } = heightsOf(layout, letterFt);
  const fill = fillZones(layout).length > 0 ? ' Grey is flat fill under the boards, darker where it is thicker.' : '';
  return `A line for every ${inches(stepIn)} above the lowest point of the new roof; water runs square to the lines.${fill}`;
}

function describe(assessment: Assessment, layout: Layout, { lowIn, highIn }: Heights): string {
  const fills = fillZones(layout).map(({ fillIn }) => inches(fillIn));
  return [
    `Plan of the heights of the new roof: ${layout.title}.`,
    `From its lowest to its highest point it rises ${inches(highIn - lowIn)}.`,
    heightsCaption(assessment, layout),
    fills.length === 0 ? '' : `Fill of ${fills.join(', ')}.`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** The finished surface by lines of equal height, with its valleys, ridges, falls, and the fill under the boards. */
export function planHeights(assessment: Assessment, layout: Layout, cuts: readonly Cut[] = []): DrawList | null {
  if (layout.facets.length === 0) return null;
  const { plan } = assessment;
  const { sheet, room, fixtures, rim } = newRoofFrame(assessment, layout, cuts);
  const { letterFt } = sheet;
  const heights = heightsOf(layout, letterFt);
  const contours = contoursOf(layout.facets, heights.lowIn, heights.highIn, heights.stepIn);
  const zones = fillZones(layout);
  const numbers = contourNumbers(contours, letterFt, room);
  const words = fillWords(zones, letterFt, room);
  const arrows = flowMarks(planeArrows(layout, letterFt), plan.outline, letterFt, room);
  return {
    title: 'Heights of the new roof',
    description: describe(assessment, layout, heights),
    box: sheet.box,
    letterFt,
    marks: [
      polygon(plan.outline, 'sheet'),
      ...zones.flatMap(({ pieces }, i) =>
        pieces.map(({ outline }) => polygon(outline, fillGreys[Math.min(i, fillGreys.length - 1)])),
      ),
      ...contourMarks(contours, heights.stepIn),
      ...creaseLines(layout.creases),
      ...arrows,
      ...fixtures,
      ...numbers,
      ...words,
      ...rim,
    ],
  };
}
