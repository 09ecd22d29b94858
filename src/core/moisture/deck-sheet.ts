import { deckAirSeal } from '../../../reference/vapor.ts';
import { rValue } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { DeckSheet, MoistureCure, MoistureReport, RetarderKind } from '../report/types.ts';
import type { DeckKind } from '../roof.ts';
import { isWood } from '../site/wood-deck.ts';
import type { KeptRoof } from './kept.ts';
import { isFoam, retarderPerm } from './layers.ts';

export const retarderName = {
  sheet: 'a vapor retarder',
  foil: 'a foil-faced vapor retarder',
} as const satisfies Record<Exclude<RetarderKind, 'none'>, string>;

/** What the boards lie on. */
export interface DeckUnder {
  kind: DeckKind;
  /** What stays of the old roof under the boards; null = nothing. */
  kept: KeptRoof | null;
}

const cast: readonly DeckKind[] = ['concrete', 'lightweight-concrete'];
const boarded: readonly DeckKind[] = ['plank', 'tongue-and-groove'];

/** Where air goes through a deck. */
function gapsOf(kind: DeckKind): string {
  if (kind === 'steel') return 'laps and ribs of steel deck are open';
  if (boarded.includes(kind)) return 'joints between boards are open';
  return isWood(kind) ? 'joints between sheets are open' : 'joints of the deck are open';
}

export const DECK = 'the deck';

/** What a sheet is laid on. */
export const groundOf = (kept: KeptRoof | null): string =>
  kept === null ? DECK : kept.covering ? 'the old covering' : 'what stays of the old roof';

/** How air is kept out of the boards. */
export function airWords({ kind, kept }: DeckUnder): string {
  if (kept?.covering)
    return 'The old covering stays under the boards and stops the air: patch it tight at walls, curbs and pipes.';
  if (kept !== null)
    return 'Lay a taped or self-adhered airtight sheet over what stays of the old roof: its covering, which stopped the air, comes off.';
  if (cast.includes(kind))
    return 'Seal cracks, joints and the gap round every pipe in the concrete: the slab itself stops air.';
  return `Make the deck airtight with a taped or self-adhered sheet: ${gapsOf(kind)}.`;
}

export const COAT =
  'Coat the foam on its room side as a vapor retarder of class II (1 perm or less), by its maker’s sheet.';

/** Why no sheet is on the order yet; null = what is called for is known. */
function heldBack(under: DeckUnder, below: MoistureReport['below']['kind'], winterKnown: boolean): string | null {
  const held = 'No sheet for the deck is on the order yet: whether';
  if (below === null && !under.kept?.covering)
    return `${held} it must stop vapor or air alone hangs on what lies below.`;
  if (winterKnown) return null;
  const bare = isFoam(below) || under.kept?.covering || (under.kept === null && cast.includes(under.kind));
  const asked = bare ? 'one is needed' : 'it must stop vapor or air alone';
  return `${held} ${asked} hangs on the winter here: find out the town or its climate zone.`;
}

const coreWords = ({ boardsR }: KeptRoof): string =>
  boardsR > 0
    ? `Cut a core before the order: what stays is taken as dry and ${rValue(boardsR)}. Wet boards come out.`
    : 'Cut a core before the order: what stays must be dry.';

export interface SheetAsked {
  sheet: DeckSheet | null;
  /** Why no sheet is on the order yet; null = what is called for is on it. */
  held: string | null;
  todo: readonly string[];
}

type Advised = MoistureReport['retarder'];

function sheetOn(under: DeckUnder, { advice, source }: Advised, kind: RetarderKind): Omit<SheetAsked, 'held'> {
  const on = groundOf(under.kept);
  if (kind !== 'none' || advice === 'yes') {
    const laid = kind === 'foil' ? 'foil' : 'sheet';
    return {
      sheet: {
        kind: 'vapor-retarder',
        mostPerm: retarderPerm(laid),
        on,
        why: 'Stops vapor and air on the warm side of the boards.',
        source,
      },
      todo: [`Lay ${retarderName[laid]} on ${on} before the first board, tight at laps, walls, curbs and pipes.`],
    };
  }
  if (under.kept === null && cast.includes(under.kind)) return { sheet: null, todo: [airWords(under)] };
  const why =
    advice === 'consider'
      ? 'Stops air; a vapor retarder, which is to be considered here, takes its place and does both.'
      : 'Stops air and lets vapor through, so that the roof can dry to the room.';
  return {
    sheet: { kind: 'air-sheet', mostPerm: null, on, why, source: sourceNote(deckAirSeal) },
    todo: [airWords(under)],
  };
}

/** The sheet under the boards and the coating that the roof asks for; none yet where what lies below or the winter is not known. */
export function sheetAsked(
  under: DeckUnder,
  below: MoistureReport['below']['kind'],
  advised: Advised,
  cure: MoistureCure | null,
  winterKnown: boolean,
): SheetAsked {
  const held = heldBack(under, below, winterKnown);
  const core = under.kept === null ? [] : [coreWords(under.kept)];
  if (held !== null) return { sheet: null, held, todo: [held, ...core] };
  const lining = cure?.slows ?? cure;
  const kind = lining?.retarder ?? 'none';
  const { sheet, todo } =
    kind === 'none' && (under.kept?.covering || isFoam(below))
      ? { sheet: null, todo: isFoam(below) ? [] : [airWords(under)] }
      : sheetOn(under, advised, kind);
  return {
    sheet,
    held: null,
    todo: [...(lining?.coat ? [COAT] : []), ...todo, ...core],
  };
}
