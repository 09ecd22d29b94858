import type { Box } from '../core/geometry/vector.ts';
import type { Point, Ring } from '../core/report/types.ts';
import { ADVANCE, type Fill, type LetterSize, letters, type Pen, type Tone } from './pens.ts';

/** What is drawn, in feet, x east and y north, back to front. A printer turns it into SVG, PDF or DXF. */
export type Mark = {
  /** Key of the thing shown ("pond-1"), by which a page marks what its text speaks of. */
  place?: string;
} & (
  | { kind: 'line'; from: Point; to: Point; pen: Pen }
  | { kind: 'polyline'; points: Ring; pen: Pen }
  | { kind: 'polygon'; outline: Ring; holes: readonly Ring[]; pen: Pen | null; fill: Fill | null }
  | { kind: 'circle'; at: Point; radiusFt: number; pen: Pen | null; fill: Fill | null }
  | Lettering
);

export interface Lettering {
  kind: 'text';
  at: Point;
  text: string;
  size: LetterSize;
  /** Which part of the words stands at the point. */
  anchor: 'start' | 'middle' | 'end';
  /** Counter-clockwise from east. */
  angleDeg: number;
  tone: Tone;
  bold: boolean;
  /** A rim of paper round the letters, so that lines do not cross them. */
  rim: boolean;
  place?: string;
}

export interface DrawList {
  /** Short name, and what the drawing shows in words: read out where it cannot be seen. */
  title: string;
  description: string;
  box: Box;
  /** Height of a plain letter. */
  letterFt: number;
  marks: readonly Mark[];
}

export type TextChoice = Partial<Omit<Lettering, 'kind' | 'at' | 'text'>>;

/** Words on a drawing: plain, centred and level unless said otherwise. */
export const lettering = (at: Point, text: string, choice: TextChoice = {}): Lettering => ({
  kind: 'text',
  at,
  text,
  size: 'plain',
  anchor: 'middle',
  angleDeg: 0,
  tone: 'ink',
  bold: false,
  rim: true,
  ...choice,
});

export const polygon = (
  outline: Ring,
  fill: Fill | null,
  pen: Pen | null = null,
  holes: readonly Ring[] = [],
): Mark => ({
  kind: 'polygon',
  outline,
  holes,
  pen,
  fill,
});

export const line = (from: Point, to: Point, pen: Pen): Mark => ({ kind: 'line', from, to, pen });

export const placed = (place: string, marks: readonly Mark[]): Mark[] => marks.map((mark) => ({ ...mark, place }));

/** Width that words take on the sheet. */
export const widthFt = (text: string, size: LetterSize, letterFt: number): number =>
  text.length * ADVANCE * letters[size] * letterFt;

/** Room that words take, turned ones by the box round them. */
export function roomOf(mark: Lettering, letterFt: number): Box {
  const long = widthFt(mark.text, mark.size, letterFt);
  const high = letters[mark.size] * letterFt;
  const from = mark.anchor === 'start' ? 0 : mark.anchor === 'end' ? -long : -long / 2;
  const angle = (mark.angleDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const corners = [from, from + long].flatMap((x) => [-high / 2, high / 2].map((y) => [x * c - y * s, x * s + y * c]));
  const xs = corners.map(([x]) => mark.at[0] + x);
  const ys = corners.map(([, y]) => mark.at[1] + y);
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
}
