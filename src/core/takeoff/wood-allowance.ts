import {
  type DamageZone,
  damageTogether,
  damageZones,
  edgeLumber,
  rotRunsOn,
  severityFactors,
} from '../../../reference/takeoff/deck-repair.ts';
import { sheathing } from '../../../reference/takeoff/tear-off.ts';
import { feetInches, plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import { deckNames } from '../kind-names.ts';
import type { Layout, WoodAllowance, WoodRow } from '../report/types.ts';
import { sideWords } from '../report/words.ts';
import type { InspectionFinding } from '../roof.ts';
import { isRot } from '../scope/bearing.ts';
import { sideLengthFt } from '../site/edges.ts';
import { isOpenEdge } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import { atChance, damageChances, type ZoneSheets } from './deck-repair.ts';
import { slug, whole } from './line.ts';

const rows: readonly DamageZone[] = damageZones;
const SHEET_FT = 8;
const MOST_CHANCE = 0.95;
const WOOD: ReadonlySet<string> = new Set(['plywood', 'osb', 'plank', 'tongue-and-groove']);

export const isWoodDeck = ({ given }: Pick<Site, 'given'>): boolean => WOOD.has(given.deckKind);

const chanceOf = (zone: DamageZone['zone'], factor: number): number =>
  Math.min(MOST_CHANCE, (rows.find((row) => row.zone === zone)?.chance ?? 0) * factor);

/**
 * Sheets of the deck by place: row along open edges, row along the tie-in, one at every pipe and curb, the rest.
 * @param opened ids of edges that the layout opens
 * @param factor on every chance, from how badly the rot was found
 */
export function deckZones(site: Site, opened: ReadonlySet<string>, factor = 1): ZoneSheets[] {
  const along = (of: (edge: Site['edges'][number]) => boolean): number =>
    site.edges.filter(of).reduce((sum, { lengthFt }) => sum + whole(lengthFt / SHEET_FT), 0);
  const isOpen = (edge: Site['edges'][number]): boolean => isOpenEdge(edge) || opened.has(edge.id) || drips(edge);
  const all = whole((site.section.areaSqFt / sheathing.sheetSqFt) * 1.05);
  const open = Math.min(all, along(isOpen));
  const tie = Math.min(
    all - open,
    along((edge) => !isOpen(edge) && edge.edge.kind === 'shingles-above'),
  );
  const holes = Math.min(all - open - tie, site.roof.pipes.length + site.roof.curbs.length);
  return [
    { sheets: open, chance: chanceOf('open-edge', factor) },
    { sheets: tie, chance: chanceOf('tie-in', factor) },
    { sheets: holes, chance: chanceOf('penetrations', factor) },
    { sheets: all - open - tie - holes, chance: chanceOf('rest', factor) },
  ];
}

const eaves: ReadonlySet<string> = new Set(['gutter', 'drip', 'roof-below', 'box-gutter']);
const drips = ({ edge }: Site['edges'][number]): boolean => eaves.has(edge.kind);

/** Sheets that somebody has already found bad: never fewer than these. */
function seenSheets(site: Site, finding: InspectionFinding): number {
  if (finding.kind !== 'soft-deck' && finding.kind !== 'rotten-eave') return 0;
  const drawn = finding.outline === null ? finding.areaSqFt : Math.abs(signedAreaSqFt(finding.outline));
  if (drawn !== null) return whole(drawn / sheathing.sheetSqFt);
  return finding.side === null ? 1 : whole(markedFt(site, finding) / SHEET_FT);
}

function markedFt(site: Site, { side, fromFt, toFt }: InspectionFinding): number {
  if (side === null) return 0;
  const length = sideLengthFt(site.roof.outline, side);
  return Math.min(length, toFt ?? length) - (fromFt ?? 0);
}

/** Boards along a marked edge: what is marked, and how far it may run on. */
function edgeRow(site: Site, finding: InspectionFinding, i: number): WoodRow[] {
  const isTails = finding.kind === 'rotten-rafter-tails';
  if (finding.side === null || finding.kind === 'soft-deck') return [];
  const side = sideLengthFt(site.roof.outline, finding.side);
  const marked = markedFt(site, finding);
  const most = Math.min(side, marked + 2 * rotRunsOn.oneInTenFt);
  const onlyStained = finding.kind === 'stained-eave';
  const likely = onlyStained ? 0 : marked;
  const known = `${feetInches(marked)} were marked${onlyStained ? ', stained and perhaps sound' : ''}; rot runs on behind the metal, ${rotRunsOn.oneInTenFt} ft at each end in one job of ten, at most the whole side, ${feetInches(side)}; known when the old edge is off`;
  const base = { id: `wood-${i}-${slug(finding.kind)}`, findingNumber: i + 1, source: sourceNote(rotRunsOn) };
  if (isTails) {
    const spacingIn = site.roof.deck.joists?.spacingIn ?? edgeLumber.tailSpacingIn;
    const tails = (ft: number): number => whole((ft * 12) / spacingIn) + 1;
    return [
      {
        ...base,
        what: `rafter tails, ${sideWords(site.edges, finding.side)}`,
        unit: 'pieces',
        likely: tails(marked),
        oneInTen: tails(most),
        basis: `one every ${plainNumber(spacingIn)} in: ${known}. A carpenter says how far up each one goes`,
      },
    ];
  }
  const lengths = (ft: number): number => whole(ft / edgeLumber.lengthFt);
  const stock = `in lengths of ${edgeLumber.lengthFt} ft: ${lengths(likely)} to ${lengths(most)}`;
  return [
    {
      ...base,
      what: `fascia and edge wood, ${sideWords(site.edges, finding.side)}`,
      unit: 'ft',
      likely,
      oneInTen: most,
      basis: `${known}; ${stock}`,
    },
  ];
}

function sheetRow(site: Site, opened: ReadonlySet<string>, found: readonly InspectionFinding[]): WoodRow {
  const factors = found.map(({ severity }) => severityFactors.find((row) => row.severity === severity)?.factor ?? 1);
  const factor = Math.max(...factors);
  const zones = deckZones(site, opened, factor);
  const chances = damageChances(zones, damageTogether.correlation);
  const seen = found.reduce((sum, finding) => sum + seenSheets(site, finding), 0);
  const likely = Math.max(1, seen, atChance(chances, 0.5));
  const oneInTen = Math.max(likely, atChance(chances, 0.9));
  const words = zones.map(({ sheets, chance }, i) => `${rows[i].words} ${sheets} at ${plainNumber(chance * 100)} %`);
  const panel = site.given.deckKind === 'plywood' || site.given.deckKind === 'osb';
  const scaled = factor === 1 ? '' : `, chances x ${factor} for how badly it was found`;
  return {
    id: 'deck-sheets',
    findingNumber: null,
    what: panel
      ? `deck sheets 4 x 8 ft, ${site.given.deckThicknessIn} in ${deckNames[site.given.deckKind]}`
      : `deck boards ${site.given.deckThicknessIn} in, in lots of ${sheathing.sheetSqFt} sq ft`,
    unit: panel ? 'sheets' : 'lots',
    likely,
    oneInTen,
    basis: `sheets and chance: ${words.join(', ')}${scaled}${seen === 0 ? '' : `; ${seen} already found`}`,
    source: sourceNote(rows[0]),
  };
}

/** Ids of the edges over which a layout lets water out. */
export const openedBy = (layout: Layout | null): ReadonlySet<string> =>
  new Set((layout?.outlets ?? []).filter(({ kind }) => kind === 'edge').map(({ id }) => id));

/**
 * Wood that may have to be replaced, as a range; null = no sign of rot, or no wood deck.
 * @param opened ids of edges that the chosen layout opens
 * @returns most likely number and the one that one job in ten passes; rates are a planning guess and say so
 * Source: beta-binomial by place, see deck-repair.ts. Correctness: tests/published/takeoff.test.ts, tests/unit/wood-allowance.test.ts
 */
export function woodAllowance(site: Site, opened: ReadonlySet<string>): WoodAllowance | null {
  if (!isWoodDeck(site)) return null;
  const { findings } = site.roof;
  const rotten = findings.filter(isRot);
  const edges = findings.flatMap((finding, i) =>
    isRot(finding) || finding.kind === 'stained-eave' ? edgeRow(site, finding, i) : [],
  );
  const sheets = rotten.length === 0 ? [] : [sheetRow(site, opened, rotten)];
  if (sheets.length + edges.length === 0) return null;
  return {
    rows: [...sheets, ...edges],
    assumption:
      'The rates are a planning guess by place: no published rate exists. Put your own counts in their place after each job, and count again when the first strip is off.',
    carry:
      'Price the likely amount as an allowance, with a unit price beyond it and a credit below. Stop at the upper figure, with photos and a signature.',
  };
}
