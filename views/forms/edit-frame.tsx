import type { Child } from 'hono/jsx';
import type { DrawList } from '../../src/drawing/draw-list.ts';
import { Figure } from '../parts/figure.tsx';
import type { RoofInHand, SectionLink } from './form-view.ts';

/** What every part of a roof in hand has around it. */
export interface EditFrameProps {
  roof: RoofInHand;
  links: readonly SectionLink[];
  /** Plan of the last roof that could be read. */
  plan: DrawList | null;
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

/** The parts of the roof to go to and the plan, beside one part. A script puts the whole of it in place of itself. */
export function EditFrame({
  roof,
  links,
  plan,
  title,
  lead,
  children,
}: EditFrameProps & { title: string; lead: Child; children?: Child }) {
  return (
    <div class="edit" id="form">
      <div class="aside">
        <SectionLinks links={links} />
        {plan === null ? null : <Figure list={plan} id="plan" />}
      </div>
      <div>
        <p class="over">
          <a href={`/roofs/${roof.id}`}>{roof.label}</a>
        </p>
        <h1>{title}</h1>
        <p class="lead">{lead}</p>
        {children}
      </div>
    </div>
  );
}
