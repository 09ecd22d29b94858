import { scupperOrifice } from '../../../reference/scuppers.ts';
import { insertRule, openPipe, type StrainerRow, strainers } from '../../../reference/strainers.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Finding } from '../report/types.ts';
import type { StrainerKind } from '../roof.ts';
import { gpm, inch } from './rating.ts';

const rows: readonly StrainerRow[] = strainers;

/** What sits in or on a drain and can make it smaller than its name. */
export interface DrainFittings {
  /** Nominal size of the drain; null = not known. */
  sizeIn: number | null;
  /** Inside diameter of a retrofit insert; null = none known. */
  insertBoreIn: number | null;
  strainer: StrainerKind | null;
  /** All openings of the strainer together [sq in]; null = not known. */
  strainerFreeSqIn: number | null;
}

/** Diameter [in] that a drain is rated by: the insert's bore where there is one. null = not known. */
export const ratedBoreIn = ({ sizeIn, insertBoreIn }: DrainFittings): number | null => insertBoreIn ?? sizeIn;

/**
 * Flow [gpm] through the openings of a strainer under a head: 4.3 A sqrt(H), the orifice of the scupper formula lying flat.
 * @param freeSqIn free area of all openings [sq in]; as measured, so leaves on it are not counted
 * @param headIn depth of water over it [in]
 * Source: reference/scuppers.ts, from memory. Correctness: tests/unit/outlets/fittings.test.ts
 */
export const strainerFlowGpm = (freeSqIn: number, headIn: number): number =>
  scupperOrifice.factor * freeSqIn * Math.sqrt(Math.max(0, headIn));

const pipeSqIn = (boreIn: number): number => (Math.PI * boreIn ** 2) / 4;

/**
 * What the fittings of a drain are told: an insert that makes it a smaller drain, an open pipe, a strainer with too little free area.
 * @param carried flow of the drain with and without its insert [gpm]; null = not known
 * @param short true where the drain does not carry its flow
 * Source: reference/strainers.ts. Correctness: tests/unit/outlets/fittings.test.ts
 */
export function fittingFindings(
  label: string,
  fittings: DrainFittings,
  carried: { withInsertGpm: number | null; withoutGpm: number | null },
  short: boolean,
): Finding[] {
  return [...insertFindings(label, fittings, carried, short), ...strainerFindings(label, fittings)];
}

function insertFindings(
  label: string,
  { sizeIn, insertBoreIn }: DrainFittings,
  { withInsertGpm, withoutGpm }: { withInsertGpm: number | null; withoutGpm: number | null },
  short: boolean,
): Finding[] {
  if (insertBoreIn === null) return [];
  const bore = `${plainNumber(insertBoreIn, 3)}-in`;
  const drain =
    sizeIn === null ? `A drain with a ${bore} insert` : `A ${plainNumber(sizeIn, 2)}-in drain with a ${bore} insert`;
  const flows =
    withInsertGpm === null || withoutGpm === null
      ? ''
      : ` It carries ${gpm(withInsertGpm)} instead of ${gpm(withoutGpm)}.`;
  const advice = short ? ' Take the insert out, or give the water more outlets.' : '';
  return [
    {
      id: 'drain-insert',
      level: short ? 'fix' : 'note',
      where: label,
      message: `${drain} is a ${bore} drain.${flows}${advice}`,
      value: inch(insertBoreIn),
      limit: sizeIn === null ? null : inch(sizeIn),
      source: sourceNote(insertRule),
    },
  ];
}

function strainerFindings(label: string, fittings: DrainFittings): Finding[] {
  const { strainer, strainerFreeSqIn } = fittings;
  if (strainer === null) return [];
  if (strainer === 'none') {
    const message = `${label} has no strainer: leaves and gravel go into the pipe and plug it out of sight. Fit one that stands above the roof.`;
    const source = sourceNote(openPipe);
    return [
      { id: 'drain-no-strainer', level: 'fix', where: label, message, value: 'none', limit: 'a strainer', source },
    ];
  }
  const boreIn = ratedBoreIn(fittings);
  const row = rows.find(({ kind }) => kind === strainer)!;
  if (boreIn === null) return [];
  const leastSqIn = row.timesPipeArea * pipeSqIn(boreIn);
  const limit = `${plainNumber(leastSqIn, 1)} sq in`;
  const what = strainer === 'dome' ? 'dome strainer' : 'flat grate';
  const rule = `${plainNumber(row.timesPipeArea, 1)} times the area of its pipe, ${limit}`;
  const base = { where: label, limit, source: sourceNote(row) };
  if (strainerFreeSqIn === null) {
    if (strainer === 'dome') return [];
    const message = `The free area of the flat grate of ${label} is not known; it needs ${rule}. Count and measure its openings: a flat grate is shut by a handful of leaves.`;
    return [{ ...base, id: 'strainer-area-not-known', level: 'note', message, value: null }];
  }
  if (strainerFreeSqIn >= leastSqIn - 1e-9) return [];
  const value = `${plainNumber(strainerFreeSqIn, 1)} sq in`;
  const message = `The ${what} of ${label} opens ${value}; it needs ${rule}. Fit one with more free area.`;
  return [{ ...base, id: 'strainer-too-small', level: 'fix', message, value }];
}
