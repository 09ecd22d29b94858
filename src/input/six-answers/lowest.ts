import type { EdgeKind, OpeningKind } from '../../core/roof.ts';
import { feetInches, inches } from '../../units/print.ts';
import type { AnswerReader } from './answer-reader.ts';
import { lowestKindChoices, type SidePlace, sideChoices, sideKindChoices } from './choices.ts';
import { draft, type Edges, type Place, type Size } from './leaves.ts';

const fits: Readonly<Record<'opening' | 'shingles', readonly EdgeKind[]>> = {
  opening: ['wall', 'party-wall', 'parapet'],
  shingles: ['shingles-above'],
};

/** The side that the lowest thing stands on; null, with a problem, where no side can have it. */
function sideOfLowest(read: AnswerReader, edges: Edges, kinds: readonly EdgeKind[]): SidePlace | null {
  const { lowestSide, lowestKind } = read.answers;
  const what = lowestKindChoices[lowestKind];
  const can = (place: SidePlace): boolean => {
    const edge = edges[place];
    return edge === null || kinds.includes(edge.kind);
  };
  if (lowestSide !== 'unknown') {
    if (can(lowestSide)) return lowestSide;
    const side = `the ${sideChoices[lowestSide]} is given as ${sideKindChoices[edges[lowestSide]!.kind]}`;
    read.problem(4, 'lowestSide', 'conflict', `${what} does not fit: ${side}.`, {
      got: lowestSide,
      instead: `the side with the ${what}, or another kind for that side`,
    });
    return null;
  }
  const order: readonly SidePlace[] = ['back', 'left', 'right', 'low'];
  const place = order.find((one) => edges[one] && can(one)) ?? order.find(can);
  if (!place) {
    read.problem(4, 'lowestSide', 'ask', `no side is given that could have the ${what}.`, { instead: 'its side' });
    return null;
  }
  read.suppose(4, 'lowestSide', `the ${what} is drawn on the ${sideChoices[place]}`, 'a look from the roof');
  return place;
}

/** Question 4: the sill, siding or shingles that stand lowest, on their side. */
export function readLowestOnSide(read: AnswerReader, edges: Edges, heightIn: number | null): void {
  const { lowestKind } = read.answers;
  const shingles = lowestKind === 'shingles';
  const place = sideOfLowest(read, edges, shingles ? fits.shingles : fits.opening);
  if (place === null) return;
  const edge = edges[place] ?? draft(place, shingles ? 'shingles-above' : 'wall', 'no');
  edges[place] = shingles
    ? { ...edge, clearIn: heightIn }
    : { ...edge, openings: [{ kind: lowestKind as OpeningKind, heightIn }] };
  const height = heightIn === null ? 'height not known' : `${inches(heightIn)} above the roof`;
  read.say(4, 'lowestKind', `${lowestKindChoices[lowestKind]} on the ${sideChoices[place]}, ${height}`);
}

const SUPPOSED_CURB_FT = 4;

/** Question 4: the curb that stands lowest. */
export function readCurb(
  read: AnswerReader,
  [lengthFt, depthFt]: Size,
  drain: Place | null,
  heightIn: number | null,
): object {
  const size = read.measure(4, 'curbSizeText', 'plan');
  const supposedFt = Math.min(SUPPOSED_CURB_FT, lengthFt / 3, depthFt / 3);
  const [wide, deep] = size ?? [supposedFt, supposedFt];
  const clearOfDrain = (x: number, y: number): boolean =>
    drain === null || Math.abs(drain[0] - x) > wide / 2 || Math.abs(drain[1] - y) > deep / 2;
  const shares: readonly Place[] = [
    [0.5, 0.6],
    [0.25, 0.6],
    [0.75, 0.6],
  ];
  const free = shares.find(([u, v]) => clearOfDrain(u * lengthFt, v * depthFt)) ?? shares[0];
  const along = read.measure(4, 'curbAlongText', 'length');
  const back = read.measure(4, 'curbBackText', 'length');
  if (size === null || along === null || back === null) {
    const text = `the curb is drawn ${feetInches(wide)} x ${feetInches(deep)} near the middle until it is measured`;
    read.suppose(4, 'curbSizeText', text, 'a tape over the curb and from two sides');
  }
  const [x, y] = [(along ?? free[0] * lengthFt) - wide / 2, (back ?? free[1] * depthFt) - deep / 2];
  read.say(4, 'lowestKind', `a curb, ${heightIn === null ? 'height not known' : `${inches(heightIn)} above the roof`}`);
  const outline = [
    [x, y],
    [x + wide, y],
    [x + wide, y + deep],
    [x, y + deep],
  ];
  return { id: 'curb-1', kind: 'other', outline, heightIn };
}
