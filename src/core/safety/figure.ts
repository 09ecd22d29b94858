/** A number for a sentence: at most `digits` decimals, no trailing zeros. */
export function figure(value: number, digits = 2): string {
  return String(Number(value.toFixed(digits)));
}

/** "a, b and c". */
export function listed(parts: readonly string[], last = 'and'): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} ${last} ${parts[parts.length - 1]}`;
}
