import { describe, expect, it } from 'vitest';
import { kitchenTable } from '../../src/core/report/page-kitchen-table.ts';
import { type OwnerSectionId, ownerPage } from '../../src/core/report/page-owner.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { styleSheet } from '../../views/style.ts';
import { smallRoof } from './owner-roofs.ts';

const told = (assessment: Assessment, id: OwnerSectionId): string =>
  ownerPage(assessment)
    .sections.filter((section) => section.id === id)
    .flatMap(({ statements }) => statements.map(({ text }) => text))
    .join(' ');

describe('words of the owner’s papers', () => {
  it('an overflow that has to rise is no curb and no pipe', () => {
    const roof = smallRoof({
      edges: [0, 1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 24, mayDrain: side === 0 ? 'yes' : 'no' })),
      outlets: [
        { id: 'D1', kind: 'drain', at: [2, 6], role: 'primary' },
        { id: 'S1', kind: 'scupper', side: 0, alongFt: 18, widthIn: 10, heightIn: 5, role: 'overflow', inletIn: 1 },
      ],
      existing: {
        surface: 'level',
        readOn: 'covering',
        buildUpIn: 2,
        seenPonds: [{ at: [9, 6], depthIn: 1, hoursAfterRain: 60 }],
      },
      covering: { kind: 'bur-gravel', layers: 2, ageYears: 12 },
    });
    const raised = roof.layouts.find(({ id }) => id === roof.chosenLayout)!.newHeights!.raised;
    expect(raised.map(({ kind }) => kind)).toEqual(['overflow']);
    expect(told(roof, 'extra')).toContain('Making 1 overflow inlet higher');
    const cell = kitchenTable(roof).rows.find(({ id }) => id === 'raised')!.cells[0]!;
    expect(cell.text).toBe('1 overflow inlet');
  });

  it('a covering that was asked for and is out is answered, with why', () => {
    const roof = smallRoof({ preferences: { membrane: 'sbs-torch' } });
    const { veto, name } = roof.membranes.find(({ id }) => id === 'sbs-torch')!;
    expect(told(roof, 'wishes')).toContain(
      `You asked for this covering: ${name}. It is out on this roof. ${veto!.why}`,
    );
    const other = roof.membranes.find((each) => each.veto === null && each.id !== roof.chosenMembrane)!;
    const asked = smallRoof({ preferences: { membrane: other.id } });
    expect(told(asked, 'wishes')).toMatch(/It may be used, but another one suits this roof better\./);
    expect(told(smallRoof({}), 'wishes')).toBe('');
  });

  it('the weight of water is told in pounds on each square foot', () => {
    const [finding] = ownerPage(smallRoof({ findings: [{ kind: 'ponding', at: [8, 5] }] })).findings;
    expect(finding.statement.text).toContain('5.2 pounds on each square foot');
    expect(finding.statement.text).not.toContain('psf');
  });

  it('a long path of the roof file breaks where the page is narrow', () => {
    expect(styleSheet()).toMatch(/code\{[^}]*overflow-wrap:anywhere/);
  });
});
