import type { Built } from './build.ts';
import type { Weighed } from './frontier.ts';
import { needsLeave, newOutletsOf, type Rates, weighedCost } from './rank.ts';
import { addedPsf } from './report.ts';
import type { Sketch } from './sketch.ts';
import { momentsOf } from './thermal.ts';

/** Valleys steeper than the rule are no better for it. */
const flatness = (valleyInPerFt: number, ruleInPerFt: number): number => -Math.min(valleyInPerFt, ruleInPerFt);

/** Cost in board feet of the same worth. */
const costBoardFt = (
  { plan, boardFt }: Pick<Sketch, 'plan' | 'boardFt'>,
  levellingBoardFt: number,
  rates: Rates,
): number => weighedCost({ plan, boardFt, levellingBoardFt }, rates) / rates.boardFt;

/** What a sketch is compared by. */
export const weighSketch =
  (ruleInPerFt: number, rates: Rates, levellingOf: (sketch: Sketch) => number) =>
  (sketch: Sketch): Weighed => ({
    costBoardFt: costBoardFt(sketch, levellingOf(sketch), rates),
    greatestIn: sketch.greatestIn,
    flatnessPerFt: flatness(sketch.valleyInPerFt, ruleInPerFt),
    addedPsf: 0,
    newOutlets: newOutletsOf(sketch.plan),
  });

/** The same of a surface that was built, before anything is told about its boards. */
export const weighBuilt =
  (ruleInPerFt: number, rates: Rates) =>
  ({ plan, thickness, ground, judgement }: Built): Weighed => {
    const { boardFt, greatestIn, areaSqFt } = momentsOf(thickness);
    return {
      costBoardFt: costBoardFt({ plan, boardFt }, ground.levellingBoardFt, rates),
      greatestIn,
      flatnessPerFt: flatness(judgement.leastValleySlopeInPerFt ?? ruleInPerFt, ruleInPerFt),
      addedPsf: addedPsf(boardFt / areaSqFt),
      newOutlets: newOutletsOf(plan),
    };
  };

/** The order in which sketches are proven: good valleys, then what needs nobody's leave, then cost. */
export const order = (sketch: Sketch, levellingBoardFt: number, rates: Rates): number =>
  (sketch.valleyInPerFt < 0.125 - 1e-9 ? 1e7 : 0) +
  (needsLeave(sketch.plan) ? 1e8 : 0) +
  costBoardFt(sketch, levellingBoardFt, rates);
