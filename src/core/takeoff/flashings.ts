import { leastFlashing } from '../../../reference/flashing.ts';
import { nailerStock } from '../../../reference/takeoff/edges.ts';
import { basePlates, pipeBoot, terminationBar, tieIn, underlayRoll } from '../../../reference/takeoff/flashings.ts';
import { feetInches, inches, plainNumber } from '../../units/print.ts';
import { perimeterFt } from '../geometry/vector.ts';
import { pipeNames } from '../kind-names.ts';
import type { MaterialLine } from '../report/types.ts';
import { carriesFlueGas } from '../roof.ts';
import { packed } from './attachment.ts';
import { inLine } from './edges.ts';
import type { EdgeRun, Job } from './job.ts';
import { counted, type LineDraft, lineOf, whole } from './line.ts';
import { flashingIn, goesOver, type Strip, tieInRunIn } from './strips.ts';

const group = 'Flashings' as const;

/** A strip as a line: its own size, and where it is cut from. */
function stripLine({ id, item, lengthFt, widthIn, plies, basis, row }: Strip, job: Job): MaterialLine {
  const cut = job.family === 'liquid' || job.membrane?.id === 'bur-hot';
  return lineOf({
    id,
    group,
    item,
    quantity: (lengthFt * widthIn * plies) / 12,
    unit: 'sq ft',
    order: plies,
    orderUnit: cut
      ? 'strips, in the amounts of the covering'
      : `strip${plies > 1 ? 's' : ''} cut from the covering's rolls`,
    basis: `${basis}${plies > 1 ? `, ${plies} plies` : ''}; counted with the covering, nothing more to buy`,
    row,
  });
}

function wallLines(job: Job): LineDraft[] {
  const walls = job.edges.filter((run) => (run.use === 'wall' || run.use === 'parapet') && !goesOver(job, run));
  const lengthFt = walls.reduce((sum, { site }) => sum + site.lengthFt, 0);
  if (lengthFt === 0) return [];
  const bars = walls.reduce((sum, { site }) => sum + whole(site.lengthFt / terminationBar.pieceFt), 0);
  const screws = walls.reduce((sum, { site }) => sum + inLine(site.lengthFt, terminationBar.fastenerIn), 0);
  return [
    {
      id: 'termination-bar',
      group,
      item: 'Termination bar with counterflashing over it',
      quantity: lengthFt,
      unit: 'ft',
      order: bars,
      orderUnit: `${terminationBar.pieceFt} ft pieces each`,
      basis: `${feetInches(lengthFt)} of wall, butted; siding or counterflashing laps it 4 in, a bar alone is a maintenance joint`,
      row: terminationBar,
    },
    {
      id: 'termination-fasteners',
      group,
      item: 'Fasteners of the termination bar, for the wall at hand',
      quantity: screws,
      unit: 'fasteners',
      order: packed(screws),
      orderUnit: 'fasteners',
      basis: `${terminationBar.fastenerIn} in on centre and at both ends`,
      row: terminationBar,
    },
  ];
}

function plateLine(job: Job): LineDraft[] {
  const runs = job.edges.filter(({ use }) => use === 'wall' || use === 'parapet' || use === 'tie-in');
  const curbs = job.site.roof.curbs.map(({ outline }) => perimeterFt(outline));
  const count =
    runs.reduce((sum, { site }) => sum + inLine(site.lengthFt, basePlates.spacingIn), 0) +
    curbs.reduce((sum, ft) => sum + whole((ft * 12) / basePlates.spacingIn), 0);
  if (count === 0) return [];
  return [
    {
      id: 'base-plates',
      group,
      item: 'Plates and screws at the foot of walls, curbs and tie-in',
      quantity: count,
      unit: 'sets',
      order: packed(count),
      orderUnit: 'sets',
      basis: `${basePlates.spacingIn} in on centre along ${counted(runs.length, 'wall or tie-in', 'walls or tie-ins')} and ${counted(curbs.length, 'curb')}, into wall, curb or framing and never through a deck that is the ceiling; ${basePlates.closerIn} in where the specification asks`,
      row: basePlates,
    },
  ];
}

function tieInLines(run: EdgeRun): LineDraft[] {
  const { id, label, lengthFt, edge } = run.site;
  const pitch = edge.pitchIn12 ?? tieIn.carefulPitchIn12;
  const runFt = tieInRunIn(pitch) / 12;
  const known = edge.pitchIn12 === null ? ` (pitch not known, ${pitch} in 12 taken)` : '';
  const rule = `the longer of ${tieIn.leastRunIn} in along the slope and ${tieIn.riseIn} in of rise at ${pitch} in 12${known} = ${plainNumber(runFt * 12, 1)} in`;
  const sqFt = lengthFt * runFt;
  return [
    {
      id: `underlay-${id}`,
      group,
      item: `Self-adhered underlayment over the top of the sheet, ${label}`,
      quantity: lengthFt,
      unit: 'ft',
      order: whole(lengthFt / underlayRoll.lengthFt),
      orderUnit: `rolls ${underlayRoll.widthIn} in x ${underlayRoll.lengthFt} ft`,
      basis: `${feetInches(lengthFt)} of tie-in; laps the sheet by 6 in or more`,
      row: underlayRoll,
    },
    {
      id: `shingles-${id}`,
      group,
      item: `Shingles and starter to re-lay, ${label}`,
      quantity: sqFt,
      unit: 'sq ft',
      order: whole(sqFt / 100),
      orderUnit: 'squares',
      basis: `${feetInches(lengthFt)} x run-up, ${rule}; lowest course 2 to 4 in above the new surface, no nail within 10 to 12 in of the angle`,
      row: tieIn,
    },
  ];
}

