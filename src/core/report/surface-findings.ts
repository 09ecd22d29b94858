import type { Cited } from '../../../reference/sources.ts';
import { feetInches, inches, slopeInWords } from '../../units/print.ts';
import { CRICKET_FROM_WIDTH_IN, codeCricketHeightIn, needsCricket } from '../drainage/code-cricket.ts';
import { readSag } from '../drainage/read-sag.ts';
import { coveringClassOf, slopeMinimum } from '../drainage/slope-rule.ts';
import { sourceNote } from '../finding.ts';
import { centroid, distanceFt, signedAreaSqFt } from '../geometry/vector.ts';
import { coveringNames } from '../kind-names.ts';
import { liveLoadOf } from '../outlets/live-load.ts';
import type { Curb, Point } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import { LEAST_SLOW_VALLEY_IN_PER_FT } from '../site/assumptions.ts';
import type { Site } from '../site/site.ts';
import { finding } from './part-finding.ts';
import type { ExistingReport, Finding } from './types.ts';
import { areaWords, measuredSlope, placeWords } from './words.ts';

const rounded = (slope: number): string => slopeInWords(Math.round(slope * 1000) / 1000);

/** A cricket lower than this is lost in what boards and deck are out by: common practice, no source. */
const SURE_HEIGHT_IN = 1;

/** Sag under this is the error of reading it, or a deck as it is always built. */
const LEAST_SAG_IN = 0.5;

/** A hollow smaller than this is a dent, not a sagged deck. */
const LEAST_POND_SQ_FT = 10;

/** Load judgement by an engineer is asked for from this share of the live load on: water that bends the deck it stands on. */
const SHARE_OF_LIVE_LOAD = 0.5;

const pondingBays: Cited = { source: 'asce-7-16', at: '8.4, bays that hold water, from memory', grade: 'memory' };

const sagBasis = ({ measured }: Site): string =>
  measured.sag === undefined
    ? 'readings against their own plane'
    : 'parabolas between the supports of the sag that was given';

function sagFindings(site: Site, existing: ExistingReport): Finding[] {
  const sag = site.measured.sag ?? readSag(site.measured.readings);
  const pond = existing.ponds.find(({ birdBath, areaSqFt }) => !birdBath && areaSqFt > LEAST_POND_SQ_FT);
  // What an edge alone holds back is no sag.
  if (sag === null || sag.sagIn < LEAST_SAG_IN || pond === undefined || existing.edgeFirst) return [];
  const live = liveLoadOf(site.roof.deck.liveLoadPsf);
  const where = placeWords(site.edges, sag.at);
  const heavy = pond.greatestLoadPsf > SHARE_OF_LIVE_LOAD * live.psf;
  return [
    finding({
      id: 'sagged-deck',
      level: 'fix',
      where,
      message: `The surface hangs ${inches(sag.sagIn)} below a straight line there. Boards laid on it as it is hang with it: a taper of ${rounded(site.given.faceInPerFt)} does not make a roof of ${rounded(site.given.faceInPerFt)}.`,
      value: inches(sag.sagIn),
      source: sourceNote({ source: 'arithmetic', at: sagBasis(site), grade: 'computed' }),
    }),
    ...(heavy
      ? [
          finding({
            id: 'engineer-ponding',
            level: 'stop',
            where,
            message: `Engineer first: the hollow holds ${inches(pond.greatestDepthIn)} of water, ${pond.greatestLoadPsf.toFixed(1)} psf, over ${areaWords(pond.areaSqFt)}. Water bends the deck, and a bent deck holds more water; a structural engineer looks at it before the roof is loaded with new work.`,
            value: `${pond.greatestLoadPsf.toFixed(1)} psf`,
            limit: `${(SHARE_OF_LIVE_LOAD * live.psf).toFixed(0)} psf, half of the live load`,
            source: sourceNote(pondingBays),
          }),
        ]
      : []),
  ];
}

/** The longest side of a curb against which the roof falls, and how steeply; null where it falls against none. */
function sideAgainstFall(curb: Curb, existing: ExistingReport): { widthFt: number; riseInPerFt: number } | null {
  const ring = signedAreaSqFt(curb.outline) > 0 ? curb.outline : [...curb.outline].reverse();
  const uphill = ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length];
    const length = distanceFt(a, b);
    const out: Point = [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
    const mid: Point = [(a[0] + b[0]) / 2 + out[0] * 0.05, (a[1] + b[1]) / 2 + out[1] * 0.05];
    const rise = riseAt(existing, mid, out);
    return rise > 1e-3 ? [{ widthFt: length, riseInPerFt: rise }] : [];
  });
  return uphill.toSorted((a, b) => b.widthFt - a.widthFt)[0] ?? null;
}

/** How fast the surface rises at a point in a direction, in/ft. */
function riseAt({ surface }: ExistingReport, p: Point, along: Point): number {
  for (const { a, b, c, z } of surface) {
    const whole = signedAreaSqFt([a, b, c]);
    const shares = [signedAreaSqFt([p, b, c]), signedAreaSqFt([a, p, c]), signedAreaSqFt([a, b, p])];
    if (Math.abs(whole) < 1e-9 || shares.some((share) => share / whole < -1e-9)) continue;
    const ahead: Point = [p[0] + along[0], p[1] + along[1]];
    const moved = [signedAreaSqFt([ahead, b, c]), signedAreaSqFt([a, ahead, c]), signedAreaSqFt([a, b, ahead])];
    return moved.reduce((sum, share, k) => sum + ((share - shares[k]) / whole) * z[k], 0);
  }
  return 0;
}

const cricketRule: Cited = { source: 'irc-2021', at: 'R903.2.2', grade: 'memory' };

