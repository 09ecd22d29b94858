import { describe, expect, it } from 'vitest';
import { type KitchenTable, kitchenTable } from '../../src/core/report/page-kitchen-table.ts';
import { ownerPage } from '../../src/core/report/page-owner.ts';
import { woodKnown } from '../../src/core/report/page-scope.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { KitchenTablePage } from '../../views/pages/kitchen-table-page.tsx';
import { smallRoof } from './owner-roofs.ts';

// What the owner and the kitchen table say of the old roof. Common practice, no source.

const dry = { kind: 'dry-insulation', foundBy: 'scan', areaSqFt: 240 };
const drained = {
  existing: { planes: [{ slopeInPerFt: 0.5, fallsToward: { side: 0 } }], readOn: 'covering', seenDryAfter48h: true },
};
const found = (findings: readonly object[], parts: object = {}): Assessment =>
  smallRoof({ ...drained, findings, ...parts });

const told = (assessment: Assessment, id: string): string =>
  ownerPage(assessment)
    .sections.filter((section) => section.id === id)
    .flatMap(({ statements }) => statements.map(({ text }) => text))
    .join(' ');
const cells = ({ rows }: KitchenTable, id: string): (string | undefined)[] =>
  rows.find((row) => row.id === id)?.cells.map((cell) => cell?.text) ?? [];

const setting = { links: null, style: { text: '' }, dateText: null };
const tablePage = async (assessment: Assessment): Promise<string> =>
  String(await (<KitchenTablePage assessment={assessment} setting={setting} />));

describe('an old roof of which nothing is settled', () => {
  it.each([
    [
      'slight signs, nobody knows whether it is dry',
      [{ kind: 'granule-loss', severity: 'slight' }, { kind: 'blister' }],
    ],
    ['rot of the eave', [{ kind: 'rotten-eave', side: 0, fromFt: 3, toFt: 9 }, dry]],
    ['nothing noted', []],
  ])('%s: mending stands beside a new roof, the test comes first, and nothing is signed', async (_, findings) => {
    const roof = found(findings);
    expect(roof.scope!.recommended).toBeNull();
    const table = kitchenTable(roof);
    expect(table.options).toEqual(['Mend it', 'New roof on sloped boards']);
    expect(table.lead.text).toContain('nothing is chosen or signed today. First do this:');
    expect(table.first).toHaveLength(roof.scope!.tests.length);
    const page = await tablePage(roof);
    expect(page.indexOf(table.first[0].text)).toBeGreaterThan(0);
    expect(page.indexOf(table.first[0].text)).toBeLessThan(page.indexOf('<table'));
    expect(page).not.toMatch(/Chosen: first or second|License or registration/);
  });

  it('where mending is ruled out two new roofs stand there, and still nothing is signed', async () => {
    const pond = { surface: 'level', readOn: 'covering', seenPonds: [{ at: [9, 6], depthIn: 1, hoursAfterRain: 60 }] };
    const roof = found([{ kind: 'ponding', at: [9, 6] }], { existing: pond });
    expect(roof.scope!.recommended).toBeNull();
    const table = kitchenTable(roof);
    expect(table.options).not.toContain('Mend it');
    expect(table.lead.text).toMatch(/^How much of the old roof comes off is not settled yet\. So nothing is chosen/);
    expect(await tablePage(roof)).not.toContain('Chosen: first or second');
  });

  it('where it is settled there are lines to sign, and where nothing fits there are none', async () => {
    expect(await tablePage(found([{ kind: 'split', at: [4, 4] }, dry]))).toContain('Chosen: first or second');
    const low = [
      { side: 0, kind: 'gutter', mayDrain: 'yes' },
      { side: 1, kind: 'rake', mayDrain: 'no' },
      { side: 2, kind: 'wall', clearIn: 1, mayDrain: 'no' },
      { side: 3, kind: 'wall', clearIn: 1, mayDrain: 'no' },
    ];
    const none = found([{ kind: 'wet-insulation', foundBy: 'scan', areaSqFt: 200 }], { edges: low });
    expect(kitchenTable(none).choice).toBe('nothing-fits');
    expect(await tablePage(none)).not.toMatch(/Chosen: first or second|empty lines/);
  });
});

