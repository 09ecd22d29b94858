import type { DrawList } from '../../src/drawing/draw-list.ts';
import { Figure } from '../parts/figure.tsx';
import { Group } from './box.tsx';
import type { GroupView, ProblemView, RoofInHand, SectionLink } from './form-view.ts';
import { ProblemSummary } from './problem-summary.tsx';

export interface SectionPageProps {
  roof: RoofInHand;
  title: string;
  lead: string;
  action: string;
  links: readonly SectionLink[];
  /** The last roof that could be read. */
  plan: DrawList | null;
  groups: readonly GroupView[];
  problems: readonly ProblemView[];
  /** Said after the form was kept. */
  saved: string | null;
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

/** The parts of the roof to go to, and the plan as it was last read. */
export function EditAside({ links, plan }: { links: readonly SectionLink[]; plan: DrawList | null }) {
  return (
    <div class="aside">
      <SectionLinks links={links} />
      {plan === null ? null : <Figure list={plan} id="plan" />}
    </div>
  );
}

function SectionLinks({ links }: { links: readonly SectionLink[] }) {
  return (
    <nav class="section-links" aria-label="Parts of the roof">
      <ol>
        {links.map(({ href, title, here }) => (
          <li>
            <a href={href} aria-current={here ? 'page' : undefined}>
              {title}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

const KEPT = 'Everything you typed is kept. The answer still shows the last roof that could be read.';

function SectionForm({ action, groups, problems, saved }: SectionPageProps) {
  return (
    <>
      <ProblemSummary problems={problems} kept={KEPT} />
      {saved === null ? null : (
        <p class="saved" role="status">
          {saved}
        </p>
      )}
      <form method="post" action={action} hx-post={action} hx-target="#form" hx-swap="outerHTML">
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

/** One part of the roof file as a form, beside the plan. A script puts the whole of it in place of itself. */
export function SectionPage(props: SectionPageProps) {
  const { roof, title, lead, links, supposed, plan } = props;
  return (
    <div class="edit" id="form">
      <EditAside links={links} plan={plan} />
      <div>
        <p class="over">
          <a href={`/roofs/${roof.id}`}>{roof.label}</a>
        </p>
        <h1>{title}</h1>
        <p class="lead">{lead}</p>
        <Supposed supposed={supposed} />
        <SectionForm {...props} />
      </div>
    </div>
  );
}
