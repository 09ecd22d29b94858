import { feetInches, inches } from '../../units/print.ts';
import { checkSlope } from '../drainage/stated-slope.ts';
import { sourceNote } from '../finding.ts';
import type { Roof } from '../roof.ts';
import { slopeFigure } from './page-figures.ts';
import { finding } from './part-finding.ts';
import type { Finding } from './types.ts';

/** Planes whose stated slope and measured rise do not say the same. */
export function statedSlopeFindings({ existing: { surface } }: Pick<Roof, 'existing'>): Finding[] {
  if (surface.kind !== 'planes') return [];
  return surface.planes.flatMap(({ slopeInPerFt, riseIn, runFt }, i) => {
    if (riseIn === null || runFt === null) return [];
    const { expectedIn, measuredInPerFt, agrees } = checkSlope(slopeInPerFt, riseIn, runFt);
    if (agrees) return [];
    const where = surface.planes.length === 1 ? 'the plane of the roof' : `plane ${i + 1}`;
    return [
      finding({
        id: 'slope-and-rise-disagree',
        level: 'fix',
        where,
        message: `${slopeFigure(slopeInPerFt)} over ${feetInches(runFt)} is ${inches(expectedIn)}, but ${inches(riseIn)} was measured, which is ${slopeFigure(measuredInPerFt)}. The stated slope is used: measure again and put right what is wrong.`,
        value: inches(riseIn),
        limit: inches(expectedIn),
        source: sourceNote({ source: 'arithmetic', at: 'rise over run', grade: 'computed' }),
      }),
    ];
  });
}
