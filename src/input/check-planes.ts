import type { Curb, DeckPlane, Ring } from '../core/roof.ts';
import { type PlaneFault, planeFaults } from '../core/site/plane-joints.ts';
import { inches, plainNumber } from '../units/print.ts';
import type { Placed } from './placed.ts';
import type { InputLog } from './problems.ts';
import { placeText } from './ring.ts';

const planePath = (i: number): string => `existing.planes[${i}]`;

function tell(fault: PlaneFault, log: InputLog): void {
  const at = placeText(fault.at);
  if (fault.kind === 'gap') {
    log.problem('existing.planes', 'missing', `no plane covers ${plainNumber(fault.areaSqFt, 1)} sq ft about ${at}.`, {
      got: at,
      instead: 'a plane whose "where" covers that part, or one plane without "where" for the whole section',
    });
    return;
  }
  const path = planePath(fault.second);
  const other = planePath(fault.first);
  if (fault.kind === 'overlap') {
    log.problem(
      `${path}.where`,
      'overlap',
      `it lies over ${other} on ${plainNumber(fault.areaSqFt, 1)} sq ft about ${at}.`,
      {
        got: at,
        instead: 'outlines that share a line and no more',
      },
    );
    return;
  }
  log.problem(path, 'conflict', `it meets ${other} with a step of ${inches(fault.stepIn)} at ${at}.`, {
    got: at,
    instead:
      'the same point of the common line (ridge, hip or valley) as "through" in both planes; a deck that really steps is two sections',
  });
}

/** The planes of a deck make one surface: no gap, no overlap, and the same height on both sides of every line. */
export function checkPlanes(
  planes: readonly DeckPlane[],
  outline: Ring,
  curbs: readonly Placed<Curb>[],
  log: InputLog,
): void {
  const rings = curbs.map(({ item }) => item.outline);
  for (const fault of planeFaults(planes, outline, rings)) tell(fault, log);
}
