import type { ExistingSurface, ReadingSense, StringLine } from '../core/roof.ts';
import { type InputLog, under } from './problems.ts';
import { PartReader, readAs } from './read-measures.ts';
import type { RawExisting, RawString } from './schema.ts';

type Heights = readonly [xFt: number, yFt: number, valueIn: number];
type Readings = Extract<ExistingSurface, { kind: 'readings' }>;
type Written = readonly (number | string)[];

export function readPlaceAndHeight(raw: Written, path: string, log: InputLog): Heights | null {
  const x = readAs(raw[0], 'coordinate', under(path, 0), log);
  const y = readAs(raw[1], 'coordinate', under(path, 1), log);
  const z = readAs(raw[2], 'height', under(path, 2), log);
  return x === null || y === null || z === null ? null : [x, y, z];
}

/** Which way the values of readings count; asked where nothing tells it, because the wrong way turns ponds into humps. */
function readSense(raw: RawExisting, readings: readonly Heights[], path: string, log: InputLog): ReadingSense {
  if (raw.sense) return raw.sense;
  if (readings.length === 0) return 'height';
  if (readings.some(([, , value]) => value < 0)) {
    log.note(under(path, 'sense'), 'default', 'not given; values below zero are heights', 'height');
    return 'height';
  }
  log.problem(under(path, 'sense'), 'ask', 'it is not said which way the readings count.', {
    proposals: [
      { value: 'height', unit: '', text: '"height" (a higher value is a higher point)' },
      { value: 'rod', unit: '', text: '"rod" (a higher value is a lower point)' },
      { value: 'water-level', unit: '', text: '"water-level" (a higher mark on the moved tube is a lower point)' },
    ],
  });
  return 'height';
}

/** A string's two ends; the one that is missing is named, because a string has no direction without it. */
function stringEnd(read: PartReader<RawString>, key: 'from' | 'to', log: InputLog): StringLine['from'] | null {
  const end = read.point(key);
  if (end === null && !read.raw[key]) {
    const which = key === 'from' ? 'first' : 'other';
    log.problem(read.within(key), 'missing', `the ${which} end of the string is missing.`, {
      instead: 'the place where it is tied: [0, 12]',
    });
  }
  return end;
}

function readString(raw: RawString, path: string, log: InputLog): StringLine | null {
  const read = new PartReader(raw, path, log);
  const [from, to] = [stringEnd(read, 'from', log), stringEnd(read, 'to', log)];
  const [fromIn, toIn] = [read.measure('fromIn', 'height'), read.measure('toIn', 'height')];
  if (((raw.fromIn ?? null) === null) !== ((raw.toIn ?? null) === null)) {
    const missing = raw.fromIn === undefined || raw.fromIn === null ? 'fromIn' : 'toIn';
    log.problem(read.within(missing), 'missing', 'the height of the string is given at one end only.', {
      instead: 'its height at both ends, or at neither for a level string',
    });
  }
  const readings = (raw.readings ?? []).map((pair, i): [number | null, number | null] => {
    const at = under(read.within('readings'), i);
    return [readAs(pair[0], 'length', under(at, 0), log), readAs(pair[1], 'height', under(at, 1), log)];
  });
  if (from === null || to === null) return null;
  return {
    ...{ from, to, fromIn, toIn },
    sagIn: read.measure('sagIn', 'thickness'),
    readings: readings.flatMap(([along, gap]): [number, number][] =>
      along === null || gap === null ? [] : [[along, gap]],
    ),
  };
}

/** Heights that do not share one zero cannot stand side by side. */
function oneZero(
  sense: ReadingSense,
  spots: number,
  strings: readonly StringLine[],
  path: string,
  log: InputLog,
): void {
  if (sense === 'rod' && spots > 0 && strings.length > 0) {
    log.problem(under(path, 'strings'), 'conflict', 'strings and rod readings share no height zero.', {
      instead: 'readings as heights (sense "height") above the same spot that the strings’ ends are measured from',
    });
    return;
  }
  if (spots === 0 && strings.length < 2) return;
  strings.forEach(({ fromIn, toIn }, i) => {
    if (fromIn !== null || toIn !== null) return;
    const at = under(under(under(path, 'strings'), i), 'fromIn');
    log.problem(at, 'ask', 'how high this string was is not said; beside other readings it has to be.', {
      proposals: [{ value: 0, unit: 'in', text: '"fromIn": 0, "toIn": 0 (level, at height zero)' }],
    });
  });
}

/** Readings of whatever instrument, as they were written; heights come from them in the core. */
export function readReadings(raw: RawExisting, path: string, log: InputLog): Readings {
  const spots = (raw.readings ?? []).map((reading, i) =>
    readPlaceAndHeight(reading, under(under(path, 'readings'), i), log),
  );
  const readings = spots.filter((reading) => reading !== null);
  const sense = readSense(raw, readings, path, log);
  const strings = (raw.strings ?? [])
    .map((string, i) => readString(string, under(under(path, 'strings'), i), log))
    .filter((string) => string !== null);
  oneZero(sense, readings.length, strings, path, log);
  const read = new PartReader(raw, path, log);
  const referenceIn = read.measure('referenceIn', 'height');
  if (referenceIn !== null && sense !== 'water-level') {
    log.problem(read.within('referenceIn'), 'conflict', 'only a water level has a reference tube.', {
      instead: 'sense "water-level", or nothing here',
    });
  }
  return { kind: 'readings', readings, sense, referenceIn, strings, errorIn: read.measure('errorIn', 'thickness') };
}
