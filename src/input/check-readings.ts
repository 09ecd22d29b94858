import { distanceFt, isInside } from '../core/geometry/vector.ts';
import type { Curb, ExistingSurface, Point, Ring, StringLine } from '../core/roof.ts';
import { usualError } from '../core/site/instruments.ts';
import { heightsRead, spotKey, underString } from '../core/site/readings.ts';
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

/** Why a spot cannot be a reading's: off the section or on a curb; null where it can. */
function whyNotThere(at: Point, outline: Ring | null, curbs: readonly Placed<Curb>[]): string | null {
  if (outline && !isWithin(at, outline, AT_THE_EDGE_FT)) return 'is outside the outline';
  const curb = curbs.find(
    ({ item }) => isInside(at, [item.outline]) && distanceToRingFt(at, item.outline) > AT_THE_EDGE_FT,
  );
  return curb ? `is on curb "${curb.item.id}"` : null;
}

function keepInside(
  readings: readonly Reading[],
  outline: Ring | null,
  curbs: readonly Placed<Curb>[],
  log: InputLog,
): Reading[] {
  return readings.filter(([x, y], i) => {
    const why = whyNotThere([x, y], outline, curbs);
    if (why === null) return true;
    log.note(under(path, i), 'left-out', `the reading at ${placeText([x, y])} ${why} and is left out`);
    return false;
  });
}

const stringPath = 'existing.strings';

/** A string with the readings that lie on it and on the section. */
function checkString(
  string: StringLine,
  at: string,
  outline: Ring | null,
  curbs: readonly Placed<Curb>[],
  log: InputLog,
): StringLine {
  const lengthFt = distanceFt(string.from, string.to);
  if (lengthFt < AT_THE_EDGE_FT) {
    log.problem(under(at, 'to'), 'zero-length', 'both ends of the string are at one place.', {
      got: placeText(string.to),
      instead: 'the place where its other end is tied',
    });
    return { ...string, readings: [] };
  }
  const spots = underString(string);
  const kept = string.readings.filter(([alongFt], i) => {
    const path = under(under(at, 'readings'), i);
    if (alongFt > lengthFt + AT_THE_EDGE_FT) {
      log.problem(path, 'outside', `${plainNumber(alongFt, 2)} ft is beyond the string's end.`, {
        got: plainNumber(alongFt, 2),
        instead: `a distance up to ${plainNumber(lengthFt, 2)} ft, its length`,
      });
      return false;
    }
    const why = whyNotThere(spots[i].at, outline, curbs);
    if (why === null) return true;
    log.note(path, 'left-out', `the reading ${plainNumber(alongFt, 2)} ft along the string ${why} and is left out`);
    return false;
  });
  return { ...string, readings: kept };
}

/** Spots under strings that something else was read at too, and came out otherwise by more than two readings may differ. */
function checkCrossings(surface: Readings, log: InputLog): void {
  const mayDifferIn = 2 * (surface.errorIn ?? usualError(surface).errorIn);
  const first = new Map(heightsRead({ ...surface, strings: [] }).map(({ at, zIn }) => [spotKey(at), zIn]));
  surface.strings.forEach((string, i) => {
    underString(string).forEach(({ at, zIn }, k) => {
      const other = first.get(spotKey(at));
      if (other === undefined) first.set(spotKey(at), zIn);
      else if (Math.abs(other - zIn) > mayDifferIn) {
        const both = `${decimalInches(other, 3)} and ${decimalInches(zIn, 3)}`;
        log.problem(
          under(under(under(stringPath, i), 'readings'), k),
          'ask',
          `the readings at ${placeText(at)} disagree: they give the heights ${both}.`,
          {
            got: both,
            instead: 'the one that is right; read the spot again',
          },
        );
      }
    });
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

/** Readings that lie on the section, one per place, as they are written: heights come from them in the core. */
export function checkReadings(
  surface: Readings,
  outline: Ring | null,
  curbs: readonly Placed<Curb>[],
  log: InputLog,
): Readings {
  const spots = new Map<string, Reading[]>();
  for (const reading of keepInside(surface.readings, outline, curbs, log)) {
    const key = spotKey([reading[0], reading[1]]);
    const spot = spots.get(key);
    if (spot) spot.push(reading);
    else spots.set(key, [reading]);
  }
  const readings = [...spots.values()].map((spot) =>
    spot.length === 1 ? spot[0] : settleSpot(spot, surface.errorIn, log),
  );
  const strings = surface.strings.map((string, i) => checkString(string, under(stringPath, i), outline, curbs, log));
  const checked = { ...surface, readings, strings };
  checkCrossings(checked, log);
  return checked;
}
