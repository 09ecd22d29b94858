import { wallShareSqFt } from '../outlets/wall-share.ts';
import type { RuleSet } from '../rule-set.ts';
import type { SiteEdge } from '../site/edges.ts';
import type { Site } from '../site/site.ts';
import type { EdgeReport, PlanReport } from './types.ts';

type Shed = NonNullable<EdgeReport['sheds']>[number];

const wallSqFt = ({ edge, lengthFt }: SiteEdge): number => (edge.wallHeightFt ?? 0) * lengthFt;

/** Bearing that a wall looks at: to the left of its stretch, where the section lies. */
const facingDeg = ({ from, to }: SiteEdge): number => (Math.atan2(from[1] - to[1], to[0] - from[0]) * 180) / Math.PI;

/** What comes over every edge onto the section: its part of the walls' share, and the steep roof that sheds there. */
function shedsOver(edges: readonly SiteEdge[], ruleSet: RuleSet): (edge: SiteEdge) => Shed[] {
  const walls = edges.filter((edge) => wallSqFt(edge) > 0);
  const whole = walls.reduce((sum, wall) => sum + wallSqFt(wall), 0);
  const share = wallShareSqFt(
    walls.map((wall) => ({ areaSqFt: wallSqFt(wall), facingDeg: facingDeg(wall) })),
    ruleSet,
  ).areaSqFt;
  return (edge) => [
    ...(wallSqFt(edge) > 0 ? [{ from: 'wall' as const, areaSqFt: (share * wallSqFt(edge)) / whole }] : []),
    ...(edge.edge.shedsSqFt ? [{ from: 'shingles' as const, areaSqFt: edge.edge.shedsSqFt }] : []),
  ];
}

/** The plan as drawings need it, before any layout. */
export function planReport(site: Site, ruleSet: RuleSet): PlanReport {
  const { roof } = site;
  const sheds = shedsOver(site.edges, ruleSet);
  return {
    outline: roof.outline,
    edges: site.edges.map((each) => {
      const { id, edge, from, to, what, label, lengthFt } = each;
      const { side, kind, mayDrain } = edge;
      return { id, side, from, to, kind, what, label, lengthFt, mayDrain, sheds: sheds(each) };
    }),
    curbs: roof.curbs.map(({ id, kind, outline, heightIn }) => ({ id, kind, outline, heightIn })),
    pipes: roof.pipes.map(({ at, kind, diameterIn }) => ({ at, kind, diameterIn })),
    inflows: roof.inflows.map(({ at, kind, fromSqFt }) => ({ at, kind, fromSqFt })),
    findings: roof.findings.map(({ kind, at, outline, note }) => ({ kind, at, outline, note })),
    seenPonds: roof.existing.seenPonds,
  };
}
