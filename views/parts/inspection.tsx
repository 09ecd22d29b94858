import { extentWords } from '../../src/core/report/page-scope.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment, InspectedFinding } from '../../src/core/report/types.ts';
import { findingPlace, findingsPlan } from '../../src/drawing/findings-plan.ts';
import type { PageLinks } from '../page-setting.ts';
import { Figure } from './figure.tsx';
import { Photos } from './photos.tsx';
import { SourceMark } from './source-mark.tsx';
import { PlaceName, Table } from './table.tsx';

function Told({ finding, book }: { finding: InspectedFinding; book: SourceBook }) {
  return (
    <>
      {finding.tells}
      <SourceMark book={book} note={finding.source} />
      <span class="why">It does not tell: {finding.tellsNot}</span>
    </>
  );
}

export interface InspectionProps {
  assessment: Assessment;
  book: SourceBook;
  links: PageLinks | null;
}

/** What the inspection noted, numbered on a plan, with what each finding tells and what it does not. */
export function Inspection({ assessment, book, links }: InspectionProps) {
  const { inspection = [] } = assessment;
  const edit = links === null ? null : <a href={links.findings}>Note what was found</a>;
  if (inspection.length === 0) return <p>No inspection was noted. {edit}</p>;
  return (
    <>
      <Figure
        list={findingsPlan(assessment)}
        id="findings"
        full={links === null ? null : `${links.drawing}/findings.svg`}
      >
        A ring stands at each finding, a thick line along an edge, hatching over an area.{' '}
      </Figure>
      <Table
        caption="Findings by their numbers on the plan"
        columns={[{ head: 'Finding' }, { head: 'Where' }, { head: 'How much, how bad' }, { head: 'What it tells' }]}
        rows={inspection.map((finding) => ({
          place: findingPlace(finding.number),
          cells: [
            <PlaceName place={findingPlace(finding.number)}>
              {finding.number}. {finding.title}
            </PlaceName>,
            finding.where,
            extentWords(finding),
            <>
              {finding.note === null ? null : <span class="why">Noted: {finding.note}</span>}
              <Told finding={finding} book={book} />
              {links === null ? null : (
                <Photos
                  photos={finding.photos.map((id) => ({
                    src: `${links.photos}/${id}`,
                    alt: `Photo of finding ${finding.number}, ${finding.title}`,
                  }))}
                />
              )}
            </>,
          ],
        }))}
      />
      <p>{edit}</p>
    </>
  );
}
