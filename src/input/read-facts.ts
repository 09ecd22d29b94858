import { type CriterionId, criteria } from '../../reference/membranes/criteria.ts';
import type {
  Adjoining,
  BelowInsulation,
  Deck,
  InspectionFinding,
  LocalRules,
  OwnWeights,
  Preferences,
  Prices,
  Rain,
  Roof,
} from '../core/roof.ts';
import { plainNumber } from '../units/print.ts';
import { readClimateZone } from './climate-zone.ts';
import { readFindingKind } from './finding-kind.ts';
import { type InputLog, shown, under } from './problems.ts';
import { PartReader, readAs, readPair } from './read-measures.ts';
import { readRing } from './ring.ts';
import type {
  RawAdjoining,
  RawBuilding,
  RawCovering,
  RawDeck,
  RawFinding,
  RawInsulation,
  RawLocal,
  RawPlace,
  RawPreferences,
  RawPrices,
  RawRuleSet,
  RawSlopeRule,
  RawWeights,
  RawWind,
} from './schema.ts';
import { stateLetters, townAndState } from './town-and-state.ts';

/** A rain rate says nothing without its duration and return period: a bare one is asked about. */
function readRain(raw: RawPlace['rain'], path: string, log: InputLog): Rain | null {
  if (raw === null || raw === undefined) return null;
  if (typeof raw === 'object') {
    const read = new PartReader(raw, path, log);
    const inPerHr = read.measure('inPerHr', 'rain');
    const durationMin = read.measure('durationMin', 'minutes');
    const returnYears = read.measure('returnYears', 'years');
    return inPerHr === null ? null : { inPerHr, durationMin, returnYears };
  }
  const inPerHr = readAs(raw, 'rain', path, log);
  if (inPerHr === null) return null;
  const offer = { inPerHr, durationMin: 60, returnYears: 100 };
  log.problem(path, 'ask', `${shown(raw)} is a rate without its duration and return period.`, {
    got: shown(raw),
    proposals: [
      { value: offer, unit: 'in/h', text: JSON.stringify(offer) },
      {
        value: { inPerHr },
        unit: 'in/h',
        text: `${JSON.stringify({ inPerHr })} (duration and return period not known)`,
      },
    ],
  });
  return null;
}

export function readPlace(raw: RawPlace, path: string, log: InputLog): Roof['place'] {
  // A state that is given, even as "not known", means that the city's text is the city alone.
  const apart = raw.state === undefined && raw.city ? townAndState(raw.city) : null;
  const state = apart ? apart.state : (raw.state ?? null);
  const town = {
    city: apart ? apart.city : (raw.city ?? null),
    state: state === null ? null : (stateLetters(state) ?? state),
  };
  return {
    ...town,
    rain: readRain(raw.rain, under(path, 'rain'), log),
    climateZone: readClimateZone(raw.climateZone ?? null, town, under(path, 'climateZone'), log),
    groundSnowPsf: readAs(raw.groundSnowPsf, 'load', under(path, 'groundSnowPsf'), log),
    californiaZone: raw.californiaZone ?? null,
  };
}

function readLocalRules(raw: RawLocal, path: string, log: InputLog): LocalRules {
  const read = new PartReader(raw, path, log);
  return {
    rainInPerHr: read.measure('rainInPerHr', 'rain'),
    wallShare: raw.wallShare ?? null,
    minimumFlashingIn: read.measure('minimumFlashingIn', 'thickness'),
    birdBathIn: read.measure('birdBathIn', 'thickness'),
    birdBathSqFt: read.measure('birdBathSqFt', 'area'),
    overflowRequired: raw.overflowRequired ?? null,
    taperRule: raw.taperRule ?? null,
  };
}

export function readRuleSet(raw: RawRuleSet, path: string, log: InputLog): Roof['ruleSet'] {
  return {
    building: raw.building ?? null,
    plumbing: raw.plumbing ?? null,
    local: readLocalRules(raw.local ?? {}, under(path, 'local'), log),
  };
}

