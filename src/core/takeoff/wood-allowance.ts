import {
  type DamageZone,
  damageTogether,
  damageZones,
  severityFactors,
} from '../../../reference/takeoff/deck-repair.ts';
import { sheathing } from '../../../reference/takeoff/tear-off.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import { deckNames } from '../kind-names.ts';
import type { Layout, WoodAllowance, WoodRow } from '../report/types.ts';
import type { InspectionFinding } from '../roof.ts';
import { isRot, softDeckOf } from '../scope/bearing.ts';
import { isOpenEdge } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import { isWood } from '../site/wood-deck.ts';
import { atChance, damageChances, type ZoneSheets } from './deck-repair.ts';
import { edgeWoodRows, lengthFt, stretchesOf } from './edge-wood.ts';
import { whole } from './line.ts';

const rows: readonly DamageZone[] = damageZones;
const SHEET_FT = 8;
const MOST_CHANCE = 0.95;

const chanceOf = (zone: DamageZone['zone'], factor: number): number =>
  Math.min(MOST_CHANCE, (rows.find((row) => row.zone === zone)?.chance ?? 0) * factor);

/**
 * Sheets of the deck by place: row along open edges, row along the tie-in, one at every pipe and curb, the rest.
 * @param opened ids of edges that the layout opens
 * @param factor on the chances of the row along the edge and of the rest, from how badly the rot was found
 */
export function deckZones(
  site: Site,
  opened: ReadonlySet<string>,
  factor: { edge: number; deck: number } = { edge: 1, deck: 1 },
): ZoneSheets[] {
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
    { sheets: open, chance: chanceOf('open-edge', factor.edge) },
    { sheets: tie, chance: chanceOf('tie-in', factor.deck) },
    { sheets: holes, chance: chanceOf('penetrations', factor.deck) },
    { sheets: all - open - tie - holes, chance: chanceOf('rest', factor.deck) },
  ];
}

const eaves: ReadonlySet<string> = new Set(['gutter', 'drip', 'roof-below', 'box-gutter']);
const drips = ({ edge }: Site['edges'][number]): boolean => eaves.has(edge.kind);

/** Sheets that somebody has already found bad: never fewer than these, and one along an edge once, however often it was noted. */
function seenSheets(site: Site, rotten: readonly InspectionFinding[]): number {
  const sheets = rotten.filter(({ kind }) => kind === 'soft-deck' || kind === 'rotten-eave');
  const sqFt = ({ outline, areaSqFt }: InspectionFinding): number | null =>
    outline === null ? areaSqFt : Math.abs(signedAreaSqFt(outline));
  const without = sheets.filter((finding) => sqFt(finding) === null);
  const areas = sheets.reduce((sum, finding) => sum + whole((sqFt(finding) ?? 0) / sheathing.sheetSqFt), 0);
  const along = site.edges.reduce(
    (sum, { edge }) => sum + whole(lengthFt(stretchesOf(site, without, edge.side)) / SHEET_FT),
    0,
  );
  return areas + along + without.filter(({ side }) => side === null).length;
}

const factorOf = (found: readonly InspectionFinding[]): number =>
  found.length === 0
    ? 1
    : Math.max(...found.map(({ severity }) => severityFactors.find((row) => row.severity === severity)?.factor ?? 1));

function sheetRow(site: Site, opened: ReadonlySet<string>, found: readonly InspectionFinding[]): WoodRow {
  // Rot of an eave says nothing of the deck behind it: it acts on the row along the edge alone.
  const [edge, deck] = [factorOf(found), factorOf(softDeckOf(found))];
  const zones = deckZones(site, opened, { edge, deck });
  const chances = damageChances(zones, damageTogether.correlation);
  const seen = seenSheets(site, found);
  const likely = Math.max(1, seen, atChance(chances, 0.5));
  const oneInTen = Math.max(likely, atChance(chances, 0.9));
  const words = zones.map(({ sheets, chance }, i) => `${rows[i].words} ${sheets} at ${plainNumber(chance * 100)} %`);
  const panel = site.given.deckKind === 'plywood' || site.given.deckKind === 'osb';
  const scaled = [
    ...(edge === 1 ? [] : [`, along the edge x ${edge} for how badly it was found`]),
    ...(deck === 1 ? [] : [`, elsewhere x ${deck}`]),
  ].join('');
  return {
    id: 'deck-sheets',
    findingNumbers: [],
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
 * Source: beta-binomial by place, see deck-repair.ts. Correctness: tests/published/takeoff.test.ts, tests/unit/scope.test.ts
 */
export function woodAllowance(site: Site, opened: ReadonlySet<string>): WoodAllowance | null {
  if (!isWood(site.given.deckKind)) return null;
  const { findings } = site.roof;
  const rotten = findings.filter(isRot);
  const edges = edgeWoodRows(site);
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
