import { describe, expect, it } from 'vitest';
import { evaluateCautions } from '../../src/core/safety/cautions.ts';
import { fallOptions } from '../../src/core/safety/fall-options.ts';
import { roofWidths } from '../../src/core/safety/roof-width.ts';
import { edge, jobFacts, opening, rectangle } from '../unit/safety-facts.ts';

// Case C62 of the project's case collection: a hole under a loose lid, and when a lone monitor is allowed.
describe('C62: eave 14 ft, slope 1/4 in/ft, parts 48 and 52 ft wide, hole 4 x 8 ft under a loose lid, two skylights', () => {
  const facts = (widthFt: number) =>
    jobFacts(
      {
        roof: {
          slopeIn12: 0.25,
          edges: [edge({ dropFt: 14 })],
          openings: [
            opening({ cover: 'loose' }),
            opening({ label: 'skylight 1', kind: 'skylight', cover: null, guarded: null }),
            opening({ label: 'skylight 2', kind: 'skylight', cover: null, guarded: null }),
          ],
        },
        work: { fallProtection: ['monitor'], wheeledEquipment: false, crewSize: 4, monitorOnlyWatches: true },
      },
      100,
      widthFt,
    );
  const cautions = evaluateCautions(facts(48));
  const find = (id: string) => cautions.find((caution) => caution.id === id);

  it('fall protection is required', () => {
    expect(find('fall-protection-required')!.because).toContain('14 ft');
  });

  it.each([
    [48, true],
    [52, false],
  ])('%d ft wide: monitor alone %s (from memory of 1926.501(b)(10))', (width, allowed) => {
    const part = roofWidths(rectangle(100, width)).parts[0]!;
    const options = fallOptions({ slopeIn12: 0.25, part, wheeledEquipment: false, roofingWork: true });
    expect(options.find((option) => option.id === 'monitor-alone')!.allowed).toBe(allowed);
    expect(evaluateCautions(facts(width)).some((caution) => caution.id === 'monitor-alone-too-wide')).toBe(!allowed);
  });

  it('a warning line stands at least 6 ft back', () => {
    const lined = jobFacts({ roof: { edges: [edge()] }, work: { fallProtection: ['warning-line', 'monitor'] } });
    expect(evaluateCautions(lined).find((caution) => caution.id === 'warning-line-set')!.text).toContain(
      '6 ft or more',
    );
  });

  it('the loose lid is an open hole and a trap', () => {
    expect(find('open-hole')!.severity).toBe(4);
    expect(find('open-hole')!.because).toContain('opening 4 x 8 ft (a loose cover)');
    expect(find('loose-lid')!.because).toContain('opening 4 x 8 ft');
    expect(find('hole-cover')!.text).toContain('screwed down');
  });

  it('skylights are never walked on, and the deck is not trusted before it is known', () => {
    expect(find('skylight')!.text).toContain('Never step');
    expect(find('skylight')!.because).toContain('skylight 1 and skylight 2');
    expect(find('deck-strength')!.severity).toBe(4);
  });
});
