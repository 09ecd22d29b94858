import type { PhotoLink } from '../parts/photos.tsx';

/** One box of a form, ready to print. Its id is its place in the roof file (or the name of the answer). */
export interface BoxView {
  id: string;
  label: string;
  hint: string | null;
  box: 'line' | 'area' | 'select';
  /** Lines of an area. */
  rows: number;
  value: string;
  /** Choices of a select: value and words. */
  options: readonly (readonly [value: string, words: string])[];
  /** What was read ("read as 24′-6 1/2″") or taken for now, where that says more than what was typed. */
  understood: string | null;
  problems: readonly string[];
}

/** Boxes that few roofs need: folded away until one of them holds something. */
export interface FoldView {
  title: string;
  open: boolean;
  boxes: readonly BoxView[];
}

export interface GroupView {
  id: string;
  title: string;
  note: string | null;
  /** An empty entry, offered to be filled in. */
  blank: boolean;
  /** Name of the box that takes the entry out; null for a group that always stands. */
  removeName: string | null;
  problems: readonly string[];
  boxes: readonly BoxView[];
  /** `pairs`: boxes that belong together two by two. */
  grid: 'free' | 'pairs';
  folds: readonly FoldView[];
  groups: readonly GroupView[];
  /** Photos of the entry, and the button that keeps the form and leads to them. */
  photos?: { list: readonly PhotoLink[]; next: string; words: string };
}

/** A problem with the link to its box; the same sentence stands beside the box. */
export interface ProblemView {
  href: string;
  /** Name of the box, or the place in the file. */
  where: string;
  text: string;
}

export interface SectionLink {
  slug: string;
  title: string;
  href: string;
  here: boolean;
}

export interface RoofInHand {
  id: string;
  label: string;
  /** An edit that cannot be read yet stands beside the last good file. */
  hasDraft: boolean;
}
