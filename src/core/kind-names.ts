import type { Below, CoveringKind, DeckKind, PipeKind, TaperRuleId } from './roof.ts';

/** What a kind of the roof file is called by people; forms, papers and findings take it from here and print no id. */
type Names<T extends string> = Readonly<Record<T, string>>;

export const deckNames: Names<DeckKind> = {
  plywood: 'plywood',
  osb: 'oriented strand board',
  plank: 'plank',
  'tongue-and-groove': 'tongue and groove boards',
  steel: 'steel deck',
  concrete: 'structural concrete',
  gypsum: 'poured gypsum',
  'cement-fiber': 'cement fiber plank',
  'lightweight-concrete': 'lightweight insulating concrete',
};

export const coveringNames: Names<CoveringKind> = {
  'sbs-granule': 'granule-surfaced SBS modified bitumen',
  app: 'APP modified bitumen',
  'bur-gravel': 'built-up roof with gravel',
  'bur-smooth': 'smooth built-up roof',
  tpo: 'TPO',
  pvc: 'PVC',
  epdm: 'EPDM',
  'roll-roofing': 'roll roofing',
  coating: 'coating',
  'spray-foam': 'spray foam',
  metal: 'metal',
  other: 'another covering',
};

export const belowNames: Names<Below> = {
  'living-exposed-deck': 'living space, the deck is the ceiling',
  'living-ceiling': 'living space with a ceiling below the deck',
  attic: 'attic',
  unheated: 'unheated space',
  outdoors: 'open air',
};

export const pipeNames: Names<PipeKind> = {
  plumbing: 'plumbing vent',
  'gas-vent': 'gas vent',
  flue: 'flue',
  exhaust: 'exhaust',
  'air-inlet': 'air inlet',
  conduit: 'conduit',
};

export const taperRuleNames: Names<TaperRuleId> = {
  'one-inch': 'the full R where the taper has risen 1 in',
  'average-u': 'the U averaged over the area',
};
