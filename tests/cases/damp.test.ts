import { describe, expect, it } from 'vitest';
import { ceilingU } from '../../reference/energy.ts';
import { longestHiddenScrewIn } from '../../src/core/layout/flat-boards.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';
import { slopePercent } from '../../src/units/print.ts';
import { type CaseRoof, caseRoof, caseRows, caseText, everythingSaid, findingIds, said } from './case-roof.ts';

const moistureOf = ({ answer }: CaseRoof) => {
  if (answer.moisture === undefined) throw new Error('nothing is said about damp');
  return answer.moisture;
};

describe('C47: parapet roof at 1/4 in 12 with closed-cell foam below, no outlet entered', () => {
  const c47 = caseRoof('c47');
  const { below, verdict, tests } = moistureOf(c47);

  caseRows('check values', [
    { key: 'R_below', got: () => below.r, value: 55.25, tol: 0.5, basis: 'C' },
    {
      key: 'condensation_ok_air_impermeable',
      got: () => verdict === 'safe' && below.kind === 'closed-cell',
      value: true,
      basis: 'M',
    },
    {
      key: 'slope_ok',
      got: () => c47.answer.existing.ruleStandings?.find(({ id }) => id === 'irc-2021')?.passes,
      value: true,
      basis: 'C',
    },
  ]);

  it('NO_SECONDARY is said, and the drainage of a parapet roof without an outlet is not approved', () => {
    expect(findingIds(c47)).toContain('no-second-way-out');
    expect(findingIds(c47)).toContain('no-outlet-known');
    expect(c47.answer.existing.verdict).toBe('ponds');
    expect(c47.answer.headline).toContain('no way out for water at all');
  });

  it('the tests for batts are not asked of foam, and its R is listed as assumed', () => {
    expect(tests.filter(({ state }) => state === 'fails')).toEqual([]);
    expect(tests.find(({ id }) => id === 'table-foam')?.state).toBe('not-asked');
    expect(c47.answer.assumed.map(({ path }) => path)).toContain('insulation.below.r');
  });

  it('the same thickness of batts is at risk', () => {
    const batts = caseText('c47').replace('"closed-cell"', '"batts"');
    const { verdict: with_, leastAboveR } = moistureOf(caseRoof('c47 with batts', batts));
    expect(with_).toBe('at-risk');
    expect(leastAboveR).toBeGreaterThan(25);
  });
});

describe('C48: exposed plank ceiling, all insulation on top, slope 1:4', () => {
  const c48 = caseRoof('c48');
  const { answer } = c48;
  const slope = answer.existing.leastFaceSlopeInPerFt ?? 0;
  const { above, verdict, options, deckF } = moistureOf(c48);

  caseRows('check values', [
    {
      key: 'slope_pct',
      got: () => Number(slopePercent(slope).replace(/[^\d.]/g, '')),
      value: 25,
      tol: 0.01,
      basis: 'C',
    },
    { key: 'slope_as_pitch', got: () => slope, value: 3, tol: 0.01, basis: 'C' },
    { key: 'R_above', got: () => above.labelR, value: 42.75, tol: 0.1, basis: 'C' },
    {
      key: 'R_needed_by_U026',
      got: () => 1 / (ceilingU.find(({ r }) => r === 49)?.u ?? Number.NaN),
      value: 38.5,
      tol: 0.1,
      basis: 'M',
    },
    { key: 'max_fastener_in', got: () => answer.flatBoards?.longestScrewIn, value: 10, tol: 0.26, basis: 'C' },
  ]);

  it('1:4 is asked about, never read as 1/4 in per ft', () => {
    const asked = parseRoofText(caseText('c48').replace('25 %', '1:4'));
    expect(asked.ok).toBe(false);
    const problem = asked.ok ? undefined : asked.problems[0];
    expect(problem?.message).toContain('1:4 is 25 %');
    expect(problem?.proposals?.some(({ value }) => value === 3)).toBe(true);
    expect(answer.headline).toContain('3 in per ft');
  });

  it('no tapered board and nothing under the deck is proposed', () => {
    expect(answer.layouts).toEqual([]);
    expect(answer.chosenLayout).toBeNull();
    expect(answer.materials).toEqual([]);
    expect(options.map(({ id }) => id)).toEqual(['all-above']);
    expect(answer.headline).toContain('no tapered board is laid');
    expect(everythingSaid(c48)).not.toMatch(/taper of|batts|sprayed/);
  });

  it('the longest screw must not come through the ceiling, and thin planks take none', () => {
    expect(said(c48, 'flat-boards')).toContain('must not come through the ceiling');
    expect(longestHiddenScrewIn(7.5, 2.75)).toBeLessThan(7.5 + 2.75);
    expect(longestHiddenScrewIn(7.5, 0.75)).toBeNull();
  });

  it('the deck is as warm as the room, and the U path is met where the table is not', () => {
    expect(verdict).toBe('safe');
    expect(deckF).toBeGreaterThan(66);
    const result = (id: string) => answer.energyRules?.rows.find((row) => row.id === id)?.result;
    expect([result('residential-ceiling'), result('residential-u')]).toEqual(['fail', 'pass']);
  });

  it('flat boards on a deck that does not fall are refused, and the taper is laid out', () => {
    const level = caseText('c48').replace('25 %', '0.05');
    const flat = caseRoof('c48 level', level);
    expect(findingIds(flat)).toContain('flat-boards-do-not-drain');
    expect(flat.answer.layouts.length).toBeGreaterThan(0);
  });
});

