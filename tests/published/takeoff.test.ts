import { asphaltPrimer, sealant } from '../../reference/takeoff/adhesives.ts';
import { damageTogether } from '../../reference/takeoff/deck-repair.ts';
import { nailerStock } from '../../reference/takeoff/edges.ts';
import { boardDensity, deckHolds, edgeIncreases } from '../../reference/takeoff/fasteners.ts';
import { oldCoverings, sheathing, shingles } from '../../reference/takeoff/tear-off.ts';
import {
  edgeScrews,
  neededScrewIn,
  packed,
  ribbonFt,
  seamPlatesPerSq,
  sheetNailsPerSq,
  stockScrewIn,
  zoneScrews,
} from '../../src/core/takeoff/attachment.ts';
import { flatBoards } from '../../src/core/takeoff/boards.ts';
import { coveredRegion } from '../../src/core/takeoff/covered.ts';
import { atChance, damageChances, type ZoneSheets } from '../../src/core/takeoff/deck-repair.ts';
import { edgePieces, inLine } from '../../src/core/takeoff/edges.ts';
import { beadFtPerTube, pails } from '../../src/core/takeoff/glue.ts';
import { whole } from '../../src/core/takeoff/line.ts';
import { dryMil, galPerSq, WET_MIL_PER_GAL_PER_SQ } from '../../src/core/takeoff/liquid.ts';
import { rollsForPieces, rollsRunOn } from '../../src/core/takeoff/roll-cutting.ts';
import {
  chooseSheets,
  layoutSheets,
  netRollSqFt,
  rowCount,
  type SheetTask,
} from '../../src/core/takeoff/sheet-layout.ts';
import { curbFlashingFt, parapetSheetIn, tieInRunIn, wallSheetIn } from '../../src/core/takeoff/strips.ts';
import { boxLoads, debrisLb } from '../../src/core/takeoff/tear-off.ts';
import { windZones } from '../../src/core/takeoff/zones.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

// Figures of a worked take-off of a 24 x 30 ft section (three coverings) and of the rules behind it. Most are computed
// from trade practice; what a document says is cited as such. Quantities of taper boards stand in takeoff-boards.test.ts.

const computed = { source: 'arithmetic', at: 'worked take-off of 24 x 30 ft', grade: 'computed', tol: 0 } as const;
const practice = { source: 'practice', at: 'take-off rules', grade: 'practice', tol: 0 } as const;

// Worked section: 27 in of run-up, 3 in of turn-down at eave and rakes, as printed there.
const outline = [
  [0, 0],
  [30, 0],
  [30, 24],
  [0, 24],
] as const;
const past = [0.25, 0.25, 2.25, 0.25];
const covered = coveredRegion(
  outline,
  outline.map((from, i) => ({ from, to: outline[(i + 1) % 4]!, pastFt: past[i]! })),
);
const skylight = [
  [12, 12],
  [16.5, 12],
  [16.5, 14.5],
  [12, 14.5],
] as const;
const task: SheetTask = { covered, curbs: [skylight], uphill: [0, 1] };
const tpo = (widthFt: number) => ({ widthFt, rollFt: 100, sideLapFt: 0.25, endLapFt: 0.25 });
const chosen = chooseSheets(task, [6, 8, 10, 12].map(tpo));
const cap = { widthFt: 39.375 / 12, rollFt: 32.81, sideLapFt: 0.25, endLapFt: 0.5 };
const roll = (widthIn: number, lapIn: number, rollFt: number, endIn: number) =>
  netRollSqFt({ widthFt: widthIn / 12, rollFt, sideLapFt: lapIn / 12, endLapFt: endIn / 12 });

