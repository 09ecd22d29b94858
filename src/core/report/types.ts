/**
 * The answer: everything that `assess` gives back, and all that a page may print.
 * Names of version 1 are fixed: add to them, do not rename. Numbers are finite or null.
 * Lengths ft in plan, heights in above the file's height zero, slopes in per ft.
 */

export type * from './types/assessment.ts';
export type * from './types/basics.ts';
export type * from './types/boards.ts';
export type * from './types/damp.ts';
export type * from './types/heat.ts';
export type * from './types/layout.ts';
export type * from './types/membranes.ts';
export type * from './types/rules.ts';
export type * from './types/scope.ts';
export type * from './types/water.ts';
