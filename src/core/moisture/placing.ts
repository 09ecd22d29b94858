import type { BelowInsulationKind } from '../roof.ts';
import type { Site } from '../site/site.ts';
import { linedWith, placedAs } from './build-up.ts';
import { DECK } from './deck-sheet.ts';
import { keptRoof } from './kept.ts';
import { failing, liningFor, linings, liningWords, type Place } from './lining.ts';
import { leastAbove, sentenceOf } from './tests.ts';

/** More above the deck than any job lays. */
const MOST_R = 80;

export interface Dryness {
  /** null = the winter is not known. */
  dry: boolean | null;
  /** What it takes, or what fails, as a further sentence. */
  words: string;
}

/**
 * Whether a way to place the insulation stays dry here, by the tests of this tool. The tables of the code are asked beside it.
 * @param place null = the winter is not known, or nobody heats the rooms
 */
export function dryness(
  place: Place | null,
  site: Site,
  aboveR: number,
  kind: BelowInsulationKind,
  belowR: number,
): Dryness {
  if (place === null)
    return { dry: null, words: ' Whether it stays dry is not known before the winter of the place is.' };
  const built = placedAs(site, aboveR, kind, belowR);
  const lining = liningFor(place, built, true);
  if (lining !== null) {
    const takes = liningWords(lining, keptRoof(site) === null ? DECK : 'the bare deck, the old roof off');
    return { dry: true, words: takes === null ? '' : ` It takes ${takes}.` };
  }
  const [first] = failing(place, linedWith(built, linings(built).at(-1)!), true);
  return { dry: false, words: ` Lined as tightly as can be it still fails: ${sentenceOf(first)}` };
}

/** Least label R above so much R of batts with which every test holds, in whole R; null = none of `MOST_R` and less. */
export function leastAboveDry(place: Place, site: Site, battsR: number): number | null {
  const fromR = leastAbove(place.winter, place.climateZone, battsR) ?? 0;
  for (let aboveR = fromR; aboveR <= MOST_R; aboveR = Math.floor(aboveR) + 1)
    if (liningFor(place, placedAs(site, aboveR, 'batts', battsR)) !== null) return aboveR;
  return null;
}
