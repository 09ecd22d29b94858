import type { MembraneReport } from '../report/types.ts';
import type { CoveringKind } from '../roof.ts';
import { figure } from '../safety/figure.ts';
import { compareMembranes, type MembraneComparison } from './compare.ts';
import type { MembraneFacts } from './facts.ts';
import { sentenceStart } from './flip-words.ts';
import { isMembraneId, type MembraneId, membraneOf } from './options.ts';

/** What "the same again" would be for an old covering, the way it was most likely laid first. */
const sameAgain: Readonly<Record<CoveringKind, readonly MembraneId[]>> = {
  'sbs-granule': ['sbs-torch', 'sbs-cold', 'sbs-self-adhered', 'sbs-self-adhered-cool'],
  app: ['app-torch'],
  'bur-gravel': ['bur-hot'],
  'bur-smooth': ['bur-hot'],
  tpo: ['tpo'],
  pvc: ['pvc'],
  epdm: ['epdm-black', 'epdm-white'],
  'roll-roofing': ['roll-roofing'],
  coating: ['silicone', 'acrylic'],
  'spray-foam': [],
  metal: [],
  other: [],
};

const shortName = (report: MembraneReport) => (isMembraneId(report.id) ? membraneOf(report.id).shortName : report.name);

function againstSame(same: readonly MembraneReport[], chosen: MembraneReport): string {
  const familiar = same[0]!;
  if (familiar.id === chosen.id) return `It is the same again: ${shortName(chosen)} is what suits this roof best.`;
  const kin = same.some((report) => report.id === chosen.id);
  const kinWords = kin
    ? `What we propose, ${shortName(chosen)}, is the same kind of material put on or faced in another way.`
    : '';
  const why = familiar.veto
    ? `${sentenceStart(shortName(familiar))} is out here: ${familiar.veto.why}`
    : `${sentenceStart(shortName(familiar))} could be used, but comes out at ${figure(familiar.score ?? 0, 1)} against ${figure(chosen.score ?? 0, 1)} for ${shortName(chosen)}. ${familiar.flips.join(' ')}`;
  return [kinWords, why].filter((part) => part).join(' ');
}

/**
 * The owner's first question: why not the same covering again? Plain sentences; water that stood on the old roof comes
 * first, because no sheet mends a missing slope.
 */
export function whyNotTheSame(facts: MembraneFacts, comparison: MembraneComparison = compareMembranes(facts)): string {
  const { covering, ponds } = facts.existing;
  const stood = ponds ? 'Water stood on the old roof, and no covering mends that: the new slope does. ' : '';
  const chosen = comparison.reports.find((report) => report.id === comparison.chosen);
  if (!chosen) return `${stood}No covering passes as the job stands, the old kind included.`;
  if (covering === null)
    return `${stood}The old covering is not known, so it cannot be compared; ${shortName(chosen)} suits this roof best of those that were.`;
  const ids = sameAgain[covering];
  const same = ids
    .map((id) => comparison.reports.find((report) => report.id === id))
    .filter((report) => report !== undefined);
  if (same.length === 0)
    return `${stood}The old kind of covering is not one that is laid over new sloped boards; ${shortName(chosen)} suits this roof best.`;
  return `${stood}${againstSame(same, chosen)}`;
}
