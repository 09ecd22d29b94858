import { type Instrument, readingErrors } from '../../../reference/reading-errors.ts';
import type { Cited } from '../../../reference/sources.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption } from '../report/types.ts';
import type { ExistingSurface, Roof } from '../roof.ts';

type Readings = Extract<ExistingSurface, { kind: 'readings' }>;

const rowOf = (instrument: Instrument) => readingErrors.find((row) => row.instrument === instrument)!;

/** What the readings were taken with, by the way they are given. Plain heights are taken as shot with a laser. */
export function instrumentsOf({ readings, sense, strings }: Readings): Instrument[] {
  const spots: Instrument = sense === 'water-level' ? 'water-level' : 'laser';
  return [...(readings.length > 0 ? [spots] : []), ...(strings.length > 0 ? (['string-line'] as const) : [])];
}

/** How far a reading may be off when nobody said: that of the coarsest instrument in use. Source: reference/reading-errors.ts */
export function usualError(surface: Readings): { errorIn: number; because: string } {
  const rows = instrumentsOf(surface).map(rowOf);
  const row = rows.reduce((worst, each) => (each.errorIn > worst.errorIn ? each : worst), rows[0] ?? rowOf('laser'));
  return { errorIn: row.errorIn, because: `usual for a ${row.name} (${sourceNote(row as Cited).text})` };
}

/** What is taken about strings that nobody said: that they are level, and that they do not hang. */
export function stringAssumptions({ existing: { surface } }: Roof): Assumption[] {
  if (surface.kind !== 'readings') return [];
  return surface.strings.flatMap(({ fromIn, toIn, sagIn }, i): Assumption[] => [
    ...(fromIn === null && toIn === null
      ? [
          {
            path: `existing.strings[${i}].fromIn`,
            value: 'level, at height zero',
            because: 'the heights of the string’s ends were not given',
            findOut: 'set its ends with a laser, a water level or a line level',
          },
        ]
      : []),
    ...(sagIn === null
      ? [
          {
            path: `existing.strings[${i}].sagIn`,
            value: '0 in',
            because: 'the string is taken as pulled straight; one that hangs makes the middle look high',
            findOut: 'sight along it, or set a block of known height under its middle',
          },
        ]
      : []),
  ]);
}
