import type { Hono } from 'hono';
import { EstimatePage } from '../../../views/pages/estimate-page.tsx';
import { KitchenTablePage } from '../../../views/pages/kitchen-table-page.tsx';
import { OwnerPage } from '../../../views/pages/owner-page.tsx';
import { ResultPage } from '../../../views/pages/result-page.tsx';
import { RulesPage } from '../../../views/pages/rules-page.tsx';
import { SupplierRequestPage } from '../../../views/pages/supplier-request-page.tsx';
import { shownLayout } from '../../core/report/page-layouts.ts';
import type { Assessment, Layout } from '../../core/report/types.ts';
import { boardPlan } from '../../drawing/board-plan.ts';
import type { DrawList } from '../../drawing/draw-list.ts';
import { findingsPlan } from '../../drawing/findings-plan.ts';
import { loadLadderDrawing } from '../../drawing/load-ladder.ts';
import { planAfter } from '../../drawing/plan-after.ts';
import { planBefore } from '../../drawing/plan-before.ts';
import { planHeights } from '../../drawing/plan-heights.ts';
import { cutsThrough } from '../../drawing/section-profile.ts';
import { printSvg } from '../../drawing/svg.ts';
import { waterMap } from '../../drawing/water-map.ts';
import { NotThere, roofOf, type Shop } from '../context.ts';
import { respond, settingOfRoof } from '../respond.tsx';
import { answerForPage, answerOf } from './answer-of.ts';

const papers = {
  estimate: EstimatePage,
  owner: OwnerPage,
  'kitchen-table': KitchenTablePage,
  supplier: SupplierRequestPage,
  rules: RulesPage,
} as const;

const drawings: Readonly<Record<string, (assessment: Assessment, layout: Layout | null) => DrawList | null>> = {
  before: (assessment) => planBefore(assessment),
  after: (assessment, layout) => (layout === null ? null : planAfter(assessment, layout)),
  heights: (assessment, layout) =>
    layout === null ? null : planHeights(assessment, layout, cutsThrough(assessment, layout)),
  boards: (assessment, layout) => (layout === null ? null : boardPlan(assessment, layout)),
  'water-today': (assessment) => waterMap(assessment, null),
  'water-new': (assessment, layout) => (layout === null ? null : waterMap(assessment, layout)),
  findings: (assessment) => ((assessment.inspection ?? []).length === 0 ? null : findingsPlan(assessment)),
  levels: ({ existing }) => loadLadderDrawing(existing),
};

/** The answer, the papers of the three readers, and their drawings by themselves. */
export function paperRoutes(app: Hono, shop: Shop): void {
  app.get('/roofs/:id', (c) => {
    const roof = roofOf(shop, c);
    const { assessment } = answerForPage(shop, c, roof);
    const setting = settingOfRoof(roof);
    const layoutId = c.req.query('layout') ?? null;
    return respond(c, { page: () => <ResultPage assessment={assessment} setting={setting} layoutId={layoutId} /> });
  });

  for (const [name, Paper] of Object.entries(papers)) {
    app.get(`/roofs/:id/${name}`, (c) => {
      const roof = roofOf(shop, c);
      const { assessment } = answerForPage(shop, c, roof);
      return respond(c, { page: () => <Paper assessment={assessment} setting={settingOfRoof(roof)} /> });
    });
  }

  app.get('/roofs/:id/drawings/:file', (c) => {
    const { assessment } = answerOf(shop, roofOf(shop, c));
    const name = c.req.param('file').replace(/\.svg$/, '');
    const draw = Object.hasOwn(drawings, name) ? drawings[name] : undefined;
    const list = draw?.(assessment, shownLayout(assessment, c.req.query('layout') ?? null)) ?? null;
    if (list === null) throw new NotThere('There is no drawing of that name.');
    return c.body(printSvg(list, { id: name, standalone: true }), 200, {
      'Content-Type': 'image/svg+xml; charset=utf-8',
      'Cache-Control': 'no-store',
    });
  });
}
