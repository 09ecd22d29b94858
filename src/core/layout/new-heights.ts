import { shingleRunUp } from '../../../reference/flashing.ts';
import { safetyLimits } from '../../../reference/safety/limits.ts';
import { overflowRiseIn } from '../outlets/ways-out.ts';
import type { NailerPiece, NewHeights, OutletReport } from '../report/types.ts';
import { carriesFlueGas, type Edge } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import { isHighEnough, parapetIn } from '../safety/edges.ts';
import type { SafetyEdge } from '../safety/facts.ts';
import type { SiteEdge } from '../site/edges.ts';
import { keptIn } from '../site/planned-work.ts';
import type { Site } from '../site/site.ts';
import { faceIn } from '../takeoff/edges.ts';
import { type BuildUp, spotsOf } from './check.ts';
import type { Limit } from './limits.ts';
import { nailersOn } from './nailers.ts';
import { buriedIn } from './run-to-limit.ts';

/** What can be raised, and is a thing of its own: not an edge. */
const SPOTS: ReadonlySet<Limit['kind']> = new Set(['curb', 'pipe', 'overflow']);
const METAL: ReadonlySet<Edge['kind']> = new Set(['gutter', 'drip', 'rake', 'roof-below', 'box-gutter']);

export interface HeightInput {
  site: Site;
  limits: readonly Limit[];
  buildUp: BuildUp;
  nailers: readonly NailerPiece[];
  /** Outlets of the layout as rated. */
  inlets: readonly OutletReport[];
  /** Ids of edges that are opened for it. */
  opened: ReadonlySet<string>;
  ruleSet: RuleSet;
}

const inletOf = ({ inletAboveLowIn = null, inletAboveSurfaceIn = null }: OutletReport) => ({
  inletAboveLowIn,
  inletAboveSurfaceIn,
});

/** Heights over the base at which curbs, pipes and overflow inlets must stand, those of unknown height too. */
function raised({ site, limits, buildUp, inlets, ruleSet }: HeightInput): NewHeights['raised'] {
  return limits
    .filter(({ kind }) => SPOTS.has(kind))
    .flatMap((limit) => {
      const used = spotsOf(site, limit, buildUp.corners).flatMap(({ p }) => buildUp(p) ?? []);
      if (used.length === 0) return [];
      const { id, where, kind, clearIn, heightIn: nowIn } = limit;
      const beside = Math.max(...used) + clearIn;
      const inlet = inlets.find((outlet) => id === `overflow-${outlet.id}`);
      // An overflow also keeps its height over the low point.
      const rise = inlet === undefined ? 0 : overflowRiseIn(inletOf(inlet), ruleSet);
      const raiseIn = nowIn === null ? null : Math.max(0, beside - nowIn, rise);
      const neededIn = nowIn === null || raiseIn === null ? beside : Math.max(beside, nowIn + raiseIn);
      const vents = site.roof.pipes.some((pipe, i) => id === `pipe-${i}` && carriesFlueGas(pipe));
      return [{ id, where, kind, clearIn, nowIn, neededIn, raiseIn, vents }];
    });
}

interface EdgeUse {
  site: SiteEdge;
  lowIn: number;
  highIn: number;
}

function edgeUses(site: Site, nailers: readonly NailerPiece[]): EdgeUse[] {
  return site.edges.flatMap((edge) => {
    const ends = nailersOn(nailers, edge).flatMap(({ startIn, endIn }) => [startIn, endIn]);
    return ends.length === 0 ? [] : [{ site: edge, lowIn: Math.min(...ends), highIn: Math.max(...ends) }];
  });
}

/** Parapets before and after: one that loses height may no longer be a guard. */
function parapets(site: Site, uses: readonly EdgeUse[]): NewHeights['parapets'] {
  return uses
    .filter(({ site: { edge } }) => edge.kind === 'parapet')
    .map(({ site: { label, edge }, highIn }) => {
      const safety: SafetyEdge = {
        label,
        kind: 'parapet',
        dropFt: site.given.heightFt,
        parapetIn: edge.topIn === null ? null : Math.min(...edge.topIn),
        oldBuildUpIn: site.given.buildUpIn,
        newBuildUpIn: highIn + keptIn(site.given),
      };
      const newIn = parapetIn(safety, 'finished');
      return {
        where: label,
        nowIn: safety.parapetIn,
        newIn,
        guardNow: safety.parapetIn === null ? null : isHighEnough(safety, 'as-is'),
        guardNew: newIn === null ? null : isHighEnough(safety, 'finished'),
        guardIn: safetyLimits.guardIn.value,
      };
    });
}

/** The joint with the slope is at the deck: an old roof that stays buries a part of it already. */
function tieIns({ given }: Site, uses: readonly EdgeUse[]): NewHeights['tieIns'] {
  return uses
    .filter(({ site: { edge } }) => edge.kind === 'shingles-above')
    .map(({ site: { label, edge }, highIn }) => {
      const pitchIn12 = edge.pitchIn12;
      const buildUpIn = highIn + keptIn(given);
      const buried = pitchIn12 === null ? null : buriedIn(buildUpIn, pitchIn12);
      return {
        where: label,
        pitchIn12,
        buildUpIn,
        levelIn: buried?.levelIn ?? null,
        alongIn: buried?.alongIn ?? null,
        stripIn: buried === null ? null : buried.alongIn + shingleRunUp.heightIn,
      };
    });
}

/** Every height that the new roof changes: what is raised, parapets as guards, tie-ins, faces of the edge metal. */
export function newHeightsOf(input: HeightInput): NewHeights {
  const { site, nailers, opened } = input;
  const uses = edgeUses(site, nailers);
  const deckIn = site.given.deckThicknessIn;
  const oldIn = keptIn(site.given);
  return {
    raised: raised(input),
    // A parapet that is opened to a gutter stands no longer.
    parapets: parapets(
      site,
      uses.filter(({ site: { id } }) => !opened.has(id)),
    ),
    tieIns: tieIns(site, uses),
    faces: uses
      .filter(({ site: { id, edge } }) => METAL.has(edge.kind) || opened.has(id))
      .map(({ site: { label: edge }, lowIn, highIn }) => ({
        edge,
        lowIn: faceIn(lowIn + oldIn, deckIn),
        highIn: faceIn(highIn + oldIn, deckIn),
      })),
  };
}
