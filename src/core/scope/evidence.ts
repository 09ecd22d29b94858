import { wornShareLimit } from '../../../reference/coating-base.ts';
import type { FindingBearing } from '../../../reference/findings.ts';
import { type MembraneLife, membraneLife } from '../../../reference/membranes/life-and-cost.ts';
import { bituminousService, wetShareLimit } from '../../../reference/scope.ts';
import { bituminous } from '../membrane/options.ts';
import type { ExistingReport, Layout } from '../report/types.ts';
import type { CoveringKind, InspectionFinding, Roof } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { isWood } from '../site/wood-deck.ts';
import { anyBears, bears, deckSoft, wetFound } from './bearing.ts';
import { shareOf } from './extent.ts';
import { type RotAndLeak, rotAndLeakOf } from './rot.ts';

export interface ScopeInput {
  site: Site;
  existing: ExistingReport;
  /** Layout that the answer recommends; null = none fits. */
  chosen: Layout | null;
  ruleSet: RuleSet;
}

/** What is known of a roof where it is decided what to do with it; null = not known. */
export interface ScopeEvidence {
  /** The old roof has been taken off already. */
  off: boolean;
  findings: readonly InspectionFinding[];
  ageYears: number | null;
  layers: number | null;
  /** Years that such a covering usually lasts, as a band. */
  life: readonly [number, number] | null;
  /** Bituminous, 30 years and more, with bare reinforcement. */
  pastService: boolean;
  /** Older than the upper end of its band. */
  old: boolean;
  ponds: boolean | null;
  /** Somebody saw it dry once the hours of the rule had passed; `against` = readings or another finding say otherwise. */
  seenDry: { hours: number; against: boolean } | null;
  wet: boolean | null;
  /** Share of the area that is wet; null = wet, and nobody knows how far it reaches. */
  wetShare: number | null;
  wetOverLimit: boolean;
  /** The deck itself was found soft. */
  softDeck: boolean;
  /** The deck is of wood, so that a carpenter mends it. */
  woodDeck: boolean;
  /** Wood of the eave was found rotten. */
  edgeWood: boolean;
  rotAndLeak: RotAndLeak;
  local: readonly InspectionFinding[];
  /** Signs of wear, or of water that stood: nobody can say from above whether it is wet below. */
  surface: boolean;
  /** The surface is worn as a whole. */
  worn: boolean;
  covering: CoveringKind | null;
  inside: boolean;
}

const lifeRows: readonly MembraneLife[] = membraneLife;

/** The covering of the list of lives that an old covering is most like. */
const likeIt: Readonly<Record<CoveringKind, MembraneLife['membrane'] | null>> = {
  'sbs-granule': 'sbs-cold',
  app: 'app-torch',
  'bur-gravel': 'bur-hot',
  'bur-smooth': 'bur-hot',
  tpo: 'tpo',
  pvc: 'pvc',
  epdm: 'epdm-black',
  'roll-roofing': 'roll-roofing',
  coating: 'silicone',
  'spray-foam': null,
  metal: null,
  other: null,
};

/** Share of the section that was found wet; null where a wet place has no extent, or no scan says where it ends. */
function wetShareOf(roof: Roof): number | null {
  const wet = roof.findings.filter(({ kind }) => bears(kind) === 'wet');
  if (wet.length === 0) return wetFound(roof.findings) === false ? 0 : null;
  return wet.some(({ foundBy }) => foundBy === 'scan') ? shareOf(wet, roof) : null;
}

const wears: ReadonlySet<FindingBearing> = new Set(['surface', 'bare']);

/** Worn as a whole: more than slightly, and over more than a place. Whoever says no extent speaks of the surface. */
function wornOf(roof: Roof): boolean {
  const worn = roof.findings.filter(({ kind, severity }) => wears.has(bears(kind)) && severity !== 'slight');
  if (worn.length === 0) return false;
  const share = shareOf(worn, roof);
  return share === null || share >= wornShareLimit.share;
}

/**
 * Water that stays past the hours of the rule. What was seen then goes before what readings say, and before a finding of
 * water that nobody timed.
 */
function pondsOf(findings: readonly InspectionFinding[], { verdict, passes48h }: ExistingReport): boolean | null {
  if (passes48h !== null) return !passes48h;
  return saysPond(findings, verdict) ? true : verdict === 'undecided' ? null : false;
}

const saysPond = (findings: readonly InspectionFinding[], verdict: ExistingReport['verdict']): boolean =>
  verdict === 'ponds' || anyBears(findings, 'pond');

/** Everything of the roof file and of the judged old surface that bears on what to do with it. */
export function evidenceOf({
  site,
  existing,
  ruleSet,
}: Pick<ScopeInput, 'site' | 'existing' | 'ruleSet'>): ScopeEvidence {
  const { findings, covering } = site.roof;
  const { ageYears, layers, kind } = covering;
  const membrane = kind === null ? null : likeIt[kind];
  const life = lifeRows.find((row) => row.membrane === membrane)?.years ?? null;
  const wet = wetFound(findings);
  const wetShare = wet === null ? null : wetShareOf(site.roof);
  const inside = anyBears(findings, 'inside');
  return {
    off: anyBears(findings, 'off'),
    findings,
    ageYears,
    layers,
    life,
    pastService:
      kind !== null &&
      bituminous.has(kind) &&
      ageYears !== null &&
      ageYears >= bituminousService.pastYears &&
      anyBears(findings, 'bare'),
    old: ageYears !== null && life !== null && ageYears > life[1],
    ponds: pondsOf(findings, existing),
    seenDry:
      existing.passes48h === true
        ? { hours: ruleSet.building.drainsWithin.hours, against: saysPond(findings, existing.verdict) }
        : null,
    wet,
    wetShare,
    wetOverLimit: wetShare !== null && wetShare > wetShareLimit.share,
    softDeck: deckSoft(findings) === true,
    woodDeck: isWood(site.given.deckKind),
    edgeWood: anyBears(findings, 'edge-wood'),
    rotAndLeak: rotAndLeakOf(findings, site.roof.outline),
    local: findings.filter(({ kind: found }) => bears(found) === 'local'),
    surface: anyBears(findings, 'surface') || anyBears(findings, 'bare') || anyBears(findings, 'stain'),
    worn: wornOf(site.roof),
    covering: kind,
    inside,
  };
}
