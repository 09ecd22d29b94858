import { safetyDeferral } from '../../../reference/safety/deferral.ts';
import { fallCautions } from '../../../reference/safety/fall-cautions.ts';
import { healthCautions } from '../../../reference/safety/health-cautions.ts';
import { hotWorkCautions } from '../../../reference/safety/hot-work-cautions.ts';
import { type CautionRow, type CautionTopic, cautionTopics } from '../../../reference/safety/row.ts';
import { siteCautions } from '../../../reference/safety/site-cautions.ts';
import { sourceNote } from '../finding.ts';
import type { Caution } from '../report/types.ts';
import type { SafetyFacts } from './facts.ts';
import { fallTriggers } from './triggers/fall.ts';
import { healthTriggers } from './triggers/health.ts';
import { hotWorkTriggers } from './triggers/hot-work.ts';
import { siteTriggers } from './triggers/site.ts';
import type { Trigger } from './triggers/trigger.ts';

/** Closes every list of cautions: local code, competent person, licensed practice; structure is an engineer's. */
export const deferral: string = safetyDeferral.text;

const rows: readonly CautionRow[] = [...fallCautions, ...hotWorkCautions, ...siteCautions, ...healthCautions];
const triggers: Readonly<Record<string, Trigger>> = {
  ...fallTriggers,
  ...hotWorkTriggers,
  ...siteTriggers,
  ...healthTriggers,
};

function evaluate(row: CautionRow, facts: SafetyFacts): Caution[] {
  const trigger = triggers[row.id];
  if (!trigger) throw new Error(`no trigger for caution ${row.id}`);
  return row.when.flatMap((when) => {
    const because = trigger(facts, when);
    if (because === null) return [];
    const { id, severity, topic, text } = row;
    return [{ id, severity, topic, when, because, text, source: sourceNote(row) }];
  });
}

/** A caution that stands for the same reason at a later moment is not said again. */
function saidBefore(caution: Caution, earlier: readonly Caution[]): boolean {
  return earlier.some((other) => other.id === caution.id && other.because === caution.because);
}

const isUnknown = (caution: Caution) => Number(/^(Not known|The \w+ (is|are) not known)/.test(caution.because));

/**
 * The cautions of one job, on the roof as it is, while the work goes on, and as it will be. What is not known counts as
 * present. Fall protection first, hot work next; inside a topic the graver first, and what is known before what is not.
 * The same id comes at two moments only where the facts differ.
 * Source: reference/safety. Correctness: tests/published/safety-fall.test.ts, tests/unit/safety-cautions.test.ts
 */
export function evaluateCautions(facts: SafetyFacts): readonly Caution[] {
  const place = (caution: Caution) => cautionTopics.indexOf(caution.topic as CautionTopic);
  return rows
    .flatMap((row) => evaluate(row, facts))
    .filter((caution, i, all) => !saidBefore(caution, all.slice(0, i)))
    .toSorted((a, b) => place(a) - place(b) || b.severity - a.severity || isUnknown(a) - isUnknown(b));
}
