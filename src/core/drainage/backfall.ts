import { nextSlot } from '../geometry/triangulation.ts';
import { distanceFt, orient } from '../geometry/vector.ts';
import { runsAgainst } from '../surface/creases.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';

/** Less than this away from an edge is within any reading. */
const LEAST_BACKFALL_IN_PER_FT = 0.02;

/** An edge over which water should leave, from which the roof falls away. */
export interface Backfall {
  outlet: string;
  /** Steepest fall away from the edge. */
  awayInPerFt: number;
  /** Gentlest fall toward it further in; null = all of it falls away. */
  towardInPerFt: number | null;
  lengthFt: number;
  /** How much the edge stands above the ground before it. */
  proudIn: number;
}

type OpenAt = (slot: number) => string | null;

function openSlots(mesh: SurfaceMesh, openAt: OpenAt): Map<string, number[]> {
  const slots = new Map<string, number[]>();
  for (let slot = 0; slot < mesh.corners.length; slot++) {
    const outlet = mesh.across[slot] < 0 ? openAt(slot) : null;
    if (outlet !== null) slots.set(outlet, [...(slots.get(outlet) ?? []), slot]);
  }
  return slots;
}

const endsOf = (mesh: SurfaceMesh, slot: number): readonly [number, number] => [
  mesh.corners[slot],
  mesh.corners[nextSlot(slot)],
];

/** Gentlest fall toward an edge among the planes that do fall toward it. */
function towardEdge(mesh: SurfaceMesh, slot: number): number | null {
  const [a, b] = endsOf(mesh, slot).map((id) => mesh.points[id]);
  const length = distanceFt(a, b);
  const inward = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  const falls = mesh.patch
    .map(({ plane }) => plane.gx * inward[0] + plane.gy * inward[1])
    .filter((rise) => rise > LEAST_BACKFALL_IN_PER_FT);
  return falls.length === 0 ? null : Math.min(...falls);
}

/**
 * Open edges from which the roof falls away, edge by edge.
 * Slopes in in/ft, square to the edge. Correctness: tests/cases/backfall.test.ts
 */
export function backfalls(mesh: SurfaceMesh, openAt: OpenAt): Backfall[] {
  return [...openSlots(mesh, openAt)].flatMap(([outlet, slots]) => {
    const away = slots.filter((slot) => runsAgainst(mesh, slot) < -LEAST_BACKFALL_IN_PER_FT);
    if (away.length === 0) return [];
    const slot = away.reduce((a, b) => (runsAgainst(mesh, b) < runsAgainst(mesh, a) ? b : a));
    const proud = away.map((s) => {
      const [a, b] = endsOf(mesh, s);
      const inner = mesh.corners[nextSlot(nextSlot(s))];
      return Math.max(mesh.z[a], mesh.z[b]) - mesh.z[inner];
    });
    return [
      {
        outlet,
        awayInPerFt: -runsAgainst(mesh, slot),
        towardInPerFt: towardEdge(mesh, slot),
        lengthFt: away.reduce((sum, s) => {
          const [a, b] = endsOf(mesh, s);
          return sum + distanceFt(mesh.points[a], mesh.points[b]);
        }, 0),
        proudIn: Math.max(...proud),
      },
    ];
  });
}

/**
 * Taper [in/ft] that leaves `targetInPerFt` on a deck that falls the wrong way: the fall of the deck is made good first.
 * Correctness: tests/cases/backfall.test.ts
 */
export const taperOverBackfall = (targetInPerFt: number, awayInPerFt: number): number => targetInPerFt + awayInPerFt;

/**
 * Heights [in] of the surface with its edges brought down so that the ground before them falls to them as the rest does.
 * @returns null where nothing falls toward an edge: then lowering it does not help
 */
export function withEdgesLowered(
  mesh: SurfaceMesh,
  openAt: OpenAt,
  found: readonly Backfall[],
): { z: Float64Array; greatestCutIn: number } | null {
  if (found.length === 0 || found.some(({ towardInPerFt }) => towardInPerFt === null)) return null;
  const slots = openSlots(mesh, openAt);
  const z = mesh.z.slice();
  for (const { outlet, towardInPerFt } of found) {
    const edgeSlots = slots.get(outlet) ?? [];
    const onEdge = new Set(edgeSlots.flatMap((slot) => endsOf(mesh, slot)));
    for (const slot of edgeSlots) {
      const [a, b] = endsOf(mesh, slot);
      for (let corner = 0; corner < mesh.corners.length; corner++) {
        const v = mesh.corners[corner];
        if (v !== a && v !== b) continue;
        for (const other of [nextSlot(corner), nextSlot(nextSlot(corner))].map((s) => mesh.corners[s])) {
          if (onEdge.has(other)) continue;
          const [p, q] = [mesh.points[a], mesh.points[b]];
          const runFt = Math.abs(orient(p, q, mesh.points[other])) / distanceFt(p, q);
          z[v] = Math.min(z[v], mesh.z[other] - towardInPerFt! * runFt);
        }
      }
    }
  }
  return { z, greatestCutIn: Math.max(...mesh.z.map((height, v) => height - z[v])) };
}
