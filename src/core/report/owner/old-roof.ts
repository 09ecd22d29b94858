import type { ScopeReport, ScopeWay } from '../types.ts';
import { type Situation, waterStands } from './situation.ts';
import { type OwnerStatement, say, standingOn, takerOf } from './statement.ts';

/** What should be done with the old roof, and why, or what has to be known first. */

const callWords: Readonly<Record<NonNullable<ScopeReport['comesTo']>, string>> = {
  upkeep: 'Keep the roof as it is.',
  repair: 'Mend it where it is broken. What was found does not call for a new roof.',
  coat: 'It can be coated. What was found does not call for a new roof.',
  're-cover': 'A new roof can go over the old one.',
  'tear-off': 'Tear the old roof off, down to the deck.',
  off: 'Build the deck and lay the new roof on it.',
};

const MEND_THEN_COAT = 'First mend what is broken. Then it can be coated. What was found does not call for a new roof.';

/** What settles it, as an owner would say it. */
const testWords: Readonly<Record<string, string>> = {
  engineer: 'Have a structural engineer look at the deck. Nobody stands on the soft place until then.',
  inspection: 'Have somebody note what is wrong, with photos.',
  'look-after-rain': 'Look from a window two days after a rain.',
  'count-layers': 'Have it counted how many old roofs lie there.',
  cores: 'Have a few small holes cut, to see whether it is wet inside.',
  scan: 'Have the roof scanned for damp, to see how far it reaches.',
  'open-wood': 'Have the soft place opened, until all is sound there.',
};

const outWords: Readonly<Record<ScopeWay['id'], string>> = {
  repair: 'Patching alone is ruled out',
  coat: 'A coating is ruled out',
  're-cover': 'A new roof over the old one is ruled out',
  'tear-off': 'A tear-off is ruled out',
};

/** What settles it, in the order in which it is done; holes and a scan tell the same, so one of them is enough. */
export function testStatements({ assessment }: Situation): OwnerStatement[] {
  const take = takerOf(assessment);
  const tests = assessment.scope?.tests ?? [];
  return tests
    .slice(0, 3)
    .map(({ id, what }, i) =>
      standingOn(
        id === 'scan' && tests[i - 1]?.id === 'cores'
          ? say`Or have the roof scanned for damp.`
          : say`${testWords[id] ?? what}`,
        take.quote('answer-scope', 'What settles it', `scope.tests.${i}.what`),
      ),
    );
}

/** What is not settled yet: whether it is mended at all, or how much of it comes off. */
function openLead(ways: readonly ScopeWay[]): string {
  const left = new Set(ways.flatMap(({ id, standing }) => (standing === 'barred' ? [] : [id])));
  if (left.has('repair') || left.has('coat'))
    return 'It is not settled yet whether to mend this roof or replace it. First do this:';
  return left.has('re-cover')
    ? 'Mending this roof is not enough. How much of it comes off is not settled yet. First do this:'
    : 'Only taking the old roof off is left, and what was found does not ask for that yet. First do this:';
}

/** What to do with the old roof, and why. */
export function scopeStatements(situation: Situation): OwnerStatement[] {
  const { assessment, today } = situation;
  const { scope } = assessment;
  const take = takerOf(assessment);
  if (scope === undefined) return [say`What to do with the old roof has not been worked out.`];
  const answer = take.quote('answer-scope', 'What to do with the old roof', 'scope.answer');
  const { recommended, comesTo, mends, ways } = scope;
  const why = (i: number, k = 0) => take.quote('answer-scope', ways[i].title, `scope.ways.${i}.reasons.${k}.text`);
  const chosen = ways.findIndex(({ id }) => id === recommended);
  const said = new Set(chosen < 0 ? [] : [ways[chosen].reasons[0]?.text]);
  const barred = ways.flatMap(({ standing, id, reasons }, i) => {
    if (standing !== 'barred') return [];
    const known = said.has(reasons[0].text);
    said.add(reasons[0].text);
    return [known ? standingOn(say`${outWords[id]} too.`, why(i)) : say`${outWords[id]}. ${why(i)}`];
  });
  if (comesTo === null)
    return [
      standingOn(say`${openLead(ways)}`, answer),
      ...testStatements(situation),
      ...(waterStands(today) ? [say`Wait with a price for the whole job until then.`] : []),
      ...barred,
    ];
  const call = comesTo === 'coat' && mends ? MEND_THEN_COAT : callWords[comesTo];
  return [
    standingOn(say`${call}`, answer),
    ...(ways[chosen].reasons.length === 0 ? [] : [say`${why(chosen)}`]),
    // Where nothing is asked for, or nothing is left of it, nothing has to be ruled out.
    ...(comesTo === 'upkeep' || comesTo === 'off' ? [] : barred),
  ];
}
