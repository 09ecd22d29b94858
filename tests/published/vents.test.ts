import { describe, expect, it } from 'vitest';
import { ventRatios } from '../../reference/attic-vents.ts';
import type { Adjoining, AtticVent } from '../../src/core/roof.ts';
import { neededSqIn, reducedRule, ventReport } from '../../src/core/vents/attic.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const rule = { source: 'irc-r806-2015', at: 'R806.2', grade: 'found' } as const;
const worked = { source: 'vent-table', at: 'worked example, 3,930 sq ft', grade: 'found' } as const;

const vent = (kind: AtticVent['kind'], count: number, netFreeSqIn: number | null = null): AtticVent => ({
  kind,
  count,
  netFreeSqIn,
  high: null,
});

function report(more: Partial<Adjoining> & { zone?: string | null; edition?: number }) {
  const { zone = '5A', edition = 2021, ...rest } = more;
  const adjoining: Adjoining = { atticSqFt: 1200, ceilingRetarder: 'unknown', vents: [], ...rest };
  return ventReport({ adjoining, edition, climateZone: zone }).report;
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
    const { verdict, highSqIn, lowSqIn } = report({ vents: balanced });
    expect([verdict, highSqIn, lowSqIn]).toEqual(['enough-by-exception', 288, 324]);
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
    const gables = report({ vents: [vent('ridge', 16, 18), vent('soffit-strip', 20, 9), vent('gable', 2)] });
    expect([gables.thereSqIn, gables.verdict]).toEqual([588, 'short']);
    expect(gables.conditions[0].text).toContain('288 sq in high, 180 at the eaves');
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
    expect(said([...balanced, vent('gable', 2)])).toContain('ridge vent, gable louver');
    expect(said([vent('box', 8), vent('under-eave', 2)])).toContain('More air can leave (400 sq in)');
    expect(said([...balanced, vent('power-fan', 1)])).toContain('flue gas');
  });

  it('takes the usual area where no label was read, and says so', () => {
    const adjoining: Adjoining = { atticSqFt: 300, ceilingRetarder: 'no', vents: [vent('ridge', 10)] };
    const { report: read, assumed } = ventReport({ adjoining, edition: 2021, climateZone: null });
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
