import type { Cited } from './sources.ts';

/** Permeance of a layer as it is laid, or of one inch of it. */
export interface PermeanceRow extends Cited {
  layer: string;
  perm: number;
  /** True: for one inch, thicker layers let less through. */
  perInch: boolean;
}

/**
 * Vapor permeance in US perms, one value of each range. Plywood and OSB pass several times as much when wet; the value
 * stands between. Planks pass little themselves, but air and vapor go through their joints, so they are taken as open.
 * Membranes other than bitumen and the boards are from memory, the foams too.
 */
export const permeances = [
  {
    layer: 'covering',
    perm: 0.05,
    perInch: false,
    source: 'memory',
    at: '60-mil sheet 0.01 to 0.15, bitumen under 0.05',
    grade: 'memory',
  },
  {
    layer: 'cover-board',
    perm: 25,
    perInch: false,
    source: 'memory',
    at: 'glass-mat board 1/2 in, 17 to 30',
    grade: 'memory',
  },
  {
    layer: 'polyiso',
    perm: 1.5,
    perInch: true,
    source: 'memory',
    at: 'glass- or felt-faced 1 in; 4 to 6 in about 0.3',
    grade: 'memory',
  },
  {
    layer: 'plywood',
    perm: 0.8,
    perInch: false,
    source: 'memory',
    at: '1/2 to 5/8 in, dry cup 0.5 to 0.8',
    grade: 'memory',
  },
  { layer: 'osb', perm: 0.75, perInch: false, source: 'memory', at: 'dry cup', grade: 'memory' },
  {
    layer: 'open-deck',
    perm: 25,
    perInch: false,
    source: 'practice',
    at: 'planks and decks with open joints: no retarder',
    grade: 'practice',
  },
  {
    layer: 'painted-gypsum',
    perm: 5,
    perInch: false,
    source: 'memory',
    at: '1/2 in with two coats of latex paint, 3 to 5',
    grade: 'memory',
  },
  {
    layer: 'old-boards',
    perm: 25,
    perInch: true,
    source: 'practice',
    at: 'perlite and wood fiber let vapor through: no retarder',
    grade: 'practice',
  },
  { layer: 'batts', perm: 120, perInch: true, source: 'memory', at: 'as still air', grade: 'memory' },
  { layer: 'open-cell', perm: 55, perInch: true, source: 'memory', at: 'open-cell spray foam', grade: 'memory' },
  {
    layer: 'closed-cell',
    perm: 2,
    perInch: true,
    source: 'memory',
    at: 'closed-cell spray foam, under 1 from 2 in on',
    grade: 'memory',
  },
  {
    layer: 'retarder',
    perm: 0.05,
    perInch: false,
    source: 'memory',
    at: 'poly or self-adhered sheet, 0.05 to 0.06',
    grade: 'memory',
  },
  {
    layer: 'foil-retarder',
    perm: 0.01,
    perInch: false,
    source: 'memory',
    at: 'foil-faced self-adhered sheet, 0.01 or less',
    grade: 'memory',
  },
] as const satisfies readonly PermeanceRow[];

export type LayerName = (typeof permeances)[number]['layer'];

