import type { DrawList } from './draw-list.ts';
import { placeName } from './svg.ts';

export interface PlacedDrawing {
  /** Id that the drawing is printed with. */
  id: string;
  list: DrawList;
}

const namesOf = (list: DrawList): Set<string> =>
  new Set(list.marks.flatMap(({ place }) => (place === undefined ? [] : [placeName(place)])));

/** Anchors of all places that some drawings show. */
export const placeAnchors = (lists: readonly PlacedDrawing[]): Set<string> =>
  new Set(lists.flatMap(({ id, list }) => [...namesOf(list)].map((name) => `${id}-${name}`)));

/** Rules that mark a place on the drawings while its row is pointed at, or after its link was followed. */
export function placeCss(lists: readonly PlacedDrawing[]): string {
  const places = new Set(lists.flatMap(({ list }) => [...namesOf(list)]));
  const ids = lists.map(({ id }) => id);
  return [...places]
    .map((name) => {
      const followed = ids.map((id) => `:root:has(#${id}-${name}:target) .place-${name}`).join(',');
      return `:root:has([data-place="${name}"]:hover) .place-${name},:root:has([data-place="${name}"]:focus-within) .place-${name},${followed}{--weight:2.6;font-weight:700}`;
    })
    .join('\n');
}
