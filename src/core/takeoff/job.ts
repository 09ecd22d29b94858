import { exposedDeckLimit, panelLimits } from '../../../reference/membranes/limits.ts';
import type { Cited } from '../../../reference/sources.ts';
import { type DeckHold, deckHolds, screwStock } from '../../../reference/takeoff/fasteners.ts';
import { deckNames } from '../kind-names.ts';
import { nailersOn } from '../layout/nailers.ts';
import type { AttachmentChoice } from '../membrane/attachment.ts';
import { type Membrane, type MembraneId, membraneOf } from '../membrane/options.ts';
import type { DeckSheet, Layout, NailerPiece } from '../report/types.ts';
import type { EdgeKind } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import { isOpenEdge } from '../site/offers.ts';
import type { Site } from '../site/site.ts';

export interface TakeOffInput {
  site: Site;
  layout: Layout;
  membrane: MembraneId | null;
  attachment: AttachmentChoice | null;
  /** Sheet that goes on the deck under all boards. */
  deckSheet?: DeckSheet | null;
}

/** How the covering is built: decides seams, strips and sealants. */
export type Family = 'welded' | 'rubber' | 'bitumen' | 'liquid';

/** What kind of edge a stretch is once the layout is built. */
export type EdgeUse = 'open' | 'rake' | 'parapet' | 'wall' | 'tie-in' | 'joint';

export interface EdgeRun {
  site: SiteEdge;
  use: EdgeUse;
  nailers: readonly NailerPiece[];
  /** Boards and cover board at the edge, least and most. */
  lowIn: number;
  highIn: number;
}

export interface Job {
  site: Site;
  layout: Layout;
  membrane: Membrane | null;
  family: Family | null;
  attachment: AttachmentChoice | null;
  edges: readonly EdgeRun[];
  areaSqFt: number;
  hold: DeckHold;
  /** Why no screw goes through the deck in the field; null = screws may be used. */
  noScrews: { why: string; row: Cited } | null;
}

const uses: Record<EdgeKind, EdgeUse> = {
  gutter: 'open',
  drip: 'open',
  'roof-below': 'open',
  'box-gutter': 'open',
  rake: 'rake',
  parapet: 'parapet',
  wall: 'wall',
  'party-wall': 'wall',
  'shingles-above': 'tie-in',
  joint: 'joint',
};

function edgeRuns(site: Site, layout: Layout): EdgeRun[] {
  const opened = new Set(layout.outlets.filter(({ kind }) => kind === 'edge').map(({ id }) => id));
  return site.edges.map((edge) => {
    const nailers = nailersOn(layout.nailers, edge);
    const heights = nailers.flatMap(({ startIn, endIn }) => [startIn, endIn]);
    const open = isOpenEdge(edge) || opened.has(edge.id);
    return {
      site: edge,
      use: open ? 'open' : uses[edge.edge.kind],
      nailers,
      lowIn: heights.length === 0 ? layout.leastThicknessIn : Math.min(...heights),
      highIn: heights.length === 0 ? layout.leastThicknessIn : Math.max(...heights),
    };
  });
}

const holds: readonly DeckHold[] = deckHolds;

/**
 * How much longer a screw that holds at the thick end of a board is than one that would do at its thin end: the rise of
 * the board, and what rounding to stock adds.
 */
function screwSpreadIn({ boards, greatestThicknessIn }: Layout): number {
  const rise = boards.reduce((most, { lowIn, highIn }) => Math.max(most, highIn - lowIn), 0);
  return rise + (greatestThicknessIn < screwStock.upToIn ? screwStock.stepIn : screwStock.beyondStepIn);
}

/** Where a screw through the field would show, not hold, or drill what must not be drilled. */
function screwsBarred({ given }: Site, layout: Layout, hold: DeckHold): Job['noScrews'] {
  if (hold.hold === 'adhesive')
    return {
      why: `the deck is ${deckNames[given.deckKind]}: boards are adhered, nothing is drilled`,
      row: hold,
    };
  const seen = given.below === 'living-exposed-deck' || given.below === 'outdoors';
  if (seen && given.deckThicknessIn < exposedDeckLimit.leastThicknessIn)
    return {
      why: `the underside of the ${given.deckThicknessIn} in deck is seen from below: screw points would come through it`,
      row: exposedDeckLimit,
    };
  const roomIn = given.deckThicknessIn - exposedDeckLimit.pointCoverIn - hold.engagementIn;
  if (seen && (hold.throughPanel || roomIn < screwSpreadIn(layout) - 1e-9))
    return {
      why: `the underside of the ${given.deckThicknessIn} in deck is seen from below, and a screw that holds at the thick end of a board would come through it at the thin end`,
      row: exposedDeckLimit,
    };
  const limit = panelLimits.find(({ deck }) => deck === given.deckKind);
  if (limit !== undefined && given.deckThicknessIn < limit.leastThicknessIn)
    return {
      why: `${given.deckThicknessIn} in of ${deckNames[given.deckKind]} does not hold screws: ${limit.leastThicknessIn} in is the least`,
      row: limit,
    };
  return null;
}

function familyOf({ id, traits }: Membrane): Family {
  const has = (trait: Membrane['traits'][number]): boolean => traits.includes(trait);
  if (has('asphaltic')) return 'bitumen';
  if (!has('single-ply')) return 'liquid';
  return id.startsWith('epdm') ? 'rubber' : 'welded';
}

/** The facts that every part of the list is counted from. */
export function jobOf({ site, layout, membrane, attachment }: TakeOffInput): Job {
  const hold = holds.find(({ deck }) => deck === site.given.deckKind);
  if (hold === undefined) throw new Error(`no fastening row for deck ${site.given.deckKind}`);
  const option = membrane === null ? null : membraneOf(membrane);
  return {
    site,
    layout,
    membrane: option,
    family: option === null ? null : familyOf(option),
    attachment,
    edges: edgeRuns(site, layout),
    areaSqFt: site.section.areaSqFt,
    hold,
    noScrews: screwsBarred(site, layout, hold),
  };
}
