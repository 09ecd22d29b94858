import type { EdgeKind } from '../../core/roof.ts';
import { answers, edgeKinds } from '../choices.ts';

/** What the first form offers, with the words beside each choice. */
export const leavesNowChoices = {
  'gutter-side': 'over the low side into a gutter',
  'drip-side': 'over the low side, dripping free',
  drain: 'through a drain in the roof',
  scupper: 'through a hole in a wall or parapet (scupper)',
  'nowhere-seen': 'nowhere that can be seen',
  unknown: 'not known',
} as const;

export const sideKindChoices: Readonly<Record<EdgeKind | 'unknown', string>> = { ...edgeKinds, unknown: 'not known' };

export const mayOpenChoices = answers;

export const sideChoices = {
  low: 'low side',
  right: 'right side',
  back: 'high side, at the back',
  left: 'left side',
  unknown: 'not known',
} as const;

export const pondPlaceChoices = {
  none: 'nowhere: it is dry two days after rain',
  middle: 'in the middle',
  'low-side': 'along the low side',
  'back-side': 'along the back',
  'left-side': 'along the left side',
  'right-side': 'along the right side',
  'low-left': 'in the low left corner',
  'low-right': 'in the low right corner',
  'back-left': 'in the back left corner',
  'back-right': 'in the back right corner',
  unknown: 'not known',
} as const;

export const pondLastsChoices = {
  'two-days': 'still there two days after rain',
  gone: 'gone within two days',
  unknown: 'not known',
} as const;

export const lowestKindChoices = {
  door: 'door sill',
  window: 'window sill',
  'siding-bottom': 'bottom of the siding',
  weep: 'weep holes',
  louver: 'louver',
  shingles: 'lowest shingles of the slope above',
  curb: 'curb of a skylight or a machine',
  none: 'nothing above the roof',
  unknown: 'not known',
} as const;

export const belowChoices = {
  living: 'living space',
  attic: 'attic',
  unheated: 'garage or another unheated space',
  outdoors: 'open air',
  unknown: 'not known',
} as const;

export type SidePlace = Exclude<keyof typeof sideChoices, 'unknown'>;
