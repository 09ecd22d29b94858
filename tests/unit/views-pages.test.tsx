import type { Child } from 'hono/jsx';
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../src/core/report/types.ts';
import type { AsBuiltForm } from '../../views/as-built-types.ts';
import { type PageSetting, roofLinks } from '../../views/page-setting.ts';
import { CrewSheetPage } from '../../views/pages/crew-sheet-page.tsx';
import { EstimatePage } from '../../views/pages/estimate-page.tsx';
import { KitchenTablePage } from '../../views/pages/kitchen-table-page.tsx';
import { OwnerPage } from '../../views/pages/owner-page.tsx';
import { ResultPage } from '../../views/pages/result-page.tsx';
import { SupplierRequestPage } from '../../views/pages/supplier-request-page.tsx';
import { styleSheet } from '../../views/style.ts';
import { byHand, demo } from './drawing-fixture.ts';

const setting: PageSetting = { links: roofLinks('r 1'), style: { href: '/style.css' }, dateText: '3 May, dry' };
const saved: PageSetting = { links: null, style: { text: 'body{}' }, dateText: null };

const html = async (page: Child): Promise<string> => String(await page);

/** Words of a page without its marks. */
const text = (page: string): string =>
  page
    .replaceAll(/<(style|svg)[^>]*>.*?<\/\1>/gs, ' ')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll(/\s+/g, ' ');

const pages = { ResultPage, EstimatePage, CrewSheetPage, OwnerPage, KitchenTablePage, SupplierRequestPage };

const roofs: readonly (readonly [string, Assessment])[] = [
  ['by hand', byHand],
  ['back-section', demo('back-section')],
  ['corner-drain', demo('corner-drain')],
  ['twenty-drains', demo('twenty-drains')],
];

describe.each(roofs)('pages of the roof %s', (_, assessment) => {
  for (const [name, Page] of Object.entries(pages)) {
    for (const [way, given] of [
      ['on a server', setting],
      ['saved as a paper', saved],
    ] as const) {
      it(`${name} ${way}: whole, plain, without script`, async () => {
        const page = await html(<Page assessment={assessment} setting={given} />);
        expect(page).not.toMatch(/undefined|NaN|Infinity|\[object |null</);
        expect(page).not.toContain('<script');
        expect(page).toContain('<html lang="en">');
        expect(page.match(/<h1/g)).toHaveLength(1);
        expect(page.match(/<table/g)?.length ?? 0).toBe(page.match(/<caption/g)?.length ?? 0);
        expect(text(page)).toContain('Invented roof');
        expect(text(page)).toContain('Provisional until the bare deck is shot');
        const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
        expect(ids.length).toBe(new Set(ids).size);
        for (const [, target] of page.matchAll(/href="#([^"]+)"/g)) {
          expect(ids).toContain(target);
        }
      });
    }
  }
});

