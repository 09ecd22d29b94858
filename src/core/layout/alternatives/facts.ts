import { alternativeRows } from '../../../../reference/alternatives.ts';
import { sourceNote } from '../../finding.ts';
import type { Alternative, ExistingReport, Layout } from '../../report/types.ts';
import type { Site } from '../../site/site.ts';
import type { Limit } from '../limits.ts';

/** What an alternative may know of a roof. */
export interface AlternativeFacts {
  site: Site;
  existing: ExistingReport;
  layouts: readonly Layout[];
  chosen: Layout | null;
  limits: readonly Limit[];
}

/** An alternative from its row and from what speaks for it on this roof. */
export function alternative(id: Alternative['id'], why: string, figures: Alternative['figures']): Alternative {
  const row = alternativeRows.find((one) => one.id === id);
  if (row === undefined) throw new Error(`no row for the alternative ${id}`);
  const { title, when, watch } = row;
  return { id, title, why, when, watch, figures, source: sourceNote(row) };
}
