import { area } from '../../units/print.ts';
import type { Assessment, Layout } from './types.ts';

/** What an outlet or edge is called; '' = water that reaches none. */
export function outletName({ plan, existing }: Assessment, layout: Layout | null, id: string): string {
  if (id === '') return 'no way out';
  const outlets = [...(layout?.outlets ?? []), ...existing.outlets];
  return outlets.find((outlet) => outlet.id === id)?.label ?? plan.edges.find((edge) => edge.id === id)?.label ?? id;
}

const fromWords = { wall: 'share of the wall', shingles: 'steep roof' } as const;

/** What comes onto the section from beyond it, in sentences. */
function addedWords({ edges, inflows }: Assessment['plan']): string[] {
  return [
    ...edges.flatMap(({ label, sheds = [] }) =>
      sheds.map(({ from, areaSqFt }) => `${area(areaSqFt)} of ${fromWords[from]} shed over the ${label}.`),
    ),
    ...inflows.map(({ kind, fromSqFt }) =>
      kind === 'valley'
        ? `The valley of a shingled roof dumps the water of ${area(fromSqFt)} on one spot.`
        : `A ${kind} lets down the water of ${area(fromSqFt)}.`,
    ),
  ];
}

/** The map in words: ground of every outlet, then the water from beyond. */
export function waterMapWords(assessment: Assessment, layout: Layout | null): string[] {
  const areas = (layout ?? assessment.existing).areas;
  const sums = new Map<string, number>();
  for (const { outlet, areaSqFt } of areas) sums.set(outlet, (sums.get(outlet) ?? 0) + areaSqFt);
  return [
    ...[...sums].map(([id, areaSqFt]) =>
      id === ''
        ? `${area(areaSqFt)} have no way out.`
        : `${area(areaSqFt)} drain to ${outletName(assessment, layout, id)}.`,
    ),
    ...addedWords(assessment.plan),
  ];
}

export type MapSign = 'shed' | 'downspout' | 'valley';

/** What the signs of the map mean; only those that are on it. */
export function mapKey({ edges, inflows }: Assessment['plan']): { sign: MapSign; words: string }[] {
  const has = (kind: string): boolean => inflows.some((inflow) => inflow.kind === kind);
  const all: [MapSign, boolean, string][] = [
    ['shed', edges.some(({ sheds = [] }) => sheds.length > 0), 'water from a wall or a steep roof above'],
    ['downspout', has('downspout'), 'downspout that ends on the section'],
    [
      'valley',
      has('valley'),
      'concentrated flow: a shingled valley dumps here; protect the covering, and keep the way to the outlet free',
    ],
  ];
  return all.flatMap(([sign, shown, words]) => (shown ? [{ sign, words }] : []));
}
