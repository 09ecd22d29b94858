import { areaForFlowSqFt, EXACT_GPM_PER_SQ_FT, flowGpm } from '../../src/core/outlets/flow.ts';
import {
  overflowScupperWidths,
  scupperCapacityGpm,
  scupperHeadIn,
  weirFlowGpm,
} from '../../src/core/outlets/scupper.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const channel = (widthIn: number) => ({ widthIn, heightIn: null });

const rows: readonly CheckRow[] = [
  {
    id: '7',
    of: 'head of 180 gpm over a 12-in channel scupper, channel form, in',
    call: () => scupperHeadIn(channel(12), 180, 'channel'),
    expected: 2.99,
    tol: 0.02,
    source: 'asce-7-example',
    at: 'example 2 (3 in, 76 mm)',
    grade: 'found',
  },
  {
    id: '8',
    of: 'the same by Francis, in',
    call: () => scupperHeadIn(channel(12), 180),
    expected: 3.03,
    tol: 0.02,
    source: 'weir-table',
    at: 'two end contractions',
    grade: 'computed',
  },
  {
    id: '10',
    of: '12-in scupper at 4 in, Francis, gpm',
    call: () => weirFlowGpm(12, 4),
    expected: 268.5,
    tol: 0.3,
    source: 'weir-table',
    at: 'two end contractions',
    grade: 'computed',
  },
  {
    id: '11',
    of: 'that flow as roof area at 4 in/h, sq ft',
    call: () => areaForFlowSqFt(weirFlowGpm(12, 4), 4, EXACT_GPM_PER_SQ_FT),
    expected: 6460,
    tol: 5,
    source: 'plumbing-sizing-lecture',
    at: '12-in weir at 4 in/h',
    grade: 'found',
  },
  {
    id: '12 small',
    of: '6-in scupper at 1 in, Francis, gpm',
    call: () => weirFlowGpm(6, 1),
    expected: 17.4,
    tol: 0.1,
    source: 'weir-table',
    at: 'two end contractions',
    grade: 'computed',
  },
  {
    id: '12 large',
    of: '36-in scupper at 4 in, Francis, gpm',
    call: () => weirFlowGpm(36, 4),
    expected: 843.7,
    tol: 0.5,
    source: 'weir-table',
    at: 'two end contractions',
    grade: 'computed',
  },
  {
    id: '23',
    of: '230 sq ft at 5 in/h as area at 4 in/h, sq ft',
    call: () => areaForFlowSqFt(flowGpm(230, 5), 4),
    expected: 287,
    tol: 1,
    source: 'scupper-area-page',
    at: '4-in scupper at 1 in',
    grade: 'found',
  },
  {
    id: '23 scupper',
    of: 'roof area at 5 in/h of a 4-in scupper at 1 in, channel form, sq ft',
    call: () => areaForFlowSqFt(weirFlowGpm(4, 1, 'channel'), 5),
    expected: 230,
    tol: 0.04 * 230,
    source: 'scupper-area-page',
    at: '4 % as the channel form stands to its own table at 1 in',
    grade: 'found',
  },
  ...[
    [6, 3.1],
    [8, 2.48],
    [12, 1.85],
  ].map(
    ([widthIn, head]): CheckRow => ({
      id: `27 (${widthIn} in)`,
      of: `head of 87.9 gpm over a ${widthIn}-in scupper, Francis, in`,
      call: () => scupperHeadIn(channel(widthIn), 87.9),
      expected: head,
      tol: 0.02,
      source: 'weir-table',
      at: 'two end contractions',
      grade: 'computed',
    }),
  ),
  {
    id: '32',
    of: '6 x 4 in closed scupper at 5 in, channel form and orifice, gpm (the table prints 177)',
    call: () => scupperCapacityGpm({ widthIn: 6, heightIn: 4 }, 5, 'channel'),
    expected: 177,
    tol: 0.02 * 177,
    source: 'asce-7-05-c8',
    at: 'Table C8-1',
    grade: 'memory',
  },
  {
    id: '48 circumference',
    of: 'circumference of a 4-in drain, in',
    call: () => overflowScupperWidths(4, 4).circumferenceIn,
    expected: 12.57,
    tol: 0.01,
    source: 'cpc-2010',
    at: '1101.11.2.1',
    grade: 'computed',
  },
  {
    id: '48 three areas',
    of: 'three times the area of a 4-in drain, 4 in high, in',
    call: () => overflowScupperWidths(4, 4).threeAreasIn,
    expected: 9.42,
    tol: 0.01,
    source: 'irc-2018',
    at: 'R903.4.1, read as area',
    grade: 'computed',
  },
  {
    id: '24 circumference',
    of: 'circumference of a 6-in drain, in',
    call: () => overflowScupperWidths(6, 4).circumferenceIn,
    expected: 18.85,
    tol: 0.01,
    source: 'drain-study-question',
    at: '36,000 sq ft, four drains, 3 in/h',
    grade: 'computed',
  },
  {
    id: '24 head',
    of: 'head of 280.8 gpm over the 20-in scupper of that exercise, in',
    call: () => scupperHeadIn({ widthIn: 20, heightIn: 4 }, 280.8),
    expected: 2.85,
    tol: 0.01,
    source: 'drain-study-question',
    at: '36,000 sq ft, four drains, 3 in/h',
    grade: 'computed',
  },
  {
    id: 'C22',
    of: '6 x 6 in scupper at 2 in, gpm',
    call: () => scupperCapacityGpm({ widthIn: 6, heightIn: 6 }, 2),
    expected: 47.5,
    tol: 2,
    source: 'arithmetic',
    at: 'case C22',
    grade: 'computed',
  },
];

