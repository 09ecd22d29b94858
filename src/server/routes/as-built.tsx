import type { Hono } from 'hono';
import { CrewSheetPage } from '../../../views/pages/crew-sheet-page.tsx';
import { shownLayout } from '../../core/report/page-layouts.ts';
import type { Layout } from '../../core/report/types.ts';
import type { SavedRoof } from '../../store/store.ts';
import type { Answer } from '../answers.ts';
import { asBuiltForm, heightField, readHeights } from '../as-built-form.ts';
import { NotThere, postedBy, roofOf, type Shop } from '../context.ts';
import { respond, settingOfRoof } from '../respond.tsx';
import { answerOf } from './answer-of.ts';

type Typed = Readonly<Record<string, string>>;

/** The layout that the crew lays: the chosen one, where one fits. */
function layoutToLay({ assessment }: Answer): Layout | null {
  const layout = shownLayout(assessment);
  return layout === null || layout.rejected !== null ? null : layout;
}

function crewSheet(roof: SavedRoof, answer: Answer, layout: Layout | null, typed: Typed | null) {
  const form = layout === null || typed === null ? null : asBuiltForm(answer, layout, typed);
  const setting = settingOfRoof(roof);
  return {
    ok: form === null || form.problems.length === 0,
    page: () => <CrewSheetPage assessment={answer.assessment} setting={setting} asBuilt={form} />,
  };
}

/** The crew sheet with the heights that were typed last, and where such heights are sent. */
export function asBuiltRoutes(app: Hono, shop: Shop): void {
  app.get('/roofs/:id/crew', (c) => {
    const roof = roofOf(shop, c);
    const answer = answerOf(shop, roof);
    const layout = layoutToLay(answer);
    const saved = layout === null ? null : shop.store.readingsOf(roof.id, layout.id);
    const { page } = crewSheet(roof, answer, layout, saved?.typed ?? null);
    return respond(c, { page });
  });

  app.get('/roofs/:id/as-built', (c) => c.redirect(`/roofs/${roofOf(shop, c).id}/crew#as-laid`, 302));

  app.post('/roofs/:id/as-built', async (c) => {
    const roof = roofOf(shop, c);
    const answer = answerOf(shop, roof);
    const layout = layoutToLay(answer);
    if (layout === null) throw new NotThere('No layout fits this roof, so there is nothing laid to judge.');
    const posted = await postedBy(c);
    const typed = Object.fromEntries(
      layout.checkPoints.map(({ id }) => [heightField(id), posted[heightField(id)] ?? '']),
    );
    shop.store.addReadings(roof.id, layout.id, typed, readHeights(layout, typed).read);
    const { page, ok } = crewSheet(roof, answer, layout, typed);
    return respond(c, { page, status: ok ? 200 : 422 });
  });
}
