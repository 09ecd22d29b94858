import { describe, expect, it } from 'vitest';
import { retarderClasses, wetAlarm, wetGrowth } from '../../reference/vapor.ts';
import { labelR } from '../../src/core/layout/thermal.ts';
import { yearHolds, yearsToAlarm } from '../../src/core/moisture/balance.ts';
import { monthWords, optionRows } from '../../src/core/report/page-damp.ts';
import { everythingSaid, findingIds, said } from './case-roof.ts';
import { dampRoof } from './damp-roof.ts';

type Found = ReturnType<typeof dampRoof>;
const damp = ({ answer }: Found) => answer.moisture!;
const test = (found: Found, id: string) => damp(found).tests.find((one) => one.id === id)!;

const joists = { kind: 'plywood', thicknessIn: 0.625, joists: { depthIn: 9.25 } };
const over = (
  city: string,
  state: string,
  below: object,
  more: { winterHumidityPct?: number; insulation?: object; file?: object } = {},
) => ({
  place: { city, state },
  deck: joists,
  building: {
    below: 'living-ceiling',
    ...(more.winterHumidityPct === undefined ? {} : { winterHumidityPct: more.winterHumidityPct }),
  },
  insulation: { below, ...more.insulation },
  ...more.file,
});
const closedCell = (thicknessIn: number) => ({ kind: 'closed-cell', thicknessIn, vented: 'no' });
const battsR = (r: number, vented = 'no') => ({ kind: 'batts', r, vented });

describe('foam below the deck answers for the year like every other roof', () => {
  it('2 in of it under damp rooms in Duluth fails the year: at risk, with what is called for', () => {
    const found = dampRoof('thin foam', 16, over('Duluth', 'MN', closedCell(2), { winterHumidityPct: 55 }));
    expect(test(found, 'year-balance').state).toBe('fails');
    expect(damp(found).verdict).toBe('at-risk');
    const { cure, todo, deckSheet } = damp(found);
    expect(cure?.coat).toBe(true);
    expect(todo.join(' ')).toContain('Coat the foam on its room side');
    expect(deckSheet?.kind).toBe(cure?.retarder === 'none' ? undefined : 'vapor-retarder');
    expect(said(found, 'condensation-risk')).toContain('coating on the room side');
  });

  // IRC R806.5: class II in zones 5 to 8. Two perms through an inch is common knowledge of the trade, from memory.
  it('1 in is no class II retarder: in Chicago it is coated, in Atlanta nobody asks for it', () => {
    const mostPerm = retarderClasses.find(({ name }) => name === 'II')!.mostPerm;
    expect(mostPerm).toBe(1);
    const cold = dampRoof('inch', 16, over('Chicago', 'IL', closedCell(1)));
    expect(test(cold, 'foam-class').state).toBe('fails');
    expect(damp(cold).verdict).not.toBe('safe');
    expect(damp(cold).todo.join(' ')).toContain('Coat the foam');
    expect(damp(cold).retarder.text).not.toContain('is one itself');
    expect(test(dampRoof('inches', 16, over('Chicago', 'IL', closedCell(2))), 'foam-class').state).toBe('holds');
    expect(test(dampRoof('mild', 16, over('Atlanta', 'GA', closedCell(1))), 'foam-class').state).toBe('not-asked');
  });

  it('a way by foam is dry only where its own year holds', () => {
    const dry = (city: string, state: string, winterHumidityPct?: number) =>
      damp(dampRoof('batts', 16, over(city, state, battsR(19), { winterHumidityPct }))).options.find(
        ({ id }) => id === 'closed-cell',
      )!;
    expect(dry('Chicago', 'IL').dry).toBe(true);
    expect(dry('Fairbanks', 'AK')).toMatchObject({ dry: false });
    expect(dry('Fairbanks', 'AK').why).toContain('left after two years');
  });
});

