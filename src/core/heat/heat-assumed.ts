import { oldBoards } from '../../../reference/heat-layers.ts';
import { decimalInches } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption } from '../report/types.ts';
import { oldBuildUp, oldSurfaceOf, type RoofFacts } from './roof-layers.ts';

const percent = (share: number): string => `${Math.round(100 * share)}`;

/** Reflectance of the old covering, which nobody measures. */
function colorAssumed(facts: RoofFacts): Assumption {
  const row = oldSurfaceOf(facts);
  const [least, most] = row.range;
  return {
    path: 'covering.kind',
    value: `old covering reflects ${percent(row.reflectance)} % of the sun`,
    because: `the color of the old covering was not measured; ${percent(least)} to ${percent(most)} % is possible (${sourceNote(row).text})`,
    findOut: 'a photo of the roof at noon with a sheet of white paper on it',
  };
}

function boardsAssumed(facts: RoofFacts): Assumption[] {
  const { boardsIn } = oldBuildUp(facts);
  if (boardsIn <= 0 || facts.given.covering === 'spray-foam') return [];
  return [
    {
      path: 'covering.layers',
      value: `${decimalInches(boardsIn, 1)} of old boards at R-${oldBoards.rPerIn} per in`,
      because:
        'what lies under the old covering was not seen: boards of perlite or wood fiber stand between none and foam',
      findOut: 'cut a core, and look what is under the covering',
    },
  ];
}

function belowAssumed({ roof, given }: RoofFacts): Assumption[] {
  if (given.below !== 'living-ceiling' && given.below !== 'attic') return [];
  const { below } = roof.insulation;
  if (below?.kind === 'none' || below?.r != null || (below?.kind != null && below.thicknessIn !== null)) return [];
  return [
    {
      path: 'insulation.below',
      value: given.below === 'attic' ? 'no insulation on the attic floor' : 'no insulation under the deck',
      because: 'nothing is said about it; with insulation there less heat comes through, and both changes save less',
      findOut: 'look through a light fitting or a hatch',
    },
  ];
}

/** What the heat of a roof stands on beside its measurements. */
export const heatAssumed = (facts: RoofFacts): Assumption[] => [
  colorAssumed(facts),
  ...boardsAssumed(facts),
  ...belowAssumed(facts),
];
