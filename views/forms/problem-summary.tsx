import type { ProblemView } from './form-view.ts';

/** What has to be put right, each with a link to its box; nothing where all is well. */
export function ProblemSummary({ problems, kept }: { problems: readonly ProblemView[]; kept: string }) {
  if (problems.length === 0) return null;
  const head =
    problems.length === 1 ? 'One thing has to be put right' : `${problems.length} things have to be put right`;
  return (
    <section class="problem-summary" role="alert" aria-labelledby="problem-summary-title" tabindex={-1}>
      <h2 id="problem-summary-title">{head}</h2>
      <ol>
        {problems.map(({ href, where, text }) => (
          <li>
            <a href={href}>{where}</a>: {text}
          </li>
        ))}
      </ol>
      <p>{kept}</p>
    </section>
  );
}

export interface OutcomeProps {
  problems: readonly ProblemView[];
  /** What became of what was typed, said under the problems. */
  kept: string;
  /** Said where all is well. */
  saved: string | null;
}

/** How a form was taken: what has to be put right, or that it was kept. */
export function Outcome({ problems, kept, saved }: OutcomeProps) {
  return (
    <>
      <ProblemSummary problems={problems} kept={kept} />
      {saved === null ? null : (
        <p class="saved" role="status">
          {saved}
        </p>
      )}
    </>
  );
}
