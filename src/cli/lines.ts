/** Width of the text that a terminal shows. */
export const WIDTH = 96;

/** Words broken into lines of the terminal's width; later lines hang by so many spaces more. */
export function wrapped(text: string, indent = 0, hang = 0): string[] {
  const lines: string[] = [];
  let line = ' '.repeat(indent);
  let empty = true;
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    if (!empty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = ' '.repeat(indent + hang);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return empty ? lines : [...lines, line];
}

export interface Column<T> {
  head: string;
  text: (row: T) => string;
  right?: boolean;
}

/** A plain table: widths from its contents, the last column wrapped under its head. */
export function table<T>(rows: readonly T[], columns: readonly Column<T>[]): string[] {
  const cells = [columns.map(({ head }) => head), ...rows.map((row) => columns.map(({ text }) => text(row)))];
  const widths = columns.map((_, i) => Math.max(...cells.map((line) => line[i].length)));
  const start = 2 + widths.slice(0, -1).reduce((sum, width) => sum + width + 2, 0);
  return cells.flatMap((line) => {
    const fixed = line
      .slice(0, -1)
      .map((cell, i) => (columns[i].right ? cell.padStart(widths[i]) : cell.padEnd(widths[i])))
      .join('  ');
    const [first, ...more] = wrapped(line[line.length - 1], start);
    return [`  ${fixed}  ${(first ?? '').trimStart()}`.trimEnd(), ...more];
  });
}

/** A heading and its lines; nothing where there are no lines. */
export const part = (head: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', head.toUpperCase(), ...lines];
