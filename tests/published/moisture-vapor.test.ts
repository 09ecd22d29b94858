import { permeances } from '../../reference/vapor.ts';
import { cOfF, fOfC, R_IP } from '../../src/core/heat/degrees.ts';
import { averageU, meanU, perInch } from '../../src/core/layout/thermal.ts';
import { deckPlaneF, shareAbove, tableFoam } from '../../src/core/moisture/condensing-plane.ts';
import { faceTemperatures, stillAirOf, vaporProfile } from '../../src/core/moisture/glaser.ts';
import { dewPointOf, isoSaturationPa, saturationPa } from '../../src/core/moisture/psychrometrics.ts';
import { considerRetarder } from '../../src/core/moisture/retarder.ts';
import { leastAbove } from '../../src/core/moisture/tests.ts';
import { winterFor } from '../../src/core/moisture/winter.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const handbook = { source: 'ashrae-psychrometrics', at: 'saturation pressure of water vapor', grade: 'found' } as const;
const iso = { source: 'iso-13788', grade: 'found' } as const;
const glaser = { source: 'glaser-case', grade: 'found' } as const;
const arithmetic = { source: 'arithmetic', grade: 'computed' } as const;

/** Saturation by the industrial formulation of 1997, region 4: independent of the two laws of the project. Pa from K. */
function if97Pa(t: number): number {
  const n = [
    1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353,
    -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798,
  ];
  const v = t + n[8] / (t - n[9]);
  const a = v * v + n[0] * v + n[1];
  const b = n[2] * v * v + n[3] * v + n[4];
  const c = n[5] * v * v + n[6] * v + n[7];
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
}

/** Saturation over water by the form of Magnus that the WMO gives. */
const magnusDewC = (airC: number, rh: number): number => {
  const g = Math.log(rh) + (17.62 * airC) / (243.12 + airC);
  return (243.12 * g) / (17.62 - g);
};

const dewF = (roomF: number, rh: number): number => fOfC(dewPointOf(rh * saturationPa(cOfF(roomF))));

/** Wall of the worked case, outside first. */
const wall = (
  [
    [0.16491754, 1.1],
    [0.02439024, 0.1],
    [0.8, 0.6],
    [0.06741573, 0.3],
    [0.01754386, 0.06],
  ] as const
).map(([r, sdM]) => ({ r, sdM }));
const air = { outsideC: 5, insideC: 20, outsideFilm: 0.04, insideFilm: 0.13 } as const;
const pressures = { outsidePa: 0.96 * isoSaturationPa(5), insidePa: 0.55 * isoSaturationPa(20) } as const;
const profile = vaporProfile(wall, { ...air, ...pressures }, isoSaturationPa);
const MONTH_S = 30 * 86_400;

/** Least surface factor against mold: 80 % humidity at the inner face. */
function leastFactor(rh: number): number {
  const faceC = dewPointOf((rh * isoSaturationPa(20)) / 0.8, isoSaturationPa);
  return (faceC - 5) / 15;
}

const stack = [0.04, 0.45, 29.64, 0.75, 0.45].map((r) => ({ r: r / R_IP, sdM: 1 }));
const stackF = faceTemperatures(stack, {
  outsideC: cOfF(0),
  insideC: cOfF(70),
  outsidePa: 0,
  insidePa: 0,
  outsideFilm: 0.17 / R_IP,
  insideFilm: 0.61 / R_IP,
}).map(fOfC);

const winterOf = (city: string) => winterFor({ city, state: null, climateZone: null }).winter;
const shareAt = (city: string): number | null => {
  const winter = winterOf(city);
  return winter === null ? null : shareAbove(winter.coldF);
};

const saturation = (
  [
    [-60, 1.08, 0.01],
    [-20, 103.24, 0.05],
    [-5, 401.74, 0.15],
    [5, 872.6, 0.3],
    [25, 3169.7, 1],
    [50, 12351.3, 4],
  ] as const
).map(
  ([airC, printed, tol]): CheckRow => ({
    id: `21 (${airC} C)`,
    of: 'saturation pressure, Pa (tolerance 0.03 %, or the last printed digit)',
    call: () => saturationPa(airC),
    expected: printed,
    tol,
    ...handbook,
  }),
);

const table = (
  [
    ['1A', 5],
    ['3', 5],
    ['4C', 10],
    ['4A', 15],
    ['5', 20],
    ['6', 25],
    ['7', 30],
    ['8', 35],
  ] as const
).map(
  ([zone, r]): CheckRow => ({
    id: `37 (${zone})`,
    of: 'foam above the deck by the table, R',
    call: () => tableFoam(zone)?.value ?? null,
    expected: r,
    tol: 0,
    source: 'irc-r806-5',
    at: 'Table R806.5',
    grade: 'found',
  }),
);

