/** Number of single-letter changes between two words. */
function changes(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let k = 1; k <= b.length; k++) {
      next[k] = Math.min(next[k - 1] + 1, row[k] + 1, row[k - 1] + (a[i - 1] === b[k - 1] ? 0 : 1));
    }
    row = next;
  }
  return row[b.length];
}

/** The known word that a mistyped one was most likely meant to be; null where none is near. */
export function closest(word: string, known: readonly string[]): string | null {
  if (word.length > 40) return null;
  const lower = word.toLowerCase();
  const ranked = known
    .map((candidate) => ({ candidate, distance: changes(lower, candidate.toLowerCase()) }))
    .sort((a, b) => a.distance - b.distance);
  const best = ranked[0];
  return best && best.distance <= Math.max(1, Math.floor(best.candidate.length / 3)) ? best.candidate : null;
}
