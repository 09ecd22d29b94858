import { describe, expect, it } from 'vitest';
import { winterWords } from '../../src/core/report/page-damp.ts';
import { heatDaySentence } from '../../src/core/report/page-heat.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { type PageSetting, roofLinks } from '../../views/page-setting.ts';
import { EstimatePage } from '../../views/pages/estimate-page.tsx';
import { ResultPage } from '../../views/pages/result-page.tsx';
import { assessed, gutterRoof, roofOf } from './takeoff-roofs.ts';

const setting: PageSetting = { links: roofLinks('r 1'), style: { href: '/style.css' }, dateText: '3 May, dry' };
const answer = (more: Record<string, unknown>): Assessment =>
  assessed(roofOf(gutterRoof(30, 20, { building: { heightFt: 10, below: 'living-exposed-deck' }, ...more })));
const pages = { estimate: EstimatePage, answer: ResultPage };

async function text(Page: (typeof pages)[keyof typeof pages], assessment: Assessment): Promise<string> {
  const html = String(await (<Page assessment={assessment} setting={setting} />));
  return html
    .replaceAll(/<sup.*?<\/sup>/gs, '')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll(/\s+/g, ' ');
}

describe.each(Object.entries(pages))('%s page', (_, Page) => {
  const chicago = { place: { city: 'Chicago', state: 'IL' }, ruleSet: { building: 'irc-2021' } };

  it('names the R of the job and that of the code each by its owner', async () => {
    const page = await text(Page, answer({ ...chicago, insulation: { targetR: 30 } }));
    expect(page).toContain('To reach: R-30 (the target set for this job, which is no rule of the code)');
    expect(page).toContain('The code’s table asks for R-60');
    expect(page).toContain('Insulation held against the target of this job, R-30');
    expect(page).toContain('The target set for this job is R-30: that is its own wish and no rule of the code.');
    expect(page).not.toContain('What the energy code asks of it');
  });

  it('without a target of the job it is the code in both places, and the U is the same', async () => {
    const page = await text(Page, answer(chicago));
    expect(page).toContain('To reach: R-60 (the code: residential ceiling, IECC 2021), or U 0.024');
    expect(page).not.toContain('target set for this job');
    expect(page).not.toContain('U 0.016');
  });

  it('says what would settle a rule that is not known', async () => {
    const page = await text(
      Page,
      answer({ place: { city: 'Sacramento', state: 'CA' }, ruleSet: { building: 'irc-2021' } }),
    );
    expect(page).toContain('What settles it: the California energy zone, 1 to 16');
    expect(page).toContain(
      'No R to reach is known: none was given, and the California energy zone, 1 to 16, is not known.',
    );
  });
});

describe('a roof over an attic', () => {
  it('says that heat into the rooms is reckoned without the vents of the attic', async () => {
    const hot = { place: { city: 'Houston', state: 'TX' } };
    const page = await text(ResultPage, answer({ ...hot, building: { heightFt: 10, below: 'attic' } }));
    expect(page).toContain('No R to reach is known: none was given, and an attic lies below');
    expect(page).toContain('Heat into the rooms under the attic in that day');
    expect(page).toContain('how much its vents carry away was not computed');
    expect(await text(ResultPage, answer(hot))).not.toContain('its vents carry away');
  });
});

describe('a place that is not known', () => {
  const nowhere = answer({ place: { city: 'Smallville' } });
  const known = answer({ place: { city: 'Chicago', state: 'IL' } });

  it.each(Object.values(pages))('%o says beside the figures that the rain is that of another place', async (Page) => {
    const page = await text(Page, nowhere);
    expect(page).toContain('New Orleans, LA; assumed, it stands in for a place that is not known');
    expect(page).toMatch(
      /Outlets .*stand on assumed rain, .*New Orleans|Ways out .*stand on assumed rain, .*New Orleans/,
    );
    expect(await text(Page, known)).not.toMatch(/assumed rain|stands in for/);
  });

  it('the hot day and the winter are told as those of another town', () => {
    expect(heatDaySentence(nowhere.heat!)).toContain('weather of St Louis, MO, assumed');
    expect(heatDaySentence(known.heat!)).not.toContain('assumed');
    expect(winterWords(answer({ place: { city: 'Smallville', climateZone: '6A' } }).moisture!)).toMatch(
      /^Winter of .*, assumed, as the coldest listed place of zone 6A/,
    );
    expect(winterWords(known.moisture!)).not.toContain('assumed');
  });
});
