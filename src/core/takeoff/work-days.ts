import { detailRates, type WorkRate, workCrew, workRates } from '../../../reference/takeoff/work-days.ts';
import { feetInches, plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Layout, WorkDays, WorkPartDays } from '../report/types.ts';
import { comesOff, isStripped } from '../site/planned-work.ts';
import type { Site } from '../site/site.ts';
import { isWood } from '../site/wood-deck.ts';
import { type Job, jobOf, type TakeOffInput } from './job.ts';

const rates: readonly WorkRate[] = workRates;
type Band = readonly [number, number];

const bandOf = (work: WorkRate['work']): Band => rates.find((rate) => rate.work === work)!.squaresPerDay;

/** Days for so many squares: the fast band gives the least. */
function fieldPart(what: string, squares: number, [slow, fast]: Band, more = ''): WorkPartDays {
  return {
    what,
    leastDays: squares / fast,
    mostDays: squares / slow,
    basis: `${plainNumber(squares, 1)} squares at ${slow} to ${fast} a day${more}`,
  };
}

function tearOff({ site, areaSqFt }: Job): WorkPartDays[] {
  const { covering, layers } = site.given;
  if (!comesOff(site) || site.roof.existing.readOn === 'deck' || layers === 0) return [];
  const band = bandOf(covering === 'bur-gravel' ? 'tear-off-gravel' : 'tear-off');
  const more = layers === 1 ? '' : `, ${layers} layers`;
  return [fieldPart('Take the old roof off', (areaSqFt / 100) * layers, band, more)];
}

/** Tapered boards, flat layers and the cover board, each layer counted. */
function boards({ layout, areaSqFt }: Job): WorkPartDays {
  const tapered = layout.boards.reduce((sum, { net, runFt, widthFt }) => sum + net * runFt * widthFt, 0);
  const flat = layout.fill.reduce((sum, fill) => sum + fill.areaSqFt, 0);
  return fieldPart(
    'Lay boards and cover board',
    (tapered + flat + areaSqFt) / 100,
    bandOf('boards'),
    ', layer by layer',
  );
}

/** Rates are held for single-ply and for two plies that stick by themselves; for others they say the span. */
function covering({ membrane, attachment, areaSqFt }: Job): WorkPartDays {
  const squares = areaSqFt / 100;
  const what = 'Lay the covering';
  if (membrane?.traits.includes('single-ply')) {
    const small = squares < workCrew.smallUnderSquares;
    return fieldPart(
      what,
      squares,
      bandOf(small ? 'single-ply-small' : 'single-ply'),
      small ? ', a small section' : '',
    );
  }
  if (attachment?.kind === 'self-adhered') return fieldPart(what, squares, bandOf('two-ply-self-adhered'));
  const others = (['single-ply', 'single-ply-small', 'two-ply-self-adhered'] as const).map(bandOf);
  const span: Band = [Math.min(...others.map(([slow]) => slow)), Math.max(...others.map(([, fast]) => fast))];
  return fieldPart(
    what,
    squares,
    span,
    ': no rate is held for this covering, so the slowest and the fastest of the others',
  );
}

const lengthOf = ({ edges }: Job, uses: readonly string[]): number =>
  edges.reduce((sum, { use, site }) => sum + (uses.includes(use) ? site.lengthFt : 0), 0);

/** Pipes, curbs, tie-in and edges, two pairs at a time. */
function details(job: Job): WorkPartDays {
  const { pipes, curbs } = job.site.roof;
  const tieInFt = lengthOf(job, ['tie-in']);
  const edgeFt = lengthOf(job, ['open', 'rake', 'parapet', 'wall']);
  const { hoursPerPipe, hoursPerCurb, tieInFtPerHour, edgeFtPerHour } = detailRates;
  const hours = (i: 0 | 1): number =>
    pipes.length * hoursPerPipe[i] +
    curbs.length * hoursPerCurb[i] +
    tieInFt / tieInFtPerHour[1 - i] +
    edgeFt / edgeFtPerHour[1 - i];
  const days = (i: 0 | 1): number => hours(i) / workCrew.pairs / workCrew.hoursADay;
  const of = (count: number, one: string): string[] =>
    count === 0 ? [] : [`${count} ${one}${count === 1 ? '' : 's'}`];
  const along = (ft: number, name: string): string[] => (ft === 0 ? [] : [`${feetInches(ft)} of ${name}`]);
  const what = [
    ...of(pipes.length, 'pipe'),
    ...of(curbs.length, 'curb'),
    ...along(tieInFt, 'tie-in under shingles'),
    ...along(edgeFt, 'edge and wall'),
  ];
  return {
    what: 'Pipes, curbs and edges',
    leastDays: days(0),
    mostDays: days(1),
    basis: `${what.join(', ')}: ${plainNumber(hours(0), 1)} to ${plainNumber(hours(1), 1)} hours of two people`,
  };
}

/** Work on the deck, which nobody can count before it is seen. */
function underBoards(site: Site): string {
  if (isStripped(site)) return 'the new deck';
  return isWood(site.given.deckKind) ? 'bad wood' : 'mending of the deck';
}

/**
 * Working days for a crew of four, as a range, in dry weather.
 * Bands of common practice without a source, so the range is for planning and no promise; what is not counted is named.
 * Correctness: tests/unit/work-days.test.ts
 */
export function workDaysOf(input: TakeOffInput & { layout: Layout }): WorkDays {
  const job = jobOf(input);
  const parts = [...tearOff(job), boards(job), covering(job), details(job)];
  const sum = (pick: (part: WorkPartDays) => number): number => parts.reduce((all, part) => all + pick(part), 0);
  return {
    leastDays: Math.ceil(sum(({ leastDays }) => leastDays) - 1e-9),
    mostDays: Math.ceil(sum(({ mostDays }) => mostDays) - 1e-9),
    people: workCrew.people,
    parts,
    notCounted: `Rain, ${underBoards(job.site)}, levelling, new outlets and their pipes, raised curbs and the way to the roof come on top.`,
    source: sourceNote(workRates[0]),
  };
}
