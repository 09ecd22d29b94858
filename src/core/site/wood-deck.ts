import type { DeckKind } from '../roof.ts';

const woods: ReadonlySet<DeckKind> = new Set<DeckKind>(['plywood', 'osb', 'plank', 'tongue-and-groove']);

/** Decks that rot, burn, take nails and are replaced by the sheet or the board. */
export const isWood = (deckKind: DeckKind): boolean => woods.has(deckKind);
