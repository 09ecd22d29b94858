import { area, inches, plainNumber, slopeInWords } from '../../units/print.ts';
import type { BoardWork, Rejection, UnmadePlane } from '../report/types.ts';
import { listed } from '../report/words.ts';
import { layersOf } from './bands.ts';
import { type Catalogue, groundGroup } from './catalogue.ts';

/** Less than this is trimmed in place. */
const SCRAP_SQ_FT = 0.1;

const STEP_IN = 1 / 16;
const FARTHEST_STEPS = 64;

/** Flat layers of the list that come nearest to a thickness [in], thinner and thicker; null where none come near. */
function nearestFlatIn(catalogue: Catalogue, flatIn: number): number | null {
  const on = Math.round(flatIn / STEP_IN);
  for (let k = 0; k <= FARTHEST_STEPS; k++)
    for (const steps of [on - k, on + k])
      if (steps > 0 && layersOf(catalogue, steps * STEP_IN) !== null) return steps * STEP_IN;
  return null;
}

/** A thickness that no tape shows is told as it was given. */
const exactly = (thicknessIn: number): string =>
  Math.abs(thicknessIn / STEP_IN - Math.round(thicknessIn / STEP_IN)) < 1e-6
    ? inches(thicknessIn)
    : `${plainNumber(thicknessIn, 2)} in`;

const stockWords = ({ flat }: Catalogue): string => {
  const thicknesses = [...new Set(flat.map(({ thicknessIn }) => thicknessIn))].sort((a, b) => a - b);
  return thicknesses.length === 0
    ? 'The list has no flat boards'
    : `The list has flat boards of ${listed(thicknesses.map(inches))}`;
};

/** What the list of boards would need, or what it can make instead. */
function relaxOf({ cause, slopeInPerFt, flatIn }: UnmadePlane, catalogue: Catalogue): string {
  const words = slopeInWords(slopeInPerFt);
  const low = groundGroup(catalogue, slopeInPerFt)?.lowEdgesIn[0] ?? null;
  switch (cause) {
    case 'slope': {
      const has = catalogue.slopesInPerFt.map((slope) => slopeInWords(slope));
      return `${has.length === 0 ? 'The list has no tapered boards' : `The list has tapered boards of ${listed(has)}`}: add boards of ${words}, or ask the supplier for them.`;
    }
    case 'no-fill': {
      const near = flatIn === null ? null : nearestFlatIn(catalogue, flatIn);
      const instead = near === null ? '' : `, or take ${inches(near)}, which they make`;
      return `${stockWords(catalogue)}: add flat boards that make ${exactly(flatIn ?? 0)}${instead}.`;
    }
    case 'too-thin':
      return `Boards of ${words} start at ${inches(low ?? 0)}: add boards that start at nothing, or take a form without them.`;
    case 'no-strip':
      return `Add an edge strip that runs from ${inches(low ?? 0)} down to nothing at ${words}.`;
  }
}

/** The largest plane that the supplier's boards do not make, with what to add; null when all can be made. */
export function boardRejection({ unmade }: Pick<BoardWork, 'unmade'>, catalogue: Catalogue): Rejection | null {
  const [worst] = unmade.filter(({ areaSqFt }) => areaSqFt > SCRAP_SQ_FT).sort((a, b) => b.areaSqFt - a.areaSqFt);
  if (worst === undefined) return null;
  return {
    where: 'the boards',
    neededIn: null,
    availableIn: null,
    why: `${area(worst.areaSqFt)} would need boards of ${slopeInWords(worst.slopeInPerFt)}: ${worst.why}`,
    relax: relaxOf(worst, catalogue),
  };
}
