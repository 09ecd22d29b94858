import { flatInstead } from '../core/report/flat-words.ts';
import { heatDaySentence, heatSentence, splitSentence, winterSentence } from '../core/report/page-heat.ts';
import { membraneRows, outRows, pointsWords } from '../core/report/page-membranes.ts';
import { searchLines } from '../core/report/page-search.ts';
import { sparePercent } from '../core/report/page-water.ts';
import { workDaysSentence } from '../core/report/page-work-days.ts';
import type { Assessment, Budget, Layout, MembraneReport, OutletReport } from '../core/report/types.ts';
import { measuredSlope, sentence } from '../core/report/words.ts';
import { area, decimalInches, inches, plainNumber, rain, rValue, slope } from '../units/print.ts';
import { dampLines, energyLines, ventLines } from './damp-text.ts';
import { part, table, wrapped } from './lines.ts';
import { scopeText } from './scope-text.ts';

const verdicts: Readonly<Record<Assessment['existing']['verdict'], string>> = {
  'meets-minimum': 'meets the minimum slope',
  'drains-below-minimum': 'drains, below the minimum slope',
  ponds: 'ponds',
  undecided: 'undecided',
};

const orUnknown = (value: number | null, print: (value: number) => string): string =>
  value === null ? 'not known' : print(value);

function today({ existing }: Assessment): string[] {
  const ponds = existing.ponds.map(
    ({ greatestDepthIn, areaSqFt, volumeGal, where, birdBath }) =>
      `${birdBath ? 'Bird bath' : 'Pond'} ${inches(greatestDepthIn)} deep, ${area(areaSqFt)}, ${plainNumber(volumeGal)} gal: ${where}.`,
  );
  const slopes = `Least slope: planes ${measuredSlope(existing, slope)}, valleys ${orUnknown(existing.leastValleySlopeInPerFt, slope)}.`;
  return [
    `Verdict: ${verdicts[existing.verdict]}. ${existing.why}`,
    ...(existing.decidedBy === null ? [] : [`What would decide it: ${existing.decidedBy}`]),
    slopes,
    ...ponds,
  ].flatMap((line) => wrapped(line, 2, 2));
}

const budgets = (rows: readonly Budget[]): string[] =>
  rows.length === 0
    ? []
    : table(rows, [
        { head: 'room', right: true, text: ({ availableIn }) => orUnknown(availableIn, inches) },
        { head: 'boards', right: true, text: ({ boardsIn }) => orUnknown(boardsIn, inches) },
        { head: 'gives', right: true, text: ({ rAvailable }) => orUnknown(rAvailable, rValue) },
        { head: 'if short', text: ({ hardness }) => (hardness === 'stop' ? 'rejected' : 'raise it') },
        { head: 'where', text: ({ where }) => where },
      ]);

function layouts(assessment: Assessment): string[] {
  const flat = flatInstead(assessment);
  if (flat !== null) return wrapped(flat, 2);
  const { layouts: rows, chosenLayout, search } = assessment;
  const offered = rows.filter(({ rejected }) => rejected === null);
  const table1 =
    offered.length === 0
      ? wrapped('No layout fits under the heights and drains.', 2)
      : table(offered, [
          { head: '', text: ({ id }) => (id === chosenLayout ? '*' : '') },
          { head: 'planes', right: true, text: ({ leastFaceSlopeInPerFt: s }) => orUnknown(s, slope) },
          { head: 'valleys', right: true, text: ({ leastValleySlopeInPerFt: s }) => (s === null ? 'none' : slope(s)) },
          { head: 'boards', right: true, text: boardsOf },
          { head: 'board ft', right: true, text: ({ volumeBoardFt }) => plainNumber(volumeBoardFt) },
          { head: 'R least/mean', right: true, text: ({ thinnestR, averageR }) => rPair(thinnestR, averageR) },
          { head: 'layout', text: ({ title }) => title },
        ]);
  const rejected = rows.flatMap(({ title, rejected: why }) =>
    why === null
      ? []
      : wrapped(`Rejected: ${title}: ${sentence(why.why)}${why.relax === null ? '' : ` ${why.relax}`}`, 2, 2),
  );
  return [...table1, ...rejected, ...searchLines(search).flatMap((line) => wrapped(line, 2, 2))];
}

const boardsOf = ({ leastThicknessIn, greatestThicknessIn }: Layout): string =>
  `${inches(leastThicknessIn)} to ${inches(greatestThicknessIn)}`;

const rPair = (least: number, mean: number): string => `${plainNumber(least, 1)} / ${plainNumber(mean, 1)}`;

function spareText(outlet: OutletReport): string {
  const percent = sparePercent(outlet);
  return percent === null ? '?' : `${plainNumber(percent)} %`;
}

const outlets = (rows: readonly OutletReport[]): string[] =>
  rows.length === 0
    ? []
    : table(rows, [
        { head: 'outlet', text: ({ label }) => label },
        { head: 'drains', right: true, text: ({ drainsSqFt, addedSqFt }) => area(drainsSqFt + addedSqFt) },
        { head: 'flow', right: true, text: ({ flowGpm }) => orUnknown(flowGpm, (gpm) => `${plainNumber(gpm)} gpm`) },
        { head: 'spare', right: true, text: spareText },
        { head: 'carries', right: true, text: ({ adequate }) => (adequate === null ? '?' : adequate ? 'yes' : 'NO') },
        { head: 'needs', text: ({ needs, status }) => (status === 'proposed' ? `${needs} (new)` : needs) },
      ]);

