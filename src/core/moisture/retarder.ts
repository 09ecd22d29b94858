import { retarderPractice, retarderTrigger, unventedRule, wetAlarm } from '../../../reference/vapor.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { MoistureCure, MoistureReport } from '../report/types.ts';
import { driesOut, type YearBalance } from './balance.ts';
import { isWood } from './build-up.ts';
import { airWords, type DeckUnder, retarderName } from './deck-sheet.ts';
import { ROOM_F } from './room.ts';
import { waterWords } from './tests.ts';

export interface RetarderInput {
  /** Closed-cell foam lies below the deck. */
  foamBelow: boolean;
  /** Mean outdoor air of January, F; null = place not known. */
  januaryF: number | null;
  humidityPct: number;
  excessPa: number;
  climateZone: string | null;
  balance: YearBalance | null;
  /** The same with a retarder on the deck. */
  sealed: YearBalance | null;
  cure: MoistureCure | null;
  deck: DeckUnder;
}

type Advice = MoistureReport['retarder'];

/**
 * Both conditions of the trade association at once. Source: reference/vapor.ts.
 * Correctness: tests/published/moisture-vapor.test.ts, 30
 */
export const considerRetarder = (januaryF: number, humidityPct: number): boolean =>
  januaryF < retarderTrigger.januaryUnderF && humidityPct >= retarderTrigger.indoorRhFromPct;

/** Where the year fails: what a retarder makes of it, computed again; null = the year holds or is not known. */
function byBalance({ balance, sealed, cure, deck }: RetarderInput): { helps: boolean; text: string } | null {
  if (balance === null || sealed === null || driesOut(balance)) return null;
  const limit = isWood(deck.kind) ? 'wood should see' : 'a roof should see, by the careful limit of wood decks';
  const why =
    balance.leftGPerM2 > 1
      ? 'without one more water gathers each winter than dries in summer'
      : `without one ${plainNumber(balance.peakGPerM2)} g per sq m gathers in winter where the boards are thinnest, more than ${limit}`;
  const again = `Computed again with one: ${waterWords(sealed)}`;
  if (driesOut(sealed)) return { helps: true, text: `Put a vapor retarder on the deck: ${why}. ${again}.` };
  const cured = cure?.slows ?? cure;
  if (cured?.moreIn == null || cured.retarder === 'none')
    return { helps: false, text: `A vapor retarder on the deck does not cure it. ${again}.` };
  const board = cured.moreIn === 0 ? '' : ' and more board above the deck';
  const then = cure?.slows == null ? 'It takes' : 'Slowest is';
  return {
    helps: true,
    text: `Put a vapor retarder on the deck: ${why}. ${again}: not enough alone. ${then} ${retarderName[cured.retarder]}${board}.`,
  };
}

/** Whether a vapor retarder goes on the deck. Water that would gather from year to year decides before any rule. */
export function retarderAdvice(input: RetarderInput): Advice {
  const { januaryF, humidityPct, excessPa, climateZone, deck } = input;
  const trigger = sourceNote(retarderTrigger);
  const air = `${airWords(deck)} Air through gaps carries more water than all that passes through the layers.`;
  if (input.foamBelow)
    return {
      advice: 'no',
      text: 'No other vapor retarder: closed-cell foam of 2 in and more is one itself.',
      source: sourceNote(unventedRule),
    };
  if (januaryF === null)
    return {
      advice: 'not-known',
      text: `The place is not known, so the winter is not either. ${air}`,
      source: trigger,
    };
  const practice = sourceNote(retarderPractice);
  const year = byBalance(input);
  if (year?.helps)
    return {
      advice: 'yes',
      text: `${year.text} ${air}`,
      source: (input.balance?.leftGPerM2 ?? 0) > 1 ? practice : sourceNote(wetAlarm),
    };
  const told = year === null ? '' : `${year.text} `;
  if (excessPa >= retarderPractice.excessFromPa || retarderPractice.zones.some((zone) => climateZone?.startsWith(zone)))
    return {
      advice: 'yes',
      text: `${told}Put a vapor retarder on the deck, under all boards: the rooms are very damp or the winter is very cold. Fill the roof dry; what is wet stays wet. ${air}`,
      source: practice,
    };
  const conditions = `January is ${plainNumber(januaryF)} F outside, and the rooms have ${plainNumber(humidityPct)} % humidity at ${ROOM_F} F`;
  if (considerRetarder(januaryF, humidityPct))
    return {
      advice: 'consider',
      text: `${told}${conditions}: a vapor retarder on the deck should be considered. ${air}`,
      source: trigger,
    };
  return {
    advice: 'no',
    text: `${told}No vapor retarder is asked for: ${conditions}. Without one the roof can still dry toward the room. ${air}`,
    source: trigger,
  };
}
