import { type FindingKind, findingKinds as findingRows } from '../../reference/findings.ts';
import type {
  BelowInsulationKind,
  Curb,
  EdgeKind,
  FoundBy,
  Gutter,
  Inflow,
  OpeningKind,
  OutletRole,
  ReadingSense,
  StrainerKind,
  VentKind,
} from '../core/roof.ts';

/** What the core names too has its name there. */
export {
  belowNames as belowKinds,
  coveringNames as coveringKinds,
  deckNames as deckKinds,
  pipeNames as pipeKinds,
  taperRuleNames as taperRules,
} from '../core/kind-names.ts';

/** Every word that a roof file may hold as a choice, with what it means; forms take their labels from here. */
type Words<T extends string> = Readonly<Record<T, string>>;

export const edgeKinds: Words<EdgeKind> = {
  gutter: 'eave with a gutter',
  drip: 'eave that drips free',
  rake: 'rake, with a raised stop',
  parapet: 'parapet',
  wall: 'wall that rises above the section',
  'shingles-above': 'shingled slope above',
  'roof-below': 'roof below that takes the water',
  'box-gutter': 'built-in box gutter',
  'party-wall': 'party wall',
  joint: 'expansion joint or the next roof at the same height',
};

export const openingKinds: Words<OpeningKind> = {
  door: 'door sill',
  window: 'window sill',
  'siding-bottom': 'bottom of the siding',
  weep: 'weep holes',
  louver: 'louver',
};

export const curbKinds: Words<Curb['kind']> = {
  skylight: 'skylight',
  hatch: 'roof hatch',
  chimney: 'chimney',
  equipment: 'equipment curb',
  other: 'other curb',
};

export const inflowKinds: Words<Inflow['kind']> = {
  downspout: 'downspout that empties onto the section',
  valley: 'valley that empties onto the section',
};

export const outletRoles: Words<OutletRole> = {
  primary: 'takes the everyday water',
  overflow: 'takes the water when the others are blocked',
};

export const strainers: Words<StrainerKind> = {
  dome: 'dome strainer that stands above the roof',
  flat: 'flat grate',
  none: 'none, the pipe is open',
};

export const statuses: Words<'existing' | 'proposed'> = {
  existing: 'there today',
  proposed: 'wished for',
};

export const answers: Words<'yes' | 'no' | 'unknown'> = { yes: 'yes', no: 'no', unknown: 'not known' };

export const gutterProfiles: Words<NonNullable<Gutter['profile']>> = {
  k: 'K style',
  'half-round': 'half round',
  box: 'box',
};

export const belowInsulationKinds: Words<BelowInsulationKind> = {
  none: 'none',
  batts: 'batts or loose fill, air passes through it',
  'open-cell': 'open-cell spray foam',
  'closed-cell': 'closed-cell spray foam',
};

export const ventKinds: Words<VentKind> = {
  ridge: 'ridge vent, by the foot',
  'soffit-strip': 'soffit strip, by the foot',
  'perforated-soffit': 'perforated soffit, by the square foot',
  'under-eave': 'grille under the eave',
  box: 'box or square roof vent',
  gable: 'gable louver',
  turbine: 'turbine',
  'power-fan': 'powered fan',
  other: 'other vent',
};

export const readOnKinds: Words<'covering' | 'deck'> = {
  covering: 'heights measured from the old covering',
  deck: 'heights measured from the bare deck',
};

export const senses: Words<ReadingSense> = {
  height: 'heights: a higher reading is a higher point',
  rod: 'laser and rod: a higher reading on the rod is a lower point',
  'water-level': 'water level: a higher mark on the moved tube is a lower point',
};

export const findingKinds = Object.fromEntries(
  findingRows.map(({ kind, title }) => [kind, title]),
) as Words<FindingKind>;

export const foundByKinds: Words<FoundBy> = {
  eye: 'seen',
  probe: 'probed with an awl or a seam probe',
  core: 'core cut',
  scan: 'moisture scan (infrared, nuclear, capacitance)',
  'from-below': 'seen from below',
};

export const severities: Words<'slight' | 'plain' | 'severe'> = {
  slight: 'slight',
  plain: 'plain to see',
  severe: 'severe',
};
