import type { BoxView, GroupView, ProblemView } from '../../../views/forms/form-view.ts';
import { distanceFt, GRID_FT } from '../../core/geometry/vector.ts';
import type { Point } from '../../core/roof.ts';
import type { Survey, SurveyMark } from '../../core/survey/survey.ts';
import type { InputProblem } from '../../input/problems.ts';
import { readMeasure } from '../../units/parse-measure.ts';
import { fractionInInches, saysNotKnown } from '../../units/tidy.ts';
import type { Posted } from './apply.ts';
import { textOf } from './codec.ts';
import { valueAt, withValueAt } from './paths.ts';
import { problemSentence } from './problems.ts';
import { asTyped } from './ring-text.ts';
import { understoodOf } from './section-view.ts';
import { howRead, stringLines } from './sections.ts';
import type { FieldSpec, GroupSpec, SectionSpec } from './spec.ts';

/** A reading this near a mark was taken at it. */
const AT_THE_MARK_FT = 0.05;

const PATH = 'existing.readings';

const height: FieldSpec = { kind: 'measure', field: 'height', key: '', label: '' };

/** Box names hold whole steps of the plan grid. */
const STEPS_PER_FT = Math.round(1 / GRID_FT);

/**
 * Name of the box of a spot. It holds the place and not the number of the mark, so that a plan that was changed in
 * between never moves a reading to another spot.
 */
const boxOf = ([x, y]: Point): string => `spot_${Math.round(x * STEPS_PER_FT)}_${Math.round(y * STEPS_PER_FT)}`;

function spotOf(name: string): Point | null {
  const found = /^spot_(-?\d+)_(-?\d+)$/.exec(name);
  return found === null ? null : [Number(found[1]) / STEPS_PER_FT, Number(found[2]) / STEPS_PER_FT];
}

/** The readings of a file as they stand there; empty where there are none. */
function rowsOf(file: unknown): readonly unknown[] {
  const rows = valueAt(file, PATH);
  return Array.isArray(rows) ? rows : [];
}

/** Where a reading of the file was taken; null where its place cannot be read. */
function placeOf(row: unknown): Point | null {
  if (!Array.isArray(row)) return null;
  const [x, y] = [0, 1].map((k) => {
    const reading = typeof row[k] === 'number' || typeof row[k] === 'string' ? readMeasure(row[k], 'coordinate') : null;
    return reading?.action === 'accept' ? reading.value : null;
  });
  return x === null || y === null ? null : [x, y];
}

const isAt = (row: unknown, spot: Point): boolean => {
  const place = placeOf(row);
  return place !== null && distanceFt(place, spot) < AT_THE_MARK_FT;
};

/** The page says that the boxes are inches, and nobody writes fifty inch marks on a roof. */
const inInches = (typed: string): number | string => asTyped(fractionInInches(typed));

const shownAt = (row: unknown): string => (Array.isArray(row) ? textOf(height, row[2]) : '');

/**
 * A roof file with the readings of a form: a value beside a mark is put in or changed, an emptied one taken out, and
 * readings taken elsewhere stay. What cannot be read stays as it was typed.
 */
export function applyMarks(file: unknown, posted: Posted): unknown {
  const before = rowsOf(file);
  let rows = before;
  for (const [name, text] of Object.entries(posted)) {
    const spot = spotOf(name);
    if (spot === null) continue;
    const typed = text.trim();
    const i = rows.findIndex((row) => isAt(row, spot));
    if (typed === '' || saysNotKnown(typed)) rows = rows.filter((_, k) => k !== i);
    else if (i < 0) rows = [...rows, [...spot, inInches(typed)]];
    else if (typed !== shownAt(rows[i])) {
      const [x, y] = rows[i] as unknown[];
      rows = rows.map((row, k) => (k === i ? [x, y, inInches(typed)] : row));
    }
  }
  if (rows === before || (rows.length === 0 && before.length === 0)) return file;
  return withValueAt(file, PATH, rows.length === 0 ? undefined : rows);
}

/** What stands on the page of the marks beside them: how they were read, heights to tape, strings. */
export function aroundMarks({ heights }: Survey, { slug, title }: Pick<SectionSpec, 'slug' | 'title'>): SectionSpec {
  const taped: GroupSpec = {
    at: '',
    title: 'Heights to tape',
    note: 'From the roof right under it, straight up.',
    fields: heights.map(({ id, what, path }) => ({ ...height, key: path, label: `${id}: ${what} (inches)` })),
  };
  return {
    ...{ slug, title },
    lead: 'Type each value beside its mark as it was read: 3 1/4, 3.25, 8 cm. The numbers are those of the survey sheet and of the plan here.',
    groups: [
      { at: 'existing', title: 'How they were read', fields: howRead },
      ...(heights.length === 0 ? [] : [taped]),
      stringLines,
    ],
  };
}

/** Problems of the file by the reading they are about. */
function readingProblems(problems: readonly InputProblem[]): Map<number, InputProblem[]> {
  const byRow = new Map<number, InputProblem[]>();
  for (const problem of problems) {
    const found = /^existing\.readings\[(\d+)\]/.exec(problem.path);
    if (found === null) continue;
    const row = Number(found[1]);
    byRow.set(row, [...(byRow.get(row) ?? []), problem]);
  }
  return byRow;
}

export interface MarksView {
  group: GroupView;
  /** Problems that stand beside a mark. */
  problems: readonly ProblemView[];
  /** Their paths, so that no other box says them again. */
  placed: ReadonlySet<InputProblem>;
}

/** A box beside every mark, with what the file has for it. */
export function marksView({ marks }: Survey, file: unknown, problems: readonly InputProblem[]): MarksView {
  const rows = rowsOf(file);
  const said = readingProblems(problems);
  const placed = new Set<InputProblem>();
  const views: ProblemView[] = [];
  const taken = new Set<number>();
  const box = ({ id, at, place, why }: SurveyMark): BoxView => {
    const row = rows.findIndex((each) => isAt(each, at));
    if (row >= 0) taken.add(row);
    const own = said.get(row) ?? [];
    for (const problem of own) {
      placed.add(problem);
      views.push({ href: `#${boxOf(at)}`, where: `Mark ${id}`, text: problemSentence(problem) });
    }
    const value = row < 0 ? '' : shownAt(rows[row]);
    return {
      id: boxOf(at),
      label: `Mark ${id}`,
      hint: `${place}: ${why}`,
      box: 'line',
      rows: 1,
      value,
      options: [],
      understood: understoodOf(height, value),
      problems: own.map(problemSentence),
    };
  };
  const boxes = marks.map(box);
  const read = boxes.filter(({ value }) => value !== '').length;
  const others = rows.length - taken.size;
  const elsewhere = others === 0 ? '' : ` ${others} more were taken elsewhere; they stay, under “The roof today”.`;
  return {
    group: {
      id: 'marks',
      title: 'The marks',
      note: `${read} of ${marks.length} read.${elsewhere} Inches, unless another unit is written. Leave empty what was not read: half a sheet is worth keeping.`,
      ...{ blank: false, removeName: null, problems: [], folds: [], groups: [], grid: 'free' },
      boxes,
    },
    problems: views,
    placed,
  };
}
