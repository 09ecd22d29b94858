import type { SourceNote } from './basics.ts';

export interface MembraneReason {
  criterion: string;
  weight: number;
  score: number;
  text: string;
}

/** One cell of the evidence: what is known of one covering on one count, and what that is worth. Points 0 to 10. */
export interface MembraneEvidence {
  /** Id and title of the criterion. */
  criterion: string;
  title: string;
  /** Figure with its range, or what was judged. */
  figure: string;
  /** Points at the bad end, at the likely value and at the good end of the evidence; alike where no range is known. */
  low: number;
  likely: number;
  high: number;
  source: SourceNote;
}

/** Where a covering stands when every range of the evidence is let go from end to end, each by itself. */
export interface MembraneStanding {
  /** Place at the likely values; 1 = first. */
  place: number;
  bestPlace: number;
  worstPlace: number;
  /** Weighted points at the bad and the good ends of its own evidence. */
  lowScore: number;
  highScore: number;
  /** Share of all combinations of low, likely and high values in which nothing stands before it. */
  firstShare: number;
  /** One sentence. */
  words: string;
}

export interface MembraneReport {
  id: string;
  name: string;
  /** 0 to 10; null when vetoed. */
  score: number | null;
  veto: { why: string; source: SourceNote } | null;
  reasons: readonly MembraneReason[];
  /** In words: what weight change makes this option win (or makes the winner lose). */
  flips: readonly string[];
  /** Plain sentences for the owner. */
  plain: string;
  /** One cell for each criterion, also where the covering is out. */
  evidence?: readonly MembraneEvidence[];
  /** null = out, so it has no place. */
  standing?: MembraneStanding | null;
  /** One sentence for a table: where the first stands over the ranges; of the others, why they are not first. */
  short?: string;
  /** A covering that is at least as good on every count; null = there is none. */
  dominatedBy?: { id: string; name: string; whateverTheRanges: boolean } | null;
}

/** How the coverings were weighed. */
export interface MembraneWeighing {
  /** Why these weights, in one or two sentences. */
  why: string;
  /** True where the roof file gives weights of its own. */
  own: boolean;
  /** Heaviest first; shares of 1. `usual` = by the situation alone. */
  weights: readonly { criterion: string; title: string; weight: number; usual: number; given: boolean }[];
  situations: readonly { title: string; source: SourceNote }[];
  shifts: readonly { title: string; times: number; because: string; source: SourceNote }[];
}

/** A thing that is done whichever covering is chosen. */
export interface SameWhichever {
  what: string;
  text: string;
}
