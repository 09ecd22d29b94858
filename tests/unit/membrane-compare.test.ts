import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { membraneOptions } from '../../reference/membranes/options.ts';
import { parentCap, situationWeights } from '../../reference/membranes/weights.ts';
import { compareMembranes } from '../../src/core/membrane/compare.ts';
import type { MembraneFacts } from '../../src/core/membrane/facts.ts';
import { dominates } from '../../src/core/membrane/flip.ts';
import { flipWords } from '../../src/core/membrane/flip-words.ts';
import { membranes } from '../../src/core/membrane/options.ts';
import { scoreMembrane, scoresById } from '../../src/core/membrane/scores.ts';
import { vetoesOf } from '../../src/core/membrane/vetoes.ts';
import { capTogether, meanWeights, weighSituation } from '../../src/core/membrane/weights.ts';
import { whyNotTheSame } from '../../src/core/membrane/why-not-same.ts';
import { anyFacts, membraneFacts } from './membrane-facts.ts';

const vetoIds = (id: string, change: Partial<MembraneFacts>) =>
  vetoesOf(membranes.find((row) => row.id === id)!, membraneFacts(change)).map((veto) => veto.id);
const noteIds = (change: Partial<MembraneFacts>) =>
  compareMembranes(membraneFacts(change)).notes.map((note) => note.id);
const steel = { kind: 'steel', combustible: null, thicknessIn: 0.03, undersideExposed: false } as const;

