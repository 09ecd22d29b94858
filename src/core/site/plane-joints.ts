import { intersect, type Region, subtract } from '../geometry/boolean.ts';
import { heightIn } from '../geometry/plane.ts';
import { centroid, signedAreaSqFt, toSegment } from '../geometry/vector.ts';
import type { DeckPlane, Point, Ring } from '../roof.ts';
import { deckPlane } from './surface-of.ts';

/** Why planes of a deck do not make one surface. */
export type PlaneFault =
  | { kind: 'gap'; areaSqFt: number; at: Point }
  | { kind: 'overlap'; first: number; second: number; areaSqFt: number; at: Point }
  | { kind: 'step'; first: number; second: number; stepIn: number; at: Point };

/** Areas smaller than this, and steps lower than this, are the rounding of a tape. */
const SAME_SQ_FT = 0.05;
const SAME_IN = 0.1;
const ON_LINE_FT = 0.01;

const areaOf = (regions: readonly Region[]): number =>
  regions.flatMap(({ outer, holes }) => [outer, ...holes]).reduce((sum, ring) => sum + signedAreaSqFt(ring), 0);

const middleOf = (regions: readonly Region[]): Point =>
  centroid([...regions].sort((a, b) => signedAreaSqFt(b.outer) - signedAreaSqFt(a.outer))[0].outer);

const onRing = (p: Point, ring: Ring): boolean =>
  ring.some((a, i) => toSegment(p, a, ring[(i + 1) % ring.length]).distanceFt < ON_LINE_FT);

/** The greatest step between two planes where their outlines meet. Along a straight joint its ends decide. */
function stepBetween(
  a: { ring: Ring; plane: ReturnType<typeof deckPlane> },
  b: typeof a,
): { stepIn: number; at: Point } | null {
  const shared = [...a.ring.filter((p) => onRing(p, b.ring)), ...b.ring.filter((p) => onRing(p, a.ring))];
  let worst: { stepIn: number; at: Point } | null = null;
  for (const at of shared) {
    const stepIn = Math.abs(heightIn(a.plane, at) - heightIn(b.plane, at));
    if (stepIn > SAME_IN && (worst === null || stepIn > worst.stepIn)) worst = { stepIn, at };
  }
  return worst;
}

/**
 * Where the planes of a deck leave a gap, lie over each other or meet at different heights.
 * @param curbs parts that need no plane
 */
export function planeFaults(planes: readonly DeckPlane[], outline: Ring, curbs: readonly Ring[]): PlaneFault[] {
  const parts = planes.map((plane) => ({ ring: plane.where ?? outline, plane: deckPlane(plane, outline) }));
  const faults: PlaneFault[] = [];
  const gap = subtract([outline], [...parts.map(({ ring }) => ring), ...curbs]);
  if (areaOf(gap) > SAME_SQ_FT) faults.push({ kind: 'gap', areaSqFt: areaOf(gap), at: middleOf(gap) });
  parts.forEach((a, first) => {
    parts.slice(first + 1).forEach((b, k) => {
      const second = first + 1 + k;
      const both = intersect([a.ring], [b.ring]);
      if (areaOf(both) > SAME_SQ_FT)
        faults.push({ kind: 'overlap', first, second, areaSqFt: areaOf(both), at: middleOf(both) });
      else {
        const step = stepBetween(a, b);
        if (step !== null) faults.push({ kind: 'step', first, second, ...step });
      }
    });
  });
  return faults;
}
