import type { Child } from 'hono/jsx';
import type { DrawList } from '../../src/drawing/draw-list.ts';
import { printSvg } from '../../src/drawing/svg.ts';

export interface FigureProps {
  list: DrawList;
  /** Set apart from the other drawings of the page. */
  id: string;
  /** Address of the drawing at full size. */
  full?: string | null;
  children?: Child;
}

/** A drawing with its caption. */
export function Figure({ list, id, full = null, children }: FigureProps) {
  return (
    <figure>
      <div class="sheet" dangerouslySetInnerHTML={{ __html: printSvg(list, { id }) }} />
      <figcaption>
        <b>{list.title}.</b> {children}
        {full === null ? null : <a href={full}>full size</a>}
      </figcaption>
    </figure>
  );
}
