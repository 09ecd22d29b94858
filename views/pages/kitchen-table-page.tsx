import { type KitchenTable, kitchenStatements, kitchenTable } from '../../src/core/report/page-kitchen-table.ts';
import { shownLayout } from '../../src/core/report/page-layouts.ts';
import { OriginBook, ownerPage } from '../../src/core/report/page-owner.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { planAfter } from '../../src/drawing/plan-after.ts';
import { planPair } from '../../src/drawing/plan-pair.ts';
import type { PageSetting } from '../page-setting.ts';
import { BeforeAfter } from '../parts/before-after.tsx';
import { Figure } from '../parts/figure.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { Origins, Said, SaidTogether, Stops } from '../parts/statement.tsx';

export interface KitchenTablePageProps {
  assessment: Assessment;
  setting: PageSetting;
}

function Signatures({ options }: { options: number }) {
  return (
    <dl class="title-block written">
      {[
        options === 1 ? 'Agreed: yes or no' : 'Chosen: first or second',
        'Owner, name and date',
        'Roofer, name and date',
        'License or registration',
      ].map((head) => (
        <div>
          <dt>{head}</dt>
          <dd class="blank" />
        </div>
      ))}
    </dl>
  );
}

/** Both new roofs where two are set side by side, else the roof today and the new one. */
function Plans({ assessment, table: { layouts, options } }: { assessment: Assessment; table: KitchenTable }) {
  const [first, second] = layouts.map((i) => (i === null ? null : (assessment.layouts[i] ?? null)));
  if (first == null || second == null || first === second)
    return <BeforeAfter pair={planPair(assessment, shownLayout(assessment))} links={null} />;
  return (
    <div class="pair">
      {[first, second].map((layout, i) => (
        <Figure list={planAfter(assessment, layout)} id={`plan-${i}`}>
          {options[i]}
        </Figure>
      ))}
    </div>
  );
}

/** Two options side by side with lines to fill in, for one or two sheets of paper. */
export function KitchenTablePage({ assessment, setting }: KitchenTablePageProps) {
  const table = kitchenTable(assessment);
  const { stops, today } = ownerPage(assessment);
  const book = new OriginBook([...stops, ...today.statements.slice(0, 1), ...kitchenStatements(table)]);
  return (
    <Sheet assessment={assessment} setting={setting} page="kitchen">
      <h1 class="quiet">To talk over at the table: {assessment.label}</h1>
      <Stops statements={stops} book={book} />
      <p class="headline">
        <Said statement={today.statements[0]} book={book} />
      </p>
      <div class="owner">
        <SaidTogether statements={[table.lead, ...table.first]} book={book} />
        {table.planned.length === 0 ? null : <SaidTogether statements={table.planned} book={book} />}
      </div>
      {table.wishes.length === 0 ? null : (
        <ul class="owner">
          {table.wishes.map((statement) => (
            <li>
              <Said statement={statement} book={book} />
            </li>
          ))}
        </ul>
      )}
      {table.choice === 'barred' ? null : (
        <div class="kitchen-plans">
          <Plans assessment={assessment} table={table} />
        </div>
      )}
      {table.rows.length === 0 ? null : (
        <table class="few kitchen">
          <caption>{table.options.length === 2 ? 'Side by side' : 'What is offered'}</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              {table.options.map((title) => (
                <th scope="col">{title}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map(({ id, head, cells }) => (
              <tr class={`row-${id}`}>
                <th scope="row">{head}</th>
                {cells.map((cell, i) =>
                  cell === null ? (
                    <td class="blank-cell" data-head={table.options[i]} />
                  ) : (
                    <td data-head={table.options[i]}>
                      <Said statement={cell} book={book} />
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <div class="owner">
        <h2>{table.woodTitle}</h2>
        <SaidTogether statements={table.wood} book={book} />
        {table.rows.length === 0 ? null : (
          <p>The empty lines are for the roofer to fill in. Prices are not worked out here.</p>
        )}
      </div>
      {table.toSign ? <Signatures options={table.options.length} /> : null}
      <Origins book={book} links={setting.links} />
    </Sheet>
  );
}
