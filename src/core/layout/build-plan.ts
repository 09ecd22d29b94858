import { slopeInPerFt } from '../geometry/plane.ts';
import type { Site } from '../site/site.ts';
import { type Built, build, builtBoardFt, filled } from './build.ts';
import { catalogueOf } from './catalogue.ts';
import { waterRejection } from './check.ts';
import { faceRule } from './face-rule.ts';
import { asRead, type BoardGround, deadLevel, groundsOf } from './ground.ts';
import type { LayoutPlan } from './plan.ts';

/** Steeper boards than this are for crickets. */
const STEEPEST_IN_PER_FT = 0.5;

/** Slopes that the supplier's boards have. */
export const slopesOf = (site: Site): readonly number[] => catalogueOf(site.roof).slopesInPerFt;

/** Flat layer under the taper that is asked for. */
export const baseOf = (site: Site): number => site.roof.insulation.baseIn ?? 0;

/** Catalogue slopes that could reach the rule on this ground, gentlest first. */
export function slopesFor(
  site: Site,
  patches: readonly { plane: { atOriginIn: number; gx: number; gy: number } }[],
): number[] {
  const own = Math.max(...patches.map(({ plane }) => slopeInPerFt(plane)));
  return slopesOf(site).filter((slope) => slope + own >= faceRule(site) - 1e-9 && slope <= STEEPEST_IN_PER_FT);
}

/** Fill never asks for more than this along the ways of the water: common practice for a slow but certain fall. */
const FILL_WAY_IN_PER_FT = 0.125;

/** A simpler ground is kept unless a more laborious one saves more than this share: common practice, no source. */
const WORTH_MORE_WORK = 0.1;

/** Tried slopes on one ground: the gentlest that passes, else the one nearest to the rule. */
function gentlest(
  site: Site,
  plan: LayoutPlan,
  ground: BoardGround,
  steepest: number,
): { built: Built; passes: boolean } {
  const rule = site.given.faceInPerFt;
  let last: Built | null = null;
  for (const slope of slopesFor(site, ground.patches)) {
    if (slope > steepest + 1e-9) break;
    const built = build(site, plan, slope, baseOf(site), ground);
    if (waterRejection(site, built) === null) return { built, passes: true };
    if (last === null || Math.abs(slope - rule) <= Math.abs(last.slopeInPerFt - rule)) last = built;
  }
  return { built: last ?? build(site, plan, rule, baseOf(site), ground), passes: false };
}

/** The base filled only where the boards alone would not carry the water away. */
function filledVariant(site: Site, plain: Built): Built | null {
  const { faceInPerFt, valleyInPerFt, strict } = site.given;
  const face = faceRule(site);
  const wayInPerFt = strict ? faceInPerFt : Math.min(FILL_WAY_IN_PER_FT, valleyInPerFt, face);
  const one = filled(site, plain, { wayInPerFt, faceInPerFt: face });
  return one !== null && waterRejection(site, one) === null ? one : null;
}

/** Grounds that a crew could make of the base, the simplest first. */
function otherGrounds(site: Site): BoardGround[] {
  const others = groundsOf(site).slice(1);
  const sloped = site.base.some(({ plane }) => slopeInPerFt(plane) > 1e-9);
  return others.length > 0 || !sloped ? others : [deadLevel(site)];
}

/**
 * The gentlest boards and the simplest ground with which a plan drains in both senses.
 * Where the boards on the base as read do not do it at the slope of the rule, steeper boards, levelling and fill by the
 * least-path rule are tried; the one with the least board and fill is taken, a simpler one where it costs little more.
 * Where nothing drains, the attempt nearest to the rule is given back, so that the reason can be told.
 */
export function buildPlan(site: Site, plan: LayoutPlan): Built {
  const rule = site.given.faceInPerFt;
  const plain = gentlest(site, plan, asRead(site), rule);
  if (plain.passes) return plain.built;
  // On readings steep boards would only pay for what levelling does better.
  const uneven = site.measured.readings.length > 0 || site.measured.sag !== undefined;
  const tries = [
    ...(uneven ? [] : [gentlest(site, plan, asRead(site), STEEPEST_IN_PER_FT)]),
    ...otherGrounds(site).map((ground) => gentlest(site, plan, ground, STEEPEST_IN_PER_FT)),
  ];
  const fill = filledVariant(site, plain.built);
  const passing = [...tries.filter(({ passes }) => passes).map(({ built }) => built), ...(fill === null ? [] : [fill])];
  if (passing.length === 0) return tries.at(-1)?.built ?? plain.built;
  const best = passing.reduce((a, b) => (builtBoardFt(b) < builtBoardFt(a) * (1 - WORTH_MORE_WORK) ? b : a));
  const others = passing
    .filter((one) => one !== best)
    .map((one) => ({ how: one.ground.how, boardFt: builtBoardFt(one) }));
  return { ...best, others };
}
