import { safetyLimits } from '../../../reference/safety/limits.ts';
import { figure } from './figure.ts';
import type { RoofPart } from './roof-width.ts';
import { warningLine } from './warning-line.ts';

export interface FallOption {
  id: 'guardrail' | 'net' | 'personal-arrest' | 'line-and-guard' | 'line-and-monitor' | 'monitor-alone';
  name: string;
  allowed: boolean;
  /** Why not, or the condition that comes with it. */
  why: string;
}

export interface FallJob {
  slopeIn12: number | null;
  part: RoofPart;
  wheeledEquipment: boolean | null;
  /** False for deck work, carpentry and other trades: lines and monitors are for roofing work only. */
  roofingWork: boolean;
}

/** Whether the duty exists at a drop: 6 ft or more. Source: 29 CFR 1926.501(b)(1), (b)(10). */
export function needsFallProtection(dropFt: number | null): boolean {
  return dropFt === null || dropFt >= safetyLimits.fallDutyFt.value;
}

function linesBarred({ slopeIn12, roofingWork }: FallJob): string | null {
  if (!roofingWork) return 'Lines and monitors are for roofing work, not for carpentry or other trades.';
  if (slopeIn12 === null) return 'The slope is not known; lines and monitors are allowed up to 4 in 12.';
  if (slopeIn12 > safetyLimits.lowSlopeIn12.value) return `Slope ${figure(slopeIn12)} in 12 is steeper than 4 in 12.`;
  return null;
}

function monitorAlone(job: FallJob): string | null {
  const width = job.part.widthFt;
  if (width > safetyLimits.monitorWidthFt.value) return `${figure(width)} ft wide; alone only up to 50 ft.`;
  if (job.wheeledEquipment === null) return 'Not with wheeled equipment, and it is not known whether any is used.';
  return job.wheeledEquipment ? 'Not with wheeled equipment.' : null;
}

/**
 * The combinations that the federal rule allows for one part of a roof, the safest first. A monitor alone is never recommended.
 * Source: 29 CFR 1926.501(b)(10), (b)(11) and 502. Correctness: tests/published/safety-fall.test.ts
 */
export function fallOptions(job: FallJob): readonly FallOption[] {
  const barred = linesBarred(job);
  const travel = job.wheeledEquipment === false ? 'none' : 'both';
  const room = warningLine(job.part.lengthFt, job.part.widthFt, travel) !== null;
  const noLine = barred ?? (room ? null : 'Too narrow: nothing is left between the lines.');
  const noMonitor = barred ?? monitorAlone(job);
  const option = (id: FallOption['id'], name: string, refused: string | null, condition: string): FallOption => ({
    id,
    name,
    allowed: refused === null,
    why: refused ?? condition,
  });
  return [
    option('guardrail', 'guardrail', null, 'On every open edge.'),
    option('net', 'safety net', null, 'No more than 30 ft below.'),
    option('personal-arrest', 'harness (personal fall arrest)', null, 'With an anchor and room to stop below.'),
    option(
      'line-and-guard',
      'warning line with guardrail, net or harness beyond it',
      noLine,
      'The second system covers work past the line.',
    ),
    option(
      'line-and-monitor',
      'warning line with a safety monitor',
      noLine,
      'The monitor covers work past the line and does nothing else.',
    ),
    option('monitor-alone', 'safety monitor alone', noMonitor, 'Allowed, not recommended.'),
  ];
}
