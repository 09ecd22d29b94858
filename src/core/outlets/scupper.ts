import { scupperOrifice, stockScuppers, type WeirForm, weirForms } from '../../../reference/scuppers.ts';
import { SAME_FLOW_GPM } from './flow.ts';

export type WeirFormId = 'francis' | 'channel';

const forms: readonly WeirForm[] = weirForms;

/** The cited row of a weir form. */
export const weirForm = (id: WeirFormId): WeirForm => forms.find((row) => row.id === id)!;

/** Francis turns over at a head of three widths; beyond it the capacity is held, so that more head never gives less flow. */
function effectiveHeadIn(form: WeirForm, widthIn: number, headIn: number): number {
  return form.contraction > 0 ? Math.min(headIn, (0.6 * widthIn) / form.contraction) : headIn;
}

/**
 * Flow [gpm] over a scupper as a weir: 2.9962 (b - 0.2 H) H^1.5 (Francis, two end contractions) or 2.9 b H^1.5 (channel).
 * @param widthIn b, clear width [in]
 * @param headIn H, depth of water over the scupper's floor [in]
 * Valid about for a width of three heads; narrow deep notches are approximate.
 * Source: reference/scuppers.ts. Correctness: tests/published/drainage-scuppers.test.ts
 */
export function weirFlowGpm(widthIn: number, headIn: number, form: WeirFormId = 'francis'): number {
  const row = weirForm(form);
  const head = effectiveHeadIn(row, widthIn, Math.max(0, headIn));
  return row.factor * (widthIn - row.contraction * head) * head ** 1.5;
}

/**
 * Flow [gpm] through a scupper whose opening is under water: 4.3 b h sqrt(H - h / 2).
 * @param heightIn h, clear height of the opening [in]; headIn must be at least that
 * Correctness: tests/published/drainage-scuppers.test.ts row 32
 */
export function orificeFlowGpm(widthIn: number, heightIn: number, headIn: number): number {
  return scupperOrifice.factor * widthIn * heightIn * Math.sqrt(headIn - heightIn / 2);
}

export interface Scupper {
  widthIn: number;
  /** Height of the opening; null = open at the top (channel). */
  heightIn: number | null;
}

/**
 * Capacity [gpm] of a scupper at a head [in]: the weir, and the lesser of weir and orifice once the opening is submerged.
 * Correctness: tests/published/drainage-scuppers.test.ts
 */
export function scupperCapacityGpm(scupper: Scupper, headIn: number, form: WeirFormId = 'francis'): number {
  const weir = weirFlowGpm(scupper.widthIn, headIn, form);
  if (scupper.heightIn === null || headIn <= scupper.heightIn) return weir;
  return Math.min(weir, orificeFlowGpm(scupper.widthIn, scupper.heightIn, headIn));
}

/**
 * Head [in] over a scupper's floor at a flow [gpm], the inverse of `scupperCapacityGpm`; null when no head up to 10 ft passes it.
 * Correctness: tests/published/drainage-scuppers.test.ts rows 7, 8 and 27
 */
export function scupperHeadIn(scupper: Scupper, gpm: number, form: WeirFormId = 'francis'): number | null {
  if (gpm <= 0) return 0;
  let low = 0;
  let high = 120;
  if (scupperCapacityGpm(scupper, high, form) < gpm - SAME_FLOW_GPM) return null;
  // 80 halvings of 10 ft end below the spacing of doubles; capacity never falls with head, so the root is bracketed.
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2;
    if (scupperCapacityGpm(scupper, middle, form) < gpm) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * Narrowest stock width [in] of an opening that carries a flow [gpm] at a head [in] and is at least `leastWidthIn`;
 * null when the widest does not. Correctness: tests/unit/outlets/sizing.test.ts
 */
export function smallestScupperWidthIn(
  gpm: number,
  headIn: number,
  heightIn: number | null,
  leastWidthIn = 0,
): number | null {
  const carries = (widthIn: number) => scupperCapacityGpm({ widthIn, heightIn }, headIn) >= gpm - SAME_FLOW_GPM;
  return stockScuppers.widthsIn.find((widthIn) => widthIn >= leastWidthIn - 1e-9 && carries(widthIn)) ?? null;
}

/** The widths that "three times the size of the drain" and "the circumference of the drain" can mean. */
export interface OverflowScupperWidths {
  circumferenceIn: number;
  threeAreasIn: number;
  threeDiametersIn: number;
}

/**
 * Widths [in] of an overflow scupper after the size of the roof drain: circumference (UPC), three times its area at the given
 * opening height, three times its diameter. "Three times the size" is read both ways by inspectors; the wider is the default.
 * Correctness: tests/published/drainage-scuppers.test.ts row 48
 */
export function overflowScupperWidths(drainSizeIn: number, heightIn: number, leastIn = 4): OverflowScupperWidths {
  const drainAreaSqIn = (Math.PI * drainSizeIn ** 2) / 4;
  return {
    circumferenceIn: Math.PI * drainSizeIn,
    threeAreasIn: Math.max(leastIn, (3 * drainAreaSqIn) / heightIn),
    threeDiametersIn: 3 * drainSizeIn,
  };
}
