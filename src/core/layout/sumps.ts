import { sumpRule } from '../../../reference/boards.ts';
import { inches } from '../../units/print.ts';
import type { Site } from '../site/site.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import type { Sump } from '../taper/sump.ts';
import { layersOf } from './bands.ts';
import { type Catalogue, catalogueOf, groundGroup, upperGroup } from './catalogue.ts';
import { axisDeg, type LayoutPlan } from './plan.ts';
import { fourWayShape } from './shape.ts';

const SAME = 1e-9;

/** Gentlest boards of the supplier that are steep enough for a sump in fields of this slope; null where none are. */
function sumpSlope(site: Site, fieldInPerFt: number): number | null {
  const least = sumpRule.timesField * fieldInPerFt;
  return catalogueOf(site.roof).slopesInPerFt.find((slope) => slope >= least - SAME) ?? null;
}

/** What could lie flat [in] under the boards of a sump: they start with their own low edge, or at nothing. */
function roomsUnderIn(catalogue: Catalogue, riseInPerFt: number, levelIn: number, baseIn: number): number[] {
  return [groundGroup(catalogue, riseInPerFt), upperGroup(catalogue, riseInPerFt)]
    .flatMap((group) => (group === null ? [] : [levelIn - group.lowEdgesIn[0]]))
    .filter((underIn) => underIn > -SAME && underIn < baseIn + SAME);
}

/** Flat stock [in] that is left under the boards of a sump; null where no such boards or no such stock are made. */
export function flatUnderSump(
  catalogue: Catalogue,
  riseInPerFt: number,
  levelIn: number,
  baseIn: number,
): number | null {
  const rooms = roomsUnderIn(catalogue, riseInPerFt, levelIn, baseIn);
  const made = rooms.find((underIn) => layersOf(catalogue, underIn) !== null);
  return made === undefined ? null : Math.max(0, made);
}

/** Sumps, or why there are none. */
export interface SumpPlan {
  sumps: readonly Sump[];
  why: string | null;
}

/**
 * Sumps at the drains of a plan: four planes of at least twice the field's slope, sunk into what lies there, so that the
 * field stays where it is. Where less than an inch would be left at the drain there is none unless it is asked for; the
 * drain is then set to the low edge of the boards.
 * Source: common practice for size and slope; an inch at the low point, energy codes.
 */
export function sumpsFor(
  site: Site,
  plan: LayoutPlan,
  starts: readonly TaperOutlet[],
  fieldInPerFt: number,
  baseIn: number,
): SumpPlan {
  const none = (why: string): SumpPlan => ({ sumps: [], why });
  const catalogue = catalogueOf(site.roof);
  const asked = site.roof.boards.sumpFt;
  const sideFt = asked ?? sumpRule.sideFt;
  const riseInPerFt = sumpSlope(site, fieldInPerFt);
  const shape = plan.form?.shape ?? fourWayShape;
  if (sideFt === 0) return none('none are wanted');
  if (shape !== fourWayShape) return none('beside a drain the planes of this form are as steep as one');
  if (riseInPerFt === null) return none('no boards twice as steep as these are made');
  const halfFt = sideFt / 2;
  const dropIn = (riseInPerFt - fieldInPerFt) * halfFt;
  const leastIn = asked === null ? sumpRule.leastAtDrainIn : 0;
  const drains = new Set(plan.outlets.filter(({ kind }) => kind === 'drain').map(({ id }) => id));
  const turnDeg = axisDeg(site) + (plan.form?.turnDeg ?? 0);
  const about = starts.filter(({ id, kind }) => kind === 'point' && drains.has(id));
  const sumps = about.flatMap((start): Sump[] => {
    const levelIn = start.levelIn - dropIn;
    if (start.kind !== 'point' || levelIn < leastIn - SAME) return [];
    if (flatUnderSump(catalogue, riseInPerFt, levelIn, baseIn) === null) return [];
    return [{ outlet: start.id, at: start.at, levelIn, riseInPerFt, halfFt, turnDeg }];
  });
  if (sumps.length > 0) return { sumps, why: null };
  const left = about.flatMap(({ levelIn }) => roomsUnderIn(catalogue, riseInPerFt, levelIn - dropIn, baseIn));
  const deepEnough = about.some(({ levelIn }) => levelIn - dropIn > leastIn - SAME);
  if (deepEnough && left.length > 0)
    return none(`no flat boards of the list make the ${inches(left[0])} that would be left under one`);
  return none(
    asked === null
      ? `they would leave less than ${sumpRule.leastAtDrainIn} in of board at the drain`
      : 'the boards about the drain are too thin for one',
  );
}
