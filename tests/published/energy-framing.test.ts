import { joistFraming } from '../../reference/energy.ts';
import { filmsR } from '../../reference/insulation.ts';
import { roofU } from '../../src/core/energy/framing.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

/** Films and ceiling board of the table: 0.46 outside, 0.61 inside, gypsum board 0.56; joists are a tenth of the area. */
const tableU = (r: number, depthIn: number): number =>
  roofU(0.46 + 0.61 + 0.56 - filmsR.value, r, { share: 0.1, woodR: joistFraming.woodRPerIn * depthIn });

const at = 'Table A2.4.2, single-rafter roofs, read at a public page of the code';
const table = { of: 'U of insulation between joists', tol: 0.0005, source: 'ashrae-90-1', at, grade: 'found' } as const;

const rows: readonly CheckRow[] = [
  { id: 'R-19 in 2x6', call: () => tableU(19, 5.5), expected: 0.055, ...table },
  { id: 'R-21 in 2x6', call: () => tableU(21, 5.5), expected: 0.052, ...table },
  { id: 'R-30 in 2x10', call: () => tableU(30, 9.25), expected: 0.036, ...table },
  {
    id: 'R-38 in 2x12',
    call: () => tableU(38, 11.25),
    expected: 0.028,
    doesNotReproduce: 'U 0.0291; even wood of the full 12 in of the column gives 0.0287, so the print is a step low',
    ...table,
  },
  {
    id: 'softwood',
    of: 'R of 4 in of softwood',
    call: () => 4 * joistFraming.woodRPerIn,
    expected: 5,
    tol: 0,
    source: 'ca-title-24',
    at: 'Joint Appendix JA4, Table 4.5.2, softwood 4 in',
    grade: 'found',
  },
];

checkRows('insulation between joists, by parallel paths', rows);
