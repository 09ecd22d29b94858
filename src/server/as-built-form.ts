import type { AsBuiltForm, AsBuiltResult } from '../../views/as-built-types.ts';
import { assessAsBuilt } from '../core/assess.ts';
import type { AsBuiltReading } from '../core/layout/as-built.ts';
import type { Layout } from '../core/report/types.ts';
import { measureProblem, shown } from '../input/problems.ts';
import { parseMeasure } from '../units/parse-measure.ts';
import { fractionInInches } from '../units/tidy.ts';
import type { Answer } from './answers.ts';
import { problemSentence } from './forms/problems.ts';

type Typed = Readonly<Record<string, string>>;

/** Name of the box of a check point. */
export const heightField = (pointId: string): string => `height-${pointId}`;

export interface HeightsRead {
  read: AsBuiltReading[];
  problems: { field: string; message: string }[];
}

/** Heights as they were typed at the check points of a layout; what was not read keeps the height of the design. */
export function readHeights({ checkPoints }: Layout, typed: Typed): HeightsRead {
  const heights: HeightsRead = { read: [], problems: [] };
  for (const { id } of checkPoints) {
    const field = heightField(id);
    const text = (typed[field] ?? '').trim();
    if (text === '') continue;
    const reading = parseMeasure(fractionInInches(text), 'height');
    if (reading.action === 'accept') heights.read.push({ id, heightIn: reading.value });
    else if (reading.action !== 'unknown') {
      heights.problems.push({ field, message: problemSentence(measureProblem(reading, shown(text), field)) });
    }
  }
  return heights;
}

/** Every check point with what was read there, and what the roof comes to as it was laid. */
function resultOf({ ready }: Answer, layout: Layout, read: readonly AsBuiltReading[]): AsBuiltResult | null {
  if (read.length === 0) return null;
  const report = assessAsBuilt(ready.roof, ready.ruleSet, layout.id, read);
  if (report === null) return null;
  return {
    points: layout.checkPoints.map(({ id, heightIn }) => {
      const point = report.points.find((one) => one.id === id);
      return { id, designIn: heightIn, readIn: point?.readIn ?? null, differenceIn: point?.differenceIn ?? null };
    }),
    judgement: report.judgement,
    goOn: report.drained,
    ponds: report.ponds,
    advice: report.advice,
  };
}

/** The as-built form of a layout as it comes back: all that was typed, what is wrong, and the judgement. */
export function asBuiltForm(answer: Answer, layout: Layout, typed: Typed): AsBuiltForm {
  const { read, problems } = readHeights(layout, typed);
  return { typed, problems, result: problems.length > 0 ? null : resultOf(answer, layout, read) };
}
