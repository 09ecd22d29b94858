/** A number as it stands at the start of a piece of text. */
export interface NumberToken {
  value: number;
  /** Written with a fraction ("1 1/2", "3/8"). */
  fraction: boolean;
  /** "3,150": three digits after the comma, so most likely thousands. */
  thousands: boolean;
  /** "24,5": a decimal comma as far as anyone can tell. */
  decimalComma: boolean;
  whole: boolean;
  length: number;
}

/** Why a run of digits is not a number that a tape can show. */
export interface NumberFault {
  fault: string;
}

const patterns = {
  mixed: /^(\d+)(?: ?- ?| )(\d+) ?\/ ?(\d+)(?![\d.])/,
  fraction: /^(\d+) ?\/ ?(\d+)(?![\d.])/,
  thousands: /^([1-9]\d{0,2}(?:,\d{3})+)(\.\d+)?(?![\d,])/,
  comma: /^\d+,\d+(?![\d.,])/,
  plain: /^(?:\d+\.?\d*|\.\d+)(?![\d,])/,
};

const token = (value: number, length: number, more: Partial<NumberToken> = {}): NumberToken => ({
  value,
  fraction: false,
  thousands: false,
  decimalComma: false,
  whole: Number.isInteger(value),
  length,
  ...more,
});

function fractionToken(whole: number, over: number, under: number, length: number): NumberToken | NumberFault {
  if (under === 0) return { fault: 'a fraction cannot have 0 below the line' };
  if (whole > 0 && over >= under) return { fault: `${over}/${under} after a whole number is one or more` };
  return token(whole + over / under, length, { fraction: true });
}

/** Read the number at the start of tidied text; null where there is none. */
export function readNumber(text: string): NumberToken | NumberFault | null {
  const mixed = patterns.mixed.exec(text);
  if (mixed) return fractionToken(Number(mixed[1]), Number(mixed[2]), Number(mixed[3]), mixed[0].length);
  const fraction = patterns.fraction.exec(text);
  if (fraction) return fractionToken(0, Number(fraction[1]), Number(fraction[2]), fraction[0].length);
  const thousands = patterns.thousands.exec(text);
  if (thousands) {
    return token(Number(thousands[0].replaceAll(',', '')), thousands[0].length, { thousands: true });
  }
  const comma = patterns.comma.exec(text);
  if (comma) return token(Number(comma[0].replace(',', '.')), comma[0].length, { decimalComma: true });
  const plain = patterns.plain.exec(text);
  return plain ? token(Number(plain[0]), plain[0].length) : null;
}
