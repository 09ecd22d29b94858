import { describe, expect, it } from 'vitest';
import { taperOverBackfall } from '../../src/core/drainage/backfall.ts';
import { caseRoof, caseRows, everythingSaid, findingIds, said } from './case-roof.ts';

const IN_PER_MM = 1 / 25.4;
const SQ_M_PER_SQ_FT = 0.3048 ** 2;
const L_PER_GAL = 3.785411784;
const KPA_PER_PSF = 0.04788026;

const c02 = caseRoof('c02');
const [water] = c02.answer.existing.ponds;
const back = c02.answer.findings.find(({ id }) => id === 'backfall');

// Case C02 of the project's case collection: a re-roofed garage-type roof that holds water behind a high eaves board.
caseRows('C02: 6 x 4 m, eaves board 10 mm proud of the ground 0.55 m before it', [
  {
    key: 'edge_backfall_pct',
    got: () => (-Number.parseFloat(back?.value ?? 'NaN') / 12) * 100,
    min: -3.64,
    max: -1.81,
    basis: 'C',
  },
  { key: 'max_residual_depth_mm', got: () => water.greatestDepthIn / IN_PER_MM, value: 10, tol: 1, basis: 'F' },
  { key: 'pond_area_m2', got: () => water.areaSqFt * SQ_M_PER_SQ_FT, value: 8.1, tol: 0.3, basis: 'C' },
  { key: 'pond_volume_L', got: () => water.volumeGal * L_PER_GAL, value: 40.5, tol: 2, basis: 'C' },
  { key: 'load_at_10mm_kPa', got: () => water.greatestLoadPsf * KPA_PER_PSF, value: 0.098, tol: 0.002, basis: 'C' },
]);

describe('C02: what is said', () => {
  it('ponds, by what was seen after 168 h', () => {
    expect(c02.answer.existing.verdict).toBe('ponds');
    expect(c02.answer.existing.why).toContain('168 h');
    expect(c02.answer.existing.passes48h).toBe(false);
  });

  it('backfall, with the fall away from the edge and toward it', () => {
    expect(back).toMatchObject({ level: 'stop', value: '0.218 in/ft away', limit: '0.150 in/ft toward' });
    expect(said(c02, 'backfall')).toMatch(/falls 0\.218 in per ft away from the gutter side/);
  });

  it('the edge comes first, and by itself it is enough: 16.9 mm lower', () => {
    expect(c02.answer.headline).toMatch(/Correct the gutter side.* first: lowered by 11\/16″/);
    expect(c02.answer.headline).not.toMatch(/taper/i);
    expect(findingIds(c02)).not.toContain('levelling');
  });

  it('never tells anybody to coat the water in', () => {
    expect(c02.answer.chosenMembrane).not.toMatch(/coat|liquid/);
    expect(everythingSaid(c02)).not.toMatch(/coat the/i);
  });
});

const c13 = caseRoof('c13');
const taper = c13.answer.layouts.find(({ id }) => id === 'existing-outlets')!;
const door = c13.answer.budgets.find(({ kind }) => kind === 'door')!;
const riseIn = taper.greatestThicknessIn - taper.leastThicknessIn;

// Case C13: an old balcony floor, 10 x 6 ft, that falls 1/8 in/ft back to the house, door 6 in above it.
caseRows('C13: balcony that falls back to the house', [
  { key: 'taper_needed_in_per_ft', got: () => taper.slopeInPerFt, value: 0.375, tol: 0.001, basis: 'C' },
  {
    key: 'taper_needed_in_per_ft (formula)',
    got: () => taperOverBackfall(0.25, 0.125),
    value: 0.375,
    tol: 0.001,
    basis: 'C',
  },
  { key: 'sleeper_height_at_wall_in', got: () => riseIn, value: 2.25, tol: 0.02, basis: 'C' },
  { key: 'upstand_left_in (bare rise)', got: () => (door.heightIn ?? 0) - riseIn, value: 3.75, tol: 0.05, basis: 'C' },
  {
    key: 'upstand_left_in',
    got: () => (taper.budgets.find(({ id }) => id === door.id)?.leftIn ?? 0) + door.clearIn,
    value: 3.75,
    tol: 0.05,
    basis: 'C',
    doesNotReproduce:
      'a taper of boards starts 1/2 in thick and carries a 1/2 in cover board: 2.75 in are left, the case has bare sleepers',
  },
  {
    key: 'sleeper_count',
    got: () => c13.answer.materials.find(({ item }) => /sleeper/.test(item))?.quantity,
    value: 11,
    tol: 0,
    basis: 'C',
    doesNotReproduce: 'the tool lays tapered boards, it does not set out sleepers',
  },
]);

describe('C13: what is said', () => {
  it('a quarter-inch taper is never called a quarter-inch fall here', () => {
    const gentler = c13.answer.layouts.find(({ slopeInPerFt }) => slopeInPerFt === 0.25);
    expect(gentler?.leastFaceSlopeInPerFt).toBeCloseTo(0.125, 9);
    expect(gentler?.rejected?.why).toContain('falls 1/8 in per ft');
    expect(said(c13, 'backfall')).toContain('3/8 in per ft leaves 1/4 in per ft');
  });

  it('the door is the limit: no layout fits under 4 in of flashing', () => {
    expect(c13.answer.chosenLayout).toBeNull();
    expect(taper.rejected).toMatchObject({ availableIn: 2 });
    expect(taper.rejected?.where).toContain('door');
    expect(door).toMatchObject({ heightIn: 6, clearIn: 4, availableIn: 2 });
  });
});
