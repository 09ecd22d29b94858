import type { Assessment, Layout } from '../core/report/types.ts';
import type { DrawList } from './draw-list.ts';
import { placeCss, placesDrawn } from './place-css.ts';
import { planAfter } from './plan-after.ts';
import { planBefore } from './plan-before.ts';
import { sectionCut } from './section-cut.ts';
import { type Cut, cutsThrough } from './section-profile.ts';

/** So much taller than wide, plans are larger side by side than one over the other. */
const TALL = 1.25;

/** One cut, before and after. */
export interface SectionPair {
  name: string;
  before: DrawList | null;
  after: DrawList | null;
}

/** The drawings that stand together on a page. */
export interface PlanPair {
  before: DrawList;
  after: DrawList | null;
  /** Through the worst water, along and across. */
  sections: readonly SectionPair[];
  layoutId: string | null;
  /** Plans that are much taller than wide stand side by side even where there is little room. */
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
  const cuts = cutsThrough(assessment, layout);
  const before = planBefore(assessment, cuts);
  const after = layout === null ? null : planAfter(assessment, layout, cuts);
  const places = placesDrawn(after === null ? [before] : [before, after]);
  return {
    before,
    after,
    sections: sectionPairs(assessment, layout, cuts),
    layoutId: layout?.id ?? null,
    tall: before.box.maxY - before.box.minY > TALL * (before.box.maxX - before.box.minX),
    stateWords: layout?.rejected == null ? '' : 'Tried and rejected, drawn to show why.',
    css: placeCss(places),
    places,
  };
}

/** Every cut through the roof as it is and, with a layout, through the new one. */
export const sectionPairs = (assessment: Assessment, layout: Layout | null, cuts: readonly Cut[]): SectionPair[] =>
  cuts.map((cut) => ({
    name: cut.name,
    before: sectionCut(assessment, null, cut),
    after: layout === null ? null : sectionCut(assessment, layout, cut),
  }));
