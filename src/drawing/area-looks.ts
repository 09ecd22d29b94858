import { boxesOverlap, boxOf, grown } from '../core/geometry/vector.ts';
import type { DrainageArea, Point } from '../core/report/types.ts';
import { hatchLines } from './crossings.ts';
import { line, type Mark, polygon } from './draw-list.ts';
import type { Fill } from './pens.ts';

/** How the ground of one drainage area is drawn: a grey, or lines of one direction. Told apart without colour. */
export interface AreaLook {
  fill: Fill;
  hatch: Point | null;
}

/** In the order in which they are taken. */
export const areaLooks: readonly AreaLook[] = [
  { fill: 'sheet', hatch: null },
  { fill: 'grey-2', hatch: null },
  { fill: 'sheet', hatch: [Math.SQRT1_2, Math.SQRT1_2] },
  { fill: 'grey-1', hatch: [Math.SQRT1_2, -Math.SQRT1_2] },
  { fill: 'sheet', hatch: [1, 0] },
  { fill: 'grey-2', hatch: [0, 1] },
];

/** A look for every outlet, another than those of the areas about it as far as the looks go. */
export function looksOf(areas: readonly DrainageArea[]): Map<string, AreaLook> {
  const looks = new Map<string, AreaLook>();
  const boxes = areas.map(({ outline }) => grown(boxOf(outline), 0.05));
  for (const outlet of new Set(areas.map((area) => area.outlet))) {
    const own = boxes.filter((_, i) => areas[i].outlet === outlet);
    const near = areas.filter((_, i) => own.some((box) => boxesOverlap(box, boxes[i])));
    const taken = new Set(near.flatMap((area) => looks.get(area.outlet) ?? []));
    looks.set(outlet, areaLooks.find((look) => !taken.has(look)) ?? areaLooks[looks.size % areaLooks.length]);
  }
  return looks;
}

export function groundMarks({ outline, holes }: DrainageArea, { fill, hatch }: AreaLook, letterFt: number): Mark[] {
  const lines = hatch === null ? [] : hatchLines([outline, ...holes], 0.7 * letterFt, hatch);
  return [polygon(outline, fill, null, holes), ...lines.map(([a, b]) => line(a, b, 'hatch'))];
}
