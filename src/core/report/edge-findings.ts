import { inches, slopeInWords } from '../../units/print.ts';
import { type Backfall, taperOverBackfall } from '../drainage/backfall.ts';
import { sourceNote } from '../finding.ts';
import type { Site } from '../site/site.ts';
import { finding } from './part-finding.ts';
import type { ExistingReport, Finding } from './types.ts';

/** Edges from which the roof falls away, and what lowering them alone would do. */
export interface EdgeTrouble {
  backfalls: readonly Backfall[];
  /** null = nothing falls toward them, or there is no such edge. */
  lowered: { cutIn: number; drains: boolean; leastFaceSlopeInPerFt: number | null } | null;
}

const rounded = (slope: number): string => slopeInWords(Math.round(slope * 1000) / 1000);

const labelOf = (site: Site, outlet: string): string => site.edges.find(({ id }) => id === outlet)?.label ?? outlet;

/** Under this the ground behind the edge is no roof of its own slope but a sag or a level deck: lowering the edge ends nothing. */
const LEAST_OWN_SLOPE_IN_PER_FT = 1 / 8;

/** What to do first where an edge that stands proud is all that holds the water; null otherwise. */
export function edgeFirstWords(site: Site, { backfalls, lowered }: EdgeTrouble): string | null {
  if (lowered === null || !lowered.drains) return null;
  if ((lowered.leastFaceSlopeInPerFt ?? 0) < LEAST_OWN_SLOPE_IN_PER_FT) return null;
  const names = backfalls.map(({ outlet }) => labelOf(site, outlet)).join(' and ');
  return `Correct the ${names} first: lowered by ${inches(lowered.cutIn)}, the roof runs to it at ${rounded(lowered.leastFaceSlopeInPerFt ?? 0)} with the slope that it has.`;
}

/** Each edge from which the roof falls away. */
export function edgeFindings(site: Site, edges: EdgeTrouble, report: ExistingReport): Finding[] {
  const face = site.given.faceInPerFt;
  return edges.backfalls.map((fall) => {
    const where = labelOf(site, fall.outlet);
    const away = `The roof falls ${rounded(fall.awayInPerFt)} away from the ${where}`;
    const rest =
      fall.towardInPerFt === null
        ? `. A taper on it must first undo that: ${rounded(taperOverBackfall(face, fall.awayInPerFt))} leaves ${rounded(face)}.`
        : `, which stands ${inches(fall.proudIn)} proud; further in it falls ${rounded(fall.towardInPerFt)} toward it. ${report.edgeFirst ?? 'Boards laid on it as it is would start uphill: the deck is levelled first, or the edge brought down.'}`;
    return finding({
      id: 'backfall',
      level: report.edgeFirst ? 'stop' : 'fix',
      where,
      message: away + rest,
      value: `${fall.awayInPerFt.toFixed(3)} in/ft away`,
      limit: fall.towardInPerFt === null ? null : `${fall.towardInPerFt.toFixed(3)} in/ft toward`,
      source: sourceNote({ source: 'arithmetic', at: 'fall square to the edge', grade: 'computed' }),
    });
  });
}
