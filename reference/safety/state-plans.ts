import type { Cited } from '../sources.ts';

export interface StateRule extends Cited {
  state: string;
  /** What differs from the federal rule, in one sentence. */
  differs: string;
  /** Slope up to which a safety monitor may be used, where the state is stricter than 4 in 12. */
  monitorSlopeIn12: number | null;
}

/**
 * State rules that were read. States change them (residential California in July 2025, Washington in 2022 and 2024):
 * check the date. A rule that is looser than the federal one is named and not used.
 */
export const stateRules = [
  {
    state: 'CA',
    differs:
      'Title 8 sections 1730 and 1731: a trigger of 20 ft for commercial single-unit coverings and of 6 ft for residential roofing since July 2025, a parapet of 24 in, a line 5 ft back. Use 6 ft unless the competent person says otherwise.',
    monitorSlopeIn12: null,
    source: 'cal-title-8',
    at: '1730(b) and 1731',
    grade: 'found',
  },
  {
    state: 'WA',
    differs:
      'WAC 296-880: 6 ft on low-pitched roofs since November 2022, 4 ft for other work, a line 6 or 10 ft back for roofers and 15 ft for others.',
    monitorSlopeIn12: null,
    source: 'wac-296-880',
    at: '296-880-20005 and -40040',
    grade: 'found',
  },
  {
    state: 'OR',
    differs:
      'OAR 437-003: a safety monitor only on slopes up to 2 in 12, alone only up to 50 ft, and never with wheeled equipment.',
    monitorSlopeIn12: 2,
    source: 'oar-437-003',
    at: '437-003-2502',
    grade: 'found',
  },
] as const satisfies readonly StateRule[];

export interface StatePlans extends Cited {
  states: readonly string[];
}

/** States whose own plan covers private employers; their rules may be stricter than the federal ones. From memory. */
export const statePlans = {
  states: [
    'AK',
    'AZ',
    'CA',
    'HI',
    'IN',
    'IA',
    'KY',
    'MD',
    'MI',
    'MN',
    'NV',
    'NM',
    'NC',
    'OR',
    'PR',
    'SC',
    'TN',
    'UT',
    'VT',
    'VA',
    'WA',
    'WY',
  ],
  source: 'memory',
  at: 'state plans for private employers',
  grade: 'memory',
} as const satisfies StatePlans;
