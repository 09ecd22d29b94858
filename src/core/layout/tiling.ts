import { type Convex, cut, isSliver } from '../geometry/convex.ts';
import { heightIn, type Plane } from '../geometry/plane.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import type { BoardLine, BoardPiece, BoardWork, FillLine, UnmadePlane } from '../report/types.ts';
import type { BoardGroup, Point } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';
import { type Band, bandOf, layersOf } from './bands.ts';
import { type Catalogue, featherStrip, groundGroup, upperGroup } from './catalogue.ts';
import { alongLevel, type Banded, Cells, type Tile } from './cells.ts';
import { type LayerPart, type LayersAt, layerParts } from './layers.ts';
import { boardLines, boardWork, fillLines } from './order.ts';
import { marks, piecesOf } from './pieces.ts';

/** What the saw takes: a remnant thinner than this is no row or column of its own. */
const KERF_FT = 1 / 96;
/** Less than this is rounding, not a piece. */
const NOTHING_SQ_FT = 1e-4;

export interface Tiling {
  pieces: BoardPiece[];
  boards: BoardLine[];
  fill: FillLine[];
  work: BoardWork;
}

export interface TileJob {
  patches: readonly Patch[];
  catalogue: Catalogue;
  /** Flat layer under everything, ordered as stock layers. */
  baseIn: number;
  /** Where the joints of an outlet's boards line up: the outlet itself. */
  axisOf: (outlet: string) => Point;
  /** Gradients of the layers of an outlet's plane, bottom first. */
  layersAt: LayersAt;
  /** Flat stock under an outlet's plane, where it is not the base. */
  underIn?: (outlet: string, plane: Plane) => number;
}

/** Strips of a convex ring between parallel lines; a remnant under the saw's width stays with the strip beside it. */
function sliced(ring: Convex, at: (p: Point) => number, everyFt: number): { index: number; ring: Convex }[] {
  const places = ring.map(at);
  const [least, most] = [Math.min(...places), Math.max(...places)];
  const first = Math.floor((least + KERF_FT) / everyFt);
  const last = Math.max(first, Math.ceil((most - KERF_FT) / everyFt) - 1);
  if (first === last) return [{ index: first, ring }];
  const out: { index: number; ring: Convex }[] = [];
  for (let k = first; k <= last; k++) {
    const above = k === first ? ring : cut(ring, (p) => at(p) - k * everyFt);
    const part = k === last || above.length < 3 ? above : cut(above, (p) => (k + 1) * everyFt - at(p));
    if (!isSliver(part)) out.push({ index: k, ring: part });
  }
  return out;
}

/** The strip that feathers an upper layer: it stands where the first board's low edge would. */
const stripBand = (group: BoardGroup): Band => {
  const [low] = group.lowEdgesIn;
  return { index: -1, lowIn: 0, highIn: low, boardLowIn: 0, boardHighIn: low, fillIn: 0 };
};

/** Bands of one part of a layer, cut where its thickness crosses a board edge. */
function bandsOfPart(ring: Convex, plane: Plane, group: BoardGroup, steep: number, bands: Bands): Banded[] {
  const [low] = group.lowEdgesIn;
  const up = (p: Point): number => (heightIn(plane, p) - low) / steep;
  const places = ring.map(up);
  const out: Banded[] = [];
  let rest: Convex = ring;
  if (Math.min(...places) < -KERF_FT) {
    const under = Math.max(...places) < KERF_FT ? ring : cut(ring, (p) => -up(p));
    if (!isSliver(under)) out.push({ kind: 'strip', band: bands.of(group, -1), ring: under });
    rest = under === ring ? [] : cut(ring, up);
  }
  if (isSliver(rest)) return out;
  for (const { index, ring: part } of sliced(rest, up, group.runFt))
    out.push({ kind: 'board', band: bands.of(group, Math.max(0, index)), ring: part });
  return out;
}

type Cause = UnmadePlane['cause'];

/**
 * The boards of a part: on other boards those that start at nothing, on the ground those with an edge of their own,
 * unless their plane goes on down to nothing there. Null where none are made.
 */
function groupFor(catalogue: Catalogue, { layer }: LayerPart, steep: number, leastIn: number): BoardGroup | null {
  const upper = upperGroup(catalogue, steep);
  if (layer > 0) return upper;
  const ground = groundGroup(catalogue, steep);
  const tooThick = ground !== null && leastIn < ground.lowEdgesIn[0] - steep * KERF_FT;
  return tooThick && upper !== null && upper.lowEdgesIn[0] < leastIn + steep * KERF_FT ? upper : ground;
}

