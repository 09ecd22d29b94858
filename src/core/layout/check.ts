import { coverBoard } from '../../../reference/insulation.ts';
import { inches, slopeInWords } from '../../units/print.ts';
import { heightIn } from '../geometry/plane.ts';
import { orient, toSegment } from '../geometry/vector.ts';
import type { Layout, Rejection } from '../report/types.ts';
import { listed } from '../report/words.ts';
import type { Point } from '../roof.ts';
import { LEAST_SLOW_VALLEY_IN_PER_FT } from '../site/assumptions.ts';
import type { Site } from '../site/site.ts';
import type { Patch } from '../surface/patch.ts';
import type { Built } from './build.ts';
import { faceRule } from './face-rule.ts';
import type { Limit } from './limits.ts';
import { roundedUpIn } from './round-up.ts';
import { momentsOf } from './thermal.ts';

const SAME_SLOPE = 1e-9;
const SAME_HEIGHT_IN = 1e-6;

/** Build-up above the base at a point: boards and cover board; null where nothing lies. */
export interface BuildUp {
  (p: Point): number | null;
  /** Corners of its planes: between two of them that follow on a line it is straight. */
  corners: readonly Point[];
}

export function buildUpAt(thickness: readonly Patch[]): BuildUp {
  const at = (p: Point): number | null => {
    let best: number | null = null;
    for (const { ring, plane } of thickness) {
      if (!ring.every((a, i) => orient(a, ring[(i + 1) % ring.length], p) >= -1e-4)) continue;
      const t = heightIn(plane, p) + coverBoard.thicknessIn;
      if (best === null || t < best) best = t;
    }
    return best;
  };
  return Object.assign(at, { corners: cornersOf(thickness) });
}

/** Corners of patches, twins left in: they are few on any one line. */
export const cornersOf = (patches: readonly Patch[]): Point[] => patches.flatMap(({ ring }) => ring);

export interface LimitUse {
  limit: Limit;
  usedIn: number;
  leftIn: number;
  /** Where on the stretch it is tightest. */
  at: Point;
}

/** A corner this near to a stretch lies on it. */
const ON_STRETCH_FT = 1e-3;

/** Where a stretch begins, bends and ends: on a piecewise plane surface the extremes along it stand there. */
function bends(from: Point, to: Point, corners: readonly Point[]): { p: Point; t: number }[] {
  const on = corners.flatMap((p) => {
    const { distanceFt, t } = toSegment(p, from, to);
    return distanceFt < ON_STRETCH_FT && t > 0 && t < 1 ? [{ p, t }] : [];
  });
  return [{ p: from, t: 0 }, ...on, { p: to, t: 1 }];
}

/**
 * Spots at which a limit is held against the build-up, with their share of the way along a stretch.
 * @param corners of the planes of the build-up, which decide between the ends
 */
export function spotsOf(site: Site, limit: Limit, corners: readonly Point[]): { p: Point; t: number }[] {
  const curb = site.roof.curbs.find(({ id }) => limit.id === `curb-${id}`);
  if (curb !== undefined) {
    const { outline } = curb;
    return outline
      .flatMap((p, i) => bends(p, outline[(i + 1) % outline.length], corners))
      .map(({ p }) => ({ p, t: 0 }));
  }
  return limit.to === null ? [{ p: limit.at, t: 0 }] : bends(limit.at, limit.to, corners);
}

/** What a layout uses of each known height, and what is left. */
export function usesOf(site: Site, limits: readonly Limit[], buildUp: BuildUp): LimitUse[] {
  return limits.flatMap((limit): LimitUse[] => {
    const { allowedIn } = limit;
    if (allowedIn === null) return [];
    let worst: LimitUse | null = null;
    for (const { p, t } of spotsOf(site, limit, buildUp.corners)) {
      const usedIn = buildUp(p);
      if (usedIn === null) continue;
      const leftIn = allowedIn[0] + (allowedIn[1] - allowedIn[0]) * t - usedIn;
      if (worst === null || leftIn < worst.leftIn) worst = { limit, usedIn, leftIn, at: p };
    }
    return worst === null ? [] : [worst];
  });
}

/** How the valleys of a layout are graded under the rule of the job. */
export function gradeOf(leastValley: number | null, valleyRule: number): Layout['valleyGrade'] {
  if (leastValley === null || leastValley >= valleyRule - SAME_SLOPE) return 'good';
  return leastValley >= LEAST_SLOW_VALLEY_IN_PER_FT - SAME_SLOPE ? 'slow' : 'too-flat';
}

