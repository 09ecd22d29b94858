import { safetyLimits } from '../../../../reference/safety/limits.ts';
import type { SiteCautionId } from '../../../../reference/safety/site-cautions.ts';
import { deckNames } from '../../kind-names.ts';
import type { PipeKind } from '../../roof.ts';
import { openEdges } from '../edges.ts';
import type { SafetyFacts } from '../facts.ts';
import { figure, listed } from '../figure.ts';
import {
  lineClearanceFt,
  maintenanceNeeds,
  openAreaSqFt,
  palletPsf,
  screwTipIn,
  spreadAreaSqFt,
} from '../site-figures.ts';
import { windForceLb } from '../weather.ts';
import { anyOf, ifPresent, type Trigger, withMethod } from './trigger.ts';

const limits = safetyLimits;
const BOARD_SQ_FT = 32;
/** Twenty rolls of cap sheet on 40 x 48 in; common practice. */
const PALLET_LB = 1900;
const PALLET_SQ_FT = (40 * 48) / 144;

const soft: Trigger = ({ roof }) =>
  ifPresent(
    roof.deck.soft,
    'The deck is soft or springy.',
    'whether the deck is sound; look from below, probe at the edge',
  );

const wet: Trigger = ({ roof }) => ifPresent(roof.wetInsulation, 'Insulation is wet.', 'whether insulation is wet');

const snowOrWater: Trigger = ({ roof }) =>
  ifPresent(
    roof.snowOrWater,
    'There is snow or standing water.',
    'whether snow or water stands on the roof when work starts',
  );

function heavyStock({ work }: SafetyFacts): string | null {
  const most = limits.stockPsf.value;
  if (work.stockPsf === null)
    return `Not known: weight of the pallets. A pallet of rolls (${figure(PALLET_LB)} lb) presses ${figure(palletPsf(PALLET_LB, PALLET_SQ_FT), 0)} psf and wants ${figure(spreadAreaSqFt(PALLET_LB, most), 0)} sq ft.`;
  return work.stockPsf > most
    ? `Stock presses ${figure(work.stockPsf, 0)} psf; ${most} psf is the usual least roof live load.`
    : null;
}

function addedLoad({ work }: SafetyFacts): string | null {
  const { addedLoadPsf: added, deadLoadPsf: dead } = work;
  if (added === null) return 'Not known: what the new roof adds.';
  if (added <= 0) return null;
  if (dead === null) return `The new roof adds ${figure(added, 1)} psf; the old dead load is not known.`;
  const share = added / dead;
  return share > limits.addedLoadShare.value
    ? `The new roof adds ${figure(added, 1)} psf to ${figure(dead, 1)} psf, ${figure(100 * share, 0)} percent; 5 percent needs no check.`
    : null;
}

function screwsTooLong({ work }: SafetyFacts): string | null {
  if (work.tapered === false) return null;
  if (work.screws === null) return 'Not known: screw lengths over the taper.';
  const { lengthIn, leastThicknessIn, greatestThicknessIn, deckDepthIn } = work.screws;
  if (greatestThicknessIn <= leastThicknessIn) return null;
  const { belowDeckIn } = screwTipIn(lengthIn, leastThicknessIn, deckDepthIn);
  return `A ${figure(lengthIn)}-in screw over ${figure(leastThicknessIn)} in of build-up ends ${figure(Math.abs(belowDeckIn), 1)} in ${belowDeckIn > 0 ? 'below the deck' : 'inside the deck'}; the build-up runs to ${figure(greatestThicknessIn)} in.`;
}

function servicesUnderDeck({ roof }: SafetyFacts): string | null {
  if (roof.deck.kind === 'concrete') return null;
  if (roof.deck.servicesLocated) return null;
  return roof.deck.servicesLocated === false ? 'Nobody has located them.' : 'Not known: what runs below the deck.';
}

