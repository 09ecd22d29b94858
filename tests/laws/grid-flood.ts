/** Water level on a square grid by priority flood over eight neighbours: the independent answer. Plain and slow. */
export interface GridSurface {
  columns: number;
  rows: number;
  cellFt: number;
  z: Float64Array;
}

export interface GridOffer {
  index: number;
  levelIn: number;
}

export function gridLevels({ columns, rows, z }: GridSurface, offers: readonly GridOffer[]): Float64Array {
  const level = new Float64Array(z.length).fill(Number.POSITIVE_INFINITY);
  for (const { index, levelIn } of offers) level[index] = Math.min(level[index], Math.max(z[index], levelIn));
  const done = new Uint8Array(z.length);
  const queue = offers.map(({ index }) => index);
  while (queue.length > 0) {
    let best = 0;
    for (let i = 1; i < queue.length; i++) if (level[queue[i]] < level[queue[best]]) best = i;
    const [at] = queue.splice(best, 1);
    if (done[at]) continue;
    done[at] = 1;
    const [x, y] = [at % columns, Math.floor(at / columns)];
    for (let dy = -1; dy <= 1; dy++) {
      for (let dx = -1; dx <= 1; dx++) {
        const [u, v] = [x + dx, y + dy];
        if (u < 0 || v < 0 || u >= columns || v >= rows) continue;
        const next = v * columns + u;
        const raised = Math.max(z[next], level[at]);
        if (done[next] || raised >= level[next]) continue;
        level[next] = raised;
        queue.push(next);
      }
    }
  }
  return level;
}
