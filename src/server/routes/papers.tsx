import type { Hono } from 'hono';
import { EstimatePage } from '../../../views/pages/estimate-page.tsx';
import { OwnerPage } from '../../../views/pages/owner-page.tsx';
import { ResultPage } from '../../../views/pages/result-page.tsx';
import { SupplierRequestPage } from '../../../views/pages/supplier-request-page.tsx';
import { shownLayout } from '../../core/report/page-layouts.ts';
import type { Assessment, Layout } from '../../core/report/types.ts';
import { boardPlan } from '../../drawing/board-plan.ts';
import type { DrawList } from '../../drawing/draw-list.ts';
import { planAfter } from '../../drawing/plan-after.ts';
import { planBefore } from '../../drawing/plan-before.ts';
import { printSvg } from '../../drawing/svg.ts';
import { NotThere, roofOf, type Shop } from '../context.ts';
import { linksOfRoof, respond, settingOf } from '../respond.tsx';
import { answerOf } from './answer-of.ts';

const papers = { estimate: EstimatePage, owner: OwnerPage, supplier: SupplierRequestPage } as const;

const drawings: Readonly<Record<string, (assessment: Assessment, layout: Layout | null) => DrawList | null>> = {
  before: planBefore,
  after: (assessment, layout) => (layout === null ? null : planAfter(assessment, layout)),
  boards: (assessment, layout) => (layout === null ? null : boardPlan(assessment, layout)),
};

/** The answer, the papers of the three readers, and their drawings by themselves. */
export function paperRoutes(app: Hono, shop: Shop): void {
  app.get('/roofs/:id', (c) => {
    const roof = roofOf(shop, c);
    const { assessment } = answerOf(shop, roof);
    const setting = settingOf(linksOfRoof(roof.id));
    const layoutId = c.req.query('layout') ?? null;
    return respond(c, { page: () => <ResultPage assessment={assessment} setting={setting} layoutId={layoutId} /> });
  });

  for (const [name, Paper] of Object.entries(papers)) {
    app.get(`/roofs/:id/${name}`, (c) => {
      const roof = roofOf(shop, c);
      const { assessment } = answerOf(shop, roof);
      return respond(c, { page: () => <Paper assessment={assessment} setting={settingOf(linksOfRoof(roof.id))} /> });
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
