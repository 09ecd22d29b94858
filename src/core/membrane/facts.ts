import type { CoolRoofRuleId } from '../../../reference/membranes/heat.ts';
import type { CoveringKind, DeckKind, OwnWeights } from '../roof.ts';

/**
 * What the choice of the covering hangs on. `null` = not known; the cautious answer is then taken where people or the
 * sheet could come to harm, and the result says so.
 */
export interface MembraneFacts {
  deck: {
    kind: DeckKind | null;
    /** Known otherwise than from the kind (form boards under gypsum, for one); null = go by the kind. */
    combustible: boolean | null;
    thicknessIn: number | null;
    /** The underside of the deck is the ceiling or can be seen (open eaves, beams). */
    undersideExposed: boolean | null;
  };
  /** Wood at the eave, fascia, wall or curb within reach of a flame. */
  eaveWood: boolean | null;
  /** The rule set lets this replacement stay below the least slope, because the finished roof is shown to drain. */
  reRoofException: boolean;
  /** Least plane slope after the design. */
  leastSlopeInPerFt: number | null;
  /** Greatest depth of water that stays 48 h after rain once the design is built; 0 = it drains, null = not shown. */
  residualPondIn: number | null;
  /** Water this deep or less is a bird bath and not held against a covering. */
  birdBathIn: number;
  existing: {
    covering: CoveringKind | null;
    layers: number | null;
    /** Wet insulation or deck under it. */
    wet: boolean | null;
    /** Water stood on the old roof. */
    ponds: boolean | null;
  };
  /** What the covering lies on: boards that are new, or the old roof itself (a coating job). */
  base: 'new-boards' | 'old-covering';
  /** A cover board lies between old and new; counts as separation from old asphalt. */
  coverBoard: boolean;
  residueRemovedOrCovered: boolean | null;
  grease: boolean | null;
  noFlame: boolean | null;
  debris: boolean | null;
  footTraffic: boolean | null;
  shade: boolean | null;
  tightBudget: boolean | null;
  /** Lowest surface temperature expected while the work lasts. */
  workTemperatureF: number | null;
  /** As codes write it: "3B", "5". */
  climateZone: string | null;
  livingSpaceBelow: boolean | null;
  /** Energy rule that this job must meet; null = none. */
  coolRoofRule: CoolRoofRuleId | null;
  /** Id of the option that the owner asks for. */
  askedFor: string | null;
  /** Weights of the owner's own: shares in percent by criterion; null = the usual ones. */
  ownWeights: OwnWeights | null;
}
