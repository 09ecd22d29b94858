import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { SourceNote } from '../../src/core/report/types.ts';

/** Small number that leads to the source; what is from memory says so. */
export function SourceMark({ book, note }: { book: SourceBook; note: SourceNote | null }) {
  const number = note === null ? null : book.numberOf(note);
  if (note === null || number === null) return null;
  const words = note.grade === 'memory' ? `${number} verify` : `${number}`;
  return (
    <sup>
      <a href={`#source-${number}`} title={note.text} aria-label={`source ${words}`}>
        {words}
      </a>
    </sup>
  );
}

export function SourceList({ book }: { book: SourceBook }) {
  return (
    <ol>
      {book.rows.map(({ number, text, grade }) => (
        <li id={`source-${number}`}>
          {text} <span class="quiet">({grade})</span>
        </li>
      ))}
    </ol>
  );
}
