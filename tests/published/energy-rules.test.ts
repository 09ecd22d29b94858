import { describe, expect, it } from 'vitest';
import { coolRoofRequirements } from '../../reference/cool-roof.ts';
import {
  ashrae901R,
  commercialR,
  commercialR2009,
  groupRZone1,
  residentialR,
  smallCeiling,
  type ZoneTable,
} from '../../reference/energy.ts';
import { filmsR } from '../../reference/insulation.ts';
import {
  type CoolRoofJob,
  californiaAboveR,
  coolRoofApplies,
  coolRoofRoute,
  coveringsUnder,
} from '../../src/core/energy/cool-roof.ts';
import { energyTarget, rowForZone } from '../../src/core/layout/energy-target.ts';
import { agedReflectance, solarReflectanceIndex } from '../../src/core/membrane/sri.ts';
import { dampAnswers } from '../../src/core/moisture/answers.ts';
import { winterFor } from '../../src/core/moisture/winter.ts';
import { siteOf } from '../../src/core/site/site.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';
import { rulesOf as rulesOfRoof } from '../cases/case-roof.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const at = (table: ZoneTable, zone: string): number | null => rowForZone(table, zone)?.value ?? null;
const ruleOf = (id: string) => coolRoofRequirements.find((rule) => rule.id === id)!;
const [model] = coolRoofRequirements;
const home = ruleOf('california-residential-2022');

const californian = (zone: number): CoolRoofJob => ({
  commercial: false,
  california: true,
  climateZone: null,
  californiaZone: zone,
  slopeInPerFt: 0.25,
  under: 'rooms',
});
const applies = (zone: number): string => coolRoofApplies(home, californian(zone)).state;

const row = (id: string, table: ZoneTable, zone: string, expected: number): CheckRow => ({
  id,
  of: `least R, ${table.title}, zone ${zone}`,
  call: () => at(table, zone),
  expected,
  tol: 0,
  ...(rowForZone(table, zone) ?? { source: 'arithmetic', at: 'no row', grade: 'computed' }),
});

const california = { source: 'california-2022', at: 'low-slope alterations', grade: 'found' } as const;
const practice = { source: 'arithmetic', grade: 'computed' } as const;

