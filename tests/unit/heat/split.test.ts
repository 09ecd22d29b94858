import { describe, expect, it } from 'vitest';
import { splitOf } from '../../../src/core/heat/split.ts';
import { splitSentence } from '../../../src/core/report/page-heat.ts';

describe('what insulation and color share', () => {
  // Corners by hand: a quarter comes through with the insulation, half with the color, an eighth with both.
  const split = splitOf({ old: 80, insulationOnly: 20, colorOnly: 40, both: 10 });

  it('is the mean of both orders, and names the overlap', () => {
    expect(split.savedBtu).toBe(70);
    expect(split.insulationAloneBtu).toBe(60);
    expect(split.colorAloneBtu).toBe(40);
    expect(split.overlapBtu).toBe(30);
    expect(split.insulationShare).toBeCloseTo((60 + 30) / 2 / 70, 12);
    expect(split.colorShare).toBeCloseTo((40 + 10) / 2 / 70, 12);
  });

  it('adds up to one whatever the corners, and shares nothing where nothing is saved', () => {
    const odd = splitOf({ old: 50, insulationOnly: 20, colorOnly: 70, both: 25 });
    expect(odd.insulationShare! + odd.colorShare!).toBeCloseTo(1, 12);
    expect(odd.colorShare).toBeLessThan(0);
    expect(splitOf({ old: 10, insulationOnly: 12, colorOnly: 9, both: 11 }).insulationShare).toBeNull();
  });

  it('says so in one paragraph, also where color or everything works the other way', () => {
    expect(splitSentence(split)).toBe(
      'Of the 70 Btu per sq ft kept out in that day, 64 % is insulation and 36 % is color: insulation alone would keep out 60, color alone 40. That is 30 more than both together, because each leaves less for the other; the shares are the mean of both orders.',
    );
    expect(splitSentence(splitOf({ old: 50, insulationOnly: 20, colorOnly: 70, both: 25 }))).toContain(
      'all of it is insulation: the new color takes in more sun',
    );
    expect(splitSentence(splitOf({ old: 10, insulationOnly: 12, colorOnly: 9, both: 11 }))).toContain(
      '1 Btu per sq ft more',
    );
    expect(splitSentence(splitOf({ old: 10, insulationOnly: 10, colorOnly: 10, both: 10 }))).toContain(
      'next to nothing',
    );
  });
});
