/** Where and why a text stops being JSON. */
export interface JsonFault {
  line: number;
  column: number;
  message: string;
  instead: string;
}

export interface DuplicateKey {
  path: string;
  key: string;
  line: number;
}

export interface JsonCheck {
  fault: JsonFault | null;
  duplicates: DuplicateKey[];
}

const DEEPEST = 40;
const numberPattern = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.'"/])/y;
const wordPattern = /(?:true|false|null)\b/y;
const spacePattern = /[ \t\r\n]*/y;

class Stop extends Error {
  readonly at: number;
  readonly instead: string;

  constructor(at: number, message: string, instead: string) {
    super(message);
    this.at = at;
    this.instead = instead;
  }
}

/** Walks a JSON text once, to name the place of a fault and keys that are given twice. */
class Reader {
  readonly duplicates: DuplicateKey[] = [];
  #at = 0;
  readonly #text: string;

  constructor(text: string) {
    this.#text = text;
  }

  read(): void {
    this.#value('', 0);
    if (this.#at < this.#text.length)
      this.#stop('there is more text after the end of the file', 'one group { ... } only');
  }

  lineOf(at: number): { line: number; column: number } {
    const before = this.#text.slice(0, at).split('\n');
    return { line: before.length, column: before[before.length - 1].length + 1 };
  }

  #stop(message: string, instead: string): never {
    throw new Stop(this.#at, message, instead);
  }

  #match(pattern: RegExp): string | null {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0] ?? null;
    if (found !== null) this.#at += found.length;
    return found;
  }

  #space(): void {
    this.#match(spacePattern);
    if (/^\/[/*]/.test(this.#text.slice(this.#at, this.#at + 2))) {
      this.#stop('a comment is not allowed in JSON', 'the remark as a "note", or leave it out');
    }
  }

  /** A quoted text at this place, with its quotes; null where there is none or it does not end in its line. */
  #string(): string | null {
    const start = this.#at;
    if (this.#text[start] !== '"') return null;
    for (let end = start + 1; end < this.#text.length; end++) {
      const mark = this.#text[end];
      if (mark === '\n') return null;
      if (mark === '\\') end++;
      if (mark !== '"') continue;
      this.#at = end + 1;
      return this.#text.slice(start, end + 1);
    }
    return null;
  }

  #value(path: string, depth: number): void {
    if (depth > DEEPEST) this.#stop('groups and lists are nested too deep for a roof file', 'the form of the schema');
    this.#space();
    const mark = this.#text[this.#at];
    if (mark === '{') this.#group(path, depth);
    else if (mark === '[') this.#list(path, depth);
    else if (!this.#string() && !this.#match(numberPattern) && !this.#match(wordPattern)) this.#badValue();
    this.#space();
  }

  #badValue(): never {
    const rest = this.#text.slice(this.#at, this.#at + 40);
    const word = /^[+-]?(?:NaN|Infinity|[A-Za-z_]\w*)/.exec(rest)?.[0];
    if (rest === '' && this.#text.trim() === '')
      this.#stop('the file is empty', 'a roof file: { "version": 1, "outline": ... }');
    if (rest === '') this.#stop('the file ends too early', 'the missing "]" or "}"');
    if (/^[+-]?(?:NaN|Infinity)/.test(rest))
      this.#stop(`${word} is not a number`, 'the measured value, or "not known"');
    if (rest[0] === '"')
      this.#stop('text that does not end on its line', String.raw`"text", with inch marks inside it as \"`);
    if (rest[0] === "'" || rest[0] === '“' || rest[0] === '”')
      this.#stop('text needs straight double quotes', '"text"');
    if (rest[0] === ']' || rest[0] === '}')
      this.#stop(`a value is missing before ${rest[0]}`, 'no comma after the last value');
    if (word) this.#stop(`${word} needs quotes`, `"${word}"`);
    if (/^[\d.+-]/.test(rest)) this.#stop('it does not read as a number', String.raw`5.5, or text in quotes: "5'-6\""`);
    this.#stop(`"${rest[0]}" cannot stand here`, 'a value');
  }

  #key(): string {
    const raw = this.#string();
    if (raw === null) {
      const word = /^[A-Za-z_]\w*/.exec(this.#text.slice(this.#at, this.#at + 40))?.[0];
      if (word) this.#stop(`the key ${word} needs quotes`, `"${word}"`);
      if (this.#text[this.#at] === '}') this.#stop('a comma stands before }', 'no comma after the last value');
      this.#stop('a key in double quotes is missing', '"key": value');
    }
    return raw.slice(1, -1);
  }

  #group(path: string, depth: number): void {
    const seen = new Set<string>();
    this.#at++;
    this.#space();
    if (this.#text[this.#at] === '}') {
      this.#at++;
      return;
    }
    for (;;) {
      this.#space();
      const start = this.#at;
      const key = this.#key();
      const inner = path === '' ? key : `${path}.${key}`;
      if (seen.has(key)) this.duplicates.push({ path: inner, key, line: this.lineOf(start).line });
      seen.add(key);
      this.#space();
      if (this.#text[this.#at] !== ':') this.#stop(`":" is missing after "${key}"`, `"${key}": value`);
      this.#at++;
      this.#value(inner, depth + 1);
      if (!this.#more('}')) return;
    }
  }

  #list(path: string, depth: number): void {
    this.#at++;
    this.#space();
    if (this.#text[this.#at] === ']') {
      this.#at++;
      return;
    }
    for (let i = 0; ; i++) {
      this.#value(`${path}[${i}]`, depth + 1);
      if (!this.#more(']')) return;
    }
  }

  /** True after a comma, false after the closing mark. */
  #more(close: string): boolean {
    const mark = this.#text[this.#at];
    if (mark === undefined) this.#stop('the file ends too early', `the missing "${close}"`);
    if (mark !== ',' && mark !== close) this.#stop(`a comma or "${close}" is missing`, `"," between values`);
    this.#at++;
    return mark === ',';
  }
}

/** Check a JSON text: the first fault with its line and column, and keys given twice (JSON would keep only the last). */
export function checkJsonText(text: string): JsonCheck {
  const reader = new Reader(text);
  try {
    reader.read();
    return { fault: null, duplicates: reader.duplicates };
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
    const { line, column } = reader.lineOf(error.at);
    return { fault: { line, column, message: error.message, instead: error.instead }, duplicates: reader.duplicates };
  }
}
