import { describe, expect, it } from 'vitest';
import { type KitchenTable, kitchenTable } from '../../src/core/report/page-kitchen-table.ts';
import { ownerPage } from '../../src/core/report/page-owner.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { smallRoof } from './owner-roofs.ts';

// What the owner and the kitchen table say of the old roof. Common practice, no source.

const dry = { kind: 'dry-insulation', foundBy: 'scan', areaSqFt: 240 };
const drained = {
  existing: { planes: [{ slopeInPerFt: 0.5, fallsToward: { side: 0 } }], readOn: 'covering', seenDryAfter48h: true },
};
const found = (findings: readonly object[], parts: object = {}): Assessment =>
  smallRoof({ ...drained, findings, ...parts });

const told = (assessment: Assessment, id: string): string =>
  ownerPage(assessment)
    .sections.filter((section) => section.id === id)
    .flatMap(({ statements }) => statements.map(({ text }) => text))
    .join(' ');
const cells = ({ rows }: KitchenTable, id: string): (string | undefined)[] =>
  rows.find((row) => row.id === id)?.cells.map((cell) => cell?.text) ?? [];

describe('an old roof that stays', () => {
  it('a worn surface, dry and drained, is coated, and nobody is told to mend it', () => {
    const roof = found([{ kind: 'worn-coating', areaSqFt: 160, severity: 'plain' }, dry], {
      covering: { kind: 'coating', layers: 1, ageYears: 12 },
    });
    expect(roof.headline).toContain('What was found allows a coating');
    expect(roof.scope!.answer).toMatch(/^It may be coated\. The surface is worn/);
    expect(told(roof, 'scope')).toContain('It can be coated.');
    expect(told(roof, 'scope')).not.toMatch(/Mend it|does not pond/);
    const table = kitchenTable(roof);
    expect(table.options).toEqual(['Coat it', 'New roof on sloped boards']);
    expect(table.lead.text).toContain('a new coat');
    expect(cells(table, 'does')[0]).toBe('Seams are mended, then the old roof gets a new coat.');
    const why = roof.scope!.ways[1].reasons.map(({ text }) => text).join(' ');
    expect(why).toContain('on cured silicone nothing holds but silicone');
  });

  it('where nothing is wrong there is nothing to mend', () => {
    const roof = found([dry]);
    expect(roof.headline).toContain('Nothing that was found asks for work on it.');
    expect(roof.scope!.answer).toMatch(/^Keep it as it is\./);
    expect(told(roof, 'scope')).toBe('Keep the roof as it is. Nothing that was noted asks for more than upkeep.');
    expect(kitchenTable(roof).options[0]).toBe('Leave it as it is');
    expect(cells(kitchenTable(roof), 'does')[0]).toBe('Nothing is done but upkeep.');
    expect(JSON.stringify([kitchenTable(roof), roof.planned])).not.toMatch(/is mended|asks for repairs/);
  });
});
