import { coverBoard } from '../../../../reference/insulation.ts';
import { feetInches, inches, slopeInWords } from '../../../units/print.ts';
import type { Alternative } from '../../report/types.ts';
import { catalogueOf, lowEdgeIn } from '../catalogue.ts';
import { type AlternativeFacts, alternative } from './facts.ts';

/** Longest run of boards that a height allows: what is left over the thin edge and the cover board, by the slope. */
export function longestRunFt(availableIn: number, slopeInPerFt: number, startIn: number): number {
  return Math.max(0, (availableIn - coverBoard.thicknessIn - startIn) / slopeInPerFt);
}

/** Heights that only just suffice are told as well. */
const TIGHT_IN = 0.5;

/** The hard height that is broken or nearly so, with the run that it allows. */
export function moreOutlets({ site, limits, chosen, layouts }: AlternativeFacts): Alternative | null {
  const shown = chosen ?? layouts[0] ?? null;
  if (shown === null) return null;
  const hard = limits.filter(({ hardness, availableIn }) => hardness === 'stop' && availableIn !== null);
  const left = new Map(shown.budgets.map(({ id, leftIn }) => [id, leftIn]));
  const tight = hard
    .map((limit) => ({ limit, leftIn: left.get(limit.id) ?? Number.POSITIVE_INFINITY }))
    .sort((a, b) => a.leftIn - b.leftIn)[0];
  if (tight === undefined || tight.leftIn > TIGHT_IN) return null;
  const { limit, leftIn } = tight;
  const available = limit.availableIn ?? 0;
  const slope = site.given.faceInPerFt;
  const run = longestRunFt(available, slope, lowEdgeIn(catalogueOf(site.roof), slope));
  return alternative(
    'more-outlets',
    leftIn < 0
      ? `The taper is ${inches(-leftIn)} too high at ${limit.where}.`
      : `The taper leaves only ${inches(leftIn)} at ${limit.where}.`,
    [
      {
        name: 'room for the new roof there',
        value: available < 0 ? `${inches(-available)} short before any board` : inches(available),
      },
      {
        name: `longest run at ${slopeInWords(slope)} that fits`,
        value: run > 0 ? feetInches(run) : 'none: raise what is in the way, or reframe',
      },
      ...(run > 0
        ? [
            {
              name: 'at 1/8 in per ft, with leave',
              value: feetInches(longestRunFt(available, 0.125, lowEdgeIn(catalogueOf(site.roof), 0.125))),
            },
          ]
        : []),
    ],
  );
}

/** Pitch of the roof that is told, in 12: the least for shingles without more ado is 4, on two layers of underlay 2. */
const PITCH_IN_12 = 4;

/** A steep roof, where nothing else is left. */
export function steepConversion({ site, chosen, layouts }: AlternativeFacts): Alternative | null {
  if (chosen !== null || layouts.length === 0) return null;
  const xs = site.outline.map(([x]) => x);
  const ys = site.outline.map(([, y]) => y);
  const spanFt = Math.min(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  return alternative('steep-conversion', 'No layout of tapered boards fits under the heights of this roof.', [
    { name: 'span', value: feetInches(spanFt) },
    {
      name: `ridge of a gable at ${PITCH_IN_12} in 12`,
      value: `${feetInches((spanFt / 2) * (PITCH_IN_12 / 12))} over the eaves`,
    },
  ]);
}
