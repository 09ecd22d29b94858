import { shownLayout } from '../../src/core/report/page-layouts.ts';
import { boardRows, fillRows, supplierGroups } from '../../src/core/report/page-materials.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import type { PageSetting } from '../page-setting.ts';
import { BoardPlans } from '../parts/board-plans.tsx';
import { NothingLaid } from '../parts/nothing-laid.tsx';
import { Planned } from '../parts/planned.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { type Column, Table } from '../parts/table.tsx';

export interface SupplierRequestPageProps {
  assessment: Assessment;
  setting: PageSetting;
}

const blanks: readonly Column[] = [
  { head: 'Price', kind: 'blank' },
  { head: 'Lead time', kind: 'blank' },
  { head: 'Substitution', kind: 'blank' },
];

function Request({ assessment, layout }: { assessment: Assessment; layout: Layout }) {
  const held = assessment.moisture?.deckSheetHeld ?? null;
  return (
    <>
      {held === null ? null : <p>{held}</p>}
      <Table
        caption="Tapered boards, named by low and high edge in inches"
        columns={[
          { head: 'Mark' },
          { head: 'Slope, size' },
          { head: 'Fill under it' },
          { head: 'Boards', kind: 'figure' },
          ...blanks,
        ]}
        rows={boardRows(layout).map(({ mark, board, fill, order }) => ({
          cells: [mark, board, fill, order, '', '', ''],
        }))}
      />
      {layout.fill.length === 0 ? null : (
        <Table
          caption="Flat fill"
          columns={[{ head: 'Thickness' }, { head: 'Size' }, { head: 'Boards', kind: 'figure' }, ...blanks]}
          rows={fillRows(layout).map(({ thickness, size, order }) => ({ cells: [thickness, size, order, '', '', ''] }))}
        />
      )}
      {supplierGroups(assessment.materials).map(({ group, lines }) => (
        <Table
          caption={group}
          columns={[{ head: 'Item' }, { head: 'Order', kind: 'figure' }, ...blanks]}
          rows={lines.map(({ item, order }) => ({ cells: [item, order, '', '', ''] }))}
        />
      ))}
    </>
  );
}

/** What a supplier fills in: plan, boards and fill by thickness, covering, with room for price, lead time, substitution. */
export function SupplierRequestPage({ assessment, setting }: SupplierRequestPageProps) {
  const layout = shownLayout(assessment);
  return (
    <Sheet assessment={assessment} setting={setting} page="supplier">
      <h1 class="quiet">Supplier request: {assessment.label}</h1>
      <Planned assessment={assessment} />
      {layout === null || layout.rejected !== null ? (
        <NothingLaid assessment={assessment} to="ask for" />
      ) : (
        <>
          <p class="headline">Please quote the items below. Say what you would supply instead, and by when.</p>
          <dl class="title-block">
            <div>
              <dt>From</dt>
              <dd class="blank" />
            </div>
            <div>
              <dt>To</dt>
              <dd class="blank" />
            </div>
            <div>
              <dt>Wanted on site by</dt>
              <dd class="blank" />
            </div>
            <div>
              <dt>Answer by</dt>
              <dd class="blank" />
            </div>
          </dl>
          <Request assessment={assessment} layout={layout} />
          <h2 class="sheet-break">Plan</h2>
          <BoardPlans assessment={assessment} layout={layout} />
          <p>
            Quantities are provisional until {assessment.planned.ground} is shot; the last order follows that survey.
          </p>
        </>
      )}
    </Sheet>
  );
}
