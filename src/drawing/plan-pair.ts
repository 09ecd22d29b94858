import type { Assessment, Layout } from '../core/report/types.ts';
import type { DrawList } from './draw-list.ts';
import { placeAnchors, placeCss } from './place-css.ts';
import { planAfter } from './plan-after.ts';
import { planBefore } from './plan-before.ts';
import { cutThrough, sectionCut } from './section-cut.ts';

/** The drawings that stand together on a page. */
export interface PlanPair {
  before: DrawList;
  after: DrawList | null;
  sectionBefore: DrawList | null;
  sectionAfter: DrawList | null;
  layoutId: string | null;
  /** Said under the second plan where its layout is not offered. */
  stateWords: string;
  /** Style by which rows of the page mark their places. */
  css: string;
  /** What the rows of the page may link to. */
  anchors: ReadonlySet<string>;
}

/** Before and after of one layout, with the section through the worst water. */
export function planPair(assessment: Assessment, layout: Layout | null): PlanPair {
  const before = planBefore(assessment);
  const after = layout === null ? null : planAfter(assessment, layout);
  const placed = [{ id: 'before', list: before }, ...(after === null ? [] : [{ id: 'after', list: after }])];
  const cut = cutThrough(assessment, layout);
  return {
    before,
    after,
    sectionBefore: sectionCut(assessment, null, cut),
    sectionAfter: layout === null ? null : sectionCut(assessment, layout, cut),
    layoutId: layout?.id ?? null,
    stateWords: layout?.rejected == null ? '' : 'Tried and rejected, drawn to show why.',
    css: placeCss(placed),
    anchors: placeAnchors(placed),
  };
}