const rows: readonly CheckRow[] = [
  row('35 (90.1-2019, 5)', ashrae901R, '5', 30),
  row('35 (90.1-2019, 0)', ashrae901R, '0', 25),
  row('35 (IECC 2009, 5)', commercialR2009, '5', 20),
  row('35 (IECC 2009, 7)', commercialR2009, '7', 25),
  row('35 (home 2021, 5)', residentialR['2021'], '5', 60),
  row('35 (home 2018, 5)', residentialR['2018'], '5', 49),
  row('35 (2018, 1)', commercialR['2018'], '1', 20),
  row('35 (2018, 2)', commercialR['2018'], '2', 25),
  row('35 (2018, 5)', commercialR['2018'], '5', 30),
  row('35 (2018, 7)', commercialR['2018'], '7', 35),
  {
    id: '35 (2018, Group R, 1)',
    of: 'least R of dwellings in commercial buildings',
    call: () => groupRZone1.r,
    expected: 25,
    tol: 0,
    source: 'iecc-commercial',
    at: '2018 Table C402.1.3',
    grade: 'memory',
  },
  ...(
    [
      [12, 'yes', 14],
      [3, 'no', null],
      [7, 'yes', null],
      [1, 'no', 14],
      [4, 'yes', 14],
      [16, 'no', 14],
    ] as const
  ).flatMap(([zone, cool, r]): CheckRow[] => [
    {
      id: `36 (${zone}, cool roof)`,
      of: 'a cool roof is asked for',
      call: () => applies(zone),
      expected: cool,
      tol: 0,
      ...california,
    },
    {
      id: `36 (${zone}, R)`,
      of: 'R above the deck',
      call: () => californiaAboveR(zone),
      expected: r,
      tol: 0,
      ...california,
    },
  ]),
  ...(
    [
      [20, 0.0481, 0.048],
      [25, 0.0388, 0.039],
      [30, 0.0325, 0.032],
      [35, 0.0279, 0.028],
    ] as const
  ).map(
    ([r, u]): CheckRow => ({
      id: `39 (R-${r})`,
      of: 'U with films',
      call: () => 1 / (r + filmsR.value),
      expected: u,
      tol: 0.0001,
      ...practice,
      at: 'R and films 0.17 + 0.61',
    }),
  ),
  {
    id: '5 (index)',
    of: 'SRI of 0.55 and 0.75, short of 64',
    call: () => solarReflectanceIndex(0.55, 0.75),
    expected: 60.37,
    tol: 0.05,
    source: 'astm-e1980',
    at: 'balance at medium wind',
    grade: 'found',
  },
  {
    id: '5 (pair)',
    of: 'route of 0.55 and 0.75 under the model code',
    call: () => coolRoofRoute(model, 0.55, 0.75),
    expected: 'pair',
    tol: 0,
    source: 'iecc-c402-3',
    at: 'Table C402.3',
    grade: 'found',
  },
  {
    id: '5 (by index)',
    of: 'route of 0.545 and 0.90',
    call: () => coolRoofRoute(model, 0.545, 0.9),
    expected: 'index',
    tol: 0,
    source: 'iecc-c402-3',
    at: 'Table C402.3',
    grade: 'found',
  },
  {
    id: '5 (neither)',
    of: 'route of 0.26 and 0.92',
    call: () => coolRoofRoute(model, 0.26, 0.92),
    expected: null,
    tol: 0,
    source: 'iecc-c402-3',
    at: 'Table C402.3',
    grade: 'found',
  },
  {
    id: '6 (membrane)',
    of: 'aged reflectance of 0.80',
    call: () => agedReflectance(0.8, 0.7),
    expected: 0.62,
    tol: 0.0005,
    source: 'ca-title-24',
    at: 'aged solar reflectance',
    grade: 'found',
  },
  {
    id: '6 (coating)',
    of: 'aged reflectance of 0.80',
    call: () => agedReflectance(0.8, 0.65),
    expected: 0.59,
    tol: 0.0005,
    source: 'ca-title-24',
    at: 'aged solar reflectance',
    grade: 'found',
  },
  {
    id: '34 (Cook County)',
    of: 'climate zone by county number 17031',
    call: () => winterFor({ city: '17031', state: null, climateZone: null }).climateZone,
    expected: '5A',
    tol: 0,
    doesNotReproduce:
      'no table by county is held: the zone is given, or taken from the nearest listed town, and may be set',
    source: 'typical-year-weather',
    at: 'zone by county',
    grade: 'found',
  },
  ...(
    [
      ['Chicago', 'IL', '5A'],
      ['Phoenix', 'AZ', '2B'],
      ['Seattle', 'WA', '4C'],
      ['Minneapolis', 'MN', '6A'],
      ['Miami', 'FL', '1A'],
      ['Duluth', 'MN', '7'],
    ] as const
  ).map(
    ([city, state, zone]): CheckRow => ({
      id: `34 (${city})`,
      of: 'climate zone of the town in that county',
      call: () => winterFor({ city, state, climateZone: null }).climateZone,
      expected: zone,
      tol: 0,
      source: 'typical-year-weather',
      at: 'zone by place',
      grade: 'found',
    }),
  ),
  {
    id: 'small ceiling',
    of: 'R and area of the small-ceiling rule',
    call: () => `${smallCeiling.r} over ${smallCeiling.areaSqFt}`,
    expected: '30 over 500',
    tol: 0,
    source: 'iecc-residential',
    at: 'R402.2.2',
    grade: 'memory',
  },
];

checkRows('energy and cool-roof rules, check values 5, 6, 34 to 36, 39', rows);