function winnerText(winner: MembraneReport): string[] {
  const reasons = winner.reasons.map(({ criterion, text, score, weight }) => {
    const cell = winner.evidence?.find(({ title }) => title === criterion);
    const points = cell === undefined ? plainNumber(score, 1) : pointsWords(cell);
    return `- ${text} ${points} of 10, weight ${plainNumber(weight, 2)}`;
  });
  return [
    ...wrapped(`${winner.name}: ${plainNumber(winner.score ?? 0, 1)} of 10. ${winner.standing?.words ?? ''}`, 2, 2),
    ...reasons.flatMap((line) => wrapped(line, 4, 2)),
    ...winner.flips.flatMap((flip) => wrapped(flip, 2, 2)),
  ];
}

function membrane(assessment: Assessment): string[] {
  const { membranes: rows, chosenMembrane: chosen, membraneWeighing, sameWhichever = [] } = assessment;
  const winner = rows.find(({ id }) => id === chosen);
  const others = membraneRows(assessment).filter(({ id }) => id !== chosen);
  const lines = [
    others.length === 0
      ? null
      : `Behind it (points, over the ranges): ${others.map(({ name, points }) => `${name} ${points}`).join('; ')}.`,
    membraneWeighing === undefined ? null : membraneWeighing.why,
    ...outRows(assessment).map(({ names, why }) => `Not here: ${names}. ${why}`),
    assessment.whyNotTheSame,
    sameWhichever.length === 0 ? null : 'The same whichever is chosen:',
    ...sameWhichever.map(({ what, text }) => `- ${what}: ${text}`),
  ];
  return [
    ...(winner === undefined
      ? wrapped('No covering of the list suits this roof: see the reasons.', 2)
      : winnerText(winner)),
    ...lines.flatMap((line) => (line === null ? [] : wrapped(line, 2, 2))),
  ];
}

function materials({ materials: rows, moisture }: Assessment): string[] {
  if (rows.length === 0) return [];
  const held = moisture?.deckSheetHeld ?? null;
  return [
    ...(held === null ? [] : wrapped(held, 2)),
    ...table(rows, [
      { head: 'order', right: true, text: ({ orderQuantity }) => plainNumber(orderQuantity, 1) },
      { head: 'unit', text: ({ orderUnit }) => orderUnit },
      { head: 'item', text: ({ item, basis }) => `${item}: ${basis}` },
    ]),
  ];
}

const levels = { stop: 'STOP', fix: 'Fix', note: 'Note' } as const;

/** What a layout that is chosen still has to say: overflow and in-service slope. */
function chosenNotes(layout: Layout | undefined): string[] {
  if (layout === undefined) return [];
  const sag =
    layout.inServiceSlopeInPerFt === null
      ? ''
      : ` In service: ${decimalInches(layout.inServiceSlopeInPerFt, 3)} per ft.`;
  return [
    `Overflow: ${layout.overflow.required ? 'required' : 'not required'}. ${layout.overflow.note}`,
    `${layout.inServiceNote}${sag}`,
  ].flatMap((line) => wrapped(line, 2, 2));
}

function hotDay({ heat }: Assessment): string[] {
  if (heat === undefined) return [];
  return [
    heatSentence(heat),
    heat.split === null ? null : splitSentence(heat.split),
    winterSentence(heat),
    heatDaySentence(heat),
  ].flatMap((line) => (line === null ? [] : wrapped(line, 2, 2)));
}

/** The answer as text to read on a terminal. */
export function assessText(assessment: Assessment): string {
  const { section, ruleSet, rain: rate, existing, chosenLayout } = assessment;
  const chosen = assessment.layouts.find(({ id }) => id === chosenLayout);
  const rules = `${ruleSet.building.title}, ${ruleSet.plumbing.title}; rain ${rain(rate.primaryInPerHr)} (${rate.primaryBasis}), overflow ${rain(rate.overflowInPerHr)}`;
  const lines = [
    assessment.invented ? `${assessment.label} (an invented roof)` : assessment.label,
    `${area(section.areaSqFt)} (${plainNumber(section.squares, 1)} squares), ${assessment.place}`,
    ...wrapped(rules),
    '',
    ...wrapped(assessment.headline),
    ...(assessment.planned.note === null ? [] : wrapped(assessment.planned.note)),
    ...part('The roof today', today(assessment)),
    ...scopeText(assessment),
    ...part('Height that is there', budgets(assessment.budgets)),
    ...part('Layouts', [...layouts(assessment), ...chosenNotes(chosen)]),
    ...part('Ways out for the water', outlets(chosen?.outlets ?? existing.outlets)),
    ...part('Covering', membrane(assessment)),
    ...part('A hot day on this roof', hotDay(assessment)),
    ...part('Damp inside the roof', dampLines(assessment)),
    ...part('Energy and cool-roof rules', energyLines(assessment)),
    ...part('The attic beside it', ventLines(assessment)),
    ...part('Materials', materials(assessment)),
    ...part('Days of work', chosen?.workDays === undefined ? [] : wrapped(workDaysSentence(chosen.workDays), 2, 2)),
    ...part(
      'Findings',
      assessment.findings.flatMap(({ level, where, message, source }) =>
        wrapped(`${levels[level]}: ${where}: ${message}${source === null ? '' : ` [${source.text}]`}`, 2, 2),
      ),
    ),
    ...part(
      'Cautions',
      assessment.cautions.flatMap(({ text, because }) => wrapped(`- ${text} (${because})`, 2, 2)),
    ),
    ...part(
      'Assumed, because it was not given',
      assessment.assumed.flatMap(({ path, value, because, findOut }) =>
        wrapped(
          `${path}: ${value}; ${sentence(because)}${findOut === null ? '' : ` To find out: ${sentence(findOut)}`}`,
          2,
          2,
        ),
      ),
    ),
    '',
    ...wrapped(assessment.deferral),
  ];
  return `${lines.join('\n')}\n`;
}
