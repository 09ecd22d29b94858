import type { Cited } from './sources.ts';

export interface DeflectionLimitRow extends Cited {
  ceiling: 'plaster' | 'other' | 'none';
  /** Span over this number. */
  liveSpanOver: number;
  snowOrWindSpanOver: number;
  totalSpanOver: number;
}

/**
 * IBC Table 1604.3, roof members. Its footnote e says that these limits do not ensure against ponding: at span/240 a 1/4-in/ft
 * roof keeps 0.09 in/ft at its low support. Some engineers use total load at span/240 or stiffer for a 1/4-in/ft roof.
 */
export const deflectionLimits = [
  {
    ceiling: 'plaster',
    liveSpanOver: 360,
    snowOrWindSpanOver: 360,
    totalSpanOver: 240,
    source: 'ibc-t1604-3',
    at: 'roof members, plaster ceiling',
    grade: 'found',
  },
  {
    ceiling: 'other',
    liveSpanOver: 240,
    snowOrWindSpanOver: 240,
    totalSpanOver: 180,
    source: 'ibc-t1604-3',
    at: 'roof members, other ceiling',
    grade: 'found',
  },
  {
    ceiling: 'none',
    liveSpanOver: 180,
    snowOrWindSpanOver: 180,
    totalSpanOver: 120,
    source: 'ibc-t1604-3',
    at: 'roof members, no ceiling',
    grade: 'found',
  },
] as const satisfies readonly DeflectionLimitRow[];

export interface JoistDefaults extends Cited {
  elasticityPsi: number;
  /** Long-term factor on the dead-load part: 1.5 dry and seasoned, 2.0 green or wet. */
  creepFactor: number;
  /** Breadth of sawn lumber of 2-in nominal thickness. */
  breadthIn: number;
}

/** Used when joists are known by depth, spacing and span only; the stiffness is that of the published worked joist. */
export const joistDefaults = {
  elasticityPsi: 1_500_000,
  creepFactor: 1.5,
  breadthIn: 1.5,
  source: 'nds-kcr',
  at: 'dry, seasoned; stiffness of a published example',
  grade: 'found',
} as const satisfies JoistDefaults;

export interface RoofLoads extends Cited {
  psf: number;
}

/** Live load of an ordinary flat roof where nobody gave one. */
export const ordinaryRoofLiveLoad = {
  psf: 20,
  source: 'ibc-2021',
  at: '1607, ordinary flat roof, as stated in training text (20 psf or less outside hurricane zones)',
  grade: 'found',
} as const satisfies RoofLoads;

/** Weight of an inch of water on a square foot: 62.4 lb per cubic foot / 12. */
export const waterLoadPerInch = {
  psf: 5.2,
  source: 'ibc-1611-rain',
  at: '1611.1, equation R = 5.2 (ds + dh)',
  grade: 'found',
} as const satisfies RoofLoads;
