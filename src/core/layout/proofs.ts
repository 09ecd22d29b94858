import { type Built, build, overBase } from './build.ts';
import { buildUpAt, heightRejection, usesOf, waterRejection } from './check.ts';
import type { LayoutPlan } from './plan.ts';
import type { LayoutContext } from './report.ts';
import type { Sketch } from './sketch.ts';

/** With more outlets than this the ways are short and forms differ little: fewer of them are tried. */
export const MANY_OUTLETS = 8;

/** Sketches that are built and flooded at most; those that hold become layouts. */
const MOST_PROOFS = 12;
const mostVariants = (outlets: number): number => (outlets > MANY_OUTLETS ? 2 : 5);

/** Plans that differ in the form of their taper alone lie on one ground. */
export const groundKey = ({ outlets, newEdges }: LayoutPlan): string =>
  [...outlets.map(({ id }) => id), '|', ...newEdges].join(' ');

const STEEPER_WHY = 'Steeper valleys that dry faster and forgive a board laid badly, for a thicker roof.';

/** Of one plan at one slope the thinnest base: what lies under more is thicker and dearer, and nothing else. */
const thinnestOf = (sketches: readonly Sketch[]): Sketch[] => [
  ...new Map([...sketches].reverse().map((sketch) => [`${sketch.plan.id} ${sketch.slopeInPerFt}`, sketch])).values(),
];

/** Whether one that did not drain tells the same of another: the same form on the same ground, no steeper. */
const failsLike = (failed: Sketch, other: Sketch): boolean =>
  failed.plan.id === other.plan.id && other.slopeInPerFt <= failed.slopeInPerFt + 1e-9;

/**
 * Sketches turned into surfaces and flooded, the most promising of those that no other beats first, until enough of them
 * hold. One that does not hold leaves the field, so that what it had beaten is looked at again.
 */
export function* proven(
  context: LayoutContext,
  fitting: readonly Sketch[],
  grounds: ReadonlyMap<string, Built>,
  front: (sketches: readonly Sketch[]) => Sketch[],
) {
  const { site, limits } = context;
  const most = mostVariants(context.site.roof.outlets.length);
  const done = new Set<Sketch>();
  let left = thinnestOf(fitting);
  let found = 0;
  for (let proofs = 0; proofs < MOST_PROOFS && found < most; proofs++) {
    const sketch = front(left).find((one) => !done.has(one));
    if (sketch === undefined) return;
    done.add(sketch);
    const { plan, slopeInPerFt, baseIn } = sketch;
    const base = grounds.get(groundKey(plan));
    if (base === undefined) continue;
    const why = slopeInPerFt > base.slopeInPerFt + 1e-9 ? `${STEEPER_WHY} ${plan.why}` : plan.why;
    const on = baseIn === base.baseIn ? '' : `-on-${baseIn}`;
    const named = { ...plan, id: `${plan.id}-${Math.round(slopeInPerFt * 16)}-16${on}`, why };
    const built = build(site, named, slopeInPerFt, baseIn, base.ground);
    if (waterRejection(site, built) !== null) {
      left = left.filter((other) => !failsLike(sketch, other));
      continue;
    }
    if (heightRejection(usesOf(site, limits, buildUpAt(overBase(built)))) !== null) {
      left = left.filter((other) => other !== sketch);
      continue;
    }
    found++;
    yield built;
  }
}
