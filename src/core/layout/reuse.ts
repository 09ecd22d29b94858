import { signedAreaSqFt } from '../geometry/vector.ts';
import type { Ring } from '../roof.ts';

/** A cut piece as it lies on its board: u up the slope from the low edge, w along the level side, in ft. */
export interface CutPiece {
  outlines: readonly Ring[];
}

const STEPS = 16;
/** Two saw cuts part pieces that share a board. */
const KERF_FT = 1 / 96;
/** Lines with more cut pieces than this are matched within their first pieces only. */
const MOST_MATCHED = 400;

/** Reach of a piece along the level side at each step up the slope. */
interface Profile {
  from: number[];
  to: number[];
  widthFt: number;
}

function profileOf({ outlines }: CutPiece, runFt: number): Profile {
  const from = new Array<number>(STEPS + 1).fill(Number.POSITIVE_INFINITY);
  const to = new Array<number>(STEPS + 1).fill(Number.NEGATIVE_INFINITY);
  const stepFt = runFt / STEPS;
  for (const ring of outlines) {
    ring.forEach(([u0, w0], i) => {
      const [u1, w1] = ring[(i + 1) % ring.length];
      const [first, last] = [Math.min(u0, u1), Math.max(u0, u1)];
      // One step beyond on both sides: a corner between two steps counts at both.
      for (let k = Math.floor(first / stepFt + 1e-6); k <= Math.ceil(last / stepFt - 1e-6); k++) {
        if (k < 0 || k > STEPS) continue;
        const t = last - first < 1e-9 ? 0 : Math.min(1, Math.max(0, (k * stepFt - u0) / (u1 - u0)));
        const ws = last - first < 1e-9 ? [w0, w1] : [w0 + t * (w1 - w0)];
        for (const w of ws) {
          from[k] = Math.min(from[k], w);
          to[k] = Math.max(to[k], w);
        }
      }
    });
  }
  const left = Math.min(...from);
  const right = Math.max(...to);
  return { from: from.map((w) => w - left), to: to.map((w) => w - left), widthFt: right - left };
}

const turnedOver = ({ from, to, widthFt }: Profile): Profile => ({
  from: to.map((w) => widthFt - w),
  to: from.map((w) => widthFt - w),
  widthFt,
});

const reachOf = ({ to }: Profile): number[] => to.map((w) => (Number.isFinite(w) ? w : 0));

/** How far along a board a piece must move to clear what lies on it already; null where it would stand over the end. */
function shiftFt(taken: number[], { from, widthFt }: Profile, boardFt: number): number | null {
  const most = boardFt - widthFt + 1e-6;
  if (most < 0) return null;
  let shift = 0;
  // From the high edge down: most pieces have all of theirs.
  for (let k = STEPS; k >= 0; k--) {
    if (taken[k] === 0 || from[k] === Number.POSITIVE_INFINITY) continue;
    const clear = taken[k] + KERF_FT - from[k];
    if (clear > most) return null;
    if (clear > shift) shift = clear;
  }
  return shift;
}

/** True for a rectangle across the whole board: nothing lies beside it. */
function spansBoard(ring: Ring, runFt: number, widthFt: number): boolean {
  if (ring.length !== 4) return false;
  const us = ring.map(([u]) => u);
  const ws = ring.map(([, w]) => w);
  const heightFt = Math.max(...us) - Math.min(...us);
  const lengthFt = Math.max(...ws) - Math.min(...ws);
  const square = Math.abs(Math.abs(signedAreaSqFt(ring)) - heightFt * lengthFt) < 1e-6;
  return square && lengthFt > widthFt - KERF_FT && heightFt <= runFt + KERF_FT;
}

/**
 * Boards that cut pieces of one thickness would save if every offcut were used again. A tapered piece can only move along
 * its level side or be turned over: both keep its low edge low.
 * @returns pieces less the boards on which they fit, first fit, widest first: a board or two off the best
 */
export function boardsSaved(pieces: readonly CutPiece[], runFt: number, widthFt: number): number {
  const wide = (outlines: readonly Ring[]): boolean => outlines.some((ring) => spansBoard(ring, runFt, widthFt));
  const matched = pieces
    .filter(({ outlines }) => !wide(outlines))
    .slice(0, MOST_MATCHED)
    .map((piece) => profileOf(piece, runFt))
    .sort((a, b) => b.widthFt - a.widthFt);
  const boards: number[][] = [];
  for (const piece of matched) {
    const ways = [piece, turnedOver(piece)];
    const fits = boards.some((taken) =>
      ways.some((way) => {
        const shift = shiftFt(taken, way, widthFt);
        if (shift === null) return false;
        for (let k = 0; k <= STEPS; k++)
          if (Number.isFinite(way.to[k])) taken[k] = Math.max(taken[k], way.to[k] + shift);
        return true;
      }),
    );
    if (fits) continue;
    // The first piece of a board lies so that most of the board's other end stays free.
    const [a, b] = ways.map(reachOf);
    const sum = (reach: readonly number[]): number => reach.reduce((total, w) => total + w, 0);
    boards.push(sum(a) <= sum(b) ? a : b);
  }
  return matched.length - boards.length;
}
