import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/core/drainage/judge.ts';
import { blockedWater, pluggedOutlets } from '../../../src/core/outlets/blocked.ts';
import { waysOut } from '../../../src/core/site/offers.ts';
import { siteOf } from '../../../src/core/site/site.ts';
import { meshOf } from '../../../src/core/surface/mesh.ts';
import { fortyByTwenty } from './forty-by-twenty.ts';

const parapets = [0, 1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 14 }));

/** 40 x 20 ft between parapets, a ridge across the middle, one drain in each half; the file's parts may be changed. */
function ridgeRoof(ridgeIn: number, changes: object = {}) {
  const readings = [0, 20].flatMap((y) => [
    [0, y, 0],
    [20, y, ridgeIn],
    [40, y, 0],
  ]);
  const roof = fortyByTwenty({
    edges: parapets,
    outlets: [
      { id: 'D1', kind: 'drain', at: [0.5, 10], sizeIn: 4 },
      { id: 'D2', kind: 'drain', at: [39.5, 10], sizeIn: 4 },
    ],
    existing: { readings, sense: 'height', readOn: 'covering' },
    deck: { liveLoadPsf: 20 },
    ...changes,
  });
  const site = siteOf(roof);
  const mesh = meshOf(site.measured.patches);
  return { site, mesh, ways: { outlets: roof.outlets } };
}

const findings = (ridgeIn: number, changes: object = {}) => {
  const { site, mesh, ways } = ridgeRoof(ridgeIn, changes);
  return blockedWater(site, mesh, ways, new Map(), true).findings;
};
const ids = (ridgeIn: number, changes: object = {}) => findings(ridgeIn, changes).map(({ id }) => id);

describe('one outlet plugged alone', () => {
  it('its water rises to the saddle and leaves by the other: 3 in, 15.6 psf', () => {
    const { site, mesh, ways } = ridgeRoof(3);
    const [first] = pluggedOutlets(site, mesh, ways);
    expect(first.leavesBy).toEqual({ label: 'drain D2', kind: 'primary' });
    // The low points are the corners at x = 0, height 0; the saddle stands 3 in over them.
    expect(first.depthIn).toBeCloseTo(3, 9);
    expect(first.loadPsf).toBeCloseTo(15.6, 9);
  });

  it('a saddle that the roof bears is a second way out, a higher one is not', () => {
    expect(ids(3)).not.toContain('area-no-second-way-out');
    const stop = findings(6).find(({ id }) => id === 'area-no-second-way-out');
    expect(stop).toMatchObject({ level: 'stop', value: '6 in' });
    expect(stop?.message).toContain('31.2 psf');
    expect(ids(6, { deck: { liveLoadPsf: 40 } })).not.toContain('area-no-second-way-out');
  });

  it('judged by the surface, not by the count of outlets: a door lower than the saddle takes the water', () => {
    const door = { kind: 'door', fromFt: 4, toFt: 7, heightIn: 1.5 };
    const edges = [...parapets.slice(1), { side: 0, kind: 'wall', openings: [door] }];
    const stop = findings(3, { edges }).find(({ id }) => id === 'area-no-second-way-out');
    expect(stop?.message).toMatch(/goes in at wall/);
  });
});

describe('every outlet blocked', () => {
  it('the next spill is named with its depth and load', () => {
    const note = findings(0.5, { edges: parapets.map((edge) => ({ ...edge, topIn: 3 })) }).find(
      ({ id }) => id === 'blocked-depth',
    );
    expect(note).toMatchObject({ level: 'note', value: '15.6 psf', limit: '20 psf' });
    expect(note?.message).toMatch(/3\.00 in deep .* over parapet/);
  });

  it('more than the live load is a stop that says what the water waits for', () => {
    const stop = findings(0.5).find(({ id }) => id === 'engineer-first');
    expect(stop).toMatchObject({ level: 'stop', value: '72.8 psf' });
    expect(stop?.message).toContain('before it runs over parapet');
  });

  it('a pipe, a curb or a window lower than the parapet lets the water in first', () => {
    const pipes = [{ at: [10, 10], kind: 'conduit', topIn: 2 }];
    const stop = findings(0.5, { pipes }).find(({ id }) => id === 'sleeve-is-overflow');
    expect(stop).toMatchObject({ level: 'stop', where: 'conduit pipe 1' });
    const outline = [
      [8, 8],
      [12, 8],
      [12, 12],
      [8, 12],
    ];
    const curbs = [{ id: 'skylight', kind: 'skylight', outline, heightIn: 1 }];
    expect(findings(0.5, { curbs }).find(({ id }) => id === 'sleeve-is-overflow')?.where).toBe('the skylight curb');
  });

  it('a sleeve below a working overflow is a stop; above it nothing is said', () => {
    const outlets = [
      { id: 'D1', kind: 'drain', at: [0.5, 10], sizeIn: 4 },
      { id: 'O1', kind: 'scupper', side: 1, alongFt: 10, widthIn: 12, heightIn: 6, inletIn: 2, role: 'overflow' },
    ];
    const at = (topIn: number) => ids(0, { outlets, pipes: [{ at: [10, 10], kind: 'conduit', topIn }] });
    expect(at(1)).toContain('sleeve-below-overflow');
    expect(at(8)).not.toContain('sleeve-below-overflow');
  });

  it('an open edge cannot be plugged: nothing is said', () => {
    const { site, mesh, ways } = ridgeRoof(6);
    expect(blockedWater(site, mesh, ways, new Map(), false).findings).toEqual([]);
    const { offers, openAt } = waysOut(site, mesh, ways);
    expect(judge(mesh, offers, openAt).trappedSqFt).toBe(0);
  });
});
