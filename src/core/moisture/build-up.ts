import { coverBoard } from '../../../reference/insulation.ts';
import { belowRPerIn, type LayerName, permeances, winterBoard } from '../../../reference/vapor.ts';
import { inches, plainNumber, rValue } from '../../units/print.ts';
import { R_IP } from '../heat/degrees.ts';
import { labelLaw } from '../layout/thermal.ts';
import type { Assumption, Layout, MoistureReport, RetarderKind } from '../report/types.ts';
import type { BelowInsulationKind, DeckKind } from '../roof.ts';
import type { Site } from '../site/site.ts';
import { stillAirOf, type VaporLayer } from './glaser.ts';

/** One layer of the roof, outside first. */
export interface RoofLayer {
  /** Its inner face in words. */
  face: string;
  r: number;
  perm: number;
  /** Slices that the balance cuts it in. */
  slices: number;
}

/** What lies above and below the deck once the new roof is on, at its thinnest. */
export interface BuildUp {
  above: MoistureReport['above'];
  below: MoistureReport['below'] & { vented: 'yes' | 'no' | 'unknown' };
  layers: readonly RoofLayer[];
  assumed: readonly Assumption[];
}

/** Depth of a joist space where none is known: a 2 x 6. */
export const USUAL_JOIST_IN = 5.5;
const SLICE_R = 4;

export const permOf = (layer: LayerName, thicknessIn = 1): number => {
  const row = permeances.find((one) => one.layer === layer)!;
  return row.perInch ? row.perm / Math.max(thicknessIn, 0.1) : row.perm;
};

export const rPerInOf = (kind: Exclude<BelowInsulationKind, 'none'>): number =>
  belowRPerIn.find((row) => row.kind === kind)!.rPerIn;

/** Insulation above the deck: flat boards as given, else the thinnest place of the layout, else nothing. */
export function aboveDeck(site: Site, layout: Layout | null): MoistureReport['above'] {
  const { flatIn, flatRPerIn } = site.roof.insulation;
  if (flatIn !== null) {
    const labelR = flatRPerIn === null ? labelLaw.rIn(flatIn, flatIn) : flatIn * flatRPerIn;
    const winterR = flatIn * Math.min(winterBoard.rPerIn, flatRPerIn ?? winterBoard.rPerIn);
    return { winterR, labelR, what: `${inches(flatIn)} of flat board` };
  }
  const basis = (id: string) => layout?.thermal?.bases.find((one) => one.id === id)?.thinnestR ?? 0;
  if (layout === null) return { winterR: 0, labelR: 0, what: 'nothing above the deck' };
  return {
    winterR: basis('service-cold'),
    labelR: Math.max(0, basis('label') - coverBoard.r),
    what: `${inches(layout.leastThicknessIn)} of board at the thinnest, with its cover board`,
  };
}

const kindWords: Readonly<Record<BelowInsulationKind, string>> = {
  none: 'nothing below the deck',
  batts: 'batts',
  'open-cell': 'open-cell foam',
  'closed-cell': 'closed-cell foam',
};

/** Insulation below the deck as given; its R from its thickness where no R is known. */
export function belowDeck(site: Site): { below: BuildUp['below']; assumed: Assumption[] } {
  const { insulation, deck } = site.roof;
  const given = insulation.below;
  const vented = given?.vented ?? 'unknown';
  const exposed = site.given.below === 'living-exposed-deck';
  const kind = given?.kind ?? (exposed ? 'none' : null);
  if (kind === null)
    return { below: { kind, r: given?.r ?? null, what: 'what lies below the deck is not known', vented }, assumed: [] };
  if (kind === 'none') return { below: { kind, r: 0, what: kindWords.none, vented }, assumed: [] };
  if (given?.r != null)
    return { below: { kind, r: given.r, what: `${rValue(given.r)} of ${kindWords[kind]}`, vented }, assumed: [] };
  const thicknessIn = given?.thicknessIn ?? deck.joists?.depthIn ?? USUAL_JOIST_IN;
  const r = thicknessIn * rPerInOf(kind);
  const assumed: Assumption[] = [
    {
      path: 'insulation.below.r',
      value: rValue(r),
      because: `${inches(thicknessIn)} of ${kindWords[kind]} at R-${plainNumber(rPerInOf(kind), 1)} per inch, common practice`,
      findOut: 'the label on the insulation, or who put it in',
    },
  ];
  if (given?.thicknessIn == null)
    assumed.push({
      path: 'insulation.below.thicknessIn',
      value: inches(thicknessIn),
      because: deck.joists?.depthIn == null ? 'joists of 2 x 6, filled' : 'the joist space is taken as filled',
      findOut: 'take down a ceiling lamp and look',
    });
  return { below: { kind, r, what: `${rValue(r)} of ${kindWords[kind]}`, vented }, assumed };
}

