import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareMembranes } from '../../src/core/membrane/compare.ts';
import type { MembraneFacts } from '../../src/core/membrane/facts.ts';
import type { MembraneId } from '../../src/core/membrane/options.ts';
import { parseRoofObject } from '../../src/input/parse-roof.ts';
import { caseRoof } from '../cases/case-roof.ts';
import { anyFacts } from '../unit/membrane-facts.ts';

/**
 * What must never be offered, over random facts of a job. Each rule is written here from the documents, apart from the
 * table of vetoes: torch over wood (column on the 2019 torch safety manual); bitumen against single-ply (federal guide
 * specification 07 54 23 for TPO, Alberta manual for EPDM; PVC from memory); roll roofing 1:12 (International Building
 * Code 1507.6); asphalt under water (Hawaii state guide; acrylic: common practice).
 */
interface Forbidden {
  rule: string;
  ids: readonly MembraneId[];
  when: (facts: MembraneFacts) => boolean;
  /** A change that makes the rule hold, so that it is met often. */
  change: Partial<MembraneFacts>;
  /** A job on which the options are open, so that the rule can be seen to bite. */
  open: Partial<MembraneFacts>;
}

const singlePly: readonly MembraneId[] = ['tpo', 'pvc', 'epdm-white', 'epdm-black'];
const asphalt = new Set(['sbs-granule', 'app', 'bur-gravel', 'bur-smooth', 'roll-roofing']);
const plywood = { kind: 'plywood', combustible: null, thicknessIn: 0.75, undersideExposed: false } as const;
const steel = { kind: 'steel', combustible: null, thicknessIn: 0.03, undersideExposed: false } as const;
const oldAsphalt = { covering: 'bur-smooth', layers: 1, wet: false, ponds: false } as const;

/** Nothing stands against any covering here. */
const easy: Partial<MembraneFacts> = {
  deck: steel,
  eaveWood: false,
  leastSlopeInPerFt: 1.5,
  residualPondIn: 0,
  existing: { ...oldAsphalt, covering: 'tpo' },
  base: 'new-boards',
  coverBoard: true,
  residueRemovedOrCovered: true,
  grease: false,
  noFlame: false,
  workTemperatureF: 70,
  coolRoofRule: null,
};

const forbidden: readonly Forbidden[] = [
  {
    rule: 'a torch over a deck that burns, or may burn',
    ids: ['sbs-torch', 'app-torch'],
    when: ({ deck }) =>
      !(
        deck.combustible === false ||
        (deck.combustible === null && (deck.kind === 'steel' || deck.kind === 'concrete'))
      ),
    change: { deck: plywood },
    open: easy,
  },
  {
    rule: 'a torch beside wood at the eave',
    ids: ['sbs-torch', 'app-torch'],
    when: ({ eaveWood }) => eaveWood !== false,
    change: { eaveWood: true },
    open: easy,
  },
  {
    rule: 'PVC, EPDM or TPO straight on bitumen',
    ids: singlePly,
    when: ({ coverBoard, residueRemovedOrCovered, existing }) =>
      !coverBoard && residueRemovedOrCovered !== true && (existing.covering === null || asphalt.has(existing.covering)),
    change: { coverBoard: false, residueRemovedOrCovered: null, existing: oldAsphalt },
    open: easy,
  },
  {
    rule: 'roll roofing below 1:12',
    ids: ['roll-roofing'],
    when: ({ leastSlopeInPerFt }) => leastSlopeInPerFt === null || leastSlopeInPerFt < 1,
    change: { leastSlopeInPerFt: 0.999 },
    open: easy,
  },
  {
    rule: 'acrylic where water stays',
    ids: ['acrylic'],
    when: ({ residualPondIn, birdBathIn }) => residualPondIn === null || residualPondIn > birdBathIn,
    change: { residualPondIn: 1.5 },
    open: { ...easy, base: 'old-covering' },
  },
  {
    rule: 'asphalt where water stays',
    ids: ['sbs-self-adhered', 'sbs-self-adhered-cool', 'sbs-cold', 'sbs-torch', 'app-torch', 'bur-hot', 'roll-roofing'],
    when: ({ residualPondIn, birdBathIn }) => residualPondIn === null || residualPondIn > birdBathIn,
    change: { residualPondIn: 0.5 },
    open: easy,
  },
];