const sheets: CheckRow[] = [
  ...[
    [10, 3],
    [8, 4],
    [6, 5],
    [12, 3],
  ].map(
    ([width, expected]): CheckRow => ({
      ...computed,
      id: `13-${width}`,
      of: `sheets of ${width} ft over 26.5 ft, 3 in lap`,
      call: () => rowCount(26.5, width!, 0.25),
      expected: expected!,
    }),
  ),
  ...(
    [
      [6, 2, 122],
      [8, 2, 91.5],
      [10, 1, 61],
      [12, 1, 61],
    ] as const
  ).flatMap(([width, rolls, seam]): CheckRow[] => [
    {
      ...computed,
      id: `rolls-${width}`,
      of: `${width} ft rolls`,
      call: () => layoutSheets(task, tpo(width)).rolls,
      expected: rolls,
    },
    {
      ...computed,
      id: `seam-${width}`,
      of: `seam ft, ${width} ft rolls`,
      call: () => layoutSheets(task, tpo(width)).seamFt,
      expected: seam,
      tol: 0.01,
    },
  ]),
  {
    ...computed,
    id: '14-per-roll',
    of: 'rolls for three 31 ft cuts',
    call: () => rollsForPieces([31, 31, 31], 100),
    expected: 1,
  },
  {
    ...computed,
    id: '14-fourth',
    of: 'rolls for four 31 ft cuts',
    call: () => rollsForPieces([31, 31, 31, 31], 100),
    expected: 2,
  },
  {
    ...computed,
    id: '14-lf',
    of: 'roll feet cut, 10 ft wide',
    call: () => chosen.cutsFt.reduce((s, c) => s + c, 0),
    expected: 93,
    tol: 0.01,
  },
  { ...computed, id: 'choice', of: 'chosen roll width, ft', call: () => chosen.size.widthFt, expected: 10 },
  {
    ...computed,
    id: '15-net',
    of: 'net sq ft, skylight of 11.25 not deducted',
    call: () => chosen.netSqFt,
    expected: 808.25,
    tol: 0.01,
  },
  {
    ...computed,
    id: '15-short',
    of: '720 x 1.10 falls short of the layout',
    call: () => 720 * 1.1 < chosen.netSqFt,
    expected: true,
  },
  {
    ...computed,
    id: '16',
    of: 'gross over net',
    call: () => chosen.grossSqFt / chosen.netSqFt,
    expected: 1.237,
    tol: 0.001,
  },
  {
    ...practice,
    id: '17-gross',
    of: 'SBS roll, no laps',
    call: () => roll(39.375, 0, 32.81, 0),
    expected: 107.7,
    tol: 0.05,
  },
  {
    ...practice,
    id: '17-net-3',
    of: 'SBS roll, 3 in side and 6 in end',
    call: () => roll(39.375, 3, 32.81, 6),
    expected: 97.9,
    tol: 0.05,
  },
  {
    ...practice,
    id: '17-net-4',
    of: 'SBS roll, 4 in side and 6 in end',
    call: () => roll(39.375, 4, 32.81, 6),
    expected: 95.2,
    tol: 0.05,
  },
  {
    ...computed,
    id: '18-cap',
    of: 'cap strips over 26.5 ft',
    call: () => rowCount(26.5, cap.widthFt, 0.25),
    expected: 9,
  },
  {
    ...computed,
    id: '18-cap-rolls',
    of: 'cap rolls, one strip each',
    call: () => layoutSheets({ ...task, curbs: [] }, cap).rolls,
    expected: 9,
  },
  {
    ...computed,
    id: '18-base',
    of: 'base strips, 36 in with 4 in lap',
    call: () => rowCount(26.5, 3, 1 / 3),
    expected: 10,
  },
  {
    ...computed,
    id: '18-base-rolls',
    of: 'rolls of 108 ft for 305 ft',
    call: () => rollsRunOn(305, 108, 0.5),
    expected: 3,
  },
  {
    ...computed,
    id: '18-self-adhered-base',
    of: 'rolls of 65.6 ft for a half starter and nine strips',
    call: () => layoutSheets({ ...task, curbs: [], starter: 0.5, runOn: true }, { ...cap, rollFt: 65.6 }).rolls,
    expected: 5,
  },
  {
    id: '19-single',
    of: 'roll roofing, 2 in lap',
    source: 'roll-roofing-guide',
    at: 'single coverage',
    grade: 'computed',
    call: () => roll(36, 2, 36, 6),
    expected: 100.6,
    tol: 0.05,
  },
  {
    id: '19-double',
    of: 'roll roofing, 17 in exposed',
    source: 'roll-roofing-guide',
    at: 'double coverage',
    grade: 'computed',
    call: () => roll(36, 19, 36, 0),
    expected: 51,
    tol: 0.05,
  },
];

