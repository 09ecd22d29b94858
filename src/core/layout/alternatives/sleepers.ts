import { muchFoam, sawnDepths, sleeperFigures } from '../../../../reference/alternatives.ts';
import { feetInches, inches, plainNumber, slopeInWords } from '../../../units/print.ts';
import { direction, dot } from '../../geometry/vector.ts';
import type { Alternative } from '../../report/types.ts';
import type { Point } from '../../roof.ts';
import type { SiteEdge } from '../../site/edges.ts';
import { isOpenEdge } from '../../site/offers.ts';
import type { Site } from '../../site/site.ts';
import { isWood } from '../../site/wood-deck.ts';
import { type AlternativeFacts, alternative } from './facts.ts';

/** Long wedges ripped from sawn lumber that give a deck its fall. */
export interface SleeperCut {
  lowIn: number;
  highIn: number;
  /** Depth of stock that yields two wedges from one stick with one cut; null = deeper than any. */
  pairFrom: string | null;
  /** Stock of which each wedge takes a stick of its own; null = it is built up from several. */
  singleFrom: string | null;
}

const stockFor = (depthIn: number): string | null =>
  sawnDepths.rows.find((row) => row.depthIn >= depthIn - 1e-9)?.nominal ?? null;

/**
 * Depths of a ripped sleeper and the stock it is cut from: depth = thin end + slope x run, and two wedges from one stick
 * need both their ends and the kerf.
 * @param lowIn thin end; under 3/4 in it splits
 * Source: geometry; common practice for the thin end and the kerf.
 */
export function sleeperCut(runFt: number, slopeInPerFt: number, lowIn: number = sleeperFigures.leastEndIn): SleeperCut {
  const highIn = lowIn + slopeInPerFt * runFt;
  return { lowIn, highIn, pairFrom: stockFor(lowIn + highIn + sleeperFigures.kerfIn), singleFrom: stockFor(highIn) };
}

/** The edge that sleepers would fall to: the longest open one, else the longest that may drain. */
function lowEdge(site: Site): SiteEdge | null {
  const longest = (edges: readonly SiteEdge[]): SiteEdge | null =>
    edges.reduce<SiteEdge | null>((best, edge) => (best === null || edge.lengthFt > best.lengthFt ? edge : best), null);
  return longest(site.edges.filter(isOpenEdge)) ?? longest(site.edges.filter(({ edge }) => edge.mayDrain === 'yes'));
}

/** How far the section reaches square to an edge. */
function depthFt(site: Site, { from, to }: SiteEdge): number {
  const [x, y] = direction(from, to);
  const inward: Point = [-y, x];
  return Math.max(...site.outline.map((p) => dot([p[0] - from[0], p[1] - from[1]], inward)));
}

/** Usual spacing of joists where it was not given, in. */
const SPACING_IN = 16;

const isStripped = (site: Site): boolean =>
  site.roof.findings.some(
    ({ kind, note }) => kind === 'deck-stripped' || /stripped|bare joist|to the joists/i.test(note ?? ''),
  );

/** Sleepers on the joists, where much foam or a deck that comes off anyway speaks for them. */
export function sleepersFor({ site, chosen, layouts }: AlternativeFacts): Alternative | null {
  const thick = (chosen ?? layouts[0] ?? null)?.greatestThicknessIn ?? 0;
  const stripped = isStripped(site);
  if ((thick <= muchFoam.thicknessIn && !stripped) || !isWood(site.given.deckKind)) return null;
  const why = stripped
    ? 'The deck comes off down to the joists, so the fall can be built into the new one.'
    : `The taper would come to ${inches(thick)} of foam at its thickest.`;
  const edge = lowEdge(site);
  if (edge === null)
    return alternative('ripped-sleepers', why, [
      { name: 'falls to', value: 'no edge may drain: to a new drain or scupper' },
    ]);
  const runFt = depthFt(site, edge);
  const slope = site.given.faceInPerFt;
  const cut = sleeperCut(runFt, slope);
  const spacing = site.roof.deck.joists?.spacingIn ?? null;
  const count = Math.ceil((edge.lengthFt * 12) / (spacing ?? SPACING_IN) - 1e-9) + 1;
  const stock =
    cut.pairFrom !== null
      ? `${cut.pairFrom}, two from one stick (${inches(cut.lowIn)} + ${inches(cut.highIn)} + ${inches(sleeperFigures.kerfIn)} kerf)`
      : cut.singleFrom !== null
        ? `${cut.singleFrom}, one from each stick`
        : `built up: ${inches(cut.highIn)} is deeper than a 2x12`;
  return alternative('ripped-sleepers', why, [
    { name: 'run', value: `${feetInches(runFt)} at ${slopeInWords(slope)}, to the ${edge.label.split(',')[0]}` },
    { name: 'height at the low end', value: inches(cut.lowIn) },
    { name: 'height at the high end', value: inches(cut.highIn) },
    { name: 'cut from', value: stock },
    {
      name: 'sleepers',
      value: `${plainNumber(count)} lines${spacing === null ? `, joists taken as ${SPACING_IN} in apart` : ''}`,
    },
  ]);
}
