import { unventedRule, wetAlarm } from '../../../reference/vapor.ts';
import { sourceNote } from '../finding.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import { cOfF, fOfC } from '../heat/degrees.ts';
import type { EnergyTarget } from '../layout/energy-target.ts';
import type { Assumption, Budget, Layout, MoistureReport } from '../report/types.ts';
import { plannedWork } from '../site/planned-work.ts';
import type { Site } from '../site/site.ts';
import { monthPressures, yearBalance } from './balance.ts';
import { buildUpOf, isWood, placedAs, type RoofLayer, USUAL_JOIST_IN, vaporLayers, withRetarder } from './build-up.ts';
import { rBelowFor } from './condensing-plane.ts';
import { cureOf, retarderFor } from './cure.ts';
import { cureWords } from './cure-words.ts';
import { retarderName, sheetAsked } from './deck-sheet.ts';
import { faceTemperatures, vaporProfile } from './glaser.ts';
import { constraintsOf, insulationOptions, relaxations, someCompliant } from './options.ts';
import { dewPointOf, saturationPa } from './psychrometrics.ts';
import { retarderAdvice } from './retarder.ts';
import { ROOM_F, type Room, roomAssumed, roomOf } from './room.ts';
import { deckF, leastAbove, moistureTests } from './tests.ts';
import { riseOf, ventingOf } from './venting.ts';
import { moistureVerdict } from './verdict.ts';
import { type Winter, winterFor } from './winter.ts';

export interface MoistureInput {
  site: Site;
  layout: Layout | null;
  energy: EnergyTarget;
  /** Every height that limits the build-up. */
  budgets: readonly Budget[];
}

export interface MoistureAnswer {
  report: MoistureReport;
  climateZone: string | null;
  assumed: readonly Assumption[];
}

const FILMS = { outsideFilm: 0.03, insideFilm: 0.107 } as const;
/** January by the layers: temperature and dew point at every inner face. */
function januaryProfile(layers: readonly RoofLayer[], winter: Winter, room: Room): MoistureReport['profile'] {
  const air = monthPressures(winter, 0, room.excessPa);
  const coarse = vaporLayers(layers, false);
  const state = { ...air, insideC: cOfF(ROOM_F), ...FILMS };
  const points = vaporProfile(coarse, state, saturationPa);
  return faceTemperatures(coarse, state)
    .slice(1)
    .map((airC, i) => ({
      face: layers[i].face,
      airF: fOfC(airC),
      dewPointF: fOfC(dewPointOf(Math.max(1, points[i + 1].vaporPa))),
    }));
}

function balanceOf(layers: readonly RoofLayer[], winter: Winter, excessPa: number) {
  const plain = yearBalance(vaporLayers(layers), winter, excessPa);
  const sealed = yearBalance(vaporLayers(withRetarder(layers)), winter, excessPa);
  const report: NonNullable<MoistureReport['balance']> = {
    peakGPerM2: plain.peakGPerM2,
    leftGPerM2: plain.leftGPerM2,
    alarmGPerM2: wetAlarm.gPerM2,
    months: plain.months.map(({ month, waterGPerM2 }) => ({ month, gPerM2: waterGPerM2 })),
    withRetarder: { peakGPerM2: sealed.peakGPerM2, leftGPerM2: sealed.leftGPerM2 },
  };
  return { plain, sealed, report };
}

/**
 * Whether water can gather inside the roof once the new roof is on: the share of insulation above the deck first, then a
 * balance by months. A steady profile is shown and not graded, for it fails every roof that is sealed on its cold side.
 * Correctness: tests/published/moisture-*.test.ts, tests/cases/damp.test.ts
 */