const edges: CheckRow[] = [
  ...(
    [
      [30, 4],
      [29.33, 3],
      [24, 3],
      [10, 1],
    ] as const
  ).map(
    ([ft, expected]): CheckRow => ({
      id: `20-${ft}`,
      of: `10 ft pieces lapped 4 in for ${ft} ft`,
      source: 'ufgs-07600',
      at: 'laps of gravel stops',
      grade: 'computed',
      call: () => edgePieces(ft),
      expected,
      tol: 0,
    }),
  ),
  {
    ...computed,
    id: '20-total',
    of: 'pieces of the section',
    call: () => edgePieces(30) + 2 * edgePieces(24),
    expected: 10,
  },
  { ...practice, id: '21-30', of: 'nails at 4 in, 30 ft', call: () => inLine(30, 4), expected: 91 },
  { ...practice, id: '21-24', of: 'nails at 4 in, 24 ft', call: () => inLine(24, 4), expected: 73 },
  {
    id: '21-3in',
    of: 'nails at 3 in, whole section',
    source: 'ufgs-07600',
    at: 'gravel stops, nails',
    grade: 'found',
    call: () => inLine(30, 3) + 2 * inLine(24, 3),
    expected: 315,
    tol: 0,
  },
  {
    id: '21-cleat',
    of: 'cleat nails at 6 in',
    source: 'ufgs-07600',
    at: 'hook strips',
    grade: 'found',
    call: () => inLine(30, 6) + 2 * inLine(24, 6),
    expected: 159,
    tol: 0,
  },
  { ...practice, id: 'tie-in-plates', of: 'plates at 12 in, 30.5 ft', call: () => inLine(30.5, 12), expected: 32 },
  {
    ...practice,
    id: 'nailer',
    of: '16 ft pieces for 78 ft + 10 %',
    call: () => whole((78 * (1 + nailerStock.allowance)) / nailerStock.lengthFt),
    expected: 6,
  },
  {
    ...computed,
    id: '27-flashing',
    of: 'curb flashing of a 30 x 54 in skylight, ft',
    call: () => curbFlashingFt(skylight),
    expected: 16.67,
    tol: 0.005,
  },
  {
    ...computed,
    id: '27-area',
    of: 'its sq ft at 18 in',
    call: () => (curbFlashingFt(skylight) * wallSheetIn(8)) / 12,
    expected: 25,
    tol: 0.05,
  },
  {
    ...practice,
    id: '28',
    of: 'parapet strip, 12 in high and 8 in thick',
    call: () => parapetSheetIn(12, 8),
    expected: 28,
  },
  ...(
    [
      [3, 33],
      [4, 25.3],
      [6, 24],
      [12, 24],
    ] as const
  ).map(
    ([pitch, expected]): CheckRow => ({
      ...practice,
      id: `33-${pitch}`,
      of: `tie-in run at ${pitch}:12, in`,
      call: () => tieInRunIn(pitch),
      expected,
      tol: 0.05,
    }),
  ),
  {
    ...practice,
    id: 'example-run',
    of: 'tie-in run of the worked section at 4:12, in',
    call: () => tieInRunIn(4),
    expected: 27,
    tol: 0.05,
    doesNotReproduce: 'the worked section rounds its run-up to 27 in; its own rule gives 25.3 in',
  },
];

