import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { membraneOptions } from '../../reference/membranes/options.ts';
import { deckHolds } from '../../reference/takeoff/fasteners.ts';
import { oldCoverings } from '../../reference/takeoff/tear-off.ts';
import type { MaterialLine } from '../../src/core/report/types.ts';
import type { CoveringKind, DeckKind, Roof } from '../../src/core/roof.ts';
import type { TakeOff } from '../../src/core/takeoff/take-off.ts';
import { assessed, gutterRoof, layoutOf, listOf, roofOf } from './takeoff-roofs.ts';

const demo = (name: string): Roof =>
  roofOf(JSON.parse(readFileSync(new URL(`../../src/demo/${name}.roof.json`, import.meta.url), 'utf8')));

const line = ({ lines }: TakeOff, id: string): MaterialLine => {
  const found = lines.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no line ${id} in ${lines.map((one) => one.id).join(', ')}`);
  return found;
};
const has = ({ lines }: TakeOff, pattern: RegExp): boolean => lines.some(({ id }) => pattern.test(id));

const back = demo('back-section');
const backLayout = layoutOf(back);

describe('the living room whose ceiling is the deck (invented demo)', () => {
  const list = listOf(back, 'sbs-self-adhered-cool', undefined, backLayout);

  it('holds the boards with ribbons and lists no screw through the field', () => {
    expect(has(list, /^(screw-|board-plates|seam-plates|sheet-nails)/)).toBe(false);
    expect(line(list, 'board-adhesive').basis).toContain('seen from below');
    expect(list.findings.map(({ id }) => id)).toContain('no-field-screws');
  });

  it('counts a ribbon for every interface: fill, taper and cover board', () => {
    const thinner = { ...backLayout, pieces: backLayout.pieces.map((piece) => ({ ...piece, fillIn: 0 })) };
    const without = line(listOf(back, 'sbs-self-adhered-cool', undefined, thinner), 'board-adhesive').quantity;
    expect(line(list, 'board-adhesive').quantity).toBeGreaterThan(without + 700);
  });

  it('says that a covering held by screws does not go there', () => {
    const refused = listOf(back, 'tpo', 'mechanically-attached', backLayout);
    expect(refused.findings.map(({ id }) => id)).toContain('covering-needs-screws');
    expect(has(refused, /seam-plates|^screw-/)).toBe(false);
  });

  it('raises the skylight curb and the short pipe by what is missing', () => {
    const curb = backLayout.budgets.find(({ id }) => id === 'curb-skylight')!;
    // Levelling under the boards is part of what the curb loses; curbs are raised in whole quarters.
    expect(line(list, 'raise-curb-skylight').quantity).toBeCloseTo(Math.ceil(-curb.leftIn * 4) / 4, 9);
    expect(line(list, 'raise-pipe-1').orderQuantity).toBe(1);
  });

  it('the face of the rake metal covers the boards at both ends', () => {
    const { basis, item } = line(list, 'metal-side-1');
    expect(item).toContain('8 1/2″');
    expect(basis).toContain('2 7/8″ at the low end to 8 1/2″ at the high end');
  });

  it('gives deck repair as a range and orders the likely number', () => {
    const deck = line(list, 'deck-sheets');
    expect(deck.orderQuantity).toBe(4);
    expect(deck.basis).toContain('one job in ten more than 7');
    expect(line(list, 'wood-1-rotten-eave').basis).toContain('at most the whole side');
    const sound = { ...back, findings: [] };
    expect(has(listOf(sound, 'sbs-self-adhered-cool', undefined, backLayout), /^(deck-sheets|wood-)/)).toBe(false);
  });

  it('T-joint covers of single-ply: two seams, one curb and two in hand (worked take-off, computed)', () => {
    expect(line(listOf(back, 'tpo', 'adhered', backLayout), 't-joints').orderQuantity).toBe(8);
  });

  it('one line to buy for the same board on different fill', () => {
    const boards = list.lines.filter(({ id }) => id.startsWith('board-0') || id.startsWith('board-1'));
    expect(boards.map(({ id }) => id)).toEqual(['board-0.5-1.5', 'board-1.5-2.5']);
    const net = backLayout.boards.reduce((sum, board) => sum + board.net, 0);
    expect(boards.reduce((sum, { quantity }) => sum + quantity, 0)).toBeCloseTo(net, 9);
    expect(boards[0]!.basis).toContain('on 2 in + 2 in of fill');
  });
});

describe('C59: concrete deck, adhered PVC', () => {
  const roof = roofOf(gutterRoof(40, 24, { deck: { kind: 'concrete', thicknessIn: 5 } }));
  const list = listOf(roof, 'pvc');

  it('lists no screws through the concrete', () => {
    expect(has(list, /^(screw-|board-plates|seam-plates|sheet-nails)/)).toBe(false);
    expect(line(list, 'board-adhesive').basis).toContain('the deck is structural concrete');
  });

  it('adheres the sheet', () => {
    expect(line(list, 'bonding-adhesive').quantity).toBeGreaterThan(960 / 60);
  });
});

describe('screws where the deck takes them', () => {
  const roof = roofOf(gutterRoof(30, 20));
  const list = listOf(roof, 'tpo');
  const screws = list.lines.filter(({ id }) => id.startsWith('screw-'));

  it('lengths follow the taper: thick side + cover + deck + 1/2 in, rounded up to stock', () => {
    // Rows end at 1.5, 2.5, 3.5, 4.5 and 5.5 in; with 0.5 + 0.625 + 0.5 the need is 3.125 to 7.125 in.
    expect(screws.map(({ id }) => id)).toEqual(['screw-3.5', 'screw-4.5', 'screw-5.5', 'screw-6.5', 'screw-7.5']);
  });

  it('one plate for every screw, and the pull test is asked for', () => {
    const total = screws.reduce((sum, { quantity }) => sum + quantity, 0);
    expect(line(list, 'board-plates').quantity).toBe(total);
    expect(list.findings.map(({ id }) => id)).toEqual(['pull-test']);
  });

  it('a screw through uneven boards never comes through a ceiling of planks: thin planks are glued, thick ones take it', () => {
    const ceiling = (thicknessIn: number) =>
      roofOf(
        gutterRoof(30, 20, {
          building: { heightFt: 10, below: 'living-exposed-deck' },
          deck: { kind: 'tongue-and-groove', thicknessIn },
        }),
      );
    // Boards rise 1 in over 4 ft and stock goes by 1/2 in: with 1 in of hold and 1/4 in under the point, 2 3/4 in of plank.
    for (const [thicknessIn, screws] of [
      [1.5, false],
      [2.5, false],
      [2.75, true],
    ] as const) {
      const { lines, findings } = listOf(ceiling(thicknessIn), 'tpo', 'adhered');
      expect(lines.some(({ id }) => id.startsWith('screw-'))).toBe(screws);
      expect(lines.some(({ id }) => id === 'board-adhesive')).toBe(!screws);
      expect(findings.some(({ id }) => id === 'no-field-screws')).toBe(!screws);
    }
    const notes = (thicknessIn: number) => assessed(ceiling(thicknessIn)).findings.map(({ id }) => id);
    expect(notes(2.75)).toContain('points-stay-inside');
    expect(notes(2.75)).not.toContain('no-field-fasteners');
  });

  it('a panel too thin for screws is glued', () => {
    const thin = roofOf(gutterRoof(30, 20, { deck: { kind: 'plywood', thicknessIn: 0.375 } }));
    expect(has(listOf(thin, 'tpo'), /^screw-/)).toBe(false);
  });
});

describe('tables', () => {
  it('every deck and every old covering of the roof file has its row', () => {
    const decks: Record<DeckKind, true> = {
      plywood: true,
      osb: true,
      plank: true,
      'tongue-and-groove': true,
      steel: true,
      concrete: true,
      gypsum: true,
      'cement-fiber': true,
      'lightweight-concrete': true,
    };
    const coverings: Record<CoveringKind, true> = {
      'sbs-granule': true,
      app: true,
      'bur-gravel': true,
      'bur-smooth': true,
      tpo: true,
      pvc: true,
      epdm: true,
      'roll-roofing': true,
      coating: true,
      'spray-foam': true,
      metal: true,
      other: true,
    };
    expect(deckHolds.map(({ deck }) => deck).sort()).toEqual(Object.keys(decks).sort());
    expect(oldCoverings.map(({ covering }) => covering).sort()).toEqual(Object.keys(coverings).sort());
  });
});

describe('laws of the list', () => {
  const roofs: readonly (readonly [string, Roof])[] = [
    ['back section', back],
    ['corner drain', demo('corner-drain')],
    ['rectangle', roofOf(gutterRoof(41.3, 27.7))],
  ];

  for (const [name, roof] of roofs) {
    const layout = layoutOf(roof);
    for (const { id: membrane } of membraneOptions) {
      it(`${name}, ${membrane}: finite, positive, distinct ids, the same twice, enough for the net`, () => {
        const list = listOf(roof, membrane, undefined, layout);
        const ids = list.lines.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(listOf(roof, membrane, undefined, layout)).toEqual(list);
        for (const { id, quantity, orderQuantity, basis, unit, orderUnit } of list.lines) {
          expect(Number.isFinite(quantity) && quantity > 0, `${id} ${quantity}`).toBe(true);
          expect(Number.isFinite(orderQuantity) && orderQuantity > 0, `${id} ${orderQuantity}`).toBe(true);
          expect(basis).not.toMatch(/NaN|undefined|null|Infinity/);
          if (unit === orderUnit) expect(orderQuantity).toBeGreaterThanOrEqual(quantity - 1e-9);
        }
        expect(line(list, 'cover-board').orderQuantity * 32).toBeGreaterThanOrEqual(line(list, 'cover-board').quantity);
        for (const { id, basis, quantity } of list.lines.filter(({ id }) =>
          /^membrane-(field|cap|base|single)$/.test(id),
        )) {
          const held = Number(/rolls hold ([\d,]+) sq ft/.exec(basis)![1]!.replaceAll(',', ''));
          expect(held, id).toBeGreaterThanOrEqual(Math.floor(quantity));
        }
      });
    }
  }

  it('a bigger roof never takes less', () => {
    const sizes = [
      [20, 12],
      [24, 16],
      [30, 20],
      [36, 20],
      [48, 30],
    ] as const;
    const lists = sizes.map(([w, d]) => listOf(roofOf(gutterRoof(w, d)), 'tpo'));
    for (const id of [
      'membrane-field',
      'cover-board',
      'nailers',
      'metal-side-0',
      'flange-nails',
      'tear-off',
      'board-plates',
    ])
      for (let i = 1; i < lists.length; i++) {
        if (!has(lists[i]!, new RegExp(`^${id}$`))) continue;
        expect(line(lists[i]!, id).quantity, `${id} ${sizes[i]}`).toBeGreaterThanOrEqual(
          line(lists[i - 1]!, id).quantity,
        );
      }
  });

  it('ids stay when the roof grows', () => {
    const ids = (w: number): string[] => listOf(roofOf(gutterRoof(w, 20)), 'tpo').lines.map(({ id }) => id);
    expect(ids(44)).toEqual(ids(30));
  });
});

describe('unlike edges', () => {
  it('an edge opened by a layout gets a drip edge and a gutter', () => {
    const layout = layoutOf(roofOf(gutterRoof(30, 20)));
    const [gutter] = layout.outlets;
    const wall = { ...gutter!, id: 'side-2', status: 'proposed' as const, label: 'wall, 30 ft', adequate: false };
    const list = listOf(roofOf(gutterRoof(30, 20)), 'tpo', undefined, {
      ...layout,
      outlets: [...layout.outlets, wall],
    });
    expect(line(list, 'metal-side-2').item).toContain('Drip edge');
    expect(line(list, 'gutter-side-2').orderQuantity).toBe(3);
    expect(has(list, /^termination-bar$/)).toBe(false);
  });

  it('a pitch that is not known takes the longest run', () => {
    const file = gutterRoof(30, 20, {
      edges: [
        { side: 0, kind: 'gutter', mayDrain: 'yes' },
        { side: 2, kind: 'shingles-above', mayDrain: 'no' },
      ],
    });
    const { basis, quantity } = line(listOf(roofOf(file), 'tpo'), 'shingles-side-2');
    expect(basis).toContain('pitch not known');
    expect(quantity).toBeCloseTo((30 * 8 * Math.hypot(12, 3)) / 3 / 12, 6);
  });

  it('drains are reset, new ones are bought', () => {
    const roof = demo('corner-drain');
    const [plain, more] = [layoutOf(roof, 0), layoutOf(roof, 1)];
    const list = listOf(roof, 'sbs-cold', undefined, more);
    expect(line(list, 'outlet-reset-primary-drain').quantity).toBe(1);
    const bought = list.lines.filter(({ id }) => id.startsWith('outlet-new'));
    expect(bought.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(1);
    expect(has(listOf(roof, 'sbs-cold', undefined, plain), /^outlet-new/)).toBe(false);
    expect(line(list, 'coping-side-3').basis).toContain('measure');
  });
});
