import type { Cited } from '../sources.ts';
import type { MembraneTrait } from './options.ts';

/** Facts of the job that a veto can hang on; the core says when each holds. */
export type VetoCondition =
  | 'wood-in-flame-reach'
  | 'flame-barred'
  | 'water-stays'
  | 'bitumen-in-contact'
  | 'oils-on-roof'
  | 'wet-or-layered-below'
  | 'nothing-old-below'
  | 'cured-silicone-below';

export interface MembraneVeto extends Cited {
  id: string;
  when: VetoCondition;
  /** Options that carry any of these traits are taken out. */
  removes: readonly MembraneTrait[];
  /** The rule, in plain words; the fact of the job is added behind it. */
  why: string;
}

/**
 * What takes a covering out before anything is weighed. Slope, attachment, temperature and energy rules are vetoes too;
 * they compare a figure and stand in limits.ts and heat.ts.
 * Torch over wood: older guidance allowed it over a thermal barrier; the 2019 manual lists no torch assembly over wood decks. No override here.
 * Grease: PVC resists, none is immune. Terms of a warranty are not known to the tool and veto nothing.
 */
export const membraneVetoes = [
  {
    id: 'torch-and-wood',
    when: 'wood-in-flame-reach',
    removes: ['open-flame'],
    why: 'An open flame on or beside wood can start a fire inside the roof that shows only hours later.',
    source: 'torch-guidance-2019',
    at: 'assemblies over wood decks',
    grade: 'found',
  },
  {
    id: 'flame-barred',
    when: 'flame-barred',
    removes: ['open-flame', 'kettle'],
    why: 'Nobody wants an open flame or a hot kettle on this job.',
    source: 'practice',
    at: 'owner, insurer or fire official bars flame',
    grade: 'practice',
  },
  {
    id: 'standing-water',
    when: 'water-stays',
    removes: ['pond-intolerant'],
    why: 'Asphalt and water-based coatings do not last under water that stays more than 48 hours.',
    source: 'hawaii-guide',
    at: 'ponding at re-roof',
    grade: 'found',
  },
  {
    id: 'old-asphalt',
    when: 'bitumen-in-contact',
    removes: ['residue-sensitive'],
    why: 'Old asphalt harms this sheet where the two touch: it has to be taken off or covered by a board.',
    source: 'va-07-54-23',
    at: 'separation from bitumen (TPO); EPDM and PVC likewise',
    grade: 'found',
  },
  {
    id: 'grease',
    when: 'oils-on-roof',
    removes: ['oil-sensitive'],
    why: 'Kitchen grease, oils and animal fat soften and swell this material.',
    source: 'va-07-54-23',
    at: 'oil and grease (TPO); EPDM and bitumen are common practice',
    grade: 'found',
  },
  {
    id: 'coating-over-wet',
    when: 'wet-or-layered-below',
    removes: ['coating'],
    why: 'A coat may go only over one dry, sound roof; over wet or doubled roofing the old roof comes off.',
    source: 'memory',
    at: 'IBC 1512 and IRC R908.3.1.1',
    grade: 'memory',
  },
  {
    id: 'coating-over-boards',
    when: 'nothing-old-below',
    removes: ['coating'],
    why: 'A coat renews an old roof that stays; its standard does not make it a roof by itself over new boards.',
    source: 'astm-d6694',
    at: 'scope (silicone on foam); acrylic likewise',
    grade: 'found',
  },
  {
    id: 'old-silicone',
    when: 'cured-silicone-below',
    removes: ['not-silicone'],
    why: 'Nothing but silicone sticks to cured silicone that is left in place.',
    source: 'practice',
    at: 'cured silicone',
    grade: 'practice',
  },
] as const satisfies readonly MembraneVeto[];

/** Standing water on a covering that tolerates it still needs a word from the maker. */
export const pondAcceptance = {
  why: 'Water that stays needs the written acceptance of the maker, also for a sheet that tolerates it.',
  source: 'practice',
  at: 'residual ponding',
  grade: 'practice',
} as const satisfies Cited & { why: string };
