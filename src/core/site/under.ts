import type { Below } from '../roof.ts';

/** What lies right under a roof, as the energy codes see it. */
export type Under = 'rooms' | 'attic' | 'unheated';

export const underOf = (below: Below): Under =>
  below.startsWith('living') ? 'rooms' : below === 'attic' ? 'attic' : 'unheated';

/** Why a rule for roofs right over rooms does not bind; null = rooms lie right below. */
export const notRooms = (under: Under): string | null =>
  under === 'rooms'
    ? null
    : under === 'attic'
      ? 'an attic lies below: the rule is for its floor, or for a roof right over rooms'
      : 'the space below is neither heated nor cooled';
