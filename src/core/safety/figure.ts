import { plainNumber } from '../../units/print.ts';

/** A number for a sentence: at most two decimals unless said otherwise. */
export function figure(value: number, decimals = 2): string {
  return plainNumber(value, decimals);
}

/** "a, b and c". */
export function listed(parts: readonly string[], last = 'and'): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} ${last} ${parts[parts.length - 1]}`;
}
