import { stillAir } from '../../../reference/vapor.ts';

/** A layer with its resistance to heat, m2 K/W, and to vapor, m of still air; outside first. */
export interface VaporLayer {
  r: number;
  sdM: number;
}

export interface VaporState {
  outsideC: number;
  insideC: number;
  outsidePa: number;
  insidePa: number;
  /** Surface resistances, m2 K/W. */
  outsideFilm: number;
  insideFilm: number;
}

export interface VaporPoint {
  /** m of still air from the outer face. */
  sdM: number;
  airC: number;
  saturatedPa: number;
  vaporPa: number;
  /** Water that gathers here (negative: dries), kg/(m2 s). */
  gathers: number;
}

/** Still air that resists like a permeance, m. Correctness: tests/published/moisture-vapor.test.ts, 27 */
export const stillAirOf = (perms: number): number => stillAir.meterPerms / perms;

/** Temperatures at the faces of all layers, outer face first, C. */
export function faceTemperatures(layers: readonly VaporLayer[], state: VaporState): number[] {
  const total = state.outsideFilm + state.insideFilm + layers.reduce((sum, { r }) => sum + r, 0);
  const perR = (state.insideC - state.outsideC) / total;
  let airC = state.outsideC + perR * state.outsideFilm;
  return [
    airC,
    ...layers.map(({ r }) => {
      airC += perR * r;
      return airC;
    }),
  ];
}

/** Points of the lower hull between two held points: vapor pressure is a string pulled taut under saturation. */
function tautBetween(points: readonly VaporPoint[], from: number, to: number): number[] {
  const hull = [from];
  for (let i = from + 1; i <= to; i++) {
    const next = points[i];
    const value = (k: number): number => (k === from || k === to ? points[k].vaporPa : points[k].saturatedPa);
    while (hull.length > 1) {
      const [a, b] = [hull[hull.length - 2], hull[hull.length - 1]];
      const rise = (value(b) - value(a)) * (next.sdM - points[a].sdM);
      if (rise < (value(i) - value(a)) * (points[b].sdM - points[a].sdM)) break;
      hull.pop();
    }
    hull.push(i);
  }
  return hull;
}

/**
 * Steady vapor profile by the tangent rule: where vapor pressure would pass saturation it follows the lower hull, and water
 * gathers where the hull touches. Places in `wet` are held at saturation and may dry.
 * Source: ISO 13788. Correctness: tests/published/moisture-vapor.test.ts, 25
 * @param wet indices of faces (0 = outer face) where water is already
 */
export function vaporProfile(
  layers: readonly VaporLayer[],
  state: VaporState,
  saturation: (airC: number) => number,
  wet: ReadonlySet<number> = new Set(),
): VaporPoint[] {
  let sdM = 0;
  const temperatures = faceTemperatures(layers, state);
  const points = temperatures.map((airC, i): VaporPoint => {
    if (i > 0) sdM += layers[i - 1].sdM;
    return { sdM, airC, saturatedPa: saturation(airC), vaporPa: 0, gathers: 0 };
  });
  const last = points.length - 1;
  points[0].vaporPa = state.outsidePa;
  points[last].vaporPa = state.insidePa;
  for (const i of wet) if (i > 0 && i < last) points[i].vaporPa = points[i].saturatedPa;
  const held = [0, ...[...wet].filter((i) => i > 0 && i < last).sort((a, b) => a - b), last];
  const touched: number[] = [0];
  for (let k = 1; k < held.length; k++) touched.push(...tautBetween(points, held[k - 1], held[k]).slice(1));
  for (const i of touched) if (i > 0 && i < last) points[i].vaporPa = points[i].saturatedPa;
  for (let k = 1; k < touched.length; k++) {
    const [a, b] = [points[touched[k - 1]], points[touched[k]]];
    for (let i = touched[k - 1] + 1; i < touched[k]; i++)
      points[i].vaporPa = a.vaporPa + ((b.vaporPa - a.vaporPa) * (points[i].sdM - a.sdM)) / (b.sdM - a.sdM);
  }
  for (let k = 1; k < touched.length - 1; k++) {
    const [a, here, b] = [points[touched[k - 1]], points[touched[k]], points[touched[k + 1]]];
    const flows = (b.vaporPa - here.vaporPa) / (b.sdM - here.sdM) - (here.vaporPa - a.vaporPa) / (here.sdM - a.sdM);
    here.gathers = stillAir.kgPerMSPa * flows;
  }
  return points;
}