const shares = (
  [
    ['Chicago', 0.459, 0.002],
    ['Minneapolis', 0.565, 0.002],
    ['Seattle', 0.135, 0.002],
    ['Houston', 0, 0],
    ['Duluth', 0.58, 0.006],
    ['Boston', 0.38, 0.006],
    ['New York', 0.31, 0.006],
    ['Baltimore', 0.32, 0.006],
    ['Denver', 0.34, 0.006],
    ['Atlanta', 0.05, 0.006],
    ['Fairbanks', 0.67, 0.006],
  ] as const
).map(
  ([city, share, tol]): CheckRow => ({
    id: `28 (${city})`,
    of: 'share of R above the deck, 45 F at the plane',
    call: () => shareAt(city),
    expected: share,
    tol,
    source: 'irc-r806-note-b',
    at: 'Table R806.5, note b, at the winter of the place',
    grade: 'computed',
  }),
);

const dewPoints = (
  [
    [68, 0.4, 42.8],
    [68, 0.5, 48.7],
    [70, 0.25, 32.6],
    [70, 0.3, 37.18],
    [70, 0.4, 44.6],
    [70, 0.5, 50.53],
    [75, 0.6, 60.2],
  ] as const
).map(
  ([roomF, rh, printed]): CheckRow => ({
    id: `23 (${roomF} F, ${100 * rh} %)`,
    of: 'dew point indoors, F',
    call: () => dewF(roomF, rh),
    expected: printed,
    tol: Number.isInteger(printed * 10) ? 0.06 : 0.02,
    ...arithmetic,
    at: 'dew point by the handbook formula',
  }),
);

const triangle = (r0: number, r1: number, corner: 'thick' | 'thin'): number =>
  corner === 'thick' ? meanU(r0, r0, r0 + r1) : meanU(r0, r0 + r1, r0 + r1);

/** A strip 4 ft long whose R rises from `r0` by `r1`, nothing else on it. */
const rectangle = (r0: number, r1: number): number => {
  const ring = [
    [0, 0],
    [4, 0],
    [4, 1],
    [0, 1],
  ] as const;
  const u = averageU([{ ring, plane: { atOriginIn: 0, gx: r1 / 4, gy: 0 }, outlet: 'A' }], perInch(1));
  // The cover board and the films that the product adds are taken off.
  return u(r0 - 2.5 - 0.78);
};

