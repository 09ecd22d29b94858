import {
  type FireWatchDocument,
  type FireWatchRow,
  fireWatch,
  type HotWork,
} from '../../../reference/safety/fire-watch.ts';
import { safetyLimits } from '../../../reference/safety/limits.ts';

const rows: readonly FireWatchRow[] = fireWatch;

/**
 * Fire watch after the last flame, minutes. The longest of code, permit, insurer and contract governs; the default is the
 * longest that was read in a document for that work. Source: reference/safety/fire-watch.ts.
 */
export function fireWatchMin(work: HotWork, document: FireWatchDocument = 'default'): number {
  const row = rows.find((entry) => entry.work === work && entry.document === document);
  if (!row) throw new Error(`no fire watch for ${work} in ${document}`);
  return row.watchMin;
}

/** Latest minute of the day for the last flame, when the site closes at a given minute. */
export function lastFlameMin(siteCloseMin: number, work: HotWork): number {
  return siteCloseMin - fireWatchMin(work);
}

/** Extinguishers at the torches: a pair for each torch that stands more than 20 ft from the next. */
export function torchExtinguishers(torches: number, spacingFt: number): number {
  const shared = spacingFt <= safetyLimits.torchesApartFt.value;
  return safetyLimits.extinguishersPerTorch.value * (shared ? 1 : torches);
}

/** 2-A extinguishers for a roof area. Source: 29 CFR 1926.150(c). */
export function areaExtinguishers(areaSqFt: number): number {
  return Math.max(1, Math.ceil(areaSqFt / safetyLimits.extinguisherAreaSqFt.value - 1e-9));
}
