import { belowNames, coveringNames, deckNames } from '../kind-names.ts';
import type { Assumption } from '../report/types.ts';
import type { Below, CoveringKind, DeckKind, Roof } from '../roof.ts';
import { stringAssumptions, usualError } from './instruments.ts';

/** What the core works with where the roof file is silent. Every value used is listed, none is used in silence. */
export interface Given {
  buildUpIn: number;
  removedIn: number;
  faceInPerFt: number;
  valleyInPerFt: number;
  strict: boolean;
  deckKind: DeckKind;
  deckThicknessIn: number;
  below: Below;
  covering: CoveringKind;
  layers: number;
  heightFt: number;
  readingErrorIn: number;
}

/** Valley slopes under this drain too slowly to be offered at all. */
export const LEAST_SLOW_VALLEY_IN_PER_FT = 1 / 16;

/** Every default of the roof file, with why and how to do better. */
export function assume(roof: Roof): { given: Given; assumed: Assumption[] } {
  const assumed: Assumption[] = [];
  function or<T extends string | number | boolean>(
    value: T | null,
    otherwise: T,
    path: string,
    because: string,
    findOut: string | null = null,
    words: string | ((otherwise: T) => string) = '',
  ): T {
    if (value !== null) return value;
    const said = typeof words === 'string' ? `${otherwise}${words}` : words(otherwise);
    assumed.push({ path, value: said, because, findOut });
    return otherwise;
  }
  function readingErrorIn(): number {
    const { surface } = roof.existing;
    if (surface.kind !== 'readings') return 0;
    const { errorIn, because } = usualError(surface);
    return or(surface.errorIn, errorIn, 'existing.errorIn', because, 'read one spot three times', ' in');
  }
  const onDeck = roof.existing.readOn === 'deck';
  const buildUpIn = onDeck
    ? 0
    : or(
        roof.existing.buildUpIn,
        1.5,
        'existing.buildUpIn',
        'the thickness of the old roof was not given; the new heights start from the deck under it',
        'cut a core at a low and at a high spot',
        ' in',
      );
  const given: Given = {
    buildUpIn,
    removedIn: or(roof.removedIn, buildUpIn, 'removedIn', 'everything above the deck is torn off', null, ' in'),
    faceInPerFt: or(
      roof.slopeRule.faceInPerFt,
      0.25,
      'slopeRule.faceInPerFt',
      'the least slope of most codes',
      null,
      ' in per ft',
    ),
    valleyInPerFt: or(
      roof.slopeRule.valleyInPerFt,
      0.125,
      'slopeRule.valleyInPerFt',
      'valleys of 1/8 in per ft are common practice; codes speak of the roof and not of its valleys',
      'ask the building office how it reads valleys',
      ' in per ft',
    ),
    strict: or(
      roof.slopeRule.strict,
      false,
      'slopeRule.strict',
      'valleys are graded apart from planes',
      null,
      (strict) => (strict ? 'valleys as steep as planes' : 'valleys may be flatter than planes'),
    ),
    deckKind: or(
      roof.deck.kind,
      'plywood',
      'deck.kind',
      'the deck was not named',
      'look from inside or lift an edge',
      (kind) => deckNames[kind],
    ),
    deckThicknessIn: or(
      roof.deck.thicknessIn,
      0.5,
      'deck.thicknessIn',
      'the deck was not measured',
      'measure at a vent or at the eave',
      ' in',
    ),
    below: or(
      roof.building.below,
      'living-exposed-deck',
      'building.below',
      'not known, so the careful case: a room whose ceiling is the deck',
      'look from inside',
      (below) => belowNames[below],
    ),
    covering: or(
      roof.covering.kind,
      'sbs-granule',
      'covering.kind',
      'the old covering was not named',
      'a photo from a window or a pole',
      (kind) => coveringNames[kind],
    ),
    layers: or(roof.covering.layers, 1, 'covering.layers', 'the layers were not counted', 'cut a core'),
    heightFt: or(roof.building.heightFt, 10, 'building.heightFt', 'one storey', 'a tape at the fascia', ' ft'),
    readingErrorIn: readingErrorIn(),
  };
  return { given, assumed: [...assumed, ...stringAssumptions(roof)] };
}
