import { describe, expect, it } from 'vitest';
import { deckSheetStock } from '../../reference/takeoff/deck-sheet.ts';
import { orderOfWork } from '../../src/core/report/page-crew.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { type PageSetting, roofLinks } from '../../views/page-setting.ts';
import { CrewSheetPage } from '../../views/pages/crew-sheet-page.tsx';
import { EstimatePage } from '../../views/pages/estimate-page.tsx';
import { SupplierRequestPage } from '../../views/pages/supplier-request-page.tsx';
import { assessed, gutterRoof, roofOf } from './takeoff-roofs.ts';

const onTop = { building: { heightFt: 10, below: 'living-exposed-deck' } };
const answer = (place: object, more: Record<string, unknown> = onTop): Assessment =>
  assessed(roofOf(gutterRoof(30, 20, { place, ...more })));

const losAngeles = { city: 'Los Angeles', state: 'CA' };
const duluth = { city: 'Duluth', state: 'MN' };
const line = ({ materials }: Assessment, id = 'deck-sheet') => materials.find((one) => one.id === id);
const steps = (found: Assessment) => orderOfWork(found, found.layouts.find(({ id }) => id === found.chosenLayout)!);
const setting: PageSetting = { links: roofLinks('r 1'), style: { href: '/style.css' }, dateText: '3 May, dry' };

