import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Finding } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';

const words = { stop: 'Stop', fix: 'To do', note: 'Note' } as const;

/** Facts of this roof that somebody must act on, each with its word. */
export function Findings({ findings, book }: { findings: readonly Finding[]; book: SourceBook }) {
  if (findings.length === 0) return null;
  return (
    <ul class="findings">
      {findings.map(({ level, where, message, source }) => (
        <li class={`is-${level}`}>
          <b class={level === 'stop' ? 'stop' : undefined}>{words[level]}</b> <span class="quiet">({where})</span>{' '}
          {message}
          <SourceMark book={book} note={source} />
        </li>
      ))}
    </ul>
  );
}
