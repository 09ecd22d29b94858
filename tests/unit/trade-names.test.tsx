import { describe, expect, it } from 'vitest';
import { belowNames, coveringNames, deckNames, taperRuleNames } from '../../src/core/kind-names.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { pipeKinds } from '../../src/input/choices.ts';
import type { PageSetting } from '../../views/page-setting.ts';
import { CrewSheetPage } from '../../views/pages/crew-sheet-page.tsx';
import { EstimatePage } from '../../views/pages/estimate-page.tsx';
import { KitchenTablePage } from '../../views/pages/kitchen-table-page.tsx';
import { OwnerPage } from '../../views/pages/owner-page.tsx';
import { ResultPage } from '../../views/pages/result-page.tsx';
import { SupplierRequestPage } from '../../views/pages/supplier-request-page.tsx';
import { smallRoof } from './owner-roofs.ts';

const setting: PageSetting = { links: null, style: { text: '' }, dateText: null };
const papers = [ResultPage, EstimatePage, CrewSheetPage, OwnerPage, KitchenTablePage, SupplierRequestPage];

/** Ids that are no words of the trade as they stand: every one with a hyphen, and abbreviations in small letters. */
const ids = [belowNames, coveringNames, deckNames, taperRuleNames, pipeKinds]
  .flatMap((names) => Object.keys(names))
  .filter((id) => id.includes('-') || ['app', 'tpo', 'pvc', 'epdm', 'osb'].includes(id));
const raw = new RegExp(`(?<![\\w-])(${ids.join('|')})(?![\\w-])`, 'g');

async function rawIn(assessment: Assessment): Promise<string[]> {
  const pages = await Promise.all(papers.map(async (Paper) => String(await Paper({ assessment, setting }))));
  return pages.flatMap((page) => {
    const words = page.slice(page.indexOf('<main')).replaceAll(/<[^>]+>/g, ' | ');
    return [...words.matchAll(raw)].map(({ index }) => words.slice(Math.max(0, index - 60), index + 40));
  });
}

describe('papers name kinds in words of the trade and print no id of the roof file', () => {
  it.each(Object.keys(coveringNames))('an old covering of %s', async (kind) => {
    const flat = { existing: { planes: [{ slopeInPerFt: 0.0625, fallsToward: { side: 0 } }], readOn: 'covering' } };
    const assessment = smallRoof({ ...flat, covering: { kind, layers: 1 } });
    expect(await rawIn(assessment)).toEqual([]);
    const named = coveringNames[kind as keyof typeof coveringNames];
    expect(assessment.materials.find(({ id }) => id === 'tear-off')?.basis).toContain(`1 layer of ${named} at`);
  });

  it.each(Object.keys(deckNames))('a deck of %s', async (kind) => {
    expect(await rawIn(smallRoof({ deck: { kind, thicknessIn: 0.5 }, building: { below: 'attic' } }))).toEqual([]);
  });

  it('what was taken where nothing was said', async () => {
    const assessment = smallRoof({ covering: {}, place: { city: 'Minneapolis, MN' } });
    expect(await rawIn(assessment)).toEqual([]);
    const taken = Object.fromEntries(assessment.assumed.map(({ path, value }) => [path, value]));
    expect(taken).toMatchObject({
      'building.below': belowNames['living-exposed-deck'],
      'ruleSet.local.taperRule': taperRuleNames['average-u'],
      'slopeRule.strict': 'valleys may be flatter than planes',
    });
  });

  it('pipes of every kind', async () => {
    const pipes = Object.keys(pipeKinds).map((kind, i) => ({ at: [3 + 2 * i, 6], kind, diameterIn: 3, topIn: 6 }));
    const assessment = smallRoof({ pipes });
    expect(await rawIn(assessment)).toEqual([]);
    expect(assessment.budgets.map(({ where }) => where)).toContain('plumbing vent 1');
  });
});
