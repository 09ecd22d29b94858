import { describe, expect, it } from 'vitest';
import { ownerPage } from '../../src/core/report/page-owner.ts';
import { OwnerPage } from '../../views/pages/owner-page.tsx';
import { smallRoof } from './owner-roofs.ts';

const falls = (slopeInPerFt: number) => ({
  existing: { planes: [{ slopeInPerFt, fallsToward: { side: 0 } }], readOn: 'covering' },
});
const blister = { findings: [{ kind: 'blister', at: [8, 5], severity: 'plain' }] };
const wet = {
  findings: [
    { kind: 'wet-insulation', at: [8, 5], severity: 'plain', foundBy: 'scan', areaSqFt: 160 },
    { kind: 'open-lap', at: [8, 5], severity: 'severe' },
  ],
};

describe('a roof that drains as it is', () => {
  it('is not said to be made to drain; what asks for a new roof, if anything, is named', () => {
    const mended = smallRoof({ ...falls(0.5), ...blister });
    const torn = smallRoof({ ...falls(0.5), ...wet });
    const open = smallRoof(falls(0.5));
    for (const { headline, existing } of [mended, torn, open]) {
      expect(existing.verdict).toBe('meets-minimum');
      expect(headline).toMatch(/^The roof drains as it is: .* For one that is laid here, a taper of .* drains too \(/);
      expect(headline).not.toContain('drains it');
    }
    expect([mended, torn, open].map(({ scope }) => scope?.recommended)).toEqual(['repair', 'tear-off', null]);
    expect(mended.headline).toContain('asks for repairs, not for a new roof');
    expect(torn.headline).toContain('What was found asks for a new roof, the water does not.');
    expect(open.headline).toContain('Whether it needs a new roof is not decided.');
    // One that does not drain is told what ends it, as before.
    expect(smallRoof(falls(0.0625)).headline).toMatch(/ A taper of .* drains it \(/);
  });

  it('has today’s figures alone in its three numbers where it is kept, and says so', async () => {
    const assessment = smallRoof({ ...falls(0.5), ...blister });
    const { numbers, numbersLead, sections } = ownerPage(assessment);
    expect(numbersLead?.text).toBe(
      'This roof drains, and nothing that was found asks for a new one. So only today’s numbers stand here.',
    );
    expect(numbers.map(({ id }) => id).slice(0, 2)).toEqual(['drains', 'slope']);
    expect(numbers[0].today.text).toBe('none found');
    expect(numbers[1].today.text).toBe('1/2 inch in each foot, and 1/4 inch in each foot is asked for');
    expect(numbers.every(({ next }) => next === null)).toBe(true);
    expect(sections.find(({ id }) => id === 'edges')?.title).toBe('How a new edge would look from the yard');
    const page = String(
      await (<OwnerPage assessment={assessment} setting={{ links: null, style: { text: '' }, dateText: null }} />),
    );
    expect(page).toContain('only today’s numbers stand here');
    expect(page).not.toMatch(/When the old roof is off|What changes at doors/);
  });

  it('has what a new roof would be beside them where that is not settled', () => {
    const { numbers, numbersLead } = ownerPage(smallRoof(falls(0.5)));
    expect(numbersLead?.text).toContain('It is not settled whether it needs a new one');
    expect(numbers.some(({ next }) => next !== null)).toBe(true);
  });
});
