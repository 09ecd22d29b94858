import { coverBoard } from '../../../reference/insulation.ts';
import { winterBoard } from '../../../reference/vapor.ts';
import { inches, plainNumber, rValue } from '../../units/print.ts';
import { labelLaw } from '../layout/thermal.ts';
import type { Assumption, Layout, Lining, MoistureReport } from '../report/types.ts';
import type { BelowInsulationKind } from '../roof.ts';
import type { Site } from '../site/site.ts';
import { type KeptRoof, keptAssumed, keptRoof, keptWords } from './kept.ts';
import { layersOf, lined, type RoofLayer, rPerInOf } from './layers.ts';

/** What lies above and below the deck once the new roof is on, at its thinnest. */
export interface BuildUp {
  above: MoistureReport['above'];
  below: MoistureReport['below'] & { vented: 'yes' | 'no' | 'unknown' };
  /** What stays of the old roof; null = nothing. */
  kept: KeptRoof | null;
  layers: readonly RoofLayer[];
  assumed: readonly Assumption[];
}

/** Depth of a joist space where none is known: a 2 x 6. */
export const USUAL_JOIST_IN = 5.5;
/** Insulation above the deck: flat boards as given, else the thinnest place of the layout, else nothing. */
export function aboveDeck(site: Site, layout: Layout | null): MoistureReport['above'] {
  const { flatIn, flatRPerIn } = site.roof.insulation;
  if (flatIn !== null) {
    const labelR = flatRPerIn === null ? labelLaw.rIn(flatIn, flatIn) : flatIn * flatRPerIn;
    const winterR = flatIn * Math.min(winterBoard.rPerIn, flatRPerIn ?? winterBoard.rPerIn);
    return { winterR, labelR, what: `${inches(flatIn)} of flat board` };
  }
  if (layout === null) return { winterR: 0, labelR: 0, what: 'nothing above the deck' };
  const basis = (id: string): number => layout.thermal?.bases.find((one) => one.id === id)?.thinnestR ?? 0;
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

/** What is tried besides what is planned. */
export interface Change {
  /** Flat board above the deck, in, besides what the layout has. */
  moreIn?: number;
  /** What is put below the deck in place of what lies there. */
  below?: { kind: 'batts' | 'closed-cell'; r: number };
  /** All of the old roof comes off. */
  tornOff?: boolean;
}

const putBelow = ({ kind, r }: NonNullable<Change['below']>): BuildUp['below'] => ({
  kind: r > 0 ? kind : 'none',
  r,
  what: r > 0 ? `${rValue(r)} of ${kindWords[kind]}` : kindWords.none,
  vented: 'no',
});

/** The roof as layers, at the thinnest place of what goes above the deck. */
export function buildUpOf(site: Site, layout: Layout | null, change: Change = {}): BuildUp {
  const planned = aboveDeck(site, layout);
  const { moreIn = 0, tornOff = false } = change;
  const kept = tornOff ? null : keptRoof(site);
  const found = belowDeck(site);
  const below = change.below === undefined ? found.below : putBelow(change.below);
  const boardsR = planned.winterR + moreIn * winterBoard.rPerIn;
  const above = {
    winterR: boardsR + (kept?.boardsR ?? 0),
    labelR: planned.labelR + labelLaw.rIn(moreIn, moreIn),
    what: kept === null ? planned.what : `${planned.what}, over ${keptWords(kept)}`,
  };
  const layers = layersOf(site, boardsR, kept, below);
  return { above, below, kept, layers, assumed: [...found.assumed, ...keptAssumed(kept)] };
}

/** The same roof lined. */
export const linedWith = (built: BuildUp, lining: Lining): BuildUp => ({
  ...built,
  layers: lined(built.layers, lining),
});

/** R in winter of so much board by its label. */
const winterOf = (labelR: number): number => (labelR * winterBoard.rPerIn) / labelLaw.rIn(1, 1);

/** The bare deck with so much label R above it and such insulation below, as a way to place the insulation. */
export function placedAs(site: Site, aboveR: number, kind: BelowInsulationKind, belowR: number): BuildUp {
  const above = { winterR: winterOf(aboveR), labelR: aboveR, what: `${rValue(aboveR)} above the deck` };
  const below = {
    kind: belowR > 0 ? kind : ('none' as const),
    r: belowR,
    what: kindWords[kind],
    vented: 'no' as const,
  };
  return { above, below, kept: null, layers: layersOf(site, above.winterR, null, below), assumed: [] };
}
