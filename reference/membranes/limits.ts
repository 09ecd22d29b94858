import type { Cited } from '../sources.ts';
import type { WorkMethod } from '../work-methods.ts';
import type { MembraneId } from './options.ts';

export type AttachmentKind =
  | 'adhered'
  | 'induction-welded'
  | 'mechanically-attached'
  | 'self-adhered'
  | 'cold-adhesive'
  | 'torched'
  | 'mopped'
  | 'liquid'
  | 'nailed';

export interface Attachment extends Cited {
  membrane: MembraneId;
  kind: AttachmentKind;
  /** In words for the estimator. */
  name: string;
  /** Ways of working that come with it; cautions hang on them. */
  methods: readonly WorkMethod[];
  /** Screws or nails through the deck over the field of the roof. */
  throughDeck: boolean;
  /** Least surface temperature in the usual product data; null = no fixed limit (test welds decide). */
  leastWorkF: number | null;
}

/**
 * Ways of holding each covering, the preferred first. Temperatures are the usual ones: the maker's sheet rules.
 * Who disagrees: some self-adhered sheets are rated to 14 F; cold adhesive runs 40 to 50 F and the higher is held here;
 * torched sheet may go on at 0 F in light wind, which does not make it a substitute in the cold over wood.
 */
export const attachments = [
  {
    membrane: 'tpo',
    kind: 'adhered',
    methods: ['hot-air', 'solvent-adhesive'],
    name: 'adhered to the cover board',
    throughDeck: false,
    leastWorkF: 40,
    source: 'practice',
    at: 'solvent adhesive',
    grade: 'practice',
  },
  {
    membrane: 'tpo',
    kind: 'induction-welded',
    methods: ['hot-air', 'mechanical-fastening'],
    name: 'induction-welded to plates',
    throughDeck: true,
    leastWorkF: null,
    source: 'practice',
    at: 'plates on a grid',
    grade: 'practice',
  },
  {
    membrane: 'tpo',
    kind: 'mechanically-attached',
    methods: ['hot-air', 'mechanical-fastening'],
    name: 'mechanically attached in the seams',
    throughDeck: true,
    leastWorkF: null,
    source: 'practice',
    at: 'in-seam plates',
    grade: 'practice',
  },
  {
    membrane: 'pvc',
    kind: 'adhered',
    methods: ['hot-air', 'solvent-adhesive'],
    name: 'adhered to the cover board',
    throughDeck: false,
    leastWorkF: 40,
    source: 'practice',
    at: 'solvent adhesive',
    grade: 'practice',
  },
  {
    membrane: 'pvc',
    kind: 'induction-welded',
    methods: ['hot-air', 'mechanical-fastening'],
    name: 'induction-welded to plates',
    throughDeck: true,
    leastWorkF: null,
    source: 'practice',
    at: 'plates on a grid',
    grade: 'practice',
  },
  {
    membrane: 'pvc',
    kind: 'mechanically-attached',
    methods: ['hot-air', 'mechanical-fastening'],
    name: 'mechanically attached in the seams',
    throughDeck: true,
    leastWorkF: null,
    source: 'practice',
    at: 'in-seam plates',
    grade: 'practice',
  },
  {
    membrane: 'epdm-white',
    kind: 'adhered',
    methods: ['solvent-adhesive'],
    name: 'adhered to the cover board',
    throughDeck: false,
    leastWorkF: 40,
    source: 'practice',
    at: 'primers and adhesives',
    grade: 'practice',
  },
  {
    membrane: 'epdm-white',
    kind: 'mechanically-attached',
    methods: ['solvent-adhesive', 'mechanical-fastening'],
    name: 'mechanically attached in the seams',
    throughDeck: true,
    leastWorkF: 40,
    source: 'practice',
    at: 'primer and tape',
    grade: 'practice',
  },
  {
    membrane: 'epdm-black',
    kind: 'adhered',
    methods: ['solvent-adhesive'],
    name: 'adhered to the cover board',
    throughDeck: false,
    leastWorkF: 40,
    source: 'practice',
    at: 'primers and adhesives',
    grade: 'practice',
  },
  {
    membrane: 'epdm-black',
    kind: 'mechanically-attached',
    methods: ['solvent-adhesive', 'mechanical-fastening'],
    name: 'mechanically attached in the seams',
    throughDeck: true,
    leastWorkF: 40,
    source: 'practice',
    at: 'primer and tape',
    grade: 'practice',
  },
  {
    membrane: 'sbs-self-adhered',
    kind: 'self-adhered',
    methods: ['self-adhered'],
    name: 'self-adhered to the primed board',
    throughDeck: false,
    leastWorkF: 50,
    source: 'practice',
    at: '50 F and rising',
    grade: 'practice',
  },
  {
    membrane: 'sbs-self-adhered-cool',
    kind: 'self-adhered',
    methods: ['self-adhered'],
    name: 'self-adhered to the primed board',
    throughDeck: false,
    leastWorkF: 50,
    source: 'practice',
    at: '50 F and rising',
    grade: 'practice',
  },
  {
    membrane: 'sbs-cold',
    kind: 'cold-adhesive',
    methods: ['cold-adhesive'],
    name: 'bedded in cold adhesive',
    throughDeck: false,
    leastWorkF: 50,
    source: 'practice',
    at: '40 to 50 F by product',
    grade: 'practice',
  },
  {
    membrane: 'sbs-torch',
    kind: 'torched',
    methods: ['torch'],
    name: 'torched on',
    throughDeck: false,
    leastWorkF: 0,
    source: 'alberta-manual',
    at: 'modified bitumen, cold weather: -18 C in wind up to 14.5 km/h',
    grade: 'found',
  },
  {
    membrane: 'app-torch',
    kind: 'torched',
    methods: ['torch'],
    name: 'torched on',
    throughDeck: false,
    leastWorkF: 0,
    source: 'alberta-manual',
    at: 'modified bitumen, cold weather: -18 C in wind up to 14.5 km/h',
    grade: 'found',
  },
  {
    membrane: 'bur-hot',
    kind: 'mopped',
    methods: ['hot-asphalt'],
    name: 'mopped in hot asphalt',
    throughDeck: false,
    leastWorkF: 40,
    source: 'ep-415',
    at: 'ambient temperature',
    grade: 'found',
  },
  {
    membrane: 'pmma',
    kind: 'liquid',
    methods: ['liquid-resin'],
    name: 'rolled out with fleece',
    throughDeck: false,
    leastWorkF: 23,
    source: 'practice',
    at: 'about 23 F',
    grade: 'practice',
  },
  {
    membrane: 'silicone',
    kind: 'liquid',
    methods: ['liquid-resin'],
    name: 'rolled out',
    throughDeck: false,
    leastWorkF: 35,
    source: 'practice',
    at: 'silicone 35 F',
    grade: 'practice',
  },
  {
    membrane: 'acrylic',
    kind: 'liquid',
    methods: ['liquid-resin'],
    name: 'rolled out',
    throughDeck: false,
    leastWorkF: 50,
    source: 'practice',
    at: 'acrylic 50 F, no dew or rain',
    grade: 'practice',
  },
  {
    membrane: 'roll-roofing',
    kind: 'nailed',
    methods: ['mechanical-fastening'],
    name: 'nailed',
    throughDeck: true,
    leastWorkF: 45,
    source: 'practice',
    at: '45 F to unroll',
    grade: 'practice',
  },
] as const satisfies readonly Attachment[];

export interface PanelLimit extends Cited {
  deck: 'plywood' | 'osb';
  /** A thinner panel does not hold field screws well enough for a mechanically attached covering. */
  leastThicknessIn: number;
}

/** Panels under 3/4 in need a pull test in any case. */
export const panelLimits = [
  {
    deck: 'plywood',
    leastThicknessIn: 0.46875,
    source: 'practice',
    at: '15/32 in for field screws',
    grade: 'practice',
  },
  { deck: 'osb', leastThicknessIn: 0.4375, source: 'practice', at: '7/16 in for field screws', grade: 'practice' },
] as const satisfies readonly PanelLimit[];

export interface ExposedDeckLimit extends Cited {
  leastThicknessIn: number;
  /** Wood that stays under the point of a screw. */
  pointCoverIn: number;
}

/** A deck whose underside is the ceiling takes field screws only if it is thick enough to hide the tip. */
export const exposedDeckLimit = {
  leastThicknessIn: 1.5,
  pointCoverIn: 0.25,
  source: 'hawaii-guide',
  at: 'fasteners over exposed decks (thickness: common practice)',
  grade: 'practice',
} as const satisfies ExposedDeckLimit;