/** Thickness of every sheet where it is least, less the flat stock under it. */
function leastOfSheets(parts: readonly LayerPart[], flatOf: (part: LayerPart) => number): Map<number, number> {
  const least = new Map<number, number>();
  for (const part of parts) {
    const own =
      part.ring.reduce((low, p) => Math.min(low, heightIn(part.plane, p)), Number.POSITIVE_INFINITY) - flatOf(part);
    least.set(part.sheet, Math.min(own, least.get(part.sheet) ?? own));
  }
  return least;
}

const causeWords: Readonly<Record<Cause, string>> = {
  slope: 'no tapered board of this slope is in the catalogue',
  'too-thin': 'it would be thinner than the thinnest edge of the boards of this slope',
  'no-strip': 'no edge strip brings the low edge of the boards of this slope down to nothing',
  'no-fill': 'no flat boards of the catalogue make the fill under it',
};

/** Planes that the catalogue does not make, once each. */
class Unmade {
  readonly list = new Map<string, UnmadePlane>();

  add(
    { outlet, layer }: LayerPart,
    slopeInPerFt: number,
    areaSqFt: number,
    cause: Cause,
    flatIn: number | null = null,
  ): void {
    const key = `${outlet}|${layer}|${slopeInPerFt.toFixed(6)}|${cause}|${flatIn?.toFixed(4)}`;
    const before = this.list.get(key)?.areaSqFt ?? 0;
    this.list.set(key, {
      outlet,
      layer,
      slopeInPerFt,
      areaSqFt: before + areaSqFt,
      cause,
      flatIn,
      why: causeWords[cause],
    });
  }
}

function tileParts(
  { catalogue, baseIn, axisOf, underIn = () => baseIn }: TileJob,
  parts: readonly LayerPart[],
  unmade: Unmade,
): Tile[] {
  const cells = new Cells();
  const bands = new Bands();
  const flatOf = ({ layer, outlet, total }: LayerPart): number => (layer === 0 ? underIn(outlet, total) : 0);
  const leastIn = leastOfSheets(parts, flatOf);
  for (const part of parts) {
    const flatIn = flatOf(part);
    const own = { ...part.plane, atOriginIn: part.plane.atOriginIn - flatIn };
    const steep = Math.hypot(own.gx, own.gy);
    const group = groupFor(catalogue, part, steep, leastIn.get(part.sheet) ?? 0);
    if (group === null) {
      unmade.add(part, steep, signedAreaSqFt(part.ring), 'slope');
      continue;
    }
    const axis = axisOf(part.outlet);
    const level = alongLevel(own, axis);
    // Joints of a layer stand half a board off those of the layer below.
    const place = (p: Point): number => level(p) - (part.layer % 2) * (group.widthFt / 2);
    for (const banded of bandsOfPart(part.ring, own, group, steep, bands)) {
      if (banded.kind === 'strip') {
        const cause = part.layer === 0 ? 'too-thin' : featherStrip(catalogue, group) === null ? 'no-strip' : null;
        if (cause !== null) {
          unmade.add(part, steep, signedAreaSqFt(banded.ring), cause);
          continue;
        }
      }
      const missingIn = [flatIn, banded.band.fillIn].find((one) => layersOf(catalogue, one) === null);
      if (missingIn !== undefined) {
        unmade.add(part, steep, signedAreaSqFt(banded.ring), 'no-fill', missingIn);
        continue;
      }
      for (const { index, ring } of sliced(banded.ring, place, group.widthFt))
        cells.add(part, { plane: own, flatIn }, group, { ...banded, ring }, index, axis);
    }
  }
  return [...cells.tiles.values()].filter(({ areaSqFt }) => areaSqFt > NOTHING_SQ_FT);
}

/**
 * Boards over a thickness: every layer in bands that its planes share, cut at valleys, hips, edges and curbs.
 * A plane that the catalogue does not make has no pieces and is named in `work.unmade`.
 */
export function tile(job: TileJob): Tiling {
  const { catalogue } = job;
  const unmade = new Unmade();
  const tiles = tileParts(job, layerParts(job.patches, job.layersAt), unmade);
  const markOfBand = marks();
  const pieces = tiles.flatMap((one) => piecesOf(one, catalogue, markOfBand));
  const boards = boardLines(tiles, catalogue);
  return {
    pieces,
    boards,
    fill: fillLines(tiles, catalogue),
    work: boardWork(tiles, boards, [...unmade.list.values()]),
  };
}

/** Bands are made once for each group: the same band is the same object. */
class Bands {
  private readonly known = new Map<BoardGroup, Band[]>();

  of(group: BoardGroup, index: number): Band {
    const own = this.known.get(group) ?? [];
    if (own.length === 0) this.known.set(group, own);
    // The strip stands before the first board.
    own[index + 1] ??= index < 0 ? stripBand(group) : bandOf(group, index);
    return own[index + 1];
  }
}
