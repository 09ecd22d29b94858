/**
 * Flesch-Kincaid grade: 0.39 words per sentence + 11.8 syllables per word - 15.59.
 * Source: Kincaid, Fishburne, Rogers and Chissom, Derivation of new readability formulas, Navy Research Branch
 * Report 8-75 (1975); coefficients from memory.
 */

/** Syllables of a word: groups of vowels, with the silent endings of English taken off and put back where they sound. */
export function syllables(word: string): number {
  const letters = word.toLowerCase().replaceAll(/[^a-z]/g, '');
  if (letters === '') return 0;
  const groups = letters.match(/[aeiouy]+/g)?.length ?? 0;
  const silentE = /[^aeiouyl]e$|[aeiouy]le$/.test(letters) ? 1 : 0;
  const silentEs = /[^aeiouyszxlc]es$/.test(letters) && !/(ches|shes|ges)$/.test(letters) ? 1 : 0;
  const silentEd = /[^aeiouytdl]ed$/.test(letters) ? 1 : 0;
  // "create", "idea", "period": two vowels that are two syllables.
  const split = (letters.match(/ia|io(?!n|us)|eo(?!us)|ua[^r]|uid|eat(?=e)|(?<=[aeiouy][^aeiouy]+)ea$/g) ?? []).length;
  return Math.max(1, groups - silentE - silentEs - silentEd + split);
}

/** Words of a text; a figure is a word of as many syllables as it has digits. */
const wordsOf = (text: string): string[] => text.match(/[A-Za-z][A-Za-z’'-]*|\d[\d.,/′″-]*/g) ?? [];

const soundOf = (word: string): number =>
  /^\d/.test(word)
    ? Math.max(1, word.replaceAll(/\D/g, '').length)
    : word.split('-').reduce((sum, part) => sum + syllables(part), 0);

export interface Reading {
  words: number;
  sentences: number;
  grade: number;
}

/** Grade of blocks of text: a block ends a sentence, so do . ? ! before a space or the end; a colon does not. */
export function readingOf(blocks: readonly string[]): Reading {
  const sentences = blocks.flatMap((block) => block.split(/[.?!](?:\s|$)/)).filter((text) => /[A-Za-z]/.test(text));
  const words = sentences.flatMap(wordsOf);
  const sounds = words.reduce((sum, word) => sum + soundOf(word), 0);
  return {
    words: words.length,
    sentences: sentences.length,
    grade: 0.39 * (words.length / sentences.length) + 11.8 * (sounds / words.length) - 15.59,
  };
}
