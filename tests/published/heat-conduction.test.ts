import { describe, expect, it } from 'vitest';
import { type FaceFlux, march } from '../../src/core/heat/march.ts';
import { periodicDay } from '../../src/core/heat/periodic-day.ts';
import { type Layer, resistanceOf, slabOf, steadyTemperatures } from '../../src/core/heat/slab.ts';

const layer = (name: string, thicknessM: number, k: number, density: number, heat: number): Layer => ({
  name,
  thicknessM,
  kWPerMK: k,
  densityKgPerM3: density,
  heatJPerKgK: heat,
});
const plywood = (thicknessM: number): Layer => layer('plywood', thicknessM, 0.12, 544, 1210);
const DAY_S = 86_400;

/** A film (or, where it is very good, a held temperature) outside. */
const film =
  (wPerM2K: number, airC: (step: number) => number) =>
  (step: number, faceC: number, out: FaceFlux): void => {
    out.wPerM2 = wPerM2K * (airC(step) - faceC);
    out.perK = -wPerM2K;
  };

/** Amplitude and lag [h] of the first harmonic of a day's values. */
function harmonic(values: ArrayLike<number>, steps: number): { amplitude: number; lagH: number } {
  let [re, im] = [0, 0];
  for (let i = 0; i < steps; i++) {
    const angle = (2 * Math.PI * i) / steps;
    re += (2 / steps) * values[i] * Math.sin(angle);
    im += (2 / steps) * values[i] * Math.cos(angle);
  }
  return { amplitude: Math.hypot(re, im), lagH: (-Math.atan2(im, re) * 24) / (2 * Math.PI) };
}

const HELD = 1e7;

