import { area } from '../../units/print.ts';
import type { Assessment, FlatBoardsReport } from './types.ts';

/** Flat boards that are laid in place of a taper, how many, and that no material list is made of them. */
export const flatWords = ({ text, areaSqFt, boardsPerLayer }: FlatBoardsReport): string =>
  `${text} ${area(areaSqFt)}, ${boardsPerLayer} boards of 4 x 8 ft in each layer before waste; the material list is made for tapered roofs only.`;

/** Why no layout is shown where flat boards are planned: none was looked for. null = a taper was. */
export const flatInstead = ({ flatBoards }: Assessment): string | null =>
  flatBoards?.used ? `Flat boards are planned, so no layout was looked for. ${flatWords(flatBoards)}` : null;
