import type { Slab } from './slab.ts';

/** Heat that enters the outer face at a temperature, W/m2, and how it changes with it, W/(m2 K). */
export interface FaceFlux {
  wPerM2: number;
  perK: number;
}

/** The outer face at a step of the day, given its temperature, C. Written into `out`, which is reused. */
export type OuterFace = (step: number, faceC: number, out: FaceFlux) => void;

export interface InnerFace {
  filmWPerM2K: number;
  /** Air behind the film at each step of the day, C. */
  airC: Float64Array;
}

const NEWTON_STEPS = 20;
const NEWTON_K = 1e-10;

/** Steps of one length through a slab: the matrix is the same in each, so it is taken apart once. */
export interface March {
  /** From step to step + 1, in place. @returns heat through the outer and the inner face meanwhile, J/m2 */
  advance: (tempC: Float64Array, step: number) => readonly [enteredJ: number, leftJ: number];
}

/** The matrix C/dt + theta K taken apart (it is symmetric and leans on its diagonal). */
function factor({ capacity, conductance }: Slab, film: number, stepS: number, theta: number) {
  const n = capacity.length;
  const pivot = new Float64Array(n);
  const upper = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const outward = i > 0 ? conductance[i - 1] : 0;
    const inward = i < n - 1 ? conductance[i] : film;
    const diagonal = capacity[i] / stepS + theta * (outward + inward);
    pivot[i] = 1 / (diagonal + (i > 0 ? theta * outward * upper[i - 1] : 0));
    upper[i] = i < n - 1 ? -theta * conductance[i] * pivot[i] : 0;
  }
  return (x: Float64Array): void => {
    x[0] *= pivot[0];
    for (let i = 1; i < n; i++) x[i] = (x[i] + theta * conductance[i - 1] * x[i - 1]) * pivot[i];
    for (let i = n - 2; i >= 0; i--) x[i] -= upper[i] * x[i + 1];
  };
}

/**
 * Conduction through a slab by finite volumes. theta 1/2: second order in time and space (Crank-Nicolson); theta 1 damps
 * what a start from the wrong state shakes up. The outer face may be anything that falls as its temperature rises: the new
 * temperatures are base + theta q g with a known g, so one number is found by Newton's method.
 * Source: Crank and Nicolson 1947. Correctness: tests/published/heat-conduction.test.ts, tests/laws/heat.test.ts
 */
export function march(slab: Slab, outer: OuterFace, inner: InnerFace, stepS: number, theta: number): March {
  const { capacity, conductance } = slab;
  const n = capacity.length;
  const { filmWPerM2K: film, airC } = inner;
  const solve = factor(slab, film, stepS, theta);
  const response = new Float64Array(n);
  response[0] = 1;
  solve(response);
  const base = new Float64Array(n);
  const flux: FaceFlux = { wPerM2: 0, perK: 0 };
  const old = 1 - theta;
  return {
    advance: (tempC, step) => {
      outer(step, tempC[0], flux);
      const entered0 = flux.wPerM2;
      const left0 = film * (tempC[n - 1] - airC[step]);
      for (let i = 0; i < n; i++) {
        const fromOut = i > 0 ? conductance[i - 1] * (tempC[i - 1] - tempC[i]) : entered0;
        const toIn = i < n - 1 ? conductance[i] * (tempC[i] - tempC[i + 1]) : left0;
        base[i] = (capacity[i] / stepS) * tempC[i] + old * (fromOut - toIn);
      }
      base[n - 1] += theta * film * airC[step + 1];
      solve(base);
      let face = tempC[0];
      for (let i = 0; i < NEWTON_STEPS; i++) {
        outer(step + 1, face, flux);
        const change = (base[0] + theta * response[0] * flux.wPerM2 - face) / (1 - theta * response[0] * flux.perK);
        face += change;
        if (Math.abs(change) < NEWTON_K) break;
      }
      outer(step + 1, face, flux);
      for (let i = 0; i < n; i++) tempC[i] = base[i] + theta * flux.wPerM2 * response[i];
      const left1 = film * (tempC[n - 1] - airC[step + 1]);
      return [stepS * (old * entered0 + theta * flux.wPerM2), stepS * (old * left0 + theta * left1)];
    },
  };
}

/** Heat in the slab above 0 C, J/m2. */
export const storedJ = ({ capacity }: Slab, tempC: Float64Array): number =>
  capacity.reduce((sum, each, i) => sum + each * tempC[i], 0);
