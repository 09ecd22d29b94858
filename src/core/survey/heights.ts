import { centroid } from '../geometry/vector.ts';
import type { Edge, Opening, OpeningKind, Outlet, Roof } from '../roof.ts';
import { onSide, sideLengthFt } from '../site/edges.ts';
import { outletPoint } from '../site/site.ts';
import type { HeightToTape } from './survey.ts';

const openings: Record<OpeningKind, string> = {
  door: 'door sill',
  window: 'window sill',
  'siding-bottom': 'bottom of the siding',
  weep: 'weep holes',
  louver: 'bottom of the louver',
};

type Unnumbered = Omit<HeightToTape, 'id'>;

function openingHeight(roof: Roof, edge: Edge, { kind, fromFt, toFt, heightIn }: Opening, path: string): Unnumbered {
  const start = fromFt ?? edge.fromFt ?? 0;
  const end = toFt ?? edge.toFt ?? sideLengthFt(roof.outline, edge.side);
  return {
    what: `${openings[kind]} above the roof in front of it`,
    at: onSide(roof.outline, edge.side, (start + end) / 2),
    path: `${path}.heightIn`,
    knownIn: heightIn,
  };
}

function inletHeight(roof: Roof, outlet: Outlet, path: string): Unnumbered {
  const what =
    outlet.kind === 'scupper'
      ? `bottom of the opening of scupper ${outlet.id} above the roof at it`
      : `where water enters drain ${outlet.id} against the roof round it (lower: minus)`;
  return { what, at: outletPoint(roof, outlet), path: `${path}.inletIn`, knownIn: outlet.inletIn };
}

/** Door sills, curbs and inlets: heights that a tape takes from the roof right under them. */
export function heightsToTape(roof: Roof): HeightToTape[] {
  const all: Unnumbered[] = [
    ...roof.edges.flatMap((edge, i) =>
      edge.openings.map((opening, k) => openingHeight(roof, edge, opening, `edges[${i}].openings[${k}]`)),
    ),
    ...roof.curbs.map(({ id, outline, heightIn }, i) => ({
      what: `top of the curb “${id}” above the roof, on its upper side`,
      at: centroid(outline),
      path: `curbs[${i}].heightIn`,
      knownIn: heightIn,
    })),
    ...roof.outlets
      .map((outlet, i) => ({ outlet, i }))
      .filter(({ outlet }) => outlet.status === 'existing')
      .map(({ outlet, i }) => inletHeight(roof, outlet, `outlets[${i}]`)),
  ];
  return all.map((height, i) => ({ id: `H${i + 1}`, ...height }));
}
