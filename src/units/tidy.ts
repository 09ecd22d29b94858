/** Typed text in one alphabet: straight quotes, plain dashes, written-out fractions, lower case, single spaces. */

const fractionCharacters: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * One spelling for what keyboards, phones and word processors make of the same mark.
 * "4½ in" becomes "4 1/2 in", "120’-0”" becomes `120'-0"`.
 */
export function tidy(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (mark) => ` ${fractionCharacters[mark]}`)
    .replace(/[‘’‚‛′´`ʹʼ＇]/g, "'")
    .replace(/[“”„‟″ʺ〃＂]/g, '"')
    .replace(/''/g, '"')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/[⁄∕]/g, '/')
    .replace(/×/g, 'x')
    .replace(/[°º]/g, ' deg ')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .trim();
}

const numberWords = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
const partWords: Record<string, number> = { half: 2, halves: 2, third: 3, quarter: 4, eighth: 8, sixteenth: 16 };
const part = '(half|halves|third|quarter|eighth|sixteenth)s?';

/** Number words to numerals: "a quarter inch" becomes "1/4 inch", "two and a half feet" becomes "2 1/2 feet". */
export function numerals(text: string): string {
  if (!/[a-z]{3}/.test(text)) return text;
  return text
    .replace(new RegExp(`\\b(${numberWords.join('|')})\\b`, 'g'), (word) => String(numberWords.indexOf(word)))
    .replace(new RegExp(`\\ban? ${part}\\b`, 'g'), (_, word: string) => `1/${partWords[word]}`)
    .replace(new RegExp(`\\b(\\d+)[ -]${part}\\b`, 'g'), (_, n: string, word: string) => `${n}/${partWords[word]}`)
    .replace(new RegExp(`\\b${part}\\b`, 'g'), (_, word: string) => `1/${partWords[word]}`)
    .replace(/(\d) and (\d+\/\d+)/g, '$1 $2')
    .replace(/(\d\/\d+) (?:of )?an? /g, '$1 ')
    .replace(/\ban? (?=inch|foot|ft\b)/g, '1 ');
}

const beforeApproximate =
  /^(?:about|approximately|approx\.?|circa|ca\.?|roughly|around|abt\.?|nearly|maybe|perhaps|say|~|≈)\s*(?=[\d.-])/;
const afterApproximate = /\s*(?:\+\/-|±|\bor so\b|\bapprox\.?|\bmore or less\b|\(approx(?:\.|imately)?\)).*$/;

/** Take "about", "or so", "+/-" off a measurement and say that they were there. */
export function withoutApproximation(text: string): { text: string; approximate: boolean } {
  const bare = text.replace(beforeApproximate, '').replace(afterApproximate, '').trim();
  return { text: bare, approximate: bare !== text };
}

/** True for "not known" in the words that people use for it. */
export function saysNotKnown(text: string): boolean {
  return /^(?:not known|unknown|\?+|do(?: not|n'?t) know|not measured|not sure|unsure|no idea|tbd)\.?$/.test(
    tidy(text),
  );
}

/** A bare fraction in a box that says inches is inches: "3 1/4" becomes `3 1/4"`. All else stays as it is. */
export const fractionInInches = (typed: string): string =>
  /^[+-]?(\d+[ -])?\d+\s*\/\s*\d+$/.test(typed) ? `${typed}"` : typed;
