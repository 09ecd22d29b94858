import { retarderPractice, retarderTrigger, unventedRule, wetAlarm } from '../../../reference/vapor.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { MoistureReport } from '../report/types.ts';
import type { YearBalance } from './balance.ts';

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
}

const AIR =
  'Seal the deck against air first: a taped or self-adhered sheet. Air through gaps carries more water than all that passes through the layers.';

/**
 * Both conditions of the trade association at once. Source: reference/vapor.ts.
 * Correctness: tests/published/moisture-vapor.test.ts, 30
 */
export const considerRetarder = (januaryF: number, humidityPct: number): boolean =>
  januaryF < retarderTrigger.januaryUnderF && humidityPct >= retarderTrigger.indoorRhFromPct;

/** Whether a vapor retarder goes on the deck. Water that would gather from year to year decides before any rule. */
export function retarderAdvice(input: RetarderInput): MoistureReport['retarder'] {
  const { januaryF, humidityPct, excessPa, climateZone, balance, sealed } = input;
  const trigger = sourceNote(retarderTrigger);
  if (input.foamBelow)
    return {
      advice: 'no',
      text: 'No other vapor retarder: closed-cell foam of 2 in and more is one itself.',
      source: sourceNote(unventedRule),
    };
  if (januaryF === null)
    return {
      advice: 'not-known',
      text: `The place is not known, so the winter is not either. ${AIR}`,
      source: trigger,
    };
  const practice = sourceNote(retarderPractice);
  if (balance !== null && balance.leftGPerM2 > 1)
    return {
      advice: 'yes',
      text: `Put a vapor retarder on the deck: without one more water gathers each winter than dries in summer.${(sealed?.leftGPerM2 ?? 0) > 1 ? ' Even with one it dries slowly: have the roof designed, and the rooms aired.' : ''} ${AIR}`,
      source: practice,
    };
  if (balance !== null && balance.peakGPerM2 > wetAlarm.gPerM2)
    return {
      advice: 'yes',
      text: `Put a vapor retarder on the deck: without one ${plainNumber(balance.peakGPerM2)} g per sq m gathers under the covering in winter where the boards are thinnest, more than wood should see. A self-adhered sheet on the deck stops vapor and air at once. ${AIR}`,
      source: sourceNote(wetAlarm),
    };
  if (excessPa >= retarderPractice.excessFromPa || retarderPractice.zones.some((zone) => climateZone?.startsWith(zone)))
    return {
      advice: 'yes',
      text: `Put a vapor retarder on the deck, under all boards: the rooms are very damp or the winter is very cold. Fill the roof dry; what is wet stays wet. ${AIR}`,
      source: practice,
    };
  if (considerRetarder(januaryF, humidityPct))
    return {
      advice: 'consider',
      text: `January at ${plainNumber(januaryF)} F outside and ${plainNumber(humidityPct)} % humidity in the rooms: a vapor retarder on the deck should be considered. ${AIR}`,
      source: trigger,
    };
  return {
    advice: 'no',
    text: `No vapor retarder is asked for: January is ${plainNumber(januaryF)} F and the rooms have ${plainNumber(humidityPct)} % humidity. Without one the roof can still dry toward the room. ${AIR}`,
    source: trigger,
  };
}
