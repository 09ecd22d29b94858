import type { BoxView, FoldView, GroupView, ProblemView } from '../../../views/forms/form-view.ts';
import type { InputProblem } from '../../input/problems.ts';
import { parseMeasure, printMeasure } from '../../units/parse-measure.ts';
import { textOf } from './codec.ts';
import { type FormPlace, formSentence, labelled } from './form-words.ts';
import { joined, nearestOf, valueAt } from './paths.ts';
import { problemSentence } from './problems.ts';
import { sideWords } from './sides.ts';
import type { FieldSpec, GroupSpec, SectionSpec } from './spec.ts';

export interface SectionView {
  groups: readonly GroupView[];
  problems: readonly ProblemView[];
}

type Options = BoxView['options'];

const NOT_KNOWN = 'not known';

function optionsOf(spec: FieldSpec, sides: readonly string[]): Options {
  switch (spec.kind) {
    case 'choice': {
      const words = Object.entries(spec.options);
      return words.some(([key]) => key === 'unknown') ? words : [['', spec.none ?? NOT_KNOWN], ...words];
    }
    case 'yes-no':
      return [
        ['', NOT_KNOWN],
        ['yes', 'yes'],
        ['no', 'no'],
      ];
    case 'side':
      return sides.length === 0 ? [] : [['', 'choose one'], ...sides.map((words, i) => [String(i), words] as const)];
    default:
      return [];
  }
}

/** The choice that stands for nothing said. */
const emptyChoice = (options: Options): string => (options.some(([value]) => value === '') ? '' : 'unknown');

/** What was read, where the text is more than a plain number. */
export function understoodOf(spec: FieldSpec, text: string): string | null {
  if (spec.kind !== 'measure' || text === '' || /^-?[\d.]+$/.test(text)) return null;
  const reading = parseMeasure(text, spec.field);
  return reading.action === 'accept' ? `read as ${printMeasure(reading.value, spec.field)}` : null;
}

const areas: ReadonlySet<FieldSpec['kind']> = new Set(['outline', 'readings', 'ring']);
const MOST_ROWS = 30;

/** A fold stands open where one of its boxes holds something or has to be put right. */
export const foldOf = (title: string, boxes: readonly BoxView[]): FoldView => ({
  title,
  open: boxes.some(
    ({ value, understood, problems }) =>
      (value !== '' && value !== 'unknown') || understood !== null || problems.length > 0,
  ),
  boxes,
});

class Viewer {
  readonly #file: unknown;
  readonly #sides: readonly string[];
  readonly #problems: readonly InputProblem[];
  readonly #titles: readonly [string, string][];
  readonly #places = new Map<string, FormPlace>();
  readonly shown = new Map<string, InputProblem[]>();

  constructor(section: SectionSpec, file: unknown, problems: readonly InputProblem[]) {
    this.#titles = section.groups.map(({ at, title }) => labelled(at, title));
    this.#file = file;
    this.#problems = problems;
    this.#sides = sideWords(file);
  }

