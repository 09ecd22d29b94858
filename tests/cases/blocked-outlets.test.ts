import { describe, expect, it } from 'vitest';
import { openWorkLoad } from '../../src/core/drainage/open-work.ts';
import { orderOfWork } from '../../src/core/report/page-crew.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';
import { convert } from '../../src/units/convert.ts';
import { parseMeasure } from '../../src/units/parse-measure.ts';
import { caseRoof, caseRows, caseText, findingIds, said } from './case-roof.ts';

const KPA_PER_PSF = 0.04788026;

const c22 = caseRoof('c22');
const outlet = (id: string) => c22.answer.existing.outlets.find((each) => each.id === id)!;
const psfSaid = (id: string): number => Number.parseFloat(/([\d.]+) psf more/.exec(said(c22, id))?.[1] ?? 'NaN');

// Case C22 of the project's case collection: 100 x 60 ft, one 6 x 6 in scupper, its overflow covered and 6 in up.
caseRows('C22: primary scupper a quarter of the needed size', [
  { key: 'flow_required_gpm', got: () => outlet('S1').flowGpm, value: 187, tol: 1, basis: 'C' },
  { key: 'scupper_capacity_2in_head_gpm', got: () => outlet('S1').capacityGpm, value: 47.5, tol: 2, basis: 'C' },
  {
    key: 'undersize_factor',
    got: () => outlet('S1').flowGpm! / outlet('S1').capacityGpm!,
    value: 3.9,
    tol: 0.2,
    basis: 'C',
  },
  {
    key: 'extra_load_overflow_4in_too_high_psf',
    got: () => psfSaid('overflow-too-high'),
    value: 20.8,
    tol: 0.1,
    basis: 'C',
  },
]);

describe('C22: what is said', () => {
  it('too small, covered, too high, and an engineer first', () => {
    expect(findingIds(c22)).toEqual(
      expect.arrayContaining(['outlet-undersized', 'overflow-covered', 'overflow-too-high', 'engineer-first']),
    );
  });

  it('a covered overflow carries nothing and drains nothing', () => {
    expect(outlet('O1')).toMatchObject({ drainsSqFt: 0, capacityGpm: 0 });
    expect(c22.answer.existing.loads.some(({ label }) => label.includes('O1'))).toBe(false);
  });

  it('the scupper is not taken as adequate because it is there', () => {
    expect(outlet('S1')).toMatchObject({ adequate: false, needs: 'scupper 24 x 6 in' });
  });
});

const c26 = caseRoof('c26');
const load = openWorkLoad(4, c26.answer.section.areaSqFt);

// Case C26: 10,000 sq ft with its drains capped and 4 in of rain in an hour.
caseRows('C26: work in progress, drains capped', [
  { key: 'mean_load_psf', got: () => load.loadPsf, value: 20.8, tol: 0.1, basis: 'C' },
  { key: 'volume_gal', got: () => load.volumeGal, value: 24935, tol: 60, basis: 'C' },
  { key: 'weight_lb', got: () => load.weightLb, value: 208_000, tol: 500, basis: 'C' },
]);

describe('C26: what is said', () => {
  it('the order of the work, the load, and no way out', () => {
    expect(c26.answer.findings.find(({ id }) => id === 'phasing')).toMatchObject({ level: 'stop', value: '20.8 psf' });
    expect(said(c26, 'phasing')).toMatch(/20\.8 psf, 208,000 lb.*No outlet is closed before its replacement is open/);
    expect(findingIds(c26)).toEqual(expect.arrayContaining(['no-way-out', 'engineer-first']));
  });

  it('no crew sheet while nothing is open, and none that closes an outlet', () => {
    expect(c26.answer.chosenLayout).toBeNull();
    for (const layout of [...c26.answer.layouts, ...c22.answer.layouts]) {
      const words = orderOfWork(c26.answer, layout).flatMap(({ title, lines }) => [title, ...lines]);
      expect(words.join('\n')).not.toMatch(/(close|cap|plug|remove)\b.*(outlet|drain|scupper)/i);
    }
  });
});

const c28 = caseRoof('c28');
const stepKpa = (label: string): number =>
  (c28.answer.existing.loads.find((step) => step.label.includes(label))?.loadPsf ?? Number.NaN) * KPA_PER_PSF;
const pairOf = (text: string) => parseMeasure(text, 'height');

// Case C28: a hospital roof between parapets of 600 mm whose only overflow is a door, sill at 150 mm.
caseRows('C28: the only overflow is a door', [
  { key: 'two_ft_in_mm', got: () => convert(2, 'ft', 'm') * 1000, value: 609.6, tol: 0.1, basis: 'C' },
  { key: 'pair_500_consistent', got: () => pairOf('2 ft (500 mm)').action === 'accept', value: false, basis: 'C' },
  { key: 'pair_600_consistent', got: () => pairOf('2 ft (600 mm)').action === 'accept', value: true, basis: 'C' },
  { key: 'load_to_sill_kPa', got: () => stepKpa('in at wall'), value: 1.47, tol: 0.02, basis: 'C' },
  { key: 'load_to_parapet_600_kPa', got: () => stepKpa('over parapet'), value: 5.89, tol: 0.03, basis: 'C' },
]);

describe('C28: what is said', () => {
  it('no second way out, the door, and an engineer first', () => {
    expect(findingIds(c28)).toEqual(
      expect.arrayContaining(['no-second-way-out', 'door-is-overflow', 'engineer-first', 'height-short']),
    );
    expect(said(c28, 'height-short')).toContain('door');
  });

  it('a pair that contradicts itself is put back to the person, never picked from', () => {
    const parsed = parseRoofText(caseText('c28').replace('"600 mm"', '"2 ft (500 mm)"'));
    expect(parsed.ok).toBe(false);
    const problems = parsed.ok ? [] : parsed.problems;
    expect(problems).toHaveLength(1);
    expect(problems[0].path).toBe('edges[0].topIn');
    expect(JSON.stringify(problems[0])).toMatch(/500 mm/);
  });
});
