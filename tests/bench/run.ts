import { cpus, loadavg } from 'node:os';
import { signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { flood } from '../../src/core/surface/flood.ts';
import { pondsOf } from '../../src/core/surface/ponds.ts';
import {
  areaOf,
  curbField,
  drainGrid,
  drainsAndCurbs,
  type EnvelopeCase,
  eightRoofs,
  meanHeightIn,
  searchOf,
  wholeAnswer,
  withoutSearch,
} from './cases.ts';
import { growthExponent, once, type Times, timed } from './clock.ts';
import { adjacency, cornerOffer, gridFlood, gridMesh, roughHeights, triangulated } from './ponds.ts';

interface Line {
  what: string;
  times: Times;
  /** Time that the design allows; null where none is set. */
  allowedMs: number | null;
  /** What is wrong with the answer; null where it is right. */
  wrong: string | null;
}

const same = (a: number, b: number, share: number): boolean =>
  Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b));

function envelopeLine(
  what: string,
  { section, meanIn, run }: EnvelopeCase,
  runs: number,
  allowedMs: number | null,
): Line {
  const { result, times } = timed(run, runs);
  const covered = areaOf(result);
  const mean = meanHeightIn(result);
  const wrong = !same(covered, section.areaSqFt, 1e-6)
    ? `covers ${covered} of ${section.areaSqFt} sq ft`
    : meanIn !== null && !same(mean, meanIn, 1e-6)
      ? `mean ${mean} in, not ${meanIn}`
      : null;
  return { what, times, allowedMs, wrong };
}

/** Answers about whole roofs: area, every layout judged, drainage areas that cover the section. */
function roofLines(): Line[] {
  const answer = wholeAnswer('twenty-drains');
  const cold = once(answer);
  const warm = timed(answer, 3, 1);
  const layout = cold.result.layouts.find(({ id }) => id === cold.result.chosenLayout);
  const drained = layout?.areas.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0) ?? 0;
  const openSqFt = cold.result.plan.curbs.reduce(
    (left, { outline }) => left - Math.abs(signedAreaSqFt(outline)),
    cold.result.section.areaSqFt,
  );
  const wrongC =
    cold.result.section.areaSqFt === 50_000 && same(drained, openSqFt, 1e-6)
      ? null
      : `${drained} sq ft drained of ${openSqFt}`;
  const known = timed(withoutSearch('back-section'), 15, 5);
  const { site, report, built } = known.result;
  const laidSqFt = areaOf(built.thickness);
  const wrongA =
    report.verdict === 'ponds' && same(laidSqFt, site.section.areaSqFt, 1e-6)
      ? null
      : `${report.verdict}, ${laidSqFt} sq ft of boards on ${site.section.areaSqFt}`;
  return [
    { what: '(c) twenty drains, whole answer, cold', times: cold.times, allowedMs: 2000, wrong: wrongC },
    { what: '(c) twenty drains, whole answer, warm', times: warm.times, allowedMs: 2000, wrong: wrongC },
    { what: '(a) back section, one known layout, warm', times: known.times, allowedMs: 150, wrong: wrongA },
  ];
}

const drainCases = [
  { size: 96, across: 12, deep: 8, runs: 7, allowedMs: null },
  { size: 1000, across: 40, deep: 25, runs: 5, allowedMs: 1000 },
  { size: 4000, across: 80, deep: 50, runs: 3, allowedMs: null },
] as const;

const curbCases = [
  { size: 12, runs: 7 },
  { size: 60, runs: 5 },
  { size: 400, runs: 2 },
] as const;

function show({ what, times, allowedMs, wrong }: Line): string {
  const time = (ms: number): string => ms.toFixed(ms < 100 ? 1 : 0).padStart(8);
  const share = allowedMs === null ? '' : `${(times.medianMs / allowedMs).toFixed(2)} of ${allowedMs} ms`;
  return `${what.padEnd(46)}${time(times.leastMs)}${time(times.medianMs)}${String(times.runs).padStart(5)}   ${share.padEnd(18)}${wrong === null ? 'right' : `WRONG: ${wrong}`}`;
}

const growthOf = (lines: readonly Line[], sizes: readonly number[]): string => {
  const points = lines.map(({ times }, i) => [sizes[i], times.leastMs] as const);
  const steps = points
    .slice(1)
    .map(([size, ms], i) => `${(size / points[i][0]).toFixed(1)} x as many take ${(ms / points[i][1]).toFixed(1)} x`);
  return `growth exponent ${growthExponent(points).toFixed(2)} (${steps.join(', ')})`;
};

const [load] = loadavg();
console.log(
  `load ${load.toFixed(1)} on ${cpus().length} processors${load > cpus().length / 2 ? ': BUSY, times are too long' : ''}`,
);
console.log(
  `${''.padEnd(46)}${'least ms'.padStart(8)}${'median'.padStart(8)}${'runs'.padStart(5)}   allowed           answer`,
);

