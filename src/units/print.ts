/** Numbers as the trade reads them aloud. Printing rounds; comparing never does. */

const SIXTEENTHS = 16;

function reduced(over: number): string {
  let under = SIXTEENTHS;
  let top = over;
  while (top % 2 === 0) {
    top /= 2;
    under /= 2;
  }
  return `${top}/${under}`;
}

/** Whole inches and a fraction from a count of sixteenths. */
function fromSixteenths(count: number): string {
  const whole = Math.floor(count / SIXTEENTHS);
  const over = count % SIXTEENTHS;
  if (over === 0) return String(whole);
  return whole === 0 ? reduced(over) : `${whole} ${reduced(over)}`;
}

const formats = new Map<number, Intl.NumberFormat>();

function formatOf(decimals: number): Intl.NumberFormat {
  const known = formats.get(decimals) ?? new Intl.NumberFormat('en-US', { maximumFractionDigits: decimals });
  formats.set(decimals, known);
  return known;
}

/** Text of a number with at most so many decimals, without trailing zeros and with thousands commas. */
export function plainNumber(value: number, decimals = 0): string {
  const text = formatOf(decimals).format(value);
  return text === '-0' ? '0' : text;
}

/** A figure that is asked for, rounded up to a whole one: printed, it is enough. */
export const atLeast = (value: number): string => plainNumber(Math.ceil(value - 1e-6));

/** A figure that is there or allowed, rounded down to a whole one. */
export const atMost = (value: number): string => plainNumber(Math.floor(value + 1e-6));

/** 24.541666 ft as 24′-6 1/2″, to the nearest 1/16 in. */
export function feetInches(valueFt: number): string {
  const count = Math.round(Math.abs(valueFt) * 12 * SIXTEENTHS);
  const feet = Math.floor(count / (12 * SIXTEENTHS));
  const text = `${feet}′-${fromSixteenths(count % (12 * SIXTEENTHS))}″`;
  return valueFt < 0 && count > 0 ? `-${text}` : text;
}

/** 6.5 in as 6 1/2″, to the nearest 1/16 in. */
export function inches(valueIn: number): string {
  const count = Math.round(Math.abs(valueIn) * SIXTEENTHS);
  const text = `${fromSixteenths(count)}″`;
  return valueIn < 0 && count > 0 ? `-${text}` : text;
}

/** 8.25 in as 8.25 in, at most two decimals: where a computed height is not a tape reading. */
export function decimalInches(valueIn: number, decimals = 2): string {
  return `${plainNumber(valueIn, decimals)} in`;
}

/** Slope in decimals: 0.25 in/ft. */
export function slope(slopeInPerFt: number): string {
  return `${plainNumber(slopeInPerFt, 3)} in/ft`;
}

/** Slope as it is said: 1/4 in per ft where it is a sixteenth, else 0.177 in per ft. */
export function slopeInWords(slopeInPerFt: number): string {
  const count = slopeInPerFt * SIXTEENTHS;
  if (Math.abs(count - Math.round(count)) > 1e-9) return `${plainNumber(slopeInPerFt, 3)} in per ft`;
  const sign = slopeInPerFt < 0 ? '-' : '';
  return `${sign}${fromSixteenths(Math.abs(Math.round(count)))} in per ft`;
}

/** A value with its error, to as many decimals as the error has something to say in: 0.19 ± 0.04 in/ft. */
export function withError(value: number, error: number, unit: string): string {
  const decimals = error >= 0.005 ? 2 : 3;
  return `${value.toFixed(decimals)} ± ${error.toFixed(decimals)} ${unit}`;
}

/** Slope in percent, for readers who think in it: 2.08 %. Never compare this. */
export function slopePercent(slopeInPerFt: number): string {
  return `${plainNumber((slopeInPerFt / 12) * 100, 2)} %`;
}

export function area(areaSqFt: number): string {
  const decimals = Math.abs(areaSqFt) < 10 ? 1 : 0;
  return `${plainNumber(areaSqFt, decimals)} sq ft`;
}

/** Roofing squares of 100 sq ft. */
export function squares(areaSqFt: number): string {
  return `${plainNumber(areaSqFt / 100, 1)} squares`;
}

export function rain(inPerHr: number): string {
  return `${plainNumber(inPerHr, 2)} in/h`;
}

export function rValue(r: number): string {
  return `R-${plainNumber(r, 1)}`;
}

/** Width x height of an opening: 6″ x 4″. */
export function pair([widthIn, heightIn]: readonly [number, number]): string {
  return `${inches(widthIn)} x ${inches(heightIn)}`;
}

/** Length x depth in plan: 30′-0″ x 24′-0″. */
export function plan([lengthFt, depthFt]: readonly [number, number]): string {
  return `${feetInches(lengthFt)} x ${feetInches(depthFt)}`;
}

const compass = ['N', 'NNE', 'NE', 'ENE', 'E', 'ESE', 'SE', 'SSE', 'S', 'SSW', 'SW', 'WSW', 'W', 'WNW', 'NW', 'NNW'];

/** Bearing in degrees clockwise from north for a letter group of the sixteen-point compass; null for other text. */
export function bearingOf(letters: string): number | null {
  const at = compass.indexOf(letters.toUpperCase());
  return at < 0 ? null : at * 22.5;
}

/** Nearest of the sixteen compass points: 47 degrees is NE. */
export function compassPoint(bearingDeg: number): string {
  const at = Math.round((((bearingDeg % 360) + 360) % 360) / 22.5) % 16;
  return compass[at];
}
