import { inches, plainNumber } from '../../units/print.ts';
import { depthFigure, gallons, pounds } from './page-figures.ts';
import { limitRows } from './page-limits.ts';
import type { Assessment, Layout } from './types.ts';

/** The owner's page: plain words, short sentences. */

function standing({ existing }: Assessment): string[] {
  const ponds = existing.ponds.filter(({ birdBath }) => !birdBath);
  if (ponds.length === 0) return [];
  const deep = Math.max(...ponds.map(({ greatestDepthIn }) => greatestDepthIn));
  const volume = ponds.reduce((sum, { volumeGal }) => sum + volumeGal, 0);
  const weight = ponds.reduce((sum, { weightLb }) => sum + weightLb, 0);
  return [
    `Rain stays on this roof. At the worst place it is ${depthFigure(deep)} deep.`,
    `That is about ${gallons(volume)} of water, and it weighs about ${pounds(weight)}.`,
    'Water that stays wears the roof out, finds every small hole, and makes the wood sag more.',
  ];
}

/** What is wrong today. */
export function ownerToday(assessment: Assessment): string[] {
  const { existing } = assessment;
  const wet = standing(assessment);
  if (wet.length > 0) return wet;
  if (existing.verdict === 'ponds') return ['Water was seen standing on this roof long after the rain.'];
  if (existing.undrainedAreaSqFt > 0.5)
    return [
      `A part of this roof is level: about ${plainNumber(existing.undrainedAreaSqFt)} square feet.`,
      'Water there has no slope to run down. We do not know yet how long it stays.',
      ...(existing.decidedBy === null ? [] : [existing.decidedBy]),
    ];
  return ['We found no place where water stays. The roof slopes to its way out.'];
}

/** What is planned. */
export function ownerPlan(assessment: Assessment, layout: Layout | null): string[] {
  if (layout === null || layout.rejected !== null)
    return [
      'We have not found a plan that fits yet.',
      ...(layout?.rejected == null ? [] : [`What stands in the way: ${layout.rejected.why}.`]),
      ...(assessment.relax === null ? [] : [`What could help: ${assessment.relax}`]),
    ];
  const ways = layout.outlets.filter(({ role }) => role === 'primary');
  const names = ways.slice(0, 3).map(({ label }) => label.split(',')[0]);
  const more = ways.length > 3 ? ` and ${ways.length - 3} more` : '';
  return [
    `We build a gentle slope out of foam boards, from ${inches(layout.leastThicknessIn)} to ${inches(layout.greatestThicknessIn)} thick.`,
    `Rain then runs to: ${names.join(', ')}${more}. No place is left where it can stay.`,
    'The boards also keep heat in. The thin places keep less than the thick ones.',
    ...(layout.newOutlets === 0
      ? []
      : [
          `The plan makes ${layout.newOutlets === 1 ? 'one new way' : `${layout.newOutlets} new ways`} out for the water.`,
        ]),
  ];
}

/** What changes at doors, walls, windows, skylights and edges. */
export function ownerChanges(assessment: Assessment, layout: Layout | null): string[] {
  if (layout === null) return [];
  const rows = limitRows(assessment, layout);
  const limits = rows.slice(0, 10).map((row) => {
    switch (row.state) {
      case 'short':
        return `${row.where}: the new roof would come too high here by ${row.left.replace(' short', '')}. This has to be settled first.`;
      case 'raise':
        return `${row.where}: it has to be made higher by ${row.left.replace('raise it ', '')}.`;
      case 'holds':
        return `${row.where}: the new roof fits, with ${row.left}.`;
      default:
        return `${row.where}: nobody has measured its height yet.`;
    }
  });
  return [...limits, ...edgeLooks(layout)];
}

/** How high the roof's edge will stand, as seen from the yard. */
function edgeLooks({ nailers }: Layout): string[] {
  const byEdge = new Map<string, { least: number; most: number }>();
  for (const { edge, startIn, endIn } of nailers) {
    const seen = byEdge.get(edge) ?? { least: Number.POSITIVE_INFINITY, most: 0 };
    byEdge.set(edge, { least: Math.min(seen.least, startIn, endIn), most: Math.max(seen.most, startIn, endIn) });
  }
  return [...byEdge]
    .filter(([, { most }]) => most > 1.5)
    .slice(0, 8)
    .map(([edge, { least, most }]) =>
      most - least < 1 / 16
        ? `${edge}: the edge gets ${inches(most)} higher.`
        : `${edge}: the edge gets ${inches(least)} to ${inches(most)} higher.`,
    );
}

export interface OpenQuestion {
  what: string;
  findOut: string;
}

/** What nobody knows yet, and how to find out. */
export const ownerQuestions = ({ assumed }: Assessment): OpenQuestion[] =>
  assumed.flatMap(({ because, findOut }) =>
    findOut === null ? [] : [{ what: sentence(because), findOut: sentence(findOut) }],
  );

function sentence(text: string): string {
  const start = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.?!]$/.test(start) ? start : `${start}.`;
}
