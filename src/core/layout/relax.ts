import type { Layout, SearchReport } from '../report/types.ts';

/** A gentler taper than the rule is a thing to ask for, not what stands in the way. */
const GENTLER = '-gentler';

export interface Relaxation {
  where: string;
  text: string;
}

/**
 * What would have to give where nothing fits: the height that gives least, and the permission with which a layout fits
 * under the heights as they are; else what stopped the layouts. Null where nothing is known that would help.
 */
export function relaxationOf(
  { relaxation, barred }: Pick<SearchReport, 'relaxation' | 'barred'>,
  layouts: readonly Pick<Layout, 'id' | 'rejected'>[],
): Relaxation | null {
  const leave = barred.filter(({ fits }) => fits).sort((a, b) => a.boardFt - b.boardFt)[0];
  const ways: Relaxation[] = [
    ...(relaxation === null ? [] : [relaxation]),
    ...(leave === undefined
      ? []
      : [{ where: 'the ways out', text: `${leave.relax} Then this fits: ${leave.nearest}.` }]),
  ];
  if (ways.length > 0) return { where: ways[0].where, text: ways.map(({ text }) => text).join(' Or: ') };
  const stopped = layouts.find(({ id, rejected }) => rejected?.relax && !id.endsWith(GENTLER))?.rejected;
  return stopped?.relax ? { where: stopped.where, text: stopped.relax } : null;
}
