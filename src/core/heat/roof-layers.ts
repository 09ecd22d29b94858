import {
  ceilingUnderDeck,
  foamStock,
  type MaterialId,
  newCoveringIn,
  type OldSurface,
  oldBoards,
  oldSurfaces,
  thermalMaterials,
} from '../../../reference/heat-layers.ts';
import { coverBoard } from '../../../reference/insulation.ts';
import { membraneOptions } from '../../../reference/membranes/options.ts';
import { belowRPerIn } from '../../../reference/vapor.ts';
import type { DeckKind, Roof } from '../roof.ts';
import type { Given } from '../site/assumptions.ts';
import { keptIn } from '../site/planned-work.ts';
import { meters, R_IP } from './degrees.ts';
import type { Layer } from './slab.ts';

/** What the layers of a roof follow from. */
export interface RoofFacts {
  roof: Roof;
  given: Given;
}

/** Lb/ft3 of one kg/m3. */
const KG_PER_M3 = 16.0185;
const AIR = { densityKgPerM3: 1.2, heatJPerKgK: 1006 };

function layerOf(id: MaterialId, thicknessIn: number): Layer {
  const { name, kWPerMK, densityKgPerM3, heatJPerKgK } = thermalMaterials.find((row) => row.id === id)!;
  return { name, thicknessM: meters(thicknessIn), kWPerMK, densityKgPerM3, heatJPerKgK };
}

/** A layer whose R is known rather than its conductivity. */
const layerOfR = (
  name: string,
  thicknessIn: number,
  r: number,
  { densityKgPerM3, heatJPerKgK }: { densityKgPerM3: number; heatJPerKgK: number },
): Layer => ({
  name,
  thicknessM: meters(thicknessIn),
  kWPerMK: (meters(thicknessIn) * R_IP) / r,
  densityKgPerM3,
  heatJPerKgK,
});

const foam = (thicknessIn: number, rPerIn: number): Layer =>
  layerOfR('foam boards', thicknessIn, thicknessIn * rPerIn, foamStock);

const deckMaterial: Record<DeckKind, MaterialId> = {
  plywood: 'plywood',
  osb: 'osb',
  plank: 'plank',
  'tongue-and-groove': 'plank',
  steel: 'steel',
  concrete: 'concrete',
  gypsum: 'gypsum',
  'cement-fiber': 'cement-fiber',
  'lightweight-concrete': 'lightweight-concrete',
};

/** Sheet of a steel deck; its ribs are as deep as the deck's thickness. */
const STEEL_IN = 0.03;

/** R between deck and ceiling: what lies there, else the air alone. */
function gapR({ below }: Roof['insulation']): number {
  const perIn = belowRPerIn.find(({ kind }) => kind === below?.kind)?.rPerIn ?? 0;
  return ceilingUnderDeck.airR + (below?.r ?? perIn * (below?.thicknessIn ?? 0));
}

/** Depth that stands for the gap: it holds next to no heat, so only its R counts. */
const GAP_IN = 3.5;

/** Deck and what lies under it, outside first. */
export function deckAndBelow({ roof, given }: RoofFacts): Layer[] {
  const deckIn = given.deckKind === 'steel' ? STEEL_IN : given.deckThicknessIn;
  const deck = layerOf(deckMaterial[given.deckKind], deckIn);
  if (given.below !== 'living-ceiling' && given.below !== 'attic') return [deck];
  return [
    deck,
    layerOfR('air and insulation under the deck', GAP_IN, gapR(roof.insulation), AIR),
    layerOf('gypsum', ceilingUnderDeck.boardIn),
  ];
}

export const oldSurfaceOf = ({ given }: RoofFacts): OldSurface =>
  oldSurfaces.find(({ covering }) => covering === given.covering)!;

/** Thickness of the old covering and of what lies between it and the deck. */
export function oldBuildUp(facts: RoofFacts): { coveringIn: number; boardsIn: number } {
  const { roof, given } = facts;
  const laidIn = oldSurfaceOf(facts).thicknessIn * given.layers;
  const wholeIn = roof.existing.readOn === 'deck' ? (roof.existing.buildUpIn ?? laidIn) : given.buildUpIn;
  const coveringIn = wholeIn > 0 ? Math.min(laidIn, wholeIn) : laidIn;
  return { coveringIn, boardsIn: Math.max(0, wholeIn - coveringIn) };
}

const SERVICE_R_PER_IN = 5.6;

/** R per inch of what lies under the old covering: an old foam roof is foam, else nobody saw it. */
export const oldBoardsRPerIn = ({ covering }: Given): number =>
  covering === 'spray-foam' ? SERVICE_R_PER_IN : oldBoards.rPerIn;

function boards({ given }: RoofFacts, thicknessIn: number): Layer[] {
  if (thicknessIn <= 0) return [];
  if (given.covering === 'spray-foam') return [foam(thicknessIn, SERVICE_R_PER_IN)];
  return [layerOfR('old boards', thicknessIn, thicknessIn * oldBoards.rPerIn, oldBoards)];
}

/** The old roof from its covering to the room. */
export function oldLayers(facts: RoofFacts): Layer[] {
  const { coveringIn, boardsIn } = oldBuildUp(facts);
  return [layerOf(oldSurfaceOf(facts).material, coveringIn), ...boards(facts, boardsIn), ...deckAndBelow(facts)];
}

/** What stays of the old build-up under the new one; it is torn off from the top. */
export function keptBuildUp(facts: RoofFacts): { coveringIn: number; boardsIn: number } {
  const { boardsIn } = oldBuildUp(facts);
  const oldIn = keptIn(facts.given);
  return { coveringIn: Math.max(0, oldIn - boardsIn), boardsIn: Math.min(oldIn, boardsIn) };
}

function keptLayers(facts: RoofFacts): Layer[] {
  const { coveringIn, boardsIn } = keptBuildUp(facts);
  return [...(coveringIn > 0 ? [layerOf(oldSurfaceOf(facts).material, coveringIn)] : []), ...boards(facts, boardsIn)];
}

/** The new roof under one membrane, foam of one thickness, from the membrane to the room. */
export function newLayers(facts: RoofFacts, membrane: string, foamIn: number, rPerIn: number): Layer[] {
  const traits: readonly string[] = membraneOptions.find(({ id }) => id === membrane)?.traits ?? [];
  const asphaltic = traits.includes('asphaltic');
  const psfPerIn = coverBoard.psf / coverBoard.thicknessIn;
  return [
    layerOf(asphaltic ? 'bitumen' : 'sheet', asphaltic ? newCoveringIn.asphaltic : newCoveringIn.sheet),
    layerOfR('cover board', coverBoard.thicknessIn, coverBoard.r, {
      densityKgPerM3: psfPerIn * 12 * KG_PER_M3,
      heatJPerKgK: foamStock.heatJPerKgK,
    }),
    ...(foamIn > 0 ? [foam(foamIn, rPerIn)] : []),
    ...keptLayers(facts),
    ...deckAndBelow(facts),
  ];
}