/** Meters of still air that resist like one perm. Computed from 57.21 ng/(s m2 Pa) and 2e-10 kg/(m s Pa). */
export const stillAir = {
  kgPerMSPa: 2e-10,
  meterPerms: 3.496,
  source: 'iso-13788',
  at: 'vapor permeability of still air, from memory; the worked case proves it',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;

/** Classes of vapor retarders: a layer belongs to the first whose perms it does not pass. */
export const retarderClasses = [
  { name: 'I', mostPerm: 0.1, source: 'irc-r806-5', at: 'classes of vapor retarders', grade: 'found' },
  { name: 'II', mostPerm: 1, source: 'irc-r806-5', at: 'classes of vapor retarders', grade: 'found' },
  { name: 'III', mostPerm: 10, source: 'irc-r806-5', at: 'classes of vapor retarders', grade: 'found' },
] as const satisfies readonly (Cited & { name: string; mostPerm: number })[];

/**
 * Vapor pressure indoors over outdoors at 0 C and below, falling in a line to nothing at 20 C. From memory; the edition of
 * 2001 put dwellings one or two classes higher.
 */
export const indoorClasses = [
  { id: 'store', name: 'stores', excessPa: 270, source: 'iso-13788', at: 'humidity class 1', grade: 'memory' },
  {
    id: 'ordinary',
    name: 'offices and ordinary dwellings',
    excessPa: 540,
    source: 'iso-13788',
    at: 'humidity class 2',
    grade: 'memory',
  },
  {
    id: 'crowded',
    name: 'unknown occupancy',
    excessPa: 810,
    source: 'iso-13788',
    at: 'humidity class 3',
    grade: 'memory',
  },
  {
    id: 'kitchen',
    name: 'sports halls, kitchens, canteens',
    excessPa: 1080,
    source: 'iso-13788',
    at: 'humidity class 4',
    grade: 'memory',
  },
  {
    id: 'pool',
    name: 'laundries, breweries, pools',
    excessPa: 1360,
    source: 'iso-13788',
    at: 'humidity class 5',
    grade: 'memory',
  },
] as const satisfies readonly (Cited & { id: string; name: string; excessPa: number })[];

/** The underside of the sheathing stays above this, with this room and the mean air of the three coldest months. */
export const condensingPlane = {
  leastF: 45,
  roomF: 68,
  source: 'irc-r806-note-b',
  at: 'Table R806.5, note b',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** Least share of foam where the code is met by R-5: federal guidance for zones 1 to 3. */
export const leastFoamShare = {
  share: 0.1,
  source: 'flat-roof-guide',
  at: 'zones 1 to 3, foam at least 10 % of the total R',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** When a trade association asks to consider a vapor retarder: both at once. */
export const retarderTrigger = {
  januaryUnderF: 40,
  indoorRhFromPct: 45,
  source: 'retarder-rules',
  at: 'trade association rule',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** When this tool asks for one besides: very damp rooms and the coldest zones. Else an air barrier alone. */
export const retarderPractice = {
  excessFromPa: 1080,
  zones: ['7', '8'],
  source: 'practice',
  at: 'vapor retarder in very damp rooms and climate zones 7 and 8',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** The air barrier goes to the deck where the insulation lies above it: gaps carry more water than the layers let through. */
export const deckAirSeal = {
  source: 'practice',
  at: 'air barrier on the deck under insulation',
  grade: 'practice',
} as const satisfies Cited;

/** Water under the covering over a wood deck that is too much; the common limit for other decks is five times as high. */
export const wetAlarm = {
  gPerM2: 200,
  source: 'practice',
  at: 'prudent alarm for wood decks',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Water that is left over from year to year must not reach the alarm while a covering lasts. */
export const wetGrowth = {
  years: 25,
  source: 'practice',
  at: 'water left over from year to year, within the life of a covering',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Foam against the deck that stops air is a class II retarder, or has one on its room side, in these zones. */
export const foamRetarder = {
  zones: ['5', '6', '7', '8'],
  mostPerm: 1,
  source: 'irc-r806-5',
  at: 'R806.5, class II in zones 5 to 8',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** Air space between insulation and sheathing of a vented roof. */
export const ventSpace = {
  leastIn: 1,
  source: 'irc-r806-2012',
  at: 'R806.3',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** A joist space of a low slope has too little height between inlet and outlet for air to move by itself. */
export const lowSlopeVenting = {
  heightFt: 3,
  source: 'practice',
  at: 'height between inlet and outlet of a vented space',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Research: a roof may be vented or not in any climate, if air leakage and the condensing temperature are held. */
export const ventedOrNot = {
  source: 'unvented-review',
  at: 'vented or unvented in any zone',
  grade: 'found',
} as const satisfies Cited;

/** What an unvented roof with air-permeable insulation below its sheathing needs. */
export const unventedRule = {
  source: 'irc-r806-5',
  at: 'R806.5, item 5.1',
  grade: 'found',
} as const satisfies Cited;

/** R per inch of what lies below the deck, where only its thickness is known. Labels differ by 10 % and more. */
export const belowRPerIn = [
  { kind: 'batts', rPerIn: 3.7, source: 'practice', at: 'batts between joists', grade: 'practice' },
  { kind: 'open-cell', rPerIn: 3.7, source: 'practice', at: 'open-cell spray foam', grade: 'practice' },
  { kind: 'closed-cell', rPerIn: 6.5, source: 'practice', at: 'closed-cell spray foam', grade: 'practice' },
] as const satisfies readonly (Cited & { kind: string; rPerIn: number })[];

/** R of flat board in winter, per inch: what trade advice takes in cold, under the label. */
export const winterBoard = {
  rPerIn: 5,
  source: 'practice',
  at: 'trade association advice, heating',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
