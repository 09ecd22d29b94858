import type { Cited } from './sources.ts';

/** What may be done with a roof, from the least to the most. */
export const scopeWays = [
  { way: 'repair', title: 'Repair where it is' },
  { way: 'coat', title: 'Coat what is there' },
  { way: 're-cover', title: 'New roof over the old one' },
  { way: 'tear-off', title: 'Tear off to the deck' },
] as const;

export type ScopeWayId = (typeof scopeWays)[number]['way'];

export interface ScopeRule extends Cited {
  text: string;
}

const practice = { source: 'practice', grade: 'practice' } as const;

/**
 * Reasons that decide what is done with a roof. The bars to a re-cover are in the codes (see recoverSections); the rest is
 * common practice, and nobody disagrees with it in print: a coating or a patch moves no water, and looks alone never ask
 * for a tear-off.
 */
export const scopeRules = {
  'pond-not-patched': {
    text: 'A patch moves no water: where it stands it goes on standing.',
    ...practice,
    at: 'repair of roofs that pond',
  },
  'roof-off': {
    text: 'The old roof is off: nothing of it is left to mend, to coat or to cover.',
    ...practice,
    at: 'state of the work',
  },
  'pond-not-known': {
    text: 'Nobody knows whether water stays on it for 48 hours.',
    ...practice,
    at: 'roofs that were not measured',
  },
  'seen-dry': {
    text: 'It does not pond in the sense of this decision: water that is gone in time needs no cure.',
    ...practice,
    at: 'look after rain',
  },
  'pond-not-coated': {
    text: 'A coating moves no water: the pond stays, with its weight. Acrylic comes off under it, and other coats are taken on standing water only with the maker’s written word.',
    ...practice,
    at: 'coating of roofs that pond',
  },
  'pond-needs-fall': {
    text: 'A new roof over the old one ends the pond only with a taper.',
    ...practice,
    at: 'recover of roofs that pond',
  },
  'past-service': {
    text: 'A bituminous roof usually lasts about 25 years; at 30 and more with bare reinforcement it is past it.',
    ...practice,
    at: 'service life of bituminous roofs',
  },
  'old-not-past': {
    text: 'It is older than such a roof usually lasts. Age alone asks for a closer look, not for a tear-off.',
    ...practice,
    at: 'service life',
  },
  'wet-removed': {
    text: 'Wet insulation is taken out, never covered: even through a painted wood deck it dries in summers, not in weeks.',
    source: 'arithmetic',
    at: 'vapor through 5/8 in plywood and paint, 0.26 lb per sq ft in a summer of 90 days',
    grade: 'computed',
  },
  'wet-cut-out': {
    text: 'The wet part is cut out 1 to 2 ft past its line and made good first.',
    ...practice,
    at: 'partial replacement',
  },
  'wet-over-quarter': {
    text: 'More than a quarter of the area is wet: some places then ask for all of it to be replaced, and patching no longer pays.',
    source: 'recover-article',
    at: 'local rules over 25 % of the area',
    grade: 'found',
  },
  'moisture-not-known': {
    text: 'Nobody has looked whether the insulation is dry.',
    ...practice,
    at: 'moisture before anything is covered',
  },
  'rot-and-leak': {
    text: 'The deck was opened or probed and has gone soft, and water has come through beside it: all of it has to be seen, and that is a tear-off.',
    ...practice,
    at: 'rot of the deck together with a leak near it',
  },
  'rot-and-leak-open': {
    text: 'The deck was found soft and water has come through, but that is no ground for a tear-off yet.',
    ...practice,
    at: 'rot of the deck that was only looked at',
  },
  'edge-wood': {
    text: 'Rot at the eave is mended where it is: open the eave, cut back to sound wood, put in new edge wood. How far it runs into the deck shows once it is open.',
    ...practice,
    at: 'carpentry at the eave',
  },
  'rot-not-covered': {
    text: 'The deck was found soft. Nothing is laid over it before it is opened there.',
    ...practice,
    at: 'recover over a soft deck',
  },
  'deck-engineer': {
    text: 'The deck was found soft and is not of wood: an engineer looks at it before anybody works on it.',
    ...practice,
    at: 'decks that have lost their strength',
  },
  'coat-second-layer': {
    text: 'Two coverings or more lie there: a coat would be a third skin on an unknown base.',
    source: 'memory',
    at: 'recover limits (IBC 1512, IRC R908.3.1.1) as carried to coatings',
    grade: 'memory',
  },
  'coat-allowed': {
    text: 'A coating over a dry, sound roof is allowed without tear-off. Seams and flashings are repaired first.',
    source: 'irc-2021',
    at: 'R908.3.1',
    grade: 'found',
  },
  'coat-worn': {
    text: 'The surface is worn, and what lies under it is dry and drains: a coat shields it again.',
    ...practice,
    at: 'coating of worn roofs',
  },
  'coat-bare': {
    text: 'Where the mat is bare a new piece of sheet goes on first.',
    ...practice,
    at: 'coating of worn roofs',
  },
  'worn-not-patched': {
    text: 'Nothing is broken in one place, and a patch gives a worn surface no shield back.',
    ...practice,
    at: 'coating of worn roofs',
  },
  'worn-and-broken': {
    text: 'Patches close what is broken, and give the worn surface round them no shield back.',
    ...practice,
    at: 'coating of worn roofs',
  },
  'mend-then-coat': {
    text: 'A coat closes no hole, so what is broken is mended first. The surface is worn, and what lies under it is dry and drains: the coat shields it again.',
    ...practice,
    at: 'coating of worn roofs',
  },
  'worn-kept': {
    text: 'The surface is worn, nothing is broken, and no coat can go on: it is kept up, and looked at each year.',
    ...practice,
    at: 'upkeep',
  },
  'leak-search': {
    text: 'Water has come in, and no hole was noted: find where it gets in and mend that.',
    ...practice,
    at: 'search for leaks',
  },
  'local-repair': {
    text: 'What was found can be put right where it is.',
    ...practice,
    at: 'repair',
  },
  upkeep: {
    text: 'Nothing that was noted asks for more than upkeep.',
    ...practice,
    at: 'upkeep',
  },
  'looks-alone': {
    text: 'Looks alone are no ground for a tear-off: first the moisture.',
    ...practice,
    at: 'tear-off on looks',
  },
  'nothing-noted': {
    text: 'No inspection was noted, so nothing says what is wrong.',
    ...practice,
    at: 'inspection',
  },
  'nothing-asks': {
    text: 'It can always be done, but nothing that was found asks for it.',
    ...practice,
    at: 'tear-off',
  },
  'shows-the-deck': {
    text: 'The deck is seen, every soft part of it is replaced, and the taper starts on a deck that is known.',
    ...practice,
    at: 'tear-off',
  },
} as const satisfies Record<string, ScopeRule>;

