import { type AreaPiece, NOWHERE } from '../drainage/areas.ts';
import { between, boxOf, isInside } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { SiteEdge } from '../site/edges.ts';
import type { Site } from '../site/site.ts';
import { wallShareSqFt } from './wall-share.ts';

/** Water from walls, steep roofs and downspouts that falls onto each outlet's area, sq ft. */
export function addedAreas(site: Site, pieces: readonly AreaPiece[], ruleSet: RuleSet): Map<string, number> {
  const sums = new Map<string, number>();
  const boxed = pieces.map((piece) => ({ piece, box: boxOf(piece.ring) }));
  const outletAt = ([x, y]: Point): string =>
    boxed.find(
      ({ piece, box }) =>
        x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY && isInside([x, y], [piece.ring]),
    )?.piece.outlet ?? NOWHERE;
  const add = (outlet: string, areaSqFt: number): void => {
    sums.set(outlet, (sums.get(outlet) ?? 0) + areaSqFt);
  };
  for (const { at, fromSqFt } of site.roof.inflows) add(outletAt(at), fromSqFt);
  const walls = site.edges.filter(({ edge }) => edge.wallHeightFt !== null);
  const wallArea = ({ edge, lengthFt }: SiteEdge): number => (edge.wallHeightFt ?? 0) * lengthFt;
  const facing = ({ from, to }: SiteEdge): number => {
    const n: Point = [from[1] - to[1], to[0] - from[0]];
    return (Math.atan2(n[0], n[1]) * 180) / Math.PI;
  };
  const whole = walls.reduce((sum, wall) => sum + wallArea(wall), 0);
  const share = wallShareSqFt(
    walls.map((wall) => ({ areaSqFt: wallArea(wall), facingDeg: facing(wall) })),
    ruleSet,
  ).areaSqFt;
  const samples = 24;
  for (const edge of site.edges) {
    const shed = (edge.edge.shedsSqFt ?? 0) + (whole > 0 ? (share * wallArea(edge)) / whole : 0);
    if (shed === 0) continue;
    for (let i = 0; i < samples; i++) {
      const p = between(edge.from, edge.to, (i + 0.5) / samples);
      const inside: Point = [p[0] - (edge.to[1] - edge.from[1]) * 1e-3, p[1] + (edge.to[0] - edge.from[0]) * 1e-3];
      add(outletAt(inside), shed / samples);
    }
  }
  return sums;
}
