import { describe, expect, it } from 'vitest';
import { searchLines } from '../../src/core/report/page-search.ts';
import { assessed, gutterRoof, roofOf } from './takeoff-roofs.ts';

describe('what was looked at', () => {
  it('every candidate is counted once: it fits, is barred or breaks a height', () => {
    const { search, layouts } = assessed(roofOf(gutterRoof(30, 20)));
    const stopped = [...search.rejected, ...search.barred].reduce((sum, { count }) => sum + count, 0);
    // The plans themselves are candidates of the first round.
    expect(search.tried).toBeGreaterThanOrEqual(search.fitting + stopped);
    expect(search.tried - search.fitting - stopped).toBeLessThan(20);
    expect(searchLines(search)[0]).toContain(`${search.tried}`);
    expect(layouts.filter(({ rejected }) => rejected === null).length).toBeGreaterThan(0);
  });

  it('where a sill leaves no room the least that has to give is named with what it opens', () => {
    const edges = [
      { side: 0, kind: 'gutter', mayDrain: 'yes' },
      { side: 1, kind: 'rake', mayDrain: 'no' },
      { side: 2, kind: 'wall', mayDrain: 'no', openings: [{ kind: 'door', fromFt: 3, toFt: 6, heightIn: 9 }] },
      { side: 3, kind: 'rake', mayDrain: 'no' },
    ];
    const { search, relax } = assessed(
      roofOf(gutterRoof(30, 20, { edges, building: { heightFt: 10, below: 'living-exposed-deck' } })),
    );
    expect(search.fitting).toBe(0);
    // No drain through a ceiling that is the deck: one way 20 ft at 1/4: 0.5 low edge, 5 of rise, 0.5 cover board; the sill leaves 1 in over 8 in of flashing.
    expect(search.relaxation?.byIn).toBeCloseTo(5, 6);
    expect(relax).toBe(search.relaxation?.text);
    expect(searchLines(search).at(-1)).toContain('What has to give least');
  });

  it('each offered layout that is first in something says so', () => {
    const { layouts } = assessed(roofOf(gutterRoof(30, 20)));
    const offered = layouts.filter(({ rejected }) => rejected === null);
    expect(offered.length).toBeGreaterThan(1);
    const least = offered.reduce((a, b) => (b.volumeBoardFt < a.volumeBoardFt ? b : a));
    for (const layout of offered) expect(layout.why.includes('The least board of all.')).toBe(layout === least);
  });
});
