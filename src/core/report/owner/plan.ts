import { inches } from '../../../units/print.ts';
import { keepsOldRoof, type Situation } from './situation.ts';
import { noun, type OwnerStatement, say, standingOn, type Taker, takerOf } from './statement.ts';
import { fallWords } from './today.ts';

/** Numbers of the main ways out of the offered layout. */
const mainWays = ({ layout }: Situation): number[] =>
  (layout?.outlets ?? []).flatMap(({ role }, i) => (role === 'primary' ? [i] : []));

const place = (label: string): string => label.split(',')[0];

function waysOut(situation: Situation, take: Taker): OwnerStatement {
  const ways = mainWays(situation);
  const path = (i: number): string => `${situation.at}.outlets.${i}.label`;
  const name = (i: number) => take.quote('answer-outlets', 'Way out', path(i), place);
  const [first, second] = ways;
  const would = keepsOldRoof(situation.call) ? 'would run' : 'then runs';
  if (ways.length === 1) return say`Rain ${would} to the ${name(first)}.`;
  if (ways.length === 2) return say`Rain ${would} to the ${name(first)} and the ${name(second)}.`;
  return say`Rain ${would} to ${take.count('answer-outlets', 'Main ways out', ways.map(path))} places.`;
}

function tapered(situation: Situation, take: Taker): OwnerStatement[] {
  const { layout, at, call } = situation;
  if (layout === null) return [];
  const figure = (label: string, key: string) => take.figure('answer-layouts', label, 'is', [`${at}.${key}`], inches);
  const [thin, thick] = [figure('Thinnest board', 'leastThicknessIn'), figure('Thickest board', 'greatestThicknessIn')];
  const fresh = take.count(
    'answer-outlets',
    'New ways out',
    layout.outlets.flatMap(({ status, role }, i) =>
      status === 'proposed' && role === 'primary' ? [`${at}.outlets.${i}.status`] : [],
    ),
  );
  const slope = take.figure(
    'answer-layouts',
    'Least slope of the new roof',
    'is',
    [`${at}.leastFaceSlopeInPerFt`],
    fallWords,
  );
  const title = take.quote('answer-layouts', 'The layout', `${at}.title`);
  const stays = layout.ponds.length + layout.flats.length > 0;
  return [
    keepsOldRoof(call)
      ? say`A new roof would get its slope from foam boards, from ${thin} to ${thick} thick.`
      : say`The slope is made of foam boards, from ${thin} to ${thick} thick.`,
    ...(layout.leastFaceSlopeInPerFt === null ? [] : [say`It falls at least ${slope}.`]),
    waysOut(situation, take),
    standingOn(
      stays
        ? say`By our figures a little water is still left in places.`
        : say`By our figures no place is left where it can stay.`,
      title,
    ),
    ...(layout.valleyGrade === 'good'
      ? []
      : [standingOn(say`In the valleys between two slopes it runs slowly.`, title)]),
    ...(fresh.paths.length === 0 ? [] : [say`It takes ${fresh} new ${noun(fresh, 'way')} out for the water.`]),
  ];
}

function nothingFits({ assessment }: Situation, take: Taker): OwnerStatement[] {
  const { layouts, relax } = assessment;
  const none = take.quote('answer-layouts', 'The answer', 'headline');
  const short = ({ neededIn, availableIn }: { neededIn: number | null; availableIn: number | null }): number =>
    neededIn === null || availableIn === null ? Number.MAX_VALUE : neededIn - availableIn;
  const nearest = layouts
    .flatMap(({ rejected }, i) => (rejected === null ? [] : [{ i, by: short(rejected) }]))
    .sort((a, b) => a.by - b.by)[0];
  const open = standingOn(say`We have not found a plan that fits yet.`, none);
  if (nearest === undefined)
    return [open, standingOn(say`No way out for the water is known, so nothing can be drawn.`, none)];
  const why = take.quote(
    'answer-layouts',
    'Why the nearest layout is not offered',
    `layouts.${nearest.i}.rejected.why`,
    (text) => text.replace(/\.$/, ''),
  );
  const help = take.quote('answer-layouts', 'What to relax first', 'relax', (text) =>
    text.split(' (')[0].replace(/\.$/, ''),
  );
  return [open, say`What stands in the way: ${why}.`, ...(relax === null ? [] : [say`What could help: ${help}.`])];
}

/** What ends it, or what a new roof would be. */
export function planStatements(situation: Situation): OwnerStatement[] {
  const take = takerOf(situation.assessment);
  switch (situation.plan) {
    case 'edge-first':
      return [
        say`${take.quote('answer-layouts', 'What to do first', 'existing.edgeFirst')}`,
        say`Look at the roof again after that. New boards come later, if at all.`,
      ];
    case 'flat-boards':
      return [say`${take.quote('answer-layouts', 'Flat boards', 'flatBoards.text')}`];
    case 'wishes-clash': {
      const relax = situation.assessment.moisture?.relax.slice(0, 1) ?? [];
      return [
        standingOn(
          say`What was asked for cannot all be kept in one roof. No way to place the insulation keeps all of it, stays dry and holds heat as well as it must.`,
          take.quote('answer-layouts', 'The answer', 'headline'),
        ),
        ...relax.map((_, i) => say`${take.quote('answer-damp', 'What to give up first', `moisture.relax.${i}.text`)}`),
      ];
    }
    case 'none':
      return nothingFits(situation, take);
    default:
      return tapered(situation, take);
  }
}
