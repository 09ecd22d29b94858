import { area, feetInches } from '../../units/print.ts';
import { depthFigure, gallons, gpm, orNotKnown, pounds, psf } from './page-figures.ts';
import type { FlatReport, LoadStep, OutletReport, PondReport, SourceNote } from './types.ts';

export interface PondRow {
  place: string;
  name: string;
  where: string;
  depth: string;
  area: string;
  volume: string;
  weight: string;
  load: string;
  /** Shallow enough to be listed only. */
  birdBath: boolean;
}

export const pondRows = (ponds: readonly PondReport[]): PondRow[] =>
  ponds.map((pond, i) => ({
    place: `pond-${i + 1}`,
    name: `Pond ${i + 1}`,
    where: pond.where,
    depth: depthFigure(pond.greatestDepthIn),
    area: area(pond.areaSqFt),
    volume: gallons(pond.volumeGal),
    weight: pounds(pond.weightLb),
    load: psf(pond.greatestLoadPsf),
    birdBath: pond.birdBath,
  }));

/** Level ground in words, the largest first; small ends are summed up. */
export function flatWords(flats: readonly FlatReport[]): string[] {
  const areas = flats.flatMap(({ areaSqFt }) => (areaSqFt === null ? [] : [areaSqFt])).sort((a, b) => b - a);
  const lengthFt = flats.reduce((sum, flat) => sum + (flat.lengthFt ?? 0), 0);
  const shown = areas.slice(0, 4).map((areaSqFt) => `${area(areaSqFt)} lie level`);
  const rest = areas.slice(4).reduce((sum, areaSqFt) => sum + areaSqFt, 0);
  return [
    ...shown,
    ...(rest > 0 ? [`${area(rest)} more in ${areas.length - 4} places lie level`] : []),
    ...(lengthFt > 0.05 ? [`${feetInches(lengthFt)} of valley or wall line runs level`] : []),
  ];
}

export interface OutletRow {
  id: string;
  place: string;
  label: string;
  role: string;
  drains: string;
  added: string;
  flow: string;
  capacity: string;
  verdict: string;
  adequate: boolean | null;
  needs: string;
  basis: string;
  source: SourceNote | null;
}

export const outletRows = (outlets: readonly OutletReport[]): OutletRow[] =>
  outlets.map((outlet) => ({
    id: outlet.id,
    place: `outlet-${outlet.id}`,
    label: outlet.label,
    role: `${outlet.role === 'primary' ? 'main' : 'overflow'}, ${outlet.status === 'proposed' ? 'new' : 'there now'}`,
    drains: area(outlet.drainsSqFt),
    added: outlet.addedSqFt === 0 ? 'none' : area(outlet.addedSqFt),
    flow: orNotKnown(outlet.flowGpm, gpm),
    capacity: orNotKnown(outlet.capacityGpm, gpm),
    verdict: outlet.adequate === null ? 'not known' : outlet.adequate ? 'carries it' : 'too small',
    adequate: outlet.adequate,
    needs: outlet.needs,
    basis: outlet.basis,
    source: outlet.source,
  }));

export interface LoadRow {
  label: string;
  depth: string;
  load: string;
  exceeds: boolean | null;
  verdict: string;
}

/** Steps of the same depth are one row: twenty drains at one level say one thing. */
export function loadRows(steps: readonly LoadStep[]): LoadRow[] {
  const groups = new Map<string, LoadStep[]>();
  for (const step of steps) {
    const key = `${step.label.split(':')[0].slice(0, 9)}|${step.depthIn.toFixed(3)}|${step.exceedsLiveLoad}`;
    groups.set(key, [...(groups.get(key) ?? []), step]);
  }
  return [...groups.values()].map(([first, ...rest]) => ({
    label: rest.length === 0 ? first.label : `${first.label} (and ${rest.length} more at this height)`,
    depth: depthFigure(first.depthIn),
    load: psf(first.loadPsf),
    exceeds: first.exceedsLiveLoad,
    verdict:
      first.exceedsLiveLoad === null
        ? 'live load not known'
        : first.exceedsLiveLoad
          ? 'over the live load'
          : 'within the live load',
  }));
}
