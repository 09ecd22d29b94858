import { recoverBar } from '../../../reference/rule-sets.ts';
import { sourceNote } from '../finding.ts';
import type { SourceNote } from '../report/types.ts';

export interface RecoverAnswer {
  /** null = not known: somebody must cut a core first. */
  allowed: boolean | null;
  why: string;
  source: SourceNote;
}

const bars: readonly string[] = recoverBar.coverings;

/** What has to be looked at, of what is not known. */
function whatDecides(layers: number | null, soaked: boolean | null): string {
  if (soaked !== null) return 'Count the coverings: a second one has to come off.';
  return `Cut a core: ${layers === null ? 'layers and moisture decide' : 'moisture decides'} this.`;
}

/**
 * Whether a new covering may go over the old one instead of a tear-off.
 * @param layers coverings that are there; null = not known
 * @param soaked wet or rotted base; null = not known
 * @param covering what lies on top, in the code's words
 * Source: IBC 1511.3.1.1 / 1512.2.1.1, IRC R908.3.1.1. Correctness: tests/published/drainage-slope.test.ts
 */
export function mayRecover(layers: number | null, soaked: boolean | null, covering: string | null): RecoverAnswer {
  const source = sourceNote(recoverBar);
  if (layers !== null && layers >= recoverBar.layers) {
    return { allowed: false, why: `There are ${layers} coverings already: strip to the deck.`, source };
  }
  if (soaked) return { allowed: false, why: 'The old roof is soaked or rotted: strip to the deck.', source };
  if (covering !== null && bars.includes(covering)) {
    return { allowed: false, why: `Nothing may go over ${covering}: strip to the deck.`, source };
  }
  if (layers === null || soaked === null) return { allowed: null, why: whatDecides(layers, soaked), source };
  return { allowed: true, why: 'One dry covering.', source };
}