export function moistureReport({ site, layout, energy, budgets }: MoistureInput): MoistureAnswer {
  const { roof, given } = site;
  const { winter, climateZone, assumed } = winterFor(roof.place);
  const built = buildUpOf(site, layout);
  const { above, below, layers } = built;
  const heated = given.below.startsWith('living');
  const room = winter === null || !heated ? null : roomOf(winter, roof.building.winterHumidityPct);
  const known = winter !== null && room !== null && below.r !== null;
  const balance = known ? balanceOf(layers, winter, room.excessPa) : null;
  const tested = {
    built,
    winter,
    climateZone,
    room,
    balance: balance?.plain ?? null,
  };
  const tests = heated ? moistureTests(tested) : [];
  const leastFor = (belowR: number): number | null => leastAbove(winter, climateZone, belowR);
  const leastAboveR = below.kind === 'batts' && below.r !== null ? leastFor(below.r) : below.kind === 'none' ? 0 : null;
  const mostBelowR = winter === null ? null : rBelowFor(winter.coldF, above.winterR);
  const dryWith = (aboveR: number, battsR: number): { dry: boolean; words: string } => {
    if (winter === null || room === null) return { dry: true, words: '' };
    const retarder = retarderFor({ winter, climateZone }, placedAs(site, aboveR, battsR), room);
    if (retarder === null)
      return { dry: false, words: ' In rooms so damp more water gathers in it than dries in a year.' };
    return { dry: true, words: retarder === 'none' ? '' : ` It takes ${retarderName[retarder]} on the deck.` };
  };
  const constraints = constraintsOf(roof.preferences);
  const riseFt = riseOf(site);
  const foamThere = below.kind === 'closed-cell' || below.kind === 'open-cell';
  const options =
    heated && (!foamThere || constraints.length > 0)
      ? insulationOptions({
          joistIn: roof.deck.joists?.depthIn ?? USUAL_JOIST_IN,
          wood: isWood(given.deckKind),
          riseFt,
          areaSqFt: Math.abs(signedAreaSqFt(roof.outline)),
          targetR: energy.r,
          leastAboveR: leastFor,
          dryWith,
          constraints,
          exposed: given.below === 'living-exposed-deck',
        })
      : [];
  const noCompliantOption = constraints.length > 0 && options.length > 0 && !someCompliant(options);
  const failing = known && tests.some(({ state }) => state === 'fails');
  const cure = failing
    ? cureOf({ builtWith: (moreIn) => buildUpOf(site, layout, moreIn), winter, climateZone, room, layout, budgets })
    : null;
  const deck = { kind: given.deckKind, keepsOld: plannedWork(site) !== 'tear-off' };
  const retarder = retarderAdvice({
    foamBelow: below.kind === 'closed-cell',
    januaryF: winter?.januaryF ?? null,
    humidityPct: room?.humidityPct ?? 0,
    excessPa: room?.excessPa ?? 0,
    climateZone,
    balance: balance?.plain ?? null,
    sealed: balance?.sealed ?? null,
    cure,
    deck,
  });
  const asked = heated ? sheetAsked(deck, below.kind, retarder, cure) : { sheet: null, todo: [] };
  const judged = moistureVerdict({
    built,
    room: given.below,
    tests,
    balance: balance?.report ?? null,
    mostBelowR,
    climateZone,
    cure,
    cureTodo:
      cure === null || winter === null
        ? []
        : cureWords({
            cure,
            above,
            below,
            coldF: winter.coldF,
            constraints,
            meetsTable: !tests.some(({ id, state }) => id === 'table-foam' && state === 'fails'),
          }),
    sheetTodo: asked.todo,
  });
  const { vented: _, ...belowReport } = below;
  const report: MoistureReport = {
    ...judged,
    winter:
      winter === null
        ? null
        : {
            place: winter.place,
            standsIn: winter.standsIn,
            climateZone,
            januaryF: winter.januaryF,
            coldF: winter.coldF,
          },
    room:
      room === null
        ? null
        : { airF: ROOM_F, humidityPct: room.humidityPct, given: room.given, dewPointF: room.dewPointF },
    above,
    below: belowReport,
    mostBelowR,
    leastAboveR,
    deckF: heated ? deckF(tested) : null,
    tests,
    profile: known ? januaryProfile(layers, winter, room) : [],
    balance: balance?.report ?? null,
    cure,
    deckSheet: asked.sheet,
    retarder,
    venting: ventingOf(riseFt, below.kind),
    constraints,
    options,
    noCompliantOption,
    relax: noCompliantOption ? relaxations(options, energy.r) : [],
    source: sourceNote(unventedRule),
  };
  return {
    report,
    climateZone,
    assumed: heated ? [...assumed, ...built.assumed, ...roomAssumed(room, winter)] : [],
  };
}
