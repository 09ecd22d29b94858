import type { Cited } from './sources.ts';

export interface CoatBase extends Cited {
  covering: string;
  /** null = nobody can say before it is known what lies there. */
  takes: boolean | null;
  text: string;
}

const practice = { source: 'practice', grade: 'practice', at: 'coating over old coverings' } as const;
const bitumen = 'Bitumen bleeds through a light coat: ask for the primer that holds it back, and test the bond first.';
const sheet = 'Sheet is washed and primed, and the bond is tested first: a coat comes off sheet that was not primed.';

/** Which old covering takes a coating, and what it asks for. Common practice, no source. */
export const coatBases = [
  { covering: 'sbs-granule', takes: true, text: bitumen, ...practice },
  { covering: 'app', takes: true, text: bitumen, ...practice },
  { covering: 'bur-smooth', takes: true, text: bitumen, ...practice },
  { covering: 'tpo', takes: true, text: sheet, ...practice },
  { covering: 'pvc', takes: true, text: sheet, ...practice },
  { covering: 'epdm', takes: true, text: sheet, ...practice },
  {
    covering: 'coating',
    takes: true,
    text: 'Find out what coat lies there and test the bond: on cured silicone nothing holds but silicone.',
    ...practice,
  },
  {
    covering: 'spray-foam',
    takes: true,
    text: 'Foam that is wet or has gone to dust is cut out and filled first.',
    ...practice,
  },
  { covering: 'metal', takes: true, text: 'Rust is taken off, seams and screws are sealed first.', ...practice },
  {
    covering: 'bur-gravel',
    takes: false,
    text: 'Loose gravel holds no coat.',
    ...practice,
  },
  {
    covering: 'roll-roofing',
    takes: false,
    text: 'Roll roofing lasts few years: a coat on it does not pay.',
    ...practice,
  },
  {
    covering: 'other',
    takes: null,
    text: 'Whether a coat holds on what lies there is not known.',
    ...practice,
  },
] as const satisfies readonly CoatBase[];

/**
 * Share of the area from which a worn surface is worn as a whole; below it the place is looked after on its own. A planning
 * figure: common practice, no source.
 */
export const wornShareLimit = {
  share: 0.1,
  source: 'practice',
  grade: 'practice',
  at: 'worn in a place, or all over',
} as const satisfies Cited & Record<string, unknown>;
