import { flatInstead } from '../../src/core/report/flat-words.ts';
import type { Assessment } from '../../src/core/report/types.ts';

export interface NothingLaidProps {
  assessment: Assessment;
  to: 'ask for' | 'lay';
}

const ofFlat: Readonly<Record<NothingLaidProps['to'], string>> = {
  'ask for': 'This request lists none of them: write the flat boards and the covering in yourself.',
  lay: 'No order of work is made for them here.',
};

/** In place of a layout: flat boards that are planned, or that none fits and what to relax. */
export function NothingLaid({ assessment, to }: NothingLaidProps) {
  const flat = flatInstead(assessment);
  if (flat !== null)
    return (
      <p>
        {flat} {ofFlat[to]}
      </p>
    );
  return (
    <p>
      <b class="stop">Stop</b> No layout fits, so there is nothing to {to} yet. {assessment.relax}
    </p>
  );
}