const roofs = roofLines();
for (const line of roofs) console.log(show(line));

const drains = drainCases.map(({ size, across, deep, runs, allowedMs }) => {
  const line = envelopeLine(`taper over ${size} drains, open rectangle`, drainGrid(across, deep), runs, allowedMs);
  console.log(show(line));
  return line;
});
console.log(
  `  ${growthOf(
    drains,
    drainCases.map(({ size }) => size),
  )}`,
);

const curbs = curbCases.map(({ size, runs }) => {
  const line = envelopeLine(
    `taper over 5 drains round ${size} curbs`,
    curbField(size),
    runs,
    size === 400 ? 5000 : null,
  );
  console.log(show(line));
  return line;
});
console.log(
  `  ${growthOf(
    curbs,
    curbCases.map(({ size }) => size),
  )}`,
);

const mixed = [
  { across: 10, deep: 10, count: 30, runs: 5, allowedMs: null },
  { across: 40, deep: 25, count: 300, runs: 3, allowedMs: 10_000 },
].map(({ across, deep, count, runs, allowedMs }) => {
  const what = `taper over ${across * deep} drains round ${count} curbs`;
  const line = envelopeLine(what, drainsAndCurbs(across, deep, count), runs, allowedMs);
  console.log(show(line));
  return line;
});
console.log(`  ${growthOf(mixed, [100, 1000])}`);

const LEAST_CANDIDATES = 500;

function searchLine(): Line {
  const { result, times } = timed(searchOf('back-section'), 3);
  const wrong = result.tried >= LEAST_CANDIDATES && result.complete ? null : `${result.tried} candidates`;
  return { what: `(a) search of ${result.tried} candidates`, times, allowedMs: 2000, wrong };
}
const search = searchLine();
console.log(show(search));

/** One hot clear day over eight roofs, each ending as it began and keeping its energy. */
function heatLine(): Line {
  const { result, times } = timed(eightRoofs(), 15, 3);
  const lost = Math.max(...result.map(({ enteredJ, leftJ }) => Math.abs(enteredJ - leftJ) / Math.abs(leftJ)));
  const hot = result.every(({ faceC }) => Math.max(...faceC) > 35);
  const wrong = result.length === 8 && lost < 1e-3 && hot ? null : `${result.length} roofs, ${lost} of the heat lost`;
  return { what: 'hot day over eight roofs', times, allowedMs: 150, wrong };
}
const heat = heatLine();
console.log(show(heat));

/** Pond kernel beside a plain grid flood on as many cells; triangulation and adjacency apart. */
function pondLines(side: number): { lines: Line[]; ratio: number } {
  const z = roughHeights(side);
  const n = (side * side).toLocaleString('en');
  const mesh = gridMesh(side, z);
  const grid = timed(() => gridFlood(side, z), 3);
  const near = timed(() => adjacency(mesh), 2);
  const kernel = timed(() => {
    const water = flood(mesh, cornerOffer, near.result);
    return { water, ...pondsOf(mesh, water) };
  }, 3);
  const cut = side <= 400 ? timed(() => triangulated(side), 1) : once(() => triangulated(side));
  const { ponds, trappedSqFt, water } = kernel.result;
  // Eight neighbours let water cross both diagonals of a square: the grid never stands higher than the surface.
  const lower = water.levelIn.some((level, v) => grid.result[v] > level + 1e-9);
  const right = ponds.length > 0 && trappedSqFt === 0 && !lower;
  const line = (what: string, times: Times, wrong: string | null): Line => ({ what, times, allowedMs: null, wrong });
  return {
    lines: [
      line(`plain grid flood, ${n} cells`, grid.times, null),
      line(
        `pond kernel, ${n} vertices`,
        kernel.times,
        right ? null : `${ponds.length} ponds, ${trappedSqFt} sq ft trapped`,
      ),
      line('  its adjacency', near.times, null),
      line(`  triangulation of ${n} points`, cut.times, cut.result.corners.length > 0 ? null : 'no triangles'),
    ],
    ratio: kernel.times.leastMs / grid.times.leastMs,
  };
}

const ponds = [250, 500, 1000].map((side) => {
  const { lines, ratio } = pondLines(side);
  for (const line of lines) console.log(show(line));
  console.log(`  pond kernel / grid flood ${ratio.toFixed(2)} (2.5 allowed)`);
  return { lines, side, ratio };
});
console.log(
  `  ${growthOf(
    ponds.map(({ lines }) => lines[1]),
    ponds.map(({ side }) => side * side),
  )}`,
);

const wrong = [...roofs, ...drains, ...curbs, ...mixed, search, heat, ...ponds.flatMap(({ lines }) => lines)].filter(
  (line) => line.wrong !== null,
);
process.exitCode = wrong.length === 0 ? 0 : 1;
