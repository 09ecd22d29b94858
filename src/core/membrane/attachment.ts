import {
  type Attachment,
  attachments,
  exposedDeckLimit,
  type PanelLimit,
  panelLimits,
} from '../../../reference/membranes/limits.ts';
import type { Cited } from '../../../reference/sources.ts';
import { figure } from '../safety/figure.ts';
import type { MembraneFacts } from './facts.ts';
import type { MembraneId } from './options.ts';

export interface AttachmentChoice extends Attachment {
  membrane: MembraneId;
  /** Why this way is out on this job; null = it may be used. */
  refused: { kind: 'shows-through' | 'thin-panel' | 'too-cold'; why: string; row: Cited } | null;
}

const table: readonly Attachment[] = attachments;
const panels: readonly PanelLimit[] = panelLimits;

function showsThrough(way: Attachment, { deck }: MembraneFacts): AttachmentChoice['refused'] {
  if (!way.throughDeck || deck.undersideExposed === false) return null;
  if (deck.thicknessIn !== null && deck.thicknessIn >= exposedDeckLimit.leastThicknessIn) return null;
  const seen = deck.undersideExposed
    ? 'the underside of the deck can be seen'
    : 'it is not known whether the underside of the deck can be seen';
  const thick = deck.thicknessIn === null ? 'of a thickness not known' : `${figure(deck.thicknessIn, 3)} in thick`;
  return {
    kind: 'shows-through',
    why: `Screws or nails through the deck would show below: ${seen} and it is ${thick}.`,
    row: exposedDeckLimit,
  };
}

function thinPanel(way: Attachment, { deck }: MembraneFacts): AttachmentChoice['refused'] {
  const limit = panels.find((row) => row.deck === deck.kind);
  if (way.kind !== 'mechanically-attached' || !limit) return null;
  if (deck.thicknessIn !== null && deck.thicknessIn >= limit.leastThicknessIn) return null;
  const found = deck.thicknessIn === null ? 'its thickness is not known' : `it is ${figure(deck.thicknessIn, 3)} in`;
  return {
    kind: 'thin-panel',
    why: `Field screws need at least ${figure(limit.leastThicknessIn, 3)} in of ${limit.deck} and a pull test; ${found}.`,
    row: limit,
  };
}

function tooCold(way: Attachment, facts: MembraneFacts): AttachmentChoice['refused'] {
  const work = facts.workTemperatureF;
  if (work === null || way.leastWorkF === null || work >= way.leastWorkF) return null;
  return {
    kind: 'too-cold',
    why: `It needs ${way.leastWorkF} F and rising while it is put on; ${figure(work, 0)} F is expected.`,
    row: way,
  };
}

/**
 * The ways of holding a covering, the preferred first, each with the reason that rules it out on this job.
 * Field screws only: the edge is always fastened to its nailer. Source: reference/membranes/limits.ts.
 */
export function attachmentChoices(id: MembraneId, facts: MembraneFacts): readonly AttachmentChoice[] {
  return table
    .filter((way) => way.membrane === id)
    .map((way) => ({ ...way, refused: tooCold(way, facts) ?? showsThrough(way, facts) ?? thinPanel(way, facts) }));
}
