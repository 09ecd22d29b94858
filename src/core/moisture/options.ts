import { smallCeiling } from '../../../reference/energy.ts';
import { lowSlopeVenting, unventedRule, ventSpace } from '../../../reference/vapor.ts';
import { inches, rValue } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { InsulationOption, Relaxation, StatedConstraint } from '../report/types.ts';
import type { BelowInsulationKind, Preferences } from '../roof.ts';
import { rPerInOf } from './layers.ts';

export interface OptionInput {
  joistIn: number;
  /** The deck is of wood: what is filled below it are joist spaces. */
  wood: boolean;
  /** Height between the low and the high end of the joist spaces, ft. */
  riseFt: number;
  areaSqFt: number;
  targetR: number | null;
  /** Least R above the deck over so much R of batts with which every test holds, else by the code; null = not known. */
  leastAboveR: (battsR: number) => number | null;
  /** Whether so much R above the deck over so much R below it stays dry here, and what it takes or what fails. */
  dryWith: (aboveR: number, kind: BelowInsulationKind, belowR: number) => { dry: boolean | null; words: string };
  constraints: readonly StatedConstraint[];
  /** Nothing can go below: the deck is the ceiling. */
  exposed: boolean;
}

const words = {
  'keep-covering': 'the covering stays',
  'no-spray-foam': 'no sprayed foam',
  'no-foam-above': 'no board above the deck',
} as const satisfies Record<StatedConstraint['id'], string>;

/** What was said must stay or be kept out. */
export function constraintsOf({ keepCovering, noSprayFoam, noFoamAbove }: Preferences): StatedConstraint[] {
  const said: readonly [StatedConstraint['id'], boolean | null][] = [
    ['keep-covering', keepCovering],
    ['no-spray-foam', noSprayFoam],
    ['no-foam-above', noFoamAbove],
  ];
  return said.flatMap(([id, yes]) => (yes === true ? [{ id, words: words[id] }] : []));
}

type Draft = Omit<InsulationOption, 'reachesTarget' | 'breaks' | 'source'> & {
  against: readonly StatedConstraint['id'][];
  row: Parameters<typeof sourceNote>[0];
};

const aboveBreaks = ['keep-covering', 'no-foam-above'] as const;

function aloneWords(dry: boolean | null): string {
  if (dry === true) return 'By the figures here the deck stays warm enough, but';
  return `Air from the room passes through batts${dry === false ? ' and wets the cold deck' : ''}:`;
}

function belowDrafts({ joistIn, wood, riseFt, leastAboveR, targetR, dryWith }: OptionInput): Draft[] {
  const battsR = joistIn * rPerInOf('batts');
  const foamR = joistIn * rPerInOf('closed-cell');
  const ventedR = Math.max(0, joistIn - ventSpace.leastIn) * rPerInOf('batts');
  const high = riseFt >= lowSlopeVenting.heightFt;
  const needR = leastAboveR(battsR);
  const boardR = needR === null ? null : Math.max(needR, (targetR ?? 0) - battsR);
  const board = boardR === null ? null : dryWith(boardR, 'batts', battsR);
  const alone = dryWith(0, 'batts', battsR);
  const foam = dryWith(0, 'closed-cell', foamR);
  return [
    {
      id: 'vented-batts',
      title: 'Batts with an air space over them, vented at both ends',
      r: ventedR,
      aboveR: 0,
      against: [],
      dry: high,
      allowedByCode: true,
      why: high
        ? `${inches(ventSpace.leastIn)} of the ${inches(joistIn)} stays open for air: ${rValue(ventedR)} is left.`
        : `${inches(ventSpace.leastIn)} of the ${inches(joistIn)} stays open for air: ${rValue(ventedR)} is left, and between low and high end there is too little height for the air to move by itself.`,
      row: ventSpace,
    },
    {
      id: 'unvented-batts',
      title: `${wood ? 'Joist spaces' : 'Space under the deck'} filled with batts, no vents, nothing above`,
      r: battsR,
      aboveR: 0,
      against: [],
      dry: alone.dry,
      allowedByCode: false,
      why: `${aloneWords(alone.dry)} the code does not allow them alone without vents.${alone.words}`,
      row: unventedRule,
    },
    ...(boardR === null || board === null
      ? []
      : [
          {
            id: 'batts-and-board',
            title: 'Batts below, insulation board above the deck, no vents',
            r: battsR + boardR,
            aboveR: boardR,
            against: aboveBreaks,
            dry: board.dry,
            allowedByCode: true,
            why: `${board.dry === false ? `Board of ${rValue(boardR)} on the deck is not enough over ${rValue(battsR)} of batts` : `Board of ${rValue(boardR)} on the deck keeps it warm over ${rValue(battsR)} of batts`}; it needs a new covering.${board.words}`,
            row: unventedRule,
          } satisfies Draft,
        ]),
    {
      id: 'closed-cell',
      title: 'Closed-cell foam sprayed against the deck from below',
      r: foamR,
      aboveR: 0,
      against: ['no-spray-foam'],
      dry: foam.dry,
      allowedByCode: true,
      why: `${inches(joistIn)} of foam gives ${rValue(foamR)}, and no air reaches the deck; a leak shows late.${foam.words}`,
      row: unventedRule,
    },
  ];
}

