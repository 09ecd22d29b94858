import { inches, plainNumber } from '../../../units/print.ts';
import { depthFigure, pounds, slopeFigure } from '../page-figures.ts';
import { areaWords } from '../words.ts';
import { type Situation, waterStands } from './situation.ts';
import { type Because, type OwnerStatement, say, standingOn, type Taker, takerOf } from './statement.ts';

/** Flatter than the figures of this page can say. */
const LEVEL_IN_PER_FT = 0.005;

/** Slope for a person: "1/4 inch in each foot". */
export const fallWords = (slopeInPerFt: number): string =>
  slopeInPerFt < LEVEL_IN_PER_FT ? 'level' : slopeFigure(slopeInPerFt).replace(' in/ft', ' inch in each foot');

/** Least slope of the roof as it is; where it was measured. */
export const slopeToday = (take: Taker): Because =>
  take.figure('answer-water', 'Least slope today', 'is', ['existing.leastFaceSlopeInPerFt'], fallWords);

/** What the rule asks of a new roof. */
export const slopeAsked = (take: Taker): Because =>
  take.figure('answer-water', 'Slope that a new roof needs', 'is', ['ruleSet.slopeRule.faceInPerFt'], fallWords);

/** Paths of one value of every pond that counts. */
export const pondPaths = ({ assessment }: Situation, key: string): string[] =>
  assessment.existing.ponds.flatMap(({ birdBath }, i) => (birdBath ? [] : [`existing.ponds.${i}.${key}`]));

export const deepest = (situation: Situation, take: Taker) =>
  take.figure(
    'answer-water',
    'Deepest standing water today',
    'greatest',
    pondPaths(situation, 'greatestDepthIn'),
    depthFigure,
  );

const wetArea = (situation: Situation, take: Taker) =>
  take.figure('answer-water', 'Area under water', 'sum', pondPaths(situation, 'areaSqFt'), areaWords);

function seen({ assessment }: Situation, take: Taker): OwnerStatement {
  const verdict = take.quote('answer-water', 'Verdict on the roof as it is', 'existing.why');
  const paths = assessment.plan.seenPonds.flatMap(({ depthIn }, i) =>
    depthIn === null ? [] : [`plan.seenPonds.${i}.depthIn`],
  );
  if (paths.length === 0) return standingOn(say`Water was seen on this roof long after the rain.`, verdict);
  const depth = take.figure('answer-water', 'Depth that was seen', 'greatest', paths, inches);
  return standingOn(say`Water was seen on this roof long after the rain, up to ${depth} deep.`, verdict);
}

function level({ assessment }: Situation, take: Taker): OwnerStatement[] {
  const area = take.figure('answer-water', 'Level area', 'is', ['existing.undrainedAreaSqFt'], areaWords);
  const dry = take.quote('answer-water', 'Seen after a rain', 'existing.why');
  return [
    say`A part of this roof is level, about ${area}, so rain there has no slope to run down.`,
    assessment.existing.passes48h === true
      ? standingOn(say`It was seen dry within two days of a rain, but water is slow to leave such a place.`, dry)
      : standingOn(say`Nobody has seen yet how long rain stays there.`, dry),
  ];
}

/** What is wrong today, the sentence that matters first. */
export function todayStatements(situation: Situation): OwnerStatement[] {
  const { assessment, today } = situation;
  const take = takerOf(assessment);
  const why = take.quote('answer-water', 'Verdict on the roof as it is', 'existing.why');
  if (assessment.planned.stripped && !waterStands(today))
    return [standingOn(say`The old roof is off, down to the joists.`, why)];
  switch (today) {
    case 'stands': {
      const weight = take.figure(
        'answer-water',
        'Weight of that water',
        'sum',
        pondPaths(situation, 'weightLb'),
        pounds,
      );
      return [
        say`Rain stays on this roof: up to ${deepest(situation, take)} deep, over about ${wetArea(situation, take)}.`,
        standingOn(say`That water weighs about ${weight}. It wears the roof out and finds every small hole.`, why),
      ];
    }
    case 'may-stand':
      return [
        say`By its shape this roof can hold water up to ${deepest(situation, take)} deep, over about ${wetArea(situation, take)}.`,
        standingOn(say`Whether it really does, and for how long, is not settled.`, why),
      ];
    case 'seen':
      return [
        seen(situation, take),
        standingOn(say`Water that stays wears a roof out and finds every small hole.`, why),
      ];
    case 'shallow': {
      const paths = assessment.existing.ponds.map((_, i) => `existing.ponds.${i}.greatestDepthIn`);
      const depth = take.figure('answer-water', 'Deepest of the shallow spots', 'greatest', paths, depthFigure);
      return [standingOn(say`The roof drains. Only shallow spots keep a little water, at most ${depth} deep.`, why)];
    }
    case 'level-area':
      return level(situation, take);
    case 'level-line': {
      const paths = assessment.existing.flats.flatMap(({ lengthFt }, i) =>
        lengthFt === null ? [] : [`existing.flats.${i}.lengthFt`],
      );
      const length = take.figure(
        'answer-water',
        'Level lines',
        'sum',
        paths,
        (ft) => `${plainNumber(Math.round(ft))} ft`,
      );
      return [
        standingOn(
          say`Where two slopes or a wall meet, ${length} of the line lie level, and rain there has no slope to run down.`,
          why,
        ),
      ];
    }
    case 'slow': {
      const [slope, asked] = [slopeToday(take), slopeAsked(take)];
      if ((assessment.existing.leastFaceSlopeInPerFt ?? 0) < LEVEL_IN_PER_FT)
        return [standingOn(say`Rain leaves this roof, but its slope is less than a new roof needs.`, why)];
      return [
        standingOn(say`Rain leaves this roof, but slowly: it falls ${slope}, and a new roof needs ${asked}.`, why),
      ];
    }
    case 'drains':
      return [standingOn(say`We found no place where rain stays. The roof slopes to its way out.`, why)];
    default:
      return [standingOn(say`We cannot say yet whether rain stays on this roof.`, why)];
  }
}