function waterLoad({ roof }: SafetyFacts, when: 'as-is' | 'during' | 'finished'): string | null {
  const depth = when === 'as-is' ? roof.pondDepthIn : roof.finishedPondDepthIn;
  const most = limits.pondForEngineerIn.value;
  if (depth !== null && depth > most) return `Water ${figure(depth, 1)} in deep.`;
  if (roof.overflowMissing) return 'There is no second way out for the water.';
  if (depth === null) return 'Not known: how deep water stands.';
  return roof.overflowMissing === null ? 'Not known: whether there is a second way out for the water.' : null;
}

function openRoof({ work }: SafetyFacts): string | null {
  const { openTodaySqFt: open, watertightPerDaySqFt: able, crewSize } = work;
  if (open !== null && able !== null)
    return open > able ? `${figure(open, 0)} sq ft opened; the crew closes ${figure(able, 0)}.` : null;
  const guess = (rain: number) => figure(openAreaSqFt(crewSize ?? 1, 9, rain), 0);
  const crew = crewSize === null ? 'One worker' : `A crew of ${crewSize}`;
  return `Not known: what is opened in a day and what the crew can close. ${crew} closes about ${guess(0)} sq ft in 9 hours, ${guess(100)} with rain about.`;
}

const windAt =
  (mph: number, gust: number | null): Trigger =>
  ({ weather }) => {
    const force = `a 4 x 8 ft board then catches ${figure(windForceLb(mph, BOARD_SQ_FT), 0)} lb`;
    if (weather.windMph !== null && weather.windMph >= mph)
      return `Wind ${figure(weather.windMph)} mph; at ${mph} mph ${force}.`;
    if (gust !== null && weather.gustMph !== null && weather.gustMph >= gust)
      return `Gusts of ${figure(weather.gustMph)} mph.`;
    const open = weather.windMph === null || (gust !== null && weather.gustMph === null);
    return open ? `Not known: wind on the day; at ${mph} mph ${force}.` : null;
  };

function thunder({ weather }: SafetyFacts): string | null {
  const since = weather.minutesSinceThunder;
  if (since === null) return 'Not known: weather on the day.';
  return since < limits.thunderMinutes.value ? `${figure(since)} minutes since the last thunder.` : null;
}

function powerLine({ roof }: SafetyFacts): string | null {
  const line = roof.powerLine;
  if (line === 'none') return null;
  if (line === null) return 'Not known: whether there are overhead lines.';
  if (line.kV === null) return 'There is an overhead line of a voltage not known.';
  const least = lineClearanceFt(line.kV);
  if (line.distanceFt === null)
    return `A line of ${figure(line.kV)} kV at a distance not known; ${figure(least, 1)} ft are needed.`;
  return line.distanceFt < least
    ? `A line of ${figure(line.kV)} kV is ${figure(line.distanceFt, 1)} ft away; ${figure(least, 1)} ft are needed.`
    : null;
}

const pipesOf =
  (...kinds: readonly PipeKind[]): Trigger =>
  ({ roof }) => {
    const count = roof.pipes.filter((pipe) => kinds.includes(pipe)).length;
    return count > 0 ? `${count} on this roof.` : null;
  };

function debrisDrop({ work }: SafetyFacts): string | null {
  const drop = work.debrisDropFt;
  if (drop === null) return 'Not known: how far debris falls.';
  return drop > limits.chuteFt.value ? `Debris falls ${figure(drop)} ft.` : null;
}

function outletNearEdge({ roof }: SafetyFacts): string | null {
  const near = roof.outlets.filter(
    ({ openEdgeFt }) => openEdgeFt === null || maintenanceNeeds(openEdgeFt, true, true) !== 'nothing',
  );
  const words = near.map(({ label, openEdgeFt }) =>
    openEdgeFt === null ? `${label} (distance not known)` : `${label} (${figure(openEdgeFt)} ft)`,
  );
  return near.length > 0 && openEdges(roof.edges, 'finished').length > 0 ? `${listed(words)} from an open edge.` : null;
}