export function readCovering(raw: RawCovering, path: string, log: InputLog): Roof['covering'] {
  const ageYears = readAs(raw.ageYears, 'age', under(path, 'ageYears'), log);
  return { kind: raw.kind ?? null, layers: raw.layers ?? null, ageYears };
}

function readBelowInsulation(
  raw: NonNullable<RawInsulation['below']>,
  path: string,
  log: InputLog,
): BelowInsulation | null {
  const read = new PartReader(raw, path, log);
  const below = {
    kind: raw.kind ?? null,
    thicknessIn: read.measure('thicknessIn', 'thickness'),
    r: read.measure('r', 'rValue'),
  };
  const vented = raw.vented ?? 'unknown';
  if (below.kind === 'none' && ((below.thicknessIn ?? 0) > 0 || (below.r ?? 0) > 0))
    log.problem(path, 'conflict', 'it says that there is no insulation below the deck, and gives its thickness or R.', {
      instead: '{ "kind": "batts", "thicknessIn": 5.5 } or { "kind": "none" }',
    });
  return Object.values(below).every((known) => known === null) && vented === 'unknown' ? null : { ...below, vented };
}

export function readInsulation(raw: RawInsulation, path: string, log: InputLog): Roof['insulation'] {
  return {
    targetR: readAs(raw.targetR, 'rValue', under(path, 'targetR'), log),
    keepExisting: raw.keepExisting ?? null,
    below: raw.below ? readBelowInsulation(raw.below, under(path, 'below'), log) : null,
    baseIn: readAs(raw.baseIn, 'thickness', under(path, 'baseIn'), log),
    flatIn: readAs(raw.flatIn, 'thickness', under(path, 'flatIn'), log),
    flatRPerIn: raw.flatRPerIn ?? null,
  };
}

/** The attic beside the section; null where the group says nothing. */
export function readAdjoining(raw: RawAdjoining, path: string, log: InputLog): Adjoining | null {
  const adjoining = {
    atticSqFt: readAs(raw.atticSqFt, 'area', under(path, 'atticSqFt'), log),
    ceilingRetarder: raw.ceilingRetarder ?? 'unknown',
    vents: (raw.vents ?? []).map(({ kind, count, netFreeSqIn, high }) => ({
      kind,
      count: count ?? null,
      netFreeSqIn: netFreeSqIn ?? null,
      high: high ?? null,
    })),
  };
  const silent = adjoining.atticSqFt === null && adjoining.vents.length === 0;
  return silent && adjoining.ceilingRetarder === 'unknown' ? null : adjoining;
}

/** Prices; those beside the price of a board foot cannot be weighed without it. */
export function readPrices(raw: RawPrices, path: string, log: InputLog): Prices {
  const prices: Prices = {
    boardFt: raw.boardFt ?? null,
    drain: raw.drain ?? null,
    scupper: raw.scupper ?? null,
    edgeFt: raw.edgeFt ?? null,
    parapetFt: raw.parapetFt ?? null,
  };
  const others = [prices.drain, prices.scupper, prices.edgeFt, prices.parapetFt].filter((each) => each !== null);
  if (others.length > 0 && (prices.boardFt === null || prices.boardFt === 0))
    log.problem(under(path, 'boardFt'), 'missing', 'the other prices are weighed against that of the boards.', {
      instead: 'the price of a board foot, laid: 2.4',
    });
  return prices;
}

export function readSlopeRule(raw: RawSlopeRule, path: string, log: InputLog): Roof['slopeRule'] {
  const read = new PartReader(raw, path, log);
  return {
    faceInPerFt: read.measure('faceInPerFt', 'slope'),
    valleyInPerFt: read.measure('valleyInPerFt', 'slope'),
    strict: raw.strict ?? null,
  };
}

export function readWind(raw: RawWind, path: string, log: InputLog): Roof['wind'] {
  return { mph: readAs(raw.mph, 'speed', under(path, 'mph'), log), edition: raw.edition ?? null };
}