/** The water rules alone: drained in both senses, planes and valleys steep enough. Null when they hold. */
export function waterRejection(site: Site, built: Built): Rejection | null {
  const { judgement } = built;
  const reject = (where: string, why: string, relax: string | null): Rejection => ({
    where,
    neededIn: null,
    availableIn: null,
    why,
    relax,
  });
  const reached = momentsOf(built.thickness).areaSqFt;
  if (site.section.areaSqFt - reached > 1e-2) {
    return reject(
      'a part of the section',
      `${Math.round(site.section.areaSqFt - reached)} sq ft of it have no outlet`,
      'Add an outlet there.',
    );
  }
  if (judgement.trappedSqFt > 1e-3)
    return reject('the section', `${Math.round(judgement.trappedSqFt)} sq ft have no way out`, 'Add an outlet there.');
  const pond = judgement.ponds[0];
  if (pond !== undefined && pond.greatestDepthIn > 1e-3) {
    return reject(
      'the low spot',
      `water would still stand ${inches(pond.greatestDepthIn)} deep`,
      'Level the deck first, or use a steeper board.',
    );
  }
  if (!judgement.drained) {
    const ft = Math.round(judgement.flats.lengthFt);
    const why =
      judgement.flats.areaSqFt > 1e-3
        ? `${Math.round(judgement.flats.areaSqFt)} sq ft would lie level`
        : `${ft} ft of valley or wall line would lie level`;
    return reject('the surface', why, 'A cricket or another outlet gives it a fall.');
  }
  const face = judgement.leastFaceSlopeInPerFt ?? 0;
  if (face < faceRule(site) - SAME_SLOPE) {
    return reject(
      'the flattest plane',
      `falls ${slopeInWords(face)}; ${slopeInWords(site.given.faceInPerFt)} is asked for`,
      'A steeper board, or a re-roof exception where the roof is seen to dry.',
    );
  }
  const valley = judgement.leastValleySlopeInPerFt;
  if (site.given.strict && valley !== null && valley < site.given.faceInPerFt - SAME_SLOPE) {
    return reject(
      'a valley',
      `falls ${slopeInWords(valley)}; the strict reading asks for ${slopeInWords(site.given.faceInPerFt)} there too`,
      'Steeper boards, or the reading that grades valleys apart.',
    );
  }
  if (gradeOf(valley, site.given.valleyInPerFt) === 'too-flat') {
    return reject(
      'a valley',
      `falls ${slopeInWords(valley ?? 0)}, less than 1/16 in per ft`,
      'Steeper boards or wider crickets.',
    );
  }
  return null;
}

/** The hard height that a layout breaks most, and everything that would have to give. */
export function heightRejection(uses: readonly LimitUse[]): Rejection | null {
  const broken = uses
    .filter(({ limit, leftIn }) => limit.hardness === 'stop' && leftIn < -SAME_HEIGHT_IN)
    .sort((a, b) => a.leftIn - b.leftIn);
  if (broken.length === 0) return null;
  const [{ limit, usedIn, leftIn }] = broken;
  const availableIn = limit.availableIn ?? 0;
  const room =
    availableIn < 0
      ? `there ${inches(limit.clearIn)} of flashing is ${inches(-availableIn)} short before any board is laid`
      : `${inches(limit.clearIn)} of flashing leaves ${inches(availableIn)} there`;
  return {
    where: limit.where,
    neededIn: usedIn,
    availableIn: usedIn + leftIn,
    why: `the new roof comes up ${inches(usedIn)} at ${limit.where}; ${room}`,
    relax: `Raise ${listed(broken.map(raiseWords))}; an outlet nearer to ${broken.length === 1 ? 'it' : 'them'} lowers the roof as well.`,
  };
}

/** "door on the wall by 3/4", or have 7 1/4" of flashing accepted there". */
function raiseWords({ limit, leftIn }: LimitUse): string {
  const byIn = roundedUpIn(-leftIn);
  const flashingIn = limit.clearIn - byIn;
  const less = flashingIn > SAME_HEIGHT_IN ? ` (or have ${inches(flashingIn)} of flashing accepted there)` : '';
  return `${limit.where} by ${inches(byIn)}${less}`;
}
