import { type MembraneLife, membraneLife } from '../../../reference/membranes/life-and-cost.ts';
import { bituminousService, wetShareLimit } from '../../../reference/scope.ts';
import { intersect, unite } from '../geometry/boolean.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import { bituminous } from '../membrane/options.ts';
import type { ExistingReport, Layout } from '../report/types.ts';
import type { CoveringKind, InspectionFinding, Ring, Roof } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { anyBears, bears, deckSoft, wetFound } from './bearing.ts';
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
  /** Wood of the eave was found rotten. */
  edgeWood: boolean;
  rotAndLeak: RotAndLeak;
  local: readonly InspectionFinding[];
  surface: boolean;
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

const areaSqFt = (rings: readonly Ring[], section: Ring): number =>
  unite(rings)
    .flatMap(({ outer, holes }) => [
      ...intersect([outer], [section]),
      ...holes.flatMap((hole) => intersect([hole], [section])),
    ])
    .reduce((sum, { outer, holes }) => sum + [outer, ...holes].reduce((all, ring) => all + signedAreaSqFt(ring), 0), 0);

/** Share of the section that was found wet; null where a wet place has no extent, or no scan says where it ends. */
function wetShareOf({ findings, outline }: Roof): number | null {
  const wet = findings.filter(({ kind }) => bears(kind) === 'wet');
  if (wet.length === 0) return wetFound(findings) === false ? 0 : null;
  if (!wet.some(({ foundBy }) => foundBy === 'scan')) return null;
  if (wet.some(({ outline: ring, areaSqFt: stated }) => ring === null && stated === null)) return null;
  const drawn = areaSqFt(
    wet.flatMap(({ outline: ring }) => (ring === null ? [] : [ring])),
    outline,
  );
  const stated = wet.reduce((sum, { outline: ring, areaSqFt: own }) => sum + (ring === null ? (own ?? 0) : 0), 0);
  return Math.min(1, (drawn + stated) / Math.abs(signedAreaSqFt(outline)));
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
    edgeWood: anyBears(findings, 'edge-wood'),
    rotAndLeak: rotAndLeakOf(findings, site.roof.outline),
    local: findings.filter(({ kind: found }) => bears(found) === 'local'),
    surface: anyBears(findings, 'surface') || anyBears(findings, 'bare'),
    inside,
  };
}