function reaches(r: number, { targetR, areaSqFt }: OptionInput): InsulationOption['reachesTarget'] {
  if (targetR === null) return 'not-known';
  if (r >= targetR - 1e-9) return 'yes';
  return targetR > smallCeiling.r && r >= smallCeiling.r && areaSqFt <= smallCeiling.areaSqFt ? 'by-exception' : 'no';
}

/** The ways to place the insulation, with what each breaks of what must stay. */
export function insulationOptions(input: OptionInput): InsulationOption[] {
  const { targetR, constraints, exposed } = input;
  const aboveR = targetR ?? 30;
  const allAbove = input.dryWith(aboveR, 'none', 0);
  const drafts: Draft[] = [
    ...(exposed ? [] : belowDrafts(input)),
    {
      id: 'all-above',
      title: 'All insulation above the deck',
      r: aboveR,
      aboveR,
      against: aboveBreaks,
      dry: allAbove.dry,
      allowedByCode: true,
      why: `The deck stays as warm as the room, and nothing below it has to be vented; it needs a new covering.${allAbove.words}`,
      row: unventedRule,
    },
  ];
  return drafts.map(({ against, row, ...draft }) => ({
    ...draft,
    breaks: against.filter((id) => constraints.some((one) => one.id === id)),
    reachesTarget: reaches(draft.r, input),
    source: sourceNote(row),
  }));
}

const sound = ({ dry, allowedByCode, reachesTarget }: InsulationOption): boolean =>
  dry === true && allowedByCode && reachesTarget !== 'no';

/** Whether something keeps all that must stay, stays dry, is allowed and reaches the R. */
export const someCompliant = (options: readonly InsulationOption[]): boolean =>
  options.some((option) => sound(option) && option.breaks.length === 0);

function relaxText(option: InsulationOption, targetR: number | null): string {
  const given = option.breaks.map((id) => `"${words[id]}"`).join(' and ');
  const r =
    option.reachesTarget === 'by-exception'
      ? `${rValue(option.r)}: less than the ${rValue(targetR ?? 0)} asked for, but a ceiling without an attic of at most ${smallCeiling.areaSqFt} sq ft may drop to ${rValue(smallCeiling.r)}; that is from memory, ask the building office`
      : rValue(option.r);
  return `Give up ${given}: ${option.title.charAt(0).toLowerCase()}${option.title.slice(1)} would then give ${r}.`;
}

/** What to give up, fewest things first; a way that gives up more must reach more. */
export function relaxations(options: readonly InsulationOption[], targetR: number | null): Relaxation[] {
  const rank = ({ reachesTarget }: InsulationOption): number => (reachesTarget === 'by-exception' ? 1 : 0);
  const open = options
    .filter((option) => sound(option) && option.breaks.length > 0)
    .sort((a, b) => a.breaks.length - b.breaks.length || rank(a) - rank(b) || a.aboveR - b.aboveR);
  const kept = open.filter(
    (option, i) =>
      !open
        .slice(0, i)
        .some((first) => rank(first) <= rank(option) && first.breaks.every((id) => option.breaks.includes(id))),
  );
  return kept.map((option) => ({ giveUp: option.breaks, option: option.id, text: relaxText(option, targetR) }));
}
