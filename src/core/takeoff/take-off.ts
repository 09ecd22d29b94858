import type { MembraneId } from '../../../reference/membranes/options.ts';
import type { AttachmentChoice } from '../membrane/attachment.ts';
import type { Finding, Layout, MaterialLine } from '../report/types.ts';
import type { Site } from '../site/site.ts';

export interface TakeOffInput {
  site: Site;
  layout: Layout;
  membrane: MembraneId | null;
  attachment: AttachmentChoice | null;
}

export interface TakeOff {
  lines: readonly MaterialLine[];
  findings: readonly Finding[];
}

/** Everything to order for one layout and covering. */
export function takeOff({ layout }: TakeOffInput): TakeOff {
  const lines = layout.boards.map(
    (board, i): MaterialLine => ({
      id: `board-${i}`,
      group: 'Boards',
      item: `Tapered board ${board.mark}`,
      quantity: board.net,
      unit: 'boards',
      orderQuantity: board.order,
      orderUnit: 'boards',
      basis: 'one new board for every piece on the plan, one spare per ten',
      source: null,
    }),
  );
  return { lines, findings: [] };
}
