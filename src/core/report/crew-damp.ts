import { DECK } from '../moisture/deck-sheet.ts';
import type { Assessment, Finding } from './types.ts';

const dampIds = /^(condensation-risk|damp-)/;

/** What the crew must know before it starts: stops, and damp, which is decided under the boards. */
export const crewFindings = (findings: readonly Finding[]): Finding[] =>
  findings.filter(({ id, level }) => level === 'stop' || dampIds.test(id));

/** What it is laid on is made ready before. */
const readyWords = (on: string): string =>
  on === DECK
    ? 'Deck dry and swept, primed where the sheet asks for it.'
    : `${on.charAt(0).toUpperCase()}${on.slice(1)} dry, firm and swept: what is wet comes out, what is loose is fixed. Primed as the maker of the sheet asks.`;

/** The sheet under the boards, where damp calls for one: it is under everything, so it is looked at before the boards. */
export function deckSheetStep({ moisture }: Assessment) {
  const sheet = moisture?.deckSheet ?? null;
  if (sheet === null) return null;
  const retarder = sheet.kind === 'vapor-retarder';
  return {
    title: `Lay and seal the ${retarder ? 'vapor retarder' : 'airtight sheet'} over ${sheet.on}, before the first board`,
    hold: true,
    lines: [
      `${readyWords(sheet.on)} No more than the boards and the covering reach over the same day.`,
      `Laps rolled down. Turn it up to the top of the boards at walls and curbs, seal it round every pipe and drain, and to the wood at open edges. ${sheet.why}`,
      'Go: no open lap, fold, tear or gap round a pipe. Take a photo of it whole.',
      `Stop: ${sheet.on} is wet, or a lap does not stick. Water shut in under it stays.`,
      'No board goes down before somebody has looked at all of it.',
    ],
  };
}
