import { inches, slopeInWords } from '../../units/print.ts';
import type { ExistingReport, FlatBoardsReport, Layout, Rejection } from './types.ts';
import { areaWords, depthWords, sentence } from './words.ts';

function today(existing: ExistingReport): string {
  const pond = existing.ponds.find(({ birdBath }) => !birdBath);
  if (pond !== undefined) {
    const more = existing.ponds.filter(({ birdBath }) => !birdBath).length - 1;
    const others = more === 0 ? '' : ` (and in ${more} more place${more === 1 ? '' : 's'})`;
    return `Water stands ${depthWords(pond.greatestDepthIn)} deep over ${areaWords(pond.areaSqFt)}, ${pond.where}${others}.`;
  }
  if (existing.verdict === 'ponds') return existing.why;
  if (existing.verdict === 'meets-minimum')
    return `The roof drains as it is: ${existing.why.charAt(0).toLowerCase()}${existing.why.slice(1)}`;
  return existing.why;
}

/**
 * One answer in two sentences: what is wrong today, and what ends it.
 * @param instead what is said in place of a taper, where it is used
 */
export function headlineOf(
  existing: ExistingReport,
  chosen: Layout | null,
  layouts: readonly Layout[],
  instead: Pick<FlatBoardsReport, 'used' | 'text'> | null = null,
): string {
  // Where an edge alone holds the water, new boards come after it, if at all.
  if (existing.edgeFirst) return `${today(existing)} ${existing.edgeFirst}`;
  if (instead?.used) return `${today(existing)} ${instead.text}`;
  if (chosen !== null) {
    const range = `${inches(chosen.leastThicknessIn)} to ${inches(chosen.greatestThicknessIn)}`;
    const valley =
      chosen.leastValleySlopeInPerFt === null ? '' : `, valleys ${slopeInWords(chosen.leastValleySlopeInPerFt)}`;
    return `${today(existing)} A taper of ${range} drains it (planes ${slopeInWords(chosen.leastFaceSlopeInPerFt ?? 0)}${valley}).`;
  }
  const rejections = layouts.flatMap(({ rejected }) => (rejected === null ? [] : [rejected]));
  const short = ({ neededIn, availableIn }: Rejection): number =>
    neededIn === null || availableIn === null ? 999 : neededIn - availableIn;
  const first = rejections.sort((a, b) => short(a) - short(b))[0];
  if (first === undefined) return `${today(existing)} No way out for the water is known, so no taper can be drawn yet.`;
  const stopped = first.neededIn === null ? `. ${first.where}: ${first.why}` : `: ${first.why}`;
  return sentence(`${today(existing)} No layout fits${stopped}`);
}
