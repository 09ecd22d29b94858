import type { SectionPair } from '../../src/drawing/plan-pair.ts';
import { placeName } from '../../src/drawing/svg.ts';
import { Figure } from './figure.tsx';

/** Sections through the worst water, before and after, along and across; their ends stand on the plans. */
export function Sections({ sections }: { sections: readonly SectionPair[] }) {
  return sections.map(({ name, before, after }) =>
    before === null ? null : (
      <div class="pair" data-place={placeName(`section-${name}`)}>
        <Figure list={before} id={`section-before-${name}`} />
        {after === null ? null : (
          <Figure list={after} id={`section-after-${name}`}>
            The broken line is the old surface.
          </Figure>
        )}
      </div>
    ),
  );
}
