import { intersect, unite } from '../geometry/boolean.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import type { InspectionFinding, Ring, Roof } from '../roof.ts';

const drawnSqFt = (rings: readonly Ring[], section: Ring): number =>
  unite(rings)
    .flatMap(({ outer, holes }) => [
      ...intersect([outer], [section]),
      ...holes.flatMap((hole) => intersect([hole], [section])),
    ])
    .reduce((sum, { outer, holes }) => sum + [outer, ...holes].reduce((all, ring) => all + signedAreaSqFt(ring), 0), 0);

/** Share of the section that these findings cover, what is drawn twice counted once; null = one of them has no extent. */
export function shareOf(findings: readonly InspectionFinding[], { outline }: Pick<Roof, 'outline'>): number | null {
  if (findings.some(({ outline: ring, areaSqFt: stated }) => ring === null && stated === null)) return null;
  const drawn = drawnSqFt(
    findings.flatMap(({ outline: ring }) => (ring === null ? [] : [ring])),
    outline,
  );
  const stated = findings.reduce((sum, { outline: ring, areaSqFt: own }) => sum + (ring === null ? (own ?? 0) : 0), 0);
  return Math.min(1, (drawn + stated) / Math.abs(signedAreaSqFt(outline)));
}
