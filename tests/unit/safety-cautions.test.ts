import { describe, expect, it } from 'vitest';
import { fallCautions } from '../../reference/safety/fall-cautions.ts';
import { fireWatch } from '../../reference/safety/fire-watch.ts';
import { healthCautions } from '../../reference/safety/health-cautions.ts';
import { hotWorkCautions } from '../../reference/safety/hot-work-cautions.ts';
import { safetyLimits } from '../../reference/safety/limits.ts';
import { type CautionRow, type CautionTopic, cautionTopics } from '../../reference/safety/row.ts';
import { siteCautions } from '../../reference/safety/site-cautions.ts';
import { deferral, evaluateCautions } from '../../src/core/safety/cautions.ts';
import { isCombustible } from '../../src/core/safety/deck-fire.ts';
import { isFallEdge, openEdges } from '../../src/core/safety/edges.ts';
import type { SafetyFacts } from '../../src/core/safety/facts.ts';
import { nothingKnown } from '../../src/core/safety/nothing-known.ts';
import { type Changes, calm, changed, edge, jobFacts, opening, rectangle } from './safety-facts.ts';

const rows: readonly CautionRow[] = [...fallCautions, ...hotWorkCautions, ...siteCautions, ...healthCautions];
const ids = (facts: SafetyFacts) => new Set(evaluateCautions(facts).map((caution) => caution.id));

describe('caution tables', () => {
  it('has at least 100 rows with ids of their own and known topics', () => {
    expect(rows.length).toBeGreaterThanOrEqual(100);
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    expect(rows.every((row) => cautionTopics.includes(row.topic) && row.when.length > 0)).toBe(true);
  });

  it('nobody is told that they are exempt', () => {
    for (const row of rows) expect(row.text).not.toMatch(/\bexempt/i);
  });

  // Checksums: a changed row or figure has to be changed here too, on purpose.
  it('checksums', () => {
    const count = (severity: number) => rows.filter((row) => row.severity === severity).length;
    expect([1, 2, 3, 4].map(count)).toEqual([4, 34, 47, 35]);
    expect(Object.values(safetyLimits).reduce((sum, row) => sum + row.value, 0)).toBeCloseTo(13480.45, 6);
    expect(fireWatch.reduce((sum, row) => sum + row.watchMin + row.thenMin, 0)).toBe(810);
  });
});

describe('evaluation', () => {
  it('fall protection stands first, hot work next, the graver first in each topic', () => {
    const found = evaluateCautions(nothingKnown(rectangle(100, 60), 6000));
    const order = found.map((caution) => cautionTopics.indexOf(caution.topic as CautionTopic));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(found[0]!.topic).toBe('fall protection');
    for (let i = 1; i < found.length; i += 1)
      if (order[i] === order[i - 1]) expect(found[i]!.severity).toBeLessThanOrEqual(found[i - 1]!.severity);
  });

  it('nothing known: most cautions hold, each says why and names its source', () => {
    const found = evaluateCautions(nothingKnown(rectangle(100, 60), 6000));
    expect(new Set(found.map((caution) => caution.id)).size).toBeGreaterThan(85);
    for (const caution of found) {
      expect(caution.because.length).toBeGreaterThan(10);
      expect(caution.source.text.length).toBeGreaterThan(5);
    }
  });

  it('a calm job keeps only what is always true', () => {
    expect([...ids(calm())].toSorted()).toEqual(['drains-clear', 'solvent-limit']);
  });

  it('defers to code, competent person, license and engineer', () => {
    for (const word of ['local code', 'competent person', 'licensed roofing contractor', 'engineer'])
      expect(deferral).toContain(word);
  });

  it('says a figure once where it is the same at two moments', () => {
    const found = evaluateCautions(
      jobFacts({ roof: { openings: [opening({ kind: 'skylight', label: 'skylight' })] } }),
    );
    expect(found.filter((caution) => caution.id === 'skylight')).toHaveLength(1);
  });
});

