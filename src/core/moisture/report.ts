import { unventedRule, wetAlarm } from '../../../reference/vapor.ts';
import { sourceNote } from '../finding.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import type { EnergyTarget } from '../layout/energy-target.ts';
import type { Assumption, Budget, Layout, Lining, MoistureCure, MoistureReport } from '../report/types.ts';
import type { Site } from '../site/site.ts';
import { isWood } from '../site/wood-deck.ts';
import type { YearBalance } from './balance.ts';
import { type BuildUp, buildUpOf, linedWith, USUAL_JOIST_IN } from './build-up.ts';
import { cureOf, mostBatts } from './cure.ts';
import { cureWords } from './cure-words.ts';
import { groundOf, sheetAsked } from './deck-sheet.ts';
import { codeAlone } from './judged.ts';
import { isFoam, rPerInOf } from './layers.ts';
import { balanceOf, linings, liningWords, type Place } from './lining.ts';
import { constraintsOf, insulationOptions, relaxations, someCompliant } from './options.ts';
import { dryness, leastAboveDry } from './placing.ts';
import { januaryProfile } from './profile.ts';
import { retarderAdvice } from './retarder.ts';
import { ROOM_F, roomAssumed, roomOf } from './room.ts';
import { deckF, leastAbove, moistureTests } from './tests.ts';
import { riseOf, ventingOf } from './venting.ts';
import { moistureVerdict } from './verdict.ts';
import { winterFor } from './winter.ts';

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

/** What a roof can be lined with that cures it, else the plainest lining that does anything. */
function liningShown(built: BuildUp, cure: MoistureCure | null): Lining {
  const lining = cure?.slows ?? cure;
  if (lining != null && liningWords(lining) !== null) return lining;
  return linings(built).find((one) => one.retarder !== 'none' || one.coat)!;
}

function balanceReport(
  place: Place,
  built: BuildUp,
  plain: YearBalance,
  cure: MoistureCure | null,
): NonNullable<MoistureReport['balance']> {
  const lining = liningShown(built, cure);
  const sealed = balanceOf(place, linedWith(built, lining));
  return {
    peakGPerM2: plain.peakGPerM2,
    leftGPerM2: plain.leftGPerM2,
    alarmGPerM2: wetAlarm.gPerM2,
    months: plain.months.map(({ month, waterGPerM2 }) => ({ month, gPerM2: waterGPerM2 })),
    withLining: {
      what: liningWords(lining, groundOf(built.kept)) ?? '',
      peakGPerM2: sealed.peakGPerM2,
      leftGPerM2: sealed.leftGPerM2,
    },
  };
}

const joistIn = ({ roof }: Site): number => roof.deck.joists?.depthIn ?? USUAL_JOIST_IN;

/** The ways to place the insulation; none where foam is there already and nothing must stay. */
function optionsOf({ site, energy }: MoistureInput, place: Place | null, leastR: (battsR: number) => number | null) {
  const { roof, given } = site;
  const constraints = constraintsOf(roof.preferences);
  if (!given.below.startsWith('living')) return [];
  if (isFoam(roof.insulation.below?.kind ?? null) && constraints.length === 0) return [];
  return insulationOptions({
    joistIn: joistIn(site),
    wood: isWood(given.deckKind),
    riseFt: riseOf(site),
    areaSqFt: Math.abs(signedAreaSqFt(roof.outline)),
    targetR: energy.r,
    leastAboveR: leastR,
    dryWith: (aboveR, kind, belowR) => dryness(place, site, aboveR, kind, belowR),
    constraints,
    exposed: given.below === 'living-exposed-deck',
  });
}

/**
 * Whether water can gather inside the roof once the new roof is on: the share of insulation above the deck first, then a
 * balance by months. A steady profile is shown and not graded, for it fails every roof that is sealed on its cold side.
 * Correctness: tests/published/moisture-*.test.ts, tests/cases/damp.test.ts
 */
export function moistureReport(input: MoistureInput): MoistureAnswer {
  const { site, layout, energy, budgets } = input;
  const { roof, given } = site;
  const { winter, climateZone, assumed } = winterFor(roof.place);
  const built = buildUpOf(site, layout);
  const { above, below, layers, kept } = built;
  const heated = given.below.startsWith('living');
  const room = winter === null || !heated ? null : roomOf(winter, roof.building.winterHumidityPct);
  const place: Place | null = winter === null || room === null ? null : { winter, climateZone, room };
  const known = below.r === null ? null : place;
  const plain = known === null ? null : balanceOf(known, built);
  const tested = { built, winter, climateZone, room, balance: plain };
  const tests = heated ? moistureTests(tested) : [];
  const builtOver = (kind: 'batts' | 'closed-cell', r: number): BuildUp =>
    buildUpOf(site, layout, { below: { kind, r } });
  const cure =
    known !== null && tests.some(({ state }) => state === 'fails')
      ? cureOf({
          ...known,
          builtWith: (moreIn) => buildUpOf(site, layout, { moreIn }),
          builtTorn: kept === null ? null : (moreIn) => buildUpOf(site, layout, { moreIn, tornOff: true }),
          builtOver,
          foamR: joistIn(site) * rPerInOf('closed-cell'),
          layout,
          flatIn: roof.insulation.flatIn,
          budgets,
        })
      : null;
  const balance = known === null || plain === null ? null : balanceReport(known, built, plain, cure);
  const constraints = constraintsOf(roof.preferences);
  const byCode = (battsR: number): number | null => leastAbove(winter, climateZone, battsR);
  const dryR = (battsR: number): number | null => (place === null ? null : leastAboveDry(place, site, battsR));
  const options = optionsOf(input, place, (battsR) => dryR(battsR) ?? byCode(battsR));
  const noCompliantOption = constraints.length > 0 && options.length > 0 && !someCompliant(options);
  const deck = { kind: given.deckKind, kept };
  const retarder = retarderAdvice({
    built,
    januaryF: winter?.januaryF ?? null,
    humidityPct: room?.humidityPct ?? 0,
    excessPa: room?.excessPa ?? 0,
    climateZone,
    balance: plain,
    sealed: balance?.withLining ?? null,
    cure,
    deck,
  });
  const asked = heated
    ? sheetAsked(deck, below.kind, retarder, cure, winter !== null)
    : { sheet: null, held: null, todo: [] };
  const most = below.kind === null && place !== null ? mostBatts(place, builtOver, { asWater: true }) : null;
  const mostBelowR = most === null || most.noLimit ? null : most.r;
  const judged = moistureVerdict({
    built,
    room: given.below,
    tests,
    balance,
    mostBelowR,
    cure,
    cureTodo:
      cure === null
        ? []
        : cureWords({
            cure,
            below,
            constraints,
            codeAlone: codeAlone(tests),
            ground: groundOf(kept),
            humidityPct: room?.humidityPct ?? 0,
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
    leastAboveR: below.kind === 'none' ? 0 : below.kind === 'batts' && below.r !== null ? dryR(below.r) : null,
    deckF: heated ? deckF(tested) : null,
    tests,
    profile: known === null ? [] : januaryProfile(layers, known),
    balance,
    cure,
    deckSheet: asked.sheet,
    deckSheetHeld: asked.held,
    retarder,
    venting: ventingOf(riseOf(site), below.kind),
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
