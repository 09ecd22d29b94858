import { describe, expect, it } from 'vitest';
import { assessText } from '../../src/cli/assess-text.ts';
import {
  evidenceTables,
  membraneRows,
  membraneSources,
  outRows,
  weightRows,
} from '../../src/core/report/page-membranes.ts';
import { SourceBook } from '../../src/core/report/page-sources.ts';
import { sameWhichever } from '../../src/core/report/same-whichever.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { resultJson } from '../../src/export/result-json.ts';
import { Membranes } from '../../views/parts/membranes.tsx';
import { caseRoof, caseText } from '../cases/case-roof.ts';
import { byHand, demo } from './drawing-fixture.ts';

const back = demo('back-section');
const text = async (assessment: Assessment): Promise<string> =>
  String(await (<Membranes assessment={assessment} book={new SourceBook(assessment, null)} />)).replaceAll(/\s+/g, ' ');

describe('rows of the covering section', () => {
  it('every open covering has one row, best first; every covering that is out stands once under its reason', () => {
    const rows = membraneRows(back);
    const out = outRows(back);
    const open = back.membranes.filter(({ veto }) => veto === null);
    expect(rows.map(({ id }) => id)).toEqual(open.map(({ id }) => id));
    expect(rows[0]!.mayBeFirst).toBe(true);
    expect(rows.every(({ words, points }) => words.length > 10 && /^\d/.test(points))).toBe(true);
    const names = out.flatMap(({ names: joined }) => joined.split('; '));
    expect(names.toSorted()).toEqual(
      back.membranes
        .filter(({ veto }) => veto !== null)
        .map(({ name }) => name)
        .toSorted(),
    );
    expect(new Set(out.map(({ why }) => why)).size).toBe(out.length);
  });

  it('evidence: ten tables, the heaviest count first, every covering once in each, every source in the book', () => {
    const tables = evidenceTables(back);
    expect(tables).toHaveLength(10);
    for (const { rows } of tables) {
      const names = rows.flatMap(({ names: joined }) => joined.split('; '));
      expect(names.toSorted()).toEqual(back.membranes.map(({ name }) => name).toSorted());
    }
    const shares = tables.map(({ weight }) => Number.parseInt(weight, 10));
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
    const book = new SourceBook(back, null);
    expect(membraneSources(back).every((source) => book.numberOf(source) !== null)).toBe(true);
    expect(tables.find(({ criterion }) => criterion === 'heat')!.rows[0]!.points).toMatch(/^8\.5 \(7\.4 to 8\.9\)$/);
  });

  it('an answer without evidence still has its rows', () => {
    expect(membraneRows(byHand)).toHaveLength(1);
    expect(evidenceTables(byHand)).toEqual([]);
  });
});

describe('what is the same whichever is chosen', () => {
  it('slope, boards, water, edges, flashings and wood with their figures', () => {
    const rows = back.sameWhichever ?? [];
    expect(rows.map(({ what }) => what)).toEqual(
      expect.arrayContaining(['The slope', 'The boards', 'Ways out for the water', 'Nailers and edge metal']),
    );
    const layout = back.layouts.find(({ id }) => id === back.chosenLayout)!;
    expect(rows[0]!.text).toContain('Planes at least 0.25 in/ft');
    expect(rows[1]!.text).toContain(Math.round(layout.volumeBoardFt).toLocaleString('en-US'));
    expect(rows.every(({ text: words }) => /^[A-Z0-9]/.test(words) && !/undefined|NaN|Infinity/.test(words))).toBe(
      true,
    );
  });

  it('is the same under other weights, and empty where no layout is chosen', () => {
    const file = caseText('c57');
    const dear = caseRoof(
      'c57, price only',
      file.replace('"grease": true', '"grease": true, "weights": { "cost": 100 }'),
    );
    const usual = caseRoof('c57', file);
    expect(dear.answer.chosenMembrane).not.toBe(usual.answer.chosenMembrane);
    expect(dear.answer.sameWhichever).toEqual(usual.answer.sameWhichever);
    expect(sameWhichever(null, usual.answer.scope)).toEqual([]);
  });
});

describe('own weights on paper', () => {
  const own = caseRoof(
    'c57, own weights',
    caseText('c57').replace('"grease": true', '"grease": true, "weights": { "heat": 50 }'),
  );

  it('page, terminal and JSON say that they are the reader’s own', async () => {
    expect(await text(own.answer)).toContain('Your own weights are used,');
    expect(await text(back)).not.toContain('Your own weights are used');
    expect(assessText(own.answer).replaceAll(/\s+/g, ' ')).toContain('Your own weights are used: summer heat 50 %.');
    expect(JSON.parse(resultJson(own.answer)).membraneWeighing).toMatchObject({ own: true });
    const [heat] = weightRows(own.answer.membraneWeighing!);
    expect(heat).toMatchObject({ title: 'Summer heat (aged SRI)', weight: '50 %', by: 'your own' });
  });

  it('JSON carries evidence with a source in every cell', () => {
    const json = JSON.parse(resultJson(own.answer)) as Assessment;
    expect(json.membranes.every(({ evidence }) => evidence?.every(({ source }) => source.text !== ''))).toBe(true);
  });
});

describe('the section itself', () => {
  it('says the winner’s reasons once, and folds all but one table', async () => {
    const page = await text(back);
    const shut = page.replaceAll(/<details>.*?<\/details>/g, '');
    expect(shut.match(/<table/g)).toHaveLength(1);
    expect(shut.match(/Two layers of rubberized asphalt/g)).toHaveLength(1);
    expect(page).toContain('Ruled out on this roof, and why');
    expect(page).toContain('The evidence, count by count');
  });
});
