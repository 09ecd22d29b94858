import { beforeAll, describe, expect, it } from 'vitest';
import { callOf, offeredLayout, planOf, todayOf } from '../../src/core/report/owner/situation.ts';
import { type Because, type OwnerStatement, valueAt } from '../../src/core/report/owner/statement.ts';
import { kitchenStatements, kitchenTable } from '../../src/core/report/page-kitchen-table.ts';
import { type OwnerPageModel, type OwnerSectionId, ownerPage, statementsOf } from '../../src/core/report/page-owner.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { roofLinks } from '../../views/page-setting.ts';
import { KitchenTablePage } from '../../views/pages/kitchen-table-page.tsx';
import { OwnerPage } from '../../views/pages/owner-page.tsx';
import { ResultPage } from '../../views/pages/result-page.tsx';
import { changedRoofs, givenRoofs, type OwnerRoof, smallRoof } from './owner-roofs.ts';
import { readingOf, syllables } from './reading-grade.ts';

interface Read extends OwnerRoof {
  page: OwnerPageModel;
  statements: readonly OwnerStatement[];
}

const read = (roof: OwnerRoof): Read => {
  const page = ownerPage(roof.assessment);
  return { ...roof, page, statements: [...statementsOf(page), ...kitchenStatements(kitchenTable(roof.assessment))] };
};

let given: Read[] = [];
let all: Read[] = [];

beforeAll(() => {
  given = givenRoofs().map(read);
  all = [...given, ...changedRoofs().map(read)];
}, 240_000);

const setting = { links: roofLinks('r1'), style: { href: '/style.css' }, dateText: null };
const html = async (page: unknown): Promise<string> => String(await page);
const plain = (text: string): string =>
  text
    .replaceAll(/<sup[^>]*>.*?<\/sup>/gs, '')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ')
    .trim();

/** What a printed figure says as a number: 2 13/16″, 1,600 sq ft, 61 %, 0.28 inch. */
function printed(text: string): number {
  const [, whole, over, under] = text.match(/^(?:about )?(?:-)?([\d.,]+)?(?:\s*(?:(?<=^|\s))(\d+)\/(\d+))?/) ?? [];
  const fraction = text.match(/^(\d+)\/(\d+)/);
  if (fraction !== null) return Number(fraction[1]) / Number(fraction[2]);
  return Number((whole ?? '0').replaceAll(',', '')) + (over === undefined ? 0 : Number(over) / Number(under));
}

/** Values at the paths, folded here once more and not by the code under test. */
function folded(assessment: Assessment, { how, paths }: Because): number | string {
  const values = paths.map((path) => valueAt(assessment, path));
  if (how === 'count') return values.filter((value) => value !== undefined).length;
  if (how === 'is' && typeof values[0] === 'string') return values[0];
  const numbers = values.map(Number);
  if (how === 'sum') return numbers.reduce((sum, value) => sum + value, 0);
  return how === 'least' ? Math.min(...numbers) : how === 'greatest' ? Math.max(...numbers) : numbers[0];
}

function agrees(assessment: Assessment, because: Because): boolean {
  const value = folded(assessment, because);
  if (typeof value === 'string') {
    // A part of the words of the answer, with another first letter at most.
    return value.toLowerCase().includes(because.shown.toLowerCase().replace(/^ \(|\)$/g, ''));
  }
  if (!Number.isFinite(value)) return false;
  if (!/\d/.test(because.shown))
    return because.shown === 'level' ? value < 0.005 : because.shown === 'none' && value === 0;
  if (because.shown.startsWith('under ')) return Math.abs(value) < 1;
  const told = printed(because.shown);
  if (because.shown.includes('%')) return Math.abs(told - Math.abs(value) * 100) <= 0.5 + 1e-6;
  if (because.shown.includes('inch in each')) return Math.abs(told - value) <= 0.005 + 1e-9;
  if (because.shown.includes('″')) return Math.abs(told - Math.abs(value)) <= 1 / 32 + 1e-9;
  return Math.abs(told - Math.abs(value)) <= 0.5 + 1e-9;
}