const deckLayer = (kind: DeckKind): LayerName =>
  kind === 'plywood' ? 'plywood' : kind === 'osb' ? 'osb' : 'open-deck';

/** R of the deck itself by inch: wood; other decks give next to nothing. */
const DECK_R_PER_IN = 1;
const woods: readonly DeckKind[] = ['plywood', 'osb', 'plank', 'tongue-and-groove'];

export const isWood = (deckKind: DeckKind): boolean => woods.includes(deckKind);

const sliced = (r: number): number => Math.max(1, Math.ceil(r / SLICE_R));

function layersOf(site: Site, above: BuildUp['above'], below: BuildUp['below']): RoofLayer[] {
  const { deckKind, deckThicknessIn } = site.given;
  const boardsR = above.winterR;
  const boardsIn = boardsR / winterBoard.rPerIn;
  const ceiling = site.given.below === 'living-ceiling';
  const belowR = below.r ?? 0;
  const out: RoofLayer[] = [{ face: 'under the covering', r: 0.1, perm: permOf('covering'), slices: 1 }];
  if (boardsR > 0)
    out.push({ face: 'top of the deck', r: boardsR, perm: permOf('polyiso', boardsIn), slices: sliced(boardsR) });
  const deckR = isWood(deckKind) ? deckThicknessIn * DECK_R_PER_IN : 0.1;
  out.push({ face: 'underside of the deck', r: deckR, perm: permOf(deckLayer(deckKind)), slices: 1 });
  if (belowR > 0 && below.kind !== null && below.kind !== 'none') {
    const perm = permOf(below.kind, belowR / rPerInOf(below.kind));
    out.push({ face: 'back of the ceiling', r: belowR, perm, slices: sliced(belowR) });
  }
  if (ceiling) out.push({ face: 'ceiling', r: 0.45, perm: permOf('painted-gypsum'), slices: 1 });
  return out;
}

/**
 * The roof as layers, at the thinnest place of what goes above the deck.
 * @param moreIn flat board under it all besides what the layout has
 */
export function buildUpOf(site: Site, layout: Layout | null, moreIn = 0): BuildUp {
  const planned = aboveDeck(site, layout);
  const moreR = moreIn * winterBoard.rPerIn;
  const above = { ...planned, winterR: planned.winterR + moreR, labelR: planned.labelR + moreR };
  const { below, assumed } = belowDeck(site);
  return { above, below, layers: layersOf(site, above, below), assumed };
}

/** The roof with so much R above the deck and so much of batts below it, as a way to place the insulation. */
export function placedAs(site: Site, aboveR: number, battsR: number): BuildUp {
  const above = { winterR: aboveR, labelR: aboveR, what: `${rValue(aboveR)} above the deck` };
  const kind = battsR > 0 ? ('batts' as const) : ('none' as const);
  const below = { kind, r: battsR, what: kindWords[kind], vented: 'no' as const };
  return { above, below, layers: layersOf(site, above, below), assumed: [] };
}

/** Layers for the vapor calculation, m2 K/W and m of still air, thick ones cut in slices. */
export const vaporLayers = (layers: readonly RoofLayer[], slice = true): VaporLayer[] =>
  layers.flatMap(({ r, perm, slices }) => {
    const n = slice ? slices : 1;
    return Array.from({ length: n }, () => ({ r: r / n / R_IP, sdM: stillAirOf(perm) / n }));
  });

/** Permeance of the retarders, perms. */
export const retarderPerm = (kind: Exclude<RetarderKind, 'none'>): number =>
  permOf(kind === 'foil' ? 'foil-retarder' : 'retarder');

/** The same roof with a vapor retarder on the deck. */
export function withRetarder(layers: readonly RoofLayer[], kind: RetarderKind = 'sheet'): RoofLayer[] {
  if (kind === 'none') return [...layers];
  const at = layers.findIndex(({ face }) => face === 'underside of the deck');
  const sheet = { face: 'vapor retarder', r: 0.01, perm: retarderPerm(kind), slices: 1 };
  return [...layers.slice(0, at), sheet, ...layers.slice(at)];
}
