import type { Site } from '../site/site.ts';
import { type Catalogue, catalogueOf } from './catalogue.ts';

/** Two percent, which the rules print beside 1/4 in per ft. */
const PRINTED_IN_PER_FT = 0.24;
const SAME_SLOPE = 1e-9;

/** Least face slope that passes: the rule, or the two percent printed beside 1/4 unless the job is strict. */
export function faceRule({ given: { faceInPerFt, strict } }: Pick<Site, 'given'>): number {
  return !strict && Math.abs(faceInPerFt - 0.25) < SAME_SLOPE ? PRINTED_IN_PER_FT : faceInPerFt;
}

/** The gentlest slope of the supplier's boards that keeps the rule; the rule itself where there are none. */
export function fieldSlope(site: Pick<Site, 'given' | 'roof'>): number {
  const { slopesInPerFt }: Catalogue = catalogueOf(site.roof);
  return slopesInPerFt.find((slope) => slope >= faceRule(site) - SAME_SLOPE) ?? site.given.faceInPerFt;
}
