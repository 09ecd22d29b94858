import { heightIn } from '../geometry/plane.ts';
import { buildSection, type Section } from '../geometry/section.ts';
import type { Layout } from '../report/types.ts';
import type { Point } from '../roof.ts';
import type { Site } from '../site/site.ts';
import { laidOn, type Patch } from '../surface/patch.ts';
import { envelope } from '../taper/envelope.ts';
import type { SlopePattern } from '../taper/pattern.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import { atLeast, finishedStarts, onGrid } from './bound-uneven.ts';
import { type Built, builtBoardFt } from './build.ts';
import { extrapolated, type Gradient, LEVEL_GRADIENT, type LeastBoards } from './many-sided.ts';
import { momentsOf } from './thermal.ts';

/**
 * Board feet of the lowest boards on a plane deck whose surface falls at `slope` along every water path to the same
 * outlets at the same levels.
 * @param starts levels are thicknesses over the deck
 * @param deck slope of the deck; less than `slopeInPerFt`, so that the boards grow along every way
 * Source: eikonal lower bound; geodesic distance by the same corners as the taper itself.
 */
export function coneBoardFt(
  section: Section,
  starts: readonly TaperOutlet[],
  slopeInPerFt: number,
  deck: Gradient = LEVEL_GRADIENT,
): LeastBoards {
  const measure = (pattern: SlopePattern): number =>
    momentsOf(
      envelope(
        section,
        starts.map((start) => ({ ...start, pattern })),
      ),
    ).boardFt;
  return extrapolated(measure, slopeInPerFt, deck, starts);
}

/** The section with nothing but its own corners and the starts: the least surface needs no readings. */
function bareSection(site: Site, starts: readonly TaperOutlet[]): Section {
  const points = starts.flatMap((start): Point[] => (start.kind === 'point' ? [start.at] : [start.from, start.to]));
  return buildSection(
    site.outline,
    site.roof.curbs.map(({ outline }) => outline),
    points,
  );
}

const unitCones = new WeakMap<Site, Map<string, LeastBoards>>();

/**
 * The cone that rises 1 in per ft from outlets at level 0. On a level deck every cone from one level is this one,
 * stretched, so that it is measured once for all layouts with the same outlets.
 */
function unitCone(site: Site, starts: readonly TaperOutlet[]): LeastBoards {
  const known = unitCones.get(site) ?? new Map<string, LeastBoards>();
  unitCones.set(site, known);
  const key = JSON.stringify(starts.map((start) => (start.kind === 'point' ? start.at : [start.from, start.to])));
  const found =
    known.get(key) ??
    coneBoardFt(
      bareSection(site, starts),
      starts.map((start) => ({ ...start, levelIn: 0 })),
      1,
    );
  known.set(key, found);
  return found;
}

/** The slope of a base that is one plane; null where it is not. */
function onePlane(base: readonly Patch[]): Gradient | null {
  const first = base[0]?.plane;
  if (first === undefined) return null;
  const same = base.every(({ ring, plane }) =>
    ring.every((p) => Math.abs(heightIn(plane, p) - heightIn(first, p)) < 1e-6),
  );
  return same ? { gx: first.gx, gy: first.gy } : null;
}

/**
 * Board feet that no layout can do with less of, if water falls `slope` along every way to the same outlets at the same
 * levels. On one plane the least surface itself; on any other deck the higher of that cone and the thinnest board, which
 * is never too much, with the least-path rule on a grid for how much too little it may be.
 * Source: eikonal lower bound; on decks of any shape the least over all ways of the greatest demand on each.
 */
export function leastBoards(
  site: Site,
  built: Pick<Built, 'starts' | 'ground' | 'thickness'>,
  slope: number,
): LeastBoards {
  const { starts, ground, thickness } = built;
  const plane = ground.how === 'as-read' ? onePlane(site.base) : null;
  const [{ levelIn }] = starts;
  const oneLevel = starts.every((start) => Math.abs(start.levelIn - levelIn) < 1e-9);
  if (plane !== null && oneLevel && Math.hypot(plane.gx, plane.gy) < 1e-9) {
    const unit = unitCone(site, starts);
    const flatBoardFt = levelIn * momentsOf(thickness).areaSqFt;
    return { boardFt: flatBoardFt + slope * unit.boardFt, errorBoardFt: slope * unit.errorBoardFt };
  }
  if (plane !== null && Math.hypot(plane.gx, plane.gy) < slope - 1e-6)
    return coneBoardFt(bareSection(site, starts), starts, slope, plane);
  const finished = finishedStarts(site.section, ground.patches, starts);
  const section = bareSection(site, finished);
  const leastIn = momentsOf(thickness).leastIn;
  const below = site.base.map((patch) => ({
    ...patch,
    plane: { atOriginIn: -patch.plane.atOriginIn, gx: -patch.plane.gx, gy: -patch.plane.gy },
  }));
  const measure = (pattern: SlopePattern): number => {
    const cone = envelope(
      section,
      finished.map((start) => ({ ...start, pattern })),
    );
    return atLeast(laidOn(below, cone), leastIn);
  };
  const cone = extrapolated(measure, slope, LEVEL_GRADIENT, starts);
  const upper = onGrid(section, site.base, finished, slope, leastIn);
  return { boardFt: cone.boardFt, errorBoardFt: cone.errorBoardFt + Math.max(0, upper - cone.boardFt) };
}

/** How near a layout comes to the least boards with its own least path slope; null where water lies level. */
export function boundOf(site: Site, built: Built): Layout['bound'] {
  const { leastFaceSlopeInPerFt: face, leastValleySlopeInPerFt: valley } = built.judgement;
  const least = Math.min(face ?? 0, valley ?? Number.POSITIVE_INFINITY);
  if (!(least > 1e-4)) return null;
  const own = leastBoards(site, built, least);
  return {
    pathSlopeInPerFt: least,
    boardFt: own.boardFt,
    errorBoardFt: own.errorBoardFt,
    // Sumps lie below the surface that the outlets' levels and the slope of the way ask for.
    ratio: (builtBoardFt(built) + built.sumpBoardFt) / own.boardFt,
    strictConeBoardFt: face === null || face <= least ? own.boardFt : leastBoards(site, built, face).boardFt,
  };
}
