import { describe, expect, it } from 'vitest';
import { assessed, gutterRoof, roofOf } from './takeoff-roofs.ts';

// Partial replacement of a wet part, cut 1 to 2 ft past its line: common practice, no source.

const materials = (removedIn: number | undefined, findings: readonly object[]) =>
  assessed(
    roofOf(
      gutterRoof(24, 18, {
        existing: { surface: 'level', readOn: 'covering', buildUpIn: 1.5 },
        covering: { kind: 'sbs-granule', layers: 1, ageYears: 12 },
        removedIn,
        findings,
      }),
    ),
  ).materials;
const wet = (more: object) => ({ kind: 'wet-insulation', foundBy: 'scan', ...more });

describe('the wet part of an old roof that stays', () => {
  it('a square of 6 x 6 ft is cut out as 10 x 10 ft: its haul and dry board up to the old height', () => {
    const square = [
      [9, 6],
      [15, 6],
      [15, 12],
      [9, 12],
    ];
    for (const extent of [{ outline: square }, { at: [12, 9], areaSqFt: 36 }]) {
      const lines = materials(0, [wet(extent)]);
      const fill = lines.find(({ id }) => id === 'cut-out-fill')!;
      expect(fill.quantity).toBeCloseTo(100, 6);
      expect(fill.item).toContain('1 1/2″ thick in all');
      expect(fill.orderQuantity).toBeGreaterThanOrEqual(4);
      const haul = lines.find(({ id }) => id === 'cut-out-haul')!;
      // 2.5 psf dry, one layer.
      expect(haul.quantity).toBeCloseTo(250, 6);
      expect(haul.basis).toContain('5.2 psf more for every inch');
    }
  });

  it('only what stays of it is filled, never more than the section, and nothing where all of it comes off', () => {
    const of = (removedIn: number | undefined, findings: readonly object[]) =>
      materials(removedIn, findings).filter(({ id }) => id.startsWith('cut-out'));
    expect(of(0.5, [wet({ at: [12, 9], areaSqFt: 36 })])[1].item).toContain('1″ thick in all');
    expect(of(undefined, [wet({ at: [12, 9], areaSqFt: 36 })])).toEqual([]);
    expect(of(0, [{ kind: 'dry-insulation', foundBy: 'scan' }])).toEqual([]);
    // Nobody knows how far; and more than a quarter, where it may not stay.
    expect(of(0, [wet({ at: [12, 9] })])).toEqual([]);
    expect(of(0, [wet({ at: [12, 9], areaSqFt: 200 })])).toEqual([]);
    const spots = [4, 8, 12, 16, 20].map((x) => wet({ at: [x, 9], areaSqFt: 20 }));
    expect(of(0, spots)[1].quantity).toBeLessThanOrEqual(24 * 18);
  });
});
