import { leastFlashing } from '../../../reference/flashing.ts';
import { gutterStock } from '../../../reference/takeoff/edges.ts';
import { drainSet, scupperSet } from '../../../reference/takeoff/flashings.ts';
import { feetInches, inches, plainNumber } from '../../units/print.ts';
import { distanceFt } from '../geometry/vector.ts';
import type { MaterialLine, OutletReport } from '../report/types.ts';
import type { Job } from './job.ts';
import { type LineDraft, lineOf, slug, whole } from './line.ts';

const group = 'Water' as const;

const flowWords = ({ flowGpm, drainsSqFt, needs }: OutletReport): string =>
  `${plainNumber(drainsSqFt)} sq ft run to it${flowGpm === null ? '' : `, ${plainNumber(flowGpm, 1)} gpm`}; needs ${needs}`;

type Work = 'New' | 'Replace' | 'Reset';

const workOn = ({ status, adequate }: OutletReport): Work =>
  status === 'proposed' ? 'New' : adequate === false ? 'Replace' : 'Reset';

const parts = {
  drain: `each with ${drainSet.targetFt} x ${drainSet.targetFt} ft target sheet, ${drainSet.sumpFt} x ${drainSet.sumpFt} ft sump, clamping ring, bolts and strainer`,
  scupper: `each with sleeve and 4 in flanges, ${scupperSet.membraneSqFt} sq ft of sheet and ${scupperSet.corners} corners`,
} as const;

/** Drains or scuppers on which the same is done, as one line. */
function pointLine(work: Work, kind: 'drain' | 'scupper', alike: readonly OutletReport[]): LineDraft {
  const [first] = alike;
  const overflow = first!.role === 'overflow';
  const named = alike.map((outlet) => `${outlet.label}: ${flowWords(outlet)}`);
  const floor = overflow ? 'inlet at the overflow height of the plan' : 'inlet at or below the finished surface';
  const size = work === 'Reset' ? '' : `, ${first!.needs}`;
  return {
    id: `outlet-${work.toLowerCase()}-${slug(`${first!.role} ${kind} ${size}`)}`,
    group,
    item: `${work} ${overflow ? 'overflow ' : ''}${kind}${size}`,
    quantity: alike.length,
    unit: alike.length === 1 ? kind : `${kind}s`,
    order: alike.length,
    orderUnit: work === 'Reset' ? (kind === 'drain' ? 'ring and strainer sets' : 'sleeves') : `${kind}s`,
    basis: `${parts[kind]}, ${floor}. ${named.join('. ')}`,
    row: kind === 'drain' ? drainSet : scupperSet,
  };
}

function pointLines(outlets: readonly OutletReport[]): LineDraft[] {
  const alike = new Map<string, { work: Work; kind: 'drain' | 'scupper'; outlets: OutletReport[] }>();
  for (const outlet of outlets) {
    if (outlet.kind === 'edge') continue;
    const work = workOn(outlet);
    const key = `${work}|${outlet.kind}|${outlet.role}|${work === 'Reset' ? '' : outlet.needs}`;
    const entry = alike.get(key) ?? { work, kind: outlet.kind, outlets: [] };
    entry.outlets.push(outlet);
    alike.set(key, entry);
  }
  return [...alike.values()].map(({ work, kind, outlets: group }) => pointLine(work, kind, group));
}

/** Gutter and downspouts of an edge over which water leaves. */
function gutterLines(job: Job, outlet: OutletReport): LineDraft[] {
  const run = job.edges.find(({ site }) => site.id === outlet.id);
  const lengthFt = run?.site.lengthFt ?? (outlet.to === null ? 0 : distanceFt(outlet.at, outlet.to));
  const gutter = run?.site.edge.gutter ?? null;
  const kind = run?.site.edge.kind;
  if (lengthFt === 0 || kind === 'drip' || kind === 'roof-below') return [];
  const label = run?.site.label ?? outlet.label;
  if (kind === 'gutter' && outlet.adequate !== false)
    return [
      {
        id: `gutter-${outlet.id}`,
        group,
        item: `Gutter taken down and hung again, ${label}`,
        quantity: lengthFt,
        unit: 'ft',
        order: whole(lengthFt / gutterStock.hangerFt) + 1,
        orderUnit: 'new hangers',
        basis: `${feetInches(lengthFt)}, a hanger every ${gutterStock.hangerFt} ft; ${flowWords(outlet)}; set so that the new, higher edge drips into it`,
        row: gutterStock,
      },
    ];
  const downspouts = gutter?.downspouts?.length ?? null;
  const drop = job.site.given.heightFt;
  const count = Math.max(1, downspouts ?? whole(lengthFt / 40));
  return [
    {
      id: `gutter-${outlet.id}`,
      group,
      item: `New gutter, ${label}: ${outlet.needs}`,
      quantity: lengthFt,
      unit: 'ft',
      order: whole(lengthFt / gutterStock.pieceFt),
      orderUnit: `${gutterStock.pieceFt} ft pieces`,
      basis: `${feetInches(lengthFt)} in ${gutterStock.pieceFt} ft pieces; ${flowWords(outlet)}`,
      row: gutterStock,
    },
    {
      id: `downspout-${outlet.id}`,
      group,
      item: `Downspouts, ${label}`,
      quantity: count * drop,
      unit: 'ft',
      order: count * whole(drop / gutterStock.pieceFt),
      orderUnit: `${gutterStock.pieceFt} ft pieces`,
      basis: `${count} x ${feetInches(drop)}${downspouts === null ? ', one for every 40 ft taken' : ' as they stand now'}; size: ${outlet.needs}`,
      row: gutterStock,
    },
  ];
}

function overflowLine({ layout }: Job): LineDraft[] {
  const { required, inletIn, note } = layout.overflow;
  if (!required || layout.outlets.some(({ role }) => role === 'overflow')) return [];
  return [
    {
      id: 'overflow',
      group,
      item: `Overflow drain or scupper${inletIn === null ? '' : `, inlet ${inches(inletIn)} above the low point`}`,
      quantity: 1,
      unit: 'overflow',
      order: 1,
      orderUnit: 'overflow',
      basis: note,
      row: leastFlashing,
    },
  ];
}

/** Drains, scuppers, gutters and the overflow that the layout needs. */
export function waterLines(job: Job): MaterialLine[] {
  const edges = job.layout.outlets.filter(({ kind }) => kind === 'edge').flatMap((outlet) => gutterLines(job, outlet));
  const lines = [...pointLines(job.layout.outlets), ...edges].map(lineOf);
  const overflow = overflowLine(job).map((draft) => ({ ...lineOf(draft), source: job.layout.overflow.source }));
  return [...lines, ...overflow];
}
