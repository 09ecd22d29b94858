import { math } from './mathjs.ts';

/** Factor as it is defined, where floating point only just missed it (12.000000000000002 is 12). */
const tidyFactor = (factor: number): number => Number(factor.toPrecision(15));

const digits = (factor: number): number => String(factor).length;

const known = new Map<string, (value: number) => number>();

function makeConversion(from: string, to: string): (value: number) => number {
  const forth = tidyFactor(math.unit(1, from).toNumber(to));
  const back = tidyFactor(math.unit(1, to).toNumber(from));
  // A foot is 0.3048 m exactly, a metre is 3.28084... ft: divide by the definition rather than multiply by its inverse.
  return digits(back) < digits(forth) ? (value) => value / back : (value) => value * forth;
}

/**
 * Convert between units of one kind by their definitions, so that sixteenths of an inch stay exact in feet.
 * @param from unit as mathjs names it ('mm', 'in', 'mm/hour')
 * @param to unit of the same kind; throws where the kinds differ, which is a defect of the caller
 */
export function convert(value: number, from: string, to: string): number {
  if (from === to) return value;
  const key = `${from} ${to}`;
  let conversion = known.get(key);
  if (!conversion) {
    conversion = makeConversion(from, to);
    known.set(key, conversion);
  }
  return conversion(value);
}

/** Temperature has an offset, so it does not go by a factor. Celsius to Fahrenheit. */
export function fahrenheit(celsius: number): number {
  return tidyFactor(math.unit(celsius, 'degC').toNumber('degF'));
}