describe('a deck that is not of wood', () => {
  // Case C58 of the project's collection: a gypsum deck that has gone soft asks for a structural review first.
  const soft = { kind: 'soft-deck', at: [9, 6], areaSqFt: 40, foundBy: 'eye' };
  const page = (kind: string, findings: readonly object[]) => found(findings, { deck: { kind } });

  it.each(['gypsum', 'concrete', 'steel'])(
    '%s found soft: an engineer before anything, on every paper',
    async (kind) => {
      const roof = page(kind, [soft, dry]);
      const stop = roof.findings.find(({ id }) => id === 'engineer-deck');
      expect(stop).toMatchObject({ level: 'stop' });
      expect(stop!.message).toContain('structural engineer');
      expect(roof.scope!.tests[0].id).toBe('engineer');
      expect(
        ownerPage(roof)
          .stops.map(({ text }) => text)
          .join(' '),
      ).toContain('Call a structural engineer');
      expect(told(roof, 'scope')).toContain('First do this: Have a structural engineer look at the deck.');
      const table = await tablePage(roof);
      for (const paper of [told(roof, 'wood'), told(roof, 'extra'), table])
        expect(paper).not.toMatch(/No bad wood was noted|Bad wood|piece of wood|Wood beyond/);
      expect(told(roof, 'wood')).toContain('An engineer says what is done with it');
      expect(table).toContain('Price of mending the deck, by the square foot');
    },
  );

  it('not found soft: no wood is spoken of, and nobody is sent for an engineer', () => {
    const roof = page('concrete', [{ kind: 'split', at: [4, 4] }, dry]);
    expect(told(roof, 'wood')).toBe(
      'The deck is structural concrete, not wood. No soft place was noted, so no amount is worked out.',
    );
    expect(roof.findings.map(({ id }) => id)).not.toContain('engineer-deck');
  });

  it.each([
    ['plywood', 'bad wood'],
    ['steel', 'mending of the deck'],
    ['gypsum', 'mending of the deck'],
  ])('%s: what comes on top of the days is %s', (kind, top) => {
    const roof = page(kind, [{ kind: 'wet-insulation', foundBy: 'scan', areaSqFt: 200 }]);
    expect(told(roof, 'work')).toContain(`rain and ${top} come on top`);
    const days = roof.layouts.find(({ id }) => id === roof.chosenLayout)!.workDays!;
    expect(days.notCounted).toMatch(new RegExp(`^Rain, ${top}, levelling`));
  });

  it('how much wood it is shows when the old roof is off, or where it stays when the places are opened', () => {
    const known = (parts: object, ...more: readonly object[]): string => {
      const roof = found([{ kind: 'rotten-eave', side: 0, fromFt: 3, toFt: 9 }, dry, ...more], parts);
      return woodKnown(roof.scope!, roof.planned);
    };
    const soaked = { kind: 'wet-insulation', foundBy: 'scan', areaSqFt: 200 };
    const over = { existing: { ...drained.existing, buildUpIn: 1.5 }, removedIn: 0 };
    expect(known({})).toBe('it is known when the old roof is off');
    expect(known(over)).toBe('it is known when the places are opened');
    // A plan that leaves it where it has to come off.
    expect(known(over, soaked)).toBe('it is known when the old roof is off');
  });

  it('a soft deck of plywood stays carpentry', () => {
    const roof = page('plywood', [soft, dry]);
    expect(roof.findings.map(({ id }) => id)).not.toContain('engineer-deck');
    expect(roof.scope!.tests.map(({ id }) => id)).toEqual(['open-wood']);
    expect(told(roof, 'wood')).toContain('Deck sheets');
  });
});

