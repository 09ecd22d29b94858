import { type Cited, sources } from '../../reference/sources.ts';
import type { SourceNote } from './report/types.ts';

/** The printable note of a cited row: "title, edition, section". */
export function sourceNote(row: Cited): SourceNote {
  const source = sources[row.source];
  const parts = [source.title, source.edition, row.at].filter((part) => part);
  return { id: row.source, text: parts.join(', '), grade: row.grade };
}
