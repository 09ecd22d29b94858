import { feetInches } from '../../units/print.ts';
import { direction, distanceFt, dot, toSegment } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import { spotKey } from '../site/readings.ts';
import type { BaseLine } from './base-line.ts';
import type { Spot } from './survey.ts';

/** A side that a tape can be laid along, with its words. */
interface TapeLine {
  start: Point;
  end: Point;
  lengthFt: number;
  /** "the gutter side from mark 1 toward mark 3". */
  words: string;
  /** "where the rake meets the gutter side": its first corner. */
  corner: string;
}

/** Names of the sides by their edges: "gutter side", or "rake and wall" where a side has several. */
function sideNames(outline: Ring, edges: readonly SiteEdge[]): string[] {
  const kinds = outline.map(() => new Set<string>());
  for (const { edge, what } of edges) kinds[edge.side].add(what);
  return kinds.map((names) => [...names].join(' and '));
}

function tapeLines(spots: readonly Spot[], outline: Ring, edges: readonly SiteEdge[]): TapeLine[] {
  const names = sideNames(outline, edges);
  const numbers = new Map(spots.flatMap(({ kind, at }, i) => (kind === 'corner' ? [[spotKey(at), i + 1]] : [])));
  const markAt = (corner: Point): string => {
    const number = numbers.get(spotKey(corner));
    // A corner that a curb covers has no mark.
    return number === undefined ? 'the corner under the curb' : `mark ${number}`;
  };
  return outline.map((start, side) => {
    const end = outline[(side + 1) % outline.length];
    const words = `the ${names[side]} from ${markAt(start)} toward ${markAt(end)}`;
    const corner = `where the ${names[(side + outline.length - 1) % outline.length]} meets the ${names[side]}`;
    return { start, end, lengthFt: distanceFt(start, end), words, corner };
  });
}

const onto = ({ start, end }: TapeLine, p: Point): number =>
  dot([p[0] - start[0], p[1] - start[1]], direction(start, end));

/** Square off the base line where the spot lies beside it, else off the nearest side that it lies beside. */
function lineFor(p: Point, lines: readonly TapeLine[], base: BaseLine): TapeLine | null {
  const beside = (line: TapeLine): boolean => {
    const ft = onto(line, p);
    return ft > -1e-6 && ft < line.lengthFt + 1e-6;
  };
  if (beside(lines[base.side])) return lines[base.side];
  const awayFt = (line: TapeLine): number => toSegment(p, line.start, line.end).distanceFt;
  return lines.filter(beside).sort((a, b) => awayFt(a) - awayFt(b))[0] ?? null;
}

function placeInWords({ at, on, kind }: Spot, lines: readonly TapeLine[], base: BaseLine): string {
  if (on !== null) {
    if (kind === 'corner') return lines[on.side].corner;
    return `${feetInches(on.alongFt)} along ${lines[on.side].words}`;
  }
  const line = lineFor(at, lines, base);
  if (line === null) return `${feetInches(at[0])} east, ${feetInches(at[1])} north of the plan’s origin`;
  const inFt = toSegment(at, line.start, line.end).distanceFt;
  return `${feetInches(onto(line, at))} along ${line.words}, then ${feetInches(inFt)} straight in`;
}

/** How each spot is found with a tape, in the order of the spots: corners have the numbers that the words name. */
export function placesInWords(
  spots: readonly Spot[],
  outline: Ring,
  edges: readonly SiteEdge[],
  base: BaseLine,
): string[] {
  const lines = tapeLines(spots, outline, edges);
  return spots.map((spot) => placeInWords(spot, lines, base));
}
