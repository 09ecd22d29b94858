import { inches, plainNumber } from '../../../units/print.ts';
import type { EnergyRuleRow, EnergyRulesReport } from '../types.ts';
import { isPlanned, type Situation } from './situation.ts';
import { alsoSaying, type Because, type OwnerStatement, say, standingOn, type Taker, takerOf } from './statement.ts';

/** R as an owner reads it, to stand behind "R-". */
export const rFigure = (r: number): string => plainNumber(r, 1);

/** Where the new roof that the rules were held against is drawn: its boards are a plan, or flat boards are. */
export const hasNewRoof = ({ layout, plan }: Situation): boolean => layout !== null || plan === 'flat-boards';

interface Unmet {
  id: string;
  asked: Because;
  found: Because;
}

/**
 * Rules that this roof falls short of: those that the answer of the rules names. A rule that another one stands for is
 * no fault.
 */
function unmetRules({ answer, rows, coolRoof }: EnergyRulesReport, take: Taker): Unmet[] {
  const among = (all: readonly EnergyRuleRow[], path: string): Unmet[] =>
    all.flatMap(({ id, title, result, asked }, i) =>
      result === 'fail' && answer.includes(`${title}: ${asked} asked for`)
        ? [
            {
              id,
              asked: take.quote('answer-energy', 'Asked for', `energyRules.${path}.${i}.asked`),
              found: take.quote('answer-energy', 'There', `energyRules.${path}.${i}.found`),
            },
          ]
        : [],
    );
  return [...among(rows, 'rows'), ...among(coolRoof, 'coolRoof')];
}

/** What the energy code makes of the new roof in one word and its figures; null = nothing binds it, or it was not held. */
export function energyCell({ assessment }: Situation, take: Taker): OwnerStatement {
  const rules = assessment.energyRules;
  if (rules === undefined) return say`not worked out`;
  const because = take.quote('answer-energy', 'Energy rules', 'energyRules.answer');
  const parts = unmetRules(rules, take).map(({ asked, found }) => say`${asked} asked for, ${found} there`);
  if (parts.length > 0)
    return parts.reduce(
      (all, part, i) => alsoSaying(all, i === 0 ? part : alsoSaying(say`; `, part)),
      standingOn(say`not met: `, because),
    );
  const binding = [...rules.rows, ...rules.coolRoof].filter(({ result }) => result !== 'not-applicable');
  if (binding.length === 0) return standingOn(say`no rule that we hold binds it`, because);
  if (!rules.answer.startsWith('Every')) return standingOn(say`not known yet`, because);
  return standingOn(rules.dampStop === null ? say`met` : say`met only with what may get damp below the deck`, because);
}

const unmetWords = ({ id, asked, found }: Unmet): OwnerStatement => {
  if (id === 'low-point')
    return say`The energy code asks for ${asked} of boards at the lowest point of the roof, and there are ${found}.`;
  if (/cool|c402-3|california-(non)?residential/.test(id))
    return say`A rule for cool roofs is not met by this covering. It asks for ${asked}. There is ${found}.`;
  return say`The energy code asks for ${asked} here. This new roof has ${found}, so it falls short.`;
};

function ruleStatements(situation: Situation, take: Taker): OwnerStatement[] {
  const { assessment } = situation;
  const rules = assessment.energyRules;
  if (rules === undefined) return [];
  const answer = take.quote('answer-energy', 'Energy rules', 'energyRules.answer');
  const unmet = unmetRules(rules, take);
  if (unmet.length > 0)
    return [
      ...unmet.map((each) => standingOn(unmetWords(each), answer)),
      standingOn(
        say`The building office can let a roof job off, or may want more boards. Ask it before you sign.`,
        answer,
      ),
    ];
  if (rules.answer.startsWith('Every') && rules.dampStop !== null)
    return [
      standingOn(
        say`It meets the energy rules only with the insulation below the deck, and that may get damp here. Settle the damp first.`,
        answer,
      ),
    ];
  if (rules.answer.startsWith('Every'))
    return [standingOn(say`By our figures it meets every energy rule that binds it.`, answer)];
  return [...rules.rows, ...rules.coolRoof].some(({ result }) => result === 'not-known')
    ? [standingOn(say`We cannot say yet whether it meets the energy code.`, answer)]
    : [];
}

/** The R that was asked for, where the boards do not reach it. */
function targetStatements({ assessment, layout, at }: Situation, take: Taker): OwnerStatement[] {
  const thermal = layout?.thermal;
  if (thermal === undefined || thermal.target === null) return [];
  const ownWish = !assessment.assumed.some(({ path }) => path === 'insulation.targetR');
  const short = thermal.checks.some(
    ({ id, inForce, passes }) => inForce && !passes && (id === 'one-inch-rule' || id === 'average-u'),
  );
  if (!ownWish || !short) return [];
  const asked = take.figure('answer-insulation', 'R asked for', 'is', [`${at}.thermal.target.r`], rFigure);
  const base = layout?.baseForTargetIn ?? null;
  const more = take.figure('answer-insulation', 'Flat layer under them', 'is', [`${at}.baseForTargetIn`], inches);
  const wish = say`You asked for R-${asked}, and these boards alone do not reach it.`;
  if (base === null || base <= 0) return [wish];
  return [
    wish,
    layout?.baseForTargetFits === false
      ? say`It would take a flat layer of ${more} under them, and the doors and walls leave no room for that.`
      : say`A flat layer of ${more} under them would do it. It is not in the plan until you say so.`,
  ];
}

/** What the new roof is worth against heat and cold, and what the energy code says to it. */
export function insulationStatements(situation: Situation): OwnerStatement[] {
  const { assessment, layout, at, plan } = situation;
  if (!hasNewRoof(situation)) return [];
  const take = takerOf(assessment);
  const label = 'R of the boards';
  const scale = say`The higher this number is, the less heat gets through.`;
  if (plan === 'flat-boards' || layout === null) {
    const r = take.figure('answer-layouts', label, 'is', ['flatBoards.labelR'], rFigure);
    return [say`The flat boards are worth R-${r}.`, scale, ...ruleStatements(situation, take)];
  }
  const all = take.figure('answer-insulation', label, 'is', [`${at}.effectiveR`], rFigure);
  const thin = take.figure('answer-insulation', `${label} where they are thinnest`, 'is', [`${at}.thinnestR`], rFigure);
  return [
    isPlanned(situation)
      ? say`Its boards are worth R-${all} over the whole roof, and R-${thin} where they are thinnest.`
      : say`The boards of a new roof would be worth R-${all} over the whole roof, and R-${thin} where they are thinnest.`,
    scale,
    ...targetStatements(situation, take),
    ...ruleStatements(situation, take),
  ];
}
