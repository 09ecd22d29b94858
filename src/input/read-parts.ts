import type { Curb, DrainOutlet, Edge, Gutter, Inflow, Opening, Outlet, Pipe } from '../core/roof.ts';
import { type InputLog, under } from './problems.ts';
import { PartReader, readAs, readPair } from './read-measures.ts';
import { readRing } from './ring.ts';
import type { RawCurb, RawEdge, RawGutter, RawInflow, RawOpening, RawOutlet, RawPipe } from './schema.ts';

function readOpening(raw: RawOpening, path: string, log: InputLog): Opening {
  const read = new PartReader(raw, path, log);
  return {
    kind: raw.kind,
    fromFt: read.measure('fromFt', 'length'),
    toFt: read.measure('toFt', 'length'),
    heightIn: read.measure('heightIn', 'height'),
  };
}

function readGutter(raw: RawGutter, path: string, log: InputLog): Gutter {
  const read = new PartReader(raw, path, log);
  const places = raw.downspouts?.map((at, i) => readAs(at, 'length', under(read.within('downspouts'), i), log));
  return {
    profile: raw.profile ?? null,
    sizeIn: read.measure('sizeIn', 'thickness'),
    slopeInPerFt: read.measure('slopeInPerFt', 'slope'),
    downspouts: places?.filter((at) => at !== null) ?? null,
    downspoutSizeIn: readPair(raw.downspoutSizeIn, 'pair', read.within('downspoutSizeIn'), log),
  };
}

export function readEdge(raw: RawEdge, path: string, log: InputLog): Edge {
  const read = new PartReader(raw, path, log);
  return {
    side: raw.side,
    fromFt: read.measure('fromFt', 'length'),
    toFt: read.measure('toFt', 'length'),
    kind: raw.kind,
    mayDrain: raw.mayDrain ?? 'unknown',
    topIn: read.endHeights('topIn'),
    clearIn: read.endHeights('clearIn'),
    gutter: raw.gutter ? readGutter(raw.gutter, read.within('gutter'), log) : null,
    pitchIn12: read.measure('pitchIn12', 'pitch'),
    shedsSqFt: read.measure('shedsSqFt', 'area'),
    wallHeightFt: read.measure('wallHeightFt', 'length'),
    openings: (raw.openings ?? []).map((opening, i) => readOpening(opening, under(read.within('openings'), i), log)),
  };
}

/** A curb; null where its outline cannot be used. An id that is not given is made later, when all ids are known. */
export function readCurb(raw: RawCurb, path: string, log: InputLog): Curb | null {
  const read = new PartReader(raw, path, log);
  const heightIn = read.measure('heightIn', 'height');
  const outline = readRing(raw.outline, read.within('outline'), log);
  return outline && { id: raw.id ?? '', kind: raw.kind ?? 'other', outline, heightIn };
}

export function readPipe(raw: RawPipe, path: string, log: InputLog): Pipe | null {
  const read = new PartReader(raw, path, log);
  const at = read.point('at');
  const sizes = { diameterIn: read.measure('diameterIn', 'thickness'), topIn: read.measure('topIn', 'height') };
  return at && { at, kind: raw.kind, ...sizes };
}

export function readInflow(raw: RawInflow, path: string, log: InputLog): Inflow | null {
  const read = new PartReader(raw, path, log);
  const at = read.point('at');
  const fromSqFt = read.measure('fromSqFt', 'area');
  return at === null || fromSqFt === null ? null : { at, kind: raw.kind, fromSqFt };
}

/** An insert sits inside the pipe: a wider one is a slip of the pen. */
function checkInsert(sizes: Pick<DrainOutlet, 'sizeIn' | 'insertBoreIn'>, path: string, log: InputLog): void {
  const { sizeIn, insertBoreIn } = sizes;
  if (sizeIn === null || insertBoreIn === null || insertBoreIn < sizeIn) return;
  log.problem(path, 'conflict', `an insert of ${insertBoreIn} in does not go into a pipe of ${sizeIn} in.`, {
    got: `${insertBoreIn}`,
    instead: 'the inside diameter of the insert, less than the size of the pipe; nothing where there is no insert',
  });
}

export function readOutlet(raw: RawOutlet, path: string, log: InputLog): Outlet | null {
  const read = new PartReader<RawOutlet>(raw, path, log);
  const common = {
    id: raw.id ?? '',
    role: raw.role ?? 'primary',
    status: raw.status ?? 'existing',
    inletIn: read.measure('inletIn', 'height'),
    working: raw.working ?? true,
  } as const;
  if (raw.kind === 'drain') {
    const drain = new PartReader(raw, path, log);
    const sizes = {
      sizeIn: drain.measure('sizeIn', 'thickness'),
      insertBoreIn: drain.measure('insertBoreIn', 'thickness'),
    };
    checkInsert(sizes, drain.within('insertBoreIn'), log);
    const at = drain.point('at');
    const { strainer = null, strainerFreeSqIn = null, leaderRoute } = raw;
    const rest = { strainer, strainerFreeSqIn, leaderRoute: leaderRoute ?? ('unknown' as const) };
    return at && { kind: 'drain', ...common, at, ...sizes, ...rest };
  }
  const scupper = new PartReader(raw, path, log);
  const alongFt = scupper.measure('alongFt', 'length');
  const opening = {
    widthIn: scupper.measure('widthIn', 'thickness'),
    heightIn: scupper.measure('heightIn', 'thickness'),
  };
  return alongFt === null ? null : { kind: 'scupper', ...common, side: raw.side, alongFt, ...opening };
}