const fixing: CheckRow[] = [
  ...(
    [
      [0.125, 124, 0.3],
      [0.25, 30.9, 0.1],
      [0.3125, 19.8, 0.1],
      [0.375, 13.8, 0.1],
      [0.4375, 10.1, 0.1],
      [0.5, 7.7, 0.1],
    ] as const
  ).map(
    ([d, expected, tol]): CheckRow => ({
      ...computed,
      id: `22-${d}`,
      of: `ft of ${d} in bead a 10.1 oz tube`,
      call: () => beadFtPerTube(d),
      expected,
      tol,
    }),
  ),
  { ...computed, id: '23-95', of: 'dry mil, 2 gal at 95 %', call: () => dryMil(2, 0.95), expected: 30.5, tol: 0.05 },
  { ...computed, id: '23-55', of: 'dry mil, 3 gal at 55 %', call: () => dryMil(3, 0.55), expected: 26.5, tol: 0.05 },
  {
    ...computed,
    id: '23-wet',
    of: 'wet mil of 1 gal on a square',
    call: () => WET_MIL_PER_GAL_PER_SQ,
    expected: 16.04,
    tol: 0.005,
  },
  {
    ...computed,
    id: '24-95',
    of: 'gal for 20 mil at 95 %',
    call: () => galPerSq(20, 0.95),
    expected: 1.31,
    tol: 0.005,
  },
  {
    ...computed,
    id: '24-55',
    of: 'gal for 20 mil at 55 %',
    call: () => galPerSq(20, 0.55),
    expected: 2.27,
    tol: 0.005,
  },
  { ...practice, id: '25-60', of: 'adhesive pails at 60', call: () => pails(833.25, 60, 5), expected: 3 },
  {
    id: '25-100',
    of: 'adhesive pails at 100',
    source: 'county-re-roof',
    at: 'bonding adhesive',
    grade: 'found',
    call: () => pails(833.25, 100, 5),
    expected: 2,
    tol: 0,
  },
  {
    id: '26',
    of: 'primer gal',
    source: 'ufgs-07550',
    at: 'primer',
    grade: 'found',
    call: () => asphaltPrimer.galPerSq * 8.0825,
    expected: 6.06,
    tol: 0.005,
  },
  {
    ...practice,
    id: '29-18',
    of: 'nails a square, 2 in lap, rows 18 in',
    call: () => sheetNailsPerSq(36, 2),
    expected: 94.1,
    tol: 0.05,
  },
  {
    ...practice,
    id: '29-12',
    of: 'nails a square, 2 in lap, rows 12 in',
    call: () => sheetNailsPerSq(36, 2, 12),
    expected: 117.6,
    tol: 0.05,
  },
  {
    ...practice,
    id: '29-4',
    of: 'nails a square, 4 in lap',
    call: () => sheetNailsPerSq(36, 4),
    expected: 100,
    tol: 0.05,
  },
  {
    ...practice,
    id: '30-12',
    of: 'seam plates a square at 12 in',
    call: () => seamPlatesPerSq(9.5, 12),
    expected: 10.5,
    tol: 0.05,
  },
  {
    ...practice,
    id: '30-6',
    of: 'seam plates a square at 6 in',
    call: () => seamPlatesPerSq(9.5, 6),
    expected: 21.1,
    tol: 0.05,
  },
  {
    ...practice,
    id: '31',
    of: 'board screws, 396 perimeter and 324 field',
    call: () => zoneScrews(396, 'perimeter') + zoneScrews(324, 'field'),
    expected: 229.5,
  },
  { ...practice, id: '31-order', of: 'screws to order', call: () => packed(229.5), expected: 250 },
  {
    source: 'memory',
    at: 'band 0.6 h',
    grade: 'memory',
    id: '31-field',
    of: 'field sq ft of 30 x 24 ft, 10 ft high',
    call: () => windZones(outline, [], 10).fieldSqFt,
    expected: 324,
    tol: 0.5,
    doesNotReproduce:
      'the worked section has no windy band along the tie-in; we hold one on all sides: 216 sq ft of field',
  },
  { ...practice, id: 'cover', of: 'cover boards for 720 sq ft', call: () => flatBoards(720), expected: 24 },
  {
    ...practice,
    id: 'cut-edge',
    of: 'tubes of cut-edge sealant, 78 + 61 + 17 ft',
    call: () => whole((78 + 61 + 17) / beadFtPerTube(sealant.cutEdgeIn)),
    expected: 2,
  },
  {
    ...practice,
    id: 'lap-sealant',
    of: 'tubes of lap sealant, 78 + 61 + 17 ft',
    call: () => whole((78 + 61 + 17) / beadFtPerTube(sealant.lapIn)),
    expected: 8,
  },
  {
    ...practice,
    id: 'water-block',
    of: 'tubes of water block for three pipes',
    call: () => whole(3 * sealant.tubesPerPipe),
    expected: 2,
    doesNotReproduce: 'the rule of a tenth of a tube a pipe gives one tube; the worked section orders a second in hand',
  },
];

const sbs = oldCoverings.find(({ covering }) => covering === 'sbs-granule')!;
const gravel = oldCoverings.find(({ covering }) => covering === 'bur-gravel')!;
const zones: ZoneSheets[] = [
  { sheets: 4, chance: 0.35 },
  { sheets: 4, chance: 0.25 },
  { sheets: 4, chance: 0.25 },
  { sheets: 12, chance: 0.05 },
];
const single = damageChances(zones, 0);
const together = damageChances(zones, damageTogether.correlation);
const mixed = [
  [0.5, 0.5],
  [1, 0.3],
  [2.25, 0.2],
].reduce<number[]>((sum, [factor, share]) => {
  const own = damageChances(
    zones.map(({ sheets, chance }) => ({ sheets, chance: chance * factor! })),
    0,
  );
  return own.map((p, k) => (sum[k] ?? 0) + share! * p);
}, []);
const mean = (chances: readonly number[]): number => chances.reduce((sum, p, k) => sum + p * k, 0);
const tenths = (chances: readonly number[]): string =>
  [0.5, 0.8, 0.9].map((share) => atChance(chances, share)).join('/');

