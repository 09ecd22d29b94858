import { belowRPerIn, type LayerName, permeances, retarderClasses, winterBoard } from '../../../reference/vapor.ts';
import { R_IP } from '../heat/degrees.ts';
import type { Lining, MoistureReport, RetarderKind } from '../report/types.ts';
import type { BelowInsulationKind, DeckKind } from '../roof.ts';
import type { Site } from '../site/site.ts';
import { isWood } from '../site/wood-deck.ts';
import { stillAirOf, type VaporLayer } from './glaser.ts';
import type { KeptRoof } from './kept.ts';

/** One layer of the roof, outside first. */
export interface RoofLayer {
  /** Its inner face in words. */
  face: string;
  r: number;
  perm: number;
  /** Slices that the balance cuts it in. */
  slices: number;
}

const SLICE_R = 4;
const DECK = 'underside of the deck';
const FOAM = 'room side of the foam';

export const permOf = (layer: LayerName, thicknessIn = 1): number => {
  const row = permeances.find((one) => one.layer === layer)!;
  return row.perInch ? row.perm / Math.max(thicknessIn, 0.1) : row.perm;
};

export const rPerInOf = (kind: Exclude<BelowInsulationKind, 'none'>): number =>
  belowRPerIn.find((row) => row.kind === kind)!.rPerIn;

/** Foam that stops air, against the underside of the deck. */
export const isFoam = (kind: MoistureReport['below']['kind']): kind is 'closed-cell' | 'open-cell' =>
  kind === 'closed-cell' || kind === 'open-cell';

const deckLayer = (kind: DeckKind): LayerName =>
  kind === 'plywood' ? 'plywood' : kind === 'osb' ? 'osb' : 'open-deck';

/** R of the deck itself by inch: wood; other decks give next to nothing. */
const DECK_R_PER_IN = 1;
const THIN_R = 0.1;

const sliced = (r: number): number => Math.max(1, Math.ceil(r / SLICE_R));

function oldLayers({ covering, boardsIn, boardsR }: KeptRoof): RoofLayer[] {
  return [
    ...(covering ? [{ face: 'under the old covering', r: THIN_R, perm: permOf('covering'), slices: 1 }] : []),
    ...(boardsR > 0
      ? [{ face: 'top of the deck', r: boardsR, perm: permOf('old-boards', boardsIn), slices: sliced(boardsR) }]
      : []),
  ];
}

/** @param boardsR winter R of the new boards */
export function layersOf(
  { given }: Site,
  boardsR: number,
  kept: KeptRoof | null,
  below: Pick<MoistureReport['below'], 'kind' | 'r'>,
): RoofLayer[] {
  const { deckKind, deckThicknessIn } = given;
  const belowR = below.r ?? 0;
  const out: RoofLayer[] = [{ face: 'under the covering', r: THIN_R, perm: permOf('covering'), slices: 1 }];
  if (boardsR > 0) {
    const face = kept === null ? 'top of the deck' : 'under the new boards';
    out.push({ face, r: boardsR, perm: permOf('polyiso', boardsR / winterBoard.rPerIn), slices: sliced(boardsR) });
  }
  if (kept !== null) out.push(...oldLayers(kept));
  const deckR = isWood(deckKind) ? deckThicknessIn * DECK_R_PER_IN : THIN_R;
  out.push({ face: DECK, r: deckR, perm: permOf(deckLayer(deckKind)), slices: 1 });
  if (belowR > 0 && below.kind !== null && below.kind !== 'none') {
    const perm = permOf(below.kind, belowR / rPerInOf(below.kind));
    out.push({ face: isFoam(below.kind) ? FOAM : 'back of the ceiling', r: belowR, perm, slices: sliced(belowR) });
  }
  if (given.below === 'living-ceiling')
    out.push({ face: 'ceiling', r: 0.45, perm: permOf('painted-gypsum'), slices: 1 });
  return out;
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

/** A coating is of class II: it may let through as much as that class allows. */
const COAT_PERM = retarderClasses.find(({ name }) => name === 'II')!.mostPerm;

const sheetOf = (face: string, perm: number): RoofLayer => ({ face, r: 0.01, perm, slices: 1 });

/** The same roof with a vapor retarder under the new boards, and its foam coated on the room side. */
export function lined(layers: readonly RoofLayer[], { retarder, coat }: Lining): RoofLayer[] {
  const out = [...layers];
  if (coat) out.splice(out.findIndex(({ face }) => face === FOAM) + 1, 0, sheetOf('coating of the foam', COAT_PERM));
  if (retarder !== 'none') {
    const under = out.findIndex(({ face }) => face === 'under the new boards');
    const at = under < 0 ? out.findIndex(({ face }) => face === DECK) : under + 1;
    out.splice(at, 0, sheetOf('vapor retarder', retarderPerm(retarder)));
  }
  return out;
}

/** Permeance of the foam below the deck with its coating, perms. */
export function foamPerm(layers: readonly RoofLayer[]): number {
  const coats = layers.filter(({ face }) => face === FOAM || face === 'coating of the foam');
  return 1 / coats.reduce((sum, { perm }) => sum + 1 / perm, 0);
}
