import { flatInstead } from '../../src/core/report/flat-words.ts';
import { layoutRows } from '../../src/core/report/page-layouts.ts';
import { searchLines } from '../../src/core/report/page-search.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import type { PageLinks } from '../page-setting.ts';
import { Table } from './table.tsx';

export interface LayoutsProps {
  assessment: Assessment;
  shown: Layout | null;
  links: PageLinks | null;
}

/** All layouts that were tried, as a plain trade-off; the rejected ones with what they break and what to relax. */
export function Layouts({ assessment, shown, links }: LayoutsProps) {
  const flat = flatInstead(assessment);
  if (flat !== null) return <p>{flat}</p>;
  return (
    <>
      <Table
        caption="Layouts compared"
        columns={[
          { head: 'Layout' },
          { head: 'Verdict' },
          { head: 'Falls' },
          { head: 'Boards' },
          { head: 'R' },
          { head: 'New ways out', kind: 'figure' },
          { head: 'Tightest height' },
        ]}
        rows={layoutRows(assessment).map((row) => ({
          tone: row.id === shown?.id ? 'chosen' : 'plain',
          cells: [
            <>
              {links === null ? (
                row.title
              ) : (
                <a href={`${links.result}?layout=${encodeURIComponent(row.id)}`}>{row.title}</a>
              )}
              {row.id === shown?.id ? ' (drawn here)' : ''}
              <span class="why">{row.why}</span>
            </>,
            <>
              {row.state === 'rejected' ? <b>{row.stateWords}</b> : row.stateWords}
              {row.reason === null ? null : <span class="why">{row.reason}</span>}
              {row.relax === null ? null : <span class="why">To relax: {row.relax}</span>}
            </>,
            <>
              planes {row.planes}
              <span class="why">valleys {row.valleys}</span>
            </>,
            <>
              {row.thickness}
              <span class="why">
                {row.volume}; levelling {row.levelling}
              </span>
              {row.cost === null ? null : <span class="why">{row.cost}</span>}
            </>,
            <>
              {row.effectiveR} effective
              <span class="why">{row.thinnestR} at the thinnest</span>
            </>,
            row.newOutlets,
            row.tightest,
          ],
        }))}
      />
      <details>
        <summary>What was looked at, and what stopped the rest</summary>
        <ul>
          {searchLines(assessment.search).map((line) => (
            <li>{line}</li>
          ))}
        </ul>
      </details>
    </>
  );
}
