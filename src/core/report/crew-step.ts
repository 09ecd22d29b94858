import { crewChecks } from '../../../reference/crew-checks.ts';
import { inches } from '../../units/print.ts';

/** One step in the order of work. */
export interface WorkStep {
  title: string;
  lines: readonly string[];
  /** Nobody goes on before it is settled. */
  hold: boolean;
}

type Check = (typeof crewChecks)[number]['check'];

/** The row of a check: how far off is let pass, and who says so. */
export const checkRow = (check: Check) => crewChecks.find((each) => each.check === check)!;

export const within = (check: Check): string => inches(checkRow(check).withinIn);
