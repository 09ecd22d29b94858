import { waterLoadPerInch } from '../../../reference/deflection.ts';
import { rainLoadPsf } from '../drainage/rain-load.ts';
import { sourceNote } from '../finding.ts';
import type { Finding } from '../report/types.ts';
import { areaWords, listed } from '../report/words.ts';
import type { Outlet } from '../roof.ts';
import { waysOut } from '../site/offers.ts';
import { outletPoint, type Site } from '../site/site.ts';
import { flood } from '../surface/flood.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';
import { SAME_HEIGHT_IN } from '../surface/patch.ts';
import { liveLoadOf, SAME_LOAD_PSF } from './live-load.ts';
import { type LoadLadder, loadLadder } from './load-ladder.ts';
import { inch, type OutletRating } from './rating.ts';
import { type OpenWays, type SpillPlace, spillName, spillPlaces } from './spill-places.ts';
import { shutSurface, standingAt, vertexAt } from './when-shut.ts';

/** One outlet of a surface, plugged alone. */
export interface PluggedOutlet {
  outlet: string;
  label: string;
  /** Depth at the low point of its area before the water leaves another way; null = nothing is known that lets it out. */
  depthIn: number | null;
  loadPsf: number | null;
  /** Where it then leaves. */
  leavesBy: Pick<SpillPlace, 'label' | 'kind'> | null;
}

/**
 * Every working primary outlet plugged alone: how deep its water then stands and where it leaves.
 * Correctness: tests/unit/outlets/blocked.test.ts
 */
export function pluggedOutlets(site: Site, mesh: SurfaceMesh, ways: OpenWays): PluggedOutlet[] {
  return ways.outlets
    .filter(({ role, working }) => role === 'primary' && working)
    .flatMap((outlet): PluggedOutlet[] => {
      const vertex = vertexAt(mesh, outletPoint(site.roof, outlet));
      if (vertex === null) return [];
      const shut = shutSurface(site, mesh, ways, ({ id }) => id === outlet.id);
      const { levelIn, lowPointIn, leavesBy } = standingAt(shut, vertex);
      const depthIn = levelIn === null ? null : Math.max(0, levelIn - lowPointIn);
      return [
        {
          outlet: outlet.id,
          label: spillName(site, ways, outlet.id).label,
          depthIn,
          loadPsf: depthIn === null ? null : rainLoadPsf(depthIn, 0),
          leavesBy: leavesBy === null ? null : spillName(site, ways, leavesBy),
        },
      ];
    });
}

/**
 * What stands on a surface when its outlets are blocked: the ladder of levels to every next spill, and each outlet plugged alone.
 * @param ratings of the outlets, for the head over the overflows
 * @param where in words: the section as it is, or the finished roof
 * @param enclosed walls or parapets hold the water; an edge that is open cannot be plugged
 * Source: IBC 1611.1. Correctness: tests/unit/outlets/blocked.test.ts, tests/cases/blocked-outlets.test.ts
 */
export function blockedWater(
  site: Site,
  mesh: SurfaceMesh,
  ways: OpenWays,
  ratings: ReadonlyMap<string, OutletRating>,
  enclosed: boolean,
  where = 'the section',
): LoadLadder {
  const isOverflow = (id: string): boolean => ways.outlets.some((each) => each.id === id && each.role === 'overflow');
  const reached = reachedIn(site, mesh, ways);
  const headOf = (id: string): number | null => (isOverflow(id) ? (ratings.get(id)?.headIn ?? null) : null);
  const ladder = loadLadder({
    where,
    lowPointIn: Math.min(...mesh.z),
    spills: spillPlaces(site, mesh, ways, headOf).filter(({ heightIn }) => heightIn <= reached + SAME_HEIGHT_IN),
    liveLoadPsf: site.roof.deck.liveLoadPsf,
  });
  if (!enclosed) return { ...ladder, findings: [] };
  return { ...ladder, findings: [...ladder.findings, ...noOtherWay(site, mesh, ways)] };
}

/**
 * Highest level [in] that water over the lowest point can reach: with every outlet plugged it still leaves over the edges.
 * A door lets in too little to count as one.
 */
function reachedIn(site: Site, mesh: SurfaceMesh, ways: OpenWays): number {
  const lowest = mesh.z.reduce((low, zIn, v) => (zIn < mesh.z[low] ? v : low), 0);
  const { offers } = waysOut(site, mesh, { ...ways, outlets: [] });
  const water = flood(
    mesh,
    offers.filter(({ outlet }) => spillName(site, ways, outlet).kind !== 'door'),
  );
  return water.offer[lowest] < 0 ? Number.POSITIVE_INFINITY : water.levelIn[lowest];
}

/** Id of the finding that an area has no other way out. */
export const NO_SECOND_WAY = 'area-no-second-way-out';

const MOST_NAMED = 4;

/** Outlets whose area has no other way out that the roof and the rooms below can bear. */
function noOtherWay(site: Site, mesh: SurfaceMesh, ways: OpenWays): Finding[] {
  const open = ways.outlets.filter((outlet: Outlet) => outlet.working);
  // With one way out only, the stop for that says it already.
  if (open.length < 2) return [];
  const live = liveLoadOf(site.roof.deck.liveLoadPsf);
  const isBad = ({ loadPsf, leavesBy }: PluggedOutlet): boolean =>
    loadPsf === null || leavesBy?.kind === 'door' || loadPsf > live.psf + SAME_LOAD_PSF;
  const bad = pluggedOutlets(site, mesh, ways).filter(isBad);
  if (bad.length === 0) return [];
  const worst = bad.reduce((a, b) =>
    (b.depthIn ?? Number.POSITIVE_INFINITY) > (a.depthIn ?? Number.POSITIVE_INFINITY) ? b : a,
  );
  const names = bad.slice(0, MOST_NAMED).map(({ label }) => label);
  const more = bad.length - names.length;
  const where = more > 0 ? `${names.join(', ')} and ${more} more` : listed(names);
  return [
    {
      id: NO_SECOND_WAY,
      level: 'stop',
      where: `the area of ${where}`,
      message: `${sentenceOf(worst, live.psf)} Every enclosed area needs two ways out that do not depend on each other: add an overflow or a second outlet to the area of ${where}.`,
      value: worst.depthIn === null ? 'no other way out' : inch(worst.depthIn),
      limit: `${live.psf} psf, and no door`,
      source: sourceNote(waterLoadPerInch),
    },
  ];
}

function sentenceOf({ label, depthIn, loadPsf, leavesBy }: PluggedOutlet, livePsf: number): string {
  if (depthIn === null || leavesBy === null)
    return `If ${label} plugs, nothing is known that lets the water of its area out.`;
  const load = `${loadPsf!.toFixed(1)} psf`;
  const where = leavesBy.kind === 'door' ? `goes in at ${leavesBy.label}` : `leaves by ${leavesBy.label}`;
  const over = loadPsf! > livePsf + SAME_LOAD_PSF ? ` The roof live load is ${livePsf} psf: engineer first.` : '';
  return `If ${label} plugs, the water of its area stands ${inch(depthIn)} deep, ${load}, before it ${where}.${over}`;
}

/** Area [sq ft] in words, for the basis of an overflow that is rated with the main outlets shut. */
export const shutBasis = (areaSqFt: number): string => `with the main outlets shut ${areaWords(areaSqFt)} run to it`;
