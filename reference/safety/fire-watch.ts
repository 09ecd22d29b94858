import type { Cited } from '../sources.ts';

export type HotWork = 'torch' | 'hot-asphalt' | 'sparks' | 'hot-air';

export interface FireWatchRow extends Cited {
  document: string;
  work: HotWork;
  /** After the last flame or spark. */
  watchMin: number;
  /** Monitoring that the permit may add. */
  thenMin: number;
}

/**
 * How long somebody watches after the last flame. Documents disagree by a factor of eight (30 min to 4 h), so edition and
 * place decide; the longest of code, permit, insurer and contract governs. The default rows are what is printed.
 */
export const fireWatch = [
  {
    document: 'default',
    work: 'torch',
    watchMin: 120,
    thenMin: 120,
    source: 'torch-program',
    at: 'fire watch, at least 2 h; later check is common practice',
    grade: 'found',
  },
  {
    document: 'default',
    work: 'hot-asphalt',
    watchMin: 60,
    thenMin: 0,
    source: 'nfpa-51b',
    at: 'fire watch',
    grade: 'found',
  },
  {
    document: 'default',
    work: 'sparks',
    watchMin: 60,
    thenMin: 0,
    source: 'nfpa-51b',
    at: 'fire watch',
    grade: 'found',
  },
  {
    document: 'default',
    work: 'hot-air',
    watchMin: 30,
    thenMin: 0,
    source: 'practice',
    at: 'hot-air welding',
    grade: 'practice',
  },
  {
    document: 'nfpa-51b-2014',
    work: 'torch',
    watchMin: 30,
    thenMin: 0,
    source: 'nfpa-51b-2014',
    at: 'fire watch',
    grade: 'found',
  },
  {
    document: 'nfpa-51b-2019',
    work: 'torch',
    watchMin: 60,
    thenMin: 180,
    source: 'nfpa-51b',
    at: '5.6.3',
    grade: 'found',
  },
  {
    document: 'nfpa-241-2022',
    work: 'torch',
    watchMin: 120,
    thenMin: 0,
    source: 'nfpa-241',
    at: 'torch-applied roofing',
    grade: 'found',
  },
  {
    document: 'osha-general-industry',
    work: 'torch',
    watchMin: 30,
    thenMin: 0,
    source: 'osha-1910',
    at: '252(a)(2)(iii)',
    grade: 'found',
  },
] as const satisfies readonly FireWatchRow[];

export type FireWatchDocument = (typeof fireWatch)[number]['document'];