/** A small level roof of an invented house or shop. */
const roofFile = (more: {
  place?: object;
  ruleSet?: object;
  building?: object;
  insulation?: object;
  removedIn?: number;
  deck?: object;
}): string =>
  JSON.stringify({
    version: 1,
    label: 'Invented section',
    invented: true,
    outline: [
      [0, 0],
      [30, 0],
      [30, 24],
      [0, 24],
    ],
    edges: [
      { side: 0, kind: 'gutter', mayDrain: 'yes' },
      { side: 1, kind: 'rake', mayDrain: 'no' },
      { side: 2, kind: 'rake', mayDrain: 'no' },
      { side: 3, kind: 'rake', mayDrain: 'no' },
    ],
    existing: { surface: 'level', readOn: 'covering', buildUpIn: 2 },
    building: { below: 'living-exposed-deck' },
    ...more,
  });

function rulesOf(more: Parameters<typeof roofFile>[0]) {
  const parsed = parseRoofText(roofFile(more));
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  const site = siteOf(parsed.roof);
  const ruleSet = rulesOfRoof(parsed.roof);
  const { report, assumed } = dampAnswers({
    site,
    ruleSet,
    layout: null,
    membrane: 'tpo',
    energy: energyTarget(site, ruleSet),
    budgets: [],
  });
  const rules = report.energyRules;
  const result = (id: string): string | undefined =>
    [...rules.rows, ...rules.coolRoof].find((one) => one.id === id)?.result;
  return { rules, result, damp: report.moisture.verdict, assumed: assumed.map(({ path }) => path) };
}

