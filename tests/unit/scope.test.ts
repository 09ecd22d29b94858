import { describe, expect, it } from 'vitest';
import { findingKinds } from '../../reference/findings.ts';
import { scopeRules, scopeTests } from '../../reference/scope.ts';
import { assessReady, readRoofText } from '../../src/answer.ts';
import { assessText } from '../../src/cli/assess-text.ts';
import { rainFor } from '../../src/core/outlets/rain.ts';
import { existingReport } from '../../src/core/report/existing.ts';
import { safetyFacts } from '../../src/core/report/facts.ts';
import type { ScopeReport } from '../../src/core/report/types.ts';
import { evaluateCautions } from '../../src/core/safety/cautions.ts';
import { evidenceOf } from '../../src/core/scope/evidence.ts';
import { apartFt } from '../../src/core/scope/places.ts';
import { rotAndLeakOf } from '../../src/core/scope/rot.ts';
import { scopeOf } from '../../src/core/scope/scope.ts';
import { siteOf } from '../../src/core/site/site.ts';
import { openedBy, woodAllowance } from '../../src/core/takeoff/wood-allowance.ts';
import { parseRoofObject } from '../../src/input/parse-roof.ts';
import { demoText } from '../../src/store/demo-roofs.ts';
import { rulesOf } from '../cases/case-roof.ts';

interface Invented {
  findings?: readonly object[];
  covering?: object;
  existing?: object;
  deck?: object;
  building?: string;
  below?: string;
}

const drains = { planes: [{ slopeInPerFt: 0.25, fallsToward: { side: 0 } }], readOn: 'covering', buildUpIn: 1.5 };
const ponds = { seenPonds: [{ at: [15, 12], depthIn: 1, hoursAfterRain: 48 }], readOn: 'covering', buildUpIn: 1.5 };