describe('each hazard alone brings its caution on an otherwise calm job', () => {
  const sound = calm().roof.deck;
  const cases: [string, Changes][] = [
    ['fall-protection-required', { roof: { edges: [edge()] } }],
    ['fall-protection-not-chosen', { roof: { edges: [edge()] }, work: { fallProtection: [] } }],
    ['too-steep-for-lines', { roof: { slopeIn12: 4.01 } }],
    [
      'monitor-alone-too-wide',
      { roof: { edges: [edge()], outline: rectangle(100, 51) }, work: { fallProtection: ['monitor'] } },
    ],
    [
      'monitor-with-wheels',
      { roof: { edges: [edge()] }, work: { fallProtection: ['monitor'], wheeledEquipment: true } },
    ],
    ['monitor-only-watches', { roof: { edges: [edge()] }, work: { fallProtection: ['monitor'], crewSize: 1 } }],
    ['line-alone', { roof: { edges: [edge()] }, work: { fallProtection: ['warning-line'] } }],
    ['warning-line-set', { roof: { edges: [edge()] }, work: { fallProtection: ['warning-line', 'net'] } }],
    [
      'warning-line-wheels',
      { roof: { edges: [edge()] }, work: { fallProtection: ['warning-line', 'net'], wheeledEquipment: true } },
    ],
    [
      'odd-shape-width',
      {
        roof: {
          edges: [edge()],
          outline: [
            [0, 0],
            [40, 0],
            [20, 30],
          ],
        },
        work: { fallProtection: ['monitor'] },
      },
    ],
    ['parapet-too-low', { roof: { edges: [edge({ kind: 'parapet', parapetIn: 38.9 })] } }],
    ['parapet-not-code-guard', { roof: { edges: [edge({ kind: 'parapet', parapetIn: 41.9 })] } }],
    ['parapet-strength', { roof: { edges: [edge({ kind: 'parapet', parapetIn: 40 })], parapetStrengthShown: false } }],
    ['open-hole', { roof: { openings: [opening()] } }],
    ['deck-work', { roof: { deck: { ...sound, replaced: true } } }],
    ['nailers-at-edge', { roof: { edges: [edge()] }, work: { newNailers: true } }],
    [
      'restraint-reach',
      {
        roof: { edges: [edge()] },
        work: { fallProtection: ['restraint'], restraint: { reachFt: 8, leastDistanceFt: 8 } },
      },
    ],
    ['rescue-plan', { roof: { edges: [edge()] }, work: { fallProtection: ['personal-arrest'], rescuePlan: false } }],
    ['anchor', { roof: { edges: [edge()] }, work: { fallProtection: ['restraint'] } }],
    ['swing-fall', { roof: { edges: [edge()] }, work: { fallProtection: ['personal-arrest'] } }],
    ['other-trades', { work: { otherTrades: true } }],
    ['materials-at-edge', { roof: { edges: [edge()] }, work: { fallProtection: ['net'], materialsToEdgeFt: 5.9 } }],
    ['ladder', { work: { ladderUsed: true } }],
    ['step-between-levels', { roof: { edges: [edge({ kind: 'roof-below', dropFt: 2 })] } }],
    ['training-record', { work: { trainingRecords: false } }],
    ['dark-or-alone', { work: { darkOrAlone: true } }],
    ['hatch-open', { roof: { openings: [opening({ kind: 'hatch', cover: 'fixed' })] } }],
    ['torch-permit', { work: { methods: ['torch'] } }],
    ['no-change-to-torch', { roof: { deck: { ...sound, kind: 'plank' } } }],
    ['torch-near-wood', { work: { methods: ['torch'] }, hotWork: { woodInReach: true } }],
    ['torch-extinguishers', { work: { methods: ['torch'] }, hotWork: { extinguishers: 1 } }],
    [
      'intakes-shut-only',
      { work: { methods: ['torch'] }, building: { occupied: true }, hotWork: { onlyIntakesShut: true } },
    ],
    ['temperature-log', { work: { methods: ['torch'] }, hotWork: { infraredThermometer: false } }],
    ['torch-on-house', { work: { methods: ['torch'] }, building: { use: 'dwelling' } }],
    ['propane-inside', { work: { methods: ['torch'] }, hotWork: { propaneStoredInside: true } }],
    ['propane-distance', { work: { methods: ['torch'] }, hotWork: { cylinderToTorchFt: 9 } }],
    ['solvent-ignition', { work: { methods: ['solvent-adhesive'] }, hotWork: { ignitionToSolventFt: 49 } }],
    ['sparks', { hotWork: { sparks: true } }],
    ['hot-air', { work: { methods: ['hot-air'] } }],
    [
      'welder-cord',
      { work: { methods: ['hot-air'] }, hotWork: { cord: { lengthFt: 200, gaugeAwg: 12, amps: 29.1, volts: 230 } } },
    ],
    ['alarms-off', { hotWork: { sparks: true, alarmsOff: true } }],
    ['cannot-see-below', { work: { methods: ['torch'] }, hotWork: { canSeeBelow: false } }],
    ['kettle-attended', { work: { methods: ['hot-asphalt'] } }],
    ['deck-strength', { roof: { deck: { ...sound, soft: true } } }],
    ['stock-on-weak', { roof: { wetInsulation: true } }],
    ['added-load', { work: { addedLoadPsf: 0.8 } }],
    [
      'screw-length',
      {
        work: {
          methods: ['mechanical-fastening'],
          tapered: true,
          screws: { lengthIn: 8, leastThicknessIn: 3, greatestThicknessIn: 6, deckDepthIn: 0.5 },
        },
      },
    ],
    [
      'services-under-deck',
      {
        work: { methods: ['mechanical-fastening'] },
        roof: { deck: { ...sound, kind: 'steel', servicesLocated: false } },
      },
    ],
    ['concrete-drilling', { work: { methods: ['mechanical-fastening'] } }],
    ['parapet-loose', { roof: { looseMasonry: true } }],
    ['snow-or-water', { roof: { snowOrWater: true } }],
    ['water-load', { roof: { pondDepthIn: 2.1 } }],
    ['open-roof', { work: { openTodaySqFt: 901 } }],
    ['rain-forecast', { weather: { rainPercent: 30 } }],
    ['wind-stop', { weather: { gustMph: 35 } }],
    ['wind-care', { weather: { windMph: 15 } }],
    ['lightning', { weather: { minutesSinceThunder: 29 } }],
    ['slippery', { weather: { wetOrFrosted: true } }],
    ['power-line', { roof: { powerLine: { distanceFt: 9.9, kV: 13 } } }],
    ['ladder-near-power', { roof: { powerLine: { distanceFt: 40, kV: 13 } }, work: { ladderUsed: true } }],
    ['solar', { roof: { solar: true } }],
    ['antennas', { roof: { antennas: true } }],
    ['flue', { roof: { pipes: ['gas-vent'] } }],
    ['vent-height', { roof: { pipes: ['plumbing'] } }],
    ['conduit-on-roof', { roof: { pipes: ['conduit'] } }],
    ['gas-or-unit', { work: { movesUnits: true } }],
    ['rooms-below', { building: { ceilingIsDeck: true, occupied: true } }],
    ['debris-chute', { work: { debrisDropFt: 20.1 } }],
    ['public-below', { building: { publicBelow: true } }],
    ['hoist', { work: { hoist: true } }],
    ['dumpster', { work: { tearOffSqFt: 700 } }],
    ['ballast', { roof: { ballast: true } }],
    ['later-maintenance', { roof: { edges: [edge()] } }],
    ['outlet-near-edge', { roof: { edges: [edge()], outlets: [{ label: 'D1', openEdgeFt: 14.9 }] } }],
    ['lead-paint', { building: { use: 'dwelling', yearBuilt: 1977 }, work: { paintDisturbedSqFt: 20 } }],
    ['lead-flashing', { roof: { leadFlashing: true } }],
    ['silica', { work: { cutsMasonry: true } }],
    ['isocyanate', { work: { methods: ['foam-adhesive'] } }],
    ['resin-vapor', { work: { methods: ['liquid-resin'] } }],
    ['fumes-into-intake', { work: { methods: ['hot-asphalt'] }, building: { occupied: true, airIntakeFt: 49 } }],
    ['generator', { work: { generatorToOpeningFt: 19 } }],
    ['bird-droppings', { roof: { birdDroppings: true } }],
    ['cold', { weather: { temperatureF: 20 } }],
    ['noise', { work: { roofCutter: true } }],
    ['sun', { work: { whiteSurface: true } }],
  ];

  it.each(cases)('%s', (id, changes) => {
    expect(ids(calm()).has(id)).toBe(false);
    expect(ids(changed(calm(), changes)).has(id)).toBe(true);
  });
});

