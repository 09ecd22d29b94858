import { describe, expect, it } from 'vitest';
import { parseRoofObject } from '../../../src/input/parse-roof.ts';
import { roofFileJsonSchema } from '../../../src/input/schema.ts';
import { sections } from '../../../src/server/forms/sections.ts';

const outline = [
  [0, 0],
  [40, 0],
  [40, 20],
  [0, 20],
];
const read = (parts: object) => parseRoofObject({ version: 1, outline, ...parts });
const problems = (parts: object) => {
  const parsed = read(parts);
  return parsed.ok ? [] : parsed.problems.map(({ path, code }) => `${path}: ${code}`);
};
const drain = (parts: object) => ({ outlets: [{ id: 'D1', kind: 'drain', at: [20, 10], ...parts }] });

describe('inserts and strainers', () => {
  it('an insert that does not go into its pipe is put back to the person', () => {
    expect(problems(drain({ sizeIn: 4, insertBoreIn: 4 }))).toEqual(['outlets[0].insertBoreIn: conflict']);
    expect(problems(drain({ sizeIn: 4, insertBoreIn: '3 1/8"' }))).toEqual([]);
    expect(problems(drain({ insertBoreIn: 3 }))).toEqual([]);
  });

  it('a strainer is one of three; "not known" is an answer', () => {
    expect(problems(drain({ strainer: 'basket' }))).toEqual(['outlets[0].strainer: choice']);
    const parsed = read(drain({ strainer: 'not known', strainerFreeSqIn: 'not known' }));
    expect(parsed.ok && parsed.roof.outlets[0]).toMatchObject({ strainer: null, strainerFreeSqIn: null });
  });
});

describe('sag of joists', () => {
  it('is given once', () => {
    expect(problems({ existing: { surface: 'level', sag: { depthIn: 1, spanOver: 240 } } })).toEqual([
      'existing.sag: conflict',
    ]);
  });

  it('without a depth it is not known, and that is noted', () => {
    const parsed = read({ existing: { surface: 'level', sag: { spanFt: 16 } } });
    expect(parsed.ok && parsed.roof.existing.sag).toBeNull();
    expect(parsed.notes.map(({ path }) => path)).toContain('existing.sag');
  });
});

it('every new field has a box in a form and stands in the JSON schema', () => {
  const boxes = sections.flatMap(({ groups }) =>
    groups.flatMap(({ at, fields }) => fields.map(({ key }) => `${at}.${key}`)),
  );
  const schema = JSON.stringify(roofFileJsonSchema());
  for (const path of [
    'outlets.insertBoreIn',
    'outlets.strainer',
    'outlets.strainerFreeSqIn',
    'existing.sag.depthIn',
    'existing.sag.spanOver',
    'existing.sag.spanFt',
    'existing.sag.directionDeg',
    'place.groundSnowPsf',
  ]) {
    expect(boxes).toContain(path);
    expect(schema).toContain(`"${path.split('.').at(-1)}"`);
  }
});