describe('weights', () => {
  it('traffic and redundancy together stay at or below their allowance; the sum stays 1', () => {
    for (const row of situationWeights) {
      const capped = capTogether(row.weights, parentCap.criteria, parentCap.mostTogether);
      expect(capped.puncture + capped.redundancy).toBeLessThanOrEqual(parentCap.mostTogether + 1e-12);
      expect(Object.values(capped).reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    }
    const cool = situationWeights.find((row) => row.id === 'cool-shade-debris')!.weights;
    const capped = capTogether(cool, parentCap.criteria, parentCap.mostTogether);
    expect(capped.puncture + capped.redundancy).toBeCloseTo(0.2, 12);
    expect(capped.detail / capped.cost).toBeCloseTo(cool.detail / cool.cost, 12);
  });

  it('means of sums of one sum to one', () => {
    expect(Object.values(meanWeights(situationWeights)).reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
  });

  it.each([
    [{ climateZone: '3B' }, ['hot-occupied']],
    [{ climateZone: '4A' }, ['hot-occupied']],
    [{ climateZone: '5' }, ['cool-shade-debris']],
    [{ climateZone: '6A', debris: true }, ['cool-shade-debris']],
    [{ climateZone: '2A', debris: true }, ['hot-occupied', 'cool-shade-debris']],
    [{ climateZone: '2A', tightBudget: true }, ['hot-occupied', 'tight-budget']],
    [{ climateZone: '2A', livingSpaceBelow: false }, ['cool-shade-debris']],
    [{ climateZone: null }, ['hot-occupied']],
    [{ tightBudget: true, residualPondIn: 1 }, ['residual-ponding']],
    [{ residualPondIn: null }, ['residual-ponding']],
    [{ residualPondIn: 0.25 }, ['hot-occupied']],
  ] as const)('%o is weighed as %o', (change, ids) => {
    expect(weighSituation(membraneFacts(change)).situations.map((row) => row.id)).toEqual(ids);
  });
});

describe('vetoes', () => {
  it.each([
    ['sbs-torch', {}, ['torch-and-wood']],
    ['sbs-torch', { deck: steel, eaveWood: false }, []],
    ['sbs-torch', { deck: steel, eaveWood: true }, ['torch-and-wood']],
    ['sbs-torch', { deck: steel, eaveWood: null }, ['torch-and-wood']],
    ['app-torch', { deck: { ...steel, kind: null }, eaveWood: false }, ['torch-and-wood']],
    ['app-torch', { deck: { ...steel, kind: 'gypsum' }, eaveWood: false }, ['torch-and-wood']],
    ['bur-hot', { noFlame: true }, ['flame-barred']],
    ['sbs-cold', { residualPondIn: 1.5 }, ['standing-water']],
    ['sbs-cold', { residualPondIn: 0.25 }, []],
    ['acrylic', { residualPondIn: 0.5 }, ['standing-water', 'coating-over-boards']],
    ['pvc', { residualPondIn: 1.5 }, []],
    ['tpo', { coverBoard: false }, ['old-asphalt']],
    ['pvc', { coverBoard: false }, ['old-asphalt']],
    [
      'epdm-white',
      { coverBoard: false, existing: { covering: null, layers: 1, wet: false, ponds: false } },
      ['old-asphalt'],
    ],
    ['tpo', { coverBoard: false, residueRemovedOrCovered: true }, []],
    ['tpo', { coverBoard: false, existing: { covering: 'tpo', layers: 1, wet: false, ponds: false } }, []],
    ['sbs-self-adhered', { coverBoard: false }, []],
    ['pvc', { grease: true }, []],
    ['tpo', { grease: true }, ['grease']],
    ['roll-roofing', { deck: steel, leastSlopeInPerFt: 1 }, []],
    ['roll-roofing', { deck: steel, leastSlopeInPerFt: 0.99 }, ['slope']],
    ['roll-roofing', { deck: steel, leastSlopeInPerFt: null }, ['slope']],
    ['tpo', { workTemperatureF: 38 }, ['too-cold']],
    ['tpo', { workTemperatureF: 38, deck: steel }, []],
    ['pmma', { workTemperatureF: 38 }, []],
    ['epdm-black', { coolRoofRule: 'iecc-zones-1-3' }, ['cool-roof-rule']],
    ['sbs-self-adhered', { coolRoofRule: 'ca-title-24' }, ['cool-roof-rule']],
    ['sbs-self-adhered-cool', { coolRoofRule: 'ca-title-24' }, []],
    ['silicone', { base: 'old-covering', existing: { covering: 'coating', layers: 1, wet: false, ponds: false } }, []],
    [
      'tpo',
      { base: 'old-covering', existing: { covering: 'coating', layers: 1, wet: false, ponds: false } },
      ['old-silicone'],
    ],
    [
      'silicone',
      { base: 'old-covering', existing: { covering: 'tpo', layers: 2, wet: false, ponds: false } },
      ['coating-over-wet'],
    ],
    [
      'silicone',
      { base: 'old-covering', existing: { covering: 'tpo', layers: 1, wet: null, ponds: false } },
      ['coating-over-wet'],
    ],
    ['tpo', { reRoofException: false, leastSlopeInPerFt: 0.2 }, []],
  ] as const)('%s with %o', (id, change, expected) => {
    expect(vetoIds(id, change as Partial<MembraneFacts>)).toEqual(expected);
  });

  it('says every reason, not only the first', () => {
    const report = compareMembranes(membraneFacts({ residualPondIn: 2 })).reports.find(
      (row) => row.id === 'sbs-torch',
    )!;
    expect(report.veto?.why).toContain('plywood');
    expect(report.veto?.why).toContain('2 in of water');
  });
});

describe('attachment', () => {
  it('nothing goes through a thin deck that is the ceiling', () => {
    const chosen = compareMembranes(membraneFacts({}));
    expect(chosen.attachment?.throughDeck).toBe(false);
    expect(chosen.notes.map((note) => note.id)).toContain('no-field-fasteners');
  });

  it('field screws need a panel that holds them', () => {
    const deck = { kind: 'osb', combustible: null, thicknessIn: 0.375, undersideExposed: false } as const;
    const facts = membraneFacts({ deck, workTemperatureF: 38, eaveWood: false });
    const tpo = compareMembranes(facts).reports.find((row) => row.id === 'tpo')!;
    expect(tpo.veto).toBeNull();
    const thick = compareMembranes(membraneFacts({ deck: { ...deck, thicknessIn: 0.4375 }, workTemperatureF: 38 }));
    expect(thick.reports.find((row) => row.id === 'tpo')!.veto).toBeNull();
    const epdm = compareMembranes(facts).reports.find((row) => row.id === 'epdm-black')!;
    expect(epdm.veto?.why).toContain('40 F');
  });
});

describe('what would change the answer', () => {
  it('words for a change of weight', () => {
    const base = { criterion: 'cost', from: 0.06, winner: 'tpo' } as const;
    expect(flipWords({ ...base, to: 0.292 })).toBe(
      'price counted nearly five times as much as we assumed (0.29 instead of 0.06)',
    );
    expect(flipWords({ ...base, to: 0.185 })).toContain('about three times as much as');
    expect(flipWords({ ...base, to: 0.03 })).toContain('about half as much as');
    expect(flipWords({ ...base, to: 0.0596 })).toBe(
      'price counted slightly less than we assumed (0.0596 instead of 0.0600)',
    );
    expect(flipWords({ ...base, to: 0.185 }, 'given')).toContain('about three times as much as it does now');
  });

  it('TPO against the winner in a hot place: price five times', () => {
    const existing = { covering: 'sbs-granule', layers: 1, wet: null, ponds: false } as const;
    const tpo = compareMembranes(membraneFacts({ existing })).reports.find((row) => row.id === 'tpo')!;
    expect(tpo.flips[0]).toContain('price counted nearly five times as much as we assumed');
  });

  it('a dominated option says so', () => {
    const a = scoresById(scoreMembrane('sbs-cold'));
    expect(dominates(a, { ...a, cost: a.cost - 1 })).toBe(true);
    expect(dominates(a, { ...a, cost: a.cost + 1 })).toBe(false);
    expect(dominates(a, a)).toBe(false);
    const deck = { ...steel };
    const { reports } = compareMembranes(membraneFacts({ deck, eaveWood: false }));
    const app = reports.find((row) => row.id === 'app-torch')!;
    const torch = scoresById(scoreMembrane('sbs-torch'));
    expect(dominates(torch, scoresById(scoreMembrane('app-torch')))).toBe(false);
    expect(app.score).not.toBeNull();
  });

  it('a near tie shows both', () => {
    expect(noteIds({ climateZone: '6A', debris: true })).toContain('near-tie');
    expect(noteIds({ climateZone: '3B' })).not.toContain('near-tie');
  });
});

describe('notes', () => {
  it.each([
    [{ leastSlopeInPerFt: 0.24 }, 'slope-two-percent'],
    [{ leastSlopeInPerFt: 0.2 }, 'slope-re-roof-exception'],
    [{ leastSlopeInPerFt: 0.2, residualPondIn: 1, reRoofException: false }, 'slope-too-flat'],
    [{ residualPondIn: 1 }, 'pond-acceptance'],
    [{ workTemperatureF: null }, 'work-temperature-not-known'],
    [{ workTemperatureF: 38 }, 'cold-application'],
    [{ workTemperatureF: 38 }, 'wait-for-warmth'],
    [{ grease: true }, 'grease'],
    [{ climateZone: null }, 'climate-not-known'],
    [{ askedFor: 'sbs-torch' }, 'asked-membrane'],
    [{ askedFor: 'app-torch', deck: steel, eaveWood: false }, 'hot-work-asked'],
    [{ askedFor: 'app-torch', deck: steel, eaveWood: null }, 'combustible-deck'],
    [{ askedFor: 'rubber mat' }, 'asked-membrane-unread'],
    [{ base: 'old-covering' }, 'moisture-not-known'],
  ] as const)('%o gives %s', (change, id) => {
    expect(noteIds(change as Partial<MembraneFacts>)).toContain(id);
  });

  it('a torch over steel with no wood in reach is hot work, and no combustible deck', () => {
    expect(noteIds({ askedFor: 'app-torch', deck: steel, eaveWood: false })).not.toContain('combustible-deck');
    expect(noteIds({ askedFor: 'tpo' })).not.toContain('hot-work-asked');
  });

  it('where nothing passes it says so and chooses nothing', () => {
    const result = compareMembranes(membraneFacts({ workTemperatureF: 20 }));
    expect(result.chosen).toBeNull();
    expect(result.attachment).toBeNull();
    expect(result.notes[0]?.id).toBe('no-membrane');
    expect(whyNotTheSame(membraneFacts({ workTemperatureF: 20 }))).toContain('No covering passes');
  });
});

describe('why not the same again', () => {
  it('torched sheet over wood: the flame is named, and the pond before it', () => {
    const text = whyNotTheSame(membraneFacts({}));
    expect(text).toMatch(/^Water stood on the old roof/);
    expect(text).toContain('Torched SBS is out here');
    expect(text).toContain('same kind of material');
  });

  it('TPO again is a matter of score', () => {
    const existing = { covering: 'tpo', layers: 1, wet: false, ponds: false } as const;
    expect(whyNotTheSame(membraneFacts({ existing }))).toMatch(/^White TPO could be used, but comes out at 7/);
  });

  it('not known and not offered are answers', () => {
    const known = { layers: 1, wet: false, ponds: false };
    expect(whyNotTheSame(membraneFacts({ existing: { ...known, covering: null } }))).toContain('not known');
    expect(whyNotTheSame(membraneFacts({ existing: { ...known, covering: 'metal' } }))).toContain(
      'not one that is laid',
    );
  });
});

describe('laws', () => {
  it('no vetoed option ever ranks, torch never ranks over a deck that burns or may burn, every option is reported once', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const { reports, chosen } = compareMembranes(facts);
        expect(reports.map((row) => row.id).toSorted()).toEqual(membraneOptions.map((row) => row.id).toSorted());
        const firstVeto = reports.findIndex((row) => row.veto !== null);
        const ranked = firstVeto < 0 ? reports : reports.slice(0, firstVeto);
        expect(reports.slice(ranked.length).every((row) => row.veto !== null && row.score === null)).toBe(true);
        expect(ranked.every((row) => row.score !== null && Number.isFinite(row.score))).toBe(true);
        expect(ranked.map((row) => row.score)).toEqual(ranked.map((row) => row.score).toSorted((a, b) => b! - a!));
        expect(chosen).toBe(ranked[0]?.id ?? null);
        const burns = facts.deck.combustible ?? !['steel', 'concrete'].includes(facts.deck.kind ?? '');
        if (burns) expect(ranked.some((row) => row.id.endsWith('torch'))).toBe(false);
        expect(whyNotTheSame(facts).length).toBeGreaterThan(20);
      }),
      { numRuns: 400, seed: 7 },
    );
  });

  it('a further reason against a covering never brings one back', () => {
    fc.assert(
      fc.property(anyFacts, fc.constantFrom('grease', 'noFlame'), (facts, fact) => {
        const open = (on: boolean) =>
          compareMembranes({ ...facts, [fact]: on })
            .reports.filter((row) => row.veto === null)
            .map((row) => row.id);
        const before = new Set(open(false));
        expect(open(true).every((id) => before.has(id))).toBe(true);
      }),
      { numRuns: 100, seed: 7 },
    );
  });
});
