import {
  dampVerdictWords,
  energyRuleRows,
  monthWords,
  optionRows,
  ruleResultWords,
  testStateWords,
  ventFigures,
  winterWords,
} from '../core/report/page-damp.ts';
import type { Assessment } from '../core/report/types.ts';
import { table, wrapped } from './lines.ts';

const known = (line: string | null): string[] => (line === null ? [] : [line]);

/** Whether water gathers inside the roof, for a terminal. */
export function dampLines({ moisture }: Assessment): string[] {
  if (moisture === undefined) return [];
  const { verdict, answer, todo, notKnown, tests, retarder, venting, relax } = moisture;
  const said = [
    `${dampVerdictWords[verdict]} ${answer}`,
    ...todo.map((line) => `Do: ${line}`),
    ...notKnown.map((line) => `Not known: ${line}`),
    ...relax.map(({ text }) => `To relax: ${text}`),
    ...tests.map(
      ({ title, state, asked, found }) =>
        `${title}: ${testStateWords[state]}${found === '' ? '' : ` (${asked} asked for, ${found} there)`}.`,
    ),
    ...(verdict === 'not-asked' ? [] : [retarder.text, venting.text]),
    ...known(winterWords(moisture)),
    ...known(monthWords(moisture)),
  ].flatMap((line) => wrapped(line, 2, 2));
  if (moisture.options.length < 2) return said;
  const ways = table(optionRows(moisture), [
    { head: 'R', right: true, text: ({ r }) => r },
    { head: 'dry', text: ({ dry }) => dry },
    { head: 'code', text: ({ code }) => code },
    { head: 'target', text: ({ target }) => target },
    { head: 'way', text: ({ option, breaks }) => `${option.title}${breaks === '' ? '' : ` (against: ${breaks})`}` },
  ]);
  return [...said, ...ways];
}

/** Energy and cool-roof rules that bind, for a terminal; what does not apply is counted. */
export function energyLines({ energyRules }: Assessment): string[] {
  if (energyRules === undefined) return [];
  const rows = energyRuleRows(energyRules);
  const binding = rows.filter(({ result }) => result !== 'not-applicable');
  return [
    energyRules.answer,
    ...known(energyRules.targetNote),
    ...binding.map(
      ({ title, result, asked, found, clause }) =>
        `${ruleResultWords[result]}: ${title}, ${asked} asked for, ${found} there [${clause}]`,
    ),
    ...energyRules.relief.map(({ text }) => text),
    `${rows.length - binding.length} rules that are held do not apply here.`,
  ].flatMap((line) => wrapped(line, 2, 2));
}

/** Vents of the attic beside the section, for a terminal. */
export function ventLines({ vents }: Assessment): string[] {
  if (vents == null) return [];
  return [
    vents.answer,
    ...vents.warnings.map(({ text }) => `Watch: ${text}`),
    ...vents.todo,
    ...ventFigures(vents).map(({ what, value }) => `${what}: ${value}`),
    vents.flatPart.text,
  ].flatMap((line) => wrapped(line, 2, 2));
}