describe('C49: 12 x 16 ft room under 2 x 6 joists, a covering of four years that must stay', () => {
  const c49 = caseRoof('c49');
  const { options, constraints, relax, noCompliantOption } = moistureOf(c49);
  const option = (id: string) => options.find((one) => one.id === id);
  const message = said(c49, 'no-compliant-insulation');

  caseRows('check values', [
    { key: 'best_vented_R', got: () => option('vented-batts')?.r, min: 17, max: 20, basis: 'C' },
    {
      key: 'unvented_batts_only_allowed',
      got: () => option('unvented-batts')?.allowedByCode,
      value: false,
      basis: 'M',
    },
  ]);

  it('CONDENSATION is said, and no option complies', () => {
    expect(findingIds(c49)).toContain('condensation-risk');
    expect(noCompliantOption).toBe(true);
    expect(c49.answer.headline).toContain('Nothing keeps all that was asked for');
  });

  it('no compliant stack is invented: everything that stays dry, is allowed and reaches R-49 breaks what was stated', () => {
    const good = options.filter((one) => one.dry && one.allowedByCode && one.reachesTarget !== 'no');
    expect(good.length).toBeGreaterThan(0);
    for (const one of good) expect(one.breaks.length, one.id).toBeGreaterThan(0);
    for (const one of options.filter(({ breaks }) => breaks.length === 0))
      expect(one.dry && one.allowedByCode && one.reachesTarget !== 'no', one.id).toBe(false);
  });

  it('every stated constraint stays in sight, and what to give up is said', () => {
    expect(constraints.map(({ id }) => id)).toEqual(['keep-covering', 'no-spray-foam', 'no-foam-above']);
    for (const { words } of constraints) {
      expect(message).toContain(words);
      expect(c49.answer.headline).toContain(words);
    }
    expect(message).toContain('What to relax first');
    expect(relax.map(({ giveUp }) => giveUp)).toEqual([['no-spray-foam'], ['keep-covering', 'no-foam-above']]);
    expect(c49.answer.relax).toBe(relax[0].text);
  });

  it('a layout that lays boards under a new covering says what it breaks', () => {
    const broken = c49.answer.findings.filter(({ id }) => id === 'constraint-broken').map(({ where }) => where);
    expect(broken).toEqual(['the covering stays', 'no board above the deck']);
  });

  it('with sprayed foam allowed the small-ceiling rule makes one option comply, on 192 sq ft only', () => {
    const foam = caseText('c49').replace('"noSprayFoam": true, ', '');
    expect(moistureOf(caseRoof('c49 foam', foam)).noCompliantOption).toBe(false);
    const large = foam.replace('[16, 0], [16, 12], [0, 12]', '[48, 0], [48, 12], [0, 12]');
    expect(moistureOf(caseRoof('c49 large', large)).noCompliantOption).toBe(true);
  });
});
