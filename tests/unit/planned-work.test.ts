import { describe, expect, it } from 'vitest';
import { repairOrder } from '../../src/core/report/crew-repair.ts';
import { orderOfWork } from '../../src/core/report/page-crew.ts';
import { shownLayout } from '../../src/core/report/page-layouts.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { assessed, gutterRoof, roofOf } from './takeoff-roofs.ts';

/** 30 x 24 ft to a gutter, an old single-ply roof of 2 in on it, dry as far as anybody knows. */
const answerOf = (parts: Record<string, unknown>): Assessment =>
  assessed(
    roofOf(
      gutterRoof(30, 24, {
        edges: [
          { side: 0, kind: 'gutter', mayDrain: 'yes' },
          { side: 1, kind: 'parapet', topIn: 24, mayDrain: 'no' },
          { side: 2, kind: 'wall', clearIn: 24, mayDrain: 'no' },
          { side: 3, kind: 'rake', mayDrain: 'no' },
        ],
        existing: { surface: 'level', readOn: 'covering', buildUpIn: 2 },
        covering: { kind: 'epdm', layers: 1, ageYears: 8 },
        ...parts,
      }),
    ),
  );
/** Core cut and dry, and a granule-free sheet that shows nothing worse than a scuff: water stands. */
const dry = {
  findings: [
    { kind: 'dry-insulation', at: [15, 12], foundBy: 'core' },
    { kind: 'ponding', at: [15, 12] },
  ],
};
const wet = { findings: [{ kind: 'wet-insulation', areaSqFt: 500, foundBy: 'scan' }] };
const stepsOf = (answer: Assessment) => orderOfWork(answer, shownLayout(answer)!);
const has = (answer: Assessment, id: string) => answer.materials.some((line) => line.id === id);

describe('the order of work of a repair', () => {
  const worn = [
    { kind: 'puncture', at: [10, 8], sizeIn: 2 },
    { kind: 'puncture', at: [20, 16] },
    { kind: 'failed-pipe-sealant', at: [5, 5] },
    { kind: 'dry-insulation', at: [15, 12], foundBy: 'core' },
  ];
  const drains = {
    existing: { surface: 'level', readOn: 'covering', buildUpIn: 2, seenDryAfter48h: true },
  };

  it('is repairs alone, each with its places; the steps of a new roof are another list', () => {
    const answer = answerOf({ ...drains, findings: worn });
    expect(answer.scope?.recommended).toBe('repair');
    const steps = repairOrder(answer)!;
    expect(steps.map(({ title }) => title)).toEqual([
      'Repair: hole or cut',
      'Repair: failed sealant at a pipe',
      'Run water',
    ]);
    expect(steps[0].lines[0]).toMatch(/^Places by their number on the plan: 1\. .*2″\. 2\. /);
    expect(steps.flatMap(({ lines }) => lines).join(' ')).not.toMatch(/strip the old roof|bare deck|board/i);
    expect(stepsOf(answer).map(({ title }) => title)).not.toContain('Repair: hole or cut');
  });

  it('cuts out what is wet with its area, looks for a leak, and patches with what the covering takes', () => {
    const square = [
      [0, 0],
      [8, 0],
      [8, 8],
      [0, 8],
    ];
    const wetPart = { kind: 'wet-insulation', foundBy: 'scan', outline: square };
    const steps = repairOrder(answerOf({ ...drains, findings: [wetPart, worn[0]] }))!;
    expect(steps[0].title).toBe('Repair: wet insulation');
    // 64 sq ft and 2 ft past the line all round: 64 + 2 x 32 + 16.
    expect(steps[0].lines.join(' ')).toContain('144 sq ft to cut out and fill');
    const leak = repairOrder(
      answerOf({ ...drains, findings: [{ kind: 'leak-below', at: [15, 12] }, ...worn.slice(2)] }),
    )!;
    expect(leak[0].lines.join(' ')).toContain('Run water on one part after the other');
    const metal = repairOrder(answerOf({ ...drains, covering: { kind: 'metal', layers: 1 }, findings: worn }))!;
    expect(metal[0].lines.join(' ')).toContain('metal of the same kind, sealed and riveted');
    const foam = repairOrder(
      answerOf({
        ...drains,
        covering: { kind: 'spray-foam', layers: 1 },
        findings: [{ kind: 'blister', at: [9, 9] }, { kind: 'split', at: [12, 12] }, worn[3]],
      }),
    )!;
    const words = foam.flatMap(({ lines }) => lines).join(' ');
    expect(words).toContain('Cut the blister out to sound, dry foam');
    expect(words).not.toMatch(/flaps|over it over it|\{patch\}/);
  });

  it('is none where a new roof is the work', () => {
    expect(repairOrder(answerOf(wet))).toBeNull();
    // What was found comes first, also where somebody has said how much would be torn off.
    expect(repairOrder(answerOf({ ...drains, findings: worn, removedIn: 2 }))).not.toBeNull();
  });
});

