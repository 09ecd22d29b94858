import { joistDefaults, waterLoadPerInch } from '../../../reference/deflection.ts';
import { slope } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, SourceNote } from '../report/types.ts';
import type { Joists } from '../roof.ts';

/** How a simple span hangs: the elastic line of a uniform load, or the parabola through the same middle (worse at the ends). */
export type SagShape = 'uniform' | 'parabola';

/** End rotation of a simple span in units of sag over span: 16/5 for the elastic line, 4 for the parabola. */
const endRotation: Record<SagShape, number> = { uniform: 3.2, parabola: 4 };

/**
 * Slope [in/ft] that a sag takes away at the low support, slope along the span.
 * @param sagIn sag at the middle [in]
 * @param spanFt span [ft]
 * Formula: 3.2 D / L (uniform load) or 4 D / L (parabola). Correctness: tests/published/drainage-sag.test.ts
 */
export function slopeLossInPerFt(sagIn: number, spanFt: number, shape: SagShape): number {
  return (endRotation[shape] * sagIn) / spanFt;
}

/** Slope [in/ft] left at the low support; negative = the low end has turned uphill. Correctness: tests/published/drainage-sag.test.ts */
export function slopeLeftInPerFt(slopeInPerFt: number, sagIn: number, spanFt: number, shape: SagShape): number {
  return slopeInPerFt - slopeLossInPerFt(sagIn, spanFt, shape);
}

/** Mean slope [in/ft] of the low half of the span after a sag. Correctness: tests/published/drainage-sag.test.ts */
export function lowHalfSlopeInPerFt(slopeInPerFt: number, sagIn: number, spanFt: number): number {
  return slopeInPerFt - sagIn / (spanFt / 2);
}

/** Slope [in/ft] to build so that `keepInPerFt` is left after the sag. Correctness: tests/published/drainage-sag.test.ts */
export function slopeToBuildInPerFt(
  keepInPerFt: number,
  sagIn: number,
  spanFt: number,
  shape: SagShape = 'parabola',
): number {
  return keepInPerFt + slopeLossInPerFt(sagIn, spanFt, shape);
}

/**
 * Water that stands at the low support of a sagged span, held by the support itself.
 * Formula: x0 = L (1 - s L / 4D), d = D (x0 / L)^2 for a parabola of sag D under a slope s; null when s L >= 4 D.
 * @returns length of the pond along the span [ft] and its greatest depth [in]
 * Correctness: tests/published/drainage-sag.test.ts
 */
export function lowEndPond(
  slopeInPerFt: number,
  sagIn: number,
  spanFt: number,
): { lengthFt: number; depthIn: number } | null {
  const share = sagIn > 0 ? 1 - (slopeInPerFt * spanFt) / (4 * sagIn) : 0;
  if (share <= 0) return null;
  return { lengthFt: spanFt * share, depthIn: sagIn * share ** 2 };
}

export interface Joist {
  spanFt: number;
  depthIn: number;
  spacingIn: number;
}

/** Second moment of area [in^4] of a rectangular joist. */
export const joistInertiaIn4 = (breadthIn: number, depthIn: number): number => (breadthIn * depthIn ** 3) / 12;

/**
 * Sag [in] at the middle of a simply supported joist under a uniform load [psf] on its strip: 5 w L^4 / (384 E I).
 * Correctness: tests/published/drainage-sag.test.ts
 */
export function joistSagIn(
  joist: Joist,
  loadPsf: number,
  elasticityPsi: number = joistDefaults.elasticityPsi,
  breadthIn: number = joistDefaults.breadthIn,
): number {
  const spanIn = joist.spanFt * 12;
  const loadLbPerIn = (loadPsf * joist.spacingIn) / 144;
  return (5 * loadLbPerIn * spanIn ** 4) / (384 * elasticityPsi * joistInertiaIn4(breadthIn, joist.depthIn));
}

/**
 * How much ponding multiplies the sag of a flat roof: C = 1 / (1 - W L^3 / (pi^4 E I)).
 * W [lb] is one inch of water on the joist's strip, L [in], E [psi], I [in^4]. null = it never comes to rest (collapse).
 * Source: Forest Products Laboratory (Kuenzi and Bohannan). Correctness: tests/published/drainage-sag.test.ts
 */
