import { edgeLumber, rotRunsOn } from '../../../reference/takeoff/deck-repair.ts';
import { feetInches, plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { WoodRow } from '../report/types.ts';
import { listed, sideWords } from '../report/words.ts';
import type { InspectionFinding } from '../roof.ts';
import { bears } from '../scope/bearing.ts';
import { sideLengthFt } from '../site/edges.ts';
import type { Site } from '../site/site.ts';
import { slug, whole } from './line.ts';

/** Findings of one kind of wood along one side, with their numbers from 1. */
interface AlongSide {
  side: number;
  tails: boolean;
  found: readonly { finding: InspectionFinding; number: number }[];
}

/** Stretches of a side that findings mark, each foot once: from and to in ft, in order. */
export function stretchesOf(site: Site, found: readonly InspectionFinding[], side: number): [number, number][] {
  const length = sideLengthFt(site.roof.outline, side);
  const marked = found
    .filter((finding) => finding.side === side)
    .map(({ fromFt, toFt }): [number, number] => [fromFt ?? 0, Math.min(length, toFt ?? length)])
    .sort(([a], [b]) => a - b);
  const out: [number, number][] = [];
  for (const [from, to] of marked) {
    const last = out.at(-1);
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to);
    else out.push([from, to]);
  }
  return out;
}

export const lengthFt = (stretches: readonly (readonly [number, number])[]): number =>
  stretches.reduce((sum, [from, to]) => sum + to - from, 0);

function alongSides({ roof }: Site): AlongSide[] {
  const groups = new Map<string, AlongSide>();
  for (const [i, finding] of roof.findings.entries()) {
    const { side, kind } = finding;
    if (side === null || (bears(kind) !== 'edge-wood' && kind !== 'stained-eave')) continue;
    const tails = kind === 'rotten-rafter-tails';
    const key = `${side} ${tails}`;
    const found = [...(groups.get(key)?.found ?? []), { finding, number: i + 1 }];
    groups.set(key, { side, tails, found });
  }
  return [...groups.values()];
}

function rowOf(site: Site, { side, tails, found }: AlongSide): WoodRow {
  const all = found.map(({ finding }) => finding);
  const sideFt = sideLengthFt(site.roof.outline, side);
  const marked = stretchesOf(site, all, side);
  const rotten = stretchesOf(
    site,
    all.filter(({ kind }) => kind !== 'stained-eave'),
    side,
  );
  const likely = lengthFt(rotten);
  const most = Math.min(sideFt, lengthFt(marked) + 2 * marked.length * rotRunsOn.oneInTenFt);
  const stainedFt = lengthFt(marked) - likely;
  const stained = stainedFt > 0 ? `, ${feetInches(stainedFt)} of them stained and perhaps sound` : '';
  const numbers = found.map(({ number }) => number);
  const from = numbers.length > 1 ? ` by findings ${listed(numbers.map(String))}, each foot once` : '';
  const known = `${feetInches(lengthFt(marked))} were marked${from}${stained}; rot runs on behind the metal, ${rotRunsOn.oneInTenFt} ft at each end in one job of ten, at most the whole side, ${feetInches(sideFt)}; known when the old edge is off`;
  const base = {
    id: `wood-${numbers[0] - 1}-${slug(found[0].finding.kind)}`,
    findingNumbers: numbers,
    source: sourceNote(rotRunsOn),
  };
  if (tails) {
    const spacingIn = site.roof.deck.joists?.spacingIn ?? edgeLumber.tailSpacingIn;
    // One at each end of every stretch.
    const count = (ft: number, stretches: number): number => whole((ft * 12) / spacingIn) + stretches;
    return {
      ...base,
      what: `rafter tails, ${sideWords(site.edges, side)}`,
      unit: 'pieces',
      likely: count(likely, rotten.length),
      oneInTen: count(most, 1),
      basis: `one every ${plainNumber(spacingIn)} in: ${known}. A carpenter says how far up each one goes`,
    };
  }
  const lengths = (ft: number): number => whole(ft / edgeLumber.lengthFt);
  return {
    ...base,
    what: `fascia and edge wood, ${sideWords(site.edges, side)}`,
    unit: 'ft',
    likely,
    oneInTen: most,
    basis: `${known}; in lengths of ${edgeLumber.lengthFt} ft: ${lengths(likely)} to ${lengths(most)}`,
  };
}

/** Boards and tails along marked edges, a row for each side: what is marked, and how far it may run on. */
export const edgeWoodRows = (site: Site): WoodRow[] => alongSides(site).map((along) => rowOf(site, along));
