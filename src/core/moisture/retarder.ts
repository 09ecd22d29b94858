import { foamRetarder, retarderPractice, retarderTrigger, unventedRule, wetAlarm } from '../../../reference/vapor.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { MoistureCure, MoistureReport } from '../report/types.ts';
import { isWood } from '../site/wood-deck.ts';
import { NOTHING_G, type YearBalance, yearHolds } from './balance.ts';
import type { BuildUp } from './build-up.ts';
import { airWords, type DeckUnder, groundOf, retarderName } from './deck-sheet.ts';
import { foamPerm, isFoam } from './layers.ts';
import { ROOM_F } from './room.ts';
import { waterWords } from './tests.ts';

export interface RetarderInput {
  built: BuildUp;
  /** Mean outdoor air of January, F; null = place not known. */
  januaryF: number | null;
  humidityPct: number;
  excessPa: number;
  climateZone: string | null;
  balance: YearBalance | null;
  /** The same lined. */
  sealed: NonNullable<MoistureReport['balance']>['withLining'] | null;
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
  if (balance === null || sealed === null || yearHolds(balance)) return null;
  const ground = groundOf(deck.kept);
  const limit = isWood(deck.kind) ? 'wood should see' : 'a roof should see, by the careful limit of wood decks';
  const why =
    balance.leftGPerM2 > NOTHING_G
      ? 'without one more water gathers each winter than dries in summer'
      : `without one ${plainNumber(balance.peakGPerM2)} g per sq m gathers in winter where the boards are thinnest, more than ${limit}`;
  const again = `Computed again with ${sealed.what}: ${waterWords(sealed)}`;
  const cured = cure?.slows ?? cure;
  if (cured?.moreIn == null || cured.retarder === 'none')
    return { helps: false, text: `A vapor retarder on ${ground} does not cure it. ${again}.` };
  const put = `Put ${retarderName[cured.retarder]} on ${ground}: ${why}. ${again}`;
  if (cured.moreIn === 0 && cure?.slows == null) return { helps: true, text: `${put}.` };
  const board = cured.moreIn === 0 ? 'It only slows it' : 'It takes more board above the deck besides';
  return { helps: true, text: `${put}: not enough alone. ${board}.` };
}

/** Foam that touches the deck is, or carries, the retarder itself. */
function overFoam({ built, januaryF, cure }: RetarderInput): Advice {
  const source = sourceNote(foamRetarder);
  const perm = plainNumber(foamPerm(built.layers), 2);
  if (januaryF === null)
    return {
      advice: 'not-known',
      text: `Whether a vapor retarder goes on ${groundOf(built.kept)} over the foam, which lets ${perm} perm through, is not known: the place is not, so the winter is not either.`,
      source,
    };
  const lining = cure?.slows ?? cure;
  if (lining != null && lining.retarder !== 'none')
    return {
      advice: 'yes',
      text: `Put ${retarderName[lining.retarder]} on ${groundOf(built.kept)}: the foam alone lets too much through.${cure?.moreIn === 0 ? '' : ' It is not enough alone.'}`,
      source,
    };
  if (lining?.coat)
    return {
      advice: 'no',
      text: `None on the deck: the coating on the room side of the foam, which lets ${perm} perm through alone, is the retarder.`,
      source,
    };
  return {
    advice: 'no',
    text:
      foamPerm(built.layers) <= foamRetarder.mostPerm
        ? `No other vapor retarder: the foam lets ${perm} perm through and is one itself.`
        : `None on the deck: it is not what this roof lacks, or the place does not ask for one. The foam lets ${perm} perm through.`,
    source,
  };
}

/** Whether a vapor retarder goes under the boards. Water that would gather from year to year decides before any rule. */
export function retarderAdvice(input: RetarderInput): Advice {
  const { built, januaryF, humidityPct, excessPa, climateZone, deck } = input;
  const trigger = sourceNote(retarderTrigger);
  const ground = groundOf(deck.kept);
  const air = `${airWords(deck)} Air through gaps carries more water than all that passes through the layers.`;
  if (isFoam(built.below.kind)) return overFoam(input);
  if (built.below.kind === null && !deck.kept?.covering)
    return {
      advice: 'not-known',
      text: `Whether a vapor retarder or an airtight sheet alone goes on ${ground} is held back: it hangs on what lies below, which is not known.`,
      source: trigger,
    };
  if (januaryF === null)
    return {
      advice: 'not-known',
      text: `Whether a vapor retarder goes on ${ground} is held back: the place is not known, so the winter is not either. ${air}`,
      source: trigger,
    };
  const year = byBalance(input);
  if (deck.kept?.covering && !year?.helps)
    return {
      advice: 'no',
      text: `No further sheet: the old covering stays under the boards and is a vapor retarder itself. ${year === null ? '' : `${year.text} `}${air}`,
      source: sourceNote(unventedRule),
    };
  const practice = sourceNote(retarderPractice);
  if (year?.helps)
    return {
      advice: 'yes',
      text: `${year.text} ${air}`,
      source: (input.balance?.leftGPerM2 ?? 0) > NOTHING_G ? practice : sourceNote(wetAlarm),
    };
  const told = year === null ? '' : `${year.text} `;
  if (excessPa >= retarderPractice.excessFromPa || retarderPractice.zones.some((zone) => climateZone?.startsWith(zone)))
    return {
      advice: 'yes',
      text: `${told}Put a vapor retarder on ${ground}, under all boards: the rooms are very damp or the winter is very cold. Fill the roof dry; what is wet stays wet. ${air}`,
      source: practice,
    };
  const conditions = `January is ${plainNumber(januaryF)} F outside, and the rooms have ${plainNumber(humidityPct)} % humidity at ${ROOM_F} F`;
  if (considerRetarder(januaryF, humidityPct))
    return {
      advice: 'consider',
      text: `${told}${conditions}: a vapor retarder on ${ground} should be considered. ${air}`,
      source: trigger,
    };
  return {
    advice: 'no',
    text: `${told}No vapor retarder is asked for: ${conditions}. Without one the roof can still dry toward the room. ${air}`,
    source: trigger,
  };
}
