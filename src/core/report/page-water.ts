import { area, feetInches, inches, plainNumber } from '../../units/print.ts';
import { depthForLoadIn } from '../drainage/rain-load.ts';
import { counted, depthFigure, gallons, gpm, NOT_KNOWN, orNotKnown, pounds, psf } from './page-figures.ts';
import type {
  Assessment,
  ExistingReport,
  FlatReport,
  LoadStep,
  OutletReport,
  PondReport,
  RuleSetReport,
  SourceNote,
} from './types.ts';
import { listed } from './words.ts';

export interface PondRow {
  place: string;
  name: string;
  where: string;
  depth: string;
  area: string;
  volume: string;
  weight: string;
  load: string;
  /** Depth that is left 48 h after rain, from the season that dries most to the one that dries least. */
  left: string;
  /** Listed only, or why it is flagged. */
  standing: string;
  flagged: boolean;
}

type PondLimits = NonNullable<RuleSetReport['ponds']>;

/** Water that dries within the 48 h leaves nothing to be seen. */
const DRY_IN = 1 / 64;

function leftWords(left: PondReport['leftAfter48hIn']): string {
  if (left === undefined) return NOT_KNOWN;
  const [warm, cool] = left.map((depthIn) => (depthIn < DRY_IN ? 'dry' : depthFigure(depthIn)));
  return warm === cool ? warm : `${warm} (warm season) to ${cool} (cool season)`;
}

function standingOf({ birdBath, flagged }: PondReport, limits: PondLimits | undefined): string {
  const why = { depth: 'deep', area: 'wide' } as const;
  const over = {
    depth: limits === undefined ? '' : `over ${inches(limits.flaggedOverIn)} `,
    area: limits === undefined ? '' : `over ${area(limits.flaggedOverSqFt)} `,
  } as const;
  const reasons = (flagged ?? (birdBath ? [] : (['depth'] as const))).map((each) => `${over[each]}${why[each]}`);
  return reasons.length === 0 ? 'a bird bath: listed, not failed' : `flagged: ${listed(reasons)}`;
}

/** From when water is listed and flagged, and what is too thin for the list. */
export function pondNote(ponds: readonly PondReport[], limits: PondLimits | undefined): string | null {
  if (limits === undefined) return null;
  const thin = ponds.length - ponds.filter(isListed(limits)).length;
  const left =
    thin === 0
      ? ''
      : ` ${counted(thin, 'film')} of water under ${inches(limits.listedFromIn)} ${thin === 1 ? 'is' : 'are'} not listed.`;
  return `Listed from ${inches(limits.listedFromIn)} deep, flagged when deeper than ${inches(limits.flaggedOverIn)} or wider than ${area(limits.flaggedOverSqFt)}: two settings, not code values.${left}`;
}

const isListed =
  (limits: PondLimits | undefined) =>
  ({ greatestDepthIn }: PondReport): boolean =>
    limits === undefined || greatestDepthIn >= limits.listedFromIn;

/** Every pond that is deep enough to be listed, by the number that the drawings give it. */
export function pondRows(ponds: readonly PondReport[], limits?: PondLimits): PondRow[] {
  const isIn = isListed(limits);
  return ponds.flatMap((pond, i): PondRow[] => {
    if (!isIn(pond)) return [];
    const standing = standingOf(pond, limits);
    return [
      {
        place: `pond-${i + 1}`,
        name: `Pond ${i + 1}`,
        where: pond.where,
        depth: depthFigure(pond.greatestDepthIn),
        area: area(pond.areaSqFt),
        volume: gallons(pond.volumeGal),
        weight: pounds(pond.weightLb),
        load: psf(pond.greatestLoadPsf),
        left: leftWords(pond.leftAfter48hIn),
        standing,
        flagged: standing.startsWith('flagged'),
      },
    ];
  });
}

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
  /** Share of its capacity that is left over, or that is missing to its flow. */
  spare: string;
  /** Depth over the roof there while it carries its flow, and what that weighs. */
  load: string;
  verdict: string;
  adequate: boolean | null;
  needs: string;
  basis: string;
  source: SourceNote | null;
}

/** Share [%] of what it carries that its flow leaves over; negative = so much of its flow it cannot carry; null = not known. */
export function sparePercent({ flowGpm, capacityGpm }: Pick<OutletReport, 'flowGpm' | 'capacityGpm'>): number | null {
  if (flowGpm === null || capacityGpm === null) return null;
  if (capacityGpm >= flowGpm) return capacityGpm === 0 ? 0 : 100 * (1 - flowGpm / capacityGpm);
  return -100 * (1 - capacityGpm / flowGpm);
}