describe('a roof that is stripped to the joists', () => {
  it('has no old roof to mend, coat, cover or look into', () => {
    const roof = smallRoof({
      existing: { planes: [{ slopeInPerFt: 0.02, fallsToward: { side: 0 } }], readOn: 'deck' },
      findings: [{ kind: 'deck-stripped' }],
    });
    const { answer, comesTo, ways, tests } = roof.scope!;
    expect([comesTo, tests]).toEqual(['off', []]);
    expect(roof.planned.note).toMatch(/over a new deck\. The deck itself is in none of them\.$/);
    expect(answer).toBe(
      'Build the deck and lay the new roof on it. The old roof is off: nothing of it is left to mend, to coat or to cover.',
    );
    expect(ways.map(({ standing }) => standing)).toEqual(['barred', 'barred', 'barred', 'open']);
    const page = JSON.stringify(ownerPage(roof).sections.filter(({ id }) => id !== 'heat'));
    expect(page).not.toMatch(
      /small holes|from a window|when the old roof is off|while the old roof comes off|ruled out/i,
    );
    expect(kitchenTable(roof).first).toEqual([]);
  });

  it.each(['plywood', 'steel'])(
    '%s: the owner reads of no old roof that is to come off, be looked at or compared',
    (kind) => {
      const roof = smallRoof({
        existing: { planes: [{ slopeInPerFt: 0.02, fallsToward: { side: 0 } }], readOn: 'deck' },
        findings: [{ kind: 'deck-stripped' }],
        covering: {},
        deck: { kind },
      });
      const page = ownerPage(roof);
      expect(page.today.statements[0].text).toBe('The old roof is off, down to the joists.');
      expect(page.shownWhen).toBe('When the new deck lies');
      expect(told(roof, 'plan')).toMatch(
        /^The figures here are for the roof over a new deck\. The deck is in none of them\./,
      );
      expect(told(roof, 'extra')).toMatch(/^The new deck itself/);
      expect(told(roof, 'extra')).not.toContain('second old roof');
      expect(told(roof, 'work')).toContain('rain and the new deck come on top');
      expect(told(roof, 'heat')).toMatch(/^On a hot clear day the new roof reaches about \d+ °F\./);
      expect(told(roof, 'heat')).not.toMatch(/old roof|the difference|color/);
      expect(page.open.map(({ what }) => what.text).join(' ')).not.toMatch(/old roof|old covering|rain still stands/);
      expect(page.numbers.find(({ id }) => id === 'sun')?.today.text ?? 'the old roof is off').toBe(
        'the old roof is off',
      );
      expect(kitchenTable(roof).woodTitle).toBe('The deck');
      expect(kitchenTable(roof).rows.find(({ id }) => id === 'wood')!.head).toBe('Price of the new deck');
    },
  );
});

describe('what settles it', () => {
  const pond = { surface: 'level', readOn: 'covering', seenPonds: [{ at: [9, 6], depthIn: 1, hoursAfterRain: 60 }] };
  const core = (kind: string, x: number) => ({ kind, at: [x, 6], foundBy: 'core' });

  it('with nothing noted an inspection comes first, and no hole is cut before it', () => {
    const roof = found([]);
    expect(roof.scope!.tests.map(({ id }) => id)).toEqual(['inspection']);
    expect(told(roof, 'scope')).toMatch(/First do this: Have somebody note what is wrong, with photos\.$/);
  });

  it('one core dry and one wet: a scan, and no more cores; the sentence does not begin with or', () => {
    const roof = found([core('dry-insulation', 4), core('wet-insulation', 14), { kind: 'open-lap', at: [14, 6] }]);
    expect(roof.scope!.tests.map(({ id }) => id)).toEqual(['scan']);
    expect(told(roof, 'scope')).toContain('First do this: Have the roof scanned for damp, to see how far it reaches.');
    const asked = roof.scope!.ways.flatMap(({ reasons }) => reasons.map(({ text }) => text)).join(' ');
    expect(asked).not.toContain('Cut a core: layers');
  });

  it('is not called a choice between mending and replacing where all but a tear-off is ruled out', () => {
    const walls = [0, 1, 2, 3].map((side) =>
      side === 0 ? { side, kind: 'gutter', mayDrain: 'yes' } : { side, kind: 'wall', clearIn: 1, mayDrain: 'no' },
    );
    const roof = found([core('wet-insulation', 9)], { existing: pond, edges: walls });
    expect(roof.scope!.ways.map(({ standing }) => standing)).toEqual(['barred', 'barred', 'barred', 'not-known']);
    expect(told(roof, 'scope')).toMatch(/^Only taking the old roof off is left/);
    const over = found([{ kind: 'ponding', at: [9, 6] }], { existing: pond });
    expect(told(over, 'scope')).toMatch(/^Mending this roof is not enough\. How much of it comes off is not settled/);
  });

  it('a new roof over the old one with a wet part tells first that the wet part is cut out', () => {
    const wet = { kind: 'wet-insulation', foundBy: 'scan', at: [9, 6], areaSqFt: 24 };
    const roof = found([wet], { existing: pond });
    expect(roof.scope!.recommended).toBe('re-cover');
    expect(roof.scope!.answer).toMatch(/over the old one\. The wet part is cut out .* Here: 10 % of the area\./);
    expect(told(roof, 'scope')).toContain('The wet part is cut out 1 to 2 ft past its line and made good first.');
    expect(JSON.stringify(roof.scope)).not.toContain('One dry covering.');
  });
});

