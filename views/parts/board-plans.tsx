import type { Assessment, Layout } from '../../src/core/report/types.ts';
import { boardSheets } from '../../src/drawing/board-sheets.ts';
import { Figure } from './figure.tsx';

/** The board plan, its key of greys, and for a large roof one sheet to each drainage area. */
export function BoardPlans({ assessment, layout }: { assessment: Assessment; layout: Layout }) {
  const { whole, key, parts } = boardSheets(assessment, layout);
  return (
    <>
      <section class="wide" aria-label={whole.title} tabindex={0}>
        <Figure list={whole} id="boards" />
      </section>
      <ul class="key" aria-label="Greys of the board plan, thin to thick">
        {key.map(({ fill, mark }) => (
          <li>
            <svg class="drawing" aria-hidden="true" viewBox="0 0 16 11">
              <path class={`fill-${fill}`} d="M0 0h16v11h-16z" />
            </svg>
            {mark}
          </li>
        ))}
      </ul>
      {parts.map(({ id, list }) => (
        <section class="wide sheet-break" aria-label={list.title} tabindex={0}>
          <Figure list={list} id={id} />
        </section>
      ))}
    </>
  );
}
