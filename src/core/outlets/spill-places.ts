import { pipeNames } from '../kind-names.ts';
import type { Curb, OpeningKind, Outlet, Pipe, Point } from '../roof.ts';
import { onSide } from '../site/edges.ts';
import { isOpenEdge, waysOut } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';
import { outletName } from './outlet-name.ts';

/** A place where water leaves an area, or gets into the building, by height. */
export interface SpillPlace {
  label: string;
  /** `sleeve`: a pipe, curb, window or other opening that water runs into. */
  kind: 'primary' | 'overflow' | 'door' | 'sleeve' | 'parapet' | 'other';
  /** Inlet, sill or top above the file's height zero. */
  heightIn: number;
  /** Head over it at its design flow; 0 for a sill, a parapet and a free edge, null = not known. */
  headIn: number | null;
}

/** The ways out of one surface: outlets, and the ids of edges that are opened besides those that are open anyway. */
export interface OpenWays {
  outlets: readonly Outlet[];
  opened?: ReadonlySet<string>;
}

/** What an offer of water is called, and what it is. */
export function spillName(site: Site, ways: OpenWays, id: string): Pick<SpillPlace, 'label' | 'kind'> {
  const outlet = ways.outlets.find((each) => each.id === id);
  if (outlet !== undefined) return { label: outletName(outlet, ways.outlets), kind: outlet.role };
  const edge = site.edges.find((each) => each.id === id);
  if (edge === undefined) return { label: id, kind: 'other' };
  if (isOpenEdge(edge) || (ways.opened?.has(id) ?? false)) return { label: edge.label, kind: 'primary' };
  const door = edge.edge.openings.some(({ kind }) => kind === 'door');
  return { label: edge.label, kind: edge.edge.kind === 'parapet' ? 'parapet' : door ? 'door' : 'other' };
}

/**
 * Every place where water can leave a surface or get into the building, by its lowest height: outlets and edges as the flood
 * offers them, then pipes, curbs and openings with a known height.
 * @param headOf head over an outlet at its design flow [in]; null = not known
 */
export function spillPlaces(
  site: Site,
  mesh: SurfaceMesh,
  ways: OpenWays,
  headOf: (outlet: string) => number | null,
): SpillPlace[] {
  const lowest = new Map<string, number>();
  for (const { vertex, levelIn, outlet } of waysOut(site, mesh, ways).offers) {
    const at = Math.max(levelIn, mesh.z[vertex]);
    lowest.set(outlet, Math.min(lowest.get(outlet) ?? Number.POSITIVE_INFINITY, at));
  }
  const left = [...lowest].map(([id, heightIn]): SpillPlace => {
    const headIn = ways.outlets.some((each) => each.id === id) ? headOf(id) : 0;
    return { ...spillName(site, ways, id), heightIn, headIn };
  });
  return [...left, ...sleeves(site)];
}

const openingWords: Record<Exclude<OpeningKind, 'door'>, string> = {
  window: 'window',
  'siding-bottom': 'bottom of the siding',
  weep: 'weep holes',
  louver: 'louver',
};

/** Pipes, curbs and openings in walls that water runs into once it stands as high as they are. */
function sleeves(site: Site): SpillPlace[] {
  const { roof, measured, edges } = site;
  const at = (label: string, spots: readonly Point[], heightIn: number | null): SpillPlace[] =>
    heightIn === null
      ? []
      : [{ label, kind: 'sleeve', heightIn: Math.min(...spots.map((p) => measured.at(p))) + heightIn, headIn: 0 }];
  const curbName = ({ id, kind }: Curb): string => (id === kind ? `the ${kind} curb` : `the curb of ${kind} ${id}`);
  const pipeName = ({ kind }: Pipe, i: number): string => `${pipeNames[kind]} pipe ${i + 1}`;
  return [
    ...roof.curbs.flatMap((curb) => at(curbName(curb), curb.outline, curb.heightIn)),
    ...roof.pipes.flatMap((pipe, i) => at(pipeName(pipe, i), [pipe.at], pipe.topIn)),
    ...edges.flatMap(({ edge, fromFt, toFt, label }) =>
      edge.openings.flatMap(({ kind, heightIn, ...part }) => {
        if (kind === 'door') return [];
        const ends = [part.fromFt ?? fromFt, part.toFt ?? toFt];
        const spots = ends.map((ft) => onSide(roof.outline, edge.side, ft));
        return at(`the ${openingWords[kind]} in the ${label}`, spots, heightIn);
      }),
    ),
  ];
}
