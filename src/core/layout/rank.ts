import type { Layout, LayoutCost } from '../report/types.ts';
import type { Prices } from '../roof.ts';
import type { LayoutPlan } from './plan.ts';
import { fourWayShape } from './shape.ts';

/** What everything costs against one another. */
export interface Rates {
  boardFt: number;
  drain: number;
  scupper: number;
  edgeFt: number;
  parapetFt: number;
  /** True where they are the user's prices. */
  own: boolean;
}

/** Board feet that the work at the edges is worth: common practice, no source. */
const usual: Rates = { boardFt: 1, scupper: 800, drain: 2500, edgeFt: 25, parapetFt: 80, own: false };

/** The user's prices where the board foot has one, what is left open at its usual share of it; else board feet. */
export function ratesOf(prices: Prices): Rates {
  const { boardFt } = prices;
  if (boardFt === null || boardFt <= 0) return usual;
  const rate = (key: 'drain' | 'scupper' | 'edgeFt' | 'parapetFt'): number => prices[key] ?? usual[key] * boardFt;
  return {
    boardFt,
    drain: rate('drain'),
    scupper: rate('scupper'),
    edgeFt: rate('edgeFt'),
    parapetFt: rate('parapetFt'),
    own: true,
  };
}

/** A new way out that saves less of the boards than this does not lead: common practice, no source. */
const WORTH_CHANGING = 0.03;

/** A form that takes more cutting than four planes must save so much to lead: common practice, no source. */
const WORTH_CUTTING = 0.1;

/** New ways out of a plan. */
export const newOutletsOf = ({ newEdges, outlets }: LayoutPlan): number =>
  newEdges.size + outlets.filter(({ status }) => status === 'proposed').length;

/** What a layout takes in boards, levelling and work at the edges. */
export interface Taken {
  plan: LayoutPlan;
  boardFt: number;
  levellingBoardFt: number;
}

/** What is new at the edges, by kind. */
function newWork({ edges, newEdges, outlets }: LayoutPlan, rates: Rates): LayoutCost['parts'] {
  const opened = edges.filter(({ id }) => newEdges.has(id));
  const along = (parapet: boolean): number =>
    opened.reduce((sum, { edge, lengthFt }) => ((edge.kind === 'parapet') === parapet ? sum + lengthFt : sum), 0);
  const fresh = (kind: 'drain' | 'scupper'): number =>
    outlets.filter((outlet) => outlet.status === 'proposed' && outlet.kind === kind).length;
  return [
    { what: 'new drains', count: fresh('drain'), unit: '', rate: rates.drain },
    { what: 'new scuppers', count: fresh('scupper'), unit: '', rate: rates.scupper },
    { what: 'new gutters', count: along(false), unit: 'ft', rate: rates.edgeFt },
    { what: 'parapets cut down', count: along(true), unit: 'ft', rate: rates.parapetFt },
  ].filter(({ count }) => count > 0);
}

/** Cost of a layout part by part, at the user's prices or in board feet. */
export function costOf({ plan, boardFt, levellingBoardFt }: Taken, rates: Rates): LayoutCost {
  const parts = [
    { what: 'boards', count: boardFt, unit: 'board ft', rate: rates.boardFt },
    { what: 'levelling', count: levellingBoardFt, unit: 'board ft', rate: rates.boardFt },
    ...newWork(plan, rates),
  ].filter(({ count }) => count > 0);
  return { own: rates.own, amount: parts.reduce((sum, { count, rate }) => sum + count * rate, 0), parts };
}

/** The same with what cutting and a change at the edges must save to be worth it: what layouts are compared by. */
export function weighedCost(taken: Taken, rates: Rates): number {
  const { plan, boardFt } = taken;
  const changing = 1 + WORTH_CHANGING * newOutletsOf(plan);
  // Four planes that are turned are still four planes.
  const plain = plan.form === undefined || plan.form.shape === fourWayShape;
  const cutting = 1 + (plain ? 0 : WORTH_CUTTING);
  return costOf(taken, rates).amount + boardFt * rates.boardFt * (changing * cutting - 1);
}

/** Somebody's leave is asked before water leaves over an edge or through its parapet. */
export const needsLeave = ({ asks }: LayoutPlan): boolean => asks !== undefined;

/** Offered before rejected, good valleys before slow ones, then by cost. */
export function rank({ layout, plan }: { layout: Layout; plan: LayoutPlan }, rates: Rates): number {
  // What needs somebody's leave first never leads.
  const grade = (layout.valleyGrade === 'good' ? 0 : 1e7) + (needsLeave(plan) ? 1e8 : 0);
  const { volumeBoardFt: boardFt, levellingBoardFt } = layout;
  // In board feet, so that no price outweighs a grade.
  const cost = weighedCost({ plan, boardFt, levellingBoardFt }, rates) / rates.boardFt;
  return (layout.rejected === null ? 0 : 1e9) + grade + cost;
}
