import type { Layout } from '../report/types.ts';
import type { LayoutPlan } from './plan.ts';

/** Board feet that the work at the edges is worth: common practice, no source. */
const workBoardFt = { scupper: 800, drain: 2500, edgeFt: 25, parapetFt: 80 };

function edgeWorkBoardFt(plan: LayoutPlan): number {
  const edges = plan.edges.filter(({ id }) => plan.newEdges.has(id));
  const opened = edges.reduce(
    (sum, { edge, lengthFt }) =>
      sum + lengthFt * (edge.kind === 'parapet' ? workBoardFt.parapetFt : workBoardFt.edgeFt),
    0,
  );
  return plan.outlets.reduce((sum, { status, kind }) => sum + (status === 'proposed' ? workBoardFt[kind] : 0), opened);
}

/** A new way out that saves less of the boards than this does not lead: common practice, no source. */
const WORTH_CHANGING = 0.03;

/** A form that takes more cutting than four planes must save so much to lead: common practice, no source. */
const WORTH_CUTTING = 0.1;

/** New ways out of a plan. */
export const newOutletsOf = ({ newEdges, outlets }: LayoutPlan): number =>
  newEdges.size + outlets.filter(({ status }) => status === 'proposed').length;

/** What a layout takes in boards, levelling and work at the edges, as board feet. */
export function costBoardFt(plan: LayoutPlan, boardFt: number, levellingBoardFt: number): number {
  const cutting = plan.form === undefined ? 0 : WORTH_CUTTING;
  return boardFt * (1 + WORTH_CHANGING * newOutletsOf(plan)) * (1 + cutting) + levellingBoardFt + edgeWorkBoardFt(plan);
}

/** Somebody's leave is asked before an edge is opened. */
export const needsLeave = (plan: LayoutPlan): boolean =>
  plan.edges.some(({ id, edge }) => plan.newEdges.has(id) && edge.mayDrain !== 'yes');

/** Offered before rejected, good valleys before slow ones, then by boards, levelling and work at the edges. */
export function rank({ layout, plan }: { layout: Layout; plan: LayoutPlan }): number {
  // What needs somebody's leave first never leads.
  const grade = (layout.valleyGrade === 'good' ? 0 : 1e7) + (needsLeave(plan) ? 1e8 : 0);
  return (
    (layout.rejected === null ? 0 : 1e9) + grade + costBoardFt(plan, layout.volumeBoardFt, layout.levellingBoardFt)
  );
}
