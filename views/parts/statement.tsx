import type { OwnerStatement } from '../../src/core/report/owner/statement.ts';
import type { OriginBook } from '../../src/core/report/page-owner.ts';
import type { PageLinks } from '../page-setting.ts';

/** Words of a statement, with the mark of the values that it stands on. */
export function Said({ statement, book }: { statement: OwnerStatement; book: OriginBook }) {
  const number = book.numberOf(statement);
  return (
    <>
      {statement.text}
      {number === null ? null : (
        <sup class="origin">
          <a href={`#origin-${number}`} aria-label={`where this comes from: line ${number}`}>
            {number}
          </a>
        </sup>
      )}
    </>
  );
}

/** Several statements as one paragraph. */
export function SaidTogether({ statements, book }: { statements: readonly OwnerStatement[]; book: OriginBook }) {
  return (
    <p>
      {statements.map((statement) => (
        <>
          <Said statement={statement} book={book} />{' '}
        </>
      ))}
    </p>
  );
}

/** What people must know before anything else, each with its word. */
export function Stops({ statements, book }: { statements: readonly OwnerStatement[]; book: OriginBook }) {
  if (statements.length === 0) return null;
  return (
    <ul class="findings">
      {statements.map((statement) => (
        <li class="is-stop">
          <b class="stop">Stop</b> <Said statement={statement} book={book} />
        </li>
      ))}
    </ul>
  );
}

/** Every value behind the words, with its place on the answer page. */
export function Origins({ book, links }: { book: OriginBook; links: PageLinks | null }) {
  return (
    <details class="origins">
      <summary>Where the figures come from</summary>
      <ol>
        {book.lines().map(({ number, values }) => (
          <li id={`origin-${number}`}>
            {values.map(({ label, value, place, placeTitle }) => (
              <span class="line">
                {label}: <b>{value}</b>{' '}
                <span class="quiet">
                  {links === null ? (
                    `Answer: ${placeTitle}`
                  ) : (
                    <a href={`${links.result}#${place}`}>Answer: {placeTitle}</a>
                  )}
                </span>
              </span>
            ))}
          </li>
        ))}
      </ol>
    </details>
  );
}