  #box(spec: FieldSpec, group: GroupSpec, at: string, preset?: string): BoxView {
    const id = joined(at, spec.key);
    const text = preset ?? textOf(spec, valueAt(this.#file, id));
    this.#placeAt(id, group, spec, text);
    const known = optionsOf(spec, this.#sides);
    const value = text === '' && known.length > 0 ? emptyChoice(known) : text;
    // What the file has and the list does not stays to be chosen, so that sending the form changes nothing.
    const options =
      known.length === 0 || known.some(([key]) => key === value) ? known : [...known, [value, value] as const];
    return {
      id,
      label: spec.label,
      hint: spec.hint ?? null,
      box: options.length > 0 ? 'select' : areas.has(spec.kind) ? 'area' : 'line',
      rows: Math.min(MOST_ROWS, value.split('\n').length + 1),
      value,
      options,
      understood: understoodOf(spec, value),
      problems: this.#said(id),
    };
  }

  #said(id: string): string[] {
    return (this.shown.get(id) ?? []).map((problem) => this.sentence(problem, id));
  }

  #placeAt(id: string, { fields }: GroupSpec, box: FieldSpec | null = null, text = ''): void {
    const labels = new Map([...this.#titles, ...fields.map(({ key, label }) => labelled(key, label))]);
    this.#places.set(id, { box, text, labels });
  }

  /** A problem in the words of this form; in those of the file where no box or group of it has it. */
  sentence(problem: InputProblem, home: string | undefined): string {
    const place = home === undefined ? undefined : this.#places.get(home);
    return place === undefined ? problemSentence(problem) : formSentence(problem, place);
  }

  #boxes(spec: GroupSpec, at: string, side?: number): Pick<GroupView, 'boxes' | 'folds' | 'grid'> {
    const view = (one: FieldSpec): BoxView =>
      this.#box(one, spec, at, side !== undefined && one.kind === 'side' ? String(side) : undefined);
    const titles = new Set(spec.fields.flatMap(({ fold }) => fold ?? []));
    return {
      grid: 'free',
      boxes: spec.fields.filter(({ fold }) => fold === undefined).map(view),
      folds: [...titles].map((title) => foldOf(title, spec.fields.filter(({ fold }) => fold === title).map(view))),
    };
  }

  entry(spec: GroupSpec, at: string, title: string, blank: boolean, side?: number): GroupView {
    this.#placeAt(at, spec);
    return {
      id: at,
      title,
      note: null,
      blank,
      removeName: blank || spec.list?.blank === 0 ? null : `${at}.remove`,
      problems: this.#said(at),
      ...this.#boxes(spec, at, side),
      groups: (spec.inner ?? []).map((inner) => this.group({ ...inner, at: joined(at, inner.at) })),
    };
  }

  #entries(spec: GroupSpec): GroupView[] {
    const { what, blank, every } = spec.list!;
    const list = valueAt(this.#file, spec.at);
    const there: unknown[] = Array.isArray(list) ? list : [];
    const nameOf = (entry: unknown, i: number): string => {
      const { side, kind, id } = (entry ?? {}) as { side?: unknown; kind?: unknown; id?: unknown };
      const sideName = spec.at === 'edges' && typeof side === 'number' ? this.#sides[side] : undefined;
      const own = [id, kindWords(spec, kind)].find((name) => typeof name === 'string');
      return sideName ?? (own === undefined ? `${what} ${i + 1}` : `${what} ${i + 1}: ${own}`);
    };
    const entries = there.map((entry, i) => this.entry(spec, `${spec.at}[${i}]`, nameOf(entry, i), false));
    const bare =
      every === 'side' ? this.#sides.map((_, i) => i).filter((i) => !there.some((one) => hasSide(one, i))) : [];
    const rows: (number | undefined)[] = [...bare, ...Array.from({ length: blank }, () => undefined)];
    const extra = rows.map((side, i) =>
      this.entry(
        spec,
        `${spec.at}[${there.length + i}]`,
        side === undefined ? `One more ${what}` : `${this.#sides[side]}: nothing said yet`,
        true,
        side,
      ),
    );
    return [...entries, ...extra];
  }

  group(spec: GroupSpec): GroupView {
    const { at, title, note = null, list } = spec;
    this.#placeAt(at, spec);
    const base = { id: at, title, note, blank: false, removeName: null, problems: this.#said(at) };
    return list === undefined
      ? { ...base, ...this.#boxes(spec, at), groups: [] }
      : { ...base, boxes: [], folds: [], grid: 'free', groups: this.#entries(spec) };
  }

  /** Puts every problem at its nearest box or group, where the form has one. */
  place(known: ReadonlySet<string>): void {
    for (const problem of this.#problems) {
      const at = nearestOf(problem.path, known);
      if (at !== null) this.shown.set(at, [...(this.shown.get(at) ?? []), problem]);
    }
  }
}

/** The kind of an entry as its list of choices says it. */
function kindWords({ fields }: GroupSpec, kind: unknown): unknown {
  const field = fields.find(({ key }) => key === 'kind');
  return field?.kind === 'choice' && typeof kind === 'string' ? (field.options[kind] ?? kind) : kind;
}

const hasSide = (entry: unknown, side: number): boolean => (entry as { side?: unknown } | null)?.side === side;

/** Every box and group of a form: its id, and its name with the entry that it stands in. */
function namesOf(group: GroupView, inside: string): [id: string, name: string][] {
  const within = (name: string): string => (inside === '' ? name : `${inside}: ${name}`);
  const boxes = [...group.boxes, ...group.folds.flatMap((fold) => fold.boxes)];
  return [
    ...(group.id === '' ? [] : [[group.id, group.title] as [string, string]]),
    ...boxes.map(({ id, label }): [string, string] => [id, within(label)]),
    ...group.groups.flatMap((entry) => namesOf(entry, entry.title)),
  ];
}

/**
 * One section of the roof file as a form, with every problem beside its box and in the summary.
 * @param elsewhere link for a problem whose box stands in another section
 */
export function sectionView(
  section: SectionSpec,
  file: unknown,
  problems: readonly InputProblem[],
  elsewhere: (path: string) => string,
): SectionView {
  const viewer = new Viewer(section, file, problems);
  const bare = section.groups.map((group) => viewer.group(group));
  const names = new Map(bare.flatMap((group) => namesOf(group, '')));
  viewer.place(new Set(names.keys()));
  const homes = new Map([...viewer.shown].flatMap(([at, list]) => list.map((problem) => [problem, at] as const)));
  return {
    groups: section.groups.map((group) => viewer.group(group)),
    problems: problems.map((problem) => {
      const home = homes.get(problem);
      return {
        href: home === undefined ? elsewhere(problem.path) : `#${home}`,
        where: (home === undefined ? undefined : names.get(home)) ?? problem.path,
        text: viewer.sentence(problem, home),
      };
    }),
  };
}
