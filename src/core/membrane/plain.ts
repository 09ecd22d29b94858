import { membraneLife } from '../../../reference/membranes/life-and-cost.ts';
import { figure } from '../safety/figure.ts';
import type { AttachmentChoice } from './attachment.ts';
import { type Membrane, rowFor } from './options.ts';
import type { CriterionScore } from './scores.ts';
import type { Veto } from './vetoes.ts';
import type { Weights } from './weights.ts';

interface Judged {
  membrane: Membrane;
  reasons: readonly CriterionScore[];
  score: number;
}

/** Weight below which a weak side is not worth the owner's attention. */
const COUNTS = 0.05;
const WEAK = 5;

function strongest({ reasons }: Judged, weights: Weights, most: number): string {
  return [...reasons]
    .filter(({ criterion, score }) => criterion !== 'cost' && score >= 7)
    .sort((a, b) => weights[b.criterion] * b.score - weights[a.criterion] * a.score)
    .slice(0, most)
    .map((reason) => reason.text)
    .join(' ');
}

function weakest({ reasons }: Judged, weights: Weights): string {
  const weak = reasons
    .filter(({ criterion, score }) => weights[criterion] >= COUNTS && score <= WEAK)
    .sort((a, b) => weights[b.criterion] * (10 - b.score) - weights[a.criterion] * (10 - a.score))[0];
  return weak ? ` Its weak side: ${weak.text}` : '';
}

function life({ membrane }: Judged): string {
  const [least, most] = rowFor(membraneLife, membrane.id).years;
  return ` Expect ${least} to ${most} years; standing water, no upkeep, foot traffic and heat shorten that.`;
}

/** What the owner reads about the covering that was chosen. */
export function chosenPlain(entry: Judged, weights: Weights, attachment: AttachmentChoice | null): string {
  const held = attachment ? ` It is ${attachment.name}.` : '';
  return `${entry.membrane.what}${held} ${strongest(entry, weights, 3)}${weakest(entry, weights)}${life(entry)}`;
}

/** What the owner reads about a covering that could be used but did not win. */
export function otherPlain(entry: Judged, winner: Judged, weights: Weights): string {
  const gap = figure(winner.score - entry.score, 1);
  const behind = gap === '0' ? 'It comes out level with' : `It comes ${gap} of 10 points behind`;
  return `${entry.membrane.what} ${behind} ${winner.membrane.shortName}.${weakest(entry, weights)}`;
}

/** What the owner reads about a covering that is out on this roof. */
export function vetoedPlain(membrane: Membrane, vetoes: readonly Veto[]): string {
  return `${membrane.what} Not on this roof: ${vetoes.map((veto) => veto.why).join(' ')}`;
}
