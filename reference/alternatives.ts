import type { Cited } from './sources.ts';

/** A way to make a roof drain that is not tapered board, or that goes with it: when it is chosen, and what to watch. */
export interface AlternativeRow extends Cited {
  id: string;
  title: string;
  when: string;
  watch: string;
}

/**
 * Alternatives on wood framing, in the order in which they are thought of. The order and the conditions are common
 * practice and no rule of a code; roofers and engineers weigh them differently.
 */
export const alternativeRows = [
  {
    id: 'structure-first',
    title: 'Mend the structure first: sister the joists or raise their bearing',
    when: 'When the low spot comes from joists that sag or are too small: taper on top adds weight and hides the cause.',
    watch:
      'An engineer decides it, and what stands below is shored as the engineer says. Ceilings and walls inside move with the joists.',
    source: 'practice',
    at: 'sag from structure: structure first',
    grade: 'practice',
  },
  {
    id: 'edge-lowered',
    title: 'Lower the edge that holds the water back',
    when: 'When the surface falls to an edge that alone stands too high.',
    watch: 'The edge metal, its nailer and what the water then falls on.',
    source: 'practice',
    at: 'an edge that dams is lowered before anything is built up',
    grade: 'practice',
  },
  {
    id: 'outlet-at-low-spot',
    title: 'A scupper or drain at the low spot',
    when: 'When one low spot is wrong, it is stable, and a wall or a route for a leader is near.',
    watch:
      'An overflow beside it, the route of its leader, freezing; a low spot that still sinks leaves the outlet standing in a pond.',
    source: 'irc-2018',
    at: 'R903.4: a roof drain at each low point that does not drain over an edge, overflow 2 in above it',
    grade: 'memory',
  },
  {
    id: 'local-fill',
    title: 'Fill the one hollow',
    when: 'For one low spot at most 1 in deep and about 50 sq ft wide, on a roof that drains otherwise.',
    watch: 'Nothing wet goes into an insulated roof that stays; tapered strips or feathered board on a dry base.',
    source: 'practice',
    at: 'isolated low spots',
    grade: 'practice',
  },
  {
    id: 'more-outlets',
    title: 'More outlets, or outlets nearer to the middle, before less slope',
    when:
      'When the height at a door, a wall or a tie-in runs out: first more outlets, then nearer to the middle, then two ' +
      'falls with crickets, then a gentler taper with the leave of the building office, then reframing.',
    watch: 'Every outlet is a hole with a leader or a downspout that must be kept clear.',
    source: 'practice',
    at: 'order to try when the heights do not suffice',
    grade: 'practice',
  },
  {
    id: 'ripped-sleepers',
    title: 'Ripped sleepers on the joists under a new deck',
    when: 'When the roof is stripped to its joists, or more than about 6 in of foam would be laid otherwise.',
    watch:
      'Ends under 3/4 in split. It adds 2 to 4 psf and no R, and the space under the deck is vented or filled with insulation. ' +
      'On engineered joists the maker of the joists is asked first.',
    source: 'practice',
    at: 'ripped sleepers',
    grade: 'practice',
  },
  {
    id: 'steep-conversion',
    title: 'A steep roof over it',
    when: 'When no taper fits under the heights and the roof keeps failing; zoning and the structure must allow it.',
    watch: 'Cost, permit, wind and snow on a new shape: a designer and an engineer.',
    source: 'practice',
    at: 'steep conversion of roofs that keep failing',
    grade: 'practice',
  },
] as const satisfies readonly AlternativeRow[];

/** More foam than this makes sleepers worth a thought; in. */
export const muchFoam = { thicknessIn: 6, source: 'practice', at: 'ripped sleepers', grade: 'practice' } as const;

/** Dressed depths of sawn lumber by nominal size, in. */
export const sawnDepths = {
  rows: [
    { nominal: '2x4', depthIn: 3.5 },
    { nominal: '2x6', depthIn: 5.5 },
    { nominal: '2x8', depthIn: 7.25 },
    { nominal: '2x10', depthIn: 9.25 },
    { nominal: '2x12', depthIn: 11.25 },
  ],
  source: 'memory',
  at: 'American softwood lumber standard, dressed sizes',
  grade: 'memory',
} as const;

/** A sleeper's thin end, the saw's kerf and the lift of one plate, in. */
export const sleeperFigures = {
  leastEndIn: 0.75,
  kerfIn: 0.125,
  plateIn: 1.5,
  source: 'practice',
  at: 'ripped sleepers and raised bearing: one 2x plate for each 6 ft of span at 1/4 in per ft',
  grade: 'practice',
} as const;
