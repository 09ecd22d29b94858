import { describe, expect, it } from 'vitest';
import type { OwnerStatement } from '../../src/core/report/owner/statement.ts';
import { kitchenTable } from '../../src/core/report/page-kitchen-table.ts';
import { type OwnerSectionId, ownerPage } from '../../src/core/report/page-owner.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { givenRoofs, smallRoof } from './owner-roofs.ts';

const given = new Map(givenRoofs().map(({ name, assessment }) => [name, assessment]));
const backSection = given.get('back-section')!;

const said = (assessment: Assessment, id: OwnerSectionId): string[] =>
  (ownerPage(assessment).sections.find((each) => each.id === id)?.statements ?? []).map(({ text }) => text);

const cells = (assessment: Assessment, id: string): (OwnerStatement | null)[] => [
  ...(kitchenTable(assessment).rows.find((row) => row.id === id)?.cells ?? []),
];

const chosenOf = ({ layouts, chosenLayout }: Assessment) => layouts.find(({ id }) => id === chosenLayout)!;

describe('foam in all', () => {
  it('holds what levels the deck, and names it', () => {
    const { volumeBoardFt, levellingBoardFt } = chosenOf(backSection);
    expect(levellingBoardFt).toBeGreaterThan(100);
    const cell = cells(backSection, 'foam')[0]!;
    const [all, boards, fill] = cell.because.map(({ shown }) => Number(shown.replace(/[^\d]/g, '')));
    expect([boards, fill]).toEqual([Math.round(volumeBoardFt), Math.round(levellingBoardFt)]);
    expect(all).toBe(Math.round(volumeBoardFt + levellingBoardFt));
    expect(cell.text).toContain('to level the deck first');
    // Nothing to level: one figure.
    expect(cells(given.get('corner-drain')!, 'foam')[0]!.because).toHaveLength(1);
  });
});

describe('shingles above the section', () => {
  it('are said to come off, as far as the plan needs it', () => {
    const strip = chosenOf(backSection).newHeights!.tieIns[0].stripIn!;
    const [line] = said(backSection, 'changes').filter((text) => text.includes('shingles come off'));
    expect(line).toMatch(/^Shingles above.*: shingles come off, at least 40 1\/8″ up the slope/);
    expect(Math.abs(strip - 40.125)).toBeLessThan(1 / 16);
  });

  it('are said to come off where nobody measured their slope', () => {
    const roof = smallRoof({
      edges: [
        { side: 0, kind: 'gutter', mayDrain: 'yes' },
        { side: 1, kind: 'rake', mayDrain: 'no' },
        { side: 2, kind: 'shingles-above', mayDrain: 'no' },
        { side: 3, kind: 'rake', mayDrain: 'no' },
      ],
    });
    expect(said(roof, 'changes').join('\n')).toMatch(
      /shingles come off along the whole edge\. How far up is not known/,
    );
  });
});

describe('wood', () => {
  it('has its unit behind every figure', () => {
    const unit = '(?:sheets?|lots?|pieces?|ft)';
    const range = new RegExp(`most likely [\\d,.]+ ${unit}, and in one job of ten more than [\\d,.]+ ${unit}\\.$`);
    const ranges = [...given.values()].flatMap((each) => said(each, 'wood')).filter((text) => /most likely/.test(text));
    expect(ranges.length).toBeGreaterThan(1);
    for (const text of ranges) expect(text).toMatch(range);
    expect(said(backSection, 'wood').some((line) => /most likely [\d,.]+ sheets?, and/.test(line))).toBe(true);
  });
});

describe('a town that stands in', () => {
  it('is named on both pages wherever its weather is used, and nowhere else', () => {
    const nowhere = smallRoof({});
    const town = nowhere.heat!.day.town;
    expect(nowhere.heat!.assumed.some(({ path }) => path === 'place.city')).toBe(true);
    expect(said(nowhere, 'heat').join('\n')).toContain(`these figures use that of ${town}. Yours can be hotter`);
    expect(ownerPage(nowhere).numbers.find(({ id }) => id === 'sun')?.today.text).toContain(town);
    expect(cells(nowhere, 'sun')[0]?.text).toContain(`by the weather of ${town}`);
    const phoenix = smallRoof({ place: { city: 'Phoenix, AZ' } });
    expect(said(phoenix, 'heat').join('\n')).not.toContain('weather for your own town');
    expect(cells(phoenix, 'sun')[0]?.text).not.toContain('weather');
  });
});
