import { rainFlowFactor } from '../../../reference/rain-flow.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, Finding, SourceNote, Working } from '../report/types.ts';
import type { OutletRole } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import { flowGpm, PRINTED_GPM_PER_SQ_FT, SAME_FLOW_GPM } from './flow.ts';
import type { DesignRain } from './rain.ts';

/** What every outlet is asked to do. */
export interface OutletDuty {
  id: string;
  /** As the pages call it: "drain D1", "gutter side, 30 ft". */
  label: string;
  role: OutletRole;
  /** False when it is known to be covered or blocked: it then carries nothing. */
  working: boolean;
  /** Area of the section that drains to it [sq ft]. */
  drainsSqFt: number;
  /** Share of walls, steep roofs and downspouts that add to it [sq ft]. */
  addedSqFt: number;
  rain: DesignRain;
  ruleSet: RuleSet;
}

/** What it takes, for the material list and the drawing. */
export type NeededOutlet =
  | { kind: 'drain'; count: number; sizeIn: number; horizontalIn: number | null }
  | { kind: 'scupper'; count: number; widthIn: number; heightIn: number }
  | { kind: 'gutter'; profile: 'k' | 'half-round'; sizeIn: number; downspouts: number; downspout: string }
  | { kind: 'free-edge' };

export interface OutletRating {
  flowGpm: number;
  /** null = the size is not known. */
  capacityGpm: number | null;
  adequate: boolean | null;
  /** In words: "3-in drain". */
  needs: string;
  /** null = it takes more than a table can say; `needs` then says what to do. */
  needed: NeededOutlet | null;
  /** Head of water over the inlet at the design flow; null = not known. */
  headIn: number | null;
  basis: string;
  source: SourceNote;
  workings: readonly Working[];
  findings: readonly Finding[];
  assumed: readonly Assumption[];
}

/** The rain that an outlet of this role is sized by. */
export const designRateInPerHr = (duty: OutletDuty): number =>
  duty.role === 'primary' ? duty.rain.primaryInPerHr : duty.rain.overflowInPerHr;

/** Flow of an outlet with everything that made it. */
export function dutyFlow(duty: OutletDuty): Working {
  const inPerHr = designRateInPerHr(duty);
  const areaSqFt = duty.drainsSqFt + duty.addedSqFt;
  return {
    id: `outlet.${duty.id}.flow`,
    what: `Flow to ${duty.label}`,
    formula: `Q = ${PRINTED_GPM_PER_SQ_FT} x (area + added area) x rain`,
    inputs: { areaSqFt: duty.drainsSqFt, addedSqFt: duty.addedSqFt, inPerHr },
    value: flowGpm(areaSqFt, inPerHr),
    unit: 'gpm',
    source: sourceNote(rainFlowFactor),
  };
}

export const gpm = (value: number): string => `${plainNumber(value, value < 10 ? 1 : 0)} gpm`;

export const inch = (value: number): string => `${plainNumber(value, 2)} in`;

/** null where the capacity is not known. */
export const carries = (capacityGpm: number | null, flow: number): boolean | null =>
  capacityGpm === null ? null : capacityGpm >= flow - SAME_FLOW_GPM;

/** What an outlet that is known to be too small, or shut, is told. */
export function capacityFindings(duty: OutletDuty, rating: Omit<OutletRating, 'findings'>): Finding[] {
  if (rating.adequate !== false || rating.capacityGpm === null) return [];
  const gets = `It gets ${gpm(rating.flowGpm)} in the design rain and needs: ${rating.needs}.`;
  return [
    {
      id: duty.working ? 'outlet-undersized' : 'outlet-not-working',
      level: 'fix',
      where: duty.label,
      message: duty.working
        ? `${duty.label} carries ${gpm(rating.capacityGpm)}. ${gets}`
        : `${duty.label} is covered or blocked and carries nothing. ${gets}`,
      value: gpm(rating.capacityGpm),
      limit: gpm(rating.flowGpm),
      source: rating.source,
    },
  ];
}
