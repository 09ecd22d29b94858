import type { PlanPair } from '../../src/drawing/plan-pair.ts';
import { Figure } from './figure.tsx';

/** The section through the worst water, before and after. */
export function Sections({ pair }: { pair: PlanPair }) {
  if (pair.sectionBefore === null) return null;
  return (
    <div class="pair">
      <Figure list={pair.sectionBefore} id="section-before" />
      {pair.sectionAfter === null ? null : (
        <Figure list={pair.sectionAfter} id="section-after">
          The broken line is the old surface.
        </Figure>
      )}
    </div>
  );
}