describe('sheet on the deck', () => {
  it('a warm place gets an airtight sheet that lets vapor through, a cold one a retarder', () => {
    expect(line(answer(losAngeles))?.item).toMatch(/^Airtight sheet .*lets vapor through/);
    expect(line(answer(duluth))?.item).toMatch(/^Vapor retarder .*perm or less/);
  });

  it('none where the damp part calls for none: over an attic, under foam, over what is not known, on a slab', () => {
    const room = { heightFt: 10, below: 'living-ceiling' };
    for (const more of [
      {},
      { building: room, insulation: { below: { kind: 'closed-cell', thicknessIn: 5 } } },
      { building: room },
      { ...onTop, deck: { kind: 'concrete', thicknessIn: 6 } },
    ]) {
      const found = answer(losAngeles, more);
      expect(found.moisture?.deckSheet ?? null).toBeNull();
      expect(line(found)).toBeUndefined();
      expect(steps(found).some(({ title }) => title.includes('over the deck, before'))).toBe(false);
    }
  });

  it('held back over what is not known below, it says so on the order and on the crew sheet', () => {
    const found = answer(duluth, { building: { heightFt: 10, below: 'living-ceiling' } });
    const held = 'No sheet for the deck is on the order yet';
    expect(found.moisture?.deckSheetHeld).toContain(held);
    for (const page of [
      <SupplierRequestPage assessment={found} setting={setting} />,
      <EstimatePage assessment={found} setting={setting} />,
      <CrewSheetPage assessment={found} setting={setting} />,
    ])
      expect(String(page)).toContain(held);
    expect(answer(duluth).moisture?.deckSheetHeld).toBeNull();
  });

  it('held back where the winter is not known, and no other answer stands in for it', () => {
    const below = (more: object) => ({
      building: { heightFt: 10, below: 'living-ceiling' },
      insulation: { below: more },
    });
    for (const [more, held] of [
      [onTop, 'must stop vapor or air alone'],
      [below({ kind: 'batts', r: 13, vented: 'no' }), 'must stop vapor or air alone'],
      [below({ kind: 'open-cell', thicknessIn: 5.5, vented: 'no' }), 'one is needed'],
      [{ ...onTop, deck: { kind: 'concrete', thicknessIn: 6 } }, 'one is needed'],
    ] as const) {
      const found = answer({}, more);
      expect(found.moisture?.deckSheet).toBeNull();
      expect(line(found)).toBeUndefined();
      expect(found.moisture?.deckSheetHeld).toContain(`${held} hangs on the winter here`);
      expect(found.moisture?.retarder.advice).toBe('not-known');
      expect(found.moisture?.retarder.text).not.toMatch(/^(None|No) /);
    }
  });

  it('covers the deck and its turn-ups; the rolls are those of the rows, counted by hand', () => {
    const found = answer(duluth);
    const { widthIn, lengthFt, sideLapIn, endLapIn } = deckSheetStock.find(({ kind }) => kind === 'vapor-retarder')!;
    const { quantity, orderQuantity, basis, source } = line(found)!;
    const layout = found.layouts.find(({ id }) => id === found.chosenLayout)!;
    // 3 in past the rakes and the gutter, and up the wall to the top of the boards and 2 in onto it.
    const wallIn = Math.max(...layout.nailers.filter(({ edge }) => edge.includes('wall')).map(({ endIn }) => endIn), 0);
    const tallFt = 20 + 0.25 + (wallIn + 2) / 12;
    expect(quantity).toBeGreaterThanOrEqual(30.5 * 20.25 - 1e-6);
    expect(quantity).toBeLessThan(30.5 * (tallFt + 1));
    const rows = Number(/^(\d+) rows/.exec(basis)![1]);
    const covered = rows * (widthIn / 12) - ((rows - 1) * sideLapIn) / 12;
    const acrossFt = quantity / 30.5;
    expect(covered).toBeGreaterThanOrEqual(acrossFt - 1e-6);
    expect(covered - (widthIn - sideLapIn) / 12).toBeLessThan(acrossFt);
    const rollFt = rows * 30.5;
    expect(orderQuantity).toBe(1 + Math.ceil((rollFt - lengthFt) / (lengthFt - endLapIn / 12)));
    expect(source).not.toBeNull();
  });

  it('curbs and pipes take collars; primer goes with it, on steel none', () => {
    const plain = line(answer(duluth))!.quantity;
    const pipes = [{ at: [8, 8], diameterIn: 3, kind: 'plumbing', topIn: 20 }];
    expect(line(answer(duluth, { ...onTop, pipes }))!.quantity).toBeCloseTo(plain + 4, 6);
    const primer = line(answer(duluth), 'deck-sheet-primer')!;
    expect(primer.quantity).toBeCloseTo((0.75 * plain) / 100, 6);
    const steel = answer(duluth, { ...onTop, deck: { kind: 'steel', thicknessIn: 1.5 } });
    expect(line(steel)?.basis).toContain('ribs');
    expect(line(steel, 'deck-sheet-primer')).toBeUndefined();
  });

  it('over what stays of the old roof the order and the crew sheet name that and not the deck', () => {
    const stays = (removedIn: number, on: string, more: object) => {
      const found = answer(duluth, {
        ...onTop,
        existing: { surface: 'level', readOn: 'covering', buildUpIn: 3.5 },
        insulation: { keepExisting: true },
        removedIn,
        ...more,
      });
      expect(found.moisture?.deckSheet?.on).toBe(on);
      expect(line(found)?.item).toContain(`retarder on ${on},`);
      expect(line(found)?.basis).toContain(`sticks to ${on}`);
      expect(line(found)?.basis).not.toContain('ribs');
      expect(line(found, 'deck-sheet-primer')?.item).toContain(`on ${on} under`);
      const step = steps(found).find(({ title }) => title.includes(`over ${on}, before`))!;
      expect(step.lines.join(' ')).toContain('what is wet comes out');
      expect(step.lines.join(' ')).not.toMatch(/[Dd]eck dry|wet deck/);
    };
    stays(0.5, 'what stays of the old roof', {});
    const pool = { building: { heightFt: 10, below: 'living-exposed-deck', winterHumidityPct: 60 } };
    stays(0, 'the old covering', { ...pool, deck: { kind: 'steel', thicknessIn: 1.5 } });
  });

  it('is listed before the boards', () => {
    const ids = answer(duluth).materials.map(({ group }) => group);
    expect(ids.indexOf('Deck sheet')).toBeGreaterThanOrEqual(0);
    expect(ids.indexOf('Deck sheet')).toBeLessThan(ids.indexOf('Boards'));
  });
});

describe('crew sheet', () => {
  it('the sheet is a hold point after the bare deck is shot, before wood and boards', () => {
    const order = steps(answer(duluth));
    const at = (word: string) => order.findIndex(({ title }) => title.includes(word));
    expect(order[at('vapor retarder over the deck')].hold).toBe(true);
    expect(at('Shoot the bare deck')).toBeLessThan(at('vapor retarder over the deck'));
    expect(at('vapor retarder over the deck')).toBeLessThan(at('Set the wood'));
    expect(at('vapor retarder over the deck')).toBeLessThan(at('Lay the boards'));
  });

  it('damp that is not safe stands on its page', async () => {
    const damp = answer({ city: 'Chicago', state: 'IL' }, { building: { heightFt: 10, below: 'living-ceiling' } });
    const said = damp.findings.find(({ id }) => id === 'damp-not-known')!;
    const html = String(await (<CrewSheetPage assessment={damp} setting={setting} />));
    expect(html).toContain(said.where);
    expect(html).toContain(said.message.slice(0, 40));
  });
});