describe('every claim stands on a computed value', () => {
  it('reads 50 different roofs and more', () => {
    expect(all.length).toBeGreaterThanOrEqual(50);
    expect(
      new Set(all.map(({ statements }) => statements.map(({ text }) => text).join('\n'))).size,
    ).toBeGreaterThanOrEqual(50);
  });

  it('no figure in the words that is not a value of the answer', () => {
    const wrong = all.flatMap(({ name, assessment, statements }) =>
      statements.flatMap(({ text, because }) => {
        const rest = because.reduce((left, { shown }) => (shown === '' ? left : left.replace(shown, ' ')), text);
        const bare = /\d/.test(rest) ? [`${name}: "${rest}" has a figure of its own`] : [];
        const off = because
          .filter((each) => !agrees(assessment, each))
          .map(({ label, shown, paths }) => `${name}: ${label} "${shown}" is not ${paths.join()}`);
        return [...bare, ...off];
      }),
    );
    expect(wrong).toEqual([]);
  });

  it('a value that is changed is caught', () => {
    const { assessment, statements } = all[0];
    const first = statements[0].because[0];
    expect(agrees(assessment, first)).toBe(true);
    expect(agrees(assessment, { ...first, shown: '3″' })).toBe(false);
    expect(agrees(assessment, { ...first, paths: ['existing.nothing'] })).toBe(false);
  });

  it('every value leads to a heading of the answer page, and every mark to its line', async () => {
    for (const { assessment } of [given[0], given[1], ...all.slice(-3)]) {
      const answer = await html(<ResultPage assessment={assessment} setting={setting} />);
      for (const page of [
        await html(<OwnerPage assessment={assessment} setting={setting} />),
        await html(<KitchenTablePage assessment={assessment} setting={setting} />),
      ]) {
        const marks = [...page.matchAll(/href="#(origin-\d+)"/g)].map(([, id]) => id);
        expect(marks.length).toBeGreaterThan(3);
        for (const id of marks) expect(page).toContain(`id="${id}"`);
        const places = [...page.matchAll(/href="\/roofs\/r1#([a-z-]+)"/g)].map(([, id]) => id);
        expect(places.length).toBeGreaterThan(3);
        for (const id of places) expect(answer).toContain(`id="${id}"`);
      }
    }
  });
});

describe('stops stand first', () => {
  it('on both papers of every roof whose answer stops on water, load or the old roof, and on no other', async () => {
    const safety =
      /^(engineer-|no-way-out|no-outlet-known|no-second-way-out|area-no-second|door-|sleeve-|phasing|re-cover-)/;
    const met = new Set<string>();
    for (const { name, assessment, page } of all) {
      const stops = assessment.findings.filter(({ id, level }) => level === 'stop' && safety.test(id));
      for (const { id } of stops) met.add(id);
      expect([name, page.stops.length > 0]).toEqual([name, stops.length > 0]);
      expect([name, stops.length > 0 && kitchenTable(assessment).toSign]).toEqual([name, false]);
      const engineer = stops.some(({ id }) => id.startsWith('engineer-'));
      const words = page.stops.map(({ text }) => text).join(' ');
      expect([name, /Nobody goes on it.*structural engineer/.test(words)]).toEqual([name, engineer]);
    }
    expect([...met]).toEqual(
      expect.arrayContaining(['engineer-first', 'no-second-way-out', 'door-is-overflow', 're-cover-barred']),
    );
    const stopped = all.find(({ page }) => page.stops.length > 0)!;
    for (const page of [
      await html(<OwnerPage assessment={stopped.assessment} setting={setting} />),
      await html(<KitchenTablePage assessment={stopped.assessment} setting={setting} />),
    ]) {
      expect(page.indexOf('class="is-stop"')).toBeGreaterThan(0);
      expect(page.indexOf('class="is-stop"')).toBeLessThan(page.indexOf('class="headline"'));
    }
  });
});

describe('photos of findings', () => {
  it('are shown with what they show on the server, and not in a saved paper', async () => {
    const roof = given.find(({ assessment }) => (assessment.inspection ?? []).length > 0)!.assessment;
    const shown: Assessment = {
      ...roof,
      inspection: roof.inspection!.map((finding, i) => ({ ...finding, photos: i === 0 ? ['0123abc'] : [] })),
    };
    const page = await html(<OwnerPage assessment={shown} setting={setting} />);
    expect(page).toMatch(/<img src="\/roofs\/r1\/photos\/0123abc" alt="Photo of finding 1, [^"]+"/);
    expect(page).toContain(roof.inspection![0].tells.slice(0, 20));
    const saved = await html(
      <OwnerPage assessment={shown} setting={{ ...setting, links: null, style: { text: '' } }} />,
    );
    expect(saved).not.toContain('0123abc');
    expect(saved).toContain(roof.inspection![0].tells.slice(0, 20));
  });
});

describe('the table of two', () => {
  it('sets side by side what a person would choose between, with lines to fill in', () => {
    const choices = new Set(all.map(({ assessment }) => kitchenTable(assessment).choice));
    for (const choice of ['keep-or-new', 'edge-or-boards', 'two-layouts', 'two-coverings', 'nothing-fits'])
      expect([...choices]).toContain(choice);
    for (const { name, assessment } of all) {
      const table = kitchenTable(assessment);
      const blank = table.rows.filter(({ cells }) => cells.some((cell) => cell === null)).map(({ id }) => id);
      expect([name, blank]).toEqual([
        name,
        table.options.length === 0 ? [] : ['days', 'price', 'wood', 'lead', 'not-in'],
      ]);
      for (const { cells } of table.rows) expect(cells).toHaveLength(table.options.length);
      for (const i of table.layouts) if (i !== null) expect(assessment.layouts[i].rejected).toBeNull();
      if (table.choice === 'two-coverings')
        for (const cell of table.rows.find(({ id }) => id === 'covering')!.cells)
          expect(
            assessment.membranes.filter(({ name: covering, veto }) => covering === cell?.text && veto === null),
          ).toHaveLength(1);
    }
  });
});

