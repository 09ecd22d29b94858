/** What layouts are weighed by: all of them better when smaller. */
export interface Weighed {
  costBoardFt: number;
  greatestIn: number;
  /** Least slope of the valleys, turned round. */
  flatnessPerFt: number;
  addedPsf: number;
  newOutlets: number;
}

/** Differences that nobody would choose by. */
const SAME: Weighed = { costBoardFt: 1, greatestIn: 1 / 16, flatnessPerFt: 0.002, addedPsf: 0.05, newOutlets: 0 };

const keys = Object.keys(SAME) as (keyof Weighed)[];

/** a is as good as b in everything, and better in something. */
export function beats(a: Weighed, b: Weighed): boolean {
  return keys.every((key) => a[key] <= b[key] + SAME[key]) && keys.some((key) => a[key] < b[key] - SAME[key]);
}

/** Those that no other beats, in the order given. */
export function nonDominated<T>(items: readonly T[], weigh: (item: T) => Weighed): T[] {
  const weighed = items.map((item) => ({ item, by: weigh(item) }));
  return weighed.filter(({ by }) => !weighed.some((other) => beats(other.by, by))).map(({ item }) => item);
}