function pipeLines(job: Job): LineDraft[] {
  const { pipes } = job.site.roof;
  if (pipes.length === 0 || job.family === null) return [];
  const hot = pipes.filter(carriesFlueGas).length;
  const cold = pipes.length - hot;
  const sizes = pipes.map(
    ({ kind, diameterIn }) => `${pipeNames[kind]} ${diameterIn === null ? 'size not known' : inches(diameterIn)}`,
  );
  const draft = { group, unit: 'pipes', row: pipeBoot } as const;
  const lines: LineDraft[] = [];
  if (cold > 0)
    lines.push({
      ...draft,
      id: 'pipe-boots',
      item: job.family === 'bitumen' ? 'Pipe flashing with flange, and clamp' : 'Pipe boot and clamp',
      quantity: cold,
      order: cold,
      orderUnit: 'sets',
      basis: `one a pipe, at least ${pipeBoot.heightIn} in high: ${sizes.join(', ')}`,
    });
  if (hot > 0)
    lines.push({
      ...draft,
      id: 'pipe-collars',
      item: 'Metal collar and storm collar for a warm flue or gas vent',
      quantity: hot,
      order: hot,
      orderUnit: 'sets',
      basis: `a hot pipe takes metal, not a rubber boot: ${sizes.join(', ')}; clearance by the maker of the vent`,
    });
  return lines;
}

function cornerLine(job: Job): LineDraft[] {
  if (job.family !== 'welded' && job.family !== 'rubber') return [];
  const upright = job.edges.filter(({ use }) => use === 'wall' || use === 'parapet');
  const meets = upright.filter(({ site }) =>
    upright.some((other) => Math.hypot(other.site.from[0] - site.to[0], other.site.from[1] - site.to[1]) < 1e-6),
  ).length;
  const curbs = job.site.roof.curbs.reduce((sum, { outline }) => sum + outline.length, 0);
  const scuppers = 2 * job.layout.outlets.filter(({ kind }) => kind === 'scupper').length;
  const count = meets + curbs + scuppers;
  if (count === 0) return [];
  return [
    {
      id: 'preformed-corners',
      group,
      item: job.family === 'rubber' ? 'Uncured corner pieces' : 'Preformed corners',
      quantity: count,
      unit: 'corners',
      order: count,
      orderUnit: 'corners',
      basis: `${meets} where walls meet, ${curbs} at curbs, ${scuppers} at scuppers`,
      row: basePlates,
    },
  ];
}

/** Curbs and pipes that would be drowned by the new boards: how much each must come up. */
function raiseLines(job: Job): LineDraft[] {
  const { layout, site } = job;
  const short = layout.budgets.filter(({ id, leftIn }) => leftIn < -1e-9 && /^(curb|pipe)-/.test(id));
  return short.map(({ id, where, usedIn, leftIn }) => {
    const riseIn = whole(-leftIn * 4) / 4;
    const curb = site.roof.curbs.find((one) => `curb-${one.id}` === id);
    const vents = site.roof.pipes.some((pipe, i) => `pipe-${i}` === id && carriesFlueGas(pipe));
    const courses = whole(riseIn / nailerStock.courseIn);
    const ft = curb === undefined ? 0 : perimeterFt(curb.outline) * courses;
    const why = `new boards, cover board and any fill under them take ${inches(usedIn)} there, ${flashingIn(job)} in of flashing must stand above them, ${inches(-leftIn)} are missing`;
    return {
      id: `raise-${id}`,
      group,
      item: `Raise the ${where} by ${inches(riseIn)}`,
      quantity: riseIn,
      unit: 'in',
      order: curb === undefined ? 1 : ft,
      orderUnit: curb !== undefined ? 'ft of 2x lumber' : vents ? 'visit of a licensed trade' : 'pipe extension',
      basis:
        curb === undefined
          ? `${why}; ${vents ? 'a licensed trade brings it to its listed height with listed parts, and looks today whether it stands too low as it is' : "extend with the pipe's own fittings"}`
          : `${why}; ${counted(courses, 'course')} of 1-1/2 in round ${feetInches(perimeterFt(curb.outline))}`,
      row: leastFlashing,
    };
  });
}

/** Flashings at every wall, curb, tie-in and pipe of the section. */
export function flashingLines(job: Job, strips: readonly Strip[]): MaterialLine[] {
  return [
    ...strips.map((strip) => stripLine(strip, job)),
    ...[
      ...raiseLines(job),
      ...wallLines(job),
      ...plateLine(job),
      ...cornerLine(job),
      ...job.edges.filter(({ use }) => use === 'tie-in').flatMap(tieInLines),
      ...pipeLines(job),
    ].map(lineOf),
  ];
}
