import type { Cited } from './sources.ts';

export interface DeckFireRow extends Cited {
  deck: string;
  /** null: may hide something that burns (form boards, wood fiber); treated as combustible until somebody has looked. */
  combustible: boolean | null;
}

/**
 * What counts as combustible beside a flame: plywood, OSB, plank, wood fiberboard.
 * Poured gypsum often sits on fiberboard form boards and cement-fiber planks hold wood fiber: not settled by the name alone.
 */
export const deckFire = [
  { deck: 'plywood', combustible: true, source: 'torch-program', at: 'definition of combustible', grade: 'found' },
  { deck: 'osb', combustible: true, source: 'torch-program', at: 'definition of combustible', grade: 'found' },
  { deck: 'plank', combustible: true, source: 'torch-program', at: 'definition of combustible', grade: 'found' },
  {
    deck: 'tongue-and-groove',
    combustible: true,
    source: 'torch-program',
    at: 'definition of combustible',
    grade: 'found',
  },
  { deck: 'steel', combustible: false, source: 'practice', at: 'noncombustible decks', grade: 'practice' },
  { deck: 'concrete', combustible: false, source: 'practice', at: 'noncombustible decks', grade: 'practice' },
  {
    deck: 'lightweight-concrete',
    combustible: false,
    source: 'practice',
    at: 'noncombustible decks',
    grade: 'practice',
  },
  { deck: 'gypsum', combustible: null, source: 'practice', at: 'fiberboard form boards', grade: 'practice' },
  { deck: 'cement-fiber', combustible: null, source: 'practice', at: 'wood fiber in the plank', grade: 'practice' },
] as const satisfies readonly DeckFireRow[];
