import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { parseRoofText } from '../../../src/input/parse-roof.ts';
import { roofFileJsonSchema } from '../../../src/input/schema.ts';

// biome-ignore lint/suspicious/noExplicitAny: a schema is a tree of any shape
type Node = any;
const schema = roofFileJsonSchema() as Node;

/** Every node of the schema with the words on the way to it. */
function* nodes(node: Node, path = '#'): Generator<[string, Node]> {
  yield [path, node];
  for (const [key, inner] of Object.entries(node)) {
    if (typeof inner === 'object' && inner !== null) yield* nodes(inner, `${path}/${key}`);
  }
}

test('it holds every key of the contract of version 1, and refuses others everywhere', () => {
  expect(Object.keys(schema.properties)).toEqual([
    '$schema',
    'version',
    'label',
    'invented',
    'place',
    'ruleSet',
    'building',
    'deck',
    'outline',
    'edges',
    'curbs',
    'pipes',
    'inflows',
    'outlets',
    'existing',
    'covering',
    'insulation',
    'adjoining',
    'boards',
    'prices',
    'slopeRule',
    'removedIn',
    'wind',
    'findings',
    'preferences',
  ]);
  expect(schema.required).toEqual(['version', 'outline']);
  const groups = [...nodes(schema)].filter(([, node]) => node.type === 'object');
  expect(groups.length).toBeGreaterThan(20);
  for (const [path, node] of groups) expect([path, node.additionalProperties]).toEqual([path, false]);
});

test('a measurement is one definition: a number or a text, with an example', () => {
  for (const name of ['length', 'height', 'thickness', 'slope', 'rain', 'rValue', 'coordinate']) {
    expect(schema.$defs[name].type).toEqual(['number', 'string']);
    expect(schema.$defs[name].description).toMatch(/A number in .*text as people write it/);
  }
  const edges = schema.properties.edges.anyOf[0].items.properties;
  expect(edges.fromFt.anyOf[0]).toEqual({ $ref: '#/$defs/length' });
  expect(edges.kind.enum).toContain('shingles-above');
});

test('"not known" is said wherever null may stand', () => {
  const optional = [...nodes(schema)].filter(([, node]) => node.anyOf?.some((one: Node) => one.type === 'null'));
  expect(optional.length).toBeGreaterThan(60);
  for (const [, node] of optional) expect(node.anyOf).toContainEqual({ const: 'not known' });
});

test('every reference leads to a definition, and nothing is left without a type', () => {
  for (const [path, node] of nodes(schema)) {
    if (typeof node.$ref === 'string')
      expect([path, Object.keys(schema.$defs)]).toEqual([
        path,
        expect.arrayContaining([node.$ref.replace('#/$defs/', '')]),
      ]);
  }
  expect(JSON.stringify(schema)).not.toContain('{}');
});

test('it is the same on every call and plain JSON', () => {
  expect(JSON.parse(JSON.stringify(roofFileJsonSchema()))).toEqual(schema);
});

test('the choices of the schema are those of the roof type', () => {
  const source = readFileSync('src/core/roof.ts', 'utf8');
  const edgeKind = /export type EdgeKind =([^;]+);/
    .exec(source)?.[1]
    .match(/'[^']+'/g)
    ?.map((word) => word.slice(1, -1));
  expect(schema.properties.edges.anyOf[0].items.properties.kind.enum).toEqual(edgeKind);
});

test('the published schema takes what the reader takes, and refuses wrong keys and words', () => {
  const published = z.fromJSONSchema(schema);
  const file = {
    version: 1,
    outline: [
      [0, 0],
      ["30'", 0],
      [30, 24],
      [0, 24],
    ],
    place: { city: 'not known' },
    edges: [{ side: 0, kind: 'gutter', topIn: ['1 ft', 14], gutter: { downspouts: [3] } }],
    outlets: [{ id: 'D1', kind: 'drain', at: [4, 4], sizeIn: null }],
    existing: { planes: [{ slopeInPerFt: '1/8"/ft', fallsToward: { side: 0 } }], buildUpIn: 'not known' },
  };
  expect(parseRoofText(JSON.stringify(file)).ok).toBe(true);
  expect(published.safeParse(file).success).toBe(true);
  expect(published.safeParse({ ...file, outline: { walk: "30', left, 24', left, 30', left, 24'" } }).success).toBe(
    true,
  );
  for (const bad of [
    { colour: 1 },
    { edges: [{ side: 0, kind: 'guter' }] },
    { outlets: [{ kind: 'drain' }] },
    { version: 2 },
  ]) {
    expect(parseRoofText(JSON.stringify({ ...file, ...bad })).ok).toBe(false);
    expect(published.safeParse({ ...file, ...bad }).success).toBe(false);
  }
});
