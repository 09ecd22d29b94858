import { Group } from './box.tsx';
import type { GroupView, ProblemView } from './form-view.ts';
import { Outcome } from './problem-summary.tsx';

export interface NewRoofProps {
  groups: readonly GroupView[];
  problems: readonly ProblemView[];
  /** True when the answers were only read back. */
  readBack: boolean;
}

const READ_BACK = 'What was understood stands beside each answer. Change what is wrong, then get the answer.';
const KEPT = 'Everything you typed still stands below.';

export function NewRoofForm({ groups, problems, readBack }: NewRoofProps) {
  return (
    <div id="form">
      <Outcome problems={problems} kept={KEPT} saved={readBack ? READ_BACK : null} />
      <form method="post" action="/new" hx-post="/new" hx-target="#form" hx-swap="outerHTML">
        {groups.map((group) => (
          <Group view={group} />
        ))}
        <div class="buttons">
          <button type="submit" name="next" value="result">
            Get the answer
          </button>
          <button type="submit" name="next" value="read">
            Show what was understood
          </button>
        </div>
      </form>
    </div>
  );
}

export function NewRoofPage(props: NewRoofProps) {
  return (
    <div class="new-roof">
      <h1>A new roof: six questions</h1>
      <p class="lead">
        Length and depth are enough for a first answer. Leave open what you do not know: the answer says what it assumed
        and how to find out. You can also <a href="/import">bring in a roof file</a>.
      </p>
      <NewRoofForm {...props} />
    </div>
  );
}