const rankedIds = (facts: MembraneFacts): string[] =>
  compareMembranes(facts)
    .reports.filter(({ veto, score, standing }) => veto === null || score !== null || (standing ?? null) !== null)
    .map(({ id }) => id);

describe.each(forbidden)('never ranked: $rule', ({ ids, when, change, open }) => {
  it('over random facts, half of them made to meet it', () => {
    let met = 0;
    fc.assert(
      fc.property(anyFacts, fc.boolean(), fc.constantFrom(...ids), (random, forced, asked) => {
        const facts = { ...random, ...(forced ? change : {}), askedFor: asked };
        if (!when(facts)) return;
        met += 1;
        const { chosen } = compareMembranes(facts);
        expect(rankedIds(facts).filter((id) => ids.includes(id as MembraneId))).toEqual([]);
        expect(ids).not.toContain(chosen);
      }),
      { numRuns: 150, seed: 11 },
    );
    expect(met).toBeGreaterThan(60);
  });

  it('and ranked on the same job where nothing stands against it', () => {
    const before = { ...fc.sample(anyFacts, { numRuns: 1, seed: 3 })[0]!, ...open };
    expect(rankedIds(before)).toEqual(expect.arrayContaining([...ids]));
    expect(rankedIds({ ...before, ...change }).filter((id) => ids.includes(id as MembraneId))).toEqual([]);
  });
});

/** The same from roof files, through the whole answer. */
const decks = fc.constantFrom('plank', 'plywood', 'osb', 'steel', 'concrete', null);
const roofFile = fc.record({
  deck: fc.record({ kind: decks }),
  covering: fc.record({
    kind: fc.constantFrom('bur-smooth', 'sbs-granule', 'tpo', null),
    layers: fc.constantFrom(1, 2),
  }),
  existing: fc.constantFrom({ surface: 'level' }, { planes: [{ slopeInPerFt: 0.02, fallsToward: { side: 0 } }] }),
  preferences: fc.record({
    membrane: fc.constantFrom('sbs-torch', 'app-torch', 'roll-roofing', 'acrylic'),
    workTemperatureF: fc.constantFrom(null, 38, 70),
    noFlame: fc.constantFrom(null, false, true),
    weights: fc.option(fc.record({ cost: fc.integer({ min: 0, max: 100 }) })),
  }),
});

describe('through the whole answer', () => {
  it('no roof file makes a torch over wood, flat roll roofing or a coat over boards rank', () => {
    fc.assert(
      fc.property(roofFile, (part) => {
        const file = {
          version: 1,
          invented: true,
          outline: [
            [0, 0],
            [24, 0],
            [24, 12],
            [0, 12],
          ],
          edges: [{ side: 0, kind: 'gutter', mayDrain: 'yes' }],
          ...part,
        };
        const parsed = parseRoofObject(file);
        expect(parsed.ok).toBe(true);
        const { answer } = caseRoof('random', JSON.stringify(file));
        const open = answer.membranes.filter(({ veto }) => veto === null).map(({ id }) => id);
        expect(open).not.toContain('roll-roofing');
        expect(open).not.toContain('acrylic');
        // A gutter edge has wood behind it, and its fascia is in reach of the flame whatever the deck.
        expect(open.filter((id) => id.endsWith('torch'))).toEqual([]);
        expect(answer.chosenMembrane === null || open.includes(answer.chosenMembrane)).toBe(true);
        expect(answer.whyNotTheSame).not.toMatch(/[Tt]orch\S* SBS is what suits/);
      }),
      { numRuns: 12, seed: 5 },
    );
  });
});
