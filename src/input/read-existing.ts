import type { DeckPlane, Existing, ExistingSurface, JoistSag, SeenPond } from '../core/roof.ts';
import { type InputLog, under } from './problems.ts';
import { PartReader, readAs } from './read-measures.ts';
import { readPlaceAndHeight, readReadings } from './read-readings.ts';
import { readRing } from './ring.ts';
import type { RawExisting, RawPlane, RawSag, RawSeenPond } from './schema.ts';

function readPlane(raw: RawPlane, path: string, log: InputLog): DeckPlane | null {
  const read = new PartReader(raw, path, log);
  const slopeInPerFt = read.measure('slopeInPerFt', 'slope');
  const toward = raw.fallsToward;
  const bearingDeg = typeof toward === 'object' ? null : readAs(toward, 'bearing', read.within('fallsToward'), log);
  const fallsToward = typeof toward === 'object' ? toward : bearingDeg === null ? null : { bearingDeg };
  const where = readRing(raw.where, read.within('where'), log);
  const through = raw.through ? readPlaceAndHeight(raw.through, read.within('through'), log) : null;
  const [riseIn, runFt] = [read.measure('riseIn', 'thickness'), read.measure('runFt', 'length')];
  if ((raw.riseIn == null) !== (raw.runFt == null)) {
    const [has, lacks] = raw.riseIn == null ? ['runFt', 'riseIn'] : ['riseIn', 'runFt'];
    log.problem(path, 'missing', `${has} was read without ${lacks}: a rise says nothing without its run.`, {
      instead: 'both, or neither: "riseIn": 6, "runFt": 24',
    });
  }
  if (runFt === 0)
    log.problem(read.within('runFt'), 'range', 'a rise cannot be measured over no run.', { instead: 'a length: 24' });
  if (slopeInPerFt === null || fallsToward === null) return null;
  return { slopeInPerFt, fallsToward, where, through, riseIn, runFt };
}

function readSeenPond(raw: RawSeenPond, path: string, log: InputLog): SeenPond {
  const read = new PartReader(raw, path, log);
  return {
    outline: readRing(raw.outline, read.within('outline'), log),
    at: read.point('at'),
    depthIn: read.measure('depthIn', 'thickness'),
    hoursAfterRain: read.measure('hoursAfterRain', 'hours'),
  };
}

function readSurface(raw: RawExisting, path: string, log: InputLog): ExistingSurface {
  const planes = raw.planes ?? [];
  const isRead = (raw.readings ?? []).length + (raw.strings ?? []).length > 0;
  const given = [
    raw.surface ? 'surface' : null,
    planes.length > 0 ? 'planes' : null,
    isRead ? 'readings' : null,
  ].filter((key) => key !== null);
  if (given.length > 1) {
    log.problem(
      path,
      'conflict',
      `the surface is given ${given.length} times: ${given.map((key) => `"${key}"`).join(' and ')}.`,
      {
        instead: 'only one of them; readings say most',
      },
    );
  }
  if (isRead) return readReadings(raw, path, log);
  if (planes.length > 0) {
    const read = planes.map((plane, i) => readPlane(plane, under(under(path, 'planes'), i), log));
    return { kind: 'planes', planes: read.filter((plane) => plane !== null) };
  }
  return { kind: raw.surface ?? 'unknown' };
}

/** Sag of the joists; null where its depth is not given, or where readings hold it already. */
function readSag(raw: RawSag, readings: readonly unknown[], path: string, log: InputLog): JoistSag | null {
  const read = new PartReader(raw, path, log);
  const sag = {
    depthIn: read.measure('depthIn', 'thickness'),
    spanOver: raw.spanOver ?? null,
    spanFt: read.measure('spanFt', 'length'),
    directionDeg: read.measure('directionDeg', 'bearing'),
  };
  if (sag.depthIn !== null && sag.spanOver !== null) {
    log.problem(path, 'conflict', 'the sag is given twice: as a depth and as span over a number.', {
      instead: 'only one of "depthIn" and "spanOver"',
    });
  }
  if (readings.length > 0) {
    log.note(path, 'left-out', 'readings hold the sag of the deck already; it is not counted twice');
    return null;
  }
  if (sag.depthIn === null && sag.spanOver === null) {
    if (sag.spanFt !== null || sag.directionDeg !== null)
      log.note(path, 'left-out', 'the sag has no depth; it is taken as not known');
    return null;
  }
  return sag;
}

export function readExisting(raw: RawExisting, path: string, log: InputLog): Existing {
  const read = new PartReader(raw, path, log);
  const ponds = raw.seenPonds ?? [];
  if (!raw.readOn) {
    log.note(
      read.within('readOn'),
      'default',
      'not given: heights are taken as measured from the old covering',
      'covering',
    );
  }
  return {
    surface: readSurface(raw, path, log),
    readOn: raw.readOn ?? 'covering',
    buildUpIn: read.measure('buildUpIn', 'thickness'),
    sag: raw.sag ? readSag(raw.sag, [...(raw.readings ?? []), ...(raw.strings ?? [])], read.within('sag'), log) : null,
    seenPonds: ponds.map((pond, i) => readSeenPond(pond, under(read.within('seenPonds'), i), log)),
    seenDryAfter48h: raw.seenDryAfter48h ?? null,
  };
}