/** What the words of a section hang on. */
const keys: Readonly<Partial<Record<OwnerSectionId, (assessment: Assessment) => string>>> = {
  today: (assessment) => todayOf(assessment),
  scope: (assessment) => callOf(assessment),
  plan: (assessment) => {
    const layout = offeredLayout(assessment);
    return `${planOf(assessment, layout)}`;
  },
  damp: ({ moisture }) => moisture?.verdict ?? '',
};

/** Words that two verdicts may share, because they say the same of both: what is ruled out, and general truths. */
const mayBeShared =
  /is ruled out|^Water that stays|^It falls at least|^By our figures no place|^This goes by the winter of/;

describe('words follow the verdict', () => {
  it.each(Object.entries(keys))('%s: no text is shared by two verdicts', (id, key) => {
    const byText = new Map<string, Map<string, string>>();
    for (const { name, assessment, page } of all) {
      const section = id === 'today' ? page.today : page.sections.find((each) => each.id === id);
      for (const { text } of section?.statements ?? []) {
        const seen = byText.get(text) ?? new Map<string, string>();
        byText.set(text, seen.set(key(assessment), name));
      }
    }
    const shared = [...byText].filter(([text, seen]) => seen.size > 1 && !mayBeShared.test(text));
    expect(shared.map(([text, seen]) => `${text} <- ${[...seen].join('; ')}`)).toEqual([]);
    expect(new Set(all.map(({ assessment }) => key(assessment))).size).toBeGreaterThan(2);
  });

  it('says that water stands only where it does', () => {
    for (const { name, assessment, page, statements } of all) {
      const words = statements.map(({ text }) => text).join('\n');
      const stands = /Rain stays on this roof|Water was seen on this roof|Water stood on the old roof/.test(words);
      expect([name, stands]).toEqual([name, assessment.existing.verdict === 'ponds']);
      const pond = page.numbers.find(({ id }) => id === 'water');
      if (assessment.existing.ponds.length === 0 && assessment.plan.seenPonds.length === 0)
        expect([name, pond]).toEqual([name, undefined]);
      if (assessment.existing.verdict === 'meets-minimum')
        expect([name, /has no slope to run down|is level, about/.test(words)]).toEqual([name, false]);
    }
  });

  it('rules out what is barred and nothing else, and nothing where no old roof is left', () => {
    const isOff = ({ scope }: Assessment) => scope?.comesTo === 'off';
    const out = {
      repair: 'Patching alone is ruled out',
      coat: 'A coating is ruled out',
      're-cover': 'A new roof over the old one is ruled out',
      'tear-off': 'A tear-off is ruled out',
    };
    for (const { name, assessment, page } of all) {
      const words = page.sections
        .filter(({ id }) => id === 'scope')
        .flatMap(({ statements }) => statements.map(({ text }) => text))
        .join('\n');
      for (const { id, standing } of assessment.scope?.ways ?? [])
        expect([name, id, words.includes(out[id])]).toEqual([name, id, standing === 'barred' && !isOff(assessment)]);
    }
  });

  it('says that a new roof drains only where one is offered and proven', () => {
    const offered = { yes: 0, no: 0 };
    for (const { name, assessment, statements } of all) {
      const words = statements.map(({ text }) => text).join('\n');
      const layout = offeredLayout(assessment);
      offered[layout === null ? 'no' : 'yes'] += 1;
      const promises =
        /no place is left where it can stay|Rain then runs to|Rain would run to|Both ways drain|The slope is made of foam/;
      if (layout === null) expect([name, promises.test(words)]).toEqual([name, false]);
      else expect([name, layout.ponds.length, /have not found a plan/.test(words)]).toEqual([name, 0, false]);
    }
    expect(Math.min(offered.yes, offered.no)).toBeGreaterThan(3);
  });

  it('never plans a new roof where mending is enough, nor sets one beside it in the three numbers', () => {
    const kept = all.filter(({ assessment }) => callOf(assessment) === 'repair' || callOf(assessment) === 'coat');
    expect(kept.length).toBeGreaterThan(2);
    for (const { page, statements } of kept) {
      const words = statements.map(({ text }) => text).join('\n');
      expect(words).not.toMatch(
        /What we plan|Rain then runs|The new one reaches|the old roof comes off|may be opened in a day/,
      );
      expect(page.planned).toBe(false);
      expect(page.numbers.every(({ next }) => next === null)).toBe(true);
    }
  });

  it('chooses three numbers by what was computed, water first', () => {
    for (const { name, page, assessment } of all) {
      expect([name, page.numbers.length <= 3 && page.numbers.length > 0]).toEqual([name, true]);
      if (todayOf(assessment) === 'stands') expect([name, page.numbers[0].id]).toEqual([name, 'water']);
      if (assessment.heat === undefined) expect(page.numbers.some(({ id }) => id === 'sun')).toBe(false);
    }
  });

  it('promises nothing', () => {
    const banned =
      /guarant|warrant|never leak|will not leak|leak-free|for life|lifetime|\d+ years|years of|worry|maintenance-free|will last|expect \d/i;
    for (const { name, statements } of all) {
      const said = statements.filter(({ text }) => banned.test(text)).map(({ text }) => text);
      // The age that was typed in is a fact of this roof, not a promise.
      expect([name, said.filter((text) => !/lasts about 25 years|such a covering lasts/.test(text))]).toEqual([
        name,
        [],
      ]);
    }
  });
});

