import { assessReady, type ReadyRoof, type RoofReading, readRoofText } from '../answer.ts';
import type { Assessment } from '../core/report/types.ts';

export interface Answer {
  ready: ReadyRoof;
  assessment: Assessment;
}

/** Answers by roof file text; the same text always has the same answer, so the last few are kept. */
export class Answers {
  readonly #most: number;
  readonly #kept = new Map<string, Answer>();

  constructor(most = 20) {
    this.#most = most;
  }

  /** The answer for a roof file, or why it cannot be read. */
  of(text: string): Answer | Extract<RoofReading, { ok: false }> {
    const known = this.#kept.get(text);
    if (known !== undefined) {
      // Back to the end: the map's first key is then the one that was not asked for the longest.
      this.#kept.delete(text);
      this.#kept.set(text, known);
      return known;
    }
    const ready = readRoofText(text);
    if (!ready.ok) return ready;
    const answer = { ready, assessment: assessReady(ready) };
    this.#kept.set(text, answer);
    const oldest = this.#kept.keys().next().value;
    if (this.#kept.size > this.#most && oldest !== undefined) this.#kept.delete(oldest);
    return answer;
  }
}
