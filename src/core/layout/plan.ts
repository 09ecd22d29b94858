import { coverBoard } from '../../../reference/insulation.ts';
import { direction, distanceFt } from '../geometry/vector.ts';
import type { Outlet, Point } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import { outletPoint, type Site } from '../site/site.ts';
import { fourWay } from '../taper/pattern.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import { catalogueOf, lowEdgeIn } from './catalogue.ts';
import { fourWayShape, type TaperShape } from './shape.ts';

/** Something that forbids a way out, and who or what could lift it. */
export interface Barred {
  why: string;
  relax: string;
}

/** One idea for a taper, before it is built and judged. */
export interface LayoutPlan {
  id: string;
  title: string;
  /** Why someone would choose it. */
  why: string;
  outlets: readonly Outlet[];
  /** Edges from which the taper rises. */
  edges: readonly SiteEdge[];
  /** Ids of edges that are opened for it. */
  newEdges: ReadonlySet<string>;
  /** Why it may not be built, known before any geometry, and what would allow it. */
  barred: Barred | null;
  /** Whose leave was never given and has to be asked first; absent where none has. */
  asks?: string;
  /** Two ideas at once. */
  pair?: boolean;
  /** Form of the taper about its outlets; four-way where none is named. */
  form?: TaperForm;
}

/** Outlets that take water, or would, as a new roof has them: a main drain is set to the new surface. */
export const workingOutlets = ({ roof }: Site): Outlet[] =>
  roof.outlets
    .filter((outlet) => outlet.working)
    .map((outlet) => (outlet.kind === 'drain' && outlet.role === 'primary' ? { ...outlet, inletIn: null } : outlet));

/** What a layout is called: outlets, form and turn, and how steep its boards are. */
export function layoutTitle({ title, form }: LayoutPlan, slopeInPerFt: number): string {
  const { shape, turnDeg } = form ?? { shape: fourWayShape, turnDeg: 0 };
  const turn = turnDeg === 0 ? '' : turnDeg === 90 ? ', across' : `, turned ${Math.round(turnDeg)}°`;
  return `${title}, ${shape.title(slopeInPerFt)}${turn}`;
}

/** A shape as it lies on a roof. */
export interface TaperForm {
  shape: TaperShape;
  /** Quarter turn against the building's own axis. */
  turnDeg: number;
}

/** Bearing of a direction in degrees, turned into one quarter: four-way patterns look the same after 90. */
function quarterTurnDeg([dx, dy]: Point): number {
  const deg = (Math.atan2(dx, dy) * 180) / Math.PI;
  const turned = ((deg % 90) + 90) % 90;
  const rounded = Math.round(turned * 1e6) / 1e6;
  return rounded === 90 ? 0 : rounded;
}

/** The building's own axis: its longest side. */
export function axisDeg(site: Site): number {
  const sides = site.outline.map((p, i) => [p, site.outline[(i + 1) % site.outline.length]] as const);
  const [a, b] = sides.reduce((x, y) => (distanceFt(y[0], y[1]) > distanceFt(x[0], x[1]) + 1e-9 ? y : x));
  return quarterTurnDeg(direction(a, b));
}

/** A side that is a good part of the way round is worth laying boards along. */
const LONG_SHARE = 0.15;

/** Turns against the building's own axis that run along some other long side. */
export function otherAxes(site: Site): number[] {
  const own = axisDeg(site);
  const sides = site.outline.map((p, i) => [p, site.outline[(i + 1) % site.outline.length]] as const);
  const round = sides.reduce((sum, [a, b]) => sum + distanceFt(a, b), 0);
  const turns = sides
    .filter(([a, b]) => distanceFt(a, b) > LONG_SHARE * round)
    .map(([a, b]) => (Math.round((((quarterTurnDeg(direction(a, b)) - own) % 90) + 90) * 1e6) / 1e6) % 90);
  return [...new Set(turns)].filter((turn) => turn > 0.5 && turn < 89.5);
}

/** Starts of the taper: every working primary outlet, at the low edge of a board or at its own floor if that is higher. */
export function startsOf(site: Site, plan: LayoutPlan, slopeInPerFt: number, baseIn: number): TaperOutlet[] {
  const turn = axisDeg(site);
  const { shape, turnDeg } = plan.form ?? { shape: fourWayShape, turnDeg: 0 };
  const low = baseIn + lowEdgeIn(catalogueOf(site.roof), slopeInPerFt);
  const lift = site.roof.existing.readOn === 'deck' ? 0 : site.given.removedIn;
  const points = plan.outlets
    .filter((outlet) => outlet.role === 'primary' && outlet.working)
    .map((outlet): TaperOutlet => {
      const edge = outlet.kind === 'scupper' ? site.edges.find((e) => e.edge.side === outlet.side) : undefined;
      const own = edge === undefined ? turn : quarterTurnDeg(direction(edge.from, edge.to));
      // A scupper's floor stays where it is; a drain is set to the new surface.
      const floorIn =
        outlet.kind === 'scupper' && outlet.inletIn !== null ? outlet.inletIn + lift - coverBoard.thicknessIn : low;
      return {
        id: outlet.id,
        kind: 'point',
        at: outletPoint(site.roof, outlet),
        levelIn: Math.max(low, floorIn),
        pattern: shape.patternAt(slopeInPerFt, own + turnDeg),
      };
    });
  const edges = plan.edges.map(
    (edge): TaperOutlet => ({
      id: edge.id,
      kind: 'edge',
      from: edge.from,
      to: edge.to,
      levelIn: low,
      pattern: fourWay(slopeInPerFt, quarterTurnDeg(direction(edge.from, edge.to))),
    }),
  );
  return [...points, ...edges];
}
