import { thickestFillLayerIn } from '../../../reference/boards.ts';
import { coverBoard, filmsR, labelRFit } from '../../../reference/insulation.ts';
import { cut } from '../geometry/convex.ts';
import { heightIn } from '../geometry/plane.ts';
import { centroid, signedAreaSqFt } from '../geometry/vector.ts';
import type { Ring } from '../roof.ts';
import { type Patch, SAME_HEIGHT_IN } from '../surface/patch.ts';

/** Label R of one board of a thickness, h ft2 F/Btu. Source: fit to the programme values since 2014. */
export const labelR = (thicknessIn: number): number =>
  labelRFit.perIn * thicknessIn + labelRFit.perIn2 * thicknessIn ** 2;

/** How thickness turns into R: boards alone, the cover board not counted. */
export interface ResistanceLaw {
  /** R at a thickness; where the law jumps, that of the side on which the thickness `nearIn` lies. */
  rIn: (thicknessIn: number, nearIn: number) => number;
  /** Between two multiples of this the R is as good as straight; null = straight throughout. */
  stepIn: number | null;
}

/** So much R per inch, whatever the boards. */
export const perInch = (rPerIn: number): ResistanceLaw => ({
  rIn: (thicknessIn) => thicknessIn * rPerIn,
  stepIn: null,
});

/**
 * Label R of a build-up in even layers, none thicker than fill is laid. The boards that are laid differ from even layers
 * by R 0.3 at most; the curve between two half inches is straight to R 0.01.
 */
export const labelLaw: ResistanceLaw = {
  rIn: (thicknessIn, nearIn) => {
    const layers = Math.max(1, Math.ceil(nearIn / thickestFillLayerIn - 1e-9));
    return layers * labelR(thicknessIn / layers);
  },
  stepIn: 0.5,
};

export interface Moments {
  areaSqFt: number;
  /** Area times mean thickness: board feet. */
  boardFt: number;
  leastIn: number;
  greatestIn: number;
}

/** Exact moments of a thickness over its patches. */
export function momentsOf(patches: readonly Patch[]): Moments {
  const m = { areaSqFt: 0, boardFt: 0, leastIn: Number.POSITIVE_INFINITY, greatestIn: Number.NEGATIVE_INFINITY };
  for (const { ring, plane } of patches) {
    const areaSqFt = signedAreaSqFt(ring);
    m.areaSqFt += areaSqFt;
    m.boardFt += areaSqFt * heightIn(plane, centroid(ring));
    for (const p of ring) {
      const t = heightIn(plane, p);
      if (t < m.leastIn) m.leastIn = t;
      if (t > m.greatestIn) m.greatestIn = t;
    }
  }
  return m;
}

/**
 * Mean of 1/R over a triangle on which R is linear with corner values a, b, c.
 * Closed form of the divided difference of R ln R - R; equal corners by their limits.
 * Source: integral over a triangle; checked against the tapered-roof U table of a state energy code.
 */
export function meanU(a: number, b: number, c: number): number {
  const [lo, mid, hi] = [a, b, c].sort((p, q) => p - q);
  const spread = hi - lo;
  if (spread < 1e-4 * hi) {
    const mean = (a + b + c) / 3;
    return 1 / mean;
  }
  const g = (x: number): number => x * Math.log(x);
  const slope = (p: number, q: number): number =>
    Math.abs(p - q) < 1e-6 * q ? Math.log((p + q) / 2) + 1 : (g(p) - g(q)) / (p - q);
  return (2 * (slope(mid, hi) - slope(lo, mid))) / spread;
}

/** A triangle of a roof with the R of its boards and cover board at its corners. */
interface Cell {
  areaSqFt: number;
  r: readonly [number, number, number];
}

/** A patch cut where its law bends, each part with a thickness that lies in it. */
function straightParts({ ring, plane }: Patch, { stepIn }: ResistanceLaw): { ring: Ring; nearIn: number }[] {
  const heights = ring.map((p) => heightIn(plane, p));
  const [lowIn, highIn] = [Math.min(...heights), Math.max(...heights)];
  if (stepIn === null || highIn - lowIn < SAME_HEIGHT_IN) return [{ ring, nearIn: (lowIn + highIn) / 2 }];
  const steep = Math.hypot(plane.gx, plane.gy);
  const parts: { ring: Ring; nearIn: number }[] = [];
  for (let k = Math.floor(lowIn / stepIn + 1e-6); k * stepIn < highIn - SAME_HEIGHT_IN; k++) {
    const [from, to] = [k * stepIn, (k + 1) * stepIn];
    const above = cut(ring, (p) => (heightIn(plane, p) - from) / steep);
    const part = above.length < 3 ? above : cut(above, (p) => (to - heightIn(plane, p)) / steep);
    if (part.length >= 3) parts.push({ ring: part, nearIn: (from + to) / 2 });
  }
  return parts;
}

function cellsOf(patches: readonly Patch[], law: ResistanceLaw): Cell[] {
  return patches.flatMap((patch) =>
    straightParts(patch, law).flatMap(({ ring, nearIn }) => {
      const r = ring.map((p) => law.rIn(heightIn(patch.plane, p), nearIn) + coverBoard.r);
      return ring.slice(1, -1).map((_, i): Cell => {
        const [b, c] = [i + 1, i + 2];
        return { areaSqFt: signedAreaSqFt([ring[0], ring[b], ring[c]]), r: [r[0], r[b], r[c]] };
      });
    }),
  );
}

/**
 * U of the whole roof for heat that goes straight up: boards, cover board and surface films, averaged by area.
 * @returns a function of the R that a flat layer would add everywhere, Btu/(h ft2 F)
 */
export function averageU(patches: readonly Patch[], law: ResistanceLaw): (addedR: number) => number {
  const cells = cellsOf(patches, law);
  const areaSqFt = cells.reduce((sum, cell) => sum + cell.areaSqFt, 0);
  return (addedR) => {
    const more = addedR + filmsR.value;
    const sum = cells.reduce(
      (all, { areaSqFt: part, r: [a, b, c] }) => all + part * meanU(a + more, b + more, c + more),
      0,
    );
    return sum / areaSqFt;
  };
}

/** R that a uniform roof of the same U would have, films not counted. */
export const effectiveR = (u: number): number => 1 / u - filmsR.value;
