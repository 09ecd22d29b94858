import { signedAreaSqFt } from '../core/geometry/vector.ts';
import type { Point, Ring } from '../core/report/types.ts';
import type { DrawList, Lettering, Mark } from './draw-list.ts';
import { drawingCss } from './drawing-css.ts';
import type { Fill, Pen } from './pens.ts';

/** Hundredths of a foot: whole numbers keep a plan of thousands of boards small. */
const UNITS_PER_FT = 100;

const unit = (ft: number): number => Math.round(ft * UNITS_PER_FT);

export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** A key as it stands in a class name. */
export const placeName = (key: string): string => key.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');

function pathOf(points: Ring, closed: boolean): string {
  let [px, py] = [unit(points[0][0]), -unit(points[0][1])];
  let out = `M${px} ${py}l`;
  for (const [xFt, yFt] of points.slice(1)) {
    const [x, y] = [unit(xFt), -unit(yFt)];
    out += `${x - px} ${y - py} `;
    [px, py] = [x, y];
  }
  return `${out.trimEnd()}${closed ? 'z' : ''}`;
}

const turned = (ring: Ring, counterClockwise: boolean): Ring =>
  signedAreaSqFt(ring) >= 0 === counterClockwise ? ring : [...ring].reverse();

function circlePath([x, y]: Point, radiusFt: number): string {
  const r = unit(radiusFt);
  return `M${unit(x) - r} ${-unit(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
}

function pathFor(mark: Exclude<Mark, Lettering>): string {
  switch (mark.kind) {
    case 'line':
      return pathOf([mark.from, mark.to], false);
    case 'polyline':
      return pathOf(mark.points, false);
    case 'circle':
      return circlePath(mark.at, mark.radiusFt);
    case 'polygon':
      return [
        pathOf(turned(mark.outline, true), true),
        ...mark.holes.map((hole) => pathOf(turned(hole, false), true)),
      ].join('');
  }
}

const classOf = (pen: Pen | null, fill: Fill | null): string =>
  [pen === null ? '' : `pen-${pen}`, fill === null ? '' : `fill-${fill}`].filter((part) => part !== '').join(' ');

function styleOf(mark: Mark): string {
  if (mark.kind === 'text') return '';
  return 'fill' in mark ? classOf(mark.pen, mark.fill) : classOf(mark.pen, null);
}

function textOf(mark: Lettering): string {
  const [x, y] = [unit(mark.at[0]), -unit(mark.at[1])];
  const classes = [
    mark.size === 'plain' ? '' : mark.size,
    mark.anchor === 'middle' ? '' : mark.anchor,
    mark.tone === 'ink' ? '' : mark.tone,
    mark.bold ? 'bold' : '',
    mark.rim ? '' : 'rimless',
  ].filter((part) => part !== '');
  const turn = Math.round(mark.angleDeg * 10) / 10;
  return `<text x="${x}" y="${y}"${classes.length === 0 ? '' : ` class="${classes.join(' ')}"`}${
    turn === 0 ? '' : ` transform="rotate(${-turn} ${x} ${y})"`
  }>${escaped(mark.text)}</text>`;
}

/** Neighbours in paint order that look alike become one path. */
function bodyOf(marks: readonly Mark[]): string {
  let out = '';
  for (let i = 0; i < marks.length; ) {
    const mark = marks[i];
    if (mark.kind === 'text') {
      out += textOf(mark);
      i++;
      continue;
    }
    const style = styleOf(mark);
    let path = '';
    for (; i < marks.length; i++) {
      const next = marks[i];
      if (next.kind === 'text' || styleOf(next) !== style) break;
      path += pathFor(next);
    }
    out += `<path class="${style}" d="${path}"/>`;
  }
  return out;
}

/** Runs of marks that belong to one place, in paint order. */
function runsOf(marks: readonly Mark[]): { place: string | undefined; marks: Mark[] }[] {
  const runs: { place: string | undefined; marks: Mark[] }[] = [];
  for (const mark of marks) {
    const last = runs.at(-1);
    if (last !== undefined && last.place === mark.place) last.marks.push(mark);
    else runs.push({ place: mark.place, marks: [mark] });
  }
  return runs;
}

export interface SvgChoice {
  /** Sets ids apart where a page holds several drawings. */
  id: string;
  /** A file of its own carries its style with it. */
  standalone?: boolean;
}

/** A drawing as SVG text: viewBox in hundredths of a foot, title and description, classes instead of colours. */
export function printSvg(list: DrawList, { id, standalone = false }: SvgChoice): string {
  const { box } = list;
  const view = [unit(box.minX), -unit(box.maxY), unit(box.maxX - box.minX), unit(box.maxY - box.minY)];
  const runs = runsOf(list.marks)
    .map(({ place, marks }) =>
      place === undefined ? bodyOf(marks) : `<g class="place place-${placeName(place)}">${bodyOf(marks)}</g>`,
    )
    .join('');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="drawing" viewBox="${view.join(' ')}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
    `<title id="${id}-title">${escaped(list.title)}</title><desc id="${id}-desc">${escaped(list.description)}</desc>`,
    standalone ? `<style>${drawingCss()}</style>` : '',
    `<g font-size="${unit(list.letterFt)}">${runs}</g></svg>`,
  ].join('');
}
