import { describe, expect, it } from 'vitest';
import { compareMembranes } from '../../src/core/membrane/compare.ts';
import { whyNotTheSame } from '../../src/core/membrane/why-not-same.ts';
import { membraneFacts } from '../unit/membrane-facts.ts';

// Cases C53, C57, C59 and C61 of the project's case collection. Facts not stated there are assumed as in membraneFacts.

describe('C57: kitchen exhaust fan on the roof (common practice; containment found)', () => {
  const facts = membraneFacts({
    grease: true,
    deck: { kind: 'steel', combustible: null, thicknessIn: 0.03, undersideExposed: false },
    existing: { covering: 'bur-smooth', layers: 1, wet: false, ponds: false },
  });
  const result = compareMembranes(facts);
  const place = (id: string) => result.reports.findIndex((row) => row.id === id);

  it('EPDM and modified bitumen come last, behind PVC', () => {
    for (const id of ['epdm-black', 'epdm-white', 'sbs-cold', 'sbs-self-adhered', 'app-torch'])
      expect(place(id)).toBeGreaterThan(place('pvc'));
    expect(result.reports[place('pvc')]!.veto).toBeNull();
  });

  it('asks for containment and calls no sheet immune', () => {
    const grease = result.notes.find((note) => note.id === 'grease')!;
    expect(grease.level).toBe('fix');
    expect(grease.message).toContain('containment');
    expect(grease.message).toContain('no sheet is immune');
  });
});

describe('C61: 38 F, self-adhered sheet, and a torch appears (temperature: common practice)', () => {
  const result = compareMembranes(membraneFacts({ workTemperatureF: 38, askedFor: 'sbs-torch' }));
  const report = (id: string) => result.reports.find((row) => row.id === id)!;

  it('self-adhered sheet is out at 38 F, with the temperature it needs', () => {
    expect(report('sbs-self-adhered').veto?.why).toContain('50 F');
    expect(report('sbs-self-adhered-cool').veto?.why).toContain('38 F');
  });

  it('the torch is not offered in its place', () => {
    expect(report('sbs-torch').veto).not.toBeNull();
    expect(result.chosen).not.toBe('sbs-torch');
    const cold = result.notes.find((note) => note.id === 'cold-application')!;
    expect(cold.message).toContain('A torch is not the substitute');
    expect(cold.message).toContain('planning the job again');
    expect(result.notes.find((note) => note.id === 'asked-membrane')!.message).toContain('plywood');
  });

  it('waiting for a warmer day is the first way out', () => {
    expect(result.notes.find((note) => note.id === 'wait-for-warmth')!.message).toContain('self-adhered SBS');
  });
});

describe('C53: coat it and forget the pond?', () => {
  const facts = membraneFacts({
    base: 'old-covering',
    residualPondIn: 1.5,
    leastSlopeInPerFt: 0,
    reRoofException: false,
    existing: { covering: 'bur-smooth', layers: 1, wet: null, ponds: true },
    askedFor: 'acrylic',
  });
  const result = compareMembranes(facts);

  it('acrylic is out on standing water', () => {
    expect(result.reports.find((row) => row.id === 'acrylic')!.veto?.why).toContain('1.5 in of water');
  });

  it('a coating is not shown as a cure for the pond, and moisture has to be known first', () => {
    const stops = result.notes.filter((note) => note.level === 'stop').map((note) => note.id);
    expect(stops).toEqual(expect.arrayContaining(['coating-on-pond', 'moisture-not-known', 'slope-too-flat']));
    expect(result.chosen).not.toBe('silicone');
  });
});

describe('C59: adhered PVC over concrete', () => {
  const deck = { kind: 'concrete', combustible: null, thicknessIn: 6, undersideExposed: false } as const;
  const existing = { covering: 'bur-smooth', layers: 1, wet: false, ponds: true } as const;

  it('without a cover board the old asphalt has to go first', () => {
    const pvc = (coverBoard: boolean) =>
      compareMembranes(membraneFacts({ deck, existing, coverBoard })).reports.find((row) => row.id === 'pvc')!;
    expect(pvc(false).veto?.why).toContain('Old asphalt harms this sheet');
    expect(pvc(true).veto).toBeNull();
  });

  it('the winner is held without screws through the slab', () => {
    expect(compareMembranes(membraneFacts({ deck, existing })).attachment?.throughDeck).toBe(false);
  });

  it('a slope of 1/8 in/ft that drains is named as the re-roof exception', () => {
    const notes = compareMembranes(membraneFacts({ deck, existing, leastSlopeInPerFt: 0.125 })).notes;
    expect(notes.find((note) => note.id === 'slope-re-roof-exception')!.message).toContain('48 hours');
  });

  it('why not built-up again: a sentence with its reason', () => {
    expect(whyNotTheSame(membraneFacts({ deck, existing }))).toContain('Hot built-up roofing');
  });
});
