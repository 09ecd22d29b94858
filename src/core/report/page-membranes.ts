import { plainNumber } from '../../units/print.ts';
import type { Assessment, MembraneReport, SourceNote } from './types.ts';

export interface MembraneRow {
  id: string;
  name: string;
  score: string;
  words: string;
  veto: SourceNote | null;
}

export const membraneRows = ({ membranes }: Assessment): MembraneRow[] =>
  membranes.map(({ id, name, score, veto, plain, flips }) => ({
    id,
    name,
    score: score === null ? 'out' : plainNumber(score, 1),
    words: veto === null ? [plain, ...flips].join(' ') : `Out here: ${veto.why}`,
    veto: veto?.source ?? null,
  }));

export interface WeighedRow {
  criterion: string;
  weight: string;
  score: string;
  text: string;
}

/** Reasons in the order of their weight; weights as shares of a hundred. */
export const weighedRows = ({ reasons }: MembraneReport): WeighedRow[] =>
  [...reasons]
    .sort((a, b) => b.weight - a.weight)
    .map(({ criterion, weight, score, text }) => ({
      criterion,
      weight: `${plainNumber(weight * 100)} %`,
      score: plainNumber(score, 1),
      text,
    }));
