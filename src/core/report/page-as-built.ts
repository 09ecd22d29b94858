import { inches } from '../../units/print.ts';
import { spotTolerance } from './page-crew.ts';

export interface AsBuiltRow {
  id: string;
  design: string;
  read: string;
  difference: string;
  verdict: string;
  off: boolean;
}

/** Heights as read against the plan, in words. */
export function asBuiltRows(
  points: readonly { id: string; designIn: number; readIn: number | null; differenceIn: number | null }[],
): AsBuiltRow[] {
  const { withinIn } = spotTolerance();
  return points.map(({ id, designIn, readIn, differenceIn }) => {
    const off = differenceIn !== null && Math.abs(differenceIn) > withinIn;
    const side = (differenceIn ?? 0) > 0 ? 'high' : 'low';
    return {
      id,
      design: inches(designIn),
      read: readIn === null ? 'not read' : inches(readIn),
      difference:
        differenceIn === null
          ? ''
          : `${inches(Math.abs(differenceIn))}${Math.abs(differenceIn) < 1 / 32 ? '' : ` ${side}`}`,
      verdict: differenceIn === null ? 'not read' : off ? `off: ${side}` : 'good',
      off,
    };
  });
}
