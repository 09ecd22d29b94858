import { type DamageZone, damageTogether, damageZones } from '../../../reference/takeoff/deck-repair.ts';
import { sheathing } from '../../../reference/takeoff/tear-off.ts';
import { feetInches } from '../../units/print.ts';
import type { MaterialLine } from '../report/types.ts';
import { sideLengthFt } from '../site/edges.ts';
import type { EdgeUse, Job } from './job.ts';
import { lineOf, slug, whole } from './line.ts';

export interface ZoneSheets {
  sheets: number;
  chance: number;
}

/** Chances of 0, 1, ... bad sheets in one zone: beta-binomial, or binomial where nothing clusters. */
function zoneChances({ sheets: n, chance: p }: ZoneSheets, correlation: number): number[] {
  if (p <= 0) return [1];
  const a = correlation > 0 ? p * (1 / correlation - 1) : 0;
  const b = correlation > 0 ? (1 - p) * (1 / correlation - 1) : 0;
  const out: number[] = [];
  for (let k = 0; k <= n; k++) {
    let value = 1;
    for (let i = 0; i < k; i++) value *= ((n - i) / (i + 1)) * (correlation > 0 ? (a + i) / (a + b + i) : p);
    for (let i = 0; i < n - k; i++) value *= correlation > 0 ? (b + i) / (a + b + k + i) : 1 - p;
    out.push(value);
  }
  return out;
}

/**
 * Chance of every total number of bad sheets over the zones.
 * @param correlation inside a zone: 0 = sheets go bad one by one
 * Source: beta-binomial with a = p (1 / rho - 1), b = (1 - p) (1 / rho - 1). Correctness: tests/published/takeoff.test.ts
 */
export function damageChances(zones: readonly ZoneSheets[], correlation: number): number[] {
  return zones.reduce<number[]>(
    (total, zone) => {
      const own = zoneChances(zone, correlation);
      const sum = new Array<number>(total.length + own.length - 1).fill(0);
      for (const [i, p] of total.entries()) for (const [k, q] of own.entries()) sum[i + k]! += p * q;
      return sum;
    },
    [1],
  );
}

/** Least number that is not passed with this chance. */
export function atChance(chances: readonly number[], share: number): number {
  let sum = 0;
  for (let k = 0; k < chances.length; k++) {
    sum += chances[k]!;
    if (sum >= share - 1e-12) return k;
  }
  return chances.length - 1;
}

const rows: readonly DamageZone[] = damageZones;
const chanceOf = (zone: DamageZone['zone']): number => rows.find((row) => row.zone === zone)?.chance ?? 0;
const SHEET_FT = 8;

/** Sheets of the deck by place: edge row, tie-in row, one at every pipe and curb, the rest. */
export function deckZones(job: Pick<Job, 'site' | 'edges' | 'areaSqFt'>): ZoneSheets[] {
  const along = (use: EdgeUse): number =>
    job.edges.filter((run) => run.use === use).reduce((sum, { site }) => sum + whole(site.lengthFt / SHEET_FT), 0);
  const all = whole((job.areaSqFt / sheathing.sheetSqFt) * 1.05);
  const open = Math.min(all, along('open'));
  const tie = Math.min(all - open, along('tie-in'));
  const holes = Math.min(all - open - tie, job.site.roof.pipes.length + job.site.roof.curbs.length);
  return [
    { sheets: open, chance: chanceOf('open-edge') },
    { sheets: tie, chance: chanceOf('tie-in') },
    { sheets: holes, chance: chanceOf('penetrations') },
    { sheets: all - open - tie - holes, chance: chanceOf('rest') },
  ];
}

const WOOD: ReadonlySet<string> = new Set(['plywood', 'osb', 'plank', 'tongue-and-groove']);
const ROT = /rot|soft|decay|spong/;

/** Sheets that are most likely to be replaced, and the number passed by one job in ten; null = no sign of rot, or no wood. */
export function expectedSheets(job: Job): { likely: number; oneInTen: number } | null {
  if (!WOOD.has(job.site.given.deckKind) || !job.site.roof.findings.some(({ kind }) => ROT.test(kind))) return null;
  const chances = damageChances(deckZones(job), damageTogether.correlation);
  return { likely: Math.max(1, atChance(chances, 0.5)), oneInTen: Math.max(1, atChance(chances, 0.9)) };
}

function woodLines(job: Job): MaterialLine[] {
  const { roof } = job.site;
  return roof.findings.flatMap((finding, i) => {
    if (!ROT.test(finding.kind) || finding.side === null) return [];
    const side = sideLengthFt(roof.outline, finding.side);
    const marked = Math.min(side, (finding.toFt ?? side) - (finding.fromFt ?? 0));
    return [
      lineOf({
        id: `wood-${i}-${slug(finding.kind)}`,
        group: 'Wood and deck',
        item: `Allowance: fascia and edge wood, side ${finding.side} (${finding.kind})`,
        quantity: marked,
        unit: 'ft',
        order: marked,
        orderUnit: 'ft, settled at a unit price',
        basis: `most likely the ${feetInches(marked)} that were marked, at most the whole side, ${feetInches(side)}; known when the old edge is off`,
        row: rows[0]!,
      }),
    ];
  });
}

/** Wood that may have to be replaced: an allowance with its range, only where rot was found. */
export function deckRepairLines(job: Job): MaterialLine[] {
  const sheets = expectedSheets(job);
  const wood = WOOD.has(job.site.given.deckKind) ? woodLines(job) : [];
  if (sheets === null) return wood;
  const { likely, oneInTen } = sheets;
  const panel = job.site.given.deckKind === 'plywood' || job.site.given.deckKind === 'osb';
  const thickness = job.site.given.deckThicknessIn;
  const zones = deckZones(job).map(({ sheets: n, chance }, i) => `${rows[i]!.words} ${n} at ${chance * 100} %`);
  return [
    lineOf({
      id: 'deck-sheets',
      group: 'Wood and deck',
      item: `Allowance: deck ${panel ? `sheets 4 x 8 ft, ${thickness} in ${job.site.given.deckKind}` : `boards ${thickness} in, in lots of ${sheathing.sheetSqFt} sq ft`}`,
      quantity: likely,
      unit: panel ? 'sheets' : 'lots',
      order: likely,
      orderUnit: panel ? 'sheets' : 'lots',
      basis: `most likely ${likely}, one job in ten more than ${oneInTen}: a planning guess (sheets and chance: ${zones.join(', ')}), no published rate exists. Price ${likely} as an allowance, a unit price beyond, a credit below, and stop with photos and a signature at ${oneInTen}`,
      row: rows[0]!,
    }),
    ...wood,
  ];
}
