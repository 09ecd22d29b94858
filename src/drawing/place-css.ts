import type { DrawList } from './draw-list.ts';
import { placeName } from './svg.ts';

/** All places that some drawings show. */
export const placesDrawn = (lists: readonly DrawList[]): Set<string> =>
  new Set(lists.flatMap(({ marks }) => marks.flatMap(({ place }) => (place === undefined ? [] : [placeName(place)]))));

/** Rules that mark a place on the drawings while its row is pointed at, tapped or reached by the keyboard. */
export const placeCss = (places: ReadonlySet<string>): string =>
  [...places]
    .map(
      (name) =>
        `:root:has([data-place="${name}"]:is(:hover,:focus-within)) .place-${name}{--weight:2.6;font-weight:700}`,
    )
    .join('\n');
