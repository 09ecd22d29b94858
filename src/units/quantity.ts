import { convert, fahrenheit } from './convert.ts';
import { type Field, fields } from './fields.ts';
import { readNumber } from './number.ts';
import { bearingOf, plainNumber } from './print.ts';
import { accept, ask, type Reading, reject } from './reading.ts';

type Convert = (value: number) => number;
type Spelling = readonly [text: RegExp, convert: Convert];

const same: Convert = (value) => value;
const from =
  (unit: string, to: string): Convert =>
  (value) =>
    convert(value, unit, to);

const SQUARE_SQ_FT = 100;

const years = /^-?(?:y|yr|yrs|years?)(?: old)?$/;

/** What may follow the number in each plain quantity, and what it is worth in the field's unit. */
const spellings: Partial<Record<Field, readonly Spelling[]>> = {
  area: [
    [/^(?:sq\.? ?ft\.?|sf|ft2|ft\^2|square (?:feet|foot))$/, same],
    [/^(?:m2|m\^2|sq\.? ?m|sqm|square met(?:er|re)s?)$/, from('m^2', 'sqft')],
    [/^(?:sq\.?|sqs|squares?)$/, (value) => value * SQUARE_SQ_FT],
  ],
  rain: [
    [/^(?:in\.?|inch|inches|") ?(?:\/|per|an) ?(?:h|hr|hour)\.?$|^iph$/, same],
    [/^mm ?(?:\/|per|an) ?(?:h|hr|hour)\.?$/, from('mm/hour', 'in/hour')],
    [/^cm ?(?:\/|per|an) ?(?:h|hr|hour)\.?$/, from('cm/hour', 'in/hour')],
    [/^l ?\/ ?\(? ?s ?[/ .] ?m2 ?\)?$/, from('l/(s m^2)', 'in/hour')],
  ],
  angle: [
    [/^deg(?:rees?)?$/, same],
    [/^rad(?:ians?)?$/, from('rad', 'deg')],
  ],
  temperature: [
    [/^(?:deg(?:rees?)? ?)?f(?:ahrenheit)?$/, same],
    [/^(?:deg(?:rees?)? ?)?c(?:elsius)?$/, fahrenheit],
  ],
  speed: [
    [/^(?:mph|mi\/h|miles (?:per|an) hour)$/, same],
    [/^(?:m\/s|m per s)$/, from('m/s', 'mi/hour')],
    [/^(?:km\/h|kph|kmh)$/, from('km/hour', 'mi/hour')],
  ],
  load: [
    [/^(?:psf|lb\/ft2|lbs?\.? (?:per|\/) (?:sq\.? ?ft|square foot))$/, same],
    [/^(?:kpa|kn\/m2)$/, from('kPa', 'lbf/ft^2')],
  ],
  minutes: [
    [/^(?:min|mins|minutes?)$/, same],
    [/^(?:h|hr|hrs|hours?)$/, from('hour', 'minute')],
  ],
  hours: [
    [/^(?:h|hr|hrs|hours?)$/, same],
    [/^(?:d|days?)$/, from('day', 'hour')],
    [/^(?:weeks?|wk)$/, from('week', 'hour')],
    [/^(?:min|mins|minutes?)$/, from('minute', 'hour')],
  ],
  years: [[years, same]],
  age: [[years, same]],
};

/** A plain number with one of the field's units after it, or alone. */
export function parseQuantity(text: string, field: Field): Reading {
  const { unit, example } = fields[field];
  const number = readNumber(text);
  if (number === null) return reject('it does not begin with a number', example);
  if ('fault' in number) return reject(number.fault, example);
  const after = text.slice(number.length).trim();
  const spelling = spellings[field]?.find(([pattern]) => pattern.test(after));
  if (after !== '' && !spelling) return reject(`"${after}" after the number is not a unit that fits here`, example);
  const value = spelling ? spelling[1](number.value) : number.value;
  if (number.decimalComma) {
    const written = `${plainNumber(number.value, 6)} ${after || unit}`;
    return ask('a comma between digits may be a decimal point', [{ value, unit, text: written }]);
  }
  return accept(value, unit);
}

/** "R30ci", "R-30", "30", "RSI 5.3", "5.3 m2K/W", "U-0.033". */
export function parseRValue(text: string): Reading {
  const { unit, example } = fields.rValue;
  const parts = /^(rsi|r|u)?[ =-]?(\S*?) ?(ci|m2 ?k ?\/ ?w)?$/.exec(text);
  const number = parts ? readNumber(parts[2]) : null;
  if (!parts || number === null || 'fault' in number || number.length !== parts[2].length || number.decimalComma) {
    return reject('it does not read as an R-value', example);
  }
  if (parts[1] === 'u') {
    if (number.value === 0) return reject('a U-factor of 0 does not exist', example);
    return accept(1 / number.value, unit, 'R = 1 / U; the U-factor of a whole roof includes its air films');
  }
  if (parts[1] === 'rsi' || parts[3]?.startsWith('m2')) {
    return accept(convert(number.value, 'm^2 K / W', 'ft^2 degF hour / BTU'), unit);
  }
  return accept(number.value, unit);
}

const quarterNames: readonly (readonly [RegExp, string])[] = [
  [/north[ -]?/g, 'n'],
  [/south[ -]?/g, 's'],
  [/east/g, 'e'],
  [/west/g, 'w'],
];

/** "NE", "north-east", "N 45 E", "135 deg": degrees clockwise from north. */
export function parseBearing(text: string): Reading {
  const { unit, example } = fields.bearing;
  const letters = quarterNames.reduce((left, [pattern, letter]) => left.replace(pattern, letter), text).trim();
  const named = bearingOf(letters);
  if (named !== null) return accept(named, unit);
  const quadrant = /^([ns]) ?(\d+(?:\.\d+)?) ?(?:deg)? ?([ew])$/.exec(letters);
  if (quadrant && Number(quadrant[2]) <= 90) {
    const turn = Number(quadrant[2]);
    const bearing = quadrant[1] === 'n' ? turn : 180 - turn;
    return accept(quadrant[3] === 'e' ? bearing : (360 - bearing) % 360, unit);
  }
  const plain = parseQuantity(text, 'angle');
  return plain.action === 'reject' ? reject('it is neither a compass point nor degrees', example) : plain;
}
