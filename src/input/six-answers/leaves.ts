import type { EdgeKind, OpeningKind } from '../../core/roof.ts';
import type { AnswerReader } from './answer-reader.ts';
import type { Answer } from './answers.ts';
import { leavesNowChoices, type SidePlace, sideChoices } from './choices.ts';

export type Size = readonly [lengthFt: number, depthFt: number];
export type Place = readonly [xFt: number, yFt: number];

/** Sides in the order of the outline, which starts at the left end of the low side. */
export const sideOrder: readonly SidePlace[] = ['low', 'right', 'back', 'left'];

export interface EdgeDraft {
  side: number;
  kind: EdgeKind;
  mayDrain: Answer;
  clearIn?: number | null;
  openings?: { kind: OpeningKind; heightIn: number | null }[];
}

/** The edge entry of each side; null = its kind is not known. */
export type Edges = Record<SidePlace, EdgeDraft | null>;

export function draft(place: SidePlace, kind: EdgeKind, mayDrain: Answer): EdgeDraft {
  return { side: sideOrder.indexOf(place), kind, mayDrain };
}

/** Question 2: what the sides are and which of them drains. */
export function readEdges(read: AnswerReader): Edges {
  const { answers } = read;
  const edges = Object.fromEntries(
    sideOrder.map((place) => {
      const kind = answers[`${place}SideKind`];
      const mayOpen = answers[`${place}SideMayOpen`];
      return [place, kind === 'unknown' ? null : draft(place, kind, mayOpen)];
    }),
  ) as Edges;
  if (answers.leavesNow === 'gutter-side') {
    const kind = edges.low?.kind === 'box-gutter' ? 'box-gutter' : 'gutter';
    edges.low = draft('low', kind, 'yes');
  }
  if (answers.leavesNow === 'drip-side') edges.low = draft('low', 'drip', 'yes');
  read.say(2, 'leavesNow', leavesNowChoices[answers.leavesNow]);
  return edges;
}

function readDrain(read: AnswerReader, [lengthFt, depthFt]: Size): { at: Place } {
  const along = read.measure(2, 'drainAlongText', 'length');
  const back = read.measure(2, 'drainBackText', 'length');
  if (along === null || back === null) {
    const text = 'the drain is drawn in the middle of the section until its place is measured';
    read.suppose(2, 'drainAlongText', text, 'a tape from two sides');
  }
  return { at: [along ?? lengthFt / 2, back ?? depthFt / 2] };
}

function readScupper(read: AnswerReader, edges: Edges, size: Size): { side: number; alongFt: number } {
  const asked = read.answers.scupperSide;
  const place: SidePlace = asked === 'unknown' ? 'low' : asked;
  if (asked === 'unknown') {
    read.suppose(
      2,
      'scupperSide',
      'the scupper is drawn in the low side until its place is known',
      'a look from the ground',
    );
  }
  if (edges[place] === null) {
    edges[place] = draft(place, 'parapet', 'yes');
    read.suppose(
      2,
      `${place}SideKind`,
      `the ${sideChoices[place]} has a scupper, so it is taken as a parapet`,
      'a look',
    );
  }
  const sideFt = place === 'low' || place === 'back' ? size[0] : size[1];
  const along = read.measure(2, 'scupperAlongText', 'length');
  if (along === null) {
    read.suppose(2, 'scupperAlongText', 'the scupper is drawn in the middle of its side', 'a tape from the corner');
  }
  return { side: sideOrder.indexOf(place), alongFt: along ?? sideFt / 2 };
}

/** Question 2: the drain or scupper that water leaves by today. */
export function readOutlets(read: AnswerReader, edges: Edges, size: Size): object[] {
  if (read.answers.leavesNow === 'drain') {
    return [{ id: 'D1', kind: 'drain', ...readDrain(read, size), role: 'primary', status: 'existing', working: true }];
  }
  if (read.answers.leavesNow === 'scupper') {
    const where = readScupper(read, edges, size);
    return [{ id: 'S1', kind: 'scupper', ...where, role: 'primary', status: 'existing', working: true }];
  }
  return [];
}
