import { inches, slopeInWords } from '../../units/print.ts';
import type { ExistingReport, FlatBoardsReport, Layout, Rejection, ScopeReport } from './types.ts';
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

/** What else asks for a new roof where the old one drains as it is. */
const asks: Readonly<Record<NonNullable<ScopeReport['comesTo']> | 'open', string>> = {
  upkeep: 'Nothing that was found asks for work on it.',
  repair: 'What was found asks for repairs, not for a new roof.',
  coat: 'What was found allows a coating and asks for no new roof.',
  're-cover': 'What was found asks for a new roof, the water does not.',
  'tear-off': 'What was found asks for a new roof, the water does not.',
  off: 'The old roof is off, so it gets a new one.',
  open: 'Whether it needs a new roof is not decided.',
};

export interface HeadlineInput {
  existing: ExistingReport;
  chosen: Layout | null;
  layouts: readonly Layout[];
  /** What to do with the old roof; null = not decided. */
  comesTo: ScopeReport['comesTo'];
  /** What is said in place of a taper, where it is used. */
  instead: Pick<FlatBoardsReport, 'used' | 'text'> | null;
}

/**
 * One answer in two sentences: what is wrong today, and what ends it. Of a roof that drains as it is: whether anything
 * else asks for a new one, and what that would be.
 */
export function headlineOf({ existing, chosen, layouts, comesTo, instead }: HeadlineInput): string {
  // Where an edge alone holds the water, new boards come after it, if at all.
  if (existing.edgeFirst) return `${today(existing)} ${existing.edgeFirst}`;
  if (instead?.used) return `${today(existing)} ${instead.text}`;
  const drains = existing.verdict === 'meets-minimum';
  const first = drains ? `${today(existing)} ${asks[comesTo ?? 'open']}` : today(existing);
  if (chosen !== null) {
    const range = `${inches(chosen.leastThicknessIn)} to ${inches(chosen.greatestThicknessIn)}`;
    const valley =
      chosen.leastValleySlopeInPerFt === null ? '' : `, valleys ${slopeInWords(chosen.leastValleySlopeInPerFt)}`;
    const slopes = `planes ${slopeInWords(chosen.leastFaceSlopeInPerFt ?? 0)}${valley}`;
    return drains
      ? `${first} For one that is laid here, a taper of ${range} drains too (${slopes}).`
      : `${first} A taper of ${range} drains it (${slopes}).`;
  }
  const rejections = layouts.flatMap(({ rejected }) => (rejected === null ? [] : [rejected]));
  const short = ({ neededIn, availableIn }: Rejection): number =>
    neededIn === null || availableIn === null ? 999 : neededIn - availableIn;
  const nearest = rejections.sort((a, b) => short(a) - short(b))[0];
  if (nearest === undefined) return `${first} No way out for the water is known, so no taper can be drawn yet.`;
  const stopped = nearest.neededIn === null ? `. ${nearest.where}: ${nearest.why}` : `: ${nearest.why}`;
  return sentence(`${first} No layout fits${stopped}`);
}