describe('an old roof that stays', () => {
  it('a worn surface, dry and drained, is coated, and nobody is told to mend it', () => {
    const roof = found([{ kind: 'worn-coating', areaSqFt: 160, severity: 'plain' }, dry], {
      covering: { kind: 'coating', layers: 1, ageYears: 12 },
    });
    expect(roof.headline).toContain('What was found allows a coating');
    expect(roof.scope!.answer).toMatch(/^It may be coated\. The surface is worn/);
    expect(told(roof, 'scope')).toContain('It can be coated.');
    expect(told(roof, 'scope')).not.toMatch(/Mend it|does not pond/);
    const table = kitchenTable(roof);
    expect(table.options).toEqual(['Coat it', 'New roof on sloped boards']);
    expect(table.lead.text).toContain('a new coat');
    expect(cells(table, 'does')[0]).toBe('Seams are mended, then the old roof gets a new coat.');
    expect(cells(table, 'covering')[0]).toBe('a coating on the old one');
    // The heat of the worn surface is not that of a coat.
    expect(cells(table, 'sun')[0]).toBe('not worked out');
    const silicone = { covering: { kind: 'coating', layers: 1 }, preferences: { membrane: 'silicone' } };
    const asked = found([{ kind: 'worn-coating', areaSqFt: 160, severity: 'plain' }, dry], silicone);
    expect(told(asked, 'wishes')).toMatch(/A coat is what this roof asks for\.$/);
    expect(cells(kitchenTable(asked), 'covering')[0]).toBe('Liquid silicone coating over the old roof');
    const why = roof.scope!.ways[1].reasons.map(({ text }) => text).join(' ');
    expect(why).toContain('on cured silicone nothing holds but silicone');
  });

  it('a worn surface with a hole in it is mended, then coated', () => {
    const worn = { kind: 'granule-loss', areaSqFt: 160, severity: 'plain' };
    const roof = found([worn, { kind: 'open-lap', at: [4, 4] }, dry]);
    expect(roof.scope!.recommended).toBe('coat');
    expect(told(roof, 'scope')).toMatch(/^First mend what is broken\. Then it can be coated\./);
    expect(told(roof, 'scope')).toContain('Patching alone is ruled out.');
    expect(cells(kitchenTable(roof), 'does')[0]).toMatch(/^What is broken and the seams are mended, then/);
  });

  it('a coat that was asked for is answered by what the old roof takes, not by boards that nobody plans', () => {
    const asked = (findings: readonly object[], covering: object = {}): string =>
      told(
        found(findings, {
          covering: { kind: 'sbs-granule', layers: 1, ageYears: 12, ...covering },
          preferences: { membrane: 'acrylic' },
        }),
        'wishes',
      );
    const hole = { kind: 'open-lap', at: [4, 4] };
    expect(asked([dry])).toMatch(/The old roof can be coated\. Nothing that was found asks for it\.$/);
    expect(asked([hole, dry])).toMatch(/The old roof can be coated, once what is broken is mended\./);
    expect(asked([hole, dry], { layers: 2 })).toMatch(
      /The old roof cannot be coated\. Two coverings or more lie there/,
    );
    expect(asked([hole])).toMatch(/Whether the old roof can be coated is not known yet\./);
    const off = asked([{ kind: 'wet-insulation', foundBy: 'scan', areaSqFt: 200 }]);
    expect(off).toMatch(/It is out on this roof\. .*New boards are planned here\.$/);
  });

  it('where nothing is wrong there is nothing to mend', () => {
    const roof = found([dry]);
    expect(roof.headline).toContain('Nothing that was found asks for work on it.');
    expect(roof.scope!.answer).toMatch(/^Keep it as it is\./);
    expect(told(roof, 'scope')).toBe('Keep the roof as it is. Nothing that was noted asks for more than upkeep.');
    expect(kitchenTable(roof).options[0]).toBe('Leave it as it is');
    expect(cells(kitchenTable(roof), 'does')[0]).toBe('Nothing is done but upkeep.');
    expect(cells(kitchenTable(roof), 'covering')[0]).toBe('as it is');
    expect(cells(kitchenTable(roof), 'sun')[0]).toMatch(/^about \d+ °F/);
    expect(JSON.stringify([kitchenTable(roof), roof.planned])).not.toMatch(/is mended|asks for repairs/);
  });
});

