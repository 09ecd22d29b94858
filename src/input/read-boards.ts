import type { BoardGroup, BoardStock, FlatBoard, StripBoard } from '../core/roof.ts';
import { decimalInches } from '../units/print.ts';
import { type InputLog, under } from './problems.ts';
import { PartReader, readAs } from './read-measures.ts';
import type { RawBoards } from './schema.ts';

const SAME_IN = 1e-6;
/** Steepest board that is made as a taper; above it is a cant. */
const STEEPEST_IN_PER_FT = 3;

type RawGroup = NonNullable<RawBoards['groups']>[number];

/** Every board must go on where the one before it ends, and the fill must lift the group by what it rises. */
function checkGroup(group: BoardGroup, path: string, log: InputLog): void {
  const { slopeInPerFt, runFt, lowEdgesIn, fillStepIn } = group;
  const riseIn = slopeInPerFt * runFt;
  const each = (t: number): string => `${decimalInches(t, 4)}`;
  const expected = lowEdgesIn.map((_, i) => lowEdgesIn[0] + i * riseIn);
  const odd = lowEdgesIn.findIndex((low, i) => Math.abs(low - expected[i]) > SAME_IN);
  if (odd >= 0) {
    log.problem(
      under(under(path, 'lowEdgesIn'), odd),
      'conflict',
      `the board before it ends at ${each(expected[odd])}: ${each(slopeInPerFt)} per ft over ${runFt} ft rises ${each(riseIn)}.`,
      { got: String(lowEdgesIn[odd]), instead: `[${expected.map((t) => Number(t.toFixed(6))).join(', ')}]` },
    );
    return;
  }
  const step = riseIn * lowEdgesIn.length;
  if (Math.abs(fillStepIn - step) <= SAME_IN) return;
  log.problem(
    under(path, 'fillStepIn'),
    'conflict',
    `the steps do not repeat: ${lowEdgesIn.length} boards of ${each(riseIn)} rise ${each(step)} together.`,
    { got: String(fillStepIn), instead: String(Number(step.toFixed(6))) },
  );
}

function readBoardGroup(raw: RawGroup, path: string, log: InputLog): BoardGroup | null {
  const read = new PartReader(raw, path, log);
  const slopeInPerFt = read.measure('slopeInPerFt', 'slope');
  const runFt = read.measure('runFt', 'length');
  const widthFt = read.measure('widthFt', 'length') ?? 4;
  const fillStepIn = read.measure('fillStepIn', 'thickness');
  const edges = raw.lowEdgesIn.map((low, i) => readAs(low, 'thickness', under(read.within('lowEdgesIn'), i), log));
  const lowEdgesIn = edges.filter((low) => low !== null);
  if (slopeInPerFt === null || runFt === null || fillStepIn === null || lowEdgesIn.length < edges.length) return null;
  const range = (key: keyof RawGroup & string, got: unknown, message: string, instead: string): null => {
    log.problem(read.within(key), 'range', message, { got: String(got), instead });
    return null;
  };
  if (!(slopeInPerFt > 0 && slopeInPerFt <= STEEPEST_IN_PER_FT))
    return range('slopeInPerFt', slopeInPerFt, `a board of ${slopeInPerFt} in per ft is no taper.`, '0.25');
  if (!(runFt >= 1 && runFt <= 16)) return range('runFt', runFt, `a board does not run ${runFt} ft.`, '4 or 8');
  if (!(widthFt >= 1 && widthFt <= 16)) return range('widthFt', widthFt, `a board is not ${widthFt} ft wide.`, '4');
  if (lowEdgesIn.length === 0) return range('lowEdgesIn', '[]', 'a group has at least one board.', '[0.5, 1.5]');
  const group = { slopeInPerFt, runFt, widthFt, lowEdgesIn, fillStepIn };
  checkGroup(group, path, log);
  return group;
}

function readFlat(raw: NonNullable<RawBoards['flat']>[number], path: string, log: InputLog): FlatBoard | null {
  const read = new PartReader(raw, path, log);
  const thicknessIn = read.measure('thicknessIn', 'thickness');
  const lengthFt = read.measure('lengthFt', 'length') ?? 8;
  const widthFt = read.measure('widthFt', 'length') ?? 4;
  if (thicknessIn === null) return null;
  if (thicknessIn > 0 && lengthFt >= 1 && widthFt >= 1) return { thicknessIn, lengthFt, widthFt };
  log.problem(path, 'range', `a flat board of ${thicknessIn} in, ${widthFt} x ${lengthFt} ft, cannot be laid.`, {
    instead: '{ "thicknessIn": 2, "lengthFt": 8, "widthFt": 4 }',
  });
  return null;
}

function readStrip(raw: NonNullable<RawBoards['strips']>[number], path: string, log: InputLog): StripBoard | null {
  const read = new PartReader(raw, path, log);
  const highIn = read.measure('highIn', 'thickness');
  const runIn = read.measure('runIn', 'thickness');
  if (highIn === null || runIn === null) return null;
  if (highIn > 0 && runIn > 0) return { highIn, runIn };
  log.problem(path, 'range', 'an edge strip has a thick edge and a width.', {
    instead: '{ "highIn": 0.5, "runIn": 12 }',
  });
  return null;
}

/** Largest sump that is laid about one drain. */
const LARGEST_SUMP_FT = 16;

function readSump(raw: RawBoards, path: string, log: InputLog): number | null {
  const read = new PartReader(raw, path, log);
  const sumpFt = read.measure('sumpFt', 'length');
  if (sumpFt === null || sumpFt === 0 || (sumpFt >= 2 && sumpFt <= LARGEST_SUMP_FT)) return sumpFt;
  log.problem(read.within('sumpFt'), 'range', `a sump is not ${sumpFt} ft wide.`, {
    got: String(sumpFt),
    instead: '4, 8, or 0 for none',
  });
  return null;
}

/** The boards of a supplier; null in a part that is not given or whose list is empty (all its rows taken out). */
export function readBoards(raw: RawBoards, path: string, log: InputLog): BoardStock {
  const list = <R, T>(
    key: 'groups' | 'flat' | 'strips',
    rows: readonly R[] | null | undefined,
    read: ReadOne<R, T>,
  ) => {
    const own = under(path, key);
    if (rows === null || rows === undefined || rows.length === 0) return null;
    return rows.map((row, i) => read(row, under(own, i), log)).filter((row) => row !== null);
  };
  return {
    groups: list('groups', raw.groups, readBoardGroup),
    flat: list('flat', raw.flat, readFlat),
    strips: list('strips', raw.strips, readStrip),
    leastPieceIn: new PartReader(raw, path, log).measure('leastPieceIn', 'thickness'),
    sumpFt: readSump(raw, path, log),
  };
}

type ReadOne<R, T> = (raw: R, path: string, log: InputLog) => T | null;
