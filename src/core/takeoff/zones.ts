import { edgeBand } from '../../../reference/takeoff/fasteners.ts';
import { intersect, offset, subtract, unite } from '../geometry/boolean.ts';
import { cross, direction, isInside, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';

export interface WindZones {
  bandFt: number;
  fieldSqFt: number;
  perimeterSqFt: number;
  cornerSqFt: number;
  at: (p: Point) => 'field' | 'perimeter' | 'corner';
}

const sum = (rings: readonly { outer: Ring; holes: readonly Ring[] }[]): number =>
  rings.reduce((s, { outer, holes }) => s + [outer, ...holes].reduce((a, ring) => a + signedAreaSqFt(ring), 0), 0);

/** Squares of the band's width at corners that stick out. */
function cornerSquares(outline: Ring, bandFt: number): Ring[] {
  return outline.flatMap((p, i): Ring[] => {
    const into = direction(p, outline[(i + outline.length - 1) % outline.length]!);
    const on = direction(p, outline[(i + 1) % outline.length]!);
    if (cross(on, into) < 0.1) return [];
    const at = (a: number, b: number): Point => [
      p[0] + (on[0] * a + into[0] * b) * bandFt,
      p[1] + (on[1] * a + into[1] * b) * bandFt,
    ];
    return [[p, at(1, 0), at(1, 1), at(0, 1)]];
  });
}

/**
 * Field, perimeter and corners of a section for a roof of that height: a band of 0.6 h along the outline.
 * Areas in sq ft of the section without its curbs. Source: ASCE 7-16 low-slope roof zones; screening only.
 * @param outline counter-clockwise
 */
export function windZones(outline: Ring, curbs: readonly Ring[], heightFt: number): WindZones {
  const bandFt = edgeBand.ofHeight * heightFt;
  const field = offset(outline, -bandFt).map(({ outer }) => outer);
  const squares = cornerSquares(outline, bandFt);
  const corners =
    squares.length === 0
      ? []
      : intersect(
          [outline],
          unite(squares).map(({ outer }) => outer),
        ).map(({ outer }) => outer);
  const less = (rings: readonly Ring[], holes: readonly Ring[]): number =>
    rings.length === 0 ? 0 : sum(holes.length === 0 ? unite(rings) : subtract(rings, holes));
  const totalSqFt = less([outline], curbs);
  const fieldSqFt = less(field, curbs);
  const cornerSqFt = less(corners, [...curbs, ...field]);
  return {
    bandFt,
    fieldSqFt,
    cornerSqFt,
    perimeterSqFt: Math.max(0, totalSqFt - fieldSqFt - cornerSqFt),
    at: (p) => {
      if (field.some((ring) => isInside(p, [ring]))) return 'field';
      return corners.some((ring) => isInside(p, [ring])) ? 'corner' : 'perimeter';
    },
  };
}