describe('rules of a job', () => {
  it('a shop in Phoenix: the commercial table and the cool roof bind, the residential one does not', () => {
    const { rules, result } = rulesOf({ place: { city: 'Phoenix', state: 'AZ' }, ruleSet: { building: 'ibc-2021' } });
    expect(result('residential-ceiling')).toBe('not-applicable');
    expect(result('commercial-roof')).not.toBe('not-applicable');
    expect(['pass', 'fail']).toContain(result('iecc-c402-3'));
    expect(rules.coverings.filter(({ rule }) => rule === 'iecc-c402-3').length).toBeGreaterThan(8);
    expect(rules.coverings.find(({ id }) => id === 'epdm-black')?.passes).toBe(false);
    expect(rules.coverings.find(({ id }) => id === 'tpo')?.passes).toBe(true);
  });

  it('the same shop in Chicago: no cool roof; with insulation below or as a recover the table does not bind', () => {
    const chicago = { place: { city: 'Chicago', state: 'IL' }, ruleSet: { building: 'ibc-2021' } };
    expect(rulesOf(chicago).result('iecc-c402-3')).toBe('not-applicable');
    expect(rulesOf(chicago).result('commercial-roof')).toBe('fail');
    const below = {
      building: { below: 'living-ceiling' },
      insulation: { below: { kind: 'batts', r: 19, vented: 'no' } },
    };
    expect(rulesOf({ ...chicago, ...below }).result('commercial-roof')).toBe('not-applicable');
    expect(rulesOf({ ...chicago, removedIn: 0 }).result('commercial-roof')).toBe('not-applicable');
  });

  it('a home in Chicago: R-60 or U 0.024; relief is said where it is short; small sections may drop to R-30', () => {
    const { rules, result } = rulesOf({ place: { city: 'Chicago', state: 'IL' }, ruleSet: { building: 'irc-2021' } });
    expect(result('residential-ceiling')).toBe('fail');
    expect(result('small-ceiling')).toBe('not-applicable');
    expect(rules.relief.length).toBe(2);
    expect(rules.answer).toContain('R-60');
    const flat = rulesOf({
      place: { city: 'Chicago', state: 'IL' },
      ruleSet: { building: 'irc-2021' },
      insulation: { flatIn: 7.5, flatRPerIn: 5.7 },
    });
    // 42.75 + 0.78 = 43.5 against the 41.7 of U 0.024, where the table asks for R-60.
    expect([flat.result('residential-ceiling'), flat.result('residential-u')]).toEqual(['fail', 'pass']);
    expect(flat.rules.relief.length).toBe(2);
    expect(flat.rules.answer).not.toContain('Short of');
  });

  it('a home in California is under its own rules, by its own zone', () => {
    const place = { city: 'Sacramento', state: 'CA', californiaZone: 12 };
    const { result } = rulesOf({ place, ruleSet: { building: 'irc-2021' } });
    expect(result('residential-ceiling')).toBe('not-applicable');
    expect(['pass', 'fail']).toContain(result('california-above-deck'));
    expect(['pass', 'fail']).toContain(result('california-residential-2022'));
    const unknown = rulesOf({ place: { city: 'Sacramento', state: 'CA' }, ruleSet: { building: 'irc-2021' } });
    expect(unknown.result('california-above-deck')).toBe('not-known');
  });

  it('over an attic in California the cool roof is judged, and what is not held is asked for; elsewhere its floor decides', () => {
    const attic = { building: { below: 'attic' } };
    const home = { ...attic, ruleSet: { building: 'irc-2021' } };
    const sacramento = { city: 'Sacramento', state: 'CA', californiaZone: 12 };
    const { rules, result } = rulesOf({ ...home, place: sacramento });
    expect(result('california-residential-2022')).toBe('pass');
    expect(rules.coolRoof.find(({ id }) => id === 'california-residential-2022')?.note).toContain(
      'over an attic as well',
    );
    expect([result('california-above-deck'), result('residential-ceiling')]).toEqual(['not-known', 'not-applicable']);
    expect(rules.answer).toMatch(/Not judged: California: insulation above the deck.*the building office says it/);
    const thick = rulesOf({ ...home, place: sacramento, insulation: { flatIn: 3, flatRPerIn: 5.5 } });
    expect(thick.result('california-above-deck')).toBe('pass');
    const zone3 = rulesOf({ ...home, place: { ...sacramento, californiaZone: 3 } });
    expect(['california-residential-2022', 'california-above-deck'].map(zone3.result)).toEqual([
      'not-applicable',
      'not-applicable',
    ]);
    const shop = rulesOf({ ...attic, place: sacramento, ruleSet: { building: 'ibc-2021' } });
    expect(shop.result('california-nonresidential')).toBe('pass');
    expect(shop.result('california-nonresidential-insulation')).toBe('not-known');
    const phoenix = rulesOf({ ...attic, place: { city: 'Phoenix', state: 'AZ' }, ruleSet: { building: 'ibc-2021' } });
    expect(phoenix.result('iecc-c402-3')).toBe('not-applicable');
    expect(phoenix.rules.rows.find(({ id }) => id === 'commercial-roof')?.note).toContain('an attic lies below');
  });

  it('nothing binds over an unheated shed', () => {
    const { rules } = rulesOf({ place: { city: 'Chicago', state: 'IL' }, building: { below: 'unheated' } });
    expect([...rules.rows, ...rules.coolRoof].every(({ result }) => result === 'not-applicable')).toBe(true);
    expect(rules.answer).toContain('binds');
  });

  it('what passes by the index alone is said to', () => {
    for (const covering of coveringsUnder(home, 'tpo')) expect(covering.by === null).toBe(!covering.passes);
  });

  it('insulation below the deck that is not known is no R-0: not known with what settles it, or a pass by what lies above', () => {
    const place = { city: 'Chicago', state: 'IL' };
    const living = { place, building: { below: 'living-ceiling' } };
    const open = rulesOf({ ...living, ruleSet: { building: 'irc-2021' } });
    for (const id of ['residential-ceiling', 'residential-u']) expect(open.result(id)).toBe('not-known');
    expect(open.rules.answer).not.toContain('Short of');
    expect(open.rules.answer).toContain('between ceiling and deck');
    expect(open.rules.rows.find(({ id }) => id === 'residential-ceiling')?.settledBy).toContain('ceiling lamp');
    // 12 in at 5.7 is R-68 above the deck alone, over the R-60 of the table.
    const boards = { flatIn: 12, flatRPerIn: 5.7 };
    const home = rulesOf({ ...living, insulation: boards, ruleSet: { building: 'irc-2021' } });
    expect(home.result('residential-ceiling')).toBe('not-known');
    expect(home.rules.answer).toContain('whether outside air passes');
    const thick = { ...living, insulation: { ...boards, below: { vented: 'no' } } };
    expect(rulesOf({ ...thick, ruleSet: { building: 'irc-2021' } }).result('residential-ceiling')).toBe('pass');
    const shop = rulesOf({ ...living, ruleSet: { building: 'ibc-2021' } });
    expect([shop.result('commercial-roof'), shop.result('low-point')]).toEqual(['not-known', 'not-known']);
    expect(rulesOf({ ...thick, ruleSet: { building: 'ibc-2021' } }).result('commercial-roof')).toBe('pass');
    const none = { ...living, insulation: { below: { kind: 'none' } } };
    expect(rulesOf({ ...none, ruleSet: { building: 'irc-2021' } }).result('residential-ceiling')).toBe('fail');
  });

  it.each([
    // 0.9063 / 39.38 + 0.0938 / 23.26 and 0.9063 / 42.38 + 0.0938 / 25.44, 15.6 above; computed by hand.
    ['irc-2018', 23, 5.5, 'U 0.027'],
    ['irc-2021', 26, 7.25, 'U 0.0251'],
  ])(
    '%s, R-%d batts between %d in joists: the U passes without the joists and fails through them',
    (building, r, depthIn, found) => {
      const job = {
        place: { city: 'Chicago', state: 'IL' },
        ruleSet: { building },
        building: { below: 'living-ceiling' },
        deck: { kind: 'plywood', joists: { depthIn, spacingIn: 16 } },
        insulation: { flatIn: 3, flatRPerIn: 5.2, below: { kind: 'batts', r, thicknessIn: depthIn, vented: 'no' } },
      };
      const { rules, result, assumed } = rulesOf(job);
      expect(rules.rows.find(({ id }) => id === 'residential-u')).toMatchObject({ result: 'fail', found });
      expect(rules.answer).toContain('Short of R of the ceiling');
      expect(result('residential-ceiling')).toBe('fail');
      expect(assumed).not.toContain('deck.joists.spacingIn');
      const unsaid = rulesOf({ ...job, deck: { kind: 'plywood', joists: { depthIn } } });
      expect(unsaid.assumed).toContain('deck.joists.spacingIn');
      expect(unsaid.rules.rows.find(({ id }) => id === 'residential-u')?.note).toContain('16″ (assumed)');
      // Above the deck alone there is no joist in the way.
      const above = { ...job, insulation: { flatIn: 8, flatRPerIn: 5.2, below: { kind: 'none' } } };
      expect(rulesOf(above).result('residential-u')).toBe('pass');
    },
  );

  it('closed-cell foam between joists goes through the joists too, and under a steel deck nobody knows what it lies between', () => {
    const job = {
      place: { city: 'Chicago', state: 'IL' },
      ruleSet: { building: 'irc-2018' },
      building: { below: 'living-ceiling' },
      deck: { kind: 'plywood', joists: { depthIn: 5.5, spacingIn: 16 } },
    };
    const foam = (thicknessIn: number) => ({ below: { kind: 'closed-cell', thicknessIn, vented: 'no' } });
    // 5.5 in at 6.5 is; with 2.5 above and films 39.0, enough for U 0.026 without joists (38.5) and not with them.
    const thin = { flatIn: 0.5, flatRPerIn: 5, ...foam(5.5) };
    expect(rulesOf({ ...job, insulation: thin }).result('residential-u')).toBe('fail');
    const steel = rulesOf({ ...job, deck: { kind: 'steel' }, insulation: { flatIn: 4, flatRPerIn: 5.7, ...foam(3) } });
    expect(steel.result('residential-u')).toBe('not-known');
    expect(steel.rules.answer).toContain('metal carries heat past it');
  });

  it('a home whose old roof stays is let off, as a shop is, and one that is torn off is not', () => {
    const home = { place: { city: 'Minneapolis', state: 'MN' }, ruleSet: { building: 'irc-2021' } };
    const { rules, result } = rulesOf({ ...home, removedIn: 0 });
    for (const id of ['residential-ceiling', 'residential-u', 'small-ceiling'])
      expect(result(id), id).toBe('not-applicable');
    const ceiling = rules.rows.find(({ id }) => id === 'residential-ceiling');
    expect(ceiling).toMatchObject({
      note: 'the old roof stays: a recover is let off',
      clause: expect.stringContaining('R503'),
    });
    expect([rules.relief, rules.answer]).toEqual([[], expect.not.stringContaining('Short of')]);
    expect(rulesOf({ ...home, removedIn: 1 }).result('residential-ceiling')).toBe('fail');
    expect(rulesOf(home).result('residential-ceiling')).toBe('fail');
  });

  const joists = { kind: 'plywood', joists: { depthIn: 11.25, spacingIn: 16 } };
  const batts = (vented: string, flatIn: number, r: number) => ({
    place: { city: 'Chicago', state: 'IL' },
    ruleSet: { building: 'irc-2018' },
    building: { below: 'living-ceiling' },
    deck: joists,
    insulation: { flatIn, flatRPerIn: 5.2, below: { kind: 'batts', r, vented } },
  });

  it('board above an air space that outside air passes through counts nothing; where that is not known no rule is met by it', () => {
    const vented = rulesOf(batts('yes', 3, 38));
    expect(vented.result('residential-ceiling')).toBe('fail');
    expect(vented.result('residential-u')).toBe('fail');
    const row = vented.rules.rows.find(({ id }) => id === 'residential-ceiling');
    expect(row?.found).toBe('R-38 (R-15.6 above the deck not counted)');
    expect(row?.note).toContain('until the vents are closed');
    const unsaid = rulesOf(batts('unknown', 8, 11));
    const open = unsaid.rules.rows.find(({ id }) => id === 'residential-ceiling');
    expect([open?.result, open?.note]).toEqual(['not-known', expect.stringContaining('that is not known')]);
    expect(unsaid.rules.answer).toMatch(/^Not judged: R of the ceiling.*What settles it: whether outside air passes/);
    // By R short in any case, by U perhaps met: nobody knows, so it is not said to be short.
    const byU = rulesOf(batts('unknown', 8, 4));
    expect([byU.result('residential-ceiling'), byU.result('residential-u')]).toEqual(['fail', 'not-known']);
    expect(byU.rules.answer).not.toContain('Short of');
    const closed = rulesOf(batts('no', 8, 11)).rules.rows.find(({ id }) => id === 'residential-ceiling');
    expect([closed?.result, closed?.note]).toEqual(['pass', expect.not.stringContaining('outside air')]);
    // Under foam that touches the deck there is no air space, whatever the vents.
    const foam = {
      ...batts('yes', 3, 36),
      insulation: { flatIn: 3, below: { kind: 'closed-cell', r: 36, vented: 'yes' } },
    };
    expect(rulesOf(foam).result('residential-ceiling')).toBe('pass');
  });

  it('a pass that rests on batts which the damp part stops says so, in its row and in the answer', () => {
    const wet = rulesOf(batts('no', 3, 38));
    expect(wet.damp).toBe('at-risk');
    const row = wet.rules.rows.find(({ id }) => id === 'residential-ceiling');
    expect([row?.result, row?.note]).toEqual([
      'pass',
      expect.stringMatching(/R-38 of batts.*at risk of damp.*R-15\.6 is left/),
    ]);
    expect(wet.rules.answer).toMatch(/R-38 of batts below the deck.*at risk of damp/);
    const dry = rulesOf(batts('no', 8, 11));
    expect([dry.damp, dry.result('residential-ceiling')]).toEqual(['safe', 'pass']);
    expect(wet.rules.answer).toContain(wet.rules.dampStop);
    expect(dry.rules.dampStop).toBeNull();
    expect(dry.rules.answer).not.toContain('damp');
  });

  it('a shop in Los Angeles: what California asks of its insulation is not held, and it is not said to be met', () => {
    const ruleSet = { building: 'ibc-2021' };
    for (const place of [{ city: 'Los Angeles', state: 'CA', californiaZone: 9 }, { city: 'Los Angeles, CA' }]) {
      const { rules, result } = rulesOf({ place, ruleSet });
      expect(result('california-nonresidential-insulation')).toBe('not-known');
      expect(rules.answer).not.toMatch(/^Every/);
      expect(rules.answer).toMatch(/^Not judged: California: insulation of a nonresidential re-roof/);
      expect(result('california-nonresidential')).toBe('pass');
      expect(result('iecc-c402-3')).toBe('not-applicable');
    }
    const shed = rulesOf({ place: { city: 'Los Angeles', state: 'CA' }, ruleSet, building: { below: 'unheated' } });
    expect(shed.result('california-nonresidential-insulation')).toBe('not-applicable');
  });

  it('a home in Sacramento without its California zone is asked for that, not for the climate zone', () => {
    const { rules } = rulesOf({ place: { city: 'Sacramento', state: 'CA' }, ruleSet: { building: 'irc-2021' } });
    expect(rules.answer).toContain('California energy zone, 1 to 16');
    expect(rules.answer).toContain('ZIP code');
    expect(rules.answer).not.toMatch(/the town|climate zone of the energy code/);
    const nowhere = rulesOf({ ruleSet: { building: 'irc-2021' } });
    for (const { asked } of nowhere.rules.rows) expect(asked).not.toBe('');
    expect(nowhere.rules.answer).toContain('the town, or the climate zone of the energy code');
  });

  it('what is known to be short is said before what is not known', () => {
    const { rules } = rulesOf({
      place: { city: 'Sacramento', state: 'CA', californiaZone: 12 },
      ruleSet: { building: 'irc-2021' },
    });
    expect(rules.answer).toMatch(/^Short of California: insulation above the deck/);
  });
});