function cricketFindings(site: Site, existing: ExistingReport): Finding[] {
  return site.roof.curbs.flatMap((curb) => {
    const against = sideAgainstFall(curb, existing);
    if (against === null || !needsCricket(against.widthFt * 12)) return [];
    const { widthFt, riseInPerFt } = against;
    // Inches per foot are the rise in 12.
    const ownIn = codeCricketHeightIn(widthFt * 12, riseInPerFt);
    const height =
      ownIn < SURE_HEIGHT_IN
        ? ` At the roof's own slope it would be ${inches(ownIn)} high, which a deck may be out by: twice that slope, ${inches(2 * ownIn)}, is sure to fall.`
        : ` At the roof's own slope it is ${inches(ownIn)} high.`;
    const listed = curb.kind === 'skylight' ? ' A unit skylight flashed as its listing says is excepted.' : '';
    return [
      finding({
        id: 'cricket-needed',
        level: 'fix',
        where: `${curb.id === curb.kind ? curb.kind : `${curb.kind} ${curb.id}`}, ${placeWords(site.edges, centroid(curb.outline))}`,
        message: `The roof falls against ${feetInches(widthFt)} of this curb: over ${CRICKET_FROM_WIDTH_IN} in wide it takes a cricket on its high side.${height}${listed}`,
        value: `${(widthFt * 12).toFixed(0)} in`,
        limit: `${CRICKET_FROM_WIDTH_IN} in`,
        source: sourceNote(cricketRule),
      }),
    ];
  });
}

function slopeFindings(site: Site, existing: ExistingReport, ruleSet: RuleSet): Finding[] {
  const face = existing.leastFaceSlopeInPerFt ?? 0;
  const valley = existing.leastValleySlopeInPerFt;
  const minimum = slopeMinimum(ruleSet, coveringClassOf(site.roof.covering.kind));
  const own = existing.ruleStandings?.filter(({ id, stage }) => id === ruleSet.building.id && stage !== 'design') ?? [];
  const short = own.some(({ passes }) => !passes) && site.roof.existing.surface.kind !== 'unknown';
  const inDoubt = minimum.finishedInPerFt - face < (existing.slopeErrorInPerFt ?? 0);
  const others = existing.ruleStandings?.filter(({ passes }) => passes) ?? [];
  const levelFt = existing.flats.reduce((sum, { lengthFt }) => sum + (lengthFt ?? 0), 0);
  const flatter =
    !existing.edgeFirst &&
    valley !== null &&
    face >= LEAST_SLOW_VALLEY_IN_PER_FT &&
    valley < Math.min(face, site.given.valleyInPerFt) - 1e-9;
  return [
    ...(short
      ? [
          finding({
            id: 'slope-below-minimum',
            level: inDoubt ? 'note' : 'fix',
            where: 'the flattest plane',
            message: `As a new roof under ${ruleSet.building.title} it would be too flat: the flattest plane falls ${measuredSlope(existing, rounded)}, and ${rounded(minimum.finishedInPerFt)} is asked for.${inDoubt ? ' The difference lies inside the error of the readings.' : ''}`,
            value: measuredSlope(existing, rounded),
            limit: rounded(minimum.finishedInPerFt),
            source: minimum.source,
          }),
        ]
      : []),
    ...(short && others.length > 0
      ? [
          finding({
            id: 'local-amendment',
            level: 'note',
            where: 'the rule set',
            message: `No one least slope holds everywhere: this roof would pass under ${[...new Set(others.map(({ title, stage }) => (stage === 'new' ? title : `${title}, ${stage}`)))].join('; ')}. Ask the building office which edition and which local amendments hold.`,
            source: minimum.source,
          }),
        ]
      : []),
    ...(flatter
      ? [
          finding({
            id: 'valley-flatter',
            level: 'fix',
            where: 'valleys and wall lines',
            message: `The planes fall ${rounded(face)}, but the flattest valley or wall line falls ${rounded(valley)}${levelFt > 0.05 ? ` (${feetInches(levelFt)} run level)` : ''}: water stays there. Crickets or more outlets give it a fall.`,
            value: rounded(valley),
            limit: rounded(site.given.valleyInPerFt),
            source: sourceNote({ source: 'practice', at: 'valleys of 1/8 in per ft', grade: 'practice' }),
          }),
        ]
      : []),
  ];
}

function coveringFindings(site: Site, existing: ExistingReport, ruleSet: RuleSet): Finding[] {
  const { kind } = site.roof.covering;
  const covering = coveringClassOf(kind);
  const face = existing.leastFaceSlopeInPerFt;
  if (kind === null || covering === null || face === null || site.roof.existing.surface.kind === 'unknown') return [];
  const { designInPerFt, printedPercent, source } = slopeMinimum(ruleSet, covering);
  const leastInPerFt = printedPercent === null ? designInPerFt : Math.min(designInPerFt, (printedPercent / 100) * 12);
  if (face >= leastInPerFt - 1e-9) return [];
  return [
    finding({
      id: 'covering-slope-limit',
      level: 'note',
      where: 'the old covering',
      message: `The covering that lies there (${coveringNames[kind]}) is made for ${rounded(designInPerFt)} and more; here it lies at ${measuredSlope(existing, rounded)}.`,
      value: measuredSlope(existing, rounded),
      limit: rounded(designInPerFt),
      source,
    }),
  ];
}

/** What the measured surface itself says: sag, curbs that dam it, slopes and valleys that are too flat. */
export function surfaceFindings(site: Site, existing: ExistingReport, ruleSet: RuleSet): Finding[] {
  return [
    ...sagFindings(site, existing),
    ...cricketFindings(site, existing),
    ...slopeFindings(site, existing, ruleSet),
    ...coveringFindings(site, existing, ruleSet),
  ];
}