/** When each caution about deck, loads, water, weather, services and people below holds. Sources stand on the rows. */
export const siteTriggers: Record<SiteCautionId, Trigger> = {
  'deck-strength': soft,
  'stock-spread': heavyStock,
  'stock-on-weak': anyOf(
    ({ work }) => (work.stockOnWeakParts ? 'Stock is planned on weak parts.' : null),
    soft,
    wet,
    snowOrWater,
  ),
  'stock-and-debris': ({ work }) => (work.tearOffSqFt === 0 ? null : 'Old roofing comes off while new stock arrives.'),
  'added-load': addedLoad,
  'screw-length': withMethod(['mechanical-fastening'], screwsTooLong),
  'services-under-deck': withMethod(['mechanical-fastening'], servicesUnderDeck),
  'parapet-loose': ({ roof }) =>
    ifPresent(roof.looseMasonry, 'A parapet or chimney is loose.', 'whether parapets and chimneys are firm'),
  'snow-or-water': snowOrWater,
  'concrete-drilling': withMethod(['mechanical-fastening'], ({ roof }) =>
    roof.deck.kind === null || roof.deck.kind === 'concrete' || roof.deck.kind === 'lightweight-concrete'
      ? `The deck is ${roof.deck.kind === null ? 'not known' : deckNames[roof.deck.kind]}.`
      : null,
  ),
  'water-load': waterLoad,
  'drains-clear': ({ roof }) =>
    roof.outlets.length > 0
      ? `${roof.outlets.length} ${roof.outlets.length === 1 ? 'outlet' : 'outlets'} to keep open.`
      : 'The ways out are not known.',
  'open-roof': openRoof,
  'rain-forecast': ({ weather }) => {
    if (weather.rainPercent === null) return 'Not known: the forecast.';
    return weather.rainPercent >= limits.rainPercent.value ? `Rain at ${figure(weather.rainPercent)} percent.` : null;
  },
  'wind-stop': windAt(limits.windStopMph.value, limits.gustStopMph.value),
  'wind-care': windAt(limits.windCareMph.value, null),
  lightning: thunder,
  slippery: ({ weather }) =>
    ifPresent(weather.wetOrFrosted, 'The surface is wet or frosted.', 'whether the surface is dry on the day'),
  'power-line': powerLine,
  'ladder-near-power': ({ roof, work }) =>
    roof.powerLine === 'none' || work.ladderUsed === false
      ? null
      : 'A ladder is used, and power lines are near or nobody has said that there are none.',
  solar: ({ roof }) => ifPresent(roof.solar, 'There are solar panels.', 'whether there are solar panels'),
  antennas: ({ roof }) => ifPresent(roof.antennas, 'There are antennas.', 'whether there are antennas'),
  flue: pipesOf('flue', 'gas-vent'),
  'vent-height': pipesOf('plumbing', 'exhaust', 'air-inlet'),
  'gas-or-unit': ({ work }) =>
    ifPresent(work.movesUnits, 'Gas pipes or rooftop units are moved.', 'whether gas pipes or rooftop units are moved'),
  'conduit-on-roof': pipesOf('conduit'),
  'rooms-below': ({ building }) => {
    if (building.ceilingIsDeck === false || building.occupied === false) return null;
    return building.ceilingIsDeck
      ? 'The underside of the deck is the ceiling of rooms below.'
      : 'Not known: whether the deck is the ceiling of rooms below.';
  },
  'debris-chute': debrisDrop,
  'public-below': ({ building }) =>
    ifPresent(building.publicBelow, 'People pass below the edge.', 'whether people pass below the edge'),
  hoist: ({ work }) => ifPresent(work.hoist, 'A hoist is used.', 'whether a hoist is used'),
  dumpster: ({ work }) => (work.tearOffSqFt === 0 ? null : 'Old roofing is torn off into a container.'),
  ballast: ({ roof }) => ifPresent(roof.ballast, 'The old roof is ballasted.', 'whether the old roof is ballasted'),
  'later-maintenance': ({ roof }) => {
    if (roof.edges.length === 0) return 'Not known: what the edges are.';
    const open = openEdges(roof.edges, 'finished');
    return open.length > 0 ? `Open edges of the finished roof: ${listed(open.map((edge) => edge.label))}.` : null;
  },
  'outlet-near-edge': outletNearEdge,
};
