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

/** The cell of the first option that builds something. */
const newRoof = (assessment: Assessment, id: string): OwnerStatement => {
  const built = kitchenTable(assessment).layouts.findIndex((layout) => layout !== null);
  return cells(assessment, id)[built]!;
};

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
    expect(newRoof(given.get('corner-drain')!, 'foam').because).toHaveLength(1);
  });
});

describe('shingles above the section', () => {
  it('are said to come off, as far as the plan needs it', () => {
    const strip = chosenOf(backSection).newHeights!.tieIns[0].stripIn!;
    const [line] = said(backSection, 'changes').filter((text) => text.includes('shingles come off'));
    expect(line).toMatch(/^Shingles above.*: shingles come off, at least 40 1\/8″ up the slope/);
    expect(Math.abs(strip - 40.125)).toBeLessThan(1 / 16);
    expect(cells(backSection, 'shingles')[0]!.text).toBe('at least 40 1/8″ up the slope');
    expect(cells(given.get('corner-drain')!, 'shingles')).toEqual([]);
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

describe('damp and energy below the deck', () => {
  const over = (below: object, insulation: object = {}) =>
    smallRoof({
      place: { city: 'Houston, TX' },
      building: { below: 'living-ceiling' },
      deck: { kind: 'plywood', joists: { depthIn: 9.25 } },
      insulation: { below, ...insulation },
    });

  it('a deck over foam is not said to stay warm', () => {
    const foam = over({ kind: 'closed-cell', thicknessIn: 5, vented: 'no' });
    expect(foam.moisture?.verdict).toBe('safe');
    expect(said(foam, 'damp')[0]).toMatch(/foam below lies tight against the deck.*no damp/);
    expect(said(foam, 'damp').join(' ')).not.toContain('warm');
    const above = over({ kind: 'none' }, { baseIn: 3 });
    expect(above.moisture?.verdict).toBe('safe');
    expect(said(above, 'damp')[0]).toContain('warm enough');
  });

  it('board over which outside air may pass meets no rule on either page', () => {
    const rule = (vented: string) => {
      const roof = over({ kind: 'batts', r: 19, vented }, { baseIn: 5 });
      return [said(roof, 'insulation').join(' '), newRoof(roof, 'energy').text];
    };
    const [page, cell] = rule('unknown');
    expect(page).toContain('We cannot say yet whether it meets the energy code.');
    expect(cell).toBe('not known yet');
    const [closed, met] = rule('no');
    expect(closed).toContain('it meets every energy rule that binds it');
    expect(met).toBe('met');
  });
});

describe('what was asked for and is not kept', () => {
  const wished = (parts: object, preferences: object) =>
    smallRoof({ ...parts, place: { city: 'Minneapolis, MN' }, preferences });

  it('is named on both pages, with what the plan does and why', () => {
    const keep = wished({}, { keepCovering: true });
    const { leastThicknessIn, greatestThicknessIn } = chosenOf(keep);
    expect(leastThicknessIn).toBeCloseTo(0.5, 9);
    expect(greatestThicknessIn).toBeCloseTo(2, 9);
    const words =
      'You asked for this: the covering stays. The new roof that is drawn here does not keep to it. It lays boards from 1/2″ to 2″ thick to make the slope, and they need a new covering. You decide whether that is given up. Nothing is settled until you do.';
    expect(said(keep, 'wishes').join(' ')).toBe(words);
    expect(
      kitchenTable(keep)
        .wishes.map(({ text }) => text)
        .join(' '),
    ).toBe(words);
    const board = wished({}, { noFoamAbove: true, noSprayFoam: true });
    expect(said(board, 'wishes').join(' ')).toMatch(
      /no sprayed foam\. Nothing that is drawn here goes against that\. You asked for this: no board above the deck\. .* lays boards on the deck, from 1\/2″ to 2″ thick, as they make the slope\./,
    );
  });

  it('is said to be kept where nothing is laid, and nothing is said where nothing was asked', () => {
    const falls = { existing: { planes: [{ slopeInPerFt: 0.5, fallsToward: { side: 0 } }], readOn: 'covering' } };
    const blister = { findings: [{ kind: 'blister', at: [8, 5], severity: 'plain' }] };
    const mended = wished({ ...falls, ...blister }, { keepCovering: true });
    expect(said(mended, 'wishes').join(' ')).toContain('the covering stays. Mending keeps to that.');
    expect(said(mended, 'wishes').join(' ')).not.toContain('given up');
    expect(said(smallRoof({}), 'wishes')).toEqual([]);
  });

  it('holds for flat boards that would not drain', () => {
    const flat = said(smallRoof({ insulation: { flatIn: 2 } }), 'wishes').join(' ');
    expect(flat).toMatch(
      /^You asked for flat boards, 2″ thick\. .* does not drain as it must\. So boards with a slope/,
    );
  });
});

describe('R and the energy code', () => {
  it('are told on both pages, in the figures of the answer', () => {
    const { effectiveR, thinnestR } = chosenOf(backSection);
    const ceiling = backSection.energyRules!.rows.find(({ id }) => id === 'residential-ceiling')!;
    expect(ceiling.result).toBe('fail');
    const words = said(backSection, 'insulation').join(' ');
    const figures = [effectiveR, thinnestR].map((r) => `R-${Math.round(r * 10) / 10}`);
    for (const figure of figures) {
      expect(words).toContain(figure);
      expect(cells(backSection, 'insulation')[0]!.text).toContain(figure);
    }
    expect(words).toContain(
      `The energy code asks for ${ceiling.asked} here. This new roof has ${ceiling.found}, so it falls short.`,
    );
    expect(words).toContain('You asked for R-30, and these boards alone do not reach it.');
    expect(cells(backSection, 'energy')[0]!.text).toBe(`not met: ${ceiling.asked} asked for, ${ceiling.found} there`);
  });

  it('a rule that another one stands for is no fault; one that is not known is not met in silence', () => {
    const flat = given.get('c48')!;
    expect(flat.energyRules!.rows.some(({ result }) => result === 'fail')).toBe(true);
    expect(said(flat, 'insulation').join(' ')).toMatch(/worth R-42\.8\..* it meets every energy rule that binds it/);
    expect(said(smallRoof({}), 'insulation').join(' ')).toContain(
      'We cannot say yet whether it meets the energy code.',
    );
    expect(cells(smallRoof({}), 'energy').map((cell) => cell?.text)).toContain('not known yet');
  });

  it('low boards at the drain are told as such', () => {
    expect(said(given.get('c04')!, 'insulation').join(' ')).toContain(
      'asks for 1″ of boards at the lowest point of the roof, and there are 1/2″.',
    );
  });
});

describe('damp', () => {
  it('stands on the kitchen table by its verdict', () => {
    const short = {
      safe: /^stays dry by/,
      'safe-if': /^stays dry if/,
      'at-risk': /^damp can gather/,
      'not-known': /^not known/,
      'not-asked': /^nobody heats/,
    };
    const cold = smallRoof({
      place: { city: 'Minneapolis, MN' },
      building: { below: 'living-ceiling', winterHumidityPct: 55 },
      insulation: { below: { kind: 'batts', thicknessIn: 9 } },
    });
    expect(cold.moisture!.verdict).toBe('at-risk');
    for (const assessment of [...given.values(), cold]) {
      const own = kitchenTable(assessment).layouts[0];
      if (own === null || own === undefined || assessment.layouts[own].id !== assessment.chosenLayout) continue;
      expect(cells(assessment, 'damp')[0]!.text).toMatch(short[assessment.moisture!.verdict]);
    }
    expect(newRoof(cold, 'damp').text).toContain('damp can gather');
    expect(said(cold, 'damp')[0]).toBe('Inside the new roof drawn here damp could gather:');
  });
});

describe('energy rules that are met by what may get damp', () => {
  it('are not said to be met without a word of the damp', () => {
    const roof = smallRoof({
      place: { city: 'Minneapolis, MN' },
      ruleSet: { building: 'irc-2018' },
      building: { below: 'living-ceiling' },
      insulation: { below: { kind: 'batts', r: 49, vented: 'no' } },
    });
    expect([roof.moisture!.verdict, roof.energyRules!.answer.slice(0, 5)]).toEqual(['at-risk', 'Every']);
    expect(newRoof(roof, 'energy').text).toContain('may get damp');
    expect(said(roof, 'insulation').join('\n')).toContain('may get damp here');
    expect(said(roof, 'insulation').join('\n')).not.toContain('meets every energy rule');
  });
});

describe('a load on the roof of today and on the new one', () => {
  it('is told of each by its name', () => {
    const { stops } = ownerPage(given.get('twenty-drains')!);
    const loads = stops.map(({ text }) => text).filter((text) => text.includes('could weigh'));
    expect(loads).toHaveLength(2);
    expect(loads.filter((text) => text.startsWith('On the new roof that is drawn here, '))).toHaveLength(1);
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
