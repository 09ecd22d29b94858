import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateCautions } from '../../src/core/safety/cautions.ts';
import type { SafetyFacts } from '../../src/core/safety/facts.ts';
import { nothingKnown } from '../../src/core/safety/nothing-known.ts';
import { calm, edge, opening, rectangle } from './safety-facts.ts';

const ids = (facts: SafetyFacts) => new Set(evaluateCautions(facts).map((caution) => caution.id));

/**
 * Hazards that can be added to any job. Left out: several buildings on a site (the small-house row is a note about a rule)
 * and a higher existing edge (an edge that was past 6 ft already is not brought there by the build-up).
 */
const hazards: readonly ((facts: SafetyFacts) => void)[] = [
  (f) => {
    f.roof.edges = [...f.roof.edges, edge({ label: 'added edge', dropFt: 30 })];
  },
  (f) => {
    f.roof.edges = f.roof.edges.map((row) => ({
      ...row,
      newBuildUpIn: row.newBuildUpIn === null ? null : row.newBuildUpIn + 6,
    }));
  },
  (f) => {
    f.roof.openings = [...f.roof.openings, opening({ label: 'added hole', kind: 'skylight' })];
  },
  (f) => {
    f.roof.equipment = [...f.roof.equipment, { label: 'fan', edgeFt: 2, dropFt: 20, parapetFinishedIn: 0 }];
  },
  (f) => {
    f.roof.pipes = [...f.roof.pipes, 'flue'];
  },
  (f) => {
    f.work.methods = [...(f.work.methods ?? []), 'torch'];
  },
  (f) => {
    f.work.methods = [...(f.work.methods ?? []), 'hot-asphalt'];
  },
  (f) => {
    f.work.wheeledEquipment = true;
  },
  (f) => {
    f.work.asbestos = 'present';
  },
  (f) => {
    f.work.otherTrades = true;
  },
  (f) => {
    f.roof.deck.soft = true;
  },
  (f) => {
    f.roof.wetInsulation = true;
  },
  (f) => {
    f.roof.solar = true;
  },
  (f) => {
    f.roof.powerLine = { distanceFt: 3, kV: 69 };
  },
  (f) => {
    f.roof.pondDepthIn = 6;
    f.roof.overflowMissing = true;
  },
  (f) => {
    f.weather.windMph = 60;
    f.weather.gustMph = 70;
  },
  (f) => {
    f.weather.minutesSinceThunder = 0;
  },
  (f) => {
    f.hotWork.sparks = true;
  },
  (f) => {
    f.hotWork.alarmsOff = true;
  },
  (f) => {
    f.building.occupied = true;
    f.building.ceilingIsDeck = true;
  },
  (f) => {
    f.work.addedLoadPsf = 40;
  },
  (f) => {
    f.work.debrisDropFt = 60;
  },
];

describe('laws', () => {
  const start = fc.record({
    known: fc.boolean(),
    edges: fc.array(
      fc.record({
        dropFt: fc.constantFrom(null, 3, 5.9, 12),
        kind: fc.constantFrom('gutter', 'parapet', 'wall', 'roof-below'),
        parapetIn: fc.constantFrom(null, 20, 40, 44),
        newBuildUpIn: fc.constantFrom(null, 2, 7),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    methods: fc.constantFrom<SafetyFacts['work']['methods']>(
      ['self-adhered'],
      ['hot-air', 'solvent-adhesive'],
      ['torch'],
    ),
    protection: fc.constantFrom<SafetyFacts['work']['fallProtection']>(
      null,
      [],
      ['monitor'],
      ['warning-line', 'monitor'],
      ['personal-arrest'],
    ),
  });
  const build = (given: {
    known: boolean;
    edges: readonly object[];
    methods: SafetyFacts['work']['methods'];
    protection: SafetyFacts['work']['fallProtection'];
  }) => {
    const facts = structuredClone(given.known ? calm() : nothingKnown(rectangle(80, 55), 4400));
    facts.roof.edges = given.edges.map((row, i) => edge({ label: `side ${i}`, ...row }));
    facts.work.methods = given.methods;
    facts.work.fallProtection = given.protection;
    return facts;
  };

  it('adding hazards never takes a caution away', () => {
    fc.assert(
      fc.property(start, fc.subarray([...hazards], { minLength: 1 }), (given, added) => {
        const facts = build(given);
        const before = ids(facts);
        for (const hazard of added) hazard(facts);
        const after = ids(facts);
        expect([...before].filter((id) => !after.has(id))).toEqual([]);
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it('forgetting a fact never takes a caution away', () => {
    const groups = ['building', 'roof', 'work', 'hotWork', 'weather'] as const;
    const unknown = nothingKnown(rectangle(40, 30), 1200);
    fc.assert(
      fc.property(start, fc.constantFrom(...groups), fc.nat(), (given, group, pick) => {
        const facts = build(given);
        const before = ids(facts);
        // Facts that choose between rules for different buildings are kept: forgetting them changes which rule is quoted.
        const kept = ['dwellingUnits', 'severalBuildings', 'use', 'state'];
        const keys = Object.entries(unknown[group]).flatMap(([key, value]) =>
          value === null && !kept.includes(key) ? [key] : [],
        );
        const key = keys[pick % keys.length]!;
        (facts[group] as unknown as Record<string, unknown>)[key] = null;
        const after = ids(facts);
        expect([...before].filter((id) => !after.has(id))).toEqual([]);
      }),
      { numRuns: 300, seed: 12 },
    );
  });
});
