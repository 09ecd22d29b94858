/** One published document, or one of the honest substitutes for a document. */
export interface Source {
  title: string;
  publisher: string;
  /** Edition or year as printed; null where the "source" is practice or memory. */
  edition: string | null;
}
