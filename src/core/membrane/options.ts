import { type MembraneId, type MembraneOption, membraneOptions } from '../../../reference/membranes/options.ts';
import type { CoveringKind } from '../roof.ts';

export type { MembraneId };

/** Old coverings that leave asphalt behind. */
export const bituminous: ReadonlySet<CoveringKind> = new Set([
  'sbs-granule',
  'app',
  'bur-gravel',
  'bur-smooth',
  'roll-roofing',
]);

export interface Membrane extends MembraneOption {
  id: MembraneId;
}

/** Every covering that is compared, in the order of the table. */
export const membranes: readonly Membrane[] = membraneOptions;

/** The row of one covering in a table keyed by `membrane`; a missing row is a defect of the table. */
export function rowFor<R extends { membrane: MembraneId }>(table: readonly R[], id: MembraneId): R {
  const row = table.find((entry) => entry.membrane === id);
  if (!row) throw new Error(`no row for membrane ${id}`);
  return row;
}

/** The covering of that id; a missing one is a defect. */
export function membraneOf(id: MembraneId): Membrane {
  const membrane = membranes.find((entry) => entry.id === id);
  if (!membrane) throw new Error(`no membrane ${id}`);
  return membrane;
}

export function isMembraneId(text: string): text is MembraneId {
  return membranes.some((membrane) => membrane.id === text);
}
