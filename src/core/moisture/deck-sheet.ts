import { deckAirSeal } from '../../../reference/vapor.ts';
import { sourceNote } from '../finding.ts';
import type { DeckSheet, MoistureCure, MoistureReport, RetarderKind } from '../report/types.ts';
import type { DeckKind } from '../roof.ts';
import { isWood, retarderPerm } from './build-up.ts';

export const retarderName = {
  sheet: 'a vapor retarder',
  foil: 'a foil-faced vapor retarder',
} as const satisfies Record<Exclude<RetarderKind, 'none'>, string>;

/** What the boards lie on. */
export interface DeckUnder {
  kind: DeckKind;
  /** The old covering, or a part of it, stays under the boards. */
  keepsOld: boolean;
}

const cast: readonly DeckKind[] = ['concrete', 'lightweight-concrete'];
const boarded: readonly DeckKind[] = ['plank', 'tongue-and-groove'];

/** Where air goes through a deck. */
function gapsOf(kind: DeckKind): string {
  if (kind === 'steel') return 'laps and ribs of steel deck are open';
  if (boarded.includes(kind)) return 'joints between boards are open';
  return isWood(kind) ? 'joints between sheets are open' : 'joints of the deck are open';
}

/** How the deck is made airtight. */
export function airWords({ kind, keepsOld }: DeckUnder): string {
  if (keepsOld)
    return 'The old covering stays under the boards and stops the air: patch it tight at walls, curbs and pipes.';
  if (cast.includes(kind))
    return 'Seal cracks, joints and the gap round every pipe in the concrete: the slab itself stops air.';
  return `Make the deck airtight with a taped or self-adhered sheet: ${gapsOf(kind)}.`;
}

export interface SheetAsked {
  sheet: DeckSheet | null;
  todo: readonly string[];
}

/** The sheet on the deck that the roof asks for. Over foam none, and over what is not known none yet. */
export function sheetAsked(
  under: DeckUnder,
  below: MoistureReport['below']['kind'],
  { advice, source }: MoistureReport['retarder'],
  cure: MoistureCure | null,
): SheetAsked {
  if (below !== 'none' && below !== 'batts') return { sheet: null, todo: [] };
  if (under.keepsOld) return { sheet: null, todo: [airWords(under)] };
  if (advice === 'yes') {
    const kind = (cure?.slows ?? cure)?.retarder === 'foil' ? 'foil' : 'sheet';
    return {
      sheet: {
        kind: 'vapor-retarder',
        mostPerm: retarderPerm(kind),
        why: 'Stops vapor and air on the warm side of the boards.',
        source,
      },
      todo: [`Lay ${retarderName[kind]} on the deck before the first board, tight at laps, walls, curbs and pipes.`],
    };
  }
  if (cast.includes(under.kind)) return { sheet: null, todo: [airWords(under)] };
  const why =
    advice === 'no'
      ? 'Stops air and lets vapor through, so that the roof can dry to the room.'
      : advice === 'consider'
        ? 'Stops air; a vapor retarder, which is to be considered here, takes its place and does both.'
        : 'Stops air; whether it must stop vapor too is not known before the place is.';
  return {
    sheet: { kind: 'air-sheet', mostPerm: null, why, source: sourceNote(deckAirSeal) },
    todo: [airWords(under)],
  };
}
