import type { InputProblem } from '../problems.ts';
import type {
  belowChoices,
  leavesNowChoices,
  lowestKindChoices,
  mayOpenChoices,
  pondLastsChoices,
  pondPlaceChoices,
  sideChoices,
  sideKindChoices,
} from './choices.ts';

export type Answer = keyof typeof mayOpenChoices;
type SideKind = keyof typeof sideKindChoices;

/**
 * The six first questions as a form sends them. Text fields hold what was typed (empty or "not known" are answers);
 * the others hold one key of the choices of the same name in six-answers-choices.ts.
 *
 * The section is a rectangle. Stand below its low side and look at the building: the low side is in front (side 0),
 * then follow the right side (1), the back (2) and the left side (3). Distances along the low side count from its
 * left end; distances back count from the low side.
 */
export interface SixAnswers {
  label: string;
  /** 1. Length along the low side, and depth from the low side to the back. */
  lengthText: string;
  depthText: string;
  /** 2. Where water leaves now, and where it may. */
  leavesNow: keyof typeof leavesNowChoices;
  drainAlongText: string;
  drainBackText: string;
  scupperSide: keyof typeof sideChoices;
  scupperAlongText: string;
  lowSideKind: SideKind;
  rightSideKind: SideKind;
  backSideKind: SideKind;
  leftSideKind: SideKind;
  lowSideMayOpen: Answer;
  rightSideMayOpen: Answer;
  backSideMayOpen: Answer;
  leftSideMayOpen: Answer;
  /** 3. Where and how deep water stands two days after rain. */
  pondWhere: keyof typeof pondPlaceChoices;
  pondDepthText: string;
  pondLasts: keyof typeof pondLastsChoices;
  /** 4. The lowest thing that must stay above the new roof, and its height above the roof. */
  lowestKind: keyof typeof lowestKindChoices;
  lowestHeightText: string;
  lowestSide: keyof typeof sideChoices;
  curbSizeText: string;
  curbAlongText: string;
  curbBackText: string;
  /** 5. What is below, and is the deck seen from inside. */
  below: keyof typeof belowChoices;
  deckSeen: Answer;
  /** 6. "Town, ST". */
  town: string;
}

export type AnswerField = keyof SixAnswers;
export type Question = 1 | 2 | 3 | 4 | 5 | 6;

/** What was made of one answer, to stand beside what was typed. */
export interface Understood {
  question: Question;
  field: AnswerField;
  typed: string;
  text: string;
}

/** Something that the answers leave open and that is put in until it is measured. */
export interface Supposed {
  question: Question;
  field: AnswerField;
  text: string;
  /** The cheapest way to find out. */
  findOut: string;
}

export interface AnswersRead {
  /** Roof file for `parseRoofObject`; null where a problem stands in the way. */
  file: object | null;
  understood: readonly Understood[];
  supposed: readonly Supposed[];
  /** `path` is the name of the answer. */
  problems: readonly (InputProblem & { question: Question })[];
}

/** A form that nobody has filled in yet. */
export function blankAnswers(): SixAnswers {
  return {
    label: '',
    lengthText: '',
    depthText: '',
    leavesNow: 'unknown',
    drainAlongText: '',
    drainBackText: '',
    scupperSide: 'unknown',
    scupperAlongText: '',
    lowSideKind: 'unknown',
    rightSideKind: 'unknown',
    backSideKind: 'unknown',
    leftSideKind: 'unknown',
    lowSideMayOpen: 'unknown',
    rightSideMayOpen: 'unknown',
    backSideMayOpen: 'unknown',
    leftSideMayOpen: 'unknown',
    pondWhere: 'unknown',
    pondDepthText: '',
    pondLasts: 'unknown',
    lowestKind: 'unknown',
    lowestHeightText: '',
    lowestSide: 'unknown',
    curbSizeText: '',
    curbAlongText: '',
    curbBackText: '',
    below: 'unknown',
    deckSeen: 'unknown',
    town: '',
  };
}
