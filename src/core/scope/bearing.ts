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

/** Findings of a deck that gives. Rot at an eave, in a fascia or in rafter tails is none: it says nothing of the deck itself. */
export const softDeckOf = (findings: readonly InspectionFinding[]): InspectionFinding[] =>
  findings.filter(({ kind }) => bears(kind) === 'deck');

/** The deck was found soft somewhere; null = nobody has found it so, and a finding never says that all of it is sound. */
export const deckSoft = (findings: readonly InspectionFinding[]): true | null =>
  softDeckOf(findings).length > 0 ? true : null;

/** Wood is rotten: of the deck or of the eave. */
export const isRot = ({ kind }: InspectionFinding): boolean => bears(kind) === 'deck' || bears(kind) === 'edge-wood';

/** Wet insulation was found; it was looked at and found dry; null = nobody has looked. */
export const wetFound = (findings: readonly InspectionFinding[]): boolean | null =>
  anyBears(findings, 'wet') ? true : anyBears(findings, 'dry') ? false : null;
