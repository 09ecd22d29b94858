import { ADVANCE, type LetterSize, letters } from './pens.ts';

/** Words in lines of so many feet of the list, one letter being one foot. */
export function linesWithin(text: string, wideFt: number, size: LetterSize = 'small'): string[] {
  const most = Math.floor(wideFt / (ADVANCE * letters[size]));
  const out: string[] = [];
  for (const word of text.split(' ')) {
    const last = out.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) out[out.length - 1] = `${last} ${word}`;
    else out.push(word);
  }
  return out;
}

/** Middles of labels from the lowest up, each as near to its level as the one below lets it be. */
export function spreadUp<T extends { level: number }>(
  labels: readonly T[],
  highOf: (label: T) => number,
): { label: T; y: number }[] {
  let floor = 0;
  return labels.map((label) => {
    const y = Math.max(label.level, floor + highOf(label) / 2);
    floor = y + highOf(label) / 2;
    return { label, y };
  });
}
