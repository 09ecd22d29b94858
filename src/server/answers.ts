import { assessReadyInSteps, type ReadyRoof, type RoofReading, readRoofText, todayOfReady } from '../answer.ts';
import type { Assessment, RoofToday, SearchProgress } from '../core/report/types.ts';

export interface Answer {
  ready: ReadyRoof;
  assessment: Assessment;
}

type Unread = Extract<RoofReading, { ok: false }>;

/** An answer that is not finished. */
export interface Unfinished {
  progress: SearchProgress;
}

/** How long the others wait for the work on one answer, between two looks at them. */
const SLICE_MS = 40;

/** The work on one answer, which can be done piece by piece. */
class Work {
  readonly ready: ReadyRoof;
  readonly #steps: Generator<SearchProgress, Assessment>;
  progress: SearchProgress | null = null;
  answer: Answer | null = null;

  constructor(ready: ReadyRoof) {
    this.ready = ready;
    this.#steps = assessReadyInSteps(ready);
  }

  /** Goes on for so long, or to the end; one step is always made. */
  goOn(forMs: number): Answer | null {
    const until = performance.now() + forMs;
    while (this.answer === null) {
      const step = this.#steps.next();
      if (step.done) this.answer = { ready: this.ready, assessment: step.value };
      else this.progress = step.value;
      if (performance.now() >= until) break;
    }
    return this.answer;
  }
}

/** Answers by roof file text; the same text always has the same answer, so the last few are kept. */
export class Answers {
  readonly #most: number;
  readonly #kept = new Map<string, Answer>();
  readonly #today = new Map<string, RoofToday>();
  readonly #works = new Map<string, Work>();

  constructor(most = 20) {
    this.#most = most;
  }

  /** The answer for a roof file, or why it cannot be read. */
  of(text: string): Answer | Unread {
    const found = this.#workOn(text, Number.POSITIVE_INFINITY);
    if (found instanceof Work) throw new Error('the work on an answer stopped before its end');
    return found;
  }

  /** The roof as it is, without what is planned; null where the file cannot be read. */
  today(text: string): RoofToday | null {
    const known = this.#kept.get(text)?.assessment ?? this.#today.get(text);
    if (known !== undefined) return known;
    const ready = readRoofText(text);
    if (!ready.ok) return null;
    const today = todayOfReady(ready);
    this.#today.set(text, today);
    const oldest = this.#today.keys().next().value;
    if (this.#today.size > this.#most && oldest !== undefined) this.#today.delete(oldest);
    return today;
  }

  /** The whole answer if it is there within so long; else how far it is, and the work goes on by itself. */
  within(text: string, patienceMs: number): Answer | Unread | Unfinished {
    const started = this.#works.has(text);
    const found = this.#workOn(text, started ? SLICE_MS : patienceMs);
    if (!(found instanceof Work)) return found;
    if (!started) this.#inTheBackground(text, found);
    const none: SearchProgress = { tried: 0, budget: 0, doing: 'plans', told: 0, toTell: 0 };
    return { progress: found.progress ?? none };
  }

  #workOn(text: string, forMs: number): Answer | Unread | Work {
    const known = this.#kept.get(text);
    if (known !== undefined) {
      // Back to the end: the map's first key is then the one that was not asked for the longest.
      this.#kept.delete(text);
      this.#kept.set(text, known);
      return known;
    }
    let work = this.#works.get(text);
    if (work === undefined) {
      const ready = readRoofText(text);
      if (!ready.ok) return ready;
      work = new Work(ready);
      this.#works.set(text, work);
    }
    try {
      const answer = work.goOn(forMs);
      if (answer === null) return work;
      this.#works.delete(text);
      this.#keep(text, answer);
      return answer;
    } catch (defect) {
      // Whoever asks next starts anew and meets the defect in its own request.
      this.#works.delete(text);
      throw defect;
    }
  }

  #keep(text: string, answer: Answer): void {
    this.#kept.set(text, answer);
    const oldest = this.#kept.keys().next().value;
    if (this.#kept.size > this.#most && oldest !== undefined) this.#kept.delete(oldest);
  }

  #inTheBackground(text: string, work: Work): void {
    setImmediate(() => {
      if (this.#works.get(text) !== work) return;
      try {
        if (this.#workOn(text, SLICE_MS) instanceof Work) this.#inTheBackground(text, work);
      } catch {
        // Told to the next request, which does the work again.
      }
    });
  }
}
