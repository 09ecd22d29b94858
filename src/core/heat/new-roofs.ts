import { coverBoard, insulationBases } from '../../../reference/insulation.ts';
import { membraneHeat } from '../../../reference/membranes/heat.ts';
import { type MembraneId, rowFor } from '../membrane/options.ts';
import type { Layout } from '../report/types.ts';
import type { NamedRoof } from './measured.ts';
import { newLayers, type RoofFacts } from './roof-layers.ts';

const rPerInOf = (id: 'service-warm' | 'service-cold'): number =>
  insulationBases.find((basis) => basis.id === id)!.rPerIn!;

/** R per inch of foam in service, hot and cold. */
export const foamR = { summer: rPerInOf('service-warm'), winter: rPerInOf('service-cold') } as const;

/** Even thickness that lets through as much as the whole taper: thinner than its mean. */
export function evenFoamIn(layout: Layout): number {
  const basis = layout.thermal?.bases.find(({ id }) => id === 'service-warm');
  if (basis === undefined) return layout.meanThicknessIn;
  return Math.max(0, (basis.effectiveR - coverBoard.r) / foamR.summer);
}

/** How a membrane takes the sun once it has aged. */
export const agedSurface = (id: MembraneId): { reflectance: number; emittance: number } => {
  const { agedReflectance, emittance } = rowFor(membraneHeat, id);
  return { reflectance: agedReflectance, emittance };
};

/** The new roof under one membrane. */
export function newRoof(
  facts: RoofFacts,
  membrane: MembraneId,
  foamIn: number,
  { id, title }: { id: string; title: string },
  rPerIn: number = foamR.summer,
): NamedRoof {
  return {
    id,
    title,
    membrane,
    foamIn,
    layers: newLayers(facts, membrane, foamIn, rPerIn),
    surface: agedSurface(membrane),
  };
}
