import type { Point, Ring } from '../core/roof.ts';
import type { PairField, SingleField } from '../units/fields.ts';
import { parseMeasure, printMeasure, readMeasure } from '../units/parse-measure.ts';
import type { Reading } from '../units/reading.ts';
import { type InputLog, measureProblem, shown, under } from './problems.ts';

type Written = number | string | null | undefined;

/** The value of a reading; what has to be asked, put right or known goes into the log. */
function settle<V>(
  reading: Reading<V>,
  written: unknown,
  print: (value: V) => string,
  path: string,
  log: InputLog,
): V | null {
  const got = shown(written);
  switch (reading.action) {
    case 'accept':
      if (reading.approximate) {
        log.note(path, 'approximate', `${got} is approximate: ${print(reading.value)} is used`, reading.value);
      }
      if (reading.note) log.note(path, 'reading', `${got}: ${reading.note}`, reading.value);
      return reading.value;
    case 'ask':
    case 'reject':
      log.problems.push(measureProblem(reading, got, path));
      return null;
    case 'unknown':
      return null;
  }
}

/** A measurement of the file in its field's unit; null where it is not known or not usable (then the log says why). */
export function readAs(written: Written, field: SingleField, path: string, log: InputLog): number | null {
  if (written === null || written === undefined) return null;
  return settle(readMeasure(written, field), written, (value) => printMeasure(value, field), path, log);
}

/** Two sizes, as a list or as text. */
export function readPair(
  written: readonly [number | string, number | string] | string | null | undefined,
  field: PairField,
  path: string,
  log: InputLog,
): readonly [number, number] | null {
  if (written === null || written === undefined) return null;
  if (typeof written === 'string') {
    return settle(parseMeasure(written, field), written, (value) => printMeasure(value, field), path, log);
  }
  const single = field === 'pair' ? 'thickness' : 'length';
  const first = readAs(written[0], single, under(path, 0), log);
  const second = readAs(written[1], single, under(path, 1), log);
  return first === null || second === null ? null : [first, second];
}

export function readPoint(
  written: readonly [number | string, number | string] | null | undefined,
  path: string,
  log: InputLog,
): Point | null {
  if (!written) return null;
  const x = readAs(written[0], 'coordinate', under(path, 0), log);
  const y = readAs(written[1], 'coordinate', under(path, 1), log);
  return x === null || y === null ? null : [x, y];
}

/** Corners of a ring as they are written; null where one of them cannot be used. */
export function readCorners(
  written: readonly (readonly [number | string, number | string])[] | null | undefined,
  path: string,
  log: InputLog,
): Ring | null {
  if (!written) return null;
  const corners = written.map((corner, i) => readPoint(corner, under(path, i), log));
  return corners.every((corner) => corner !== null) ? corners : null;
}

/** Reads the keys of one group of the file, with their paths. */
export class PartReader<T extends object> {
  readonly raw: T;
  readonly path: string;
  readonly log: InputLog;

  constructor(raw: T, path: string, log: InputLog) {
    this.raw = raw;
    this.path = path;
    this.log = log;
  }

  measure(key: keyof T & string, field: SingleField): number | null {
    return readAs(this.raw[key] as Written, field, under(this.path, key), this.log);
  }

  /** One height for both ends, or [start, end]. */
  endHeights(key: keyof T & string): readonly [number, number] | null {
    const written = this.raw[key] as Written | readonly [Written, Written];
    const path = under(this.path, key);
    if (!Array.isArray(written)) {
      const both = readAs(written as Written, 'height', path, this.log);
      return both === null ? null : [both, both];
    }
    const [start, end] = written.map((value: Written, i) => readAs(value, 'height', under(path, i), this.log));
    return start === null || end === null ? null : [start, end];
  }

  point(key: keyof T & string): Point | null {
    return readPoint(this.raw[key] as [number, number] | null | undefined, under(this.path, key), this.log);
  }

  within(key: keyof T & string): string {
    return under(this.path, key);
  }
}
