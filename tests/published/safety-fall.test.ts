import { describe, expect, it } from 'vitest';
import type { Ring } from '../../src/core/roof.ts';
import { arrestClearance, coverLoadLb, ladderFor } from '../../src/core/safety/arrest.ts';
import { evaluateCautions } from '../../src/core/safety/cautions.ts';
import { guardedRunFt, parapetIn, parapetOverTaperIn } from '../../src/core/safety/edges.ts';
import type { FallProtection, SafetyFacts } from '../../src/core/safety/facts.ts';
import { fallOptions, needsFallProtection } from '../../src/core/safety/fall-options.ts';
import { roofWidths } from '../../src/core/safety/roof-width.ts';
import { maintenanceNeeds } from '../../src/core/safety/site-figures.ts';
import { warningLine } from '../../src/core/safety/warning-line.ts';
import { edge, jobFacts, rectangle } from '../unit/safety-facts.ts';

const cautionsOf = (facts: SafetyFacts) => evaluateCautions(facts);
const ids = (facts: SafetyFacts) => cautionsOf(facts).map((caution) => caution.id);

describe('width and permitted systems (29 CFR 1926.501(b)(10) and Subpart M Appendix A, found)', () => {
  const allowed = (length: number, width: number, wheeledEquipment: boolean, slopeIn12 = 0.25) =>
    fallOptions({
      slopeIn12,
      part: roofWidths(rectangle(length, width)).parts[0]!,
      wheeledEquipment,
      roofingWork: true,
    })
      .filter((option) => option.allowed)
      .map((option) => option.id);
  const all = ['guardrail', 'net', 'personal-arrest', 'line-and-guard', 'line-and-monitor', 'monitor-alone'];

  it.each([
    { length: 120, width: 45, widthFt: 45, alone: true },
    { length: 120, width: 50, widthFt: 50, alone: true },
    { length: 120, width: 50.1, widthFt: 50.1, alone: false },
  ])('$length x $width ft: width $widthFt, monitor alone $alone', ({ length, width, widthFt, alone }) => {
    expect(roofWidths(rectangle(length, width)).parts.map((part) => part.widthFt)).toEqual([widthFt]);
    expect(allowed(length, width, false)).toEqual(alone ? all : all.slice(0, -1));
  });

  it('wheeled equipment rules out the monitor alone; line with monitor stays', () => {
    expect(allowed(120, 45, true)).toEqual(all.slice(0, -1));
  });

  it('above 4 in 12 only guardrail, net and harness (1926.501(b)(11), found)', () => {
    expect(allowed(120, 45, false, 4)).toEqual(all);
    expect(allowed(120, 45, false, 4.01)).toEqual(['guardrail', 'net', 'personal-arrest']);
  });

  it('deck work is not roofing work (1926.500(b), found)', () => {
    const part = { widthFt: 30, lengthFt: 40, areaSqFt: 1200 };
    const options = fallOptions({ slopeIn12: 0.25, part, wheeledEquipment: false, roofingWork: false });
    expect(options.filter((option) => option.allowed).map((option) => option.id)).toEqual(all.slice(0, 3));
  });

  it('the duty starts at 6 ft (1926.501(b)(10), found)', () => {
    expect(needsFallProtection(5.99)).toBe(false);
    expect(needsFallProtection(6)).toBe(true);
    expect(needsFallProtection(null)).toBe(true);
  });
});

const lShape: Ring = [
  [0, 0],
  [90, 0],
  [90, 55],
  [48, 55],
  [48, 100],
  [0, 100],
];

describe('dividing a roof (Subpart M Appendix A, Example C rule; constructed figures, arithmetic)', () => {
  const parts = (outline: Ring) => roofWidths(outline).parts.map((part) => [part.lengthFt, part.widthFt]);

  it('L-shape: the 48-ft cut, never the 55-ft one that hides a wide area', () => {
    expect(parts(lShape)).toEqual([
      [90, 55],
      [48, 45],
    ]);
    expect(roofWidths(lShape).parts.reduce((sum, part) => sum + part.areaSqFt, 0)).toBeCloseTo(7110, 6);
  });

  it('the same L turned by 30 degrees and walked the other way gives the same parts', () => {
    const turned = lShape
      .map(([x, y]): [number, number] => [
        x * Math.cos(0.5236) - y * Math.sin(0.5236),
        x * Math.sin(0.5236) + y * Math.cos(0.5236),
      ])
      .toReversed();
    const found = roofWidths(turned);
    expect(found.needsCompetentPerson).toBe(false);
    expect(found.parts.map((part) => Math.round(part.widthFt))).toEqual([55, 45]);
  });

  it('U-shape: every part is 40 ft wide', () => {
    const outline: Ring = [
      [0, 0],
      [120, 0],
      [120, 100],
      [80, 100],
      [80, 40],
      [40, 40],
      [40, 100],
      [0, 100],
    ];
    const { parts: found, needsCompetentPerson } = roofWidths(outline);
    expect(found.every((part) => Math.abs(part.widthFt - 40) < 1e-9)).toBe(true);
    expect(found.reduce((sum, part) => sum + part.areaSqFt, 0)).toBeCloseTo(9600, 6);
    expect(needsCompetentPerson).toBe(false);
  });

  it('a shape without right angles takes its box and goes to a competent person (from memory)', () => {
    const found = roofWidths([
      [0, 0],
      [60, 0],
      [40, 52],
      [20, 52],
    ]);
    expect(found).toEqual({ parts: [{ widthFt: 52, lengthFt: 60, areaSqFt: 3120 }], needsCompetentPerson: true });
  });
});

