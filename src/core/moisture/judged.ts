import { plainNumber } from '../../units/print.ts';
import type { Lining, MoistureCure, MoistureReport, MoistureTest } from '../report/types.ts';
import type { Below } from '../roof.ts';
import { NOTHING_G, yearHolds } from './balance.ts';
import type { BuildUp } from './build-up.ts';
import { sentenceOf, waterWords } from './tests.ts';

export interface VerdictInput {
  built: BuildUp;
  room: Below;
  tests: readonly MoistureTest[];
  balance: MoistureReport['balance'];
  mostBelowR: number | null;
  cure: MoistureCure | null;
  /** What cures it, in words. */
  cureTodo: readonly string[];
  /** What is lined and sealed, in words. */
  sheetTodo: readonly string[];
}

export type Judged = Pick<MoistureReport, 'verdict' | 'answer' | 'reasons' | 'todo' | 'notKnown'>;

export const failed = (tests: readonly MoistureTest[]): readonly MoistureTest[] =>
  tests.filter(({ state }) => state === 'fails');

/** Nothing fails but a table of the code. */
export const codeAlone = (tests: readonly MoistureTest[]): boolean =>
  failed(tests).length > 0 && failed(tests).every(({ byCode }) => byCode);

export const sentences = (tests: readonly MoistureTest[]): string[] => tests.map(sentenceOf);

/** What is asked and not known, each once. */
export const openNotes = (tests: readonly MoistureTest[]): string[] => [
  ...new Set(tests.filter(({ state }) => state === 'not-known').map(({ note }) => note)),
];

/** What passes through in a year, and what a lining makes of it. */
export function yearReasons({ balance, cure }: VerdictInput): string[] {
  if (balance === null || balance.peakGPerM2 < NOTHING_G) return [];
  const { withLining } = balance;
  const pace = yearHolds(balance)
    ? 'gathers so slowly that it takes longer than a covering lasts'
    : 'does not dry out in a summer';
  return [
    `What passes through in winter, ${plainNumber(balance.peakGPerM2)} g per sq m at most, ${balance.leftGPerM2 > NOTHING_G ? pace : 'dries out again in summer'}.`,
    ...(cure === null ? [] : [`Computed again with ${withLining.what}: ${waterWords(withLining)}.`]),
  ];
}

/** "; a vapor retarder keeps room damp out of the boards", where a lining alone cures it. */
export const linedWords = ({ retarder, coat }: Lining): string =>
  `${retarder === 'none' ? '' : '; a vapor retarder under the boards keeps room damp out of them'}${coat ? '; a coating on the room side of the foam keeps room damp out of it' : ''}`;
