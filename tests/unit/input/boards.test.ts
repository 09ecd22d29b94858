import { describe, expect, test } from 'vitest';
import { catalogueOf, featherStrip, groundGroup, upperGroup } from '../../../src/core/layout/catalogue.ts';
import { parseRoofObject } from '../../../src/input/parse-roof.ts';
import { roofFileObject } from '../../../src/input/print-roof.ts';
import { applySection } from '../../../src/server/forms/apply.ts';
import { sectionOf } from '../../../src/server/forms/sections.ts';
import { gutterRoof, roofOf } from '../takeoff-roofs.ts';

const withBoards = (boards: unknown) => parseRoofObject(gutterRoof(30, 20, { boards }));
const problemsOf = (boards: unknown): string[] => {
  const parsed = withBoards(boards);
  return parsed.ok ? [] : parsed.problems.map(({ path, message, instead }) => `${path}: ${message} [${instead}]`);
};
const quarter = { slopeInPerFt: '1/4 in per ft', runFt: 4, lowEdgesIn: [0.5, 1.5, 2.5], fillStepIn: 3 };

describe('boards that the supplier has', () => {
  test('are read with their units, printed and read again', () => {
    const roof = roofOf(gutterRoof(30, 20, { boards: { groups: [quarter], flat: [{ thicknessIn: '1 1/2"' }] } }));
    expect(roof.boards.groups).toEqual([
      { slopeInPerFt: 0.25, runFt: 4, widthFt: 4, lowEdgesIn: [0.5, 1.5, 2.5], fillStepIn: 3 },
    ]);
    expect(roof.boards.flat).toEqual([{ thicknessIn: 1.5, lengthFt: 8, widthFt: 4 }]);
    expect(roofOf(roofFileObject(roof))).toEqual(roof);
  });

  test('nothing given: the boards that are common to the trade, gentlest slope first', () => {
    const catalogue = catalogueOf(roofOf(gutterRoof(30, 20)));
    expect(catalogue.slopesInPerFt).toEqual([0.0625, 0.125, 0.1875, 0.25, 0.375, 0.5]);
    expect(catalogue.leastPieceIn).toBe(4);
    expect(groundGroup(catalogue, 0.5)?.lowEdgesIn[0]).toBe(0.5);
    expect(upperGroup(catalogue, 0.5)?.lowEdgesIn[0]).toBe(0);
  });

  test('the trade groups themselves repeat', () => {
    for (const { slopeInPerFt, runFt, lowEdgesIn, fillStepIn } of catalogueOf(roofOf(gutterRoof(30, 20))).groups)
      expect(fillStepIn).toBeCloseTo(slopeInPerFt * runFt * lowEdgesIn.length, 12);
  });

  test('a low edge of 1/2 in at 1/4 is feathered over 24 in; over 4 ft at 1/8 no strip is made', () => {
    const catalogue = catalogueOf(roofOf(gutterRoof(30, 20)));
    expect(featherStrip(catalogue, upperGroup(catalogue, 0.25)!)).toMatchObject({ highIn: 0.5, runIn: 24 });
    expect(featherStrip(catalogue, upperGroup(catalogue, 0.125)!)).toBeNull();
  });

  test.each([
    [
      'a fill step that does not repeat',
      { groups: [{ ...quarter, fillStepIn: 2 }] },
      'boards.groups[0].fillStepIn: the steps do not repeat: 3 boards of 1 in rise 3 in together. [3]',
    ],
    [
      'a low edge off the rise',
      { groups: [{ ...quarter, lowEdgesIn: [0.5, 1.25] }] },
      'boards.groups[0].lowEdgesIn[1]: the board before it ends at 1.5 in: 0.25 in per ft over 4 ft rises 1 in. [[0.5, 1.5]]',
    ],
    [
      'no slope',
      { groups: [{ ...quarter, slopeInPerFt: 0 }] },
      'boards.groups[0].slopeInPerFt: a board of 0 in per ft',
    ],
    ['no low edge', { groups: [{ ...quarter, lowEdgesIn: [] }] }, 'boards.groups[0].lowEdgesIn: a group has at least'],
    ['a flat board of nothing', { flat: [{ thicknessIn: 0 }] }, 'boards.flat[0]: a flat board of 0 in'],
    ['a strip of nothing', { strips: [{ highIn: 0.5, runIn: 0 }] }, 'boards.strips[0]: an edge strip has'],
    ['a key that is not known', { leastPiece: 6 }, 'boards'],
  ])('%s is told', (_, boards, message) => {
    const problems = problemsOf(boards);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(message);
  });

  test('are entered in a form of their own, and taken out again', () => {
    const section = sectionOf('boards')!;
    const file = gutterRoof(30, 20) as object;
    const typed = {
      'boards.groups[0].slopeInPerFt': '1/4 in per ft',
      'boards.groups[0].runFt': '4',
      'boards.groups[0].lowEdgesIn': '0.5, 1.5, 2.5',
      'boards.groups[0].fillStepIn': '3',
      'boards.leastPieceIn': '6',
    };
    const after = applySection(section, file, typed);
    const roof = roofOf(after);
    expect(roof.boards.groups?.[0].lowEdgesIn).toEqual([0.5, 1.5, 2.5]);
    expect(roof.boards.leastPieceIn).toBe(6);
    const gone = applySection(section, after, { 'boards.groups[0].remove': 'on', 'boards.leastPieceIn': '' });
    expect(roofOf(gone).boards).toEqual(roofOf(file).boards);
  });
});
