import { inches } from '../../../units/print.ts';
import type { Layout } from '../types.ts';
import type { Situation } from './situation.ts';
import { type OwnerStatement, say, type Taker, takerOf } from './statement.ts';

/** Less than a tape reads. */
const NOTHING_IN = 1 / 32;
const MOST = 8;

const startsLarge = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Doors, windows, walls and shingles: what is left, and what has to be settled first. */
function heights({ assessment, layout, at, plan }: Situation, take: Taker): OwnerStatement[] {
  const where = (i: number) => take.quote('answer-heights', 'Place', `budgets.${i}.where`, startsLarge);
  const uses = layout === null || plan !== 'taper' ? [] : layout.budgets;
  return assessment.budgets.flatMap(({ id, hardness, availableIn }, i) => {
    if (availableIn === null) return [say`${where(i)}: nobody has measured how high it stands.`];
    const use = uses.findIndex((each) => each.id === id);
    if (use < 0) {
      const room = take.figure(
        'answer-heights',
        'Height there before any board',
        'is',
        [`budgets.${i}.availableIn`],
        (v) => inches(Math.abs(v)),
      );
      return availableIn < -NOTHING_IN
        ? [say`${where(i)}: it is ${room} too low even before any board is laid.`]
        : hardness === 'stop'
          ? [say`${where(i)}: there is room for ${room}.`]
          : [];
    }
    const { leftIn } = uses[use];
    const left = take.figure('answer-heights', 'Height left there', 'is', [`${at}.budgets.${use}.leftIn`], (v) =>
      inches(Math.abs(v)),
    );
    if (hardness === 'stop')
      return leftIn < -NOTHING_IN
        ? [say`${where(i)}: the new roof comes ${left} too high. This has to be settled first.`]
        : [say`${where(i)}: the new roof fits, with ${left} left.`];
    return leftIn < -NOTHING_IN && layout?.newHeights === undefined
      ? [say`${where(i)}: it has to be made ${left} higher.`]
      : [];
  });
}

/** Curbs, pipes and overflow inlets that have to be made higher. */
export function raisedRows({ layout, plan }: Situation): number[] {
  if (plan !== 'taper') return [];
  return (layout?.newHeights?.raised ?? []).flatMap(({ raiseIn }, i) =>
    raiseIn !== null && raiseIn > NOTHING_IN ? [i] : [],
  );
}

/** What they are called: an overflow inlet is no curb. */
export function raisedNoun({ newHeights }: Layout, rows: readonly number[]): string {
  const inlets = rows.filter((i) => newHeights?.raised[i].kind === 'overflow').length;
  const one = rows.length === 1;
  if (inlets === rows.length) return one ? 'overflow inlet' : 'overflow inlets';
  if (inlets > 0) return 'curbs, pipes and overflow inlets';
  return one ? 'curb or pipe' : 'curbs and pipes';
}

function raised(situation: Situation, take: Taker): OwnerStatement[] {
  return raisedRows(situation).map((i) => {
    const path = `${situation.at}.newHeights.raised.${i}`;
    const where = take.quote('answer-heights', 'Place', `${path}.where`, startsLarge);
    return say`${where}: it has to be made ${take.figure('answer-heights', 'How much higher', 'is', [`${path}.raiseIn`], inches)} higher.`;
  });
}

/** Shingles that come off above the section, so that the new roof runs up under them. */
function stripped({ layout, at, plan }: Situation, take: Taker): OwnerStatement[] {
  if (plan !== 'taper') return [];
  return (layout?.newHeights?.tieIns ?? []).map(({ stripIn }, i) => {
    const path = `${at}.newHeights.tieIns.${i}`;
    const where = take.quote('answer-heights', 'Place', `${path}.where`, startsLarge);
    if (stripIn === null)
      return say`${where}: shingles come off along the whole edge. How far up is not known until the slope is measured.`;
    const strip = take.figure('answer-heights', 'Shingles to strip, up the slope', 'is', [`${path}.stripIn`], inches);
    return say`${where}: shingles come off, at least ${strip} up the slope, and are laid back over the new roof.`;
  });
}

/** The metal at the open edges, as it is seen from the yard. */
export function edgeStatements({ assessment, layout, at, plan }: Situation): OwnerStatement[] {
  if (plan !== 'taper') return [];
  const take = takerOf(assessment);
  const said = new Set<string>();
  return (layout?.newHeights?.faces ?? [])
    .map(({ lowIn, highIn }, i) => {
      const path = `${at}.newHeights.faces.${i}`;
      const edge = take.quote('answer-heights', 'Edge', `${path}.edge`, startsLarge);
      const low = take.figure('answer-heights', 'Metal face at its low end', 'is', [`${path}.lowIn`], inches);
      const high = take.figure('answer-heights', 'Metal face at its high end', 'is', [`${path}.highIn`], inches);
      return highIn - lowIn < 1 / 8
        ? say`${edge}: a metal face ${high} high, level all along.`
        : say`${edge}: a metal face that grows from ${low} to ${high}.`;
    })
    .filter(({ text }) => !said.has(text) && said.add(text))
    .slice(0, MOST);
}

/** What changes at shingles, doors, walls, windows, skylights and pipes. */
export function changeStatements(situation: Situation): OwnerStatement[] {
  const take = takerOf(situation.assessment);
  return [...stripped(situation, take), ...heights(situation, take), ...raised(situation, take)].slice(0, MOST + 2);
}