describe('conduction, analytic cases', () => {
  // Half-space under a sine of 24 h: amplitude exp(-x/d), lag x/d over 2 pi of the day, d = sqrt(diffusivity P / pi).
  it.each([
    { of: 'plywood', whole: layer('deep plywood', 0.6, 0.12, 544, 1210), x: 0.05, left: 0.4935, lagH: 2.697 },
    { of: 'plywood', whole: layer('deep plywood', 0.6, 0.12, 544, 1210), x: 0.1, left: 0.2436, lagH: 5.394 },
    { of: 'concrete', whole: layer('deep concrete', 1.5, 1.95, 2240, 900), x: 0.1, left: 0.5417, lagH: 2.342 },
  ])('$of at $x m: $left of the swing, $lagH h later', ({ whole, x, left, lagH }) => {
    const steps = 288;
    const slab = slabOf([whole], 0.005);
    const at = slab.depthM.findIndex((depth) => Math.abs(depth - x) < 1e-9);
    expect(at).toBeGreaterThan(0);
    const stepS = DAY_S / steps;
    const outer = film(HELD, (step) => Math.sin((2 * Math.PI * step) / steps));
    const inner = { filmWPerM2K: 1e-9, airC: new Float64Array(steps + 1) };
    const { advance } = march(slab, outer, inner, stepS, 0.5);
    const temp = new Float64Array(slab.capacity.length);
    const seen = new Float64Array(steps);
    for (let day = 0; day < 30; day++) {
      for (let step = 0; step < steps; step++) {
        seen[step] = temp[at];
        advance(temp, step);
      }
    }
    const got = harmonic(seen, steps);
    expect(Math.abs(got.amplitude / left - 1)).toBeLessThan(0.005);
    expect(Math.abs(got.lagH / lagH - 1)).toBeLessThan(0.005);
  });

  // Half-space, face from 20 to 70 C at once: error function, evaluated to six digits.
  it.each([
    { x: 0.02, timeS: 3600, tempC: 49.046 },
    { x: 0.02, timeS: 1800, tempC: 41.749 },
    { x: 0.05, timeS: 3600, tempC: 28.378 },
  ])('step on plywood at $x m after $timeS s: $tempC C', ({ x, timeS, tempC }) => {
    const slab = slabOf([plywood(0.4)], 0.001);
    const at = slab.depthM.findIndex((depth) => Math.abs(depth - x) < 1e-9);
    const stepS = 10;
    const inner = { filmWPerM2K: 1e-9, airC: new Float64Array(timeS / stepS + 1) };
    const outer = film(HELD, () => 70);
    const temp = new Float64Array(slab.capacity.length).fill(20);
    const damped = march(slab, outer, inner, stepS, 1);
    const second = march(slab, outer, inner, stepS, 0.5);
    for (let step = 0; step < timeS / stepS; step++) (step < 4 ? damped : second).advance(temp, step);
    expect(Math.abs(temp[at] - tempC)).toBeLessThan(0.05);
  });

  // Wall cooled on both sides, Biot number 1, Fourier number 1: first term of the series, zeta 0.8603, C1 1.1191 (handbook).
  it('plane wall, Bi 1, Fo 1: 0.5339 of the difference is left at the middle', () => {
    const half = 0.05;
    const h = 0.12 / half;
    const slab = slabOf([plywood(2 * half)], 0.001);
    const timeS = (half * half * 544 * 1210) / 0.12;
    const steps = 4000;
    const inner = { filmWPerM2K: h, airC: new Float64Array(steps + 1) };
    const { advance } = march(
      slab,
      film(h, () => 0),
      inner,
      timeS / steps,
      0.5,
    );
    const temp = new Float64Array(slab.capacity.length).fill(1);
    for (let step = 0; step < steps; step++) advance(temp, step);
    expect(Math.abs(temp[(temp.length - 1) / 2] - 0.5339)).toBeLessThan(0.002);
  });

  // A sine of sol-air temperature through layers, exact by the transfer matrix of ISO 13786 (method from memory, computed).
  const foam = layer('polyiso', 0.132, 0.0256, 32, 1470);
  const top = [layer('sheet', 0.0015, 0.19, 1250, 1800), layer('gypsum', 0.0127, 0.16, 800, 1090), foam];
  it.each([
    { of: 'on plywood', layers: [...top, plywood(0.0159)], u: 0.17864, decrement: 0.9399, lagH: 2.707 },
    {
      of: 'on plank',
      layers: [...top, layer('plank', 0.038, 0.12, 450, 1630)],
      u: 0.17295,
      decrement: 0.825,
      lagH: 4.289,
    },
    {
      of: 'bare concrete',
      layers: [layer('concrete', 0.2, 1.8, 2400, 1000)],
      u: 3.0024,
      decrement: 0.4287,
      lagH: 6.154,
    },
  ])('roof $of: decrement $decrement, lag $lagH h, U $u', ({ layers, u, decrement, lagH }) => {
    const [ho, hi] = [17, 6.13];
    const steps = 288;
    expect(1 / (1 / ho + resistanceOf(layers) + 1 / hi)).toBeCloseTo(u, 4);
    const slab = slabOf(layers);
    const day = periodicDay(
      {
        slab,
        outer: film(ho, (step) => Math.sin((2 * Math.PI * step) / steps)),
        inner: { filmWPerM2K: hi, airC: new Float64Array(steps + 1) },
        stepS: DAY_S / steps,
        startC: new Float64Array(slab.capacity.length),
      },
      1e-7,
    );
    const got = harmonic(day.roomWPerM2, steps);
    expect(Math.abs(got.amplitude / u - decrement)).toBeLessThan(0.003);
    expect(Math.abs(got.lagH - lagH)).toBeLessThan(0.03);
  });
});

describe('steady stack', () => {
  // Worked example in IP units with handbook resistances: 0 F outside, 70 F inside (computed).
  it('planes at 1.44, 66.05, 67.69 and 68.67 F', () => {
    const r = [0.04, 0.45, 29.64, 0.75, 0.45];
    const t = steadyTemperatures(r, 0.17, 0.61, 0, 70);
    [0.37, 0.46, 1.44, 66.05, 67.69, 68.67].forEach((expected, i) => {
      expect(Math.abs(t[i] - expected)).toBeLessThan(0.01);
    });
    const u = 1 / (0.17 + 0.61 + r.reduce((sum, each) => sum + each, 0));
    expect(u).toBeCloseTo(0.03114, 5);
    expect(u * 70).toBeCloseTo(2.18, 2);
  });
});
