import {
  type FindingBearing,
  type FindingKind,
  type FindingKindRow,
  findingKinds,
} from '../../../reference/findings.ts';
import type { InspectionFinding } from '../roof.ts';

const rows: readonly FindingKindRow[] = findingKinds;

/** The row of a kind of finding. */
export function kindRow(kind: FindingKind): FindingKindRow {
  const row = rows.find((each) => each.kind === kind);
  if (row === undefined) throw new Error(`no row for finding ${kind}`);
  return row;
}

/** What a kind of finding bears on. */
export const bears = (kind: FindingKind): FindingBearing => kindRow(kind).bears;

/** Whether one of the findings bears on this. */
export const anyBears = (findings: readonly InspectionFinding[], bearing: FindingBearing): boolean =>
  findings.some(({ kind }) => bears(kind) === bearing);

/** Wet insulation was found; it was looked at and found dry; null = nobody has looked. */
export const wetFound = (findings: readonly InspectionFinding[]): boolean | null =>
  anyBears(findings, 'wet') ? true : anyBears(findings, 'dry') ? false : null;
