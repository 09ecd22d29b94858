import type { Assessment, Finding } from './types.ts';

const dampIds = /^(condensation-risk|damp-)/;

/** What the crew must know before it starts: stops, and damp, which is decided under the boards. */
export const crewFindings = (findings: readonly Finding[]): Finding[] =>
  findings.filter(({ id, level }) => level === 'stop' || dampIds.test(id));

/** The sheet over the bare deck, where damp calls for one: it is under everything, so it is looked at before the boards. */
export function deckSheetStep({ moisture }: Assessment) {
  const sheet = moisture?.deckSheet ?? null;
  if (sheet === null) return null;
  const retarder = sheet.kind === 'vapor-retarder';
  return {
    title: `Lay and seal the ${retarder ? 'vapor retarder' : 'airtight sheet'} over ${sheet.on}, before the first board`,
    hold: true,
    lines: [
      'Deck dry and swept, primed where the sheet asks for it. No more than the boards and the covering reach over the same day.',
      `Laps rolled down. Turn it up to the top of the boards at walls and curbs, seal it round every pipe and drain, and to the wood at open edges. ${sheet.why}`,
      'Go: no open lap, fold, tear or gap round a pipe. Take a photo of it whole.',
      'Stop: a wet deck, or a lap that does not stick. Water shut in under it stays.',
      'No board goes down before somebody has looked at all of it.',
    ],
  };
}
