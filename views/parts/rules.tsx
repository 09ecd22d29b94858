import { slopeFigure } from '../../src/core/report/page-figures.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { area, feetInches, rain, squares } from '../../src/units/print.ts';
import { SourceMark } from './source-mark.tsx';

/** The measures, rules and rain that the answer was worked with. */
export function RulesAndRain({ assessment, book }: { assessment: Assessment; book: SourceBook }) {
  const { ruleSet, section, rain: storm } = assessment;
  return (
    <dl class="terms">
      <dt>Section</dt>
      <dd>
        {area(section.areaSqFt)} ({squares(section.areaSqFt)}), {feetInches(section.perimeterFt)} round
      </dd>
      <dt>Building rules</dt>
      <dd>{ruleSet.building.title}</dd>
      <dt>Plumbing rules</dt>
      <dd>{ruleSet.plumbing.title}</dd>
      <dt>Slope asked for</dt>
      <dd>
        planes {slopeFigure(ruleSet.slopeRule.faceInPerFt)}, valleys {slopeFigure(ruleSet.slopeRule.valleyInPerFt)}
        {ruleSet.slopeRule.strict ? ', strict: valleys like planes' : ''}
      </dd>
      {ruleSet.local.map((rule) => (
        <>
          <dt>Local rule</dt>
          <dd>{rule}</dd>
        </>
      ))}
      <dt>Rain</dt>
      <dd>
        {rain(storm.primaryInPerHr)} ({storm.primaryBasis}); overflow {rain(storm.overflowInPerHr)} (
        {storm.overflowBasis})
        <SourceMark book={book} note={storm.source} />
      </dd>
    </dl>
  );
}
