/**
 * The boxes a measurement can stand in: the unit that a bare number has there and the limits of good sense.
 * Limits only catch slips of unit or of keys ("30000" for millimetres in a feet box); they judge no roof.
 */
export interface FieldSpec {
  /** Unit of the value, as it is kept and as mathjs names it where it converts. */
  unit: string;
  /** Unit in words, for a sentence. */
  words: string;
  mayBeNegative: boolean;
  /** Greatest size that can be meant. */
  limit: number;
  /** Texts that would be accepted. */
  example: string;
}

const lengthExample = `24'-6 1/2", 54", 24.54 ft or 7.47 m`;
const inchExample = '6 1/2", 6.5 in or 165 mm';

export const fields = {
  length: { unit: 'ft', words: 'feet', mayBeNegative: false, limit: 5_000, example: lengthExample },
  coordinate: { unit: 'ft', words: 'feet', mayBeNegative: true, limit: 100_000, example: lengthExample },
  thickness: { unit: 'in', words: 'inches', mayBeNegative: false, limit: 600, example: inchExample },
  height: { unit: 'in', words: 'inches', mayBeNegative: true, limit: 600, example: inchExample },
  slope: {
    unit: 'in/ft',
    words: 'inches per foot',
    mayBeNegative: true,
    limit: 12,
    example: '1/4 in per ft, 2 % or 1:48',
  },
  pitch: { unit: 'in/ft', words: 'inches in 12', mayBeNegative: false, limit: 48, example: '4 or 4:12' },
  area: { unit: 'sq ft', words: 'square feet', mayBeNegative: false, limit: 25_000_000, example: '720 sq ft or 67 m2' },
  rain: { unit: 'in/h', words: 'inches per hour', mayBeNegative: false, limit: 60, example: '3.2 in/h or 81 mm/h' },
  rValue: { unit: 'R', words: 'R in h ft2 F/Btu', mayBeNegative: false, limit: 500, example: 'R-30 or RSI 5.3' },
  angle: { unit: 'deg', words: 'degrees', mayBeNegative: true, limit: 360, example: '45 or 45 deg' },
  bearing: {
    unit: 'deg',
    words: 'degrees clockwise from north',
    mayBeNegative: false,
    limit: 360,
    example: 'NE or 45 deg',
  },
  temperature: { unit: 'F', words: 'degrees Fahrenheit', mayBeNegative: true, limit: 250, example: '38 F or 3 C' },
  speed: { unit: 'mph', words: 'miles per hour', mayBeNegative: false, limit: 400, example: '115 mph or 51 m/s' },
  load: {
    unit: 'psf',
    words: 'pounds per square foot',
    mayBeNegative: false,
    limit: 2_000,
    example: '20 psf or 1 kPa',
  },
  minutes: { unit: 'min', words: 'minutes', mayBeNegative: false, limit: 10_080, example: '60 min or 1 h' },
  hours: { unit: 'h', words: 'hours', mayBeNegative: false, limit: 17_520, example: '48 h or 2 days' },
  years: { unit: 'years', words: 'years', mayBeNegative: false, limit: 100_000, example: '28 years' },
  /** Of a covering: the oldest that lie today are of built-up felts and some 100 years old. */
  age: { unit: 'years', words: 'years', mayBeNegative: false, limit: 120, example: '28 years' },
  pair: { unit: 'in', words: 'inches', mayBeNegative: false, limit: 600, example: '6" x 4" (width x height)' },
  plan: { unit: 'ft', words: 'feet', mayBeNegative: false, limit: 5_000, example: `52' x 34'` },
} as const satisfies Record<string, FieldSpec>;

export type Field = keyof typeof fields;
export type PairField = 'pair' | 'plan';
export type SingleField = Exclude<Field, PairField>;
export type LengthField = 'length' | 'coordinate' | 'thickness' | 'height';

export type ValueOf<F extends Field> = F extends PairField ? readonly [number, number] : number;

export function isPairField(field: Field): field is PairField {
  return field === 'pair' || field === 'plan';
}

export function isLengthField(field: Field): field is LengthField {
  return field === 'length' || field === 'coordinate' || field === 'thickness' || field === 'height';
}
