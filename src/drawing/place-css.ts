import type { DrawList } from './draw-list.ts';
import { placeName } from './svg.ts';

/** Rules that mark a place on the drawings while its row is pointed at, or after its link was followed. */
export function placeCss(lists: readonly { id: string; list: DrawList }[]): string {
  const places = new Set<string>();
  for (const { list } of lists)
    for (const { place } of list.marks) if (place !== undefined) places.add(placeName(place));
  const ids = lists.map(({ id }) => id);
  return [...places]
    .map((name) => {
      const followed = ids.map((id) => `:root:has(#${id}-${name}:target) .place-${name}`).join(',');
      return `:root:has([data-place="${name}"]:hover) .place-${name},:root:has([data-place="${name}"]:focus-within) .place-${name},${followed}{--weight:2.6;font-weight:700}`;
    })
    .join('\n');
}
