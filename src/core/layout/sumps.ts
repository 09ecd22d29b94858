import { sumpRule } from '../../../reference/boards.ts';
import type { Site } from '../site/site.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import type { Sump } from '../taper/sump.ts';
import { layersOf } from './bands.ts';
import { catalogueOf, startEdgeIn } from './catalogue.ts';
import { axisDeg, type LayoutPlan } from './plan.ts';
import { fourWayShape } from './shape.ts';

const SAME = 1e-9;

/** Gentlest boards of the supplier that are steep enough for a sump in fields of this slope; null where none are. */
function sumpSlope(site: Site, fieldInPerFt: number): number | null {
  const least = sumpRule.timesField * fieldInPerFt;
  return catalogueOf(site.roof).slopesInPerFt.find((slope) => slope >= least - SAME) ?? null;
}

/**
 * Sumps at the drains of a plan: four planes of at least twice the field's slope. They are sunk into the flat layer under
 * the taper, so that the field stays where it is; without such a layer, or where less than an inch would be left at the
 * drain, there is none, and the drain is set to the low edge of the boards.
 * Source: common practice for size and slope; an inch at the low point, energy codes.
 */
export function sumpsFor(
  site: Site,
  plan: LayoutPlan,
  starts: readonly TaperOutlet[],
  fieldInPerFt: number,
  baseIn: number,
): Sump[] {
  const sideFt = site.roof.boards.sumpFt ?? sumpRule.sideFt;
  const riseInPerFt = sumpSlope(site, fieldInPerFt);
  const shape = plan.form?.shape ?? fourWayShape;
  if (sideFt === 0 || riseInPerFt === null || shape !== fourWayShape) return [];
  const halfFt = sideFt / 2;
  const dropIn = (riseInPerFt - fieldInPerFt) * halfFt;
  const catalogue = catalogueOf(site.roof);
  const lowIn = startEdgeIn(catalogue, riseInPerFt);
  const drains = new Set(plan.outlets.filter(({ kind }) => kind === 'drain').map(({ id }) => id));
  return starts.flatMap((start): Sump[] => {
    if (start.kind !== 'point' || !drains.has(start.id)) return [];
    const levelIn = start.levelIn - dropIn;
    // What is left of the flat layer under the sump's boards, and of everything at the drain.
    const underIn = levelIn - (lowIn ?? 0);
    if (lowIn === null || baseIn < SAME || underIn < -SAME || levelIn < sumpRule.leastAtDrainIn - SAME) return [];
    if (layersOf(catalogue, underIn) === null) return [];
    const turnDeg = axisDeg(site) + (plan.form?.turnDeg ?? 0);
    return [{ outlet: start.id, at: start.at, levelIn, riseInPerFt, halfFt, turnDeg }];
  });
}
