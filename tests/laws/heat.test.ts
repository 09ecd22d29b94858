import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hotRun } from '../../src/core/heat/days.ts';
import type { FaceFlux } from '../../src/core/heat/march.ts';
import { periodicDay } from '../../src/core/heat/periodic-day.ts';
import { townWeathers } from '../../src/core/heat/place-weather.ts';
import { roofDay } from '../../src/core/heat/roof-day.ts';
import { type Layer, slabOf } from '../../src/core/heat/slab.ts';

const DAY_S = 86_400;

/** cosh, sinh and quotients of complex numbers [re, im]. */
type Complex = readonly [number, number];
const cosh = ([a, b]: Complex): Complex => [Math.cosh(a) * Math.cos(b), Math.sinh(a) * Math.sin(b)];
const sinh = ([a, b]: Complex): Complex => [Math.sinh(a) * Math.cos(b), Math.cosh(a) * Math.sin(b)];
const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const plus = ([a, b]: Complex, [c, d]: Complex): Complex => [a + c, b + d];
const over = (p: Complex, [c, d]: Complex): Complex => {
  const size = c * c + d * d;
  return times(p, [c / size, -d / size]);
};

const concrete: Layer = { name: 'slab', thicknessM: 0.12, kWPerMK: 1.5, densityKgPerM3: 2200, heatJPerKgK: 900 };
const FILM = 8;

/** Inner face of a slab whose outer face is held to a sine of a day, film inside: exact. */
function exactInner(): { amplitude: number; lagRad: number } {
  const { kWPerMK: k, densityKgPerM3: rho, heatJPerKgK: c, thicknessM: l } = concrete;
  const m = Math.sqrt(((2 * Math.PI) / DAY_S / 2) * ((rho * c) / k));
  const ml: Complex = [m * l, m * l];
  const t = over([1, 0], plus(cosh(ml), times(over([FILM / k, 0], [m, m]), sinh(ml))));
  return { amplitude: Math.hypot(...t), lagRad: -Math.atan2(t[1], t[0]) };
}

/** The same by steps and cells. */
function steppedInner(steps: number, cells: number): { amplitude: number; lagRad: number } {
  const slab = slabOf([concrete], concrete.thicknessM / cells);
  const held = 1e9;
  const outer = (step: number, faceC: number, out: FaceFlux): void => {
    out.wPerM2 = held * (Math.sin((2 * Math.PI * step) / steps) - faceC);
    out.perK = -held;
  };
  const inner = { filmWPerM2K: FILM, airC: new Float64Array(steps + 1) };
  const startC = new Float64Array(slab.capacity.length);
  const day = periodicDay({ slab, outer, inner, stepS: DAY_S / steps, startC }, 1e-11);
  let [re, im] = [0, 0];
  for (let i = 0; i < steps; i++) {
    const faceC = day.roomWPerM2[i] / FILM;
    re += (2 / steps) * faceC * Math.sin((2 * Math.PI * i) / steps);
    im += (2 / steps) * faceC * Math.cos((2 * Math.PI * i) / steps);
  }
  return { amplitude: Math.hypot(re, im), lagRad: -Math.atan2(im, re) };
}

describe('conduction', () => {
  it('converges at second order in step and cell: amplitude and lag of a slab under a sine', () => {
    const exact = exactInner();
    const errors = [1, 2, 4, 8].map((finer) => {
      const { amplitude, lagRad } = steppedInner(12 * finer, 4 * finer);
      return [Math.abs(amplitude - exact.amplitude), Math.abs(lagRad - exact.lagRad)] as const;
    });
    for (let i = 1; i < errors.length; i++) {
      for (const of of [0, 1] as const) {
        const order = Math.log2(errors[i - 1][of] / errors[i][of]);
        expect(order, `halving ${i}, ${of === 0 ? 'amplitude' : 'lag'}: ${errors[i][of]}`).toBeGreaterThan(1.8);
        expect(order).toBeLessThan(2.2);
      }
    }
    expect(errors[3][0] / exact.amplitude).toBeLessThan(1e-3);
  });

  const layer = fc.record({
    name: fc.constant('layer'),
    thicknessM: fc.double({ min: 0.0006, max: 0.2, noNaN: true }),
    kWPerMK: fc.double({ min: 0.025, max: 45, noNaN: true }),
    densityKgPerM3: fc.double({ min: 20, max: 7800, noNaN: true }),
    heatJPerKgK: fc.double({ min: 500, max: 1900, noNaN: true }),
  });
  const roofs = fc.record({
    layers: fc.array(layer, { minLength: 1, maxLength: 5 }),
    surface: fc.record({
      reflectance: fc.double({ min: 0.05, max: 0.9, noNaN: true }),
      emittance: fc.double({ min: 0.2, max: 0.95, noNaN: true }),
    }),
    town: fc.constantFrom(...townWeathers),
    cooled: fc.boolean(),
  });

  it('keeps its energy: what goes in less what comes out is what is stored, and a repeated day stores nothing', () => {
    fc.assert(
      fc.property(roofs, ({ town, cooled, ...roof }) => {
        const day = roofDay(roof, hotRun(town, cooled));
        const moved = day.roomWPerM2.reduce((sum, each) => sum + Math.abs(each), 0) * 600 + 1000;
        expect(Math.abs(day.enteredJ - day.leftJ - day.storedJ)).toBeLessThan(1e-6 * moved + 1);
        expect(Math.abs(day.storedJ)).toBeLessThan(1e-3 * Math.max(moved, Math.abs(day.enteredJ)) + 60);
        expect(day.days).toBeLessThan(100);
      }),
      { numRuns: 60 },
    );
  });

  // Steps of second order may swing by less than a tenth of a degree in a thin sheet as the sun goes down.
  it('a surface that reflects more is nowhere hotter, and lets no more in', () => {
    fc.assert(
      fc.property(roofs, ({ town, cooled, layers, surface }) => {
        const run = hotRun(town, cooled);
        const dark = roofDay({ layers, surface }, run);
        const light = roofDay({ layers, surface: { ...surface, reflectance: surface.reflectance + 0.05 } }, run);
        dark.faceC.forEach((each, i) => {
          expect(light.faceC[i]).toBeLessThan(each + 0.1);
        });
        expect(light.leftJ).toBeLessThan(dark.leftJ + 200);
      }),
      { numRuns: 40 },
    );
  });
});
