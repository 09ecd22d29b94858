import type { Assessment, Layout } from '../core/report/types.ts';
import type { DrawList } from './draw-list.ts';
import { placeCss, placesDrawn } from './place-css.ts';
import { planAfter } from './plan-after.ts';
import { planBefore } from './plan-before.ts';
import { sectionCut } from './section-cut.ts';
import { cutThrough } from './section-profile.ts';

/** The drawings that stand together on a page. */
export interface PlanPair {
  before: DrawList;
  after: DrawList | null;
  sectionBefore: DrawList | null;
  sectionAfter: DrawList | null;
  layoutId: string | null;
  /** Plans that are taller than wide stand side by side even where there is little room. */
  tall: boolean;
  /** Said under the second plan where its layout is not offered. */
  stateWords: string;
  /** Style by which rows of the page mark their places. */
  css: string;
  /** What the rows of the page may point at. */
  places: ReadonlySet<string>;
}

/** Before and after of one layout, with the section through the worst water. */
export function planPair(assessment: Assessment, layout: Layout | null): PlanPair {
  const before = planBefore(assessment);
  const after = layout === null ? null : planAfter(assessment, layout);
  const places = placesDrawn(after === null ? [before] : [before, after]);
  const cut = cutThrough(assessment, layout);
  return {
    before,
    after,
    sectionBefore: sectionCut(assessment, null, cut),
    sectionAfter: layout === null ? null : sectionCut(assessment, layout, cut),
    layoutId: layout?.id ?? null,
    tall: before.box.maxY - before.box.minY > before.box.maxX - before.box.minX,
    stateWords: layout?.rejected == null ? '' : 'Tried and rejected, drawn to show why.',
    css: placeCss(places),
    places,
  };
}