const rows: readonly CheckRow[] = [
  {
    id: '14',
    of: 'underside of the boards in a steady stack at 0 and 70 F',
    call: () => stackF[3],
    expected: 66.05,
    tol: 0.01,
    ...arithmetic,
    at: 'steady conduction through layers',
  },
  ...saturation,
  {
    id: '21 (0 C)',
    of: 'saturation pressure, Pa',
    call: () => saturationPa(0),
    expected: 611.15,
    tol: 0.05,
    ...handbook,
  },
  {
    id: '21 (20 C)',
    of: 'saturation pressure, Pa',
    call: () => saturationPa(20),
    expected: 2338.8,
    tol: 0.05,
    ...handbook,
  },
  {
    id: '22',
    of: 'the independent formula of this test itself at 300 K, Pa',
    call: () => if97Pa(300),
    expected: 3536.58941,
    tol: 0.001,
    source: 'memory',
    at: 'verification point of the industrial formulation of 1997, from memory',
    grade: 'memory',
  },
  {
    id: '22 (handbook)',
    of: 'the handbook law against that formula at 300 K, as a ratio (0.1 %)',
    call: () => saturationPa(26.85) / if97Pa(300),
    expected: 1,
    tol: 0.001,
    source: 'memory',
    at: 'industrial formulation of 1997',
    grade: 'memory',
  },
  ...dewPoints,
  {
    id: '23 (Magnus)',
    of: 'dew point at 70 F and 40 % less that by the WMO form of Magnus, F',
    call: () => dewF(70, 0.4) - fOfC(magnusDewC(cOfF(70), 0.4)),
    expected: 0,
    tol: 0.07,
    source: 'memory',
    at: 'Magnus, WMO constants',
    grade: 'memory',
  },
  {
    id: '24',
    of: 'saturation at 20 C, Pa',
    call: () => isoSaturationPa(20),
    expected: 2336.951,
    tol: 0.001,
    at: 'Annex E',
    ...iso,
  },
  {
    id: '24 (ice)',
    of: 'saturation at -20 C with the constant of the standard, Pa',
    call: () => isoSaturationPa(-20),
    expected: 102.74,
    tol: 0.05,
    source: 'iso-13788',
    at: 'Annex E, constant over ice from memory',
    grade: 'memory',
  },
  {
    id: '24 (ice, as printed elsewhere)',
    of: 'saturation at -20 C, Pa',
    call: () => isoSaturationPa(-20),
    expected: 104.23,
    tol: 0.05,
    doesNotReproduce: 'the public test uses 267.5 for the 265.5 of the standard; the handbook gives 103.26',
    at: 'saturation at -20 C',
    ...glaser,
  },
  {
    id: '25 (U)',
    of: 'U of the wall, W/m2K',
    call: () => 1 / (0.17 + wall.reduce((sum, { r }) => sum + r, 0)),
    expected: 0.80368578,
    tol: 1e-7,
    at: 'thermal transmittance',
    ...glaser,
  },
  {
    id: '25 (T1)',
    of: 'temperature at the first face, C',
    call: () => profile[0].airC,
    expected: 5.48221147,
    tol: 1e-6,
    at: 'temperatures',
    ...glaser,
  },
  {
    id: '25 (T2)',
    of: 'temperature between the first layers, C',
    call: () => profile[1].airC,
    expected: 7.47033972,
    tol: 1e-6,
    at: 'temperatures',
    ...glaser,
  },
  {
    id: '25 (p_e)',
    of: 'vapor pressure outside, Pa',
    call: () => pressures.outsidePa,
    expected: 836.98994,
    tol: 1e-4,
    at: 'pressures',
    ...glaser,
  },
  {
    id: '25 (p_i)',
    of: 'vapor pressure inside, Pa',
    call: () => pressures.insidePa,
    expected: 1285.32313,
    tol: 1e-4,
    at: 'pressures',
    ...glaser,
  },
  {
    id: '25 (face 1)',
    of: 'water on the first interface in 30 days, g/m2',
    call: () => 1000 * MONTH_S * profile[1].gathers,
    expected: 15.8649,
    tol: 1e-4,
    at: 'interstitial condensation',
    ...glaser,
  },
  {
    id: '25 (face 2)',
    of: 'water on the second interface in 30 days, g/m2',
    call: () => 1000 * MONTH_S * profile[2].gathers,
    expected: 15.5326,
    tol: 1e-4,
    at: 'interstitial condensation',
    ...glaser,
  },
  {
    id: '25 (total)',
    of: 'water in 30 days, g/m2',
    call: () => 1000 * MONTH_S * profile.reduce((sum, { gathers }) => sum + gathers, 0),
    expected: 31.39753,
    tol: 1e-4,
    at: 'interstitial condensation',
    ...glaser,
  },
  {
    id: '26 (55 %, to 0.0005 C)',
    of: 'least surface factor at 5 C outside',
    call: () => leastFactor(0.55),
    expected: 0.605745,
    tol: 3e-5,
    at: 'surface factor',
    ...glaser,
  },
  {
    id: '26 (55 %)',
    of: 'least surface factor at 5 C outside',
    call: () => leastFactor(0.55),
    expected: 0.605745,
    tol: 1e-5,
    doesNotReproduce:
      'printed 2e-5 higher: 0.0003 C at the face; the source does not invert the law of the standard exactly',
    at: 'surface factor',
    ...glaser,
  },
  {
    id: '26 (75 %, to 0.0005 C)',
    of: 'least surface factor at 5 C outside',
    call: () => leastFactor(0.75),
    expected: 0.930794,
    tol: 3e-5,
    at: 'surface factor',
    ...glaser,
  },
  {
    id: '26 (75 %)',
    of: 'least surface factor at 5 C outside',
    call: () => leastFactor(0.75),
    expected: 0.930794,
    tol: 1e-5,
    doesNotReproduce:
      'printed 2e-5 higher: 0.0003 C at the face; the source does not invert the law of the standard exactly',
    at: 'surface factor',
    ...glaser,
  },
  ...(
    [
      [1, 3.496, 0.001],
      [0.1, 34.96, 0.01],
      [0.05, 69.9, 0.03],
    ] as const
  ).map(
    ([perm, meters, tol]): CheckRow => ({
      id: `27 (${perm} perm)`,
      of: 'still air that resists alike, m',
      call: () => stillAirOf(perm),
      expected: meters,
      tol,
      ...arithmetic,
      at: '57.21 ng/(s m2 Pa) and 2e-10 kg/(m s Pa)',
    }),
  ),
  ...shares,
  {
    id: '29 (R-20 over R-29)',
    of: 'underside of the deck at 25.5 F outside, F',
    call: () => deckPlaneF({ aboveR: 20, belowR: 29, outdoorF: 25.5, indoorF: 70 }),
    expected: 43.5,
    tol: 0.1,
    ...arithmetic,
    at: 'films R-0.17 and R-0.61',
  },
  {
    id: '29 (R-10 over R-29)',
    of: 'underside of the deck at 25.5 F outside, F',
    call: () => deckPlaneF({ aboveR: 10, belowR: 29, outdoorF: 25.5, indoorF: 70 }),
    expected: 36.9,
    tol: 0.1,
    ...arithmetic,
    at: 'films R-0.17 and R-0.61',
  },
  {
    id: '29 (all above)',
    of: 'underside of the deck under R-30 at 0 F outside, F',
    call: () => deckPlaneF({ aboveR: 30, belowR: 0, outdoorF: 0, indoorF: 70 }),
    expected: 68.6,
    tol: 0.1,
    ...arithmetic,
    at: 'films R-0.17 and R-0.61',
  },
  ...(
    [
      ['January 23.6 F, 40 %', 23.6, 40, false],
      ['January 23.6 F, 50 %', 23.6, 50, true],
      ['January 41.9 F, 50 %', 41.9, 50, false],
    ] as const
  ).map(
    ([id, januaryF, rh, asked]): CheckRow => ({
      id: `30 (${id})`,
      of: 'a vapor retarder is to be considered',
      call: () => considerRetarder(januaryF, rh),
      expected: asked,
      tol: 0,
      source: 'retarder-rules',
      at: 'trade association rule',
      grade: 'found',
    }),
  ),
  {
    id: '31 (rectangle)',
    of: 'U of R rising from 1 to 5',
    call: () => rectangle(1, 4),
    expected: 0.402359,
    tol: 1e-6,
    ...arithmetic,
    at: 'integral over a rectangle',
  },
  {
    id: '31 (thick at the tip)',
    of: 'U of a triangle, R 1 along a side and 5 at the tip',
    call: () => triangle(1, 4, 'thick'),
    expected: 0.505899,
    tol: 1e-6,
    ...arithmetic,
    at: 'integral over a triangle',
  },
  {
    id: '31 (thin at the tip)',
    of: 'U of a triangle, R 5 along a side and 1 at the tip',
    call: () => triangle(1, 4, 'thin'),
    expected: 0.29882,
    tol: 1e-6,
    ...arithmetic,
    at: 'integral over a triangle',
  },
  {
    id: '31 (three corners)',
    of: 'U of a triangle with R 1, 3 and 5',
    call: () => meanU(1, 3, 5),
    expected: 0.363879,
    tol: 1e-6,
    ...arithmetic,
    at: 'integral over a triangle',
  },
  {
    id: '32',
    of: 'R of a taper from 8.05 to 30.85 by its U',
    call: () => 1 / rectangle(8.05, 22.8),
    expected: 16.97,
    tol: 0.01,
    ...arithmetic,
    at: 'integral over a rectangle',
  },
  ...table,
  {
    id: '38 (R-5 over R-25)',
    of: 'zone 1A, share of foam in percent, at least 10',
    call: () => (100 * 5) / 30,
    expected: 16.7,
    tol: 0.05,
    source: 'flat-roof-guide',
    at: 'zones 1 to 3',
    grade: 'found',
  },
  {
    id: '38 (R-25)',
    of: 'least R above R-25 of batts at Miami, zone 1A',
    call: () => leastAbove(winterOf('Miami'), '1A', 25),
    expected: 5,
    tol: 1e-9,
    source: 'flat-roof-guide',
    at: 'zones 1 to 3',
    grade: 'found',
  },
  {
    id: '38 (R-45)',
    of: 'least R above R-45 of batts at Miami: exactly a tenth of all',
    call: () => leastAbove(winterOf('Miami'), '1A', 45),
    expected: 5,
    tol: 1e-9,
    source: 'flat-roof-guide',
    at: 'zones 1 to 3',
    grade: 'found',
  },
  {
    id: '38 (R-60)',
    of: 'least R above R-60 of batts at Miami: the tenth asks for more than the table',
    call: () => leastAbove(winterOf('Miami'), '1A', 60),
    expected: 60 / 9,
    tol: 1e-9,
    source: 'flat-roof-guide',
    at: 'zones 1 to 3',
    grade: 'found',
  },
  {
    id: 'stricter (Chicago)',
    of: 'least R above R-29 of batts: the share, not the R-20 of the table',
    call: () => leastAbove(winterOf('Chicago'), '5A', 29),
    expected: 29 * (0.4588 / 0.5412),
    tol: 0.01,
    source: 'irc-r806-note-b',
    at: 'Table R806.5 and note b, the stricter',
    grade: 'computed',
  },
  {
    id: 'perms',
    of: 'rows of permeance that let nothing or everything through',
    call: () => permeances.filter(({ perm }) => !(perm > 0 && perm < 200)).length,
    expected: 0,
    tol: 0,
    ...arithmetic,
    at: 'range of the table',
  },
];

checkRows('vapor and condensing plane, check values 21 to 32, 37, 38', rows);
