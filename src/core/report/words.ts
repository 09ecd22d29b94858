import { compassPoint, feetInches, inches, plainNumber, withError } from '../../units/print.ts';
import { distanceFt, toSegment } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import type { ExistingReport } from './types.ts';

/** What stands along a side, without its length: "gutter side". */
export function sideWords(edges: readonly SiteEdge[], side: number): string {
  const edge = edges.find((each) => each.edge.side === side);
  return edge === undefined ? 'edge' : edge.label.split(',')[0];
}

/** The end where a side begins, by the compass: "its W end". */
export function startWords(outline: Ring, side: number): string {
  const [a, b] = [outline[side], outline[(side + 1) % outline.length]];
  return `its ${compassPoint((Math.atan2(a[0] - b[0], a[1] - b[1]) * 180) / Math.PI)} end`;
}

/** Where a spot is, as one would say it on the roof: by the nearest edge and its distance. */
export function placeWords(edges: readonly SiteEdge[], p: Point): string {
  const near = edges
    .map((edge) => ({ edge, ft: toSegment(p, edge.from, edge.to).distanceFt }))
    .sort((a, b) => a.ft - b.ft)[0];
  if (near === undefined) return 'on the section';
  const name = near.edge.label.split(',')[0];
  const along = distanceFt(near.edge.from, p);
  if (near.ft < 0.05) return `on the ${name}, ${feetInches(along)} along`;
  return `${feetInches(near.ft)} in from the ${name}`;
}

/** The least slope of the roof as it is, with its error where it comes from readings: "0.19 ± 0.04 in/ft". */
export function measuredSlope(
  existing: Pick<ExistingReport, 'leastFaceSlopeInPerFt' | 'slopeErrorInPerFt'>,
  print: (slopeInPerFt: number) => string,
): string {
  const { leastFaceSlopeInPerFt: least, slopeErrorInPerFt: error } = existing;
  if (least === null) return 'not known';
  return error == null || error === 0 ? print(least) : withError(least, error, 'in/ft');
}

export const depthWords = (depthIn: number): string => (depthIn < 1 / 16 ? 'under 1/16″' : inches(depthIn));

export const areaWords = (areaSqFt: number): string => `${plainNumber(areaSqFt, areaSqFt < 10 ? 1 : 0)} sq ft`;

/** "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

/** With its full stop, and only one. */
export const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