checkRows('scuppers', rows);

const widths = [4, 6, 8, 12, 18, 24, 30, 36];
const table: readonly (readonly [head: number, gpm: readonly number[]])[] = [
  [0.5, [4, 6, 8, 13, 19, 25, 32, 38]],
  [1, [11, 17, 23, 35, 53, 71, 89, 107]],
  [1.5, [20, 31, 42, 64, 97, 131, 164, 197]],
  [2, [31, 47, 64, 98, 149, 200, 251, 302]],
  [2.5, [41, 65, 89, 136, 207, 278, 349, 420]],
  [3, [53, 84, 115, 177, 271, 364, 458, 551]],
  [3.5, [65, 104, 143, 222, 339, 457, 575, 693]],
  [4, [77, 125, 173, 268, 412, 556, 700, 844]],
];

checkRows(
  'scupper table by Francis',
  table.flatMap(([head, row]) =>
    row.map(
      (gpm, column): CheckRow => ({
        id: `${widths[column]} in at ${head} in`,
        of: 'flow, gpm',
        call: () => weirFlowGpm(widths[column], head),
        expected: gpm,
        // Half of the last digit, and 0.04 % because the table takes 449 gpm to the cubic foot per second.
        tol: 0.5 + 0.0004 * gpm,
        source: 'weir-table',
        at: 'two end contractions; layout of UPC Table D-2 as remembered',
        grade: 'computed',
      }),
    ),
  ),
);

const cell = (
  widthIn: number,
  heightIn: number | null,
  headIn: number,
  gpm: number,
  share: number,
  doesNotReproduce?: string,
): CheckRow => ({
  id: `${widthIn} x ${heightIn ?? 'open'} at ${headIn}`,
  of: 'channel form and orifice, gpm',
  call: () => scupperCapacityGpm({ widthIn, heightIn }, headIn, 'channel'),
  expected: gpm,
  tol: share * gpm,
  source: 'asce-7-05-c8',
  at: 'Table C8-1 (the formula stands within 4 % of it, so that is the tolerance)',
  grade: 'memory',
  ...(doesNotReproduce ? { doesNotReproduce } : {}),
});

checkRows('scupper heads of the load standard', [
  ...[
    [1, 18],
    [2, 50],
    [3, 90],
    [4, 140],
    [5, 194],
    [7, 321],
    [8, 393],
  ].map(([head, gpm]) => cell(6, null, head, gpm, 0.04)),
  ...[
    [1, 72],
    [2, 200],
    [3, 360],
    [4, 560],
    [5, 776],
    [7, 1284],
    [8, 1572],
  ].map(([head, gpm]) => cell(24, null, head, gpm, 0.04)),
  ...[
    [5, 177],
    [7, 231],
    [8, 253],
  ].map(([head, gpm]) => cell(6, 4, head, gpm, 0.02)),
  ...[
    [5, 708],
    [7, 924],
    [8, 1012],
  ].map(([head, gpm]) => cell(24, 4, head, gpm, 0.02)),
  ...[
    [5, 194],
    [7, 303],
    [8, 343],
  ].map(([head, gpm]) => cell(6, 6, head, gpm, 0.03)),
]);
