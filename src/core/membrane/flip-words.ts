import { type Criterion, criteria } from '../../../reference/membranes/criteria.ts';
import { listed } from '../safety/figure.ts';
import type { Flip } from './flip.ts';

const table: readonly Criterion[] = criteria;
const counts = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

function moreWords(ratio: number): string {
  if (ratio < 1.15) return 'slightly more than';
  if (ratio < 1.35) return 'about a quarter more than';
  if (ratio < 1.75) return 'about half again as much as';
  const whole = Math.round(ratio);
  const count = counts[whole] ?? String(whole);
  const off = ratio - whole;
  const sense = Math.abs(off) < 0.11 ? 'about' : off < 0 ? 'nearly' : 'more than';
  return whole === 2 ? `${sense} twice as much as` : `${sense} ${count} times as much as`;
}

function lessWords(ratio: number): string {
  if (ratio > 0.87) return 'slightly less than';
  if (ratio > 0.63) return 'about three quarters as much as';
  if (ratio > 0.42) return 'about half as much as';
  if (ratio > 0.15) return 'less than half as much as';
  return 'hardly at all, against what';
}

/** Whose the weights are: the usual ones of the situation, or those that the roof file gives. */
export type WeightsBy = 'assumed' | 'given';

const against: Readonly<Record<WeightsBy, string>> = { assumed: 'we assumed', given: 'it does now' };

/** Both weights, with as many places as tell them apart. */
function shareWords({ from, to }: Flip): string {
  const places = [2, 3, 4].find((count) => to.toFixed(count) !== from.toFixed(count)) ?? 4;
  return `${to.toFixed(places)} instead of ${from.toFixed(places)}`;
}

/** How much more or less one thing would have to count, in words: "price counted nearly five times as much as we assumed". */
export function flipWords(flip: Flip, by: WeightsBy = 'assumed'): string {
  const criterion = table.find((row) => row.id === flip.criterion);
  if (!criterion) throw new Error(`no criterion ${flip.criterion}`);
  const ratio = flip.to / flip.from;
  const words = ratio >= 1 ? moreWords(ratio) : lessWords(ratio);
  return `${criterion.plain} counted ${words} ${against[by]} (${shareWords(flip)})`;
}

/** First letter large; the rest, with its trade abbreviations, as it is. */
export function sentenceStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** One sentence for an option: what would make it win, at most three ways, nearest first. */
export function winsOnlyIf(name: string, flips: readonly Flip[], by: WeightsBy = 'assumed'): string {
  if (flips.length === 0) return `No change of a single weight makes ${name} win.`;
  const ways = flips.slice(0, 3).map((flip) => flipWords(flip, by));
  return `${sentenceStart(name)} would win only if ${listed(ways, 'or')}.`;
}