describe('fewer batts are tried by the same tests', () => {
  const damper = (r: number) =>
    dampRoof('damp', 20, over('Chicago', 'IL', battsR(r), { winterHumidityPct: 50, insulation: { baseIn: 3.5 } }));

  it('the limit passes every test, one R more does not', () => {
    const { mostR } = damp(damper(30)).cure!.fewerBatts!;
    expect(mostR).toBeGreaterThan(0);
    expect(mostR).toBeLessThan(30);
    const failing = (r: number) => damp(damper(r)).tests.filter(({ state }) => state === 'fails');
    expect(failing(mostR)).toEqual([]);
    expect(failing(mostR + 1)).not.toEqual([]);
    expect(damp(damper(30)).todo.join(' ')).toContain(`until R-${mostR} is left`);
  });

  it('where no amount helps, that is said', () => {
    const found = dampRoof('pool', 16, over('Fairbanks', 'AK', battsR(30), { winterHumidityPct: 70 }));
    expect(damp(found).cure?.fewerBatts).toBeNull();
    expect(damp(found).todo.join(' ')).toContain('Taking batts out does not cure it');
  });
});

describe('an old roof that stays', () => {
  const kept = (removedIn: number) =>
    dampRoof('kept', 40, {
      place: { city: 'Minneapolis', state: 'MN' },
      deck: { kind: 'plywood', thicknessIn: 0.625 },
      building: { below: 'living-exposed-deck' },
      existing: { surface: 'level', readOn: 'covering', buildUpIn: 4 },
      covering: { kind: 'bur-gravel' },
      ...(removedIn < 0 ? {} : { removedIn }),
    });

  it('counts at its place, and no retarder is hung on that nobody can lay', () => {
    const [torn, old] = [damp(kept(-1)), damp(kept(0))];
    expect(old.above.winterR).toBeGreaterThan(torn.above.winterR + 5);
    expect(old.above.labelR).toBeCloseTo(torn.above.labelR, 9);
    expect(old.profile.map(({ face }) => face)).toContain('under the old covering');
    expect(old.deckSheet).toBeNull();
    expect(old.cure?.retarder ?? 'none').toBe('none');
    expect(`${old.answer} ${old.todo.join(' ')} ${old.retarder.text}`).not.toMatch(
      /[Ll]ay .*retarder|retarder on the deck/,
    );
  });

  it('is never safe unseen: a core is asked for, and what was taken is listed', () => {
    const found = kept(0);
    expect(damp(found).verdict).not.toBe('safe');
    expect(damp(found).todo.join(' ')).toContain('Cut a core');
    expect(found.answer.assumed.map(({ path }) => path)).toContain('existing.buildUpIn');
  });

  it('with its covering off a sheet goes on what stays, and is on the order', () => {
    const found = kept(1);
    expect(damp(found).deckSheet?.on).toBe('what stays of the old roof');
    expect(damp(found).todo.join(' ')).not.toContain('The old covering stays');
    expect(found.answer.materials.map(({ id }) => id)).toContain('deck-sheet');
  });
});

describe('water by the month', () => {
  it('a lining that is not enough is told by what is left and the years, not by its most alone', () => {
    const found = dampRoof('foam', 14, {
      place: { city: 'Duluth', state: 'MN' },
      deck: joists,
      building: { below: 'living-ceiling' },
      insulation: { below: closedCell(5) },
    });
    const { balance, cure } = damp(found);
    const lined = balance!.withLining;
    expect(cure?.moreIn).toBeGreaterThan(0);
    expect(lined.peakGPerM2).toBeLessThan(wetAlarm.gPerM2);
    const years = Math.floor(yearsToAlarm(lined));
    expect(years).toBeLessThan(wetGrowth.years);
    const words = monthWords(damp(found))!;
    expect(words).toContain(`left after two years: ${wetAlarm.gPerM2} in about ${years} years.`);
    expect(words).toContain(`More than ${wetAlarm.gPerM2} within ${wetGrowth.years} years is too much`);
  });
});

