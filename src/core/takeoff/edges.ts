import {
  cleatNails,
  edgeFace,
  edgeMetal,
  edgeStrip,
  flangeNails,
  nailerStock,
} from '../../../reference/takeoff/edges.ts';
import { decimalInches, feetInches, inches, plainNumber } from '../../units/print.ts';
import type { MaterialLine, NailerPiece } from '../report/types.ts';
import { keptIn } from '../site/planned-work.ts';
import { packed } from './attachment.ts';
import type { EdgeRun, Job } from './job.ts';
import { counted, type LineDraft, lineOf, whole } from './line.ts';
import { goesOver, metalFt } from './strips.ts';

/** Stock pieces for a run, laps counted. Source: 10 ft pieces lapped 4 in (guide specification), arithmetic. */
export const edgePieces = (lengthFt: number): number =>
  lengthFt <= edgeMetal.pieceFt + 1e-9
    ? 1
    : 1 + whole((lengthFt - edgeMetal.pieceFt) / (edgeMetal.pieceFt - edgeMetal.lapIn / 12));

/** Nails or screws in one line, one at each end. */
export const inLine = (lengthFt: number, spacingIn: number): number => whole((lengthFt * 12) / spacingIn) + 1;

/** Face of the metal at a height of boards: boards, deck edge and a strip of the fascia. */
export const faceIn = (buildUpIn: number, deckThicknessIn: number): number =>
  Math.max(edgeFace.leastIn, buildUpIn + deckThicknessIn + edgeFace.belowDeckIn);

/**
 * Feet of 1 1/2 in wood under a straight rise from one height to another: course by course, each as long as the height
 * is above its underside.
 */
export function nailerFt({ lengthFt, startIn, endIn }: Pick<NailerPiece, 'lengthFt' | 'startIn' | 'endIn'>): number {
  const [low, high] = [Math.min(startIn, endIn), Math.max(startIn, endIn)];
  let totalFt = 0;
  for (let under = 0; under < high - 1e-6; under += nailerStock.courseIn)
    totalFt += low >= under - 1e-9 && low === high ? lengthFt : lengthFt * Math.min(1, (high - under) / (high - low));
  return totalFt;
}

const edgeDraft = { group: 'Edges' } as const;

function faceWords({ lowIn, highIn }: EdgeRun, deckIn: number, oldIn: number): string {
  const [low, high] = [faceIn(lowIn + oldIn, deckIn), faceIn(highIn + oldIn, deckIn)];
  const old = oldIn < 0.05 ? '' : ` + old roof that stays ${decimalInches(oldIn)}`;
  const one = high - low < 0.05 ? inches(high) : `${inches(low)} at the low end to ${inches(high)} at the high end`;
  return `face ${one} = boards, cover board and any fill under them ${decimalInches(lowIn)}${highIn - lowIn < 0.05 ? '' : ` to ${decimalInches(highIn)}`}${old} + deck ${decimalInches(deckIn, 3)} + ${edgeFace.belowDeckIn} in on the fascia`;
}

function metalLine(run: EdgeRun, job: Job): MaterialLine {
  const { id, label, lengthFt } = run.site;
  const deckIn = job.site.given.deckThicknessIn;
  const oldIn = keptIn(job.site.given);
  const tall = faceIn(run.highIn + oldIn, deckIn);
  const kind = run.use === 'rake' ? 'Raised edge metal' : 'Drip edge, flat, no raised lip';
  return lineOf({
    ...edgeDraft,
    id: `metal-${id}`,
    item: `${kind}, ${label}, face ${inches(tall)}${run.highIn - run.lowIn < 0.05 ? '' : ' at most, cut to the taper'}`,
    quantity: lengthFt,
    unit: 'ft',
    order: edgePieces(lengthFt),
    orderUnit: `${edgeMetal.pieceFt} ft pieces`,
    basis: `${feetInches(lengthFt)} in ${edgeMetal.pieceFt} ft pieces lapped ${edgeMetal.lapIn} in; ${faceWords(run, deckIn, oldIn)}; where the code is the IBC, edge metal tested to ANSI/SPRI ES-1`,
    row: edgeMetal,
  });
}

function copingLine({ site: { id, label, lengthFt } }: EdgeRun): MaterialLine {
  return lineOf({
    ...edgeDraft,
    id: `coping-${id}`,
    item: `Coping, ${label}`,
    quantity: lengthFt,
    unit: 'ft',
    order: edgePieces(lengthFt),
    orderUnit: `${edgeMetal.pieceFt} ft pieces`,
    basis: `${feetInches(lengthFt)} in ${edgeMetal.pieceFt} ft pieces lapped ${edgeMetal.lapIn} in, sheet goes over the parapet under it; measure the wall's thickness for the width`,
    row: edgeMetal,
  });
}

/** Where two metal edges meet. */
function miterCount(runs: readonly EdgeRun[]): number {
  const meets = ({ site }: EdgeRun): boolean =>
    runs.some((other) => Math.hypot(other.site.from[0] - site.to[0], other.site.from[1] - site.to[1]) < 1e-6);
  return runs.filter(meets).length;
}