describe('the work that the figures stand for', () => {
  it('a tear-off that nobody asked for is named as one, with what was found and what to enter', () => {
    const answer = answerOf(dry);
    expect(answer.scope?.recommended).toBe('re-cover');
    expect(answer.planned).toMatchObject({ work: 'tear-off', ground: 'the bare deck', assumed: true });
    expect(answer.planned.note).toMatch(/those of a tear-off to the deck; .*a new roof over the old one.*enter 0/);
    expect(has(answer, 'tear-off')).toBe(true);
    expect(answerOf({}).planned.note).toContain('is not decided');
  });

  it('a re-cover keeps the old roof: no debris, no open deck, heights over the old roof', () => {
    const [torn, kept] = [answerOf(dry), answerOf({ ...dry, removedIn: 0 })];
    expect(kept.planned).toMatchObject({ work: 're-cover', ground: 'the old roof', assumed: false });
    expect(kept.planned.note).toBe(
      'Heights, boards, materials and steps here are those of a new roof over the old one.',
    );
    expect(has(kept, 'tear-off')).toBe(false);
    const [cores, first] = stepsOf(kept).filter(({ hold }) => hold);
    expect(cores.title).toMatch(/^Cut cores before/);
    expect(first.title).toBe('Shoot the old roof');
    expect(first.lines.join(' ')).not.toMatch(/strip the old roof/i);
    expect(stepsOf(torn).find(({ hold }) => hold)?.title).toBe('Shoot the bare deck');
    expect(stepsOf(kept).map(({ title }) => title)).not.toContain('At the end of every work day');
    const cautions = kept.cautions.map(({ id }) => id);
    expect(torn.cautions.map(({ id }) => id)).toContain('dumpster');
    expect(cautions).not.toContain('dumpster');
    // The top of the parapet stands 2 in higher over the deck than over the old roof.
    const top = ({ budgets }: Assessment) => budgets.find(({ kind }) => kind === 'parapet')!.availableIn!;
    expect(top(torn) - top(kept)).toBeCloseTo(2, 9);
  });

  it('the metal at an edge covers the old roof that stays, and a parapet and a tie-in lose what it takes', () => {
    const parts = (removedIn: number | null) => answerOf({ ...dry, ...(removedIn === null ? {} : { removedIn }) });
    const [torn, partly, kept] = [null, 1.5, 0].map(parts);
    // Boards from 1/2 in, cover board 1/2 in, deck 5/8 in and 1 in on the fascia; 2 in of old roof stay, or 1/2 in.
    const gutterFace = ({ layouts }: Assessment) => layouts[0].newHeights!.faces[0].lowIn;
    expect(gutterFace(torn)).toBeCloseTo(0.5 + 0.5 + 0.625 + 1, 6);
    expect(gutterFace(kept)).toBeCloseTo(gutterFace(torn) + 2, 6);
    expect(gutterFace(partly)).toBeCloseTo(gutterFace(torn) + 0.5, 6);
    const metal = ({ materials }: Assessment) => materials.find(({ id }) => id === 'metal-side-0')!;
    expect(metal(torn).item).toContain('face 2 5/8″');
    expect(metal(kept).item).toContain('face 4 5/8″');
    expect(metal(kept).basis).toContain('old roof that stays 2');
    const top = ({ layouts }: Assessment) => layouts[0].newHeights!.parapets[0].newIn!;
    expect(top(torn) - top(kept)).toBeCloseTo(2, 6);
  });

  it('a deck that somebody has stripped hauls no old roof, shingles above a tie-in come off all the same', () => {
    const stripped = answerOf({ findings: [{ kind: 'deck-stripped' }] });
    expect(has(stripped, 'tear-off')).toBe(false);
    expect(stripped.cautions.map(({ id }) => id)).not.toContain('dumpster');
    expect(stripped.findings.map(({ id }) => id)).toContain('deck-to-build');
    const steps = stepsOf(stripped);
    expect(steps.map(({ title }) => title)).toContain('Shoot the new deck');
    expect(steps.flatMap(({ lines }) => lines).join(' ')).not.toMatch(/old roof/i);
    const tieIn = answerOf({
      existing: { surface: 'level', readOn: 'deck' },
      edges: [
        { side: 0, kind: 'gutter', mayDrain: 'yes' },
        { side: 2, kind: 'shingles-above', pitchIn12: 4, mayDrain: 'no' },
      ],
    });
    expect(tieIn.materials.find(({ id }) => id === 'tear-off')?.item).toContain('Shingles above the tie-in');
  });

  it('a re-cover over a soaked roof is stopped', () => {
    const answer = answerOf({ ...wet, removedIn: 0 });
    expect(answer.findings.find(({ id }) => id === 're-cover-barred')).toMatchObject({ level: 'stop' });
    expect(answer.planned.note).toContain('What was found rules that out');
    expect(answerOf(wet).findings.map(({ id }) => id)).not.toContain('re-cover-barred');
    const ids = (parts: Record<string, unknown>) => answerOf(parts).findings.map(({ id }) => id);
    expect(ids({ ...dry, removedIn: 0 }).filter((id) => id.startsWith('re-cover'))).toEqual([]);
    // Nobody has looked at what lies below.
    expect(answerOf({ removedIn: 0 }).findings.find(({ id }) => id === 're-cover-not-known')?.level).toBe('stop');
  });
});