describe('edges', () => {
  it('walls, party walls, joints and shingled slopes above are no fall edges; an unknown drop is', () => {
    for (const kind of ['wall', 'party-wall', 'joint', 'shingles-above'] as const)
      expect(isFallEdge(edge({ kind }), 'as-is')).toBe(false);
    expect(isFallEdge(edge({ dropFt: null }), 'as-is')).toBe(true);
    expect(isFallEdge(edge({ dropFt: 5.9 }), 'as-is')).toBe(false);
  });

  it('a parapet whose finished height is not known is an open edge', () => {
    const wall = edge({ kind: 'parapet', parapetIn: 60, newBuildUpIn: null });
    expect(openEdges([wall], 'as-is')).toHaveLength(0);
    expect(openEdges([wall], 'finished')).toHaveLength(1);
  });

  it('decks: wood burns, steel does not, gypsum is not settled by its name', () => {
    expect([isCombustible('plywood'), isCombustible('steel'), isCombustible('gypsum'), isCombustible(null)]).toEqual([
      true,
      false,
      null,
      null,
    ]);
  });
});

describe('figures in the reasons', () => {
  const because = (facts: SafetyFacts, id: string) =>
    evaluateCautions(facts).find((caution) => caution.id === id)!.because;

  it('ladder to the lowest landing', () => {
    const facts = jobFacts({
      roof: { edges: [edge({ dropFt: 12 }), edge({ dropFt: 20 })] },
      work: { ladderUsed: true },
    });
    expect(because(facts, 'ladder')).toBe('Landing 12 ft up: foot 3.1 ft out, ladder 15.5 ft at the least.');
  });

  it('load on a hole cover, pallets, open roof', () => {
    const facts = jobFacts({ roof: { openings: [opening({ label: 'hatch H1' })] }, work: { crewSize: 5 } });
    expect(because(facts, 'hole-cover')).toContain(
      'hatch H1. Two people of 250 lb with tools and a roll of 300 lb: 1,600 lb.',
    );
    expect(because(facts, 'stock-spread')).toContain('presses 143 psf and wants 95 sq ft');
    expect(because(facts, 'open-roof')).toContain('A crew of 5 closes about 1,400 sq ft in 9 hours, 700 with rain');
  });

  it('the systems that are allowed stand beside the duty', () => {
    const facts = jobFacts({ roof: { slopeIn12: 5, edges: [edge()] } });
    expect(because(facts, 'fall-protection-required')).toMatch(
      /guardrail, safety net or harness \(personal fall arrest\)\.$/,
    );
  });
});
