import { leastFlashing } from '../../../reference/flashing.ts';
import { coverBoard } from '../../../reference/insulation.ts';
import type { Cited } from '../../../reference/sources.ts';
import { feetInches } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { centroid, distanceFt } from '../geometry/vector.ts';
import { pipeNames } from '../kind-names.ts';
import type { Budget } from '../report/types.ts';
import type { Curb, Edge, Opening, Point } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import { onSide, type SiteEdge, sideLengthFt, valueAlong } from '../site/edges.ts';
import { outletPoint, type Site } from '../site/site.ts';
import { catalogueOf, lowEdgeIn } from './catalogue.ts';
import { fieldSlope } from './face-rule.ts';
import { type RunToLimit, runToLimit } from './run-to-limit.ts';
import { labelLaw } from './thermal.ts';

/** A height that the new roof must respect, at a stretch or a spot. */
export interface Limit extends Budget {
  /** Allowed build-up above the base at the two ends; equal for a spot. */
  allowedIn: readonly [number, number] | null;
}

const openingKind: Record<Opening['kind'], Budget['kind']> = {
  door: 'door',
  window: 'window',
  'siding-bottom': 'siding',
  weep: 'wall',
  louver: 'window',
};

interface Draft {
  id: string;
  where: string;
  kind: Budget['kind'];
  at: Point;
  to: Point | null;
  heightsIn: readonly [number, number] | null;
  clearIn: number;
  hardness: Budget['hardness'];
  source: Cited | null;
}

/** How high the old surface stands above what the boards lie on. */
const liftIn = (site: Site): number => (site.roof.existing.readOn === 'deck' ? 0 : site.given.removedIn);

/** Height of a limit above the file's height zero. */
const topIn = (site: Site, at: Point, heightIn: number): number => site.measured.at(at) + heightIn;

/** Thickness with which the taper starts: the flat layer that is asked for, and the low edge of the boards. */
const startIn = (site: Site): number =>
  (site.roof.insulation.baseIn ?? 0) + lowEdgeIn(catalogueOf(site.roof), fieldSlope(site));

/** How far the thinnest taper may run toward a place; not asked of what stands free on the roof. */
const runOf = (site: Site, kind: Budget['kind'], boardsIn: number): RunToLimit | null =>
  kind === 'pipe' || kind === 'overflow' ? null : runToLimit(boardsIn, startIn(site), fieldSlope(site));

function finished(site: Site, draft: Draft): Limit {
  const lift = liftIn(site);
  const { heightsIn, clearIn, source, ...rest } = draft;
  const { kind } = rest;
  const allowedIn =
    heightsIn === null ? null : ([heightsIn[0] + lift - clearIn, heightsIn[1] + lift - clearIn] as const);
  const availableIn = allowedIn === null ? null : Math.min(...allowedIn);
  const boardsIn = availableIn === null ? null : availableIn - coverBoard.thicknessIn;
  return {
    ...rest,
    allowedIn,
    heightIn: heightsIn === null ? null : Math.min(...heightsIn) + lift,
    clearIn,
    availableIn,
    boardsIn,
    // What a pipe or an inlet allows says nothing about the R of a roof.
    rAvailable:
      boardsIn === null || kind === 'pipe' || kind === 'overflow'
        ? null
        : labelLaw.rIn(Math.max(0, boardsIn), Math.max(0, boardsIn)) + coverBoard.r,
    topsIn:
      heightsIn === null ? null : [topIn(site, rest.at, heightsIn[0]), topIn(site, rest.to ?? rest.at, heightsIn[1])],
    run: boardsIn === null ? null : runOf(site, kind, boardsIn),
    source: source === null ? null : sourceNote(source),
  };
}

function openingDraft(site: Site, edge: SiteEdge, opening: Opening, i: number, flashingIn: number): Draft {
  const { outline } = site.roof;
  const { side } = edge.edge;
  const [from, to] = [opening.fromFt ?? edge.fromFt, opening.toFt ?? edge.toFt];
  const kind = openingKind[opening.kind];
  return {
    id: `${edge.id}-${opening.kind}-${i}`,
    where: `${opening.kind === 'siding-bottom' ? 'bottom of the siding' : opening.kind} on the ${edge.label.split(',')[0]}, ${feetInches(from)} to ${feetInches(to)}`,
    kind,
    at: onSide(outline, side, from),
    to: onSide(outline, side, to),
    heightsIn: opening.heightIn === null ? null : [opening.heightIn, opening.heightIn],
    clearIn: flashingIn,
    hardness: 'stop',
    source: leastFlashing,
  };
}

