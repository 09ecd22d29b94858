import {
  boardsPerSpare,
  edgeStrips,
  flatStock,
  leastPiece,
  taperGroups,
  thickestFillLayerIn,
  zeroEdgeGroups,
} from '../../../reference/boards.ts';
import type { BoardGroup, FlatBoard, Roof, StripBoard } from '../roof.ts';

/** The boards of a job: what every piece, fill and strip must come from. */
export interface Catalogue {
  groups: readonly BoardGroup[];
  flat: readonly FlatBoard[];
  strips: readonly StripBoard[];
  /** Slopes of boards that can lie on the ground, gentlest first. */
  slopesInPerFt: readonly number[];
  thickestFillLayerIn: number;
  /** One spare of each tapered board per so many. */
  boardsPerSpare: number;
  leastPieceIn: number;
}

const SAME = 1e-9;
const startsAtNothing = ({ lowEdgesIn }: BoardGroup): boolean => lowEdgesIn[0] < SAME;

/**
 * The catalogue of a roof: the supplier's boards where they are given, else those common to the trade.
 * @param roof only its `boards` are read
 */
export function catalogueOf({ boards }: Pick<Roof, 'boards'>): Catalogue {
  const groups: readonly BoardGroup[] = boards.groups ?? [...taperGroups, ...zeroEdgeGroups];
  return {
    groups,
    flat: boards.flat ?? flatStock,
    strips: boards.strips ?? edgeStrips,
    slopesInPerFt: [...new Set(groups.map(({ slopeInPerFt }) => slopeInPerFt))].sort((a, b) => a - b),
    thickestFillLayerIn,
    boardsPerSpare,
    leastPieceIn: boards.leastPieceIn ?? leastPiece.diameterIn,
  };
}

const NOTHING_GIVEN = { groups: null, flat: null, strips: null, leastPieceIn: null, sumpFt: null };

/** The boards that are common to the trade. */
export const tradeCatalogue = catalogueOf({ boards: NOTHING_GIVEN });

/** Boards of a slope that lie on the ground: the first listed with an edge of its own, else one that starts at nothing. */
export function groundGroup({ groups }: Pick<Catalogue, 'groups'>, slopeInPerFt: number): BoardGroup | null {
  const own = groups.filter((group) => Math.abs(group.slopeInPerFt - slopeInPerFt) < 1e-6);
  return own.find((group) => !startsAtNothing(group)) ?? own[0] ?? null;
}

/** Boards of a slope that lie on other boards: the first listed that starts at nothing, else one behind a strip. */
export function upperGroup({ groups }: Pick<Catalogue, 'groups'>, slopeInPerFt: number): BoardGroup | null {
  const own = groups.filter((group) => Math.abs(group.slopeInPerFt - slopeInPerFt) < 1e-6);
  return own.find(startsAtNothing) ?? own[0] ?? null;
}

/** The strip that brings a group's low edge down to nothing along its own slope; null where none is made. */
export function featherStrip({ strips }: Pick<Catalogue, 'strips'>, group: BoardGroup): StripBoard | null {
  const [low] = group.lowEdgesIn;
  const runIn = (12 * low) / group.slopeInPerFt;
  return strips.find((strip) => Math.abs(strip.highIn - low) < 1e-6 && Math.abs(strip.runIn - runIn) < 1e-4) ?? null;
}

/** The thinnest edge with which boards of a slope can start on the ground, in; null where no such board is made. */
export const startEdgeIn = (catalogue: Catalogue, slopeInPerFt: number): number | null =>
  groundGroup(catalogue, slopeInPerFt)?.lowEdgesIn[0] ?? null;

/** Low edge of a faced tapered board, in, where the catalogue has no board of the slope. */
const LOW_EDGE_IN = 0.5;

/** The same where the taper of a slope has to start somewhere, also when the supplier has no such board. */
export const lowEdgeIn = (catalogue: Catalogue, slopeInPerFt: number): number =>
  startEdgeIn(catalogue, slopeInPerFt) ?? LOW_EDGE_IN;
