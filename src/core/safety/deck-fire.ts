import { type DeckFireRow, deckFire } from '../../../reference/deck-fire.ts';
import type { DeckKind } from '../roof.ts';

const rows: readonly DeckFireRow[] = deckFire;

/**
 * Whether a deck burns beside a flame. null = not settled by its name, or the deck is not known:
 * treat it as combustible until somebody has looked. Source: reference/deck-fire.ts.
 */
export function isCombustible(kind: DeckKind | null): boolean | null {
  return rows.find((row) => row.deck === kind)?.combustible ?? null;
}