function edgeDrafts(site: Site, edge: SiteEdge, flashingIn: number): Draft[] {
  const { kind, topIn, clearIn } = edge.edge;
  const length = sideLengthFt(site.roof.outline, edge.edge.side);
  const ends = (value: readonly [number, number]): readonly [number, number] => [
    valueAlong(value, length, distanceFt(site.roof.outline[edge.edge.side], edge.from)),
    valueAlong(value, length, distanceFt(site.roof.outline[edge.edge.side], edge.to)),
  ];
  const base = { at: edge.from, to: edge.to };
  const drafts: Draft[] = edge.edge.openings.map((opening, i) => openingDraft(site, edge, opening, i, flashingIn));
  if (kind === 'parapet') {
    const heightsIn = topIn === null ? null : ends(topIn);
    drafts.push({
      ...base,
      id: `${edge.id}-top`,
      where: `top of the ${edge.label}`,
      kind: 'parapet',
      heightsIn,
      clearIn: flashingIn,
      hardness: 'stop',
      source: leastFlashing,
    });
  }
  if (clearIn !== null || kind === 'wall' || kind === 'party-wall') {
    const tieIn = kind === 'shingles-above';
    drafts.push({
      ...base,
      id: `${edge.id}-clear`,
      where: tieIn ? `first shingles of the ${edge.label}` : `flashing limit on the ${edge.label}`,
      kind: tieIn ? 'tie-in' : 'wall',
      heightsIn: clearIn === null ? null : ends(clearIn),
      clearIn: tieIn ? 0 : flashingIn,
      hardness: tieIn ? 'raise' : 'stop',
      source: tieIn ? null : leastFlashing,
    });
  }
  return drafts;
}

/** "curb of the skylight", "curb of the equipment unit-1", "curb-1". */
function curbName({ id, kind }: Curb): string {
  if (kind === 'other') return id.startsWith('curb') ? id : `curb ${id}`;
  return id === kind ? `curb of the ${kind}` : `curb of the ${kind} ${id}`;
}

function spotDrafts(site: Site, flashingIn: number): Draft[] {
  const { curbs, pipes, outlets } = site.roof;
  const both = (h: number | null): readonly [number, number] | null => (h === null ? null : [h, h]);
  return [
    ...curbs.map(
      (curb): Draft => ({
        id: `curb-${curb.id}`,
        where: curbName(curb),
        kind: 'curb',
        at: centroid(curb.outline),
        to: null,
        heightsIn: both(curb.heightIn),
        clearIn: flashingIn,
        hardness: 'raise',
        source: leastFlashing,
      }),
    ),
    ...pipes.map(
      (pipe, i): Draft => ({
        id: `pipe-${i}`,
        where: `${pipeNames[pipe.kind]} ${i + 1}`,
        kind: 'pipe',
        at: pipe.at,
        to: null,
        heightsIn: both(pipe.topIn),
        clearIn: flashingIn,
        hardness: 'raise',
        source: leastFlashing,
      }),
    ),
    ...outlets.flatMap((outlet): Draft[] =>
      outlet.role === 'overflow' && outlet.inletIn !== null
        ? [
            {
              id: `overflow-${outlet.id}`,
              where: `inlet of overflow ${outlet.id}`,
              kind: 'overflow',
              at: outletPoint(site.roof, outlet),
              to: null,
              heightsIn: both(outlet.inletIn),
              clearIn: 0,
              hardness: 'raise',
              source: null,
            },
          ]
        : [],
    ),
  ];
}

const isShut = (edge: Edge): boolean => edge.kind !== 'gutter' && edge.kind !== 'drip';

/** Every height that limits the build-up, hard ones first. A height that is not known stands there as not known. */
export function limitsOf(site: Site, ruleSet: RuleSet): Limit[] {
  const flashingIn = ruleSet.local.minimumFlashingIn ?? leastFlashing.heightIn;
  const drafts = [
    ...site.edges
      .filter(({ edge }) => isShut(edge) || edge.openings.length > 0)
      .flatMap((edge) => edgeDrafts(site, edge, flashingIn)),
    ...spotDrafts(site, flashingIn),
  ];
  const known = drafts.filter(({ heightsIn, kind }) => heightsIn !== null || kind !== 'wall');
  return known.map((draft) => finished(site, draft)).sort((a, b) => rank(a) - rank(b));
}

const rank = (limit: Limit): number => (limit.hardness === 'stop' ? 0 : 1e4) + (limit.availableIn ?? 999);
