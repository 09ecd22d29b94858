import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/assess.ts';
import { limitRows } from '../../src/core/report/page-limits.ts';
import { heightRows } from '../../src/core/report/page-thermal.ts';
import { ruleSetFor } from '../../src/core/rule-set.ts';
import { parseRoofObject } from '../../src/input/parse-roof.ts';

/** 20 x 20 ft, gutter on the low side, shingles at the back, a parapet, a curb and a pipe of unknown height; read on the deck. */
function answer(more: { planes?: object[]; parapetIn?: number; curbIn?: number | null; doorIn?: number } = {}) {
  const { planes, parapetIn = 48, curbIn = null, doorIn = 40 } = more;
  const parsed = parseRoofObject({
    version: 1,
    outline: [
      [0, 0],
      [20, 0],
      [20, 20],
      [0, 20],
    ],
    building: { heightFt: 12, below: 'attic' },
    deck: { thicknessIn: 0.75 },
    existing: planes === undefined ? { surface: 'level', readOn: 'deck' } : { planes, readOn: 'deck' },
    edges: [
      { side: 0, kind: 'gutter', mayDrain: 'yes' },
      {
        side: 1,
        kind: 'wall',
        mayDrain: 'no',
        openings: [{ kind: 'door', fromFt: 2, toFt: 5, heightIn: doorIn }],
      },
      { side: 2, kind: 'shingles-above', mayDrain: 'no', clearIn: 30, pitchIn12: 4 },
      { side: 3, kind: 'parapet', mayDrain: 'no', topIn: parapetIn },
    ],
    curbs: [
      {
        id: 'unit-1',
        kind: 'equipment',
        outline: [
          [9, 9],
          [11, 9],
          [11, 11],
          [9, 11],
        ],
        ...(curbIn === null ? {} : { heightIn: curbIn }),
      },
    ],
    pipes: [{ at: [5, 15], kind: 'plumbing' }],
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const { building, plumbing, local } = parsed.roof.ruleSet;
  const rules = ruleSetFor(building, plumbing, local);
  if (!rules.ok) throw new Error('no rule set');
  const assessment = assess(parsed.roof, rules.ruleSet);
  const layout = assessment.layouts.find(({ id }) => id === 'as-it-drains') ?? assessment.layouts[0];
  if (layout?.newHeights === undefined) throw new Error('no layout');
  return { assessment, layout, heights: layout.newHeights };
}

// A 1/4 taper from 1/2 in under a 1/2 in cover board comes up 1 + y / 4.
const upAt = (y: number): number => 1 + y / 4;

describe('new heights', () => {
  it('say how high a curb of unknown height must stand: its high side and 8 in', () => {
    const { heights } = answer();
    const curb = heights.raised.find(({ kind }) => kind === 'curb');
    // Behind the curb a saddle may lift the roof over the plain taper.
    expect(curb).toMatchObject({ nowIn: null, raiseIn: null });
    expect(curb?.neededIn).toBeGreaterThanOrEqual(upAt(11) + 8 - 1e-6);
    expect(curb?.neededIn).toBeLessThan(upAt(12.1) + 8);
    const pipe = heights.raised.find(({ kind }) => kind === 'pipe');
    expect(pipe?.neededIn).toBeCloseTo(upAt(15) + 8, 6);
  });

  it('raise a known curb by what is lacking, and a high one by nothing', () => {
    const low = answer({ curbIn: 6 }).heights.raised[0];
    expect(low.raiseIn).toBeCloseTo(low.neededIn - 6, 9);
    expect(answer({ curbIn: 40 }).heights.raised.find(({ kind }) => kind === 'curb')?.raiseIn).toBe(0);
  });

  it('tell a parapet that is no guard any more', () => {
    // 42 in over the deck guards at 39; 6 in of roof leave 36.
    const [lost] = answer({ parapetIn: 42 }).heights.parapets;
    expect(lost).toMatchObject({ nowIn: 42, guardNow: true, guardNew: false });
    expect(lost.newIn).toBeCloseTo(42 - upAt(20), 6);
    expect(answer({ parapetIn: 48 }).heights.parapets[0]).toMatchObject({ guardNow: true, guardNew: true });
    const rows = heightRows(answer({ parapetIn: 42 }).layout);
    expect(rows.find(({ what }) => what.startsWith('parapet'))?.todo).toContain('no guard any more');
  });

  it('give what a tie-in buries and the strip, with 18 in of run-up', () => {
    const { heights, assessment } = answer();
    const [tieIn] = heights.tieIns;
    expect(tieIn.levelIn).toBeCloseTo(3 * upAt(20), 6);
    expect(tieIn.alongIn).toBeCloseTo(Math.sqrt(10) * upAt(20), 6);
    expect(tieIn.stripIn).toBeCloseTo(Math.sqrt(10) * upAt(20) + 18, 6);
    expect(assessment.findings.some(({ id }) => id === 'tie-in-strip')).toBe(true);
  });

  it('give the face of the metal at the gutter: build-up, deck and an inch, at least 2 in', () => {
    const [face] = answer().heights.faces;
    expect(face.lowIn).toBeCloseTo(1 + 0.75 + 1, 6);
    expect(face.highIn).toBeCloseTo(face.lowIn, 6);
  });
});

describe('heights before any layout', () => {
  it('say how far a taper may run toward a door', () => {
    const { assessment } = answer({ doorIn: 10 });
    const door = assessment.budgets.find(({ kind }) => kind === 'door');
    expect(door?.run).toEqual({ startIn: 0.5, slopeInPerFt: 0.25, riseIn: 1, runFt: 4 });
    expect(limitRows(assessment, null).find(({ where }) => where.startsWith('door'))).toMatchObject({ run: '4′-0″' });
  });

  it('say so where a door is short before any board is laid', () => {
    const { assessment } = answer({ doorIn: 6 });
    const door = assessment.budgets.find(({ kind }) => kind === 'door');
    expect(door).toMatchObject({ availableIn: -2 });
    expect(door?.run?.runFt).toBe(0);
    const row = limitRows(assessment, null).find(({ where }) => where.startsWith('door'));
    expect(row?.before).toBe('2″ short before any board is laid');
  });
});

describe('a stated slope beside a measured rise', () => {
  const ids = (riseIn: number): string[] =>
    answer({
      planes: [{ slopeInPerFt: 0.25, fallsToward: { side: 0 }, riseIn, runFt: 16 }],
    }).assessment.findings.map(({ id }) => id);

  it('is a finding where they disagree, and none within the tape', () => {
    expect(ids(2)).toContain('slope-and-rise-disagree');
    expect(ids(3.6)).not.toContain('slope-and-rise-disagree');
  });

  it('is refused without its run', () => {
    const parsed = parseRoofObject({
      version: 1,
      outline: [
        [0, 0],
        [9, 0],
        [9, 9],
      ],
      existing: { planes: [{ slopeInPerFt: 0.25, fallsToward: 'N', riseIn: 3 }] },
    });
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.problems[0]).toMatchObject({ path: 'existing.planes[0]', code: 'missing' });
  });
});

describe('a flue or gas vent', () => {
  const roof = (kind: string, topIn: number) => {
    const parsed = parseRoofObject({
      version: 1,
      outline: [
        [0, 0],
        [20, 0],
        [20, 20],
        [0, 20],
      ],
      edges: [{ side: 0, kind: 'gutter', mayDrain: 'yes' }],
      pipes: [{ at: [10, 10], kind, diameterIn: 4, topIn }],
      existing: { surface: 'level', readOn: 'deck' },
    });
    if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('; '));
    const rules = ruleSetFor('irc-2021', 'ipc-2021', parsed.roof.ruleSet.local);
    if (!rules.ok) throw new Error('no rule set');
    const assessment = assess(parsed.roof, rules.ruleSet);
    const layout = assessment.layouts.find(({ id }) => id === assessment.chosenLayout)!;
    const row = heightRows(layout).find(({ what }) => what.endsWith(' 1'))!;
    return { assessment, row };
  };

  it('is never called high enough: its listed height is not known', () => {
    const { assessment, row } = roof('gas-vent', 30);
    expect(row.todo).toContain('listed height is not known');
    expect(assessment.findings.find(({ id }) => id === 'flue-clearance')?.message).toContain('not known here');
    expect(roof('plumbing', 30).row.todo).toBe('high enough');
  });

  it('is never lengthened as a plain pipe', () => {
    const line = roof('flue', 6).assessment.materials.find(({ id }) => id.startsWith('raise-pipe'))!;
    expect(line.orderUnit).toContain('licensed trade');
    expect(line.basis).toContain('listed');
    expect(roof('plumbing', 6).assessment.materials.find(({ id }) => id.startsWith('raise-pipe'))!.orderUnit).toContain(
      'extension',
    );
  });
});