export function readBuilding(raw: RawBuilding, path: string, log: InputLog): Roof['building'] {
  return {
    heightFt: readAs(raw.heightFt, 'length', under(path, 'heightFt'), log),
    below: raw.below ?? null,
    yearBuilt: raw.yearBuilt ?? null,
    planFt: readPair(raw.planFt, 'plan', under(path, 'planFt'), log),
    winterHumidityPct: raw.winterHumidityPct ?? null,
  };
}

function readJoists(raw: NonNullable<RawDeck['joists']>, path: string, log: InputLog): Deck['joists'] {
  const read = new PartReader(raw, path, log);
  const joists = {
    spanFt: read.measure('spanFt', 'length'),
    depthIn: read.measure('depthIn', 'thickness'),
    spacingIn: read.measure('spacingIn', 'thickness'),
    directionDeg: read.measure('directionDeg', 'bearing'),
  };
  return Object.values(joists).every((known) => known === null) ? null : joists;
}

export function readDeck(raw: RawDeck, path: string, log: InputLog): Deck {
  const read = new PartReader(raw, path, log);
  return {
    kind: raw.kind ?? null,
    thicknessIn: read.measure('thicknessIn', 'thickness'),
    liveLoadPsf: read.measure('liveLoadPsf', 'load'),
    joists: raw.joists ? readJoists(raw.joists, read.within('joists'), log) : null,
  };
}

/** A finding; null, with a problem, where nobody can tell what was found. */
export function readFinding(raw: RawFinding, path: string, log: InputLog): InspectionFinding | null {
  const read = new PartReader(raw, path, log);
  const kind = readFindingKind(raw.kind, read.within('kind'), log);
  const finding = {
    at: read.point('at'),
    outline: readRing(raw.outline, read.within('outline'), log),
    side: raw.side ?? null,
    fromFt: read.measure('fromFt', 'length'),
    toFt: read.measure('toFt', 'length'),
    areaSqFt: read.measure('areaSqFt', 'area'),
    sizeIn: read.measure('sizeIn', 'thickness'),
    foundBy: raw.foundBy ?? null,
    severity: raw.severity ?? null,
    note: raw.note ?? null,
    photos: raw.photos ?? [],
  };
  return kind === null ? null : { kind, ...finding };
}

/** Weights of the owner's own. They cannot leave nothing, and shares beside others cannot be more than the whole. */
function readWeights(raw: RawWeights, path: string, log: InputLog): OwnWeights | null {
  const given = Object.entries(raw).filter((entry): entry is [CriterionId, number] => entry[1] != null);
  if (given.length === 0) return null;
  const sum = given.reduce((total, [, share]) => total + share, 0);
  const all = given.length === criteria.length;
  if (all && sum <= 0) {
    log.problem(path, 'range', 'all weights are 0, so nothing is left to weigh by.', {
      got: '0 for every count',
      instead: 'a share above 0 for at least one',
    });
    return null;
  }
  if (!all && sum > 100 + 1e-9) {
    log.problem(
      path,
      'range',
      'the shares come to more than 100 percent, and the counts not named would get less than nothing.',
      {
        got: `${plainNumber(sum, 1)} percent in all`,
        instead: 'shares of at most 100 percent together, or a number for every one of the ten counts',
      },
    );
    return null;
  }
  return Object.fromEntries(given);
}

export function readPreferences(raw: RawPreferences, path: string, log: InputLog): Preferences {
  return {
    noFlame: raw.noFlame ?? null,
    residueRemovedOrCovered: raw.residueRemovedOrCovered ?? null,
    grease: raw.grease ?? null,
    debris: raw.debris ?? null,
    footTraffic: raw.footTraffic ?? null,
    tightBudget: raw.tightBudget ?? null,
    workTemperatureF: readAs(raw.workTemperatureF, 'temperature', under(path, 'workTemperatureF'), log),
    membrane: raw.membrane ?? null,
    weights: raw.weights ? readWeights(raw.weights, under(path, 'weights'), log) : null,
    keepCovering: raw.keepCovering ?? null,
    noSprayFoam: raw.noSprayFoam ?? null,
    noFoamAbove: raw.noFoamAbove ?? null,
  };
}
