import type { Assessment, Layout } from '../../src/core/report/types.ts';
import { heightsCaption, planHeights } from '../../src/drawing/plan-heights.ts';
import { cutsThrough } from '../../src/drawing/section-profile.ts';
import type { PageLinks } from '../page-setting.ts';
import { Figure } from './figure.tsx';

export interface HeightsPlanProps {
  assessment: Assessment;
  layout: Layout;
  links: PageLinks | null;
}

/** The finished surface by lines of equal height. */
export function HeightsPlan({ assessment, layout, links }: HeightsPlanProps) {
  const list = planHeights(assessment, layout, cutsThrough(assessment, layout));
  if (list === null) return null;
  return (
    <Figure
      list={list}
      id="heights"
      full={links === null ? null : `${links.drawing}/heights.svg?layout=${encodeURIComponent(layout.id)}`}
    >
      {heightsCaption(assessment, layout)}
    </Figure>
  );
}
