import type { RuleSet } from '../rule-set.ts';

/** A wall that sheds rain onto the section. */
export interface SheddingWall {
  areaSqFt: number;
  /** Bearing that the wall looks at; null = not known. */
  facingDeg: number | null;
}

export interface WallShare {
  areaSqFt: number;
  rule: string;
}

const sum = (walls: readonly SheddingWall[]): number => walls.reduce((total, wall) => total + wall.areaSqFt, 0);

/**
 * Area [sq ft] of walls that counts as roof: half of every wall (IPC 1106.4, ASCE 7), by number of walls (UPC 1103.4: half of
 * one, 35 % of two adjacent ones, half of the excess of two opposite ones) or the local share.
 * Three and more walls under the UPC, and walls of unknown direction, take half of all: the UPC gives less.
 * Correctness: tests/published/drainage-outlets.test.ts rows 25 and 29
 */
export function wallShareSqFt(walls: readonly SheddingWall[], ruleSet: RuleSet): WallShare {
  const { wallShare } = ruleSet.local;
  if (wallShare !== null) return { areaSqFt: wallShare * sum(walls), rule: `local share of ${wallShare}` };
  if (ruleSet.plumbing.walls.rule === 'half') return { areaSqFt: sum(walls) / 2, rule: 'half of the walls' };
  if (walls.length === 2) return twoWalls(walls[0], walls[1]);
  const rule = walls.length < 2 ? 'half of the single wall' : 'half of the walls, the safe side for three or more';
  return { areaSqFt: sum(walls) / 2, rule };
}

function twoWalls(a: SheddingWall, b: SheddingWall): WallShare {
  const both = a.areaSqFt + b.areaSqFt;
  if (a.facingDeg === null || b.facingDeg === null) {
    return { areaSqFt: both / 2, rule: 'half of the walls, the safe side: their directions are not known' };
  }
  if (Math.cos(((a.facingDeg - b.facingDeg) * Math.PI) / 180) < -Math.SQRT1_2) {
    return { areaSqFt: Math.abs(a.areaSqFt - b.areaSqFt) / 2, rule: 'half of the excess of two opposite walls' };
  }
  return { areaSqFt: 0.35 * both, rule: '35 % of two adjacent walls' };
}
