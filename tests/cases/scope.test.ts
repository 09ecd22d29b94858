import { describe, expect, it } from 'vitest';
import { repairOrder } from '../../src/core/report/crew-repair.ts';
import type { ScopeReport } from '../../src/core/report/types.ts';
import { type CaseRoof, caseRoof, caseRows, caseText, everythingSaid, findingIds, said } from './case-roof.ts';

// Cases C53 to C56 of the project's case collection, each from its roof file; facts not stated there stay not known.

const scope = ({ answer }: CaseRoof): ScopeReport => answer.scope!;
const standing = (roof: CaseRoof, id: string): string => scope(roof).ways.find((way) => way.id === id)!.standing;
const allSaid = (roof: CaseRoof): string =>
  [
    everythingSaid(roof),
    scope(roof).answer,
    ...scope(roof).ways.flatMap(({ reasons }) => reasons.map(({ text }) => text)),
  ].join('\n');
const figure = (roof: CaseRoof, finding: string, name: string): number | undefined =>
  scope(roof)
    .repairs.find((work) => work.finding === finding)
    ?.figures.find((each) => each.name === name)?.value;

describe('C53: coat it and forget the pond?', () => {
  const roof = caseRoof('c53');
  const acrylic = roof.answer.membranes.find(({ id }) => id === 'acrylic')!;
  caseRows('check values', [
    {
      key: 'pond_load_psf',
      got: () => roof.answer.existing.ponds[0].greatestLoadPsf,
      value: 7.8,
      tol: 0.1,
      basis: 'C',
    },
    { key: 'pond_gone_after_coating', got: () => standing(roof, 'coat') !== 'barred', value: false, basis: 'F' },
    { key: 'acrylic_ok', got: () => acrylic.veto === null, value: false, basis: 'F' },
  ]);

  it('fails by its drainage, and both are flagged: water after 96 hours, a coating on it', () => {
    expect(roof.answer.existing.verdict).toBe('ponds');
    expect(findingIds(roof)).toEqual(expect.arrayContaining(['pond', 'coating-on-pond', 'moisture-not-known']));
    expect(said(roof, 'coating-on-pond')).toContain('moves no water');
  });

  it('nothing goes on while the moisture is not known', () => {
    expect(scope(roof).recommended).toBeNull();
    expect(scope(roof).tests.map(({ id }) => id)).toContain('cores');
    expect(roof.answer.findings.find(({ id }) => id === 'moisture-not-known')!.level).toBe('stop');
  });
});

describe('C54: old EPDM pulled off its walls', () => {
  const roof = caseRoof('c54');
  caseRows('check values', [
    { key: 'wall_length_ft', got: () => figure(roof, 'bridging', 'along walls'), value: 320, tol: 0.1, basis: 'C' },
    { key: 'curb_length_ft', got: () => figure(roof, 'bridging', 'round curbs'), value: 96, tol: 0.1, basis: 'C' },
    {
      key: 'securement_total_ft',
      got: () => figure(roof, 'bridging', 'to fasten in all'),
      value: 416,
      tol: 0.5,
      basis: 'C',
    },
  ]);

  it('is repaired, with care: moisture and water are looked at beside it', () => {
    expect(scope(roof).recommended).toBe('repair');
    expect(
      scope(roof)
        .ways[0].reasons.map(({ text }) => text)
        .join(' '),
    ).toContain('whether the insulation is dry');
  });

  it('is not called ponding, and patched seams are not called its cure', () => {
    expect(roof.answer.existing.verdict).not.toBe('ponds');
    expect(roof.answer.existing.ponds).toHaveLength(0);
    expect(scope(roof).answer).toContain('fasten it in the sheet along every wall and curb');
    expect(scope(roof).repairs[0].lines.join(' ')).toContain('Patching seams does not cure this');
  });
});

describe('C55: taking over a 16 x 29 ft TPO roof with bad welds', () => {
  const roof = caseRoof('c55');
  caseRows('check values', [
    { key: 'area_sf', got: () => figure(roof, 'failed-weld', 'area'), value: 464, tol: 0.1, basis: 'C' },
    { key: 'strips', got: () => figure(roof, 'failed-weld', 'rolls side by side'), value: 2, tol: 0, basis: 'C' },
    { key: 'field_seam_ft', got: () => figure(roof, 'failed-weld', 'field seams'), value: 29, tol: 0.1, basis: 'C' },
    {
      key: 'perimeter_ft',
      got: () => figure(roof, 'failed-weld', 'edge and flashing seams'),
      value: 90,
      tol: 0.1,
      basis: 'C',
    },
  ]);

  it('is a fault of the work: the slope is in order, and the seams are what is repaired', () => {
    expect(roof.answer.existing.verdict).toBe('meets-minimum');
    expect(scope(roof).recommended).toBe('repair');
    expect(said(roof, 'seam-probe')).toContain('Probe every foot');
    expect(roof.answer.inspection![0].tells).toContain('fault of the work');
  });

  it('the crew sheet has the probing and the sealing of cut edges, and says that the roll is taken for now', () => {
    const lines = repairOrder(roof.answer)!.flatMap((step) => step.lines);
    expect(lines.some((line) => line.startsWith('Probe every foot of every seam'))).toBe(true);
    expect(lines.some((line) => line.startsWith('Seal every cut edge'))).toBe(true);
    expect(lines.find((line) => line.includes('field seams'))).toContain('taken for now');
  });
});

describe('C56: deep cracks in a sixty-year-old roof’s coat, no leaks', () => {
  const roof = caseRoof('c56');
  const asks = () =>
    scope(roof).tests.some(({ id }) => id === 'cores') && scope(roof).tests.some(({ id }) => id === 'scan');
  caseRows('check values', [
    { key: 'tear_off_on_this_evidence', got: () => standing(roof, 'tear-off') === 'open', value: false, basis: 'F' },
    { key: 'asks_for_cores_or_scan', got: asks, value: true, basis: 'C' },
  ]);

  it('nothing is decided, and no years are promised', () => {
    expect(scope(roof).recommended).toBeNull();
    expect(scope(roof).answer).toMatch(/^Not decided until/);
    expect(allSaid(roof)).not.toMatch(/remaining (life|years)|years left|will last/i);
  });

  it('wet all over in a scan, the same roof is torn off', () => {
    const wet = {
      kind: 'wet-insulation',
      foundBy: 'scan',
      outline: [
        [0, 0],
        [30, 0],
        [30, 12],
        [0, 12],
      ],
    };
    const { answer } = withFinding(wet);
    expect(answer.scope!.recommended).toBe('tear-off');
    const half = {
      ...wet,
      outline: [
        [0, 0],
        [10, 0],
        [10, 12],
        [0, 12],
      ],
    };
    expect(withFinding(half).answer.scope!.ways[3].standing).not.toBe('barred');
    expect(withFinding(half).answer.scope!.recommended).not.toBe('tear-off');
  });

  const withFinding = (finding: object): CaseRoof => {
    const file = JSON.parse(caseText('c56')) as { findings: object[] };
    file.findings.push(finding);
    return caseRoof('c56', JSON.stringify(file));
  };
});