describe('answer', () => {
  it('says the answer first, then stops, then the plans, then why', async () => {
    const whole = await html(<ResultPage assessment={byHand} setting={setting} />);
    // The list of sections at the top names them all.
    const page = text(whole.replace(/<nav class="jump".*?<\/nav>/s, ''));
    const order = [
      byHand.headline,
      'Only one way out.',
      'The roof as it is.',
      'What decides this',
      'Heights decide first',
      'Layouts compared',
      'What was assumed',
    ];
    const places = order.map((words) => page.indexOf(words));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(Math.min(...places)).toBeGreaterThan(-1);
  });

  it('lists its sections at the top, and every line leads to one', async () => {
    const page = await html(<ResultPage assessment={byHand} setting={setting} />);
    const jump = /<nav class="jump".*?<\/nav>/s.exec(page)?.[0] ?? '';
    const targets = [...jump.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id);
    expect(targets.length).toBeGreaterThan(8);
    for (const id of targets) expect(page).toContain(`<h2 id="${id}"`);
  });

  it('tells the difference in one sentence', async () => {
    const page = text(await html(<ResultPage assessment={byHand} setting={setting} />));
    expect(page).toContain(
      'Today water stands up to 1″ deep over 80 sq ft. Laid so, every plane falls at least 1/4 in/ft and no water stands.',
    );
  });

  it('prints what is left at every height; a broken one in red with its word when that layout is drawn', async () => {
    const chosen = await html(<ResultPage assessment={byHand} setting={setting} />);
    expect(text(chosen)).toContain('door on the wall : 2 1/4″ left');
    expect(text(chosen)).toContain('curb of the skylight : raise it 1 1/2″');
    expect(chosen).toMatch(/data-place="limit-door"><button[^>]*>door on the wall</);
    expect(text(chosen)).toContain('window on the wall: not known');
    const broken = await html(<ResultPage assessment={byHand} setting={setting} layoutId="too-high" />);
    expect(broken).toContain('<b class="stop">3/4″ short</b>');
    expect(text(broken)).toContain('This layout is not offered: the new roof needs 8″ at the door, which has 7 1/4″.');
  });

  it('shows rejected layouts with the reason and what to relax', async () => {
    const page = text(await html(<ResultPage assessment={byHand} setting={setting} />));
    expect(page).toContain('the new roof needs 8″ at the door, which has 7 1/4″');
    expect(page).toContain('To relax: Raise the door by 3/4″.');
  });

  it('marks what is from memory and leads to a source that says so', async () => {
    const page = await html(<ResultPage assessment={byHand} setting={setting} />);
    const [, number] = page.match(/href="#source-(\d+)"[^>]*>\d+ verify/) ?? [];
    expect(page).toMatch(
      new RegExp(`id="source-${number}">From memory, verify, section 1 <span class="quiet">\\(from memory, verify\\)`),
    );
    expect(text(page)).toContain('area sq ft 720, in per hr 3.2');
  });

  it('escapes what people typed', async () => {
    const page = await html(<ResultPage assessment={byHand} setting={setting} />);
    expect(page).toContain('Hand-made section &lt;&quot;&amp;&gt;');
    expect(page).not.toContain('section <"&>');
  });

  it('links every paper of the roof, and nowhere when saved', async () => {
    const page = await html(<ResultPage assessment={byHand} setting={setting} />);
    for (const paper of ['estimate', 'crew', 'owner', 'kitchen-table', 'supplier', 'edit'])
      expect(page).toContain(`href="/roofs/r%201/${paper}"`);
    const paper = await html(<ResultPage assessment={byHand} setting={saved} />);
    expect([...paper.matchAll(/href="([^"]*)"/g)].every(([, href]) => href.startsWith('#'))).toBe(true);
    expect(paper).toContain('<style>body{}</style>');
  });
});

describe('answer where nothing fits', () => {
  const none: Assessment = {
    ...byHand,
    layouts: [byHand.layouts[1]],
    chosenLayout: null,
    relax: 'Raise the door by 3/4″.',
    materials: [],
  };

  it('says what to relax and draws what was tried', async () => {
    const page = text(await html(<ResultPage assessment={none} setting={setting} />));
    expect(page).toContain('What to relax first: Raise the door by 3/4″.');
    expect(page).toContain('Tried and rejected, drawn to show why.');
  });

  it('gives the crew and the supplier nothing to lay or to sell', async () => {
    for (const Page of [CrewSheetPage, SupplierRequestPage]) {
      const page = text(await html(<Page assessment={none} setting={setting} />));
      expect(page).toContain('Stop No layout fits');
      expect(page).not.toContain('Mark on the plan');
    }
  });

  it('still stands without any layout at all', async () => {
    const bare: Assessment = { ...none, layouts: [] };
    for (const Page of Object.values(pages)) {
      expect(await html(<Page assessment={bare} setting={setting} />)).not.toMatch(/undefined|NaN/);
    }
  });
});

describe('crew sheet', () => {
  it('puts the grave cautions above the work, and the bare-deck survey first', async () => {
    const page = text(await html(<CrewSheetPage assessment={byHand} setting={setting} />));
    const order = [
      'No fall protection is chosen.',
      'Order of work',
      'Hold point Shoot the bare deck',
      'Level the bare deck',
      'Hold point Shoot the boards',
      'Chalk lines',
      'Wear a mask',
    ];
    const places = order.map((words) => page.indexOf(words));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(-1);
    expect(page).toContain('About 40 board ft of fill');
    for (const word of ['Go: every point within 1/4″', 'Shim here:', 'Stop and call:']) expect(page).toContain(word);
  });

  it('gives check points their heights and room to write', async () => {
    const page = await html(<CrewSheetPage assessment={byHand} setting={setting} />);
    expect(text(page)).toContain('2 12′-0″ in from the gutter side 0″ 4″ +3″');
    expect(page).toMatch(/<td class="blank-cell" data-head="Ground read">/);
  });

  const form: AsBuiltForm = {
    typed: { 'height-1': '0', 'height-2': 'three-ish' },
    problems: [{ field: 'height-2', message: '"three-ish" is no height: write 3 or 3 1/4.' }],
    result: null,
  };

  it('keeps what was typed and says what is wrong with it at the box', async () => {
    const page = await html(<CrewSheetPage assessment={byHand} setting={setting} asBuilt={form} />);
    expect(page).toMatch(/<form method="post" action="\/roofs\/r%201\/as-built#as-laid">/);
    expect(page).toMatch(
      /name="height-2"[^>]*value="three-ish"[^>]*aria-invalid="true"[^>]*aria-describedby="height-2-problem"/,
    );
    expect(page).toContain('&quot;three-ish&quot; is no height: write 3 or 3 1/4.');
  });

  it('judges the heights as laid: what would stand, what is off and what to lift', async () => {
    const result = {
      points: [
        { id: '1', designIn: 0, readIn: 0, differenceIn: 0 },
        { id: '2', designIn: 3, readIn: 2.5, differenceIn: -0.5 },
      ],
      judgement: 'Water would stand 1″ deep over 80 sq ft.',
      goOn: false,
      ponds: byHand.existing.ponds,
      advice: ['Lift the boards at point 2 by 1/2″.'],
    };
    const page = await html(
      <CrewSheetPage assessment={byHand} setting={setting} asBuilt={{ ...form, problems: [], result }} />,
    );
    expect(text(page)).toContain('Stop. Water would stand 1″ deep over 80 sq ft. Lift the boards at point 2 by 1/2″.');
    expect(text(page)).toContain('2 3″ 2 1/2″ 1/2″ low off: low');
    expect(text(page)).toContain('1 0″ 0″ 0″ good');
    expect(page).toContain('class="place place-pond-1"');
  });

  it('asks for no heights on a saved paper', async () => {
    expect(await html(<CrewSheetPage assessment={byHand} setting={saved} />)).not.toContain('<form');
  });
});

describe('owner’s page', () => {
  it('says what is wrong, what is planned, why this covering, what changes, what is open', async () => {
    const page = text(await html(<OwnerPage assessment={byHand} setting={setting} />));
    const words = page.replaceAll(/(?<=[.”″:a-z°F%]) ?\d+(?: \d+)*(?= [A-Z:(]|$)/g, '');
    for (const said of [
      'Rain stays on this roof: up to 1″ deep, over about 80 sq ft.',
      'from 1/2″ to 6 1/2″ thick',
      'A white sheet, welded at its laps.',
      'The old sheet was torched, and the deck is wood.',
      'Door on the wall: the new roof fits, with 2 1/4″ left.',
      'Window on the wall: nobody has measured how high it stands.',
      'Curb of the skylight: it has to be made 1 1/2″ higher.',
      'Ask any roofer',
      'Photos you can take',
      'The last check',
    ])
      expect(words).toContain(said);
  });
});

describe('supplier request', () => {
  it('asks by thickness and leaves room for price, lead time and substitution', async () => {
    const page = await html(<SupplierRequestPage assessment={byHand} setting={setting} />);
    expect(text(page)).toContain('0.5-1.5 +2 1/4 in per ft, 4 x 4 ft 2 in 9');
    expect(text(page)).toContain('Cover board 1/2 in 24 boards');
    expect(text(page)).not.toContain('Tapered board 0.5-1.5 9 boards');
    for (const head of ['Price', 'Lead time', 'Substitution'])
      expect(page).toContain(`class="blank-cell" data-head="${head}"`);
  });
});

describe('style', () => {
  it('has a sun setting, prints as a sheet, and honours those who want no motion', () => {
    const css = styleSheet();
    expect(css).toContain(':has(#sun:checked)');
    expect(css).toContain('counter(page) " of " counter(pages)');
    expect(css).toContain('prefers-reduced-motion');
    expect((css.match(/\{/g) ?? []).length).toBe((css.match(/\}/g) ?? []).length);
  });
});
