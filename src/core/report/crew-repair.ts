import type { WorkStep } from './crew-step.ts';
import { repairFigures } from './page-scope.ts';
import type { Assessment, RepairWork, ScopeReport } from './types.ts';

const stepOf = (work: RepairWork): WorkStep => ({
  title: `Repair: ${work.title.charAt(0).toLowerCase()}${work.title.slice(1)}`,
  hold: false,
  lines: [`Places by their number on the plan: ${work.places.join('. ')}.`, ...work.lines, ...repairFigures(work)],
});

/** Common practice, no source; the coating's maker says what it bonds to. */
const coatStep = ({ ways }: ScopeReport): WorkStep => ({
  title: 'Coat',
  hold: true,
  lines: [
    ...(ways.find(({ id }) => id === 'coat')?.reasons ?? []).map(({ text }) => text),
    'Only over a roof that is dry, clean and mended. Wash it, let it dry, and pull a test strip of the coating from the old surface.',
    'Go: the strip tears before it lets go. Thickness and coats are those of the maker’s written word.',
    'Stop: a strip that peels, damp that shows, or water that stands.',
  ],
});

const upkeep: WorkStep = {
  title: 'Upkeep',
  hold: false,
  lines: ['Nothing that was found asks for repairs. Clear every way out, and look it over in spring and in fall.'],
};

const last: WorkStep = {
  title: 'Run water',
  hold: true,
  lines: ['Hose every mended place from below upward, with somebody inside. Outlets open, strainers in.'],
};

/**
 * Order of work where the old roof stays and nothing is laid on it; null where a new roof is what was found to
 * be needed, or nothing is settled.
 */
export function repairOrder({ scope }: Assessment): WorkStep[] | null {
  if (scope === undefined || (scope.recommended !== 'repair' && scope.recommended !== 'coat')) return null;
  if (scope.comesTo === 'upkeep') return [upkeep];
  return [...scope.repairs.map(stepOf), ...(scope.recommended === 'coat' ? [coatStep(scope)] : []), last];
}
