import type { Finding, MaterialLine } from '../report/types.ts';
import { attachmentLines } from './attachment.ts';
import { boardLines } from './boards.ts';
import { pliesOf } from './covering.ts';
import { cutOutFill, cutOutHaul } from './cut-out.ts';
import { deckRepairLines } from './deck-repair.ts';
import { deckSheetLines } from './deck-sheet.ts';
import { edgeLines } from './edges.ts';
import { flashingLines } from './flashings.ts';
import { glueLines } from './glue.ts';
import { jobOf, type TakeOffInput } from './job.ts';
import { builtUpLines, liquidLines } from './liquid.ts';
import { stripsOf } from './strips.ts';
import { tearOffLines } from './tear-off.ts';
import { waterLines } from './water.ts';
import { openedBy, woodAllowance } from './wood-allowance.ts';

export type { TakeOffInput };

export interface TakeOff {
  lines: readonly MaterialLine[];
  findings: readonly Finding[];
}

/**
 * Everything to order for one layout and covering, in the order in which it is needed on the job.
 * Every line has its net amount, the amount to buy in the unit in which it is sold, and how it came about.
 * Without a covering the boards, edges and water are still listed.
 */
export function takeOff(input: TakeOffInput): TakeOff {
  const job = jobOf(input);
  const strips = stripsOf(job);
  const plies = pliesOf(job, strips);
  const wood = woodAllowance(job.site, openedBy(job.layout));
  const held = attachmentLines(job, plies[0]?.plan ?? null);
  return {
    lines: [
      ...tearOffLines(job, wood?.rows.find(({ id }) => id === 'deck-sheets')?.likely ?? 0),
      ...cutOutHaul(job),
      ...deckRepairLines(wood),
      ...deckSheetLines(job, input.deckSheet ?? null),
      ...cutOutFill(job),
      ...boardLines(job),
      ...held.lines,
      ...edgeLines(job),
      ...plies.map(({ line }) => line),
      ...liquidLines(job, strips),
      ...builtUpLines(job, strips),
      ...glueLines(job, plies, strips),
      ...flashingLines(job, strips),
      ...waterLines(job),
    ],
    findings: held.findings,
  };
}
