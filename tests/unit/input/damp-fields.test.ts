import { expect, test } from 'vitest';
import { energyTarget } from '../../../src/core/layout/energy-target.ts';
import { dampAnswers } from '../../../src/core/moisture/answers.ts';
import { siteOf } from '../../../src/core/site/site.ts';
import { parseRoofObject } from '../../../src/input/parse-roof.ts';
import { rulesOf } from '../../cases/case-roof.ts';

const square = {
  version: 1,
  outline: [
    [0, 0],
    [30, 0],
    [30, 24],
    [0, 24],
  ],
};

function answersOf(more: object) {
  const parsed = parseRoofObject({ ...square, ...more });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const site = siteOf(parsed.roof);
  const ruleSet = rulesOf(parsed.roof);
  return dampAnswers({ site, ruleSet, layout: null, membrane: null, energy: energyTarget(site, ruleSet), budgets: [] });
}

test('insulation that is not there has no thickness: said with what to write instead', () => {
  const parsed = parseRoofObject({ ...square, insulation: { below: { kind: 'none', thicknessIn: 5.5 } } });
  expect(parsed.ok ? [] : parsed.problems.map(({ path, code }) => `${path}: ${code}`)).toEqual([
    'insulation.below: conflict',
  ]);
});

test.each([
  [{ insulation: { below: { kind: 'foam' } } }, 'insulation.below.kind'],
  [{ insulation: { flatIn: 'thick' } }, 'insulation.flatIn'],
  [{ insulation: { flatRPerIn: -1 } }, 'insulation.flatRPerIn'],
  [{ building: { winterHumidityPct: 120 } }, 'building.winterHumidityPct'],
  [{ place: { californiaZone: 17 } }, 'place.californiaZone'],
  [{ adjoining: { vents: [{ kind: 'chimney', count: 2 }] } }, 'adjoining.vents[0].kind'],
])('%j is a problem at its place', (more, path) => {
  const parsed = parseRoofObject({ ...square, ...more });
  expect(parsed.ok ? [] : parsed.problems.map((problem) => problem.path)).toContain(path);
});

test('what is taken is listed: R below, winter, humidity; what is given is not', () => {
  const room = { building: { below: 'living-ceiling' }, place: { climateZone: '6' } };
  const paths = (more: object): string[] => answersOf({ ...room, ...more }).assumed.map(({ path }) => path);
  expect(paths({ insulation: { below: { kind: 'batts' } } })).toEqual([
    'place.city',
    'insulation.below.r',
    'insulation.below.thicknessIn',
    'building.winterHumidityPct',
    'deck.joists.spacingIn',
  ]);
  const given = {
    place: { city: 'Burlington, VT', climateZone: '6A' },
    deck: { joists: { spacingIn: 16 } },
    insulation: { below: { kind: 'batts', r: 19 } },
    building: { below: 'living-ceiling', winterHumidityPct: 40 },
  };
  expect(paths(given)).toEqual([]);
});

test('damper rooms never make a roof safer', () => {
  const at = (winterHumidityPct: number) =>
    answersOf({
      building: { below: 'living-exposed-deck', winterHumidityPct },
      place: { city: 'Minneapolis, MN' },
      insulation: { flatIn: 6, flatRPerIn: 5.7 },
    }).report.moisture;
  const peaks = [25, 35, 45, 60].map((pct) => at(pct).balance?.peakGPerM2 ?? 0);
  expect(peaks).toEqual([...peaks].sort((a, b) => a - b));
  expect(peaks[3]).toBeGreaterThan(peaks[0] + 50);
  expect([at(25).retarder.advice, at(60).retarder.advice]).toEqual(['no', 'yes']);
});

test.each(['unheated', 'outdoors', 'attic'])('%s below: damp is not a question of this roof', (below) => {
  const { verdict, tests } = answersOf({ building: { below }, place: { climateZone: '6' } }).report.moisture;
  expect([verdict, tests]).toEqual(['not-asked', []]);
});

test('without a place nothing is made up', () => {
  const { verdict, notKnown, winter, balance } = answersOf({
    building: { below: 'living-exposed-deck' },
    insulation: { flatIn: 6 },
  }).report.moisture;
  expect([verdict, winter, balance]).toEqual(['not-known', null, null]);
  expect(notKnown.join(' ')).toContain('Town or climate zone');
});
