import { distanceFt } from '../core/geometry/vector.ts';
import type { Edge, Ring, ScupperOutlet } from '../core/roof.ts';
import { feetInches } from '../units/print.ts';
import { edgeKinds } from './choices.ts';
import type { Placed, PlanParts } from './placed.ts';
import { type InputLog, under } from './problems.ts';

/** A tape reading may overshoot the end of its side by this much; it is then taken as the end. */
const OVERSHOOT_FT = 0.05;
const SAME_FT = 1e-6;

export const sideLengthFt = (outline: Ring, side: number): number =>
  distanceFt(outline[side], outline[(side + 1) % outline.length]);

/** A side as people say it: "side 1 (parapet, 24′-0″)". */
function sideName(outline: Ring, edge: { side: number; kind?: Edge['kind'] }): string {
  const length = feetInches(sideLengthFt(outline, edge.side));
  return `side ${edge.side} (${edge.kind ? `${edgeKinds[edge.kind]}, ` : ''}${length})`;
}

/** False, with a problem, where the outline has no such side. */
export function sideExists(outline: Ring, side: number, path: string, log: InputLog): boolean {
  if (side < outline.length) return true;
  log.problem(path, 'no-such-side', `there is no side ${side}: the outline has ${outline.length} sides.`, {
    got: String(side),
    instead: `a side from 0 to ${outline.length - 1}`,
  });
  return false;
}

/** A distance along a side, cut back to its end where it overshoots by a tape's error. */
function along(
  valueFt: number | null,
  edge: { side: number; kind?: Edge['kind'] },
  outline: Ring,
  path: string,
  log: InputLog,
): number | null {
  if (valueFt === null) return null;
  const lengthFt = sideLengthFt(outline, edge.side);
  if (valueFt <= lengthFt) return valueFt;
  if (valueFt <= lengthFt + OVERSHOOT_FT) {
    if (valueFt > lengthFt + SAME_FT) {
      log.note(
        path,
        'adjusted',
        `${feetInches(valueFt)} taken as the end of the side, ${feetInches(lengthFt)}`,
        lengthFt,
      );
    }
    return lengthFt;
  }
  log.problem(path, 'beyond-side', `${feetInches(valueFt)} is beyond ${sideName(outline, edge)}.`, {
    got: feetInches(valueFt),
    instead: `at most ${feetInches(lengthFt)} from corner ${edge.side}`,
  });
  return null;
}

function inOrder(from: number | null, to: number | null, path: string, log: InputLog): void {
  if (from === null || to === null || from < to) return;
  log.problem(path, 'order', `it ends at ${feetInches(to)}, which is not after its start at ${feetInches(from)}.`, {
    got: `${feetInches(from)} to ${feetInches(to)}`,
    instead: 'fromFt less than toFt, both from the first corner of the side',
  });
}

/** A stretch of a side, its ends in order and on the side. */
export function checkStretch<T extends Pick<Edge, 'fromFt' | 'toFt'>>(
  part: T,
  edge: { side: number; kind?: Edge['kind'] },
  outline: Ring,
  path: string,
  log: InputLog,
): T {
  inOrder(part.fromFt, part.toFt, under(path, 'toFt'), log);
  const fromFt = along(part.fromFt, edge, outline, under(path, 'fromFt'), log);
  const toFt = along(part.toFt, edge, outline, under(path, 'toFt'), log);
  return { ...part, fromFt, toFt };
}

/** An edge entry whose distances lie on its side. */
function checkEdge({ item, path }: Placed<Edge>, outline: Ring, log: InputLog): Placed<Edge> {
  if (!sideExists(outline, item.side, under(path, 'side'), log)) return { item, path };
  const edge = checkStretch(item, item, outline, path, log);
  const openings = edge.openings.map((opening, i) =>
    checkStretch(opening, edge, outline, under(under(path, 'openings'), i), log),
  );
  const spouts = under(under(path, 'gutter'), 'downspouts');
  const downspouts = edge.gutter?.downspouts?.map((at, i) => along(at, edge, outline, under(spouts, i), log) ?? at);
  const gutter = edge.gutter && { ...edge.gutter, downspouts: downspouts ?? null };
  return { item: { ...edge, openings, gutter }, path };
}

/** Two entries may not speak for the same stretch of a side. */
function checkOverlaps(edges: readonly Placed<Edge>[], outline: Ring, log: InputLog): void {
  const stretches = edges
    .filter(({ item }) => item.side < outline.length)
    .map(({ item, path }) => ({
      path,
      edge: item,
      from: item.fromFt ?? 0,
      to: item.toFt ?? sideLengthFt(outline, item.side),
    }))
    .sort((a, b) => a.edge.side - b.edge.side || a.from - b.from);
  for (let i = 1; i < stretches.length; i++) {
    const [a, b] = [stretches[i - 1], stretches[i]];
    if (a.edge.side !== b.edge.side || b.from >= a.to - SAME_FT) continue;
    const to = Math.min(a.to, b.to);
    const where = `${feetInches(b.from)} to ${feetInches(to)} of ${sideName(outline, { side: a.edge.side })}`;
    log.problem(b.path, 'overlap', `it covers ${where}, as ${a.path} does.`, {
      instead: 'fromFt and toFt that part the side between the entries',
    });
  }
}

function checkScupper(outlet: ScupperOutlet, path: string, outline: Ring, log: InputLog): void {
  if (!sideExists(outline, outlet.side, under(path, 'side'), log)) return;
  const lengthFt = sideLengthFt(outline, outlet.side);
  const halfFt = (outlet.widthIn ?? 0) / 24;
  if (outlet.alongFt - halfFt >= -SAME_FT && outlet.alongFt + halfFt <= lengthFt + SAME_FT) return;
  log.problem(
    under(path, 'alongFt'),
    'beyond-side',
    `the scupper reaches beyond ${sideName(outline, { side: outlet.side })}.`,
    {
      got: feetInches(outlet.alongFt),
      instead: `its middle between ${feetInches(halfFt)} and ${feetInches(lengthFt - halfFt)} from corner ${outlet.side}`,
    },
  );
}

/** Everything that lies along a side: edge entries, openings, downspouts, scuppers. */
export function checkSides(parts: PlanParts, outline: Ring, log: InputLog): readonly Placed<Edge>[] {
  const edges = parts.edges.map((edge) => checkEdge(edge, outline, log));
  checkOverlaps(edges, outline, log);
  for (const { item, path } of parts.outlets) if (item.kind === 'scupper') checkScupper(item, path, outline, log);
  return edges;
}
