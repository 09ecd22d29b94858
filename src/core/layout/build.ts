import { coverBoard } from '../../../reference/insulation.ts';
import { type Judgement, judge } from '../drainage/judge.ts';
import type { Section } from '../geometry/section.ts';
import { type WaysOut, waysOut } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import { type FillRule, leastPathFill } from '../surface/least-path-fill.ts';
import { meshOf, type SurfaceMesh } from '../surface/mesh.ts';
import { laidOn, type Patch, raisedBy } from '../surface/patch.ts';
import { envelope } from '../taper/envelope.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import { type Sump, withSumps } from '../taper/sump.ts';
import { type BoardGround, filledGround } from './ground.ts';
import { type LayoutPlan, startsOf } from './plan.ts';
import { sumpsFor } from './sumps.ts';
import { momentsOf } from './thermal.ts';

/** A plan turned into a surface and judged. */
export interface Built {
  plan: LayoutPlan;
  slopeInPerFt: number;
  baseIn: number;
  ground: BoardGround;
  section: Section;
  starts: readonly TaperOutlet[];
  sumps: readonly Sump[];
  /** Why there are none; null where there are. */
  noSumps: string | null;
  /** What the sumps take out of the taper. */
  sumpBoardFt: number;
  /** Thickness of the boards over the ground. */
  thickness: readonly Patch[];
  judgement: Judgement;
  /** Least fall of the ways of the water for which the base was filled. */
  fillWayInPerFt?: number;
  /** Other grounds on which the same plan drains, with all their board feet. */
  others?: readonly { how: BoardGround['how']; boardFt: number }[];
}

const waysOf = (site: Site, plan: LayoutPlan, mesh: SurfaceMesh): WaysOut =>
  waysOut(site, mesh, { outlets: plan.outlets, opened: new Set(plan.edges.map(({ id }) => id)) });

/** Builds the finished surface (ground, boards, cover board) and floods it. */
export function build(site: Site, plan: LayoutPlan, slopeInPerFt: number, baseIn: number, ground: BoardGround): Built {
  const starts = startsOf(site, plan, slopeInPerFt, baseIn);
  const field = envelope(site.section, starts);
  const wanted = sumpsFor(site, plan, starts, slopeInPerFt, baseIn);
  const { patches: thickness, made: sumps } = withSumps(field, wanted.sumps);
  const finished = raisedBy(laidOn(ground.patches, thickness), coverBoard.thicknessIn);
  const points = starts.flatMap((start) => (start.kind === 'point' ? [start.at] : []));
  const mesh = meshOf(finished, points);
  const { offers, openAt } = waysOf(site, plan, mesh);
  return {
    plan,
    slopeInPerFt,
    baseIn,
    ground,
    section: site.section,
    starts,
    sumps,
    noSumps: sumps.length > 0 ? null : (wanted.why ?? 'something stands too near to the drain'),
    sumpBoardFt: sumps.length === 0 ? 0 : momentsOf(field).boardFt - momentsOf(thickness).boardFt,
    thickness,
    judgement: judge(mesh, offers, openAt),
  };
}

/**
 * The same plan with the base filled by the least-path rule under the boards, and judged again.
 * @returns null where no fill helps: nothing is too flat, or a part has no way out
 */
export function filled(site: Site, built: Built, rule: FillRule): Built | null {
  const { plan, judgement } = built;
  const { offers, openAt } = waysOf(site, plan, judgement.mesh);
  const primary = plan.outlets.filter(({ role, working }) => role === 'primary' && working);
  const leads = new Set([...primary, ...plan.edges].map(({ id }) => id));
  const ways = {
    offers: offers.filter(({ outlet }) => leads.has(outlet)),
    isOpen: (slot: number): boolean => openAt(slot) !== null,
  };
  const fill = leastPathFill(judgement.mesh, ways, rule);
  if (fill === null) return null;
  return {
    ...built,
    ground: filledGround(built.ground, fill),
    judgement: judge(fill.surface, offers, openAt),
    fillWayInPerFt: rule.wayInPerFt,
  };
}

/** Fill and boards over the base: what the heights at walls and doors have to bear, less the cover board. */
export function overBase({ ground, thickness }: Pick<Built, 'ground' | 'thickness'>): readonly Patch[] {
  return ground.fill.length === 0 ? thickness : laidOn(ground.fill, thickness);
}

/** Board feet of everything under the cover board, fill and boards. */
export const builtBoardFt = ({ thickness, ground }: Pick<Built, 'ground' | 'thickness'>): number =>
  momentsOf(thickness).boardFt + ground.levellingBoardFt;
