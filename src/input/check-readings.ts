import { GRID_FT, isInside } from '../core/geometry/vector.ts';
import type { Curb, ExistingSurface, Ring } from '../core/roof.ts';
import { decimalInches, plainNumber } from '../units/print.ts';
import { distanceToRingFt, isWithin } from './check-places.ts';
import type { Placed } from './placed.ts';
import { type InputLog, under } from './problems.ts';
import { placeText } from './ring.ts';

type Reading = readonly [xFt: number, yFt: number, valueIn: number];
type Readings = Extract<ExistingSurface, { kind: 'readings' }>;

/** A reading at a wall may be written this far outside the outline: the thickness of a tape's end and a foot's edge. */
const AT_THE_EDGE_FT = 0.05;

const path = 'existing.readings';

function keepInside(
  readings: readonly Reading[],
  outline: Ring | null,
  curbs: readonly Placed<Curb>[],
  log: InputLog,
): Reading[] {
  return readings.filter(([x, y], i) => {
    if (outline && !isWithin([x, y], outline, AT_THE_EDGE_FT)) {
      log.note(
        under(path, i),
        'left-out',
        `the reading at ${placeText([x, y])} is outside the outline and is left out`,
      );
      return false;
    }
    const curb = curbs.find(
      ({ item }) => isInside([x, y], [item.outline]) && distanceToRingFt([x, y], item.outline) > AT_THE_EDGE_FT,
    );
    if (!curb) return true;
    log.note(
      under(path, i),
      'left-out',
      `the reading at ${placeText([x, y])} is on curb "${curb.item.id}" and is left out`,
    );
    return false;
  });
}

/** Several readings at one place: their mean where they agree within the reading error, else a question. */
function settleSpot(spot: readonly Reading[], errorIn: number | null, log: InputLog): Reading {
  const values = spot.map(([, , value]) => value);
  const apartIn = Math.max(...values) - Math.min(...values);
  const [x, y] = spot[0];
  const listed = values.map((value) => decimalInches(value, 3)).join(' and ');
  if (apartIn > 2 * (errorIn ?? 0)) {
    log.problem(path, 'ask', `the readings at ${placeText([x, y])} disagree: ${listed}.`, {
      got: listed,
      proposals: values.map((value) => ({
        value,
        unit: 'in',
        text: `[${plainNumber(x, 3)}, ${plainNumber(y, 3)}, ${value}]`,
      })),
    });
    return spot[0];
  }
  if (apartIn === 0) {
    log.note(path, 'left-out', `the reading at ${placeText([x, y])} is given ${spot.length} times; once is kept`);
    return spot[0];
  }
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  log.note(
    path,
    'adjusted',
    `the readings at ${placeText([x, y])} (${listed}) agree within the error; their mean is used`,
    mean,
  );
  return [x, y, mean];
}

/** Level readings that lie on the section, one per place. Rod readings stay as they are written. */
export function checkReadings(
  surface: Readings,
  outline: Ring | null,
  curbs: readonly Placed<Curb>[],
  log: InputLog,
): Readings {
  const spots = new Map<string, Reading[]>();
  for (const reading of keepInside(surface.readings, outline, curbs, log)) {
    const key = `${Math.round(reading[0] / GRID_FT)} ${Math.round(reading[1] / GRID_FT)}`;
    const spot = spots.get(key);
    if (spot) spot.push(reading);
    else spots.set(key, [reading]);
  }
  const readings = [...spots.values()].map((spot) =>
    spot.length === 1 ? spot[0] : settleSpot(spot, surface.errorIn, log),
  );
  return { ...surface, readings };
}
