import type { Lining, MoistureTest, RetarderKind } from '../report/types.ts';
import { type YearBalance, yearBalance } from './balance.ts';
import { type BuildUp, linedWith } from './build-up.ts';
import { retarderName } from './deck-sheet.ts';
import { isFoam, vaporLayers } from './layers.ts';
import type { Room } from './room.ts';
import { moistureTests } from './tests.ts';
import type { Winter } from './winter.ts';

/** Where a roof stands, and the damp of its rooms. */
export interface Place {
  winter: Winter;
  climateZone: string | null;
  room: Room;
}

export const BARE: Lining = { retarder: 'none', coat: false };

/** From the cheapest on. */
const retarders: readonly RetarderKind[] = ['none', 'sheet', 'foil'];

/** What can be lined, cheapest first: over what stays of an old roof the sheet goes on top of it, and only foam is coated. */
export const linings = ({ below }: BuildUp): Lining[] =>
  retarders.flatMap((retarder) => (isFoam(below.kind) ? [false, true] : [false]).map((coat) => ({ retarder, coat })));

export const balanceOf = ({ winter, room }: Place, built: BuildUp): YearBalance =>
  yearBalance(vaporLayers(built.layers), winter, room.excessPa);

/** Tests that fail; the balance takes longest and is asked last. @param asWater the tables of the code are not asked */
export function failing(place: Place, built: BuildUp, asWater = false): MoistureTest[] {
  const failed = (balance: YearBalance | null): MoistureTest[] =>
    moistureTests({ ...place, built, balance }).filter(
      ({ state, byCode }) => state === 'fails' && !(asWater && byCode),
    );
  const cold = failed(null);
  return cold.length > 0 ? cold : failed(balanceOf(place, built));
}

/** The cheapest lining with which no test fails; null = none is enough. */
export const liningFor = (place: Place, built: BuildUp, asWater = false): Lining | null =>
  linings(built).find((lining) => failing(place, linedWith(built, lining), asWater).length === 0) ?? null;

/** "a vapor retarder on the deck", "a coating on the room side of the foam", both, or null where there is none. */
export function liningWords({ retarder, coat }: Lining, ground = 'the deck'): string | null {
  const parts = [
    ...(retarder === 'none' ? [] : [`${retarderName[retarder]} on ${ground}`]),
    ...(coat ? ['a coating on the room side of the foam'] : []),
  ];
  return parts.length === 0 ? null : parts.join(' and ');
}
