import { plainNumber } from '../../units/print.ts';
import type { MaterialLine, WoodAllowance } from '../report/types.ts';

export interface ZoneSheets {
  sheets: number;
  chance: number;
}

/** Chances of 0, 1, ... bad sheets in one zone: beta-binomial, or binomial where nothing clusters. */
function zoneChances({ sheets: n, chance: p }: ZoneSheets, correlation: number): number[] {
  if (p <= 0) return [1];
  const a = correlation > 0 ? p * (1 / correlation - 1) : 0;
  const b = correlation > 0 ? (1 - p) * (1 / correlation - 1) : 0;
  const out: number[] = [];
  for (let k = 0; k <= n; k++) {
    let value = 1;
    for (let i = 0; i < k; i++) value *= ((n - i) / (i + 1)) * (correlation > 0 ? (a + i) / (a + b + i) : p);
    for (let i = 0; i < n - k; i++) value *= correlation > 0 ? (b + i) / (a + b + k + i) : 1 - p;
    out.push(value);
  }
  return out;
}

/**
 * Chance of every total number of bad sheets over the zones.
 * @param correlation inside a zone: 0 = sheets go bad one by one
 * Source: beta-binomial with a = p (1 / rho - 1), b = (1 - p) (1 / rho - 1). Correctness: tests/published/takeoff.test.ts
 */
export function damageChances(zones: readonly ZoneSheets[], correlation: number): number[] {
  return zones.reduce<number[]>(
    (total, zone) => {
      const own = zoneChances(zone, correlation);
      const sum = new Array<number>(total.length + own.length - 1).fill(0);
      for (const [i, p] of total.entries()) for (const [k, q] of own.entries()) sum[i + k]! += p * q;
      return sum;
    },
    [1],
  );
}

/** Least number that is not passed with this chance. */
export function atChance(chances: readonly number[], share: number): number {
  let sum = 0;
  for (let k = 0; k < chances.length; k++) {
    sum += chances[k]!;
    if (sum >= share - 1e-12) return k;
  }
  return chances.length - 1;
}

/** Wood that may have to be replaced: an allowance with its range, only where rot was found. */
export function deckRepairLines(wood: WoodAllowance | null): MaterialLine[] {
  return (wood?.rows ?? []).map(({ id, what, unit, likely, oneInTen, basis, source }) => ({
    id,
    group: 'Wood and deck',
    item: `Allowance: ${what}`,
    quantity: likely,
    unit,
    orderQuantity: likely,
    orderUnit: `${unit}, settled at a unit price`,
    basis: `most likely ${plainNumber(likely, 1)}, one job in ten more than ${plainNumber(oneInTen, 1)}: a planning guess (${basis})`,
    source,
  }));
}
