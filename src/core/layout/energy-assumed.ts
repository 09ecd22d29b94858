import { sourceNote } from '../finding.ts';
import { taperRuleNames } from '../kind-names.ts';
import type { Assumption } from '../report/types.ts';
import type { Roof } from '../roof.ts';
import { USUAL_TAPER_RULE } from './energy.ts';
import type { EnergyTarget } from './energy-target.ts';

const ASK = 'ask the building office what a re-roof must reach';

function targetAssumed({ r, title, rRow, noTarget }: EnergyTarget): Assumption {
  const path = 'insulation.targetR';
  if (r === null || rRow === null)
    return { path, value: 'no target', because: `none was given, and ${noTarget}`, findOut: ASK };
  const memory = rRow.grade === 'memory' ? ', from memory, verify' : '';
  return {
    path,
    value: `R-${r}`,
    because: `value of the code for this place, ${title}${memory} (${sourceNote(rRow).text})`,
    findOut: ASK,
  };
}

/** What was taken for the energy code where the file says nothing. */
export function energyAssumed(roof: Roof, energy: EnergyTarget): Assumption[] {
  const out: Assumption[] = [];
  if (roof.insulation.targetR === null) out.push(targetAssumed(energy));
  if (roof.ruleSet.local.taperRule === null && energy.r !== null)
    out.push({
      path: 'ruleSet.local.taperRule',
      value: taperRuleNames[USUAL_TAPER_RULE],
      because:
        'the reading of the energy code for tapered insulation was not named: the U is averaged over the area, the other reading is shown beside it',
      findOut: 'ask the building office: the full R where the taper has risen 1 in, or the U averaged over the area',
    });
  return out;
}
