import { describe, expect, test } from 'vitest';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import type { Ring } from '../../src/core/roof.ts';
import { assessed, roofOf } from './takeoff-roofs.ts';

const rectangle = (w: number, d: number): Ring => [
  [0, 0],
  [w, 0],
  [w, d],
  [0, d],
];
const answerOf = (outline: Ring, parts: object): Assessment =>
  assessed(
    roofOf({
      version: 1,
      label: 'Invented',
      building: { heightFt: 12, below: 'attic' },
      deck: { kind: 'plywood', thicknessIn: 0.625 },
      outline,
      edges: outline.map((_, side) => ({ side, kind: 'parapet', topIn: 30, mayDrain: 'no' })),
      existing: { surface: 'level', readOn: 'covering', buildUpIn: 4 },
      ...parts,
    }),
  );
const drain = (id: string, at: readonly [number, number], more: object = {}) => ({
  ...{ id, kind: 'drain', at, role: 'primary', leaderRoute: 'yes' },
  ...more,
});
const chosenOf = ({ layouts, chosenLayout }: Assessment): Layout => layouts.find(({ id }) => id === chosenLayout)!;

describe('layouts that are offered', () => {
  test('a main drain is set to the new surface, wherever its inlet stands today', () => {
    const plain = chosenOf(answerOf(rectangle(40, 40), { outlets: [drain('D1', [20, 20])] }));
    for (const inletIn of [0, 1]) {
      const own = chosenOf(answerOf(rectangle(40, 40), { outlets: [drain('D1', [20, 20], { inletIn })] }));
      expect(own.id).toBe(plain.id);
      expect(own.volumeBoardFt).toBeCloseTo(plain.volumeBoardFt, 6);
      expect(own.levellingBoardFt).toBeCloseTo(0, 6);
    }
  });

  test('what needs leave that was never given does not lead, alone or in a pair, and says whom to ask', () => {
    const answer = answerOf(rectangle(40, 24), {
      edges: [
        { side: 0, kind: 'parapet', topIn: 13, mayDrain: 'unknown' },
        { side: 1, kind: 'parapet', topIn: 13, mayDrain: 'unknown' },
        { side: 2, kind: 'parapet', topIn: 13, mayDrain: 'yes' },
        { side: 3, kind: 'parapet', topIn: 13, mayDrain: 'no' },
      ],
      existing: { surface: 'level', readOn: 'deck' },
      outlets: [],
    });
    const asking = answer.layouts.filter(({ outlets }) => outlets.some(({ id }) => /scupper-side-[01]$/.test(id)));
    for (const { why } of asking.filter(({ rejected }) => rejected === null)) expect(why).toContain('ask first');
    expect(chosenOf(answer).why).not.toContain('ask first');
  });

  test('a new drain at the low spot keeps off a curb', () => {
    const curb: Ring = [
      [20, 10],
      [26, 10],
      [26, 16],
      [20, 16],
    ];
    const { layouts } = answerOf(rectangle(48, 30), {
      curbs: [{ id: 'unit', kind: 'equipment', outline: curb, heightIn: 20 }],
      existing: {
        surface: 'level',
        readOn: 'covering',
        buildUpIn: 4,
        seenPonds: [{ at: [26, 16], depthIn: 1, hoursAfterRain: 48 }],
      },
      outlets: [drain('D1', [4, 15])],
    });
    const fresh = layouts.flatMap(({ outlets }) => outlets.filter(({ id }) => id === 'new-drain-at-low-spot'));
    expect(fresh.length).toBeGreaterThan(0);
    for (const { at } of fresh) {
      const [dx, dy] = [Math.max(20 - at[0], 0, at[0] - 26), Math.max(10 - at[1], 0, at[1] - 16)];
      expect(Math.hypot(dx, dy)).toBeGreaterThanOrEqual(1 - 1e-9);
    }
  });

  test('sumps that overlap leave no step: where their planes are alike the lower holds', () => {
    const { facets } = chosenOf(
      answerOf(rectangle(48, 24), {
        insulation: { baseIn: 3 },
        boards: { sumpFt: 8 },
        outlets: [drain('D1', [10, 12]), drain('D3', [24, 12]), drain('D4', [26.5, 13])],
        existing: { surface: 'level', readOn: 'deck' },
      }),
    );
    const inside = (ring: Ring, [x, y]: readonly [number, number]): boolean =>
      ring.every((a, i) => {
        const b = ring[(i + 1) % ring.length];
        return (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]) > -1e-6;
      });
    // Heights a hair apart, over the whole section: planes rise at most 1/2 in per ft.
    const heightAt = (p: readonly [number, number]): number[] =>
      facets
        .filter(({ outline, holes }) => holes.length === 0 && inside(outline, p))
        .map(({ plane }) => plane.atOriginIn + plane.gx * p[0] + plane.gy * p[1]);
    let compared = 0;
    for (let x = 20.05; x < 31; x += 0.1)
      for (let y = 7.05; y < 18; y += 0.1) {
        const [here, beside] = [heightAt([x, y])[0], heightAt([x + 0.002, y + 0.002])[0]];
        if (here === undefined || beside === undefined) continue;
        compared++;
        expect(Math.abs(here - beside)).toBeLessThan(0.004);
      }
    expect(compared).toBeGreaterThan(3000);
  });

  test('what a rejected layout names to raise lets it fit when it is raised', () => {
    const parapets = (tops: readonly number[]) =>
      tops.map((topIn, side) => ({ side, kind: 'parapet', topIn, mayDrain: 'no' }));
    const tops = [11, 10.7, 11.2, 10];
    const at = (given: readonly number[]) =>
      answerOf(rectangle(40, 30), {
        edges: parapets(given),
        outlets: [drain('D1', [20, 15])],
        existing: { surface: 'level', readOn: 'deck' },
      }).layouts.find(({ id }) => id === 'existing-outlets')!;
    const { rejected } = at(tops);
    const raised = [...rejected!.relax!.matchAll(/parapet on the ([NESW]) side, [^ ]+ by ([^(;]+?) (?:\(or|and|;)/g)];
    expect(raised.length).toBeGreaterThan(2);
    const inch = (text: string): number =>
      text
        .replace('″', '')
        .trim()
        .split(' ')
        .reduce(
          (sum, part) =>
            sum + (part.includes('/') ? Number(part.split('/')[0]) / Number(part.split('/')[1]) : Number(part)),
          0,
        );
    const more = new Map(raised.map(([, side, by]) => ['SENW'.indexOf(side), inch(by)]));
    expect(at(tops.map((top, side) => top + (more.get(side) ?? 0))).rejected).toBeNull();
  });

  test('four planes that are turned are no dearer to cut', () => {
    const skew: Ring = [
      [0, 0],
      [50, 6],
      [44, 40],
      [-4, 30],
    ];
    const answer = answerOf(skew, { outlets: [drain('D1', [14, 16]), drain('D2', [34, 22])] });
    const cost = ({ volumeBoardFt, levellingBoardFt }: Layout): number => volumeBoardFt + levellingBoardFt;
    const fourWays = answer.layouts.filter(
      ({ rejected, title, newOutlets }) =>
        rejected === null && newOutlets === 0 && /, boards at 1\/4 in per ft$/.test(title),
    );
    // The layouts stand in the order in which they are offered.
    expect(fourWays.length).toBeGreaterThan(0);
    expect(cost(fourWays[0])).toBeCloseTo(Math.min(...fourWays.map(cost)), 6);
  });
});
