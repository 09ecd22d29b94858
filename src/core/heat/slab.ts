/** One layer of a roof, outside first. */
export interface Layer {
  name: string;
  thicknessM: number;
  kWPerMK: number;
  densityKgPerM3: number;
  heatJPerKgK: number;
}

/** Layers cut into cells: nodes on all faces of cells, each holding half of the cells beside it. */
export interface Slab {
  /** Heat that a node holds per K, J/(m2 K). */
  capacity: Float64Array;
  /** Between a node and the next one inward, W/(m2 K). */
  conductance: Float64Array;
  /** Depth of each node under the outer face, m. */
  depthM: Float64Array;
}

/** Resistance of layers without films, m2 K/W. */
export const resistanceOf = (layers: readonly Layer[]): number =>
  layers.reduce((sum, { thicknessM, kWPerMK }) => sum + thicknessM / kWPerMK, 0);

const LEAST_CELLS = 2;

/** Cells no thicker than `mostM`, two or more in each layer. */
export function slabOf(layers: readonly Layer[], mostM = 0.006): Slab {
  const cells = layers.flatMap(({ thicknessM, kWPerMK, densityKgPerM3, heatJPerKgK }) => {
    const n = Math.max(LEAST_CELLS, Math.ceil(thicknessM / mostM - 1e-9));
    const dx = thicknessM / n;
    return Array.from({ length: n }, () => ({ dx, g: kWPerMK / dx, half: (densityKgPerM3 * heatJPerKgK * dx) / 2 }));
  });
  const capacity = new Float64Array(cells.length + 1);
  const depthM = new Float64Array(cells.length + 1);
  cells.forEach(({ dx, half }, i) => {
    capacity[i] += half;
    capacity[i + 1] += half;
    depthM[i + 1] = depthM[i] + dx;
  });
  return { capacity, conductance: Float64Array.from(cells, ({ g }) => g), depthM };
}

/**
 * Temperatures at the joints between layers in the steady state, outside face first.
 * @param outsideR,insideR films, in the unit of `r`
 */
export function steadyTemperatures(
  r: readonly number[],
  outsideR: number,
  insideR: number,
  outside: number,
  inside: number,
): number[] {
  const whole = outsideR + r.reduce((sum, each) => sum + each, 0) + insideR;
  let passed = outsideR;
  return [0, ...r].map((each) => {
    passed += each;
    return outside + ((inside - outside) * passed) / whole;
  });
}