describe('rooms of a pool under an old covering that stays', () => {
  const pool = (baseIn: number, removedIn: number) =>
    dampRoof('pool', 40, {
      place: { city: 'Duluth', state: 'MN' },
      deck: { kind: 'steel', thicknessIn: 1.5 },
      building: { below: 'living-exposed-deck', winterHumidityPct: 60 },
      existing: { surface: 'level', readOn: 'covering', buildUpIn: 3 },
      covering: { kind: 'epdm' },
      insulation: { keepExisting: removedIn === 0, baseIn },
      removedIn,
    });

  it('a sheet over the old covering is tried, and with it the roof holds', () => {
    const bare = damp(pool(8, 0));
    expect(bare.cure).toMatchObject({ moreIn: 0, retarder: 'foil' });
    expect(bare.verdict).toBe('safe-if');
    expect(bare.deckSheet).toMatchObject({ kind: 'vapor-retarder', on: 'the old covering' });
    expect(bare.retarder.text).toContain('Put a foil-faced vapor retarder on the old covering');
    expect(yearHolds(bare.balance!)).toBe(false);
    expect(yearHolds(bare.balance!.withLining)).toBe(true);
  });

  it('taking the old roof off is named with what it takes, and with that the torn roof holds', () => {
    const old = damp(pool(1, 0));
    const { moreIn, retarder } = old.cure!.tornOff!;
    expect(old.todo.join(' ')).toContain('Or take the old roof off down to the deck');
    expect(old.todo.join(' ')).not.toContain('make it stay dry here');
    const torn = damp(pool(1 + moreIn, 3));
    expect(torn.cure).toMatchObject({ moreIn: 0, retarder });
  });

  it('taking it off is not named where that takes no less board', () => {
    const { cure, todo } = damp(
      dampRoof('boards', 40, {
        ...over('Chicago', 'IL', battsR(19), { insulation: { keepExisting: true } }),
        existing: { surface: 'level', readOn: 'covering', buildUpIn: 3.5 },
        removedIn: 0.5,
      }),
    );
    expect(cure!.tornOff!.moreIn).toBeGreaterThanOrEqual(cure!.moreIn!);
    expect(todo.join(' ')).not.toContain('take the old roof off');
  });

  it('where nothing of it stays, taking it off is no way out', () => {
    const torn = damp(pool(0.5, 3));
    expect(torn.cure?.tornOff ?? null).toBeNull();
    expect(torn.todo.join(' ')).not.toContain('Or take the old roof off');
  });
});

describe('heights where no board is planned', () => {
  it('board that fits nowhere is not told as more board over the board that is planned', () => {
    const found = dampRoof('tight', 6, over('Denver', 'CO', battsR(34), { file: { preferences: {} } }));
    expect(found.answer.chosenLayout).toBeNull();
    const { cure, todo } = damp(found);
    expect(cure).toMatchObject({ planned: false, fits: false });
    expect(todo[0]).toContain('No board is planned');
    expect(todo[1]).toContain('there is room for');
    expect(todo.join(' ')).not.toMatch(/more board|the board that is planned/);
  });
});

describe('a table of the code is told apart from water', () => {
  it('dry by the figures, short by the table: no stop, and the two ways that the code leaves', () => {
    const found = dampRoof('Sacramento', 30, over('Sacramento', 'CA', battsR(20)));
    expect(
      damp(found)
        .tests.filter(({ state }) => state === 'fails')
        .map(({ id }) => id),
    ).toEqual(['table-foam']);
    expect(damp(found).verdict).toBe('safe-if');
    expect(damp(found).answer).toMatch(/stays warm and dry .*table of the code asks for R-5/);
    expect(damp(found).answer).not.toContain('turn to water');
    expect(damp(found).todo.join(' ')).toContain('note b');
    expect(findingIds(found)).not.toContain('condensation-risk');
  });

  it('a vented roof is not bound by it as long as its vents stay', () => {
    const { answer, todo } = damp(dampRoof('vented', 30, over('Atlanta', 'GA', battsR(30, 'yes'))));
    expect(answer).toContain('once the vents are closed');
    expect(todo.join(' ')).toContain('Or leave the vents as they are');
  });
});

