import type { Child } from 'hono/jsx';
import { Group } from './box.tsx';
import { EditFrame, type EditFrameProps } from './edit-frame.tsx';
import type { GroupView, ProblemView } from './form-view.ts';
import { Outcome } from './problem-summary.tsx';

export interface SectionPageProps extends EditFrameProps {
  title: string;
  lead: string;
  action: string;
  groups: readonly GroupView[];
  problems: readonly ProblemView[];
  /** Said after the form was kept. */
  saved: string | null;
  /** What stands under the form. */
  after?: Child;
  /** What the six first answers left open and was put in until it is measured. */
  supposed: readonly Supposition[];
}

export interface Supposition {
  text: string;
  findOut: string;
}

function Supposed({ supposed }: { supposed: readonly Supposition[] }) {
  if (supposed.length === 0) return null;
  return (
    <details class="supposed">
      <summary>Put in until it is measured</summary>
      <ul>
        {supposed.map(({ text, findOut }) => (
          <li>
            {text}; to find out: {findOut}
          </li>
        ))}
      </ul>
    </details>
  );
}

const KEPT = 'Everything you typed is kept. The answer still shows the last roof that could be read.';

function SectionForm({ action, groups, problems, saved }: SectionPageProps) {
  return (
    <>
      <Outcome problems={problems} kept={KEPT} saved={saved} />
      <form method="post" action={action} hx-post={action} hx-target="#form" hx-swap="outerHTML show:top showTarget:h1">
        {/* The Enter key presses the first button of a form, which has to be the plain one. */}
        <button type="submit" class="visually-hidden" tabindex={-1}>
          Save
        </button>
        {groups.map((group) => (
          <Group view={group} />
        ))}
        <div class="buttons">
          <button type="submit">Save and check</button>
          <button type="submit" name="next" value="result">
            Save and show the answer
          </button>
        </div>
      </form>
    </>
  );
}

/** One part of the roof file as a form, beside the plan. */
export function SectionPage(props: SectionPageProps) {
  const { roof, links, plan, title, lead, supposed } = props;
  return (
    <EditFrame roof={roof} links={links} plan={plan} title={title} lead={lead}>
      <Supposed supposed={supposed} />
      <SectionForm {...props} />
      {props.after ?? null}
    </EditFrame>
  );
}
