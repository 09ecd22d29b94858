import type { Assessment } from '../../src/core/report/types.ts';

/** What the figures stand for, where that is not the plain tear-off that the findings ask for. */
export function Planned({ assessment: { planned } }: { assessment: Assessment }) {
  return planned.note === null ? null : (
    <p class="planned-note" role="note">
      {planned.note}
    </p>
  );
}
