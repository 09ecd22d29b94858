import { nextSlot } from '../geometry/triangulation.ts';
import { distanceFt, toSegment } from '../geometry/vector.ts';
import type { NailerPiece } from '../report/types.ts';
import type { Point } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import type { Site } from '../site/site.ts';
import type { Built } from './build.ts';

/** The pieces that lie along an edge. */
export const nailersOn = <T extends Pick<NailerPiece, 'from' | 'to'>>(
  nailers: readonly T[],
  { from, to }: Pick<SiteEdge, 'from' | 'to'>,
): T[] => nailers.filter((nailer) => [nailer.from, nailer.to].every((p) => toSegment(p, from, to).distanceFt < 1e-2));

/** Wood at the edges: its height at both ends of every straight stretch. */
export function nailersOf(site: Site, built: Built, buildUp: (p: Point) => number | null): NailerPiece[] {
  const { mesh } = built.judgement;
  const out: NailerPiece[] = [];
  for (const edge of site.edges) {
    const dir: Point = [(edge.to[0] - edge.from[0]) / edge.lengthFt, (edge.to[1] - edge.from[1]) / edge.lengthFt];
    const place = (p: Point): number => (p[0] - edge.from[0]) * dir[0] + (p[1] - edge.from[1]) * dir[1];
    const on = new Map<string, Point>();
    for (let slot = 0; slot < mesh.corners.length; slot++) {
      if (mesh.across[slot] >= 0) continue;
      for (const id of [mesh.corners[slot], mesh.corners[nextSlot(slot)]]) {
        const p = mesh.points[id];
        const t = place(p);
        const off = Math.abs((p[0] - edge.from[0]) * dir[1] - (p[1] - edge.from[1]) * dir[0]);
        if (off < 1e-3 && t > -1e-3 && t < edge.lengthFt + 1e-3) on.set(t.toFixed(3), p);
      }
    }
    const line = [...on.values()]
      .sort((a, b) => place(a) - place(b))
      .flatMap((p) => {
        const t = buildUp(p);
        return t === null ? [] : [{ p, t }];
      });
    let from = line[0];
    for (let i = 1; i < line.length; i++) {
      const next = line[i + 1];
      const [here, before] = [line[i], line[i - 1]];
      const bends =
        next === undefined ||
        Math.abs(
          (here.t - before.t) / Math.max(distanceFt(before.p, here.p), 1e-9) -
            (next.t - here.t) / Math.max(distanceFt(here.p, next.p), 1e-9),
        ) > 1e-3;
      if (!bends) continue;
      const lengthFt = distanceFt(from.p, here.p);
      if (lengthFt > 0.05)
        out.push({ edge: edge.label, from: from.p, to: here.p, lengthFt, startIn: from.t, endIn: here.t });
      from = here;
    }
  }
  return out;
}
