import { safetyLimits } from '../../../reference/safety/limits.ts';
import type { CautionMoment } from '../../../reference/safety/row.ts';
import type { EdgeKind } from '../roof.ts';
import type { SafetyEdge } from './facts.ts';
import { needsFallProtection } from './fall-options.ts';

/** Edges behind which nobody can fall: something stands higher there, or the roof goes on. */
const closedKinds: readonly EdgeKind[] = ['wall', 'shingles-above', 'party-wall', 'joint'];

/** How much the walking surface rises, in; null where a build-up is not known. */
export function surfaceRiseIn(edge: SafetyEdge): number | null {
  if (edge.oldBuildUpIn === null || edge.newBuildUpIn === null) return null;
  return edge.newBuildUpIn - edge.oldBuildUpIn;
}

/**
 * Height of a parapet over the surface that is walked on: h_new = h_old - (t_new - t_old).
 * During the work the surface goes from old covering to bare deck to finished roof: the lowest of these counts.
 * @returns in; null = not known. Source: arithmetic. Correctness: tests/published/safety-fall.test.ts
 */
export function parapetIn(edge: SafetyEdge, when: CautionMoment): number | null {
  const asIs = edge.parapetIn;
  if (asIs === null || when === 'as-is') return asIs;
  const rise = surfaceRiseIn(edge);
  if (rise === null) return null;
  return when === 'finished' ? asIs - rise : Math.min(asIs, asIs - rise);
}

/** Drop from the walking surface to the next lower level, ft; during the work the greatest of old and finished counts. */
export function dropFt(edge: SafetyEdge, when: CautionMoment): number | null {
  const asIs = edge.dropFt;
  if (asIs === null || when === 'as-is') return asIs;
  const rise = surfaceRiseIn(edge);
  if (rise === null) return null;
  return when === 'finished' ? asIs + rise / 12 : Math.max(asIs, asIs + rise / 12);
}

/** True when the drop brings the duty (6 ft or more), or when it is not known. */
export function isFallEdge(edge: SafetyEdge, when: CautionMoment): boolean {
  if (closedKinds.includes(edge.kind)) return false;
  return needsFallProtection(dropFt(edge, when));
}

/** True when a parapet is known to stand high enough to count as a guard (39 in); its strength is another question. */
export function isHighEnough(edge: SafetyEdge, when: CautionMoment): boolean {
  const height = edge.kind === 'parapet' ? parapetIn(edge, when) : null;
  return height !== null && height >= safetyLimits.guardIn.value;
}

/** Edges that need fall protection at that moment: a drop of 6 ft or more, or not known, and no wall high enough. */
export function openEdges(edges: readonly SafetyEdge[], when: CautionMoment): readonly SafetyEdge[] {
  return edges.filter((edge) => isFallEdge(edge, when) && !isHighEnough(edge, when));
}

/** Parapet over the surface at a distance from the low point: bare-deck height less start thickness and taper. */
export function parapetOverTaperIn(overDeckIn: number, startIn: number, slopeInPerFt: number, runFt: number): number {
  return overDeckIn - startIn - slopeInPerFt * runFt;
}

/** Longest run from the low point over which a parapet still counts at a given guard height, ft. */
export function guardedRunFt(overDeckIn: number, startIn: number, slopeInPerFt: number, guardIn: number): number {
  return (overDeckIn - guardIn - startIn) / slopeInPerFt;
}
