import {
  type PatchWords,
  patchWords,
  type RepairRow,
  repairs,
  seamRoll,
  usualPatch,
} from '../../../reference/repairs.ts';
import { sourceNote } from '../finding.ts';
import { boxOf, perimeterFt } from '../geometry/vector.ts';
import type { InspectedFinding, RepairWork } from '../report/types.ts';
import type { EdgeKind } from '../roof.ts';
import type { Site } from '../site/site.ts';
import { cutOutSqFt } from '../takeoff/cut-out.ts';
import { rowCount } from '../takeoff/sheet-layout.ts';
import { inspectionOf } from './inspection.ts';

type Figure = RepairWork['figures'][number];

const figure = (name: string, value: number, unit: string, assumed: string | null = null): Figure => ({
  name,
  value,
  unit,
  assumed,
});

/** Edges at which a sheet turns up. */
const upturns: ReadonlySet<EdgeKind> = new Set(['wall', 'party-wall', 'parapet', 'shingles-above']);

/** Where a shrinking sheet has to be held: along every wall and round every curb, not only where it has come off. */
function securement({ edges, roof }: Site): Figure[] {
  const wallFt = edges.reduce((sum, { edge, lengthFt }) => sum + (upturns.has(edge.kind) ? lengthFt : 0), 0);
  const curbFt = roof.curbs.reduce((sum, { outline }) => sum + perimeterFt(outline), 0);
  return [
    figure('along walls', wallFt, 'ft'),
    figure('round curbs', curbFt, 'ft'),
    figure('to fasten in all', wallFt + curbFt, 'ft'),
  ];
}

/** Seams of a sheet roof by rolls along its longer way: what there is to probe. */
function seams({ roof, section, edges }: Site): Figure[] {
  const { minX, maxX, minY, maxY } = boxOf(roof.outline);
  const [short, long] = [maxX - minX, maxY - minY].sort((a, b) => a - b);
  const strips = rowCount(short, seamRoll.widthFt, seamRoll.lapFt);
  const assumed = `rolls ${seamRoll.widthFt} ft wide along the longer way, lapped ${seamRoll.lapFt * 12} in: not measured`;
  const perimeter = edges.reduce((sum, { lengthFt }) => sum + lengthFt, 0);
  return [
    figure('area', section.areaSqFt, 'sq ft'),
    figure('rolls side by side', strips, '', assumed),
    figure('field seams', (strips - 1) * long, 'ft', assumed),
    figure('edge and flashing seams', perimeter, 'ft'),
  ];
}

/** What was found wet and the strip past its line; nothing where nobody knows how far it reaches. */
const wetPart = (site: Site): Figure[] => {
  const sqFt = cutOutSqFt(site);
  return sqFt === null ? [] : [figure('to cut out and fill, the strip past the line counted', sqFt, 'sq ft')];
};

const figuresOf: Readonly<Record<string, (site: Site) => Figure[]>> = {
  bridging: securement,
  'failed-weld': seams,
  'wet-insulation': wetPart,
};

const patches: readonly PatchWords[] = patchWords;

const rows: readonly RepairRow[] = repairs;

const placeOf = ({ number, where, extent }: InspectedFinding): string =>
  `${number}. ${where}${extent === '' ? '' : `; ${extent}`}`;

/** Repairs that the findings ask for, each with its places and, where it reaches along the roof, its lengths. */
export function repairsOf(site: Site): RepairWork[] {
  const found = inspectionOf(site);
  const patch = patches.find(({ covering }) => covering === site.given.covering)?.words ?? usualPatch.words;
  return rows.flatMap((row) => {
    const own = found.filter(({ kind }) => kind === row.finding);
    if (own.length === 0) return [];
    const { finding, oftenWrong } = row;
    const words = row.instead?.find(({ covering }) => covering === site.given.covering)?.lines ?? row.lines;
    const lines = words.map((line) => line.replace('{patch}', patch));
    const figures = figuresOf[finding]?.(site) ?? [];
    return [
      { finding, title: own[0].title, places: own.map(placeOf), oftenWrong, lines, figures, source: sourceNote(row) },
    ];
  });
}
