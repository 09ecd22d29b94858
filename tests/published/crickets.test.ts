import { expect, test } from 'vitest';
import { creaseSlopeInPerFt } from '../../src/core/geometry/plane.ts';
import { cricketSlopes, twoWayWithCrickets } from '../../src/core/taper/pattern.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const vectors = { source: 'arithmetic', at: 'planes of a cricket add', grade: 'computed' } as const;
const shape = (boardInPerFt: number, widthToLength: number, fieldInPerFt = 0.25) => ({
  fieldInPerFt,
  boardInPerFt,
  widthToLength,
});

/** Slope along the valley where a field meets the face of a 1:2 cricket. */
const valley = (boardInPerFt: number): number | null => {
  const angle = Math.atan(0.5);
  const field = { atOriginIn: 0, gx: 0, gy: 0.25 };
  const face = {
    atOriginIn: 0,
    gx: boardInPerFt * Math.sin(angle),
    gy: 0.25 - boardInPerFt * Math.cos(angle),
  };
  return creaseSlopeInPerFt(field, face);
};

const face = (boardInPerFt: number, widthToLength: number): number =>
  cricketSlopes(shape(boardInPerFt, widthToLength)).faceInPerFt;

const rows: readonly CheckRow[] = [
  {
    ...vectors,
    id: '20-a',
    of: 'valley of 1/4 and a 1:2 cricket of 1/2',
    call: () => valley(0.5),
    expected: 0.1118,
    tol: 1e-5,
  },
  { ...vectors, id: '20-b', of: 'the same with boards of 1 in/ft', call: () => valley(1), expected: 0.1118, tol: 1e-5 },
  { ...vectors, id: '21-a', of: 'face, boards 1/2, 1:2', call: () => face(0.5, 1 / 2), expected: 0.29815, tol: 1e-4 },
  { ...vectors, id: '21-b', of: 'face, boards 1/2, 1:3', call: () => face(0.5, 1 / 3), expected: 0.2745, tol: 1e-4 },
  { ...vectors, id: '21-c', of: 'face, boards 1/2, 1:4', call: () => face(0.5, 1 / 4), expected: 0.2645, tol: 1e-4 },
  {
    ...vectors,
    id: '22',
    of: 'face, boards 1/4 on 1/4, 1:2',
    call: () => face(0.25, 1 / 2),
    expected: 0.1149,
    tol: 1e-4,
  },
  {
    ...vectors,
    id: '23-a',
    of: 'valley on 1/4, width to length 0.5774',
    call: () => cricketSlopes(shape(0.5, 0.5774)).valleyInPerFt,
    expected: 0.125,
    tol: 1e-4,
  },
  {
    ...vectors,
    id: '23-b',
    of: 'valley on 1/2, width to length 0.2582',
    call: () => cricketSlopes(shape(1, 0.2582, 0.5)).valleyInPerFt,
    expected: 0.125,
    tol: 1e-4,
  },
  {
    ...vectors,
    id: '55',
    of: 'boards 1/4 on 1/4, 1:2: the face is flatter than the field',
    call: () => face(0.25, 1 / 2) < 0.25 && cricketSlopes(shape(0.25, 1 / 2)).leastBoardInPerFt > 0.25,
    expected: true,
    tol: 0,
  },
];

checkRows('crickets on a field', rows);

test('on a field of 1/8 no cricket has a valley of 1/8 (check value 23)', () => {
  for (const widthToLength of [0.5, 1, 2, 10, 100]) {
    expect(cricketSlopes(shape(0.5, widthToLength, 0.125)).valleyInPerFt).toBeLessThan(0.125);
  }
});

test('boards so flat that the ridge would not shed are refused by name', () => {
  expect(() => twoWayWithCrickets(shape(0.2, 0.5))).toThrow(RangeError);
});
