import { describe, expect, it } from 'vitest';
import { wetAlarm } from '../../reference/vapor.ts';
import { cOfF, fOfC } from '../../src/core/heat/degrees.ts';
import { yearBalance, yearHolds } from '../../src/core/moisture/balance.ts';
import { buildUpOf } from '../../src/core/moisture/build-up.ts';
import { shareAbove } from '../../src/core/moisture/condensing-plane.ts';
import { lined, vaporLayers } from '../../src/core/moisture/layers.ts';
import { dewPointOf, saturationPa } from '../../src/core/moisture/psychrometrics.ts';
import { roomOf } from '../../src/core/moisture/room.ts';
import { winterFor } from '../../src/core/moisture/winter.ts';
import { winterWords } from '../../src/core/report/page-damp.ts';
import { everythingSaid, findingIds, said } from './case-roof.ts';
import { dampRoof as roof } from './damp-roof.ts';

const chicago = { city: 'Chicago', state: 'IL' };
const joists = { kind: 'plywood', thicknessIn: 0.625, joists: { depthIn: 9.25 } };
const batts = {
  place: chicago,
  deck: joists,
  building: { below: 'living-ceiling' },
  insulation: { below: { kind: 'batts', r: 30, vented: 'yes' } },
};
const slab = {
  place: chicago,
  deck: { kind: 'concrete', thicknessIn: 6 },
  building: { below: 'living-ceiling' },
  insulation: { below: { kind: 'none' } },
};
const cold = (winterHumidityPct: number) => ({
  place: { city: 'Fairbanks', state: 'AK' },
  deck: { kind: 'tongue-and-groove', thicknessIn: 1.5 },
  building: { below: 'living-exposed-deck', winterHumidityPct },
});

const damp = ({ answer }: ReturnType<typeof roof>) => answer.moisture!;
const finding = ({ answer }: ReturnType<typeof roof>, id: string) => answer.findings.find((one) => one.id === id);

describe('a verdict that is not safe is a finding', () => {
  it('at risk, and the heights do not bear the cure: a stop with its figures', () => {
    const low = roof('low door', 16, batts);
    expect(damp(low).verdict).toBe('at-risk');
    expect(finding(low, 'condensation-risk')).toMatchObject({ level: 'stop', where: 'inside the roof' });
    expect(finding(low, 'condensation-risk')?.source).not.toBeNull();
    expect(finding(low, 'condensation-risk')?.limit).toContain('%');
  });

  it('safe only if something is done, or not known: to do', () => {
    const conditions = roof('slab', 16, slab);
    expect(damp(conditions).verdict).toBe('safe-if');
    expect(finding(conditions, 'damp-conditions')).toMatchObject({ level: 'fix' });
    expect(said(conditions, 'damp-conditions')).toContain('vapor retarder');
    const unknown = roof('unknown', 16, { place: chicago, building: { below: 'living-ceiling' } });
    expect(finding(unknown, 'damp-not-known')).toMatchObject({ level: 'fix' });
    expect(said(unknown, 'damp-not-known')).toContain('ceiling');
  });

  it('a safe roof and one over no rooms have none', () => {
    const dry = { place: { city: 'Los Angeles', state: 'CA' }, building: { below: 'living-exposed-deck' } };
    for (const more of [dry, { building: { below: 'attic' } }])
      expect(findingIds(roof('dry', 16, more)).filter((id) => /^(damp|condensation)/.test(id))).toEqual([]);
  });
});

describe('more board is held against the heights', () => {
  it('it says what is left at the tightest place, what is short, and what gives', () => {
    const low = roof('low door', 16, batts);
    const { cure, todo } = damp(low);
    const left = Math.min(
      ...low.answer.layouts.find(({ id }) => id === low.answer.chosenLayout)!.budgets.map((b) => b.leftIn),
    );
    expect(cure?.tightest?.leftIn).toBeCloseTo(left, 9);
    expect(cure?.fits).toBe(false);
    expect(cure?.broken[0].shortIn).toBeCloseTo((cure?.moreIn ?? 0) - left, 9);
    expect(todo[1]).toContain('do not bear');
    expect(todo.join(' ')).toMatch(/raise the door .*take (all )?batts out .*closed-cell/);
  });

  it('a high door bears it, then it is work and no stop; with so much board every test holds', () => {
    const high = roof('high door', 30, batts);
    const { cure, todo } = damp(high);
    expect(cure?.fits).toBe(true);
    expect(finding(high, 'condensation-risk')?.level).toBe('fix');
    expect(todo[1]).toContain('fits');
    const cured = roof('cured', 30, { ...batts, insulation: { ...batts.insulation, baseIn: cure?.moreIn } });
    expect(damp(cured).tests.filter(({ state }) => state === 'fails')).toEqual([]);
    const nearly = roof('nearly', 30, {
      ...batts,
      insulation: { ...batts.insulation, baseIn: (cure?.moreIn ?? 0) - 1 },
    });
    expect(damp(nearly).verdict).toBe('at-risk');
  });

  it('a height that is not known is asked for', () => {
    const { cure, todo } = damp(roof('unmeasured door', null, batts));
    expect(cure?.fits).toBeNull();
    expect(todo[1]).toContain('Measure first');
  });

  it('foam is not named where no sprayed foam is wanted', () => {
    const low = roof('no foam', 16, { ...batts, preferences: { noSprayFoam: true } });
    expect(damp(low).todo.join(' ')).not.toContain('closed-cell');
  });
});