describe('warning line (1926.502(f), found; lengths arithmetic)', () => {
  it.each([
    { travel: 'none', inside: [88, 48], lineFt: 272, flags: 46, area: 4224 },
    { travel: 'along-length', inside: [80, 48], lineFt: 256, flags: 43, area: 3840 },
    { travel: 'both', inside: [80, 40], lineFt: 240, flags: 40, area: 3200 },
  ] as const)('100 x 60 ft, travel $travel: $lineFt ft, $flags flags', ({ travel, inside, lineFt, flags, area }) => {
    expect(warningLine(100, 60, travel)).toEqual({
      insideLengthFt: inside[0],
      insideWidthFt: inside[1],
      lineFt,
      flags,
      workAreaSqFt: area,
    });
  });

  it('40 x 12 ft is too narrow', () => {
    expect(warningLine(40, 12, 'none')).toBeNull();
    const facts = jobFacts(
      { roof: { edges: [edge()] }, work: { fallProtection: ['warning-line'], wheeledEquipment: false } },
      40,
      12,
    );
    expect(ids(facts)).toContain('roof-too-narrow-for-line');
  });
});

describe('parapet and taper (39 in: 1926.502(b)(1), found; 42 in: IMC 304.11, found; heights arithmetic)', () => {
  const wall = edge({ label: 'street parapet', kind: 'parapet', parapetIn: 42, oldBuildUpIn: 3, newBuildUpIn: 9 });

  it('42 in over 3 in of old roof stands 36.0 in over 9 in of new', () => {
    expect(parapetIn(wall, 'as-is')).toBe(42);
    expect(parapetIn(wall, 'finished')).toBe(36);
    expect(parapetIn({ ...wall, newBuildUpIn: 6 }, 'finished')).toBe(39);
    const cautions = cautionsOf(jobFacts({ roof: { edges: [wall] } }));
    const lowered = cautions.find((caution) => caution.id === 'taper-lowers-parapet')!;
    expect(lowered.when).toBe('finished');
    expect(lowered.because).toContain('stood 42 in high then stands 36 in');
    expect(cautions.filter((caution) => caution.id === 'parapet-too-low').map((caution) => caution.when)).toEqual([
      'finished',
    ]);
    expect(ids(jobFacts({ roof: { edges: [{ ...wall, newBuildUpIn: 6 }] } }))).not.toContain('taper-lowers-parapet');
  });

  it.each([
    [0, 41.0],
    [10, 38.5],
    [20, 36.0],
    [30, 33.5],
    [40, 31.0],
  ])('42 in above deck, 1 in start, 1/4 in/ft: at %d ft %d in', (run, height) => {
    expect(parapetOverTaperIn(42, 1, 0.25, run)).toBeCloseTo(height, 9);
  });

  it('it guards for 8 ft; 39 in at 40 ft takes 50 in above deck, a code guard 53', () => {
    expect(guardedRunFt(42, 1, 0.25, 39)).toBeCloseTo(8, 9);
    expect(parapetOverTaperIn(50, 1, 0.25, 40)).toBeCloseTo(39, 9);
    expect(parapetOverTaperIn(53, 1, 0.25, 40)).toBeCloseTo(42, 9);
  });

  it('5.75 ft and 4 in more is 6.083 ft', () => {
    const porch = edge({ dropFt: 5.75, oldBuildUpIn: 1, newBuildUpIn: 5 });
    const caution = cautionsOf(jobFacts({ roof: { edges: [porch] } })).find(
      (row) => row.id === 'build-up-reaches-duty',
    )!;
    expect(caution.because).toContain('5.75 ft to 6.08 ft');
    expect(ids(jobFacts({ roof: { edges: [edge({ dropFt: 5.5, oldBuildUpIn: 1, newBuildUpIn: 5 })] } }))).not.toContain(
      'build-up-reaches-duty',
    );
  });

  it.each([
    [8, 31, 40, true],
    [10, 31, 40, true],
    [10.1, 31, 40, false],
    [8, 30, 40, false],
    [8, 31, 42, false],
  ])(
    'equipment %d ft from an edge with a drop of %d in and a wall of %d in: %s',
    (edgeFt, dropIn, parapetFinishedIn, holds) => {
      const equipment = [{ label: 'fan', edgeFt, dropFt: dropIn / 12, parapetFinishedIn }];
      expect(ids(jobFacts({ roof: { equipment } })).includes('equipment-near-edge')).toBe(holds);
    },
  );
});

