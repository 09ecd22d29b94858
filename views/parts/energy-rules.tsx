import { coolCoverings, energyRuleRows, ruleResultWords } from '../../src/core/report/page-damp.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { EnergyRuleRow, EnergyRulesReport } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

const columns = [{ head: 'Rule' }, { head: 'Result' }, { head: 'Asked' }, { head: 'There' }] as const;

function RuleTable({ caption, rows, book }: { caption: string; rows: readonly EnergyRuleRow[]; book: SourceBook }) {
  if (rows.length === 0) return null;
  return (
    <Table
      caption={caption}
      columns={columns}
      rows={rows.map(({ title, result, asked, found, clause, note, settledBy, source }) => ({
        cells: [
          <>
            {title}
            <SourceMark book={book} note={source} />
            <span class="why">
              {clause}. {note}
            </span>
            {settledBy === null ? null : <span class="why">What settles it: {settledBy}.</span>}
          </>,
          result === 'fail' ? <b>{ruleResultWords[result]}</b> : ruleResultWords[result],
          result === 'not-applicable' ? '' : asked,
          result === 'not-applicable' ? '' : found,
        ],
      }))}
    />
  );
}

/** Energy and cool-roof rules of the job in one table, and every covering against the rule that binds. */
export function EnergyRules({ rules, book }: { rules: EnergyRulesReport; book: SourceBook }) {
  const coverings = coolCoverings(rules);
  const rows = energyRuleRows(rules);
  const idle = rows.filter(({ result }) => result === 'not-applicable');
  return (
    <>
      <p>{rules.answer}</p>
      {rules.targetNote === null ? null : <p>{rules.targetNote}</p>}
      <RuleTable
        caption={`Rules that bind this roof, climate zone ${rules.climateZone ?? 'not known'}`}
        rows={rows.filter((row) => !idle.includes(row))}
        book={book}
      />
      {idle.length === 0 ? null : (
        <details>
          <summary>Rules that do not apply here, and why</summary>
          <RuleTable caption="Rules that do not apply" rows={idle} book={book} />
        </details>
      )}
      {rules.relief.map(({ text, source }) => (
        <p>
          {text}
          <SourceMark book={book} note={source} />
        </p>
      ))}
      {coverings.length === 0 ? null : (
        <details>
          <summary>Every covering against the cool-roof rule</summary>
          <Table
            caption="Aged values; SRI computed by ASTM E1980"
            columns={[
              { head: 'Covering' },
              { head: 'Reflectance', kind: 'figure' },
              { head: 'Emittance', kind: 'figure' },
              { head: 'SRI', kind: 'figure' },
              { head: 'Passes' },
            ]}
            rows={coverings.map(({ name, chosen, reflectance, emits, index, route }) => ({
              tone: chosen ? 'chosen' : 'plain',
              cells: [name, reflectance, emits, index, route],
            }))}
          />
        </details>
      )}
    </>
  );
}
