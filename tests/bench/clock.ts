/** Times of one thing, in ms. */
export interface Times {
  leastMs: number;
  medianMs: number;
  runs: number;
}

const ms = (from: bigint): number => Number(process.hrtime.bigint() - from) / 1e6;

/** Runs a thing so often, after so many runs that do not count, and gives its last result with its times. */
export function timed<T>(run: () => T, runs: number, warmUps = 1): { result: T; times: Times } {
  let result = run();
  for (let i = 1; i < warmUps; i++) result = run();
  const all: number[] = [];
  for (let i = 0; i < runs; i++) {
    const from = process.hrtime.bigint();
    result = run();
    all.push(ms(from));
  }
  all.sort((a, b) => a - b);
  return { result, times: { leastMs: all[0], medianMs: all[Math.floor(all.length / 2)], runs } };
}

/** Runs a thing once, cold. */
export function once<T>(run: () => T): { result: T; times: Times } {
  const from = process.hrtime.bigint();
  const result = run();
  const took = ms(from);
  return { result, times: { leastMs: took, medianMs: took, runs: 1 } };
}

/** Exponent of growth between sizes: slope of the least-squares line of log time over log size. */
export function growthExponent(points: readonly (readonly [size: number, timeMs: number])[]): number {
  const logs = points.map(([size, time]) => [Math.log(size), Math.log(time)] as const);
  const mean = (i: 0 | 1): number => logs.reduce((sum, one) => sum + one[i], 0) / logs.length;
  const [mx, my] = [mean(0), mean(1)];
  const over = logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  const under = logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
  return over / under;
}
