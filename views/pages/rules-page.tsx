import { type BuildingRow, buildingRows, comparisonWords, plumbingRows } from '../../src/core/report/page-rules.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import type { PageSetting } from '../page-setting.ts';
import { Sheet } from '../parts/sheet.tsx';
import { Table } from '../parts/table.tsx';

const Code = ({ code, own }: { code: string; own: boolean }) => (own ? <b>{code} (this job)</b> : code);

const Cell = ({ says, more, at }: { says: string; more?: string; at?: string }) => (
  <>
    {says}
    {more ? <span class="why">{more}</span> : null}
    {at ? <cite class="why">{at}</cite> : null}
  </>
);

const Slopes = ({ row, of }: { row: BuildingRow; of: 'least' | 'today' | 'planned' }) =>
  row.slopes.map((slope) => <span class="line">{slope[of]}</span>);

/** One roof under every building code and every plumbing code that is held. */
export function RulesPage({ assessment, setting }: { assessment: Assessment; setting: PageSetting }) {
  const { ruleComparison: comparison } = assessment;
  return (
    <Sheet assessment={assessment} setting={setting} page="rules">
      <h1 class="quiet">{assessment.label}</h1>
      {comparison === undefined ? (
        <p>Nothing was compared.</p>
      ) : (
        <>
          <p class="headline">{comparisonWords(comparison)[0]}</p>
          <ul class="prose">
            {comparisonWords(comparison)
              .slice(1)
              .map((words) => (
                <li>{words}</li>
              ))}
          </ul>
          <p class="prose">
            Building codes are compared with this job's plumbing code, plumbing codes with its building code; local
            amendments hold throughout. Codes are adopted locally with amendments: the building official's text governs.
          </p>
          <h2>Slope and verdict</h2>
          <Table
            caption="Building codes: slope, and the roof as it is"
            columns={[
              { head: 'Code' },
              { head: 'Least slope' },
              { head: 'Today' },
              { head: 'New roof' },
              { head: 'Roof as it is' },
              { head: 'Re-roof exception' },
            ]}
            rows={buildingRows(comparison).map((row) => ({
              tone: row.own ? 'chosen' : 'plain',
              cells: [
                <Code {...row} />,
                <>
                  <Slopes row={row} of="least" />
                  <cite class="why">{row.slopeAt}</cite>
                </>,
                <Slopes row={row} of="today" />,
                <Slopes row={row} of="planned" />,
                <Cell says={row.verdict} more={row.why} />,
                <Cell says={row.exception} more={row.exceptionWhy} at={row.exceptionAt} />,
              ],
            }))}
          />
          <h2>Overflow</h2>
          <Table
            caption="Building codes: overflow, its rain and its scupper"
            columns={[
              { head: 'Code' },
              { head: 'Overflow' },
              { head: 'Rain behind it' },
              { head: 'Scupper rule' },
              { head: 'Here at least' },
            ]}
            rows={buildingRows(comparison).map((row) => ({
              tone: row.own ? 'chosen' : 'plain',
              cells: [
                <Code {...row} />,
                <Cell says={row.overflow} more={row.overflowNote} at={row.overflowAt} />,
                <Cell says={row.rain} at={row.rainAt} />,
                <Cell says={row.scupper} at={row.scupperAt} />,
                row.needs,
              ],
            }))}
          />
          <h2>Outlets and pipes</h2>
          <Table
            caption="Plumbing codes: rain, walls, outlets there now"
            columns={[
              { head: 'Code' },
              { head: 'Pipe tables' },
              { head: 'Main rain' },
              { head: 'Overflow rain' },
              { head: 'Walls and roofs above add' },
              { head: 'Flow', kind: 'figure' },
              { head: 'Outlets there now' },
              { head: 'Overflow here at least' },
            ]}
            rows={plumbingRows(comparison).map((row) => ({
              tone: row.own ? 'chosen' : 'plain',
              cells: [
                <Code {...row} />,
                <Cell says={row.pipes} at={row.codeAt} />,
                <Cell says={row.mainRain} at={row.mainRainAt} />,
                <Cell says={row.overflowRain} at={row.overflowRainAt} />,
                <Cell says={row.walls} more={row.wallsText} at={row.wallsAt} />,
                row.flow,
                row.outlets,
                <Cell says={row.needs} more={row.scupper} at={row.scupperAt} />,
              ],
            }))}
          />
        </>
      )}
    </Sheet>
  );
}
