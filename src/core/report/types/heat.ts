import type { Assumption, SourceNote } from './basics.ts';

/** One roof on one clear day. Temperatures F, heat Btu; heat into the room counts up, out of it down. */
export interface HeatOfRoof {
  /** `old`, `new`, `new-thin`, `new-mean`, `new-thick`, or `option-` with the membrane's id. */
  id: string;
  title: string;
  /** Membrane option; null = the covering that is there. */
  membrane: string | null;
  /** Foam boards; null = the old roof. */
  foamIn: number | null;
  /** All layers together, films not counted. */
  layersR: number;
  /** As aged. */
  reflectance: number;
  emittance: number;
  sri: number;
  /** At the whole hours of standard time, 0 to 24. */
  surfaceF: readonly number[];
  peakSurfaceF: number;
  peakSurfaceAtH: number;
  peakBtuPerHrSqFt: number;
  peakHeatAtH: number;
  dayBtuPerSqFt: number;
  /** The same over the whole section. */
  peakBtuPerHr: number;
  dayBtu: number;
}

/** How much of the heat saved in a day is the insulation's and how much the color's. Btu per sq ft. */
export interface HeatSplit {
  /** Old insulation with old color, then each change alone, then both. */
  oldBtu: number;
  insulationOnlyBtu: number;
  colorOnlyBtu: number;
  bothBtu: number;
  savedBtu: number;
  /** Saved by one change alone. */
  insulationAloneBtu: number;
  colorAloneBtu: number;
  /** What the two alone promise more than both together keep: each has less left to save after the other. */
  overlapBtu: number;
  /** Shares of what is saved, mean of both orders; null where next to nothing is saved. */
  insulationShare: number | null;
  colorShare: number | null;
}

/** A clear January day and a heating season: what color and insulation do then. */
export interface HeatInWinter {
  januaryF: number;
  roomF: number;
  /** Heat out of the room on a clear January day without snow, Btu per sq ft. */
  oldLossBtuPerSqFt: number;
  newLossBtuPerSqFt: number;
  /** Lost more on that day because of the new color; negative = lost less. */
  colorPenaltyBtuPerSqFt: number;
  /** Over a season by degree-days, no sun counted. */
  degreeDays: number;
  insulationSavesBtuPerSqFtYear: number;
}

/** The roof on a hot clear day: old, new, and new under every other membrane. */
export interface HeatReport {
  day: {
    /** Town whose weather is taken. */
    town: string;
    /** It stands in for a place that is not in the table. */
    standsIn?: boolean;
    date: string;
    hotF: number;
    rangeF: number;
    dewPointF: number;
    noonWPerM2: number;
    /** Sky by the place's own measured depths, or by the sun's height alone. */
    sky: 'depths' | 'height';
    windWPerM2K: number;
    /** null = nobody cools what lies below: it is as warm as the air outside. */
    roomF: number | null;
    /** An attic lies between: it is reckoned as a still air space, without its vents. */
    attic: boolean;
    /** At the whole hours of standard time, 0 to 24. */
    airF: readonly number[];
  };
  old: HeatOfRoof;
  /** At the thickness that stands for the whole taper; null = no layout or no membrane. */
  new: HeatOfRoof | null;
  /** The new roof where it is thinnest, at its mean and where it is thickest. */
  taper: readonly HeatOfRoof[];
  /** The new roof under every membrane option, the chosen one too. */
  options: readonly (HeatOfRoof & { vetoed: boolean })[];
  /** Id of the option whose color is farthest from the chosen one's. */
  otherColor: string | null;
  /** Peak of the surface in strong and in light wind. */
  windRangeF: { old: readonly [number, number]; new: readonly [number, number] | null };
  split: HeatSplit | null;
  winter: HeatInWinter | null;
  /** What the owner is told. */
  figures: {
    peakSurfaceOldF: number;
    peakSurfaceNewF: number | null;
    dayOldBtuPerSqFt: number;
    dayNewBtuPerSqFt: number | null;
    dayOldBtu: number;
    dayNewBtu: number | null;
    insulationShare: number | null;
    colorShare: number | null;
  };
  sources: readonly SourceNote[];
  assumed: readonly Assumption[];
}
