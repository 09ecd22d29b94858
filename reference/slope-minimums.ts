import type { Cited } from './sources.ts';

/** Coverings as the codes group them. */
export type CoveringClass =
  | 'built-up'
  | 'built-up-coal-tar'
  | 'modified-bitumen'
  | 'thermoset'
  | 'thermoplastic'
  | 'spray-foam'
  | 'liquid-applied'
  | 'roll-roofing'
  | 'standing-seam-metal'
  | 'lapped-metal-sealed'
  | 'lapped-metal'
  | 'asphalt-shingles';

export interface SlopeMinimumRow extends Cited {
  covering: CoveringClass;
  /** Least design slope of a new covering. */
  leastInPerFt: number;
  /** Percent that the code prints beside it, where it is rounded down; null where none was read. */
  printedPercent: number | null;
  /** Section by family of editions; the edition's own title is put in front when it is printed. */
  sections: { irc: string; ibcTo2018: string; ibcFrom2021: string };
}

/**
 * Least design slope by covering, IBC 2009 to 2024 and IRC.
 * The governing quantity is "one-fourth unit in 12": 1/4 in/ft = 2.083 %. The "2 percent" printed beside it is 0.240 in/ft.
 * IRC section numbers were read in a reprint of IRC 2021; IBC 2021 merged the single plies into 1507.12.
 * Who disagrees: Minnesota waives the 1/4 where the structure is designed for the water (IBC 1611.2); a county in Arizona
 * once asked 3/8. Shingles need double underlayment under 4 in 12.
 */
export const slopeMinimums = [
  {
    covering: 'built-up',
    leastInPerFt: 0.25,
    printedPercent: 2,
    sections: { irc: 'R905.9.1', ibcTo2018: '1507.10.1', ibcFrom2021: '1507.10.1' },
    source: 'minn-1305',
    at: '1507.10.1',
    grade: 'found',
  },
  {
    covering: 'built-up-coal-tar',
    leastInPerFt: 0.125,
    printedPercent: null,
    sections: { irc: 'R905.9.1', ibcTo2018: '1507.10.1', ibcFrom2021: '1507.10.1' },
    source: 'minn-1305',
    at: '1507.10.1',
    grade: 'found',
  },
  {
    covering: 'modified-bitumen',
    leastInPerFt: 0.25,
    printedPercent: 2,
    sections: { irc: 'R905.11.1', ibcTo2018: '1507.11.1', ibcFrom2021: '1507.11.1' },
    source: 'minn-1305',
    at: '1507.11.1',
    grade: 'found',
  },
  {
    covering: 'thermoset',
    leastInPerFt: 0.25,
    printedPercent: 2,
    sections: { irc: 'R905.12.1', ibcTo2018: '1507.12.1', ibcFrom2021: '1507.12.1' },
    source: 'minn-1305',
    at: '1507.12.1',
    grade: 'found',
  },
  {
    covering: 'thermoplastic',
    leastInPerFt: 0.25,
    printedPercent: 2,
    sections: { irc: 'R905.13.1', ibcTo2018: '1507.13.1', ibcFrom2021: '1507.12.1' },
    source: 'minn-1305',
    at: '1507.13.1',
    grade: 'found',
  },
  {
    covering: 'spray-foam',
    leastInPerFt: 0.25,
    printedPercent: 2,
    sections: { irc: 'R905.14.1', ibcTo2018: '1507.14.1', ibcFrom2021: '1507.13.1' },
    source: 'minn-1305',
    at: '1507.14.1',
    grade: 'found',
  },
  {
    covering: 'liquid-applied',
    leastInPerFt: 0.25,
    printedPercent: 2,
    sections: { irc: 'R905.15.1', ibcTo2018: '1507.15.1', ibcFrom2021: '1507.14.1' },
    source: 'minn-1305',
    at: '1507.15.1',
    grade: 'found',
  },
  {
    covering: 'roll-roofing',
    leastInPerFt: 1,
    printedPercent: null,
    sections: { irc: 'R905.5.2', ibcTo2018: '1507.6.2', ibcFrom2021: '1507.6.2' },
    source: 'ibc-2021',
    at: '1507.6.2',
    grade: 'found',
  },
  {
    covering: 'standing-seam-metal',
    leastInPerFt: 0.25,
    printedPercent: 2,
    sections: { irc: 'R905.10.2', ibcTo2018: '1507.4.2', ibcFrom2021: '1507.4.2' },
    source: 'ibc-2021',
    at: '1507.4.2',
    grade: 'found',
  },
  {
    covering: 'lapped-metal-sealed',
    leastInPerFt: 0.5,
    printedPercent: null,
    sections: { irc: 'R905.10.2', ibcTo2018: '1507.4.2', ibcFrom2021: '1507.4.2' },
    source: 'ibc-2021',
    at: '1507.4.2',
    grade: 'found',
  },
  {
    covering: 'lapped-metal',
    leastInPerFt: 3,
    printedPercent: null,
    sections: { irc: 'R905.10.2', ibcTo2018: '1507.4.2', ibcFrom2021: '1507.4.2' },
    source: 'ibc-2021',
    at: '1507.4.2',
    grade: 'found',
  },
  {
    covering: 'asphalt-shingles',
    leastInPerFt: 2,
    printedPercent: null,
    sections: { irc: 'R905.2.2', ibcTo2018: '1507.2.2', ibcFrom2021: '1507.2.2' },
    source: 'ibc-2021',
    at: '1507.2.2',
    grade: 'found',
  },
] as const satisfies readonly SlopeMinimumRow[];
