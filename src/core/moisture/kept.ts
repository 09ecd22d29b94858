import { inches, rValue } from '../../units/print.ts';
import { keptBuildUp, oldBoardsRPerIn } from '../heat/roof-layers.ts';
import type { Assumption } from '../report/types.ts';
import { plannedWork } from '../site/planned-work.ts';
import type { Site } from '../site/site.ts';

/** What stays of the old roof under the new boards. */
export interface KeptRoof {
  /** Its covering stays, which is a vapor retarder itself. */
  covering: boolean;
  boardsIn: number;
  /** Nobody saw them: taken as the heat part takes them. */
  boardsR: number;
}

/** null = everything comes off. */
export function keptRoof(site: Site): KeptRoof | null {
  const work = plannedWork(site);
  if (work === 'tear-off') return null;
  const { coveringIn, boardsIn } = keptBuildUp(site);
  return {
    covering: work === 're-cover' || coveringIn > 0,
    boardsIn,
    boardsR: boardsIn * oldBoardsRPerIn(site.given),
  };
}

/** "what stays of the old roof (R-10)" */
export const keptWords = ({ covering, boardsR }: KeptRoof): string =>
  `${covering ? 'the old roof' : 'the old boards'}${boardsR > 0 ? ` (taken as ${rValue(boardsR)})` : ''}`;

export const keptAssumed = (kept: KeptRoof | null): Assumption[] =>
  kept === null || kept.boardsR === 0
    ? []
    : [
        {
          path: 'existing.buildUpIn',
          value: `${rValue(kept.boardsR)} stays under the new boards, dry`,
          because: `${inches(kept.boardsIn)} of old boards that nobody saw, counted at their place, not in the table of the code`,
          findOut: 'cut a core',
        },
      ];
