import type { Situation } from './situation.ts';
import { type Because, type OwnerStatement, say, standingOn, takerOf } from './statement.ts';

interface StopValues {
  value: Because;
  limit: Because;
  where: Because;
}

/** What a stop means for people in the house, by the finding that says it. */
const words: readonly (readonly [RegExp, (values: StopValues) => OwnerStatement])[] = [
  [
    /^engineer-first$/,
    ({ value, limit, where }) =>
      standingOn(
        where.shown === 'the finished roof'
          ? say`On the new roof that is drawn here, water that cannot leave could weigh ${value}. This roof is taken to bear ${limit} (pounds on each square foot). Nobody goes on it when water stands. Call a structural engineer before any work starts.`
          : say`Water that cannot leave could weigh ${value} on this roof. It is taken to bear ${limit} (pounds on each square foot). Nobody goes on it when water stands. Call a structural engineer before any work starts.`,
        where,
      ),
  ],
  [
    /^engineer-ponding$/,
    ({ value }) =>
      say`The water that stands here weighs ${value} (pounds on each square foot). It bends the roof, and a bent roof holds more water. Nobody goes on it. Call a structural engineer before any work starts.`,
  ],
  [
    /^engineer-deck$/,
    ({ where }) =>
      standingOn(
        say`The deck was found soft, and it is not made of wood. Nobody goes on it there. Call a structural engineer before any work starts.`,
        where,
      ),
  ],
  [/^(no-way-out|no-outlet-known)$/, () => say`Rain has no way off this roof that we know of. It must get one first.`],
  [
    /^(no-second-way-out|area-no-second-way-out)$/,
    () => say`If one way out clogs, rain has no other way off this roof and it fills. It must get a second one.`,
  ],
  [
    /^(door|sleeve)-(is|below)-overflow$/,
    ({ where }) =>
      say`If the ways out clog, water runs into the house at ${where}. The roof needs an overflow that lies lower than that.`,
  ],
  [
    /^re-cover-barred$/,
    () =>
      say`The plan leaves the old roof in place, at least in part. That is ruled out by what was found: it has to come off.`,
  ],
  [
    /^re-cover-not-known$/,
    () =>
      say`The plan leaves the old roof in place, at least in part. Nothing may be laid over it before somebody has looked inside it.`,
  ],
  [
    /^phasing$/,
    ({ value }) =>
      standingOn(
        say`While the work goes on, no way out may be shut before a new one is open. One hard rain would overload the roof.`,
        value,
      ),
  ],
];

/** Stops about water, load and an old roof that may not stay, which people must know before anything else; each thing is said once. */
export function stopStatements({ assessment }: Situation): OwnerStatement[] {
  const take = takerOf(assessment);
  const said = assessment.findings.flatMap(({ id, level }, i): OwnerStatement[] => {
    const found = words.find(([ids]) => level === 'stop' && ids.test(id));
    if (found === undefined) return [];
    const value = (label: string, key: string): Because => take.quote('answer-stops', label, `findings.${i}.${key}`);
    const statement = found[1]({
      value: value('What it comes to', 'value'),
      limit: value('What is allowed', 'limit'),
      where: value('Where', 'where'),
    });
    return [statement.because.length > 0 ? statement : standingOn(statement, value('The stop in full', 'message'))];
  });
  return said.filter(({ text }, i) => said.findIndex((other) => other.text === text) === i);
}
