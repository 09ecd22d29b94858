import { plainNumber } from '../../units/print.ts';
import type { SourceNote, Working } from './types.ts';

export interface WorkingRow {
  what: string;
  formula: string;
  inputs: string;
  result: string;
  source: SourceNote;
}

/** "areaSqFt" as "area sq ft". */
const spoken = (name: string): string => name.replaceAll(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);

const figure = (value: number | string): string => (typeof value === 'number' ? plainNumber(value, 4) : value);

export const workingRows = (workings: readonly Working[]): WorkingRow[] =>
  workings.map(({ what, formula, inputs, value, unit, source }) => ({
    what,
    formula,
    inputs: Object.entries(inputs)
      .map(([name, given]) => `${spoken(name)} ${figure(given)}`)
      .join(', '),
    result: `${plainNumber(value, value < 10 ? 2 : 1)} ${unit}`,
    source,
  }));
