import type { Alternative } from '../../report/types.ts';
import { type AlternativeFacts, alternative } from './facts.ts';
import { moreOutlets, steepConversion } from './heights.ts';
import { localFillFor, outletAtLowSpot } from './low-spot.ts';
import { sleepersFor } from './sleepers.ts';
import { structureFor } from './structure.ts';

const edgeLowered = ({ existing }: AlternativeFacts): Alternative | null =>
  existing.edgeFirst ? alternative('edge-lowered', existing.edgeFirst, []) : null;

/**
 * Ways that are not foam, or go with it, by the rule of choice: sag from structure before all, then the one wrong edge or
 * low spot, then heights that run out, then thick foam; a steep roof where nothing fits. Only those for which a fact of
 * this roof speaks. A dead level, dry and under-insulated roof has none: tapered foam is the answer.
 * Source: common practice; see reference/alternatives.ts
 */
export function alternativesFor(facts: AlternativeFacts): Alternative[] {
  const found = [structureFor, edgeLowered, localFillFor, outletAtLowSpot, moreOutlets, sleepersFor, steepConversion];
  return found.map((one) => one(facts)).filter((one): one is Alternative => one !== null);
}
