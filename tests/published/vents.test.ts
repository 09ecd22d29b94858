import { describe, expect, it } from 'vitest';
import { ventRatios } from '../../reference/attic-vents.ts';
import { ventFigures } from '../../src/core/report/page-damp.ts';
import type { Adjoining, AtticVent } from '../../src/core/roof.ts';
import type { FlatPart } from '../../src/core/vents/advice.ts';
import { ventReport } from '../../src/core/vents/attic.ts';
import { neededSqIn, reducedRule } from '../../src/core/vents/rules.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const rule = { source: 'irc-r806-2015', at: 'R806.2', grade: 'found' } as const;
const worked = { source: 'vent-table', at: 'worked example, 3,930 sq ft', grade: 'found' } as const;

const vent = (kind: AtticVent['kind'], count: number, netFreeSqIn: number | null = null): AtticVent => ({
  kind,
  count,
  netFreeSqIn,
  high: null,
});

const exposed: FlatPart = { below: 'living-exposed-deck', kind: 'none' };

function report(more: Partial<Adjoining> & { zone?: string | null; edition?: number; flat?: FlatPart }) {
  const { zone = '5A', edition = 2021, flat = exposed, ...rest } = more;
  const adjoining: Adjoining = { atticSqFt: 1200, ceilingRetarder: 'unknown', vents: [], ...rest };
  return ventReport({ adjoining, edition, climateZone: zone, flat }).report;
}

const bare = report({});

const rows: readonly CheckRow[] = [
  {
    id: '33 (1/150)',
    of: 'net free area of 1,200 sq ft, sq in',
    call: () => neededSqIn(1200, ventRatios.usual),
    expected: 1152,
    tol: 1e-9,
    ...rule,
  },
  {
    id: '33 (1/300)',
    of: 'net free area of 1,200 sq ft, sq in',
    call: () => neededSqIn(1200, ventRatios.reduced),
    expected: 576,
    tol: 1e-9,
    ...rule,
  },
  {
    id: '33 (high, least)',
    of: 'high part by 1/300, sq in',
    call: () => bare.highFromSqIn,
    expected: 230.4,
    tol: 1e-9,
    ...rule,
  },
  {
    id: '33 (high, most)',
    of: 'high part by 1/300, sq in',
    call: () => bare.highToSqIn,
    expected: 288,
    tol: 1e-9,
    ...rule,
  },
  {
    id: '33 (3,930)',
    of: '1/300 of 3,930 sq ft, sq ft',
    call: () => neededSqIn(3930, ventRatios.reduced) / 144,
    expected: 13.1,
    tol: 0.05,
    ...worked,
  },
  {
    id: '33 (3,930, sq in)',
    of: '1/300 of 3,930 sq ft, sq in',
    call: () => neededSqIn(3930, ventRatios.reduced),
    expected: 1886,
    tol: 0.5,
    ...worked,
  },
  {
    id: '33 (soffit)',
    of: 'half of it at 10 sq in a foot, ft',
    call: () => neededSqIn(3930, ventRatios.reduced) / 2 / 10,
    expected: 94.3,
    tol: 0.05,
    ...worked,
  },
  {
    id: '33 (roof vents)',
    of: 'half of it in vents of 50 sq in',
    call: () => Math.ceil(neededSqIn(3930, ventRatios.reduced) / 2 / 50),
    expected: 19,
    tol: 0,
    ...worked,
  },
  {
    id: '33 (doubled)',
    of: '1/150 of 3,930 sq ft, sq ft',
    call: () => neededSqIn(3930, ventRatios.usual) / 144,
    expected: 26.2,
    tol: 0.05,
    ...worked,
  },
  {
    id: 'ridge, least',
    of: 'ridge vent at 18 sq in a foot for the least high part, ft',
    call: () => (bare.highFromSqIn ?? 0) / 18,
    expected: 12.8,
    tol: 1e-9,
    ...rule,
    grade: 'computed',
  },
  {
    id: 'ridge, most',
    of: 'ridge vent at 18 sq in a foot for the most high part, ft',
    call: () => (bare.highToSqIn ?? 0) / 18,
    expected: 16,
    tol: 1e-9,
    ...rule,
    grade: 'computed',
  },
  {
    id: 'edition 2006',
    of: 'conditions of 1/300',
    call: () => reducedRule(2009).needs,
    expected: 'one',
    tol: 0,
    source: 'irc-r806-2006',
    at: 'R806.2',
    grade: 'found',
  },
  {
    id: 'edition 2012',
    of: 'conditions of 1/300',
    call: () => reducedRule(2012).needs,
    expected: 'one',
    tol: 0,
    source: 'irc-r806-2012',
    at: 'R806.2',
    grade: 'found',
  },
  {
    id: 'edition 2015',
    of: 'conditions of 1/300',
    call: () => reducedRule(2024).needs,
    expected: 'both',
    tol: 0,
    source: 'irc-r806-2015',
    at: 'R806.2',
    grade: 'found',
  },
];