describe('target of the job and ask of the code', () => {
  const target = (more: Parameters<typeof roofFile>[0]) => {
    const parsed = parseRoofText(roofFile(more));
    if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
    return energyTarget(siteOf(parsed.roof), rulesOfRoof(parsed.roof));
  };
  const chicago = { place: { city: 'Chicago', state: 'IL' }, ruleSet: { building: 'irc-2021' } };

  it('a target that is set keeps the ask of the code beside it, and the rules tell the two apart', () => {
    const set = { ...chicago, insulation: { targetR: 30 } };
    expect(target(set)).toMatchObject({ r: 30, own: true, code: { r: 60 } });
    const { rules } = rulesOf(set);
    expect(rules.targetNote).toMatch(/R-30.*no rule of the code.*R-60/);
    expect(rulesOf(chicago).rules.targetNote).toBeNull();
  });

  it('without one it is the code: the same R and the same U as in the rules', () => {
    const { r, u, own } = target(chicago);
    const asked = (id: string) => rulesOf(chicago).rules.rows.find((one) => one.id === id)?.asked;
    expect([own, `R-${r}`, `U ${u}`]).toEqual([false, asked('residential-ceiling'), asked('residential-u')]);
  });

  it('California, an unheated space and a code that is not American take no R of the model code', () => {
    const home = { ruleSet: { building: 'irc-2021' } };
    const place = { city: 'Sacramento', state: 'CA' };
    expect(target({ ...home, place: { ...place, californiaZone: 12 } })).toMatchObject({ r: 14, own: false });
    expect(target({ ...home, place })).toMatchObject({ r: null, code: null });
    expect(target({ ...home, place }).noTarget).toContain('California energy zone');
    expect(target({ ...home, place: { ...place, californiaZone: 3 } }).r).toBeNull();
    expect(target({ place, ruleSet: { building: 'ibc-2021' } }).noTarget).toContain('nonresidential');
    expect(target({ ...chicago, building: { below: 'unheated' } }).r).toBeNull();
    expect(target({ ...chicago, ruleSet: { building: 'bs6229-2018' } }).noTarget).toContain('American');
  });
});