function metalSmall(job: Job, runs: readonly EdgeRun[]): MaterialLine[] {
  const lengths = runs.map(({ site }) => site.lengthFt);
  const count = (spacingIn: number): number => lengths.reduce((sum, ft) => sum + inLine(ft, spacingIn), 0);
  const { usual, specified } = flangeNails;
  const drafts: LineDraft[] = [
    {
      ...edgeDraft,
      id: 'flange-nails',
      item: 'Barbed roofing nails 1-1/2 in, flange of the edge metal',
      quantity: count(usual.spacingIn),
      unit: 'nails',
      order: packed(count(specified.spacingIn)),
      orderUnit: 'nails',
      basis: `${count(usual.spacingIn)} at the usual ${usual.spacingIn} in, staggered; ordered for ${specified.spacingIn} in (${count(specified.spacingIn)}) of the guide specification, in packs of 50`,
      row: specified,
    },
    {
      ...edgeDraft,
      id: 'cleat-nails',
      item: 'Nails of the continuous cleat',
      quantity: count(cleatNails.spacingIn),
      unit: 'nails',
      order: packed(count(cleatNails.spacingIn)),
      orderUnit: 'nails',
      basis: `${cleatNails.spacingIn} in on centre along ${feetInches(metalFt(job))}`,
      row: cleatNails,
    },
  ];
  const miters = miterCount(runs);
  if (miters > 0)
    drafts.push({
      ...edgeDraft,
      id: 'metal-corners',
      item: 'Mitered corners of edge metal',
      quantity: miters,
      unit: 'corners',
      order: miters,
      orderUnit: 'corners',
      basis: 'one where two metal edges meet',
      row: edgeMetal,
    });
  if (job.family === 'welded' || job.family === 'rubber')
    drafts.push({
      ...edgeDraft,
      id: 'strip-in',
      item: `Cover strip ${edgeStrip.singlePlyIn} in over the flange of the metal`,
      quantity: metalFt(job),
      unit: 'ft',
      order: whole(metalFt(job) / edgeStrip.singlePlyRollFt),
      orderUnit: `${edgeStrip.singlePlyRollFt} ft rolls`,
      basis: `${feetInches(metalFt(job))} of edge metal`,
      row: edgeStrip,
    });
  return drafts.map(lineOf);
}

function nailerLines(job: Job, runs: readonly EdgeRun[]): MaterialLine[] {
  const pieces = runs.flatMap((run) => run.nailers.map((nailer) => ({ nailer, label: run.site.label })));
  if (pieces.length === 0) return [];
  const totalFt = pieces.reduce((sum, { nailer }) => sum + nailerFt(nailer), 0);
  const words = pieces.map(({ nailer: { lengthFt, startIn, endIn }, label }) => {
    const courses = whole(Math.max(startIn, endIn) / nailerStock.courseIn);
    const height = Math.abs(startIn - endIn) < 0.05 ? inches(startIn) : `${inches(startIn)} to ${inches(endIn)}`;
    return `${label}: ${feetInches(lengthFt)} ${height} high, ${counted(courses, 'course')}, top one ripped`;
  });
  const masonry = job.hold.hold === 'adhesive';
  const screws = whole((totalFt * 12) / nailerStock.screwSpacingIn);
  return [
    lineOf({
      ...edgeDraft,
      id: 'nailers',
      item: 'Treated 2x6 nailer, courses of 1-1/2 in, top course ripped to height',
      quantity: totalFt,
      unit: 'ft',
      order: whole((totalFt * (1 + nailerStock.allowance)) / nailerStock.lengthFt),
      orderUnit: `${nailerStock.lengthFt} ft pieces`,
      basis: `top flush with the cover board${keptIn(job.site.given) > 0.05 ? ', heights over the old roof that stays' : ''}. ${words.join('; ')}. ${plainNumber(totalFt, 1)} ft of course + ${nailerStock.allowance * 100} %`,
      row: nailerStock,
    }),
    lineOf({
      ...edgeDraft,
      id: 'nailer-screws',
      item: masonry
        ? 'Anchors of the nailers at the edge, and screws course to course'
        : 'Screws of the nailers, into framing and course to course',
      quantity: screws,
      unit: 'screws',
      order: packed(screws),
      orderUnit: 'screws',
      basis: `${nailerStock.screwSpacingIn} in on centre in every course, closer at corners as the uplift calculation asks${masonry ? '; the anchor is chosen and tested for the edge of this deck' : '; into framing, so that no point shows below'}`,
      row: nailerStock,
    }),
  ];
}

/** Edge metal by its real lengths and faces, copings, nails, and wood under them. */
export function edgeLines(job: Job): MaterialLine[] {
  const runs = job.edges.filter(({ use }) => use === 'open' || use === 'rake');
  return [
    ...nailerLines(job, runs),
    ...runs.map((run) => metalLine(run, job)),
    ...job.edges.filter((run) => goesOver(job, run)).map(copingLine),
    ...(runs.length === 0 ? [] : metalSmall(job, runs)),
  ];
}
