import { driftAtWall, driftHeightFt, flatRoofSnowPsf, snowDensityPcf } from '../../src/core/drainage/snow.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

// A roof step worked in print: ground snow 25 psf, 40 ft of roof upwind, step of 4 ft, all factors 1.
const row = (id: string, of: string, call: () => number, expected: number, tol: number): CheckRow => ({
  id,
  of,
  call,
  expected,
  tol,
  source: 'drift-example',
  at: 'ASCE 7-16 column',
  grade: 'found',
});
const step = () => driftAtWall({ groundPsf: 25, wallFt: 4, ownFetchFt: 20, upperFetchFt: 40 });

checkRows('snow, ASCE 7-16 chapter 7', [
  row('even snow', 'even snow on a flat roof, psf', () => flatRoofSnowPsf(25), 17.5, 0.05),
  row('density', 'density of snow, pcf', () => snowDensityPcf(25), 17.25, 0.005),
  row('drift height', 'height of the drift, ft', () => driftHeightFt(40, 25), 2.08, 0.005),
  row('drift load', 'load of the drift at the step, psf', () => step().psf, 35.8, 0.05),
  row('total', 'even snow and drift at the step, psf', () => flatRoofSnowPsf(25) + step().psf, 53.3, 0.05),
]);
