import { type AreaPiece, areaByOutlet, NOWHERE } from '../drainage/areas.ts';
import type { Judgement } from '../drainage/judge.ts';
import { slopeInPerFt } from '../geometry/plane.ts';
import type { Assumption } from '../report/types.ts';
import { isOpenEdge } from '../site/offers.ts';
import { outletsThere, type Site } from '../site/site.ts';
import { envelope } from '../taper/envelope.ts';
import { startsOf } from './plan.ts';

const LEVEL_IN_PER_FT = 1e-6;

const assumedNearest: Assumption = {
  path: 'existing (drainage areas)',
  value: 'each spot drains to the outlet that is nearest by the four-way pattern',
  because: 'the surface is level: by itself it does not say where its water goes',
  findOut: 'readings on a 4 to 8 ft grid, or a look at the ponds after rain',
};

/** Outlets by which a level section lets its water go: the lowest ones. */
function lowestWays(site: Site) {
  const edges = site.edges.filter(isOpenEdge);
  const ready = outletsThere(site).filter(({ working, role }) => working && role === 'primary');
  const inlets = [...ready.map(({ inletIn }) => inletIn ?? 0), ...edges.map(() => 0)];
  const lowestIn = Math.min(...inlets);
  return {
    outlets: ready.filter(({ inletIn }) => (inletIn ?? 0) <= lowestIn + 1e-6),
    edges: lowestIn <= 1e-6 ? edges : [],
  };
}

/**
 * Drainage areas of a section that is level throughout: nearest outlet by the four-way pattern, round corners and curbs.
 * @returns null where some of it slopes: then the surface itself says where the water goes
 * Correctness: tests/cases/level-roofs.test.ts
 */
export function levelAreas(site: Site, judgement: Judgement): { judgement: Judgement; assumed: Assumption } | null {
  const { mesh } = judgement;
  const level = mesh.patch.every(({ plane }) => slopeInPerFt(plane) < LEVEL_IN_PER_FT);
  const heights = Math.max(...mesh.z) - Math.min(...mesh.z);
  const ways = lowestWays(site);
  if (!level || heights > 1e-6 || ways.outlets.length + ways.edges.length < 2) return null;
  const plan = { id: '', title: '', why: '', newEdges: new Set<string>(), barred: null, ...ways };
  const starts = startsOf(site, plan, 1, 0).map((start) => ({ ...start, levelIn: 0 }));
  const reached = envelope(site.section, starts);
  const areas: AreaPiece[] = reached.map(({ ring, outlet }) => ({ ring, outlet }));
  if (judgement.trappedSqFt > 1e-3) areas.push(...lostPieces(judgement));
  return { judgement: { ...judgement, areas, areaSqFt: areaByOutlet(areas) }, assumed: assumedNearest };
}

const lostPieces = ({ areas }: Judgement): AreaPiece[] => areas.filter(({ outlet }) => outlet === NOWHERE);
