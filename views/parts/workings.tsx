import type { SourceBook } from '../../src/core/report/page-sources.ts';
import { workingRows } from '../../src/core/report/page-workings.ts';
import type { Working } from '../../src/core/report/types.ts';
import { SourceList, SourceMark } from './source-mark.tsx';

/** Every computed number with its formula and figures, and the numbered sources. */
export function Workings({ workings, book }: { workings: readonly Working[]; book: SourceBook }) {
  return (
    <details>
      <summary>Where does this come from?</summary>
      <h3>Workings</h3>
      <dl>
        {workingRows(workings).map(({ what, formula, inputs, result, source }) => (
          <>
            <dt>
              {what}: <b>{result}</b>
              <SourceMark book={book} note={source} />
            </dt>
            <dd>
              <span class="quiet">
                {formula}; {inputs}
              </span>
            </dd>
          </>
        ))}
      </dl>
      <h3>Sources</h3>
      <SourceList book={book} />
    </details>
  );
}
