import { nearTie } from '../../../reference/membranes/weights.ts';
import { sourceNote } from '../finding.ts';
import type { Finding, MembraneReport, MembraneWeighing } from '../report/types.ts';
import { figure } from '../safety/figure.ts';
import { type AttachmentChoice, attachmentChoices } from './attachment.ts';
import type { MembraneFacts } from './facts.ts';
import { flipsTo } from './flip.ts';
import { flipWords } from './flip-words.ts';
import { membraneNotes } from './notes.ts';
import { type MembraneId, membraneOf, membranes } from './options.ts';
import { flipDistance, type Ranked, rank, rankedReports, vetoedReport, weighingReport } from './reports.ts';
import { vetoesOf } from './vetoes.ts';
import { type WeighedSituation, weighSituation } from './weights.ts';

export interface MembraneComparison {
  /** Ranked options first, best on top; then the vetoed ones in the order of the table. */
  reports: readonly MembraneReport[];
  chosen: MembraneId | null;
  /** How the chosen covering is held. */
  attachment: AttachmentChoice | null;
  weighing: MembraneWeighing;
  notes: readonly Finding[];
}

function nearTieNote(ranked: readonly Ranked[], { weights, own }: WeighedSituation): Finding[] {
  const [winner, ...rivals] = ranked;
  if (!winner) return [];
  const close = rivals
    .flatMap((rival) => flipsTo(winner, rival, ranked, weights).map((flip) => ({ flip, rival })))
    .sort((a, b) => flipDistance(a.flip) - flipDistance(b.flip))[0];
  if (!close || flipDistance(close.flip) > nearTie.weightMargin) return [];
  return [
    {
      id: 'near-tie',
      level: 'note',
      where: 'membrane',
      message: `Near tie: ${winner.membrane.shortName} (${figure(winner.score)}) and ${close.rival.membrane.shortName} (${figure(close.rival.score)}). The second would win if ${flipWords(close.flip, own ? 'given' : 'assumed')}. Show the owner both.`,
      value: close.flip.to.toFixed(3),
      limit: close.flip.from.toFixed(3),
      source: sourceNote(nearTie),
    },
  ];
}

function askedNote(facts: MembraneFacts, reports: readonly MembraneReport[], chosen: string | null): Finding[] {
  const asked = reports.find((report) => report.id === facts.askedFor);
  if (!asked || asked.id === chosen) return [];
  const source = asked.veto?.source ?? sourceNote({ source: 'practice', at: 'membrane choice', grade: 'practice' });
  const winner = reports[0];
  const message = asked.veto
    ? `${asked.name} was asked for and is out ${facts.base === 'new-boards' ? 'for the new roof that is drawn' : 'on this roof'}: ${asked.veto.why}`
    : `${asked.name} was asked for. It may be used; it scores ${figure(asked.score ?? 0)} against ${figure(winner?.score ?? 0)} for ${winner?.name}. ${asked.flips.join(' ')}`;
  const level = asked.veto ? 'fix' : 'note';
  return [{ id: 'asked-membrane', level, where: 'membrane', message, value: null, limit: null, source }];
}

function nothingLeft(ranked: readonly Ranked[]): Finding[] {
  if (ranked.length > 0) return [];
  return [
    {
      id: 'no-membrane',
      level: 'stop',
      where: 'membrane',
      message:
        'No covering passes as the job stands. Each option below says what rules it out: settle what is not known, give the roof its slope, or choose another date for the work.',
      value: null,
      limit: null,
      source: null,
    },
  ];
}

/** What would win if the date did not rule it out: a temperature is a reason to wait before it is a reason to change. */
function warmerDayNote(facts: MembraneFacts, chosen: MembraneId | null): Finding[] {
  if (facts.workTemperatureF === null) return [];
  const warm = compareMembranes({ ...facts, workTemperatureF: null }).chosen;
  if (warm === null || warm === chosen) return [];
  const leastF = attachmentChoices(warm, facts)[0]?.leastWorkF ?? null;
  return [
    {
      id: 'wait-for-warmth',
      level: 'note',
      where: 'membrane',
      message: `Only the date rules out ${membraneOf(warm).shortName}, which would win on a warmer day${leastF === null ? '' : ` (${leastF} F and rising)`}.`,
      value: `${figure(facts.workTemperatureF, 0)} F`,
      limit: leastF === null ? null : `${leastF} F`,
      source: sourceNote({ source: 'practice', at: 'application temperature', grade: 'practice' }),
    },
  ];
}

/**
 * Compares the coverings for one job: vetoes first, then a weighted sum, then what would change the answer.
 * A vetoed option has no score and never ranks. Deterministic; ties keep the order of the table.
 * Source: the tables of reference/membranes. Correctness: tests/published/membrane-choice.test.ts, tests/cases/membrane.test.ts
 */
export function compareMembranes(facts: MembraneFacts): MembraneComparison {
  const weighed = weighSituation(facts);
  const judged = membranes.map((membrane) => ({ membrane, vetoes: vetoesOf(membrane, facts) }));
  const ranked = rank(
    judged.filter(({ vetoes }) => vetoes.length === 0).map(({ membrane }) => membrane),
    weighed,
  );
  const chosen = ranked[0]?.id ?? null;
  const attachment = chosen ? (attachmentChoices(chosen, facts).find((way) => way.refused === null) ?? null) : null;
  const reports = [
    ...rankedReports(ranked, weighed, attachment),
    ...judged.filter(({ vetoes }) => vetoes.length > 0).map(({ membrane, vetoes }) => vetoedReport(membrane, vetoes)),
  ];
  return {
    reports,
    chosen,
    attachment,
    weighing: weighingReport(weighed, facts.ownWeights),
    notes: [
      ...nothingLeft(ranked),
      ...warmerDayNote(facts, chosen),
      ...askedNote(facts, reports, chosen),
      ...nearTieNote(ranked, weighed),
      ...membraneNotes(facts, weighed),
    ],
  };
}
