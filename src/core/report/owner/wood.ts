import { count } from '../page-figures.ts';
import type { WoodRow } from '../types.ts';
import { groundShown } from './planned.ts';
import { keepsOldRoof, type Situation } from './situation.ts';
import { type Because, type OwnerStatement, say, takerOf } from './statement.ts';

const startsLarge = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const unitOf = ({ shown }: Because, unit: WoodRow['unit']): string => (shown === '1' ? unit.replace(/s$/, '') : unit);

/** Whether a carpenter can mend the deck. */
export const isWoodDeck = ({ assessment }: Situation): boolean => assessment.scope?.deck.isWood ?? true;

/** Heading over what may have to be replaced. */
export const woodTitle = (situation: Situation): string =>
  isWoodDeck(situation) && situation.call !== 'off' ? 'Bad wood' : 'The deck';

/** A deck that is not of wood has no sheets to count. */
function otherDeck({ assessment }: Situation, soft: boolean): OwnerStatement {
  const name = takerOf(assessment).quote('answer-scope', 'Deck', 'scope.deck.name', (text) =>
    text.replace(/ deck$/, ''),
  );
  return soft
    ? say`The deck is ${name}, not wood, and it was found soft. An engineer says what is done with it, so no amount is worked out.`
    : say`The deck is ${name}, not wood. No soft place was noted, so no amount is worked out.`;
}

/** Wood as a range, and what brings it on. */
export function woodStatements(situation: Situation): OwnerStatement[] {
  const { assessment } = situation;
  const wood = assessment.scope?.wood ?? null;
  const deck = assessment.scope?.deck;
  if (deck !== undefined && !deck.isWood) return [otherDeck(situation, deck.soft)];
  if (wood === null && situation.call === 'off')
    return [say`The deck is built anew. It is not worked out here: ask for its price by itself.`];
  if (wood === null)
    return [
      say`No bad wood was noted, so no amount is worked out.`,
      ...(keepsOldRoof(situation.call) ? [] : [say`${groundShown(situation)}, what lies below has the last word.`]),
    ];
  const take = takerOf(assessment);
  const rows = wood.rows.map(({ what: name, unit, likely, oneInTen }, i) => {
    const at = `scope.wood.rows.${i}`;
    const side = assessment.plan.edges.findIndex((edge) => name.endsWith(`, side ${edge.side}`));
    const what = take.quote('answer-scope', 'Wood', `${at}.what`, (text) =>
      startsLarge(text.replace(/, side \d+$/, '')),
    );
    const where =
      side < 0
        ? ''
        : take.quote('answer-scope', 'Edge', `plan.edges.${side}.label`, (text) => ` (${text.split(',')[0]})`);
    const most = take.figure('answer-scope', 'One job in ten needs more', 'is', [`${at}.oneInTen`], count);
    const usual = take.figure('answer-scope', 'Most likely', 'is', [`${at}.likely`], count);
    return likely === oneInTen
      ? say`${what}${where}: ${usual} ${unitOf(usual, unit)}.`
      : say`${what}${where}: most likely ${usual} ${unitOf(usual, unit)}, and in one job of ten more than ${most} ${unitOf(most, unit)}.`;
  });
  return [
    ...rows,
    say`It is used only where the bare wood is soft, wet or split. Ask for a photo of each place first.`,
    say`Ask that wood you do not need is paid back, and that past the upper figure work stops until you have signed.`,
  ];
}
