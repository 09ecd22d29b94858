import { LevelHeap } from './flood.ts';

/** Places and the straight ways between them: the ways of place v are `list[starts[v] .. starts[v + 1] - 1]`. */
export interface WayNet {
  starts: Int32Array;
  list: Int32Array;
  lengthFt: Float64Array;
}

/** Where water leaves, and the level there. */
export interface NetStart {
  place: number;
  levelIn: number;
}

/**
 * Least heights, nowhere under those given, from which every place has a way that falls at least `slope` to a start.
 * z(p) = least over the ways to p, of the greatest of given(q) + slope x length(q to p) over all q on the way.
 * @param givenIn heights that may be raised and never cut, in
 * @param slopeInPerFt 0 gives the water level itself
 * @returns heights in in; Infinity where no start is reached
 * Source: priority flood with a least gradient, Barnes, Lehman and Mulla, Computers & Geosciences 62 (2014).
 * Correctness: tests/published/taper.test.ts rows 38 and 39
 */
export function leastPathHeights(
  { starts, list, lengthFt }: WayNet,
  givenIn: Float64Array,
  from: readonly NetStart[],
  slopeInPerFt: number,
): Float64Array {
  const heights = new Float64Array(givenIn.length).fill(Number.POSITIVE_INFINITY);
  const done = new Uint8Array(givenIn.length);
  const heap = new LevelHeap(givenIn.length + from.length);
  const reach = (place: number, levelIn: number): void => {
    const height = Math.max(givenIn[place], levelIn);
    if (height >= heights[place]) return;
    heights[place] = height;
    heap.push(height, place);
  };
  for (const { place, levelIn } of from) reach(place, levelIn);
  while (heap.size > 0) {
    const v = heap.pop();
    if (done[v]) continue;
    done[v] = 1;
    for (let k = starts[v]; k < starts[v + 1]; k++) reach(list[k], heights[v] + slopeInPerFt * lengthFt[k]);
  }
  return heights;
}
