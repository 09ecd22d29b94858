import { describe, expect, it } from 'vitest';
import { alternativeRows } from '../../reference/alternatives.ts';
import { alternativesFor } from '../../src/core/layout/alternatives/alternatives.ts';
import { longestRunFt } from '../../src/core/layout/alternatives/heights.ts';
import { sleeperCut } from '../../src/core/layout/alternatives/sleepers.ts';
import { platesFor } from '../../src/core/layout/alternatives/structure.ts';
import { limitsOf } from '../../src/core/layout/limits.ts';
import type { Alternative, Layout } from '../../src/core/report/types.ts';
import { type CaseRoof, caseRoof } from '../cases/case-roof.ts';

function of(roof: CaseRoof, chosen?: Layout | null): Alternative[] {
  const { site, answer, ruleSet } = roof;
  return alternativesFor({
    site,
    existing: answer.existing,
    layouts: answer.layouts,
    chosen: chosen === undefined ? (answer.layouts.find(({ id }) => id === answer.chosenLayout) ?? null) : chosen,
    limits: limitsOf(site, ruleSet),
  });
}
const ids = (list: readonly Alternative[]): string[] => list.map(({ id }) => id);
const figure = (list: readonly Alternative[], id: string, name: string): string =>
  list.find((one) => one.id === id)?.figures.find((one) => one.name === name)?.value ?? 'not told';

interface Invented {
  depthFt?: number;
  edges?: readonly object[];
  existing?: object;
  findings?: readonly object[];
  outlets?: readonly object[];
}

const roofOf = ({
  depthFt = 24,
  edges,
  existing = { surface: 'level' },
  findings = [],
  outlets = [],
}: Invented): CaseRoof =>
  caseRoof(
    'alternatives',
    JSON.stringify({
      version: 1,
      label: 'Invented',
      invented: true,
      outline: [
        [0, 0],
        [30, 0],
        [30, depthFt],
        [0, depthFt],
      ],
      deck: { kind: 'plywood', joists: { spacingIn: 24 } },
      edges: edges ?? [
        { side: 0, kind: 'gutter', mayDrain: 'yes' },
        ...[1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 40, mayDrain: 'no' })),
      ],
      outlets,
      existing: { ...existing, readOn: 'deck' },
      findings,
    }),
  );

describe('ripped sleepers', () => {
  // The two examples of the note: 12 ft at 1/4 from a 2x4 gives 3/16 and 3 3/16; 3/4 and 3 3/4 take a 2x6.
  it.each([
    [12, 0.25, 0.1875, 3.1875, '2x4'],
    [12, 0.25, 0.75, 3.75, '2x6'],
    [24, 0.25, 0.75, 6.75, '2x10'],
    [60, 0.25, 0.75, 15.75, null],
  ])('%s ft at %s from %s in rises to %s in, two wedges from a %s', (run, slope, low, high, stock) => {
    const cut = sleeperCut(run, slope, low);
    expect(cut.highIn).toBeCloseTo(high, 9);
    expect(cut.pairFrom).toBe(stock);
  });

  it('are told where the deck comes off down to the joists, with lines at the spacing that was given', () => {
    const list = of(roofOf({ findings: [{ kind: 'deck-stripped', note: 'stripped to the joists' }] }));
    expect(ids(list)).toContain('ripped-sleepers');
    expect(figure(list, 'ripped-sleepers', 'height at the high end')).toBe('6 3/4″');
    expect(figure(list, 'ripped-sleepers', 'cut from')).toContain('2x10');
    // 30 ft at 24 in: 15 spaces.
    expect(figure(list, 'ripped-sleepers', 'sleepers')).toBe('16 lines');
  });

  it('are told from 6 in of foam on, and not before', () => {
    expect(ids(of(roofOf({ depthFt: 36 })))).toContain('ripped-sleepers');
    expect(ids(of(roofOf({ depthFt: 16 })))).not.toContain('ripped-sleepers');
  });
});

describe('structure', () => {
  it.each([
    [6, 1],
    [12, 2],
    [13, 3],
  ])('one plate of 1 1/2 in for each 6 ft of span at 1/4: %s ft take %s', (span, plates) => {
    expect(platesFor(span, 0.25)).toBe(plates);
  });

  it('comes first on a deck that sags 4 in', () => {
    const list = of(caseRoof('c03-planes'));
    expect(list[0].id).toBe('structure-first');
    expect(list[0].why).toContain('hangs 4″');
    expect(figure(list, 'structure-first', 'bearing raised instead')).toContain('10″ at one end of a 40');
  });
});

describe('heights', () => {
  it('a sill 10 in up leaves a rise of 1 in and a run of 4 ft at 1/4', () => {
    expect(longestRunFt(10 - 8, 0.25, 0.5)).toBe(4);
  });

  it('a low door asks for more outlets, with the run that fits', () => {
    const low = roofOf({
      edges: [
        { side: 0, kind: 'gutter', mayDrain: 'yes' },
        { side: 1, kind: 'parapet', topIn: 40, mayDrain: 'yes' },
        {
          side: 2,
          kind: 'wall',
          mayDrain: 'no',
          openings: [{ kind: 'door', fromFt: 10, toFt: 13, heightIn: 10 }],
        },
        { side: 3, kind: 'parapet', topIn: 40, mayDrain: 'no' },
      ],
    });
    const list = of(low);
    expect(ids(list)).toContain('more-outlets');
    expect(figure(list, 'more-outlets', 'longest run at 1/4 in per ft that fits')).toBe('4′-0″');
  });

  it('a steep roof is told only where nothing fits', () => {
    const roof = roofOf({});
    expect(ids(of(roof))).not.toContain('steep-conversion');
    expect(figure(of(roof, null), 'steep-conversion', 'ridge of a gable at 4 in 12')).toContain('4′-0″');
  });
});

describe('low spots', () => {
  const hollow = (depthIn: number, existing: object = {}) =>
    roofOf({
      existing: {
        ...existing,
        sense: 'height',
        readings: [0, 6, 12, 18, 24, 30].flatMap((x) =>
          [0, 6, 12, 18, 24].map((y) => [x, y, y / 4 - (x === 12 && y === 12 ? depthIn : 0)]),
        ),
      },
    });

  it('one small hollow on a roof that falls otherwise is filled, and may get an outlet', () => {
    const list = of(hollow(2.4));
    expect(ids(list)).toEqual(expect.arrayContaining(['local-fill', 'outlet-at-low-spot']));
    expect(ids(list).indexOf('local-fill')).toBeLessThan(ids(list).indexOf('outlet-at-low-spot'));
    expect(figure(list, 'outlet-at-low-spot', 'way of the water now')).toBe('12′-0″');
  });

  it('a hollow deeper than 1 in is not filled by hand', () => {
    const list = of(hollow(4), null);
    expect(ids(list)).not.toContain('local-fill');
    expect(ids(list)).toContain('outlet-at-low-spot');
  });
});

it('a level, dry roof with room has no alternative: tapered foam is the answer', () => {
  expect(of(roofOf({ depthFt: 16 }))).toEqual([]);
});

it('every alternative stands on a row with its conditions and a source', () => {
  for (const row of alternativeRows) {
    expect(row.when.length).toBeGreaterThan(20);
    expect(row.watch.length).toBeGreaterThan(20);
    expect(['practice', 'memory']).toContain(row.grade);
  }
});
