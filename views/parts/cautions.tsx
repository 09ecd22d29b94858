import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Caution } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';

const times: Record<Caution['when'], string> = {
  'as-is': 'roof as it is',
  during: 'while the work goes on',
  finished: 'finished roof',
};

/** Cautions in the order given: what to mind, and the fact that calls for it. */
export function Cautions({ cautions, book }: { cautions: readonly Caution[]; book: SourceBook }) {
  return (
    <ul class="cautions">
      {cautions.map(({ severity, topic, when, because, text, source }) => (
        <li class={severity === 4 ? 'grave' : undefined}>
          {text}
          <SourceMark book={book} note={source} />
          <br />
          <span class="quiet">
            {topic}, {times[when]}: {because}
          </span>
        </li>
      ))}
    </ul>
  );
}
