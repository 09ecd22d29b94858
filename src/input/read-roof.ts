import type { Existing, Roof } from '../core/roof.ts';
import { heightsRead } from '../core/site/readings.ts';
import { checkFindings } from './check-findings.ts';
import { checkPlanes } from './check-planes.ts';
import { checkReadings } from './check-readings.ts';
import { sideExists } from './check-sides.ts';
import type { Placed, PlanParts } from './placed.ts';
import type { InputLog } from './problems.ts';
import { readBoards } from './read-boards.ts';
import { readExisting } from './read-existing.ts';
import {
  readAdjoining,
  readBuilding,
  readCovering,
  readDeck,
  readFinding,
  readInsulation,
  readPlace,
  readPreferences,
  readPrices,
  readRuleSet,
  readSlopeRule,
  readWind,
} from './read-facts.ts';
import { type RawFile, readGroup, readList } from './read-group.ts';
import { readAs } from './read-measures.ts';
import { readPlan } from './read-plan.ts';
import * as schema from './schema.ts';

function readSurfaceOn(plan: PlanParts, file: RawFile, log: InputLog): Existing {
  const existing = readGroup(file, 'existing', schema.existingSchema, readExisting, log);
  const { surface } = existing;
  if (surface.kind === 'readings') {
    const kept = checkReadings(surface, plan.outline, plan.curbs, log);
    return { ...existing, surface: heightsRead(kept).length > 0 ? kept : { kind: 'unknown' } };
  }
  if (surface.kind === 'planes') {
    const { outline } = plan;
    surface.planes.forEach(({ fallsToward }, i) => {
      const path = `existing.planes[${i}].fallsToward.side`;
      if (outline && 'side' in fallsToward) sideExists(outline, fallsToward.side, path, log);
    });
    const allRead = !log.problems.some(({ path }) => path.startsWith('existing.planes'));
    if (outline && allRead) checkPlanes(surface.planes, outline, plan.curbs, log);
  }
  return existing;
}

const items = <T>(placed: readonly Placed<T>[]): T[] => placed.map(({ item }) => item);

/** The roof of a file whose structure may be faulty; null where the log holds a problem. */
export function readRoof(file: RawFile, log: InputLog): Roof | null {
  const plan = readPlan(file, log);
  const existing = readSurfaceOn(plan, file, log);
  const placed = readList(file, 'findings', schema.findingSchema, readFinding, log);
  const findings = plan.outline ? checkFindings(placed, plan.outline, log) : placed;
  const removed = file.removedIn;
  const facts = {
    place: readGroup(file, 'place', schema.placeSchema, readPlace, log),
    ruleSet: readGroup(file, 'ruleSet', schema.ruleSetSchema, readRuleSet, log),
    building: readGroup(file, 'building', schema.buildingSchema, readBuilding, log),
    deck: readGroup(file, 'deck', schema.deckSchema, readDeck, log),
    covering: readGroup(file, 'covering', schema.coveringSchema, readCovering, log),
    insulation: readGroup(file, 'insulation', schema.insulationSchema, readInsulation, log),
    adjoining: readGroup(file, 'adjoining', schema.adjoiningSchema, readAdjoining, log),
    prices: readGroup(file, 'prices', schema.pricesSchema, readPrices, log),
    boards: readGroup(file, 'boards', schema.boardsSchema, readBoards, log),
    slopeRule: readGroup(file, 'slopeRule', schema.slopeRuleSchema, readSlopeRule, log),
    wind: readGroup(file, 'wind', schema.windSchema, readWind, log),
    preferences: readGroup(file, 'preferences', schema.preferencesSchema, readPreferences, log),
    removedIn:
      typeof removed === 'string' || typeof removed === 'number'
        ? readAs(removed, 'thickness', 'removedIn', log)
        : null,
  };
  if (plan.outline === null || log.problems.length > 0) return null;
  return {
    version: 1,
    label: typeof file.label === 'string' ? file.label : '',
    invented: file.invented === true,
    ...facts,
    outline: plan.outline,
    edges: items(plan.edges),
    curbs: items(plan.curbs),
    pipes: items(plan.pipes),
    inflows: items(plan.inflows),
    outlets: items(plan.outlets),
    existing,
    findings: items(findings),
  };
}
