import { intersect, type Region, subtract } from '../core/geometry/boolean.ts';
import { boxesOverlap, boxOf, isInside, signedAreaSqFt, toSegment } from '../core/geometry/vector.ts';
import type { Curb, Point, Ring } from '../core/roof.ts';
import { plainNumber } from '../units/print.ts';
import type { Placed, PlanParts } from './placed.ts';
import { type InputLog, under } from './problems.ts';
import { placeText } from './ring.ts';

/** Areas smaller than this are the rounding of a tape: a curb may touch a wall or another curb. */
const TOUCHING_SQFT = 0.005;
const ON_EDGE_FT = 1e-6;

/** Distance from a place to the nearest side of a ring, in ft. */
export function distanceToRingFt(p: Point, ring: Ring): number {
  let least = Infinity;
  for (let i = 0; i < ring.length; i++) {
    least = Math.min(least, toSegment(p, ring[i], ring[(i + 1) % ring.length]).distanceFt);
  }
  return least;
}

/** Inside a ring or not further outside than the given distance. */
export function isWithin(p: Point, ring: Ring, toleranceFt = ON_EDGE_FT): boolean {
  return isInside(p, [ring]) || distanceToRingFt(p, ring) <= toleranceFt;
}

const areaSqFt = (regions: readonly Region[]): number =>
  regions.flatMap(({ outer, holes }) => [outer, ...holes]).reduce((sum, ring) => sum + signedAreaSqFt(ring), 0);

function checkInside({ item, path }: Placed<Curb>, outline: Ring, log: InputLog): void {
  const outsideSqFt = areaSqFt(subtract([item.outline], [outline]));
  if (outsideSqFt <= TOUCHING_SQFT) return;
  const wholeSqFt = Math.abs(signedAreaSqFt(item.outline));
  const far = item.outline.find((corner) => !isWithin(corner, outline)) ?? item.outline[0];
  const entirely = outsideSqFt >= wholeSqFt - TOUCHING_SQFT;
  const how = entirely
    ? 'lies outside the outline'
    : `reaches ${plainNumber(outsideSqFt, 2)} sq ft outside the outline`;
  log.problem(under(path, 'outline'), 'outside', `curb "${item.id}" ${how}, at ${placeText(far)}.`, {
    got: placeText(far),
    instead: 'corners inside the outline (it may touch a wall), or a larger outline',
  });
}

function checkCurbs(curbs: readonly Placed<Curb>[], outline: Ring, log: InputLog): void {
  for (const curb of curbs) checkInside(curb, outline, log);
  const boxes = curbs.map(({ item }) => boxOf(item.outline));
  for (let i = 0; i < curbs.length; i++) {
    for (let k = i + 1; k < curbs.length; k++) {
      if (!boxesOverlap(boxes[i], boxes[k])) continue;
      const sharedSqFt = areaSqFt(intersect([curbs[i].item.outline], [curbs[k].item.outline]));
      if (sharedSqFt <= TOUCHING_SQFT) continue;
      const names = `curb "${curbs[k].item.id}" and curb "${curbs[i].item.id}" (${curbs[i].path})`;
      log.problem(
        under(curbs[k].path, 'outline'),
        'overlap',
        `${names} overlap by ${plainNumber(sharedSqFt, 2)} sq ft.`,
        {
          instead: 'curbs apart or side by side, or one curb round both',
        },
      );
    }
  }
  const outlines = curbs.map(({ item }) => item.outline);
  if (curbs.length > 0 && areaSqFt(subtract([outline], outlines)) <= TOUCHING_SQFT) {
    log.problem('curbs', 'zero-area', 'the curbs leave nothing of the section.', { instead: 'smaller curbs' });
  }
}

function checkPlace(what: string, at: Point, path: string, outline: Ring, log: InputLog): boolean {
  if (isWithin(at, outline)) return true;
  log.problem(path, 'outside', `${what} at ${placeText(at)} is outside the outline.`, {
    got: placeText(at),
    instead: 'a place inside, or a larger outline',
  });
  return false;
}

/** Curbs, drains, pipes and inflows lie where they can. Standing proud of its surroundings is no fault of an outlet. */
export function checkPlaces(parts: PlanParts, outline: Ring, log: InputLog): void {
  checkCurbs(parts.curbs, outline, log);
  for (const { item, path } of parts.outlets) {
    if (item.kind !== 'drain') continue;
    if (!checkPlace(`drain "${item.id}"`, item.at, under(path, 'at'), outline, log)) continue;
    const curb = parts.curbs.find(
      ({ item: { outline: ring } }) => isInside(item.at, [ring]) && distanceToRingFt(item.at, ring) > ON_EDGE_FT,
    );
    if (!curb) continue;
    log.problem(
      under(path, 'at'),
      'in-curb',
      `drain "${item.id}" at ${placeText(item.at)} is inside curb "${curb.item.id}".`,
      {
        got: placeText(item.at),
        instead: 'a place on the roof beside the curb, or the curb where it really is',
      },
    );
  }
  for (const { item, path } of parts.pipes)
    checkPlace(`the ${item.kind} pipe`, item.at, under(path, 'at'), outline, log);
  for (const { item, path } of parts.inflows) checkPlace(`the ${item.kind}`, item.at, under(path, 'at'), outline, log);
}
