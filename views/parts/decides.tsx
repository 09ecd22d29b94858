import { whatDecides } from '../../src/core/report/page-decides.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import type { PageLinks } from '../page-setting.ts';

/** Under the verdict: the facts that decide it, and the cheapest look that could change it. */
export function Decides({ assessment, links }: { assessment: Assessment; links: PageLinks | null }) {
  const { facts, look, takenForNow } = whatDecides(assessment);
  return (
    <section class="decides" aria-label="What decides this">
      <h2>What decides this</h2>
      <ul>
        {facts.map((fact) => (
          <li>{fact}</li>
        ))}
      </ul>
      <p>
        <b>The cheapest look that could change it:</b> {look}
        {takenForNow === null ? null : <span class="why">Taken for now: {takenForNow}</span>}
      </p>
      {links === null || assessment.ruleComparison === undefined ? null : (
        <p>
          <a href={links.rules}>The same roof under the other codes</a>
        </p>
      )}
    </section>
  );
}