describe('a new roof that may not be laid as it is drawn', () => {
  const pond = { surface: 'level', readOn: 'covering', seenPonds: [{ at: [9, 6], depthIn: 1, hoursAfterRain: 60 }] };
  const over = { existing: { ...pond, buildUpIn: 1.5 }, removedIn: 0 };
  const soaked = { kind: 'wet-insulation', foundBy: 'scan', areaSqFt: 120 };

  it('over two old roofs: it is set beside nothing, nothing is chosen or signed, and no figure of it is called good', async () => {
    const roof = found([{ kind: 'ponding', at: [9, 6] }, dry], {
      ...over,
      covering: { kind: 'sbs-granule', layers: 2, ageYears: 12 },
    });
    expect(roof.findings.map(({ id }) => id)).toContain('re-cover-barred');
    const table = kitchenTable(roof);
    expect([table.choice, table.options, table.rows, table.toSign]).toEqual(['barred', [], [], false]);
    expect(table.lead.text).toMatch(/its figures do not hold\. Nothing is chosen or signed today\./);
    const page = await tablePage(roof);
    expect(page).not.toMatch(/Both ways drain|Owner, name and date|<table class="few kitchen"/);
    const { sections, shownWhen } = ownerPage(roof);
    expect(sections.find(({ id }) => id === 'plan')!.title).toBe('What a new roof would be');
    expect(shownWhen).toBe('When the old roof is off');
  });

  it('where the old roof is mended, that alone is offered, and still nothing is signed beside the stop', () => {
    const roof = found([{ kind: 'split', at: [4, 4] }, dry], {
      existing: { ...drained.existing, buildUpIn: 1.5 },
      removedIn: 0,
      covering: { kind: 'sbs-granule', layers: 2, ageYears: 12 },
    });
    const table = kitchenTable(roof);
    expect([table.options, table.toSign]).toEqual([['Mend it'], false]);
    expect(table.lead.text).toMatch(/Nothing is chosen or signed before the stop above is settled\.$/);
  });

  it('a covering that has to come off cannot be kept, and nobody is asked to decide it', () => {
    const wishes = told(found([soaked], { ...over, preferences: { keepCovering: true } }), 'wishes');
    expect(wishes).toMatch(
      /the covering stays\. It cannot be kept: the old roof has to come off\. More than a quarter/,
    );
    expect(wishes).not.toContain('You decide');
    const both = told(found([soaked], { ...over, preferences: { keepCovering: true, noFoamAbove: true } }), 'wishes');
    expect(both).toMatch(/It cannot be kept.*no board above the deck\. .*You decide whether that is given up\./);
  });

  it('where one thing alone is offered nobody chooses between first and second', async () => {
    const page = await tablePage(
      found([dry, { kind: 'ponding', at: [9, 6] }], {
        ...over,
        place: { city: 'Nashville, TN', climateZone: '4A' },
        building: { below: 'living-exposed-deck' },
        deck: { kind: 'steel' },
        insulation: { targetR: 25 },
        preferences: { keepCovering: true },
      }),
    );
    expect(page).toContain('Only one wish can be given up so that the rest is kept.');
    expect(page).toContain('Agreed: yes or no');
    expect(page).not.toContain('Give up first');
    expect(page).not.toContain('first or second');
  });
});
