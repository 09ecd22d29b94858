import type { SingleField } from '../../units/fields.ts';

type Options = Readonly<Record<string, string>>;

/** How a value of the roof file stands in a box of a form. */
export type FieldKind =
  | { kind: 'text' }
  | { kind: 'measure'; field: SingleField }
  /** One height, or the heights at both ends. */
  | { kind: 'ends' }
  /** Distances in a row; "none" is an empty list. */
  | { kind: 'distances' }
  | { kind: 'pair' }
  | { kind: 'point' }
  | { kind: 'place-and-height' }
  | { kind: 'ring' }
  /** Corners, or the perimeter as it was walked. */
  | { kind: 'outline' }
  | { kind: 'readings' }
  | { kind: 'toward' }
  | { kind: 'side' }
  | { kind: 'whole' }
  | { kind: 'share' }
  | { kind: 'choice'; options: Options; none?: string }
  | { kind: 'yes-no' };

export type FieldSpec = FieldKind & {
  /** Path inside its group: `heightIn`, `gutter.sizeIn`. */
  key: string;
  label: string;
  hint?: string;
  /** Title of the fold that the box stands in, for what few roofs need. */
  fold?: string;
};

export interface GroupSpec {
  /** Path of the group, or of the list whose entries have these fields; '' is the file itself. */
  at: string;
  title: string;
  note?: string;
  fields: readonly FieldSpec[];
  list?: {
    /** One entry in words: "pipe". */
    what: string;
    /** Empty entries offered after those that are there. */
    blank: number;
    /** `side`: every side without an entry gets an empty one. */
    every?: 'side';
  };
  /** Lists inside each entry, with their path inside the entry. */
  inner?: readonly GroupSpec[];
}

export interface SectionSpec {
  slug: string;
  title: string;
  lead: string;
  groups: readonly GroupSpec[];
}
