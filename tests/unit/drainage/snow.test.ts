import { describe, expect, it } from 'vitest';
import {
  driftAtWall,
  driftHeightFt,
  rainOnSnowPsf,
  slidePsf,
  snowDensityPcf,
} from '../../../src/core/drainage/snow.ts';
import { snowAssumed, snowFindings } from '../../../src/core/report/snow-findings.ts';
import { siteOf } from '../../../src/core/site/site.ts';
import { fortyByTwenty } from '../outlets/forty-by-twenty.ts';

const wall = { side: 1, kind: 'wall', wallHeightFt: 10 };
const gutter = { side: 3, kind: 'gutter' };

function site(groundSnowPsf: number | null, changes: object = {}) {
  const roof = fortyByTwenty({
    place: { groundSnowPsf },
    deck: { liveLoadPsf: 30 },
    edges: [wall, gutter],
    existing: { surface: 'level' },
    ...changes,
  });
  return siteOf(roof);
}
const told = (groundPsf: number | null, changes: object = {}, slopeInPerFt = 0.25) =>
  snowFindings(site(groundPsf, changes), slopeInPerFt);
const ids = (groundPsf: number | null, changes: object = {}, slopeInPerFt = 0.25) =>
  told(groundPsf, changes, slopeInPerFt).map(({ id }) => id);

describe('snow that is not known', () => {
  it('is listed with the way to find out, and nothing is judged; no snow is no finding', () => {
    expect(snowAssumed(site(null))[0]).toMatchObject({ path: 'place.groundSnowPsf' });
    expect(snowAssumed(site(null))[0].findOut).toContain('building office');
    expect(snowAssumed(site(0))).toEqual([]);
    expect(ids(null)).toEqual([]);
    expect(ids(0)).toEqual([]);
  });
});

describe('snow that governs', () => {
  it('drift against a wall: an engineer, with the figure and the limit', () => {
    // Windward over 40 ft: 0.75 x 2.08 ft x 17.25 pcf on 17.5 psf of even snow.
    const [drift] = told(25).filter(({ id }) => id === 'snow-drift');
    expect(drift).toMatchObject({ level: 'fix', value: '44 psf', limit: '30 psf' });
    expect(drift.message).toMatch(/^Engineer: snow drifts against what stands higher \(wall/);
    expect(drift.source?.text).toContain('ASCE 7-16, chapter 7');
    expect(ids(25, { deck: { liveLoadPsf: 60 } })).not.toContain('snow-drift');
  });

  it('a wall hardly higher than the even snow holds no drift, a low one a low drift', () => {
    const at = (wallFt: number | null) =>
      driftAtWall({ groundPsf: 25, wallFt, ownFetchFt: 40, upperFetchFt: null }).psf;
    expect(at(1.1)).toBe(0);
    expect(at(1.5)).toBeCloseTo(17.25 * (1.5 - 17.5 / 17.25), 9);
    expect(at(null)).toBe(at(10));
    expect(ids(25, { edges: [{ ...wall, wallHeightFt: 1 }, gutter] })).not.toContain('snow-drift');
  });

  it('snow blown down from a larger roof above is the worse drift where the building is known', () => {
    const load = (changes: object) =>
      Number.parseFloat(told(25, changes).find(({ id }) => id === 'snow-drift')!.value!);
    expect(load({ building: { planFt: [100, 60] } })).toBeGreaterThan(load({}) + 20);
  });

  it('even snow over a given live load is a stop, over an assumed one a thing to settle', () => {
    const level = (changes: object) => told(60, changes).find(({ id }) => id === 'snow-over-live-load')?.level;
    expect(level({})).toBe('stop');
    expect(level({ deck: {} })).toBe('fix');
    expect(ids(25)).not.toContain('snow-over-live-load');
  });

  it('a slide from the slope above: governs, or is told; a gentle slope keeps its snow', () => {
    const slope = (pitchIn12: number, shedsSqFt: number | null) => ({
      edges: [{ side: 1, kind: 'shingles-above', pitchIn12, shedsSqFt }, gutter],
      deck: { liveLoadPsf: 24 },
    });
    const level = (pitch: number, sheds: number | null) =>
      told(25, slope(pitch, sheds)).find(({ id }) => id === 'snow-slide')?.level;
    // 20 ft of eave, 300 sq ft: W 15 ft, 0.4 x 17.5 psf more.
    expect(slidePsf(25, 15)).toBeCloseTo(7, 9);
    expect(level(6, 300)).toBe('fix');
    expect(level(6, 200)).toBe('note');
    expect(level(6, null)).toBe('note');
    expect(level(2, 300)).toBeUndefined();
  });

  it('rain on snow: only up to 20 psf of ground snow, on roofs flat for their length', () => {
    expect(rainOnSnowPsf(20, 0.125, 40)).toBe(5);
    expect(rainOnSnowPsf(20, 0.25, 40)).toBe(0);
    expect(rainOnSnowPsf(20, 0.25, 70)).toBe(5);
    expect(rainOnSnowPsf(25, 0.125, 40)).toBe(0);
    expect(ids(20, { deck: { liveLoadPsf: 16 } }, 0.125)).toContain('rain-on-snow');
    expect(ids(20, { deck: { liveLoadPsf: 20 } }, 0.125)).not.toContain('rain-on-snow');
  });

  it('ice at the gutter and the tie-in over warm rooms, not over the open air', () => {
    expect(told(25).find(({ id }) => id === 'ice-at-edges')?.where).toMatch(/^gutter side/);
    expect(ids(25, { building: { below: 'outdoors' } })).not.toContain('ice-at-edges');
  });

  it('density stops at 30 pcf, short roofs count as 20 ft', () => {
    expect(snowDensityPcf(200)).toBe(30);
    expect(driftHeightFt(5, 25)).toBe(driftHeightFt(20, 25));
  });
});
