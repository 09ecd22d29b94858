import type { Site } from '../site/site.ts';
import type { PlanReport } from './types.ts';

/** The plan as drawings need it, before any layout. */
export function planReport(site: Site): PlanReport {
  const { roof } = site;
  return {
    outline: roof.outline,
    edges: site.edges.map(({ id, edge, from, to, label, lengthFt }) => ({
      id,
      side: edge.side,
      from,
      to,
      kind: edge.kind,
      label,
      lengthFt,
      mayDrain: edge.mayDrain,
    })),
    curbs: roof.curbs.map(({ id, kind, outline, heightIn }) => ({ id, kind, outline, heightIn })),
    pipes: roof.pipes.map(({ at, kind, diameterIn }) => ({ at, kind, diameterIn })),
    inflows: roof.inflows.map(({ at, kind, fromSqFt }) => ({ at, kind, fromSqFt })),
    findings: roof.findings.map(({ kind, at, outline, note }) => ({ kind, at, outline, note })),
    seenPonds: roof.existing.seenPonds,
  };
}
