import { describe, expect, it } from 'vitest';
import { readRoofText } from '../../../src/answer.ts';
import { applySection, fileText } from '../../../src/server/forms/apply.ts';
import { sectionView } from '../../../src/server/forms/section-view.ts';
import { sectionOf, sections } from '../../../src/server/forms/sections.ts';
import type { SectionSpec } from '../../../src/server/forms/spec.ts';
import { demoText } from '../../../src/store/demo-roofs.ts';
import type { GroupView } from '../../../views/forms/form-view.ts';

const file = (): unknown => JSON.parse(demoText('back-section'));

function told(section: SectionSpec, posted: Readonly<Record<string, string>>): string[] {
  const after = applySection(section, file(), posted);
  const reading = readRoofText(fileText(after));
  if (reading.ok) return [];
  return sectionView(section, after, reading.problems, () => '#').problems.map(
    ({ where, text }) => `${where}: ${text}`,
  );
}

const findings = sectionOf('findings')!;

describe('problems in the words of the form', () => {
  it('two places of one finding are named as its boxes are', () => {
    const [text] = told(findings, { 'findings[1].at': '20, 2' });
    expect(text).toBe(
      'finding 2: Rotten eave: Its place is given 2 times: “Spot”, “Side”. Write instead: only one: “Spot” for a spot, “Side” for a stretch of an edge, “Its outline” for an area.',
    );
  });

  it('a stretch that runs backwards names the boxes that hold its ends; a side is chosen from the list', () => {
    const [text] = told(findings, { 'findings[1].fromFt': '27' });
    expect(text).toContain('“From” less than “To”');
    expect(told(findings, { 'findings[0].fromFt': '4' })[0]).toContain('Write instead: one of the list.');
  });

  it('what was typed is repeated as it was typed, and the example is one that the box takes', () => {
    const [text] = told(findings, { 'findings[0].at': 'by the tree' });
    expect(text).toContain('"by the tree" does not fit here.');
    expect(text).toContain('12, 7.5');
    expect(told(findings, { 'findings[0].at': '12, 7.5' })).toEqual([]);
  });

  it('a word that happens to be a key of the file stays as it was typed', () => {
    expect(told(findings, { 'findings[0].sizeIn': 'side' })[0]).toContain('"side" cannot be used');
  });

  it('a box that does not go with the kind of its entry is to be left empty', () => {
    const outlets = sectionOf('outlets')!;
    const after = { 'outlets[0].kind': 'drain', 'outlets[0].at': '3, 3', 'outlets[0].widthIn': '6' };
    expect(told(outlets, after).join(' ')).toContain(
      'It does not go with what was chosen for this entry. Write instead: nothing in this box.',
    );
  });

  const boxes = ({ boxes: own, folds, groups }: GroupView): string[] => [
    ...own.filter(({ box }) => box !== 'select').map(({ id }) => id),
    ...folds.flatMap((fold) => fold.boxes.filter(({ box }) => box !== 'select').map(({ id }) => id)),
    ...groups.flatMap(boxes),
  ];

  it.each(sections.map((section) => [section.slug, section] as const))(
    'no box of the part %s answers with brackets or keys of the file',
    (_, section) => {
      const view = sectionView(section, file(), [], () => '#');
      for (const id of view.groups.flatMap(boxes)) {
        for (const typed of ['by the tree', '1, 2, 3, 4', '-7']) {
          for (const text of told(section, { [id]: typed })) {
            expect(text, `${id}: ${typed}`).not.toMatch(
              /[[\]{}]|text in quotes|another value|\b[a-z]+(?:Ft|In|Pct|Deg|SqIn|SqFt)\b/,
            );
          }
        }
      }
    },
  );
});