export type ScopeRuleId = keyof typeof scopeRules;

/** Years after which a bituminous roof with bare reinforcement is past its service. Common practice, no source. */
export const bituminousService = {
  usualYears: 25,
  pastYears: 30,
  ...practice,
  at: 'service life of bituminous roofs',
} as const satisfies Cited & Record<string, unknown>;

/** Share of the area from which wet insulation is no longer cut out in parts. Some local codes have it; a city may differ. */
export const wetShareLimit = {
  share: 0.25,
  source: 'recover-article',
  at: 'local rules over 25 % of the area',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

export interface RecoverSection extends Cited {
  /** Ids of building codes. */
  codes: readonly string[];
}

/**
 * Where each edition has its bars to a re-cover: soaked or too decayed to be a base, tile or slate, two or more coverings.
 * IBC 1510.3 to 2012, 1511.3.1.1 in 2015 and 2018, 1512.2.1.1 from 2021; IRC R908.3.1.1; IEBC 2018 705.3.1.1 opens alike.
 * The IRC of 2024 reworded its conditions; the bars named here stayed, from memory.
 */
export const recoverSections = [
  { codes: ['irc-2018'], source: 'irc-2018', at: 'R908.3.1.1', grade: 'found' },
  { codes: ['irc-2021'], source: 'irc-2021', at: 'R908.3.1.1', grade: 'found' },
  { codes: ['irc-2024'], source: 'irc-2024', at: 'R908.3.1.1', grade: 'memory' },
  { codes: ['ibc-2018'], source: 'ibc-2018', at: '1511.3.1.1', grade: 'found' },
  { codes: ['ibc-2021'], source: 'ibc-2021', at: '1512.2.1.1', grade: 'found' },
  { codes: ['ibc-2024'], source: 'ibc-2024', at: '1512.2.1.1', grade: 'found' },
  { codes: ['iebc-2018'], source: 'iebc-2018', at: '705.3.1.1', grade: 'found' },
] as const satisfies readonly RecoverSection[];

export interface ScopeTestRow extends Cited {
  test: 'engineer' | 'cores' | 'scan' | 'look-after-rain' | 'open-wood' | 'count-layers' | 'inspection';
  what: string;
  how: string;
}

/** What settles an open question, the cheapest first; where the deck may not carry, the engineer comes before all. */
export const scopeTests = [
  {
    test: 'engineer',
    what: 'Have a structural engineer look at the deck',
    how: 'From below first. Nobody stands on the soft place until then. The engineer says what carries, what is replaced, and what holds a screw.',
    ...practice,
    at: 'decks that have lost their strength',
  },
  {
    test: 'inspection',
    what: 'Note what is to be seen',
    how: 'Walk it with the owner’s leave, or look from a window or a pole; note every finding with its place and a photo.',
    ...practice,
    at: 'inspection',
  },
  {
    test: 'look-after-rain',
    what: 'Look 48 hours after rain',
    how: 'Measure what still stands, and where.',
    ...practice,
    at: 'inspection of low-slope roofs',
  },
  {
    test: 'count-layers',
    what: 'Count the coverings',
    how: 'In a core, or at an edge that is lifted.',
    ...practice,
    at: 'cores',
  },
  {
    test: 'cores',
    what: 'Cut cores',
    how: 'One at the lowest spot, one by the worst finding, one on sound ground: count layers, press the insulation, look at the deck, patch the same day. Have a sample of an old bituminous roof looked at for asbestos before it is cut.',
    ...practice,
    at: 'cores',
  },
  {
    test: 'scan',
    what: 'Have the moisture scanned',
    how: 'Infrared on the evening of a sunny day, nuclear or capacitance on a grid; prove its outline with two cores.',
    ...practice,
    at: 'moisture survey',
  },
  {
    test: 'open-wood',
    what: 'Open the soft place',
    how: 'Take up the covering or the edge over it until what lies below is sound; in wood an awl on a 12 in grid shows how far it goes.',
    ...practice,
    at: 'reading rot',
  },
] as const satisfies readonly ScopeTestRow[];

export type ScopeTestId = (typeof scopeTests)[number]['test'];

/**
 * How near a leak lies to a soft deck for the two to be one: water runs along the deck before it drips. One sheet of deck.
 * Common practice, no source.
 */
export const rotNearLeak = {
  ft: 8,
  ...practice,
  at: 'a leak is rarely straight below the hole',
} as const satisfies Cited & Record<string, unknown>;
