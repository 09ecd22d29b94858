import { inches, plainNumber, slopeInWords } from '../../units/print.ts';
import { unite } from '../geometry/boolean.ts';
import { heightIn } from '../geometry/plane.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import type { GroundFill } from '../report/types.ts';
import { placeWords } from '../report/words.ts';
import type { Point, Ring } from '../roof.ts';
import type { Site } from '../site/site.ts';
import { type Built, builtBoardFt } from './build.ts';
import type { BoardGround } from './ground.ts';

/** Fill thinner than this is the tolerance of a board. */
const FELT_IN = 1 / 32;

/** One hollow no deeper and no wider than this is filled by hand: common practice, no source. */
export const localFill = { greatestIn: 1, areaSqFt: 50 } as const;

const kinds: Record<BoardGround['how'], string> = {
  'as-read': 'The base is taken as it was read',
  plane: 'The base is levelled to a plane',
  level: 'The base is filled dead level',
  filled: 'The base is filled only where water would not fall on its way',
};

const shortKinds: Record<BoardGround['how'], string> = {
  'as-read': 'steeper boards on the base as it is',
  plane: 'levelling to a plane',
  level: 'filling dead level',
  filled: 'filling the ways of the water only',
};

function greatestOf(ground: BoardGround): Point | null {
  let best: { at: Point; byIn: number } | null = null;
  for (const { ring, plane } of ground.fill)
    for (const at of ring) {
      const byIn = heightIn(plane, at);
      if (best === null || byIn > best.byIn) best = { at, byIn };
    }
  return best?.at ?? null;
}

function noteOf(site: Site, built: Built, fill: Omit<GroundFill, 'note'>): string {
  const { boardFt, greatestIn, areaSqFt, at, local, how } = fill;
  const size = `${plainNumber(boardFt)} board ft over ${plainNumber(areaSqFt)} sq ft, up to ${inches(greatestIn)} at the thickest, ${placeWords(site.edges, at)}`;
  const falls =
    how === 'filled' && built.fillWayInPerFt !== undefined
      ? ` Every way of the water then falls at least ${slopeInWords(built.fillWayInPerFt)}.`
      : '';
  const others = (built.others ?? []).map(
    ({ how: other, boardFt: total }) => `${shortKinds[other]} ${plainNumber(total)}`,
  );
  const compared =
    others.length === 0
      ? ''
      : ` With the boards that is ${plainNumber(builtBoardFt(built))} board ft; the other ways would take: ${others.join(', ')} board ft.`;
  return local
    ? `Local fill: one hollow is filled before the boards are laid, ${size}.${falls}${compared}`
    : `${kinds[how]}: ${size}.${falls}${compared}`;
}

/** The fill under the boards as pages and exports tell it; null where they lie on the base as it was read. */
export function groundFillOf(site: Site, built: Built): GroundFill | null {
  const { ground } = built;
  const at = greatestOf(ground);
  if (at === null || ground.how === 'as-read' || ground.greatestFillIn < FELT_IN) return null;
  const felt = ground.fill.filter(({ ring, plane }) => ring.some((p) => heightIn(plane, p) > FELT_IN));
  const regions = unite(felt.map(({ ring }) => ring));
  const outlines: Ring[] = regions.map(({ outer }) => outer);
  const areaSqFt = regions
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .reduce((sum, ring) => sum + signedAreaSqFt(ring), 0);
  const local =
    regions.length === 1 &&
    ground.greatestFillIn <= localFill.greatestIn + 1e-6 &&
    areaSqFt <= localFill.areaSqFt + 1e-6;
  const fill = {
    how: ground.how,
    boardFt: ground.levellingBoardFt,
    greatestIn: ground.greatestFillIn,
    at,
    areaSqFt,
    local,
    outlines,
  };
  return { ...fill, note: noteOf(site, built, fill) };
}
