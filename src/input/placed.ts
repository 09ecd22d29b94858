import type { Curb, Edge, Inflow, Outlet, Pipe, Ring } from '../core/roof.ts';

/** A part of the roof together with the place in the file that it came from. */
export interface Placed<T> {
  item: T;
  path: string;
}

/** The parts of a plan that could be read; what could not is left out, so that the rest is still checked. */
export interface PlanParts {
  outline: Ring | null;
  edges: readonly Placed<Edge>[];
  curbs: readonly Placed<Curb>[];
  pipes: readonly Placed<Pipe>[];
  inflows: readonly Placed<Inflow>[];
  outlets: readonly Placed<Outlet>[];
}