describe('personal fall arrest (1926.502(d)(16), found; sums arithmetic)', () => {
  it.each([
    { lanyard: 6, anchor: 5, freeFall: 6, below: 12.5, belowAnchor: 17.5, ok: true },
    { lanyard: 6, anchor: 0, freeFall: 11, below: 17.5, belowAnchor: 17.5, ok: false },
    { lanyard: 3, anchor: 5, freeFall: 3, below: 9.5, belowAnchor: 14.5, ok: true },
    { lanyard: 2, anchor: 0, freeFall: 7, below: 13.5, belowAnchor: 13.5, ok: false },
  ])('lanyard $lanyard ft, anchor $anchor ft: $below ft below the surface', (row) => {
    expect(arrestClearance(row.lanyard, row.anchor)).toEqual({
      freeFallFt: row.freeFall,
      belowSurfaceFt: row.below,
      belowAnchorFt: row.belowAnchor,
      allowed: row.ok,
    });
  });

  // Two published sums for a 6-ft lanyard anchored at the ring (trade safety pages, found).
  it('6 + 3.5 + 6 + 3 = 18.5 ft (body of 6 ft is ring 5 and stretch 1, margin 3)', () => {
    expect(arrestClearance(6, 5, 3).belowAnchorFt).toBe(18.5);
  });
  it('6 + 3.5 + 5 + 2 = 16.5 ft leaves out the stretch of 1 ft that is kept here', () => {
    expect(arrestClearance(6, 5, 2).belowAnchorFt - 1).toBe(16.5);
  });

  const tied = (lanyardFt: number, anchorHeightFt: number) =>
    ids(
      jobFacts({
        roof: { edges: [edge({ dropFt: 10 })] },
        work: { fallProtection: ['personal-arrest'], arrest: { lanyardFt, anchorHeightFt } },
      }),
    );

  it('on a roof 10 ft high: 6-ft lanyard has no room, anchored at foot level it falls too far, 3 ft is right', () => {
    expect(tied(6, 5)).toContain('arrest-clearance');
    expect(tied(6, 5)).not.toContain('free-fall');
    expect(tied(6, 0)).toContain('free-fall');
    expect(tied(3, 5)).not.toContain('arrest-clearance');
    expect(tied(3, 5)).not.toContain('free-fall');
  });

  it('hole cover for two of 250 lb and a 300-lb roll: 1,600 lb (1926.502(i)(2), found)', () => {
    expect(coverLoadLb(2, 250, 300)).toBe(1600);
  });

  it.each([
    { landing: 12, working: 12.39, base: 3.1, total: 15.49 },
    { landing: 14.5, working: 14.98, base: 3.74, total: 18.07 },
  ])(
    'ladder to $landing ft: $total ft in all (1926.1053(b)(1), (5), found; arithmetic)',
    ({ landing, working, base, total }) => {
      const ladder = ladderFor(landing);
      expect(Math.abs(ladder.workingFt - working)).toBeLessThan(0.02);
      expect(Math.abs(ladder.baseFt - base)).toBeLessThan(0.02);
      expect(Math.abs(ladder.totalFt - total)).toBeLessThan(0.02);
    },
  );
});

describe('later work (29 CFR 1910.28(b)(13), found)', () => {
  it.each([
    { edgeFt: 5, rare: true, rule: true, needs: 'protection' },
    { edgeFt: 6, rare: true, rule: false, needs: 'designated-area' },
    { edgeFt: 6, rare: false, rule: false, needs: 'protection' },
    { edgeFt: 15, rare: true, rule: true, needs: 'nothing' },
    { edgeFt: 15, rare: false, rule: true, needs: 'designated-area' },
  ])('$edgeFt ft, infrequent and temporary $rare: $needs', ({ edgeFt, rare, rule, needs }) => {
    expect(maintenanceNeeds(edgeFt, rare, rule)).toBe(needs);
  });
});

describe('states (California Title 8, OAR 437-003, found as of 2024-2025)', () => {
  const job = (state: string, dropFt: number, slopeIn12: number, fallProtection: FallProtection[] = ['guardrail']) =>
    jobFacts({ building: { state }, roof: { slopeIn12, edges: [edge({ dropFt })] }, work: { fallProtection } });

  it('California: duty at 7 ft and at 15 ft, with the state rule beside it', () => {
    for (const dropFt of [7, 15])
      expect(ids(job('CA', dropFt, 0.25))).toEqual(expect.arrayContaining(['fall-protection-required', 'california']));
  });

  it('Oregon refuses a monitor at 3 in 12 and allows it at 2', () => {
    expect(ids(job('OR', 14, 3, ['monitor']))).toContain('monitor-slope-oregon');
    expect(ids(job('OR', 14, 2, ['monitor']))).not.toContain('monitor-slope-oregon');
    expect(ids(job('NV', 14, 3, ['monitor']))).not.toContain('monitor-slope-oregon');
  });
});
