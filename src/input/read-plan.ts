import { signedAreaSqFt } from '../core/geometry/vector.ts';
import type { Ring } from '../core/roof.ts';
import { checkPlaces } from './check-places.ts';
import { checkSides } from './check-sides.ts';
import { checkIds, noteDefault, withIds } from './defaults.ts';
import type { PlanParts } from './placed.ts';
import type { InputLog } from './problems.ts';
import { type RawFile, readList } from './read-group.ts';
import { readCurb, readEdge, readInflow, readOutlet, readPipe } from './read-parts.ts';
import { checkRing, readRing } from './ring.ts';
import { curbSchema, edgeSchema, inflowSchema, outletSchema, outlineSchema, pipeSchema } from './schema.ts';
import { ringOfWalk } from './walk.ts';
import { usablePart } from './zod-problems.ts';

function readOutline(written: unknown, log: InputLog): Ring | null {
  const usable = usablePart(outlineSchema, written);
  if (usable === null) return null;
  if (Array.isArray(usable)) return readRing(usable, 'outline', log);
  const walked = ringOfWalk(usable.walk, 'outline.walk', log);
  return walked && checkRing(walked, 'outline', log);
}

function noteDefaults(file: RawFile, parts: PlanParts, log: InputLog): void {
  const withRaw = (list: 'outlets' | 'curbs') =>
    parts[list].map(({ item, path }) => {
      const at = Number(/\d+/.exec(path));
      return { raw: (file[list] as unknown[])[at], id: item.id };
    });
  noteDefault(withRaw('outlets'), 'outlets', 'role', 'primary', 'taken as primary', log);
  noteDefault(withRaw('outlets'), 'outlets', 'status', 'existing', 'taken as there today', log);
  noteDefault(withRaw('outlets'), 'outlets', 'working', true, 'taken as open', log);
  noteDefault(withRaw('curbs'), 'curbs', 'kind', 'other', 'taken as another curb', log);
}

/** Everything of the file that has a place on the plan, checked against the outline. */
export function readPlan(file: RawFile, log: InputLog): PlanParts {
  const outline = readOutline(file.outline, log);
  if (outline && signedAreaSqFt(outline) < 0) {
    log.note('outline', 'clockwise', 'the corners run clockwise; they are kept in the order of the file');
  }
  const raw = {
    edges: readList(file, 'edges', edgeSchema, readEdge, log),
    curbs: withIds(readList(file, 'curbs', curbSchema, readCurb, log), 'curb', log),
    pipes: readList(file, 'pipes', pipeSchema, readPipe, log),
    inflows: readList(file, 'inflows', inflowSchema, readInflow, log),
    outlets: withIds(readList(file, 'outlets', outletSchema, readOutlet, log), 'outlet', log),
  };
  checkIds(raw.curbs, raw.outlets, log);
  const parts: PlanParts = { outline, ...raw };
  noteDefaults(file, parts, log);
  if (outline === null) return parts;
  checkPlaces(parts, outline, log);
  return { ...parts, edges: checkSides(parts, outline, log) };
}
