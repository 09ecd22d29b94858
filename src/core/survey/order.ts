import { type BaseLine, offBase } from './base-line.ts';
import type { Spot } from './survey.ts';

/** Once round the perimeter as the outline was walked, then the inside in rows back and forth along the base line. */
export function inWalkingOrder(spots: readonly Spot[], base: BaseLine, rowFt: number): Spot[] {
  const round = spots
    .flatMap((spot) => (spot.on === null ? [] : [{ spot, ...spot.on }]))
    .sort((a, b) => a.side - b.side || a.alongFt - b.alongFt)
    .map(({ spot }) => spot);
  const rows = spots
    .filter(({ on }) => on === null)
    .map((spot) => {
      const { alongFt, inFt } = offBase(base, spot.at);
      return { spot, alongFt, inFt, row: Math.round(inFt / rowFt) };
    });
  const numbers = [...new Set(rows.map(({ row }) => row))].sort((a, b) => a - b);
  const back = (row: number): 1 | -1 => (numbers.indexOf(row) % 2 === 0 ? 1 : -1);
  rows.sort((a, b) => a.row - b.row || back(a.row) * (a.alongFt - b.alongFt) || a.inFt - b.inFt);
  return [...round, ...rows.map(({ spot }) => spot)];
}
