import { describe, expect, it } from 'vitest';
import { assessText } from '../../src/cli/assess-text.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { type PageSetting, roofLinks } from '../../views/page-setting.ts';
import { CrewSheetPage } from '../../views/pages/crew-sheet-page.tsx';
import { EstimatePage } from '../../views/pages/estimate-page.tsx';
import { SupplierRequestPage } from '../../views/pages/supplier-request-page.tsx';
import { assessed, gutterRoof, roofOf } from './takeoff-roofs.ts';

const setting: PageSetting = { links: roofLinks('r 1'), style: { href: '/style.css' }, dateText: '3 May, dry' };
const drains = { planes: [{ slopeInPerFt: 0.25, fallsToward: { side: 0 } }], readOn: 'deck' };

async function papers(assessment: Assessment): Promise<string[]> {
  const pages = [
    <SupplierRequestPage assessment={assessment} setting={setting} />,
    <CrewSheetPage assessment={assessment} setting={setting} />,
    <EstimatePage assessment={assessment} setting={setting} />,
  ];
  const html = await Promise.all(pages.map(async (page) => String(await page)));
  return [...html, assessText(assessment).replaceAll(/\s+/g, ' ')];
}

describe('flat boards on a deck that drains', () => {
  const planned = assessed(roofOf(gutterRoof(30, 20, { existing: drains, insulation: { flatIn: 2 } })));

  it('are told as planned, with how many, and no paper says that no layout fits', async () => {
    expect(planned.flatBoards?.used).toBe(true);
    for (const paper of await papers(planned)) {
      expect(paper).toContain('Flat boards are planned, so no layout was looked for.');
      // 600 sq ft in boards of 32.
      expect(paper).toContain('19 boards of 4 x 8 ft in each layer before waste');
      expect(paper).toContain('the material list is made for tapered roofs only');
      expect(paper).not.toMatch(/No layout fits|No list before|combinations of outlets/);
    }
  });

  it('where a taper was looked for and none fits, that is still said', async () => {
    const edges = [
      { side: 0, kind: 'gutter', mayDrain: 'yes' },
      { side: 1, kind: 'rake', mayDrain: 'no' },
      { side: 2, kind: 'wall', mayDrain: 'no', openings: [{ kind: 'door', fromFt: 4, toFt: 7, heightIn: 3 }] },
      { side: 3, kind: 'rake', mayDrain: 'no' },
    ];
    const tight = assessed(roofOf(gutterRoof(30, 20, { edges, insulation: { flatIn: 2 } })));
    expect(tight.chosenLayout).toBeNull();
    for (const paper of (await papers(tight)).slice(0, 2)) {
      expect(paper).toContain('No layout fits');
      expect(paper).not.toContain('Flat boards are planned');
    }
  });
});