function roofOf({
  findings = [],
  covering = {},
  existing = drains,
  deck = { kind: 'plywood' },
  building,
  below,
}: Invented) {
  const parsed = parseRoofObject({
    version: 1,
    invented: true,
    outline: [
      [0, 0],
      [30, 0],
      [30, 24],
      [0, 24],
    ],
    edges: [{ side: 0, kind: 'gutter', mayDrain: 'yes' }, ...[1, 2, 3].map((side) => ({ side, kind: 'wall' }))],
    covering: { kind: 'sbs-granule', layers: 1, ageYears: 12, ...covering },
    existing,
    deck,
    findings,
    building: { below },
    ruleSet: { building },
  });
  if (!parsed.ok) throw new Error(parsed.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  const { roof } = parsed;
  const ruleSet = rulesOf(roof);
  const site = siteOf(roof);
  return { site, ruleSet, existing: existingReport(site, ruleSet, rainFor(roof.place, ruleSet)).report };
}

const reportOf = (invented: Invented): ScopeReport =>
  scopeOf({ ...roofOf(invented), chosen: null, budgets: [] }).report;
const standings = (invented: Invented): string[] => reportOf(invented).ways.map(({ standing }) => standing);

/** A bowl 1 in deep between level edges. */
const hollowReadings = [0, 15, 30].flatMap((x) => [0, 12, 24].map((y) => [x, y, x === 15 && y === 12 ? -1 : 0]));

const split = { kind: 'split', at: [4, 4] };
const dry = { kind: 'dry-insulation', at: [15, 12], foundBy: 'core' };
const wet = (sqFt: number | null, foundBy = 'scan') => ({
  kind: 'wet-insulation',
  foundBy,
  at: [9, 9],
  areaSqFt: sqFt,
});
const bare = { kind: 'bare-reinforcement', at: [9, 9] };
const worn = (sqFt: number) => ({ kind: 'granule-loss', at: [15, 12], areaSqFt: sqFt, severity: 'plain' });

const deep = { foundBy: 'probe', severity: 'severe' };
const probed = { kind: 'soft-deck', at: [9, 9], ...deep };
const leak = { kind: 'leak-below', at: [12, 10], foundBy: 'from-below', severity: 'slight' };
const eave = { kind: 'rotten-eave', side: 0, fromFt: 4, toFt: 12 };
const eaveLeak = { kind: 'leak-below', at: [8, 1] };

/** Repair, coat, re-cover, tear off: o open, b barred, ? not known. */
const short = (invented: Invented): string =>
  standings(invented)
    .map((standing) => ({ open: 'o', barred: 'b', 'not-known': '?' })[standing])
    .join('');

describe('each way by what is known', () => {
  // Common practice, no source, but the bars to a re-cover: IBC 1511.3.1.1 / 1512.2.1.1, IRC R908.3.1.1.
  it.each<[string, Invented, string, string | null]>([
    ['nothing noted', {}, '????', null],
    ['a split, dry, drains', { findings: [split, dry] }, 'oooo', 'repair'],
    ['a split, moisture not known', { findings: [split] }, 'o???', 'repair'],
    ['granules gone, moisture not known', { findings: [{ kind: 'granule-loss' }] }, '????', null],
    ['a stain below, moisture not known', { findings: [{ kind: 'leak-below', at: [9, 9] }] }, '????', null],
    ['water stays, dry, no taper fits', { findings: [dry], existing: ponds }, 'bbbo', 'tear-off'],
    ['water stays, moisture not known', { existing: ponds, findings: [split] }, 'bbb?', null],
    ['two layers, dry, a split', { findings: [split, dry], covering: { layers: 2 } }, 'obbo', 'repair'],
    ['a tenth wet by a scan', { findings: [wet(72)] }, 'oboo', 'repair'],
    ['just a quarter wet by a scan', { findings: [wet(180)] }, 'oboo', 'repair'],
    ['more than a quarter wet by a scan', { findings: [wet(181)] }, 'bbbo', 'tear-off'],
    ['wet in one core, nobody knows how far', { findings: [wet(null, 'core')] }, '?b??', null],
    ['29 years and bare, dry', { findings: [bare, dry], covering: { ageYears: 29 } }, 'booo', 'coat'],
    ['30 years and bare, dry', { findings: [bare, dry], covering: { ageYears: 30 } }, 'bboo', 're-cover'],
    ['30 years and bare, moisture not known', { findings: [bare], covering: { ageYears: 30 } }, 'bb?o', null],
    [
      '60 years, nothing bare, dry',
      { findings: [{ kind: 'alligatoring' }, dry], covering: { ageYears: 60 } },
      'booo',
      'coat',
    ],
    ['worn over 300 sq ft, dry', { findings: [worn(300), dry] }, 'booo', 'coat'],
    ['worn, dry, drains, and a split', { findings: [worn(300), split, dry] }, 'booo', 'coat'],
    ['worn, dry, drains, and a leak below', { findings: [worn(300), { ...leak, at: [4, 4] }, dry] }, 'booo', 'coat'],
    ['worn over less than a tenth, dry, and a split', { findings: [worn(71), split, dry] }, 'oooo', 'repair'],
    [
      'worn gravel, dry, and a split',
      { findings: [worn(300), split, dry], covering: { kind: 'bur-gravel' } },
      'oboo',
      'repair',
    ],
    ['worn over less than a tenth, dry', { findings: [worn(71), dry] }, 'oooo', 'repair'],
    ['slightly worn, dry', { findings: [{ ...worn(300), severity: 'slight' }, dry] }, 'oooo', 'repair'],
    ['a ring of dirt where water stood, dry', { findings: [{ kind: 'pond-stain' }, dry] }, 'oooo', 'repair'],
    ['worn, dry, two layers', { findings: [worn(300), dry], covering: { layers: 2 } }, 'obbo', 'repair'],
    ['worn gravel, dry', { findings: [worn(300), dry], covering: { kind: 'bur-gravel' } }, 'oboo', 'repair'],
    ['worn, dry, on nobody knows what', { findings: [worn(300), dry], covering: { kind: 'other' } }, '??oo', null],
    ['worn, dry, and water stays', { findings: [worn(300), dry], existing: ponds }, 'bbbo', 'tear-off'],
    ['worn, wet by a tenth', { findings: [worn(300), wet(72)] }, 'oboo', 'repair'],
    ['soft deck', { findings: [{ kind: 'soft-deck', at: [9, 9] }, dry] }, '?b?o', null],
    ['soft deck, probed, and a leak beside it', { findings: [probed, leak] }, 'bbbo', 'tear-off'],
    [
      'soft deck, a core, severe, and a leak beside it',
      { findings: [{ ...probed, foundBy: 'core' }, leak] },
      'bbbo',
      'tear-off',
    ],
    [
      'a slight rotten eave and a leak beside it',
      { findings: [{ ...eave, severity: 'slight' }, eaveLeak] },
      '????',
      null,
    ],
    [
      'a severe rotten eave, probed, and a leak beside it',
      { findings: [{ ...eave, ...deep }, eaveLeak] },
      '????',
      null,
    ],
    [
      'rotten tails and fascia, probed, and a leak',
      {
        findings: [
          { ...eave, kind: 'rotten-rafter-tails', ...deep },
          { ...eave, kind: 'rotten-fascia', ...deep },
          eaveLeak,
        ],
      },
      '????',
      null,
    ],
    ['a rotten eave, dry', { findings: [{ ...eave, ...deep }, dry] }, '???o', null],
    ['soft deck, only seen, and a leak beside it', { findings: [{ ...probed, foundBy: 'eye' }, leak] }, '?b??', null],
    [
      'soft deck, probed, slight, and a leak beside it',
      { findings: [{ ...probed, severity: 'slight' }, leak, dry] },
      '?b?o',
      null,
    ],
    ['soft deck, probed, and a leak far away', { findings: [probed, { ...leak, at: [28, 20] }, dry] }, '?b?o', null],
    ['soft deck, probed, and a leak somewhere', { findings: [probed, { kind: 'leak-below' }] }, '?b??', null],
  ])('%s', (_, invented, wanted, recommended) => {
    expect(short(invented)).toBe(wanted);
    expect(reportOf(invented).recommended).toBe(recommended);
  });

  it('the reason that carries the answer is the one that is told first', () => {
    const first = (invented: Invented) => {
      const { answer, ways, recommended, comesTo } = reportOf(invented);
      const text = ways.find(({ id }) => id === recommended)!.reasons[0].text;
      expect(answer).toContain(text);
      return [comesTo, text];
    };
    const seen = { ...drains, seenDryAfter48h: true };
    expect(first({ findings: [worn(300), dry], existing: seen })).toEqual(['coat', scopeRules['coat-worn'].text]);
    expect(first({ findings: [dry], existing: seen })).toEqual(['upkeep', scopeRules.upkeep.text]);
    expect(first({ findings: [split, dry], existing: seen })).toEqual(['repair', scopeRules['local-repair'].text]);
    const [call, why] = first({ findings: [wet(72)], existing: seen });
    expect([call, why]).toEqual(['repair', expect.stringMatching(/wet part is cut out.*10 % of the area/)]);
    const stain = first({ findings: [leak, dry], existing: seen });
    expect(stain).toEqual(['repair', scopeRules['leak-search'].text]);
    const gravel = first({ findings: [worn(300), dry], covering: { kind: 'bur-gravel' }, existing: seen });
    expect(gravel).toEqual(['upkeep', scopeRules['worn-kept'].text]);
    const holed = { findings: [worn(300), split, dry], existing: seen };
    expect(first(holed)).toEqual(['coat', scopeRules['mend-then-coat'].text]);
    expect(reportOf(holed).answer).toMatch(/^First mend what is broken, then it may be coated\./);
    expect(reportOf({ ...holed, findings: [worn(300), dry] }).answer).toMatch(/^It may be coated\./);
  });

  it('a soft deck and a leak that are no ground yet say what is missing and ask for the wood to be opened', () => {
    const [, , , seen] = reportOf({ findings: [{ ...probed, foundBy: 'eye' }, leak, dry] }).ways;
    expect(seen).toMatchObject({ standing: 'not-known', settle: ['open-wood'] });
    expect(seen.reasons[0].text).toContain('Nobody has opened or probed the soft place.');
    const [, , , somewhere] = reportOf({ findings: [{ ...probed, severity: null }, { kind: 'leak-below' }, dry] }).ways;
    expect(somewhere.reasons[0].text).toContain(
      'How bad it is was not noted. Whether the leak lies near it was not noted.',
    );
  });

  it('a rotten eave is carpentry: it is opened, cores are cut, and the repair is not ruled out', () => {
    const [repair] = reportOf({ findings: [{ ...eave, ...deep }, eaveLeak] }).ways;
    expect(repair.standing).toBe('not-known');
    expect(repair.reasons.map(({ text }) => text)).toContain(scopeRules['edge-wood'].text);
    expect(repair.settle).toEqual(expect.arrayContaining(['open-wood', 'cores']));
  });

  it('the cautions take rot at the eave for no soft deck, and a deck that gives for one', () => {
    const deckOf = (invented: Invented) => {
      const { site, existing } = roofOf(invented);
      return safetyFacts(site, existing, null, null).roof.deck;
    };
    expect(deckOf({ findings: [eave, eaveLeak] })).toMatchObject({ soft: null, replaced: null });
    expect(deckOf({ findings: [probed] })).toMatchObject({ soft: true, replaced: true });
  });

  it.each(['concrete', 'steel', 'plywood'])(
    'on a %s deck no reason and no caution speaks of wood or joints that it may not have',
    (kind) => {
      const roof = roofOf({ findings: [wet(181), probed, leak], deck: { kind } });
      const { report } = scopeOf({ ...roof, chosen: null, budgets: [] });
      const words = report.ways.flatMap(({ reasons }) => reasons.map(({ text }) => text));
      expect(words.join(' ')).not.toMatch(/known wood|wood was found|soft sheet/i);
      const cautions = evaluateCautions(safetyFacts(roof.site, roof.existing, null, null)).map(({ text }) => text);
      expect(cautions.filter((text) => /through the joints/.test(text))).toEqual([]);
      expect(cautions.some((text) => /joints, laps, cracks, holes/.test(text))).toBe(true);
    },
  );

  it('a house is known by who lives under the roof; nothing is said of any other building', () => {
    const useOf = (below: string | undefined) => {
      const { site, existing } = roofOf({ building: undefined, below });
      return safetyFacts(site, existing, null, null).building.use;
    };
    expect(['living-exposed-deck', 'living-ceiling', 'attic', 'outdoors', undefined].map(useOf)).toEqual([
      'dwelling',
      'dwelling',
      null,
      null,
      null,
    ]);
  });

  it('near is measured between places: a spot, a stretch, an area', () => {
    const area = [
      [2, 8],
      [10, 8],
      [10, 16],
      [2, 16],
    ];
    const rows = [
      { rot: { at: [9, 9] }, leakAt: [9, 17], apart: 8 },
      { rot: { at: [9, 9] }, leakAt: [9, 17.1], apart: 8.1 },
      { rot: { at: undefined, outline: area }, leakAt: [6, 12], apart: 0 },
      { rot: { at: undefined, outline: area }, leakAt: [18, 12], apart: 8 },
      { rot: { at: undefined, side: 0, fromFt: 4, toFt: 12 }, leakAt: [15, 4], apart: 5 },
    ];
    for (const { rot, leakAt, apart } of rows) {
      const { site } = roofOf({
        findings: [
          { ...probed, ...rot },
          { ...leak, at: leakAt },
        ],
      });
      const [one, other] = site.roof.findings;
      expect(apartFt(one, other, site.roof.outline)).toBeCloseTo(apart, 9);
      expect(rotAndLeakOf(site.roof.findings, site.roof.outline)).toBe(apart <= 8 ? 'ground' : null);
    }
  });

  it('a roof that was seen dry after 48 h does not pond here, whatever readings or an untimed finding say; it says so', () => {
    const hollow = { ...drains, planes: undefined, seenDryAfter48h: true, readings: hollowReadings };
    const puddle = { kind: 'ponding', at: [15, 12] };
    const cases: [Invented, boolean][] = [
      [{ existing: hollow, findings: [split, dry] }, true],
      [{ existing: { ...drains, seenDryAfter48h: true }, findings: [split, dry, puddle] }, true],
      [{ existing: { ...drains, seenDryAfter48h: true }, findings: [split, dry] }, false],
    ];
    for (const [invented, against] of cases) {
      const report = reportOf(invented);
      expect(report.recommended).toBe('repair');
      const words = report.ways[0].reasons.map(({ text }) => text).join(' ');
      expect(words).toContain('does not pond in the sense of this decision');
      expect(words).toContain('seen dry 48 h after rain');
      expect(words.includes('look once more in the cool season')).toBe(against);
    }
    expect(evidenceOf(roofOf({ existing: { ...hollow, seenDryAfter48h: undefined } })).ponds).toBe(true);
    const late = {
      ...drains,
      seenDryAfter48h: undefined,
      seenPonds: [{ at: [15, 12], depthIn: 1, hoursAfterRain: 60 }],
    };
    expect(evidenceOf(roofOf({ existing: late })).ponds).toBe(true);
  });

  it('what is not decided names a test, what is decided needs none', () => {
    expect(reportOf({}).tests.map(({ id }) => id)).toContain('inspection');
    expect(reportOf({ findings: [split, dry] }).tests).toEqual([]);
    expect(reportOf({ findings: [wet(null, 'core')] }).tests.map(({ id }) => id)).toEqual(['scan']);
  });

  it.each([
    ['irc-2018', 'R908.3.1.1'],
    ['ibc-2018', '1511.3.1.1'],
    ['ibc-2024', '1512.2.1.1'],
    ['iebc-2018', '705.3.1.1'],
  ])('the bar to a re-cover under %s stands in %s', (building, section) => {
    const way = reportOf({ findings: [dry], covering: { layers: 2 }, building }).ways[2];
    expect(way.standing).toBe('barred');
    expect(way.reasons[0].source.text).toContain(section);
  });

  it('overlapping wet areas count once, cut off at the section', () => {
    const ring = (x: number) => ({
      kind: 'wet-insulation',
      foundBy: 'scan',
      outline: [
        [x, 0],
        [x + 10, 0],
        [x + 10, 12],
        [x, 12],
      ],
    });
    // 0 to 15 ft x 12 ft of 720 sq ft; the last ring lies 2 ft outside.
    expect(evidenceOf(roofOf({ findings: [ring(0), ring(5)] })).wetShare).toBeCloseTo(0.25, 9);
    expect(evidenceOf(roofOf({ findings: [ring(22)] })).wetShare).toBeCloseTo((8 * 12) / 720, 9);
  });

  it('a coating is never what ends a pond, whoever asks for it', () => {
    for (const { kind } of findingKinds) {
      const report = reportOf({ findings: [{ kind }, dry], existing: ponds });
      expect(report.ways.find(({ id }) => id === 'coat')!.standing, kind).toBe('barred');
    }
  });

  it('no finding of the surface alone opens a tear-off', () => {
    for (const row of findingKinds.filter(
      ({ bears }) => bears === 'surface' || bears === 'bare' || bears === 'local',
    )) {
      const report = reportOf({ findings: [{ kind: row.kind, severity: 'severe' }], covering: { ageYears: 29 } });
      expect(report.ways[3].standing, row.kind).toBe('not-known');
    }
  });

  it('every rule and test has a source, and every kind says what it does not tell', () => {
    for (const row of [...Object.values(scopeRules), ...scopeTests]) expect(row.source.length).toBeGreaterThan(3);
    for (const row of findingKinds) expect(Math.min(row.tells.length, row.tellsNot.length)).toBeGreaterThan(10);
  });
});

describe('wood as a range', () => {
  const eave = { kind: 'rotten-eave', side: 0, fromFt: 18, toFt: 26 };
  const allowance = (invented: Invented) => woodAllowance(roofOf(invented).site, openedBy(null));
  const row = (invented: Invented, id: string) => allowance(invented)?.rows.find((each) => each.id.startsWith(id));

  it('no rot, or no wood deck: none', () => {
    expect(allowance({ findings: [split] })).toBeNull();
    expect(allowance({ findings: [eave], deck: { kind: 'steel' } })).toBeNull();
  });

  it('sheets: more where it was found worse, never fewer than were seen', () => {
    const of = (severity: string) => row({ findings: [{ ...eave, severity }] }, 'deck-sheets')!;
    const [slight, plain, severe] = ['slight', 'plain', 'severe'].map(of);
    expect(slight.likely).toBeLessThan(plain.likely);
    expect(plain.likely).toBeLessThan(severe.likely);
    for (const each of [slight, plain, severe]) expect(each.likely).toBeLessThanOrEqual(each.oneInTen);
    const soft = { kind: 'soft-deck', at: [9, 9], areaSqFt: 320 };
    expect(row({ findings: [soft] }, 'deck-sheets')!.likely).toBe(10);
  });

  it('lengths: 8 ft marked, 24 ft in one job of ten, never more than the side', () => {
    expect(row({ findings: [eave] }, 'wood-0')).toMatchObject({ likely: 8, oneInTen: 24, unit: 'ft' });
    expect(row({ findings: [{ ...eave, fromFt: 2, toFt: 28 }] }, 'wood-0')).toMatchObject({ likely: 26, oneInTen: 30 });
    expect(row({ findings: [{ ...eave, kind: 'stained-eave' }] }, 'wood-0')).toMatchObject({ likely: 0, oneInTen: 24 });
  });

  it('one stretch that was noted three times is one row, and its sheets count once', () => {
    const on = (kind: string, fromFt: number, toFt: number) => ({ kind, side: 0, fromFt, toFt });
    const findings = [on('rotten-eave', 3, 9), on('rotten-fascia', 3, 9), on('stained-eave', 3, 13)];
    const rows = allowance({ findings })!.rows.filter(({ id }) => id.startsWith('wood-'));
    // 10 ft marked, 4 ft of them only stained; 8 ft on at each end.
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ likely: 6, oneInTen: 26, findingNumbers: [1, 2, 3] });
    expect(rows[0].basis).toContain('10′-0″ were marked by findings 1, 2 and 3, each foot once, 4′-0″ of them stained');
    const twice = [on('rotten-eave', 0, 16), { ...on('soft-deck', 0, 16), at: undefined }];
    expect(row({ findings: twice }, 'deck-sheets')!.basis).toContain('; 2 already found');
    // Two places of one side, and the same place on another side.
    const apart = allowance({ findings: [on('rotten-eave', 0, 2), on('rotten-fascia', 20, 24)] })!.rows;
    expect(apart.find(({ id }) => id.startsWith('wood-'))).toMatchObject({ likely: 6, oneInTen: 30 });
    const sides = allowance({ findings: [on('rotten-eave', 3, 9), { ...on('rotten-eave', 3, 9), side: 1 }] })!.rows;
    expect(sides.filter(({ id }) => id.startsWith('wood-'))).toHaveLength(2);
  });

  it('how badly an eave has rotted acts on the row along the edge alone; a deck that gives acts on all of it', () => {
    const basis = (findings: readonly object[]) => row({ findings }, 'deck-sheets')!.basis;
    const severe = basis([{ ...eave, severity: 'severe' }]);
    expect(severe).toMatch(/row along the gutter or open edge \d+ at 79 %/);
    expect(severe).toContain('elsewhere');
    expect(severe).toMatch(/elsewhere \d+ at 5 %/);
    expect(severe).toContain('along the edge x 2.25');
    expect(basis([{ ...probed, severity: 'severe' }])).toMatch(/at 79 %.*elsewhere \d+ at 11 %/);
  });

  it('rafter tails are counted by the spacing of the joists', () => {
    const tails = { ...eave, kind: 'rotten-rafter-tails' };
    expect(row({ findings: [tails] }, 'wood-0')).toMatchObject({ likely: 5, oneInTen: 13, unit: 'pieces' });
    const close = { kind: 'plywood', joists: { spacingIn: 16 } };
    expect(row({ findings: [tails], deck: close }, 'wood-0')).toMatchObject({ likely: 7 });
  });

  it('the take-off orders the likely amount of the same rows, and the terminal says both', () => {
    const ready = readRoofText(demoText('back-section'));
    if (!ready.ok) throw new Error('the demo roof cannot be read');
    const answer = assessReady(ready);
    const rows = answer.scope!.wood!.rows;
    expect(rows.map(({ id }) => id)).toEqual(['deck-sheets', 'wood-1-rotten-eave']);
    for (const { id, likely, oneInTen } of rows) {
      const line = answer.materials.find((each) => each.id === id)!;
      expect(line.orderQuantity).toBe(likely);
      expect(line.basis).toContain(`one job in ten more than ${oneInTen}`);
    }
    const text = assessText(answer);
    expect(text).toContain('Tear it off to the deck.');
    expect(text).toMatch(/most likely 4 sheets, one job in ten more than 7\s+sheets/);
    expect(text).toContain('2. Rotten eave, gutter side');
  });

  it('says that its rates are a guess', () => {
    expect(allowance({ findings: [eave] })!.assumption).toContain('no published rate');
  });
});