checkRows('net free vent area, check value 33', rows);

describe('vents of the attic beside the section', () => {
  const balanced = [vent('ridge', 16, 18), vent('soffit-strip', 36, 9)];

  it('between the two rules both conditions decide: zone 5 asks for no retarder', () => {
    const { verdict, highSqIn, eaveSqIn } = report({ vents: balanced });
    expect([verdict, highSqIn, eaveSqIn]).toEqual(['enough-by-exception', 288, 324]);
  });

  it.each([
    ['yes', 'enough-by-exception'],
    ['no', 'short'],
    ['unknown', 'not-known'],
  ] as const)('in zone 6 the retarder decides: %s', (ceilingRetarder, verdict) => {
    expect(report({ vents: balanced, zone: '6A', ceilingRetarder }).verdict).toBe(verdict);
  });

  it('in 2012 one of the two was enough', () => {
    expect(report({ vents: balanced, zone: '6A', ceilingRetarder: 'no', edition: 2012 }).verdict).toBe(
      'enough-by-exception',
    );
  });

  it('all of it low misses the high share', () => {
    const low = report({ vents: [vent('soffit-strip', 70, 9)] });
    expect(low.verdict).toBe('short');
    expect(low.conditions[0].state).toBe('not-met');
    expect(low.todo.join(' ')).toContain('522 sq in');
  });

  it('a gable louver is neither high nor at the eaves: by 1/300 it does not count', () => {
    const gables = report({ vents: [vent('soffit-strip', 40, 9), vent('gable', 4)] });
    expect([gables.highSqIn, gables.eaveSqIn, gables.betweenSqIn]).toEqual([0, 360, 240]);
    expect([gables.thereSqIn, gables.countedSqIn, gables.verdict]).toEqual([600, 600, 'short']);
    expect(gables.conditions[0].text).toContain('0 sq in high, 360 at the eaves');
  });

  it('what the advice closes is not counted, in the answer and in what is to be added', () => {
    // 900 sq ft: 864 and 432 needed. 876 are there, 396 without the louvers.
    const mixed = report({
      atticSqFt: 900,
      vents: [vent('gable', 4, 120), vent('ridge', 12, 18), vent('soffit-strip', 20)],
    });
    expect([mixed.thereSqIn, mixed.countedSqIn, mixed.toClose, mixed.verdict]).toEqual([
      876,
      396,
      ['gable louver'],
      'short',
    ]);
    expect(mixed.answer).toMatch(/^With the gable louver closed.*too few vents: 396 sq in.*864 needed.*Today 876/);
    expect(mixed.warnings[0].text).toContain('Keep the ridge vent and close the gable louver.');
    expect(mixed.warnings[1].text).toContain('closed (216 sq in) than comes in at the eaves (180 sq in)');
    expect(mixed.vents.map(({ kind, where, stays }) => [kind, where, stays])).toEqual([
      ['gable', 'between', false],
      ['ridge', 'high', true],
      ['soffit-strip', 'eaves', true],
    ]);
    expect(mixed.todo[0]).toBe('Close the gable louver.');
    const closed = report({ atticSqFt: 900, vents: [vent('ridge', 12, 18), vent('soffit-strip', 20)] });
    expect(mixed.todo.slice(1)).toEqual(closed.todo);
    // A fan and louvers beside a ridge vent: 438 of 558 are left, 1,152 - 438 = 714 to add.
    const three = report({
      vents: [vent('ridge', 14), vent('gable', 2), vent('power-fan', 1), vent('soffit-strip', 30)],
    });
    expect(three.toClose).toEqual(['gable louver', 'powered fan']);
    expect(three.todo[1]).toContain('Add 714 sq in');
  });

  it('without a ridge vent the high kind with the most area stays', () => {
    expect(report({ vents: [vent('gable', 9), vent('box', 2), vent('turbine', 3)] }).toClose).toEqual([
      'gable louver',
      'box vent',
    ]);
  });

  it('what 1/300 takes is what is missing of each part, never a total under what is there', () => {
    // 360 high and 270 at the eaves of 1,200 sq ft: 57 % is high, over the 50; 90 more at the eaves make it even.
    const high = report({
      vents: [vent('ridge', 20, 18), vent('soffit-strip', 30, 9)],
      zone: '2A',
      ceilingRetarder: 'no',
    });
    expect(high.verdict).toBe('short');
    expect(high.todo).toEqual([
      'Add 522 sq in of net free area, at least 306 of it at the eaves, to reach 1/150.',
      'Or by the 1/300 rule: add 90 sq in at the eaves, which makes 360 sq in high and 360 at the eaves.',
    ]);
    const after = report({ vents: [vent('ridge', 20, 18), vent('soffit-strip', 40, 9)], zone: '2A' });
    expect(after.verdict).toBe('enough-by-exception');
    const cold = report({ vents: balanced, zone: '6A', ceilingRetarder: 'no' });
    expect(cold.todo[1]).toContain(
      'the vents are enough (288 sq in high and 324 at the eaves). It takes the vapor retarder',
    );
  });

  it.each([
    [[vent('soffit-strip', 70, 9)], 2021],
    [[vent('ridge', 4, 18)], 2021],
    [[vent('box', 9), vent('under-eave', 3)], 2009],
    [[], 2012],
  ] as const)('what is added by 1/300 to %j in %d holds its split', (vents, edition) => {
    const short = report({ vents: [...vents], edition, zone: '3A', ceilingRetarder: 'no' });
    const [, high, eaves] = /makes ([\d,]+) sq in high and ([\d,]+) at the eaves/.exec(short.todo[1])!;
    const number = (text: string): number => Number(text.replace(',', ''));
    const made = report({
      vents: [vent('ridge', 1, number(high)), vent('soffit-strip', 1, number(eaves))],
      edition,
      zone: '3A',
    });
    expect(made.conditions[0].state).toBe('met');
    expect(made.warnings).toEqual([]);
  });

  it('a vent that nobody counted adds nothing, is said to and is asked for', () => {
    const open = report({ vents: [{ ...vent('ridge', 0), count: null }, vent('soffit-strip', 32)] });
    expect([open.verdict, open.countedSqIn, open.vents[0].count]).toEqual(['not-known', 288, null]);
    expect(open.todo).toEqual(['Count or measure the ridge vent.']);
    expect(open.answer).toContain('288 sq in of net free vent area (the ridge vent not counted)');
    const shown = ventFigures(open).map(({ value }) => value);
    expect(shown).toContain('high: not counted (ridge vent), 288 at the eaves');
    expect(shown).toContain('288 sq in, and what nobody counted: ridge vent');
    expect(shown.join(' ')).not.toMatch(/\b0 (high|sq in)/);
    // Its share may hold: it is no condition that is not met.
    expect(open.conditions[0]).toMatchObject({
      state: 'not-known',
      text: expect.stringContaining('high: not counted'),
    });
    const part = report({
      vents: [vent('ridge', 4, 18), { ...vent('box', 0), high: true, count: null }, vent('gable', 0)],
    });
    expect(ventFigures(part).at(-1)?.value).not.toContain('not counted');
    const none = report({ vents: [{ ...vent('ridge', 0), count: null }] });
    expect(ventFigures(none).map(({ value }) => value)).toContain('not counted: ridge vent');
    // Eaves that nobody counted are not too few.
    const eaves = report({ vents: [vent('ridge', 4, 18), { ...vent('soffit-strip', 0), count: null }] });
    expect(eaves.warnings).toEqual([]);
    expect(ventFigures(eaves).at(-1)?.value).toBe('72 high, at the eaves: not counted (soffit strip)');
    // One that is to be closed need not be counted.
    const closed = report({ vents: [...balanced, { ...vent('gable', 0), count: null }] });
    expect([closed.verdict, closed.todo]).toEqual(['enough-by-exception', ['Close the gable louver.']]);
  });

  it('the flat part beside it is spoken of by what lies in it', () => {
    const said = (flat: FlatPart): string => report({ flat }).flatPart.text;
    expect(said(exposed)).toContain('its insulation lies above the deck');
    for (const flat of [
      { below: 'living-ceiling', kind: 'batts' },
      { below: 'living-ceiling', kind: 'closed-cell' },
      { below: 'living-ceiling', kind: null },
      { below: 'attic', kind: null },
      { below: 'unheated', kind: null },
    ] as const)
      expect(said(flat), flat.below).not.toContain('lies above the deck');
    expect(said({ below: 'living-ceiling', kind: 'closed-cell' })).toContain('the foam lies against its deck');
    expect(said({ below: 'attic', kind: null })).toContain('measure both floors');
  });

  it('1/150 asks for no condition', () => {
    expect(report({ vents: [vent('soffit-strip', 128, 9)], zone: '7' }).verdict).toBe('enough');
  });

  it('warns of two kinds of outlet, of more outlet than inlet, and of a fan; not of one kind', () => {
    const said = (vents: AtticVent[]): string =>
      report({ vents })
        .warnings.map(({ text }) => text)
        .join('\n');
    expect(said(balanced)).toBe('');
    expect(said([...balanced, vent('gable', 2)])).toContain(
      'Two kinds of outlet in one attic (ridge vent, gable louver)',
    );
    expect(said([vent('box', 8), vent('under-eave', 2)])).toContain('More air can leave (400 sq in)');
    expect(said([vent('power-fan', 1), vent('soffit-strip', 9)])).toContain('flue gas');
    expect(said([...balanced, vent('power-fan', 1)])).toContain('close the powered fan');
  });

  it('takes the usual area where no label was read, and says so', () => {
    const adjoining: Adjoining = { atticSqFt: 300, ceilingRetarder: 'no', vents: [vent('ridge', 10)] };
    const { report: read, assumed } = ventReport({ adjoining, edition: 2021, climateZone: null, flat: exposed });
    expect(read.thereSqIn).toBe(120);
    expect(assumed).toEqual([
      expect.objectContaining({ path: 'adjoining.vents[0].netFreeSqIn', value: '12 sq in per ft' }),
    ]);
  });

  it('without the floor area nothing is judged, and the flat part is never vented', () => {
    const { verdict, needed150SqIn, flatPart } = report({ atticSqFt: null, vents: balanced });
    expect([verdict, needed150SqIn]).toEqual(['not-known', null]);
    expect(flatPart.text).toContain('The flat part is not vented');
  });
});