const weights: CheckRow[] = [
  {
    ...practice,
    id: '32',
    of: 'tear-off lb, 7.2 squares SBS + .675 shingles + 4 sheets',
    call: () =>
      debrisLb([
        { areaSqFt: 720, psf: sbs.psf[1] },
        { areaSqFt: 67.5, psf: shingles.psf },
        { areaSqFt: 4 * sheathing.sheetSqFt, psf: sheathing.psf },
      ]),
    expected: 2141,
    tol: 1,
  },
  {
    ...practice,
    id: '32-bur',
    of: 'gravel built-up, 720 sq ft',
    call: () => debrisLb([{ areaSqFt: 720, psf: gravel.psf[0] }]),
    expected: 3960,
  },
  {
    ...practice,
    id: '32-box',
    of: '10 yd boxes for 2,141 lb and 6.5 cubic yd',
    call: () => boxLoads(2141, 6.5),
    expected: 1,
  },
  { ...computed, id: '38-mean', of: 'mean sheets', call: () => mean(single), expected: 4, tol: 0.005 },
  {
    ...computed,
    id: '38-single',
    of: '50, 80, 90 % sheets, one by one',
    call: () => tenths(single),
    expected: '4/5/6',
  },
  {
    ...computed,
    id: '38-none',
    of: 'chance of none, one by one',
    call: () => single[0]!,
    expected: 0.0097,
    tol: 0.00005,
  },
  {
    ...computed,
    id: '38-together',
    of: '50, 80, 90 % sheets, correlation 0.2',
    call: () => tenths(together),
    expected: '4/6/7',
  },
  {
    ...computed,
    id: '38-none-together',
    of: 'chance of none, correlation 0.2',
    call: () => together[0]!,
    expected: 0.039,
    tol: 0.0005,
  },
  { ...computed, id: '39-mean', of: 'mean of the severity mix', call: () => mean(mixed), expected: 4, tol: 0.005 },
  {
    ...computed,
    id: '39',
    of: '50, 80, 90 % sheets of the severity mix',
    call: () => tenths(mixed),
    expected: '3/7/9',
  },
];

const plywood = deckHolds.find(({ deck }) => deck === 'plywood')!;
const taper: CheckRow[] = [
  ...edgeIncreases.flatMap((rule): CheckRow[] => {
    const cited = { source: rule.source, at: rule.at, grade: rule.grade, tol: 0 } as const;
    const printed = rule.edition === '2003' ? ['6/7', '12/14'] : ['8/16', '16/32'];
    return [
      {
        ...cited,
        id: `46-${rule.edition}-4x4`,
        of: 'perimeter/corner screws, 4 on a 4 x 4 board',
        call: () => edgeScrews(4, 16, rule).join('/'),
        expected: printed[0]!,
      },
      {
        ...cited,
        id: `46-${rule.edition}-4x8`,
        of: 'perimeter/corner screws, 8 on a 4 x 8 board',
        call: () => edgeScrews(8, 32, rule).join('/'),
        expected: printed[1]!,
      },
    ];
  }),
  {
    ...practice,
    id: '47-need',
    of: 'screw for 5.5 + cover 0.5 + 5/8 plywood',
    call: () => neededScrewIn(6, 0.625, plywood),
    expected: 7.125,
  },
  {
    ...practice,
    id: '47',
    of: 'its stock length',
    call: () => stockScrewIn(neededScrewIn(6, 0.625, plywood)),
    expected: 7.5,
  },
  ...(
    [
      [12, 16],
      [6, 32],
      [4, 48],
    ] as const
  ).map(
    ([spacing, expected]): CheckRow => ({
      ...computed,
      id: `48-${spacing}`,
      of: `ribbon on a 4 x 4 board at ${spacing} in`,
      call: () => ribbonFt(16, spacing),
      expected,
    }),
  ),
  {
    ...practice,
    id: 'density',
    of: 'screws on a 4 x 8 board in the field',
    call: () => zoneScrews(boardDensity.boardSqFt, 'field'),
    expected: 8,
  },
];

checkRows('Take-off: sheets', sheets);
checkRows('Take-off: edges and flashings', edges);
checkRows('Take-off: fixing, gluing, sealing', fixing);
checkRows('Take-off: tear-off and deck repair', weights);
checkRows('Take-off: taper boards held down', taper);