export function pondingMagnifier(
  joist: Joist,
  elasticityPsi: number = joistDefaults.elasticityPsi,
  breadthIn: number = joistDefaults.breadthIn,
): number | null {
  const spanIn = joist.spanFt * 12;
  const waterLb = waterLoadPerInch.psf * joist.spanFt * (joist.spacingIn / 12);
  const stiffness = Math.PI ** 4 * elasticityPsi * joistInertiaIn4(breadthIn, joist.depthIn);
  const share = (waterLb * spanIn ** 3) / stiffness;
  return share < 1 ? 1 / (1 - share) : null;
}

export interface InServiceInput {
  /** Least slope of the design. */
  slopeInPerFt: number;
  joists: Joists | null;
  /** Bearing towards which the plane falls; null = taken along the joists, the worst case. */
  fallBearingDeg: number | null;
  /** Dead load that is still to come: new roof less what is torn off (not below 0). */
  addedDeadPsf: number;
  /** Dead load that the surface does not show yet; 0 when heights were read on the roof, which hangs under it already. */
  unreadDeadPsf: number;
  liveLoadPsf: number;
}

export interface InServiceSlope {
  /** null = the joists are not known. */
  slopeInPerFt: number | null;
  sagToComeIn: number | null;
  note: string;
  assumed: readonly Assumption[];
  source: SourceNote | null;
}

/**
 * Slope [in/ft] left when the sag that is still to come has come: creep factor x dead load not yet in the heights, plus live load.
 * Readings hold today's sag; it is never counted twice. Only the part of the loss that lies along the fall counts.
 * Source: reference/deflection.ts. Correctness: tests/published/drainage-sag.test.ts
 */
export function inServiceSlope(input: InServiceInput): InServiceSlope {
  const known = knownJoist(input.joists);
  if (typeof known === 'string')
    return { slopeInPerFt: null, sagToComeIn: null, note: known, assumed: [], source: null };
  const deadPsf = Math.max(0, input.addedDeadPsf) + input.unreadDeadPsf;
  const loadPsf = joistDefaults.creepFactor * deadPsf + input.liveLoadPsf;
  const sagToComeIn = joistSagIn(known, loadPsf);
  const along = alongFall(input.joists?.directionDeg ?? null, input.fallBearingDeg);
  const slopeInPerFt = input.slopeInPerFt - along * slopeLossInPerFt(sagToComeIn, known.spanFt, 'uniform');
  const note =
    slopeInPerFt > 0
      ? `${slope(slopeInPerFt)} left at the low support under the loads that are still to come.`
      : 'The low end turns uphill under the loads that are still to come: water stands there. Ask an engineer.';
  return { slopeInPerFt, sagToComeIn, note, assumed: [assumedJoists], source: sourceNote(joistDefaults) };
}

/** The joist, or what is missing of it in words. */
function knownJoist(joists: Joists | null): Joist | string {
  const { spanFt, depthIn, spacingIn } = joists ?? { spanFt: null, depthIn: null, spacingIn: null };
  if (spanFt !== null && depthIn !== null && spacingIn !== null) return { spanFt, depthIn, spacingIn };
  const missing = Object.entries({ span: spanFt, depth: depthIn, spacing: spacingIn }).flatMap(([what, value]) =>
    value === null ? [what] : [],
  );
  const words = missing.length > 1 ? `${missing.slice(0, -1).join(', ')} and ${missing.at(-1)}` : missing[0];
  return `Not known: joist ${words}.`;
}

const assumedJoists: Assumption = {
  path: 'deck.joists',
  value: `E ${joistDefaults.elasticityPsi} psi, ${joistDefaults.breadthIn} in wide, creep factor ${joistDefaults.creepFactor}`,
  because: 'Species, grade and width of the joists are not in the roof file.',
  findOut: 'Read the grade stamp on a joist.',
};

function alongFall(joistDeg: number | null, fallDeg: number | null): number {
  if (joistDeg === null || fallDeg === null) return 1;
  return Math.abs(Math.cos(((joistDeg - fallDeg) * Math.PI) / 180));
}
