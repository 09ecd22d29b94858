import type { Point, Ring, SourceNote } from './basics.ts';

export interface CreaseReport {
  from: Point;
  to: Point;
  kind: 'valley' | 'ridge' | 'wall';
  slopeInPerFt: number;
  lengthFt: number;
}

export interface FacetReport {
  outlet: string;
  outline: Ring;
  holes: readonly Ring[];
  /** Finished surface z = atOriginIn + gx x + gy y. */
  plane: { atOriginIn: number; gx: number; gy: number };
  slopeInPerFt: number;
  areaSqFt: number;
  labelAt: Point;
}

/** One board piece as it lies on the plan. */
export interface BoardPiece {
  outline: Ring;
  kind: 'board' | 'strip';
  /** 0 = boards on the ground; the boards of a cricket are layer 1, on top of those. */
  layer: number;
  lowIn: number;
  highIn: number;
  fillIn: number;
  /** Part of the board that is used, by its own thickness: narrower than low to high where the row is ripped. */
  fromIn: number;
  toIn: number;
  /** Greatest thickness here of all layers with their fill. */
  stackIn: number;
  /** Part of the piece that lies under a further layer. */
  coveredSqFt: number;
  /** Printed mark: the thickness itself, e.g. "0.5-1.5 +2". */
  mark: string;
  whole: boolean;
  /** Smaller than the least piece: cut from an offcut beside it. */
  sliver: boolean;
  labelAt: Point;
}

export interface BoardLine {
  layer: number;
  lowIn: number;
  highIn: number;
  slopeInPerFt: number;
  runFt: number;
  widthFt: number;
  fillLayersIn: readonly number[];
  /** Net boards' worth of area. */
  net: number;
  /** Boards that are taken, every piece from a new one; so many of them are cut. */
  boards: number;
  cut: number;
  /** With one spare per ten. */
  order: number;
  /** Share of the boards taken that is left over. */
  wasteShare: number;
  /** Boards that offcuts could save; not taken off the order. */
  reusable: number;
  /** Small pieces that come out of offcuts. */
  slivers: number;
  sliverSqFt: number;
  mark: string;
}

export interface FillLine {
  thicknessIn: number;
  areaSqFt: number;
  lengthFt: number;
  widthFt: number;
  /** Whole boards by area; pieces left over are laid on. */
  boards: number;
  /** With the allowance for cuts. */
  order: number;
}

/** Tapered edge strip that brings a low edge down to nothing. */
export interface StripLine {
  highIn: number;
  runIn: number;
  lengthFt: number;
  /** Pieces of 4 ft. */
  order: number;
}

/** A row that starts or ends inside a board. */
export interface RipLine {
  mark: string;
  fromIn: number;
  toIn: number;
  /** Length of the part along the slope. */
  useFt: number;
  part: 'upper' | 'lower' | 'middle';
  pieces: number;
}

/** A plane that no boards of the catalogue make. */
export interface UnmadePlane {
  outlet: string;
  layer: number;
  slopeInPerFt: number;
  areaSqFt: number;
  cause: 'slope' | 'too-thin' | 'no-strip' | 'no-fill';
  /** Flat layers under it that no boards make; null where those are not the cause. */
  flatIn: number | null;
  why: string;
}

/** What goes with the boards of a layout. */
export interface BoardWork {
  strips: readonly StripLine[];
  rips: readonly RipLine[];
  unmade: readonly UnmadePlane[];
  /** Net boards, boards taken, and the share of them that is waste. */
  net: number;
  taken: number;
  wasteShare: number;
  /** Boards that offcuts could save; not taken off the order. */
  reusable: number;
  /** How far the joints of one layer stand off those of the layer below. */
  staggerFt: number;
}

/** Finished height to check with a level before the next step. */
export interface CheckPoint {
  id: string;
  at: Point;
  where: string;
  /** Above the height zero of the plan (lowest outlet). */
  heightIn: number;
  thicknessIn: number;
}

export interface NailerPiece {
  edge: string;
  from: Point;
  to: Point;
  lengthFt: number;
  startIn: number;
  endIn: number;
}

/** What goes under the boards to make the base fit for them. */
export interface GroundFill {
  how: 'plane' | 'level' | 'filled';
  boardFt: number;
  greatestIn: number;
  /** Where it is thickest. */
  at: Point;
  areaSqFt: number;
  /** One hollow, so small that it is filled by hand. */
  local: boolean;
  outlines: readonly Ring[];
  /** One or two sentences. */
  note: string;
}

export interface MaterialLine {
  id: string;
  group: string;
  item: string;
  quantity: number;
  unit: string;
  orderQuantity: number;
  orderUnit: string;
  /** How the number came about, in words with the figures. */
  basis: string;
  source: SourceNote | null;
}

/** One part of the work in days of the whole crew. */
export interface WorkPartDays {
  what: string;
  leastDays: number;
  mostDays: number;
  basis: string;
}

/** How long the work takes, as a range for planning. */
export interface WorkDays {
  /** Whole working days. */
  leastDays: number;
  mostDays: number;
  people: number;
  parts: readonly WorkPartDays[];
  notCounted: string;
  source: SourceNote;
}
