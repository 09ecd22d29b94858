import { joistFraming } from '../../../reference/energy.ts';
import { filmsR } from '../../../reference/insulation.ts';
import { belowRPerIn } from '../../../reference/vapor.ts';
import { inches } from '../../units/print.ts';
import type { Assumption, MoistureReport } from '../report/types.ts';
import type { Site } from '../site/site.ts';
import { isWood } from '../site/wood-deck.ts';

/** What interrupts the insulation below the deck. */
export interface Framing {
  /** Share of the area that is joists. */
  share: number;
  /** R through a joist, as deep as the insulation beside it. */
  woodR: number;
  spacingIn: number;
  spacingGiven: boolean;
  /** False under a deck that is not of wood: what carries it may be metal, which carries heat far better. */
  wood: boolean;
}

/** R per inch of what lies there; batts where its kind is not known. */
const rPerIn = (kind: MoistureReport['below']['kind']): number =>
  (belowRPerIn.find((row) => row.kind === kind) ?? belowRPerIn[0]).rPerIn;

/** The joists beside the insulation below the deck; null = nothing is known to lie there. */
export function framingOf({ roof, given }: Site, { kind, r }: MoistureReport['below']): Framing | null {
  if (r === null || r <= 0) return null;
  const { joists } = roof.deck;
  const thickIn = roof.insulation.below?.thicknessIn ?? r / rPerIn(kind);
  const spacingIn = joists?.spacingIn ?? joistFraming.usualSpacingIn;
  return {
    share: Math.min(1, joistFraming.widthIn / spacingIn),
    woodR: joistFraming.woodRPerIn * Math.min(thickIn, joists?.depthIn ?? thickIn),
    spacingIn,
    spacingGiven: joists?.spacingIn != null,
    wood: isWood(given.deckKind),
  };
}

/**
 * U of a roof whose insulation below the deck lies between joists: heat passes insulation and wood side by side. Deck and
 * ceiling board are not counted. Source: parallel paths, ASHRAE 90.1 A2.4; held by tests/published/energy-framing.test.ts
 */
export function roofU(aboveR: number, belowR: number, framing: Pick<Framing, 'share' | 'woodR'> | null): number {
  const { share, woodR } = framing ?? { share: 0, woodR: 0 };
  const outerR = aboveR + filmsR.value;
  return (1 - share) / (belowR + outerR) + share / (woodR + outerR);
}

/** The spacing of the joists where it was taken and not given. */
export const spacingAssumed = (framing: Framing | null): Assumption[] =>
  framing === null || framing.spacingGiven
    ? []
    : [
        {
          path: 'deck.joists.spacingIn',
          value: inches(framing.spacingIn),
          because: 'the usual spacing: heat passes through the joists between the insulation too',
          findOut: 'look from inside, or find two joists with a nail and measure from one to the other',
        },
      ];
