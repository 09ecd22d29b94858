import { membraneSources } from './page-membranes.ts';
import type { Assessment, Grade, Layout, SourceNote } from './types.ts';

const gradeWords: Record<Grade, string> = {
  found: 'read in the document',
  memory: 'from memory, verify',
  practice: 'common practice, no document',
  computed: 'computed here',
};

export interface SourceRow {
  /** Number that the marks on the page carry. */
  number: number;
  text: string;
  grade: string;
  verify: boolean;
}

const keyOf = ({ text, grade }: SourceNote): string => `${text}|${grade}`;

function dampNotes({ moisture, energyRules, vents }: Assessment): SourceNote[] {
  return [
    ...(moisture === undefined
      ? []
      : [
          ...moisture.tests.map(({ source }) => source),
          ...moisture.options.map(({ source }) => source),
          moisture.retarder.source,
          moisture.venting.source,
        ]),
    ...(energyRules === undefined
      ? []
      : [...energyRules.rows, ...energyRules.coolRoof, ...energyRules.relief].map(({ source }) => source)),
    ...(vents == null
      ? []
      : [
          vents.source,
          ...[...vents.vents, ...vents.conditions, ...vents.warnings, vents.flatPart].map(({ source }) => source),
        ]),
  ];
}

function notesOf(assessment: Assessment, layout: Layout | null): (SourceNote | null)[] {
  return [
    assessment.rain.source,
    ...assessment.budgets.map(({ source }) => source),
    ...assessment.existing.outlets.map(({ source }) => source),
    ...(layout === null ? [] : [layout.overflow.source, ...layout.outlets.map(({ source }) => source)]),
    ...(layout?.workDays === undefined ? [] : [layout.workDays.source]),
    ...(layout?.thermal?.bases.map(({ source }) => source) ?? []),
    ...(layout?.thermal?.checks.map(({ source }) => source) ?? []),
    ...(assessment.heat?.sources ?? []),
    ...(assessment.scope?.tests ?? []).map(({ source }) => source),
    ...(assessment.scope?.ways ?? []).flatMap(({ reasons }) => reasons.map(({ source }) => source)),
    ...(assessment.scope?.repairs ?? []).map(({ source }) => source),
    ...(assessment.scope?.wood?.rows ?? []).map(({ source }) => source),
    ...(assessment.inspection ?? []).map(({ source }) => source),
    ...dampNotes(assessment),
    ...(assessment.alternatives ?? []).map(({ source }) => source),
    ...membraneSources(assessment),
    ...assessment.materials.map(({ source }) => source),
    ...assessment.findings.map(({ source }) => source),
    ...assessment.workings.map(({ source }) => source),
    ...assessment.cautions.map(({ source }) => source),
  ];
}

/** All sources behind an answer, numbered in the order in which the pages use them. */
export class SourceBook {
  readonly rows: readonly SourceRow[];
  readonly #numbers = new Map<string, number>();

  constructor(assessment: Assessment, layout: Layout | null) {
    const rows: SourceRow[] = [];
    for (const note of notesOf(assessment, layout)) {
      if (note === null || this.#numbers.has(keyOf(note))) continue;
      const number = rows.length + 1;
      this.#numbers.set(keyOf(note), number);
      rows.push({ number, text: note.text, grade: gradeWords[note.grade], verify: note.grade === 'memory' });
    }
    this.rows = rows;
  }

  /** Number of a source; null for one that is not in the book. */
  numberOf(note: SourceNote): number | null {
    return this.#numbers.get(keyOf(note)) ?? null;
  }
}