describe('the ways to place the insulation say what the answer says', () => {
  const way = (found: Found, id: string) => damp(found).options.find((one) => one.id === id)!;

  it('batts and board holds with the board that is named, films counted', () => {
    const found = dampRoof('Chicago', 16, over('Chicago', 'IL', battsR(30)));
    const { dry, aboveR, why } = way(found, 'batts-and-board');
    expect(dry).toBe(true);
    expect(why).not.toContain('rooms so damp');
    const flatIn = aboveR / labelR(1);
    const laid = dampRoof(
      'laid',
      40,
      over(
        'Chicago',
        'IL',
        { kind: 'batts', thicknessIn: 9.25, vented: 'no' },
        { insulation: { flatIn, flatRPerIn: labelR(1) } },
      ),
    );
    expect(damp(laid).tests.filter(({ state }) => state === 'fails')).toEqual([]);
  });

  it('without a winter nothing is called dry or wet', () => {
    const found = dampRoof('nowhere', 16, { building: { below: 'living-ceiling' } });
    for (const id of ['unvented-batts', 'closed-cell', 'all-above']) expect(way(found, id).dry, id).toBeNull();
    expect(optionRows(damp(found)).find(({ option }) => option.id === 'all-above')?.dry).toBe('not known');
  });
});

describe('water that is left over is judged by its pace', () => {
  it('5 g in two years is borne for longer than a covering lasts; 225 g and 40 g are not', () => {
    const water = (peakGPerM2: number, leftGPerM2: number) => ({ peakGPerM2, leftGPerM2 });
    expect(yearHolds(water(7, 5))).toBe(true);
    expect(yearHolds(water(40, 40))).toBe(false);
    expect(yearHolds(water(225, 225))).toBe(false);
    expect(yearHolds(water(wetAlarm.gPerM2 + 1, 0))).toBe(false);
    expect(yearHolds(water(wetAlarm.gPerM2, 0))).toBe(true);
    expect(yearsToAlarm(water(5, 5))).toBeCloseTo(80, 9);
    expect(yearsToAlarm(water(105, 5))).toBeCloseTo(40, 9);
    expect(wetGrowth.years).toBeGreaterThan(20);
  });

  it('a foil-faced retarder over which 5 g gather needs no professional', () => {
    const found = dampRoof('cold', 30, {
      ...over('Fairbanks', 'AK', { kind: 'none' }, { insulation: { flatIn: 11 } }),
      existing: { planes: [{ slopeInPerFt: 0.5, fallsToward: { side: 0 } }], readOn: 'covering' },
    });
    expect(damp(found).balance!.withLining.leftGPerM2).toBeGreaterThan(1);
    expect(damp(found).verdict).toBe('safe-if');
    expect(everythingSaid(found)).not.toContain('building-science professional');
  });
});

describe('what is not known yet is held back', () => {
  it('below unknown: no sheet is advised and none is ordered; the crew and the finding read why', () => {
    const found = dampRoof('unknown', 16, {
      place: { city: 'Fairbanks', state: 'AK' },
      building: { below: 'living-ceiling' },
    });
    expect(damp(found).retarder).toMatchObject({ advice: 'not-known' });
    expect(damp(found).retarder.text).toContain('held back');
    expect(damp(found).deckSheet).toBeNull();
    expect(said(found, 'damp-not-known')).toContain('No sheet for the deck is on the order yet');
  });
});

it('more board counts by its label where the table asks for a label', () => {
  const found = dampRoof('Helena', 40, over('Helena', 'MT', battsR(13)));
  const { cure, above } = damp(found);
  const [short, laid] = [cure!.moreIn! - 0.5, cure!.moreIn!].map((moreIn) => above.labelR + 2 * labelR(moreIn / 2));
  expect(laid).toBeGreaterThanOrEqual(25);
  expect(short).toBeLessThan(25);
});
