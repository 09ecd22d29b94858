import { type MapSign, mapKey } from '../../src/core/report/page-map.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import { waterMap } from '../../src/drawing/water-map.ts';
import type { PageLinks } from '../page-setting.ts';
import { Figure } from './figure.tsx';

const signs: Record<MapSign, { path: string; pen: string }[]> = {
  shed: [
    { path: 'M8 1v6', pen: 'pen-shore' },
    { path: 'M8 10l-3-4h6z', pen: 'fill-water-4' },
  ],
  downspout: [{ path: 'M5 5.5a3 3 0 1 0 6 0a3 3 0 1 0 -6 0z', pen: 'pen-shore fill-water-4' }],
  valley: [
    { path: 'M3 5.5a5 5 0 1 0 10 0a5 5 0 1 0 -10 0z', pen: 'pen-valley fill-water-1' },
    { path: 'M6 5.5a2 2 0 1 0 4 0a2 2 0 1 0 -4 0z', pen: 'fill-water-4' },
  ],
};

export interface WaterMapsProps {
  assessment: Assessment;
  layout: Layout | null;
  links: PageLinks | null;
}

/** Where the water goes, today and with the new roof, and what the signs mean. */
export function WaterMaps({ assessment, layout, links }: WaterMapsProps) {
  const key = mapKey(assessment.plan);
  return (
    <>
      <div class="pair">
        <Figure
          list={waterMap(assessment, null)}
          id="water-today"
          full={links === null ? null : `${links.drawing}/water-today.svg`}
        />
        {layout === null ? null : (
          <Figure
            list={waterMap(assessment, layout)}
            id="water-new"
            full={links === null ? null : `${links.drawing}/water-new.svg?layout=${layout.id}`}
          />
        )}
      </div>
      {key.length === 0 ? null : (
        <ul class="key" aria-label="Signs of the map">
          {key.map(({ sign, words }) => (
            <li>
              <svg class="drawing" aria-hidden="true" viewBox="0 0 16 11">
                {signs[sign].map(({ path, pen }) => (
                  <path class={pen} d={path} />
                ))}
              </svg>
              {words}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