describe('a retarder is computed, not promised', () => {
  it('Fairbanks at 70 %: it fails with the retarder too, so no retarder is said to cure it', () => {
    const { verdict, balance, cure, todo, retarder, answer, tests } = damp(roof('cold', 16, cold(70)));
    expect(tests.find(({ id }) => id === 'year-balance')?.state).toBe('fails');
    expect(yearHolds(balance!.withLining)).toBe(false);
    expect(verdict).toBe('at-risk');
    expect(answer).not.toContain('keeps room damp out');
    expect(cure?.moreIn).toBeNull();
    expect(todo.join(' ')).toContain('building-science professional must decide');
    expect(retarder.text).toContain('not enough alone');
  });

  it('what slows it most is the balance of just that roof', () => {
    const found = roof('cold', 16, cold(70));
    const { slows } = damp(found).cure!;
    const layout = found.answer.layouts.find(({ id }) => id === found.answer.chosenLayout)!;
    const { winter } = winterFor(found.roof.place);
    const built = buildUpOf(found.site, layout, { moreIn: slows!.moreIn });
    const year = yearBalance(vaporLayers(lined(built.layers, slows!)), winter!, roomOf(winter!, 70).excessPa);
    expect(slows!.leftGPerM2).toBeCloseTo(year.leftGPerM2, 9);
    // What a season swings through comes on top of what is left: both together reach the alarm.
    const roomG = wetAlarm.gPerM2 - (year.peakGPerM2 - year.leftGPerM2);
    expect(slows!.years).toBeCloseTo((2 * roomG) / year.leftGPerM2, 9);
  });

  it('drier rooms are named where they are enough: just there the same roof passes', () => {
    const damper = { ...cold(60), place: { city: 'Minneapolis', state: 'MN' } };
    const { drierRoom } = damp(roof('damp', 16, damper)).cure!;
    expect(drierRoom!.mostPct).toBeLessThan(60);
    const drier = { ...cold(drierRoom!.mostPct), place: damper.place };
    expect(damp(roof('drier', 16, drier)).verdict).toBe('safe-if');
  });

  it('a slab in Chicago: the retarder is enough, and the result of the second computation is told', () => {
    const { verdict, balance, reasons, cure } = damp(roof('slab', 16, slab));
    expect([verdict, cure?.moreIn, cure?.retarder]).toEqual(['safe-if', 0, 'sheet']);
    expect(yearHolds(balance!.withLining)).toBe(true);
    expect(reasons.join(' ')).toContain('Computed again with a vapor retarder');
  });

  it('over vented batts it does not help, and is not advised', () => {
    expect(damp(roof('low door', 16, batts)).retarder).toMatchObject({ advice: 'no' });
  });
});

describe('ways to place the insulation', () => {
  const way = (found: ReturnType<typeof roof>, id: string) => damp(found).options.find((one) => one.id === id)!;
  const ceiling = { ...batts, building: { below: 'living-ceiling' } };

  it('all above stays dry in ordinary rooms; what it takes is said, and where it does not dry it is not said to', () => {
    expect(way(roof('ordinary', 16, ceiling), 'all-above')).toMatchObject({ dry: true });
    const damper = roof('damper', 16, { ...ceiling, building: { ...ceiling.building, winterHumidityPct: 60 } });
    expect(way(damper, 'all-above').dry).toBe(true);
    expect(way(damper, 'all-above').why).toContain('It takes a vapor retarder on the deck');
    const fairbanks = { ...ceiling, place: cold(70).place, building: { ...ceiling.building, winterHumidityPct: 70 } };
    for (const id of ['all-above', 'batts-and-board'])
      expect(way(roof('cold', 16, fairbanks), id)).toMatchObject({ dry: false });
  });
});

describe('words that fit the roof', () => {
  it('a place warmer than the condensing plane asks for no share: no R under zero is told', () => {
    expect(shareAbove(69.8)).toBe(0);
    const miami = roof('Miami', 16, { place: { city: 'Miami', state: 'FL' }, building: { below: 'living-ceiling' } });
    expect(damp(miami).answer).not.toMatch(/R-+-/);
    expect(damp(miami).mostBelowR).toBeNull();
  });

  it.each(['concrete', 'steel'])('%s: nothing of boards with joints, joist spaces or wood', (kind) => {
    const hard = roof(kind, 16, { ...slab, deck: { kind, thicknessIn: 1.5 } });
    const { answer, todo, reasons, retarder, options } = damp(hard);
    const words = [answer, ...todo, ...reasons, ...options.map(({ title }) => title)].join(' ');
    expect(words).not.toMatch(/joints between|[Jj]oist|wood/);
    expect(`${retarder.text} ${everythingSaid(hard)}`).not.toMatch(/wood should see|joints between boards/);
  });

  it('a dew point stands with the air that it belongs to', () => {
    const found = damp(roof('slab', 16, { ...slab, building: { below: 'living-ceiling', winterHumidityPct: 41 } }));
    const { room, tests } = found;
    const own = fOfC(dewPointOf((room!.humidityPct / 100) * saturationPa(cOfF(room!.airF))));
    expect(room!.dewPointF).toBeCloseTo(own, 6);
    const printed = `${room!.dewPointF.toFixed(1)} F`;
    expect(winterWords(found)).toMatch(/Rooms at 70 F and 41 % humidity .* turns to water at/);
    const note = tests.find(({ id }) => id === 'deck-plane')!.note;
    expect(note).toContain(`room air of 70 F and 41 % humidity turns to water (${printed})`);
    expect(note).toMatch(/^There: with 68 F in the room/);
  });
});