describe('changing the roof changes the words', () => {
  const words = (assessment: Assessment, id: OwnerSectionId): string => {
    const page = ownerPage(assessment);
    const section = id === 'today' ? page.today : page.sections.find((each) => each.id === id);
    return (section?.statements ?? []).map(({ text }) => text).join(' ');
  };

  it.each([
    [
      'slope',
      'today',
      {},
      { existing: { planes: [{ slopeInPerFt: 0.25, fallsToward: { side: 0 } }], readOn: 'covering' } },
    ],
    [
      'fall to the wall',
      'plan',
      {},
      { existing: { planes: [{ slopeInPerFt: 0.25, fallsToward: { side: 2 } }], readOn: 'covering' } },
    ],
    ['town', 'heat', { place: { city: 'Phoenix, AZ' } }, { place: { city: 'Minneapolis, MN' } }],
    ['room below', 'work', { building: { below: 'living-exposed-deck' } }, { building: { below: 'outdoors' } }],
    ['rot', 'wood', {}, { findings: [{ kind: 'soft-deck', at: [8, 5], severity: 'severe', areaSqFt: 40 }] }],
    ['layers', 'extra', {}, { covering: { kind: 'sbs-granule' } }],
    ['old covering', 'same-again', {}, { covering: { kind: 'metal', layers: 1 } }],
  ] as const)('%s', (_, section, before, after) => {
    const [was, is] = [words(smallRoof(before), section), words(smallRoof(after), section)];
    expect(was.length).toBeGreaterThan(20);
    expect(is).not.toBe(was);
  });
});

/** Sentences of a page: paragraphs, items, and cells that say more than a figure; no headings, drawings or sources. */
function prose(page: string): string[] {
  const main = page
    .slice(page.indexOf('<main'), page.indexOf('</main>'))
    .replaceAll(/<(figure|svg|details)[ >].*?<\/\1>/gs, ' ');
  const blocks = [...main.matchAll(/<(p|li|td)(?=[ >])[^>]*>(.*?)<\/\1>/gs)].map(([, , words]) => plain(words));
  return blocks.filter((words) => words.split(' ').length > 4);
}

describe('reading grade', () => {
  it('counts syllables as people do', () => {
    const counted = {
      roof: 1,
      water: 2,
      covering: 3,
      gutter: 2,
      idea: 3,
      leaves: 1,
      boards: 1,
      opened: 2,
      made: 1,
      table: 2,
      inches: 2,
      insulation: 4,
      photo: 2,
    };
    const got = Object.fromEntries(Object.keys(counted).map((word) => [word, syllables(word)]));
    expect(got).toEqual(counted);
  });

  it('tells a hard text from an easy one', () => {
    expect(readingOf(['The cat sat on the mat. The dog ran to the door.']).grade).toBeLessThan(1);
    expect(
      readingOf([
        'Notwithstanding considerable municipal deliberation, the aforementioned administrative regulations necessitate comprehensive professional interpretation.',
      ]).grade,
    ).toBeGreaterThan(15);
  });

  it('is 8 or lower on the whole page, on every roof', async () => {
    const hard: string[] = [];
    for (const { name, assessment } of all) {
      const owner = readingOf(prose(await html(<OwnerPage assessment={assessment} setting={setting} />)));
      const kitchen = readingOf(prose(await html(<KitchenTablePage assessment={assessment} setting={setting} />)));
      expect(owner.words).toBeGreaterThan(300);
      for (const [page, { grade }] of [
        ['owner', owner],
        ['kitchen', kitchen],
      ] as const)
        if (grade > 8) hard.push(`${name} ${page}: ${grade.toFixed(2)}`);
    }
    expect(hard).toEqual([]);
  }, 120_000);
});
