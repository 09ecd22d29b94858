import { coverBoard } from '../../../reference/insulation.ts';
import { type Judgement, judge } from '../drainage/judge.ts';
import type { Section } from '../geometry/section.ts';
import { waysOut } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import { meshOf } from '../surface/mesh.ts';
import { laidOn, type Patch, raisedBy } from '../surface/patch.ts';
import { envelope } from '../taper/envelope.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import type { BoardGround } from './ground.ts';
import { type LayoutPlan, startsOf } from './plan.ts';

/** A plan turned into a surface and judged. */
export interface Built {
  plan: LayoutPlan;
  slopeInPerFt: number;
  baseIn: number;
  ground: BoardGround;
  section: Section;
  starts: readonly TaperOutlet[];
  /** Thickness of the boards over the ground. */
  thickness: readonly Patch[];
  judgement: Judgement;
}

/** Builds the finished surface (ground, boards, cover board) and floods it. */
export function build(site: Site, plan: LayoutPlan, slopeInPerFt: number, baseIn: number, ground: BoardGround): Built {
  const starts = startsOf(site, plan, slopeInPerFt, baseIn);
  const thickness = envelope(site.section, starts);
  const finished = raisedBy(laidOn(ground.patches, thickness), coverBoard.thicknessIn);
  const points = starts.flatMap((start) => (start.kind === 'point' ? [start.at] : []));
  const mesh = meshOf(finished, points);
  const { offers, openAt } = waysOut(site, mesh, {
    outlets: plan.outlets,
    opened: new Set(plan.edges.map(({ id }) => id)),
  });
  return {
    plan,
    slopeInPerFt,
    baseIn,
    ground,
    section: site.section,
    starts,
    thickness,
    judgement: judge(mesh, offers, openAt),
  };
}
