import { plainNumber } from '../../units/print.ts';
import type { Assessment, MembraneEvidence, MembraneReport, MembraneWeighing, SourceNote } from './types.ts';

export interface MembraneRow {
  id: string;
  name: string;
  /** Likely points, and in brackets from the bad to the good end of its evidence. */
  points: string;
  places: string;
  /** One sentence. */
  words: string;
  /** Chosen, or first for some values inside the ranges. */
  mayBeFirst: boolean;
}

const spanWords = (low: number, high: number): string =>
  plainNumber(low, 1) === plainNumber(high, 1)
    ? plainNumber(low, 1)
    : `${plainNumber(low, 1)} to ${plainNumber(high, 1)}`;

function placesOf({ standing }: MembraneReport): string {
  if (standing == null) return '';
  const { bestPlace, worstPlace } = standing;
  return bestPlace === worstPlace ? `${bestPlace}` : `${bestPlace} to ${worstPlace}`;
}

/** The coverings that may be used, best first. */
export const membraneRows = ({
  membranes,
  chosenMembrane,
}: Pick<Assessment, 'membranes' | 'chosenMembrane'>): MembraneRow[] =>
  membranes
    .filter(({ veto }) => veto === null)
    .map((report) => ({
      id: report.id,
      name: report.name,
      points: pointsWords({
        low: report.standing?.lowScore ?? report.score ?? 0,
        likely: report.score ?? 0,
        high: report.standing?.highScore ?? report.score ?? 0,
      }),
      places: placesOf(report),
      words: report.short ?? report.flips[0] ?? '',
      mayBeFirst: report.id === chosenMembrane || report.standing?.bestPlace === 1,
    }));

export interface OutRow {
  names: string;
  why: string;
  source: SourceNote;
}

/** Rows that say the same stand as one. */
function together<T>(rows: readonly T[], key: (row: T) => string): (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const row of rows) {
    const found = groups.get(key(row));
    if (found === undefined) groups.set(key(row), [row]);
    else found.push(row);
  }
  return [...groups.values()];
}

/** Names hold commas of their own. */
const namesOf = (rows: readonly { name: string }[]): string => rows.map(({ name }) => name).join('; ');

/** What is out on this roof: coverings that the same reason rules out stand together. */
export function outRows({ membranes }: Pick<Assessment, 'membranes'>): OutRow[] {
  const out = membranes.flatMap(({ name, veto }) => (veto === null ? [] : [{ name, ...veto }]));
  return together(out, ({ why }) => why).map((rows) => ({
    names: namesOf(rows),
    why: rows[0].why,
    source: rows[0].source,
  }));
}

export interface WeighedRow {
  criterion: string;
  weight: string;
  score: string;
  text: string;
}

/** Reasons in the order of their weight; weights as shares of a hundred. */
export const weighedRows = ({ reasons }: MembraneReport): WeighedRow[] =>
  [...reasons]
    .sort((a, b) => b.weight - a.weight)
    .map(({ criterion, weight, score, text }) => ({
      criterion,
      weight: `${plainNumber(weight * 100)} %`,
      score: plainNumber(score, 1),
      text,
    }));

/** "7 (6 to 10)": likely points, with their range where there is one. */
export const pointsWords = ({ low, likely, high }: Pick<MembraneEvidence, 'low' | 'likely' | 'high'>): string =>
  low < high ? `${plainNumber(likely, 1)} (${spanWords(low, high)})` : plainNumber(likely, 1);

const trust: Readonly<Record<SourceNote['grade'], string>> = {
  found: 'read in the document',
  memory: 'from memory, verify',
  practice: 'common practice',
  computed: 'computed',
};

export interface EvidenceRow {
  names: string;
  figure: string;
  points: string;
  trust: string;
  source: SourceNote;
}

export interface EvidenceTable {
  criterion: string;
  title: string;
  weight: string;
  rows: EvidenceRow[];
}

const cellKey = ({ figure, low, likely, high, source }: MembraneEvidence): string =>
  [figure, low, likely, high, source.text, source.grade].join('|');

/** The evidence count by count, the heaviest first; coverings of which the same is known stand together, the best on top. */
export function evidenceTables({ membranes, membraneWeighing }: Assessment): EvidenceTable[] {
  return (membraneWeighing?.weights ?? []).map(({ criterion, title, weight }) => {
    const cells = membranes.flatMap(({ name, evidence = [] }) =>
      evidence.filter((cell) => cell.criterion === criterion).map((cell) => ({ name, cell })),
    );
    const rows = together(cells, ({ cell }) => cellKey(cell)).sort(
      ([a], [b]) => b.cell.likely - a.cell.likely || b.cell.high - a.cell.high,
    );
    return {
      criterion,
      title,
      weight: `${plainNumber(weight * 100)} %`,
      rows: rows.map((same) => ({
        names: namesOf(same),
        figure: same[0].cell.figure,
        points: pointsWords(same[0].cell),
        trust: trust[same[0].cell.source.grade],
        source: same[0].cell.source,
      })),
    };
  });
}

export interface WeightRow {
  title: string;
  weight: string;
  usual: string;
  by: string;
}

/** Weights as shares of a hundred, the heaviest first. */
export const weightRows = ({ weights, shifts, own }: MembraneWeighing): WeightRow[] =>
  weights.map(({ title, weight, usual, given }) => ({
    title,
    weight: `${plainNumber(weight * 100)} %`,
    usual: `${plainNumber(usual * 100)} %`,
    by: [
      given ? 'your own' : own ? 'what your own leave' : null,
      ...shifts.filter((shift) => shift.title === title).map(({ because }) => because),
    ]
      .filter((part) => part !== null)
      .join('; '),
  }));

/** Every source behind the choice of the covering. */
export const membraneSources = ({ membranes, membraneWeighing }: Assessment): SourceNote[] => [
  ...membranes.flatMap(({ veto, evidence = [] }) => [
    ...(veto === null ? [] : [veto.source]),
    ...evidence.map(({ source }) => source),
  ]),
  ...(membraneWeighing?.situations ?? []).map(({ source }) => source),
  ...(membraneWeighing?.shifts ?? []).map(({ source }) => source),
];
