import { type Box, boxOf, centroid, direction } from '../core/geometry/vector.ts';
import type { OutletReport, PlanReport, Point } from '../core/report/types.ts';
import { type Lettering, lettering, line, type Mark, placed, polygon, type TextChoice, widthFt } from './draw-list.ts';
import type { FreeRoom } from './free-room.ts';

/** Things that stand on a roof: curbs, pipes, outlets. */

const curbWords = (kind: string): string => (kind === 'other' || kind === 'equipment' ? 'curb' : kind);

export function curbMarks(plan: PlanReport, letterFt: number, room: FreeRoom): Mark[] {
  return plan.curbs.flatMap(({ id, kind, outline }) => {
    const box = boxOf(outline);
    const words = [
      lettering(centroid(outline), curbWords(kind), { size: 'small' }),
      ...aroundBox(box, curbWords(kind), letterFt, { size: 'small' }),
    ];
    const inside = (['small', 'tiny'] as const).find(
      (size) => widthFt(curbWords(kind), size, letterFt) < box.maxX - box.minX,
    );
    const named = inside === undefined ? room.place(words.slice(1)) : [{ ...words[0], size: inside }];
    room.take(box);
    return placed(`curb-${id}`, [polygon(outline, 'curb', 'curb'), ...named]);
  });
}

export function pipeMarks(plan: PlanReport, letterFt: number, room: FreeRoom, named = true): Mark[] {
  return plan.pipes.flatMap(({ at, kind, diameterIn }, i): Mark[] => {
    const radiusFt = Math.max(((diameterIn ?? 3) / 24) * 1.2, 0.22 * letterFt);
    room.take({ minX: at[0] - radiusFt, maxX: at[0] + radiusFt, minY: at[1] - radiusFt, maxY: at[1] + radiusFt });
    const words = named ? around(at, kind.replace('-', ' '), 0.9 * letterFt + radiusFt, { size: 'tiny' }) : [];
    return placed(`pipe-${i}`, [{ kind: 'circle', at, radiusFt, pen: 'fixture', fill: 'sheet' }, ...room.place(words)]);
  });
}

/** Places about a spot where words may stand, the nearest habit first. */
export function around(at: Point, text: string, byFt: number, choice: TextChoice = {}): Lettering[] {
  const [x, y] = at;
  const side = 0.75 * byFt;
  return [
    lettering([x, y - byFt], text, choice),
    lettering([x, y + byFt], text, choice),
    lettering([x + side, y], text, { ...choice, anchor: 'start' }),
    lettering([x - side, y], text, { ...choice, anchor: 'end' }),
    lettering([x + side, y - byFt], text, { ...choice, anchor: 'start' }),
    lettering([x - side, y + byFt], text, { ...choice, anchor: 'end' }),
  ];
}

/** Places about a box where words may stand. */
export function aroundBox(box: Box, text: string, letterFt: number, choice: TextChoice = {}): Lettering[] {
  const [x, y] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  return [
    lettering([x, box.minY - 0.8 * letterFt], text, choice),
    lettering([x, box.maxY + 0.8 * letterFt], text, choice),
    lettering([box.maxX + 0.4 * letterFt, y], text, { ...choice, anchor: 'start' }),
    lettering([box.minX - 0.4 * letterFt, y], text, { ...choice, anchor: 'end' }),
    lettering([x, box.minY - 1.8 * letterFt], text, choice),
    lettering([x, box.maxY + 1.8 * letterFt], text, choice),
  ];
}

function symbol({ kind, at, to, role, status }: OutletReport, letterFt: number): Mark[] {
  const r = 0.42 * letterFt;
  if (kind === 'edge' && to !== null) {
    const [dx, dy] = direction(at, to);
    const off = 0.28 * letterFt;
    const shift = ([x, y]: Point): Point => [x + dy * off, y - dx * off];
    return [line(shift(at), shift(to), status === 'proposed' ? 'valley' : 'curb')];
  }
  if (kind === 'scupper') {
    const box: Point[] = [
      [at[0] - r, at[1] - r],
      [at[0] + r, at[1] - r],
      [at[0] + r, at[1] + r],
      [at[0] - r, at[1] + r],
    ];
    return [polygon(box, role === 'overflow' ? 'sheet' : 'body', 'curb')];
  }
  return [
    { kind: 'circle', at, radiusFt: r, pen: 'curb', fill: 'sheet' },
    line([at[0] - r, at[1]], [at[0] + r, at[1]], 'fixture'),
    line([at[0], at[1] - r], [at[0], at[1] + r], 'fixture'),
  ];
}

/** Drains, scuppers and draining edges; the new ones say so. */
export function outletMarks(outlets: readonly OutletReport[], letterFt: number, room: FreeRoom): Mark[] {
  const crowded = outlets.length > 8;
  const drawn = outlets.flatMap((outlet) => placed(`outlet-${outlet.id}`, symbol(outlet, letterFt)));
  for (const { at, kind } of outlets) {
    if (kind === 'edge') continue;
    const r = 0.45 * letterFt;
    room.take({ minX: at[0] - r, maxX: at[0] + r, minY: at[1] - r, maxY: at[1] + r });
  }
  const named = outlets
    .filter(({ kind }) => kind !== 'edge')
    .flatMap((outlet) => {
      const isNew = outlet.status === 'proposed' && (crowded || !outlet.label.includes('new'));
      const words = [crowded ? outlet.id : outlet.label, isNew ? 'new' : ''].filter((part) => part !== '').join(', ');
      return placed(`outlet-${outlet.id}`, room.place(around(outlet.at, words, 1.1 * letterFt, { size: 'small' })));
    });
  return [...drawn, ...named];
}