function spareWords(outlet: OutletReport): string {
  const percent = sparePercent(outlet);
  if (percent === null) return NOT_KNOWN;
  if (outlet.capacityGpm === 0)
    return outlet.flowGpm === 0 ? 'none: it carries nothing' : 'none: carries nothing of it';
  return percent >= 0 ? `${plainNumber(percent)} %` : `short by ${plainNumber(-percent)} % of its flow`;
}

/** Water at an outlet in its design rain: "1″ over the inlet, 5.2 psf". */
function outletLoad({ headIn, loadPsf }: OutletReport): string {
  if (headIn == null) return NOT_KNOWN;
  const head = headIn < DRY_IN ? 'none' : `${depthFigure(headIn)} over the inlet`;
  return loadPsf == null ? `${head}, load ${NOT_KNOWN}` : `${head}, ${psf(loadPsf)}`;
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
    spare: spareWords(outlet),
    load: outletLoad(outlet),
    verdict: outlet.adequate === null ? 'not known' : outlet.adequate ? 'carries it' : 'too small',
    adequate: outlet.adequate,
    needs: outlet.needs,
    basis: outlet.basis,
    source: outlet.source,
  }));

/** A level that water can reach, for the drawing of the levels and for its table. */
export interface LoadRung {
  label: string;
  depthIn: number;
  loadPsf: number;
  exceeds: boolean | null;
  /** Stands there now, not only when ways out are shut. */
  today: boolean;
}

export interface LoadRow {
  label: string;
  depth: string;
  load: string;
  exceeds: boolean | null;
  verdict: string;
}

/** The deepest water of today and every level that comes after it; steps of the same depth are one: twenty drains say one thing. */
export function loadRungs({ loads, ponds, liveLoad }: ExistingReport): LoadRung[] {
  const deepest = ponds.reduce<PondReport | null>(
    (most, pond) => (most === null || pond.greatestDepthIn > most.greatestDepthIn ? pond : most),
    null,
  );
  const groups = new Map<string, LoadStep[]>();
  for (const step of loads) {
    const key = `${step.label.split(':')[0].slice(0, 9)}|${step.depthIn.toFixed(3)}|${step.exceedsLiveLoad}`;
    groups.set(key, [...(groups.get(key) ?? []), step]);
  }
  return [
    ...(deepest === null
      ? []
      : [
          {
            label: 'the deepest water of today',
            depthIn: deepest.greatestDepthIn,
            loadPsf: deepest.greatestLoadPsf,
            exceeds: liveLoad === undefined ? null : deepest.greatestLoadPsf > liveLoad.psf,
            today: true,
          },
        ]),
    ...[...groups.values()].map(([{ label, depthIn, loadPsf, exceedsLiveLoad }, ...rest]) => ({
      label: rest.length === 0 ? label : `${label} (and ${rest.length} more at this height)`,
      depthIn,
      loadPsf,
      exceeds: exceedsLiveLoad,
      today: false,
    })),
  ];
}

export const loadRows = (existing: ExistingReport): LoadRow[] =>
  loadRungs(existing).map(({ label, depthIn, loadPsf, exceeds }) => ({
    label,
    depth: depthIn === 0 ? 'none' : depthFigure(depthIn),
    load: psf(loadPsf),
    exceeds,
    verdict: exceeds === null ? 'live load not known' : exceeds ? 'over the live load' : 'within the live load',
  }));

/** "20 psf, the roof live load, is 3 7/8″ of water": the line that the levels are held against. */
export function liveLoadWords({ liveLoad }: ExistingReport): string | null {
  if (liveLoad === undefined) return null;
  const taken = liveLoad.assumed ? ' (taken for an ordinary flat roof, not given)' : '';
  return `The roof live load of ${psf(liveLoad.psf)}${taken} is ${inches(depthForLoadIn(liveLoad.psf))} of water.`;
}

/** What flows and sizes stand on where the rain of the place is not known; null where it is. */
export function rainAssumedSentence({ assumed }: Pick<Assessment, 'assumed'>): string | null {
  const taken = assumed.find(({ path }) => path === 'place.rain');
  if (taken === undefined) return null;
  return `Flows, spare and sizes of outlets and gutters stand on assumed rain, ${taken.value}: ${taken.because} ${taken.findOut ?? ''}`.trim();
}
