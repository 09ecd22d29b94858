import type { PlanPair } from '../../src/drawing/plan-pair.ts';
import type { PageLinks } from '../page-setting.ts';
import { Figure } from './figure.tsx';

/** Before and after side by side at the same scale. */
export function BeforeAfter({ pair, links }: { pair: PlanPair; links: PageLinks | null }) {
  return (
    <div class={pair.tall ? 'pair tall' : 'pair'}>
      <Figure list={pair.before} id="before" full={links === null ? null : `${links.drawing}/before.svg`} />
      {pair.after === null ? null : (
        <Figure
          list={pair.after}
          id="after"
          full={links === null ? null : `${links.drawing}/after.svg?layout=${pair.layoutId}`}
        >
          {pair.stateWords}
        </Figure>
      )}
    </div>
  );
}
