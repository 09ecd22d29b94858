import type { HotWorkCautionId } from '../../../../reference/safety/hot-work-cautions.ts';
import { safetyLimits } from '../../../../reference/safety/limits.ts';
import { deckNames } from '../../kind-names.ts';
import { isCombustible } from '../deck-fire.ts';
import type { SafetyFacts } from '../facts.ts';
import { figure } from '../figure.ts';
import { areaExtinguishers, fireWatchMin, torchExtinguishers } from '../fire-watch.ts';
import { cordDropV } from '../site-figures.ts';
import { anyOf, ifMissing, ifNearer, ifPresent, oneOf, type Trigger, withMethod } from './trigger.ts';

const limits = safetyLimits;

const torch = (rest: Trigger) => withMethod(['torch'], rest);
const kettle = (rest: Trigger) => withMethod(['hot-asphalt'], rest);
const gas = (rest: Trigger) => withMethod(['torch', 'hot-asphalt'], rest);

const sparks: Trigger = ({ hotWork }) =>
  ifPresent(
    hotWork.sparks,
    'Grinding, cutting or powder fasteners are planned.',
    'whether grinding or cutting makes sparks',
  );

const flameOrSparks = anyOf(oneOf('torch', 'hot-asphalt', 'hot-air'), sparks);

function torchOnWood(facts: SafetyFacts): string | null {
  const deck = deckMayBurn(facts);
  if (deck === null || facts.hotWork.thermalBarrier) return null;
  return `${deck} ${facts.hotWork.thermalBarrier === false ? 'There is no thermal barrier.' : 'No thermal barrier is known.'}`;
}

/** A deck that burns, or may burn: there a torch is never the way out of a cold day. */
function deckMayBurn({ roof }: SafetyFacts): string | null {
  const burns = isCombustible(roof.deck.kind);
  if (burns === false) return null;
  return burns && roof.deck.kind !== null
    ? `The deck is ${deckNames[roof.deck.kind]}.`
    : 'It is not known that the deck cannot burn.';
}

function tooFewAtTorch({ hotWork }: SafetyFacts): string | null {
  const needed = torchExtinguishers(hotWork.torches ?? 1, hotWork.torchSpacingFt ?? Infinity);
  if (hotWork.extinguishers === null) return `Not known: how many there are; at least ${needed} are needed.`;
  return hotWork.extinguishers < needed ? `${hotWork.extinguishers} there; ${needed} are needed.` : null;
}

function tooLate({ hotWork }: SafetyFacts): string | null {
  const watch = fireWatchMin('torch');
  const left = hotWork.lastFlameBeforeCloseMin;
  if (left === null) return `Not known: when the last flame goes out; ${watch} minutes before the site closes.`;
  return left < watch ? `The last flame is ${left} minutes before the site closes; ${watch} are needed.` : null;
}

function fuelTooNear({ hotWork }: SafetyFacts): string | null {
  const least = hotWork.fuelShielded ? limits.fuelShieldedFt.value : limits.fuelFt.value;
  return ifNearer(hotWork.fuelToBurnerFt, least, 'fuel to burner');
}

function longCord({ hotWork: { cord } }: SafetyFacts): string | null {
  if (cord === null) return 'Not known: length and thickness of the cord.';
  const lost = cordDropV(cord.amps, cord.lengthFt, cord.gaugeAwg);
  const percent = (100 * lost) / cord.volts;
  if (percent <= limits.cordDropPercent.value) return null;
  return `${figure(cord.lengthFt)} ft of ${cord.gaugeAwg} gauge at ${figure(cord.amps)} A loses ${figure(lost, 1)} V (${figure(percent, 1)} percent).`;
}

/** When each hot-work caution holds. Sources stand on the rows. */
export const hotWorkTriggers: Record<HotWorkCautionId, Trigger> = {
  'torch-permit': oneOf('torch'),
  'torch-on-wood': torch(torchOnWood),
  'torch-near-wood': torch(({ hotWork }) =>
    ifPresent(
      hotWork.woodInReach,
      'Wood, a crack or a vent is within reach of the flame.',
      'whether wood, cracks or vents are within reach',
    ),
  ),
  'no-change-to-torch': deckMayBurn,
  'torch-extinguishers': torch(tooFewAtTorch),
  'torch-too-late': torch(tooLate),
  'intakes-shut-only': torch(({ building, hotWork }) =>
    building.occupied === false
      ? null
      : ifPresent(
          hotWork.onlyIntakesShut,
          'Only the intakes are shut.',
          'what happens to the air intakes during the work',
        ),
  ),
  'temperature-log': torch(({ hotWork }) =>
    ifMissing(
      hotWork.infraredThermometer,
      'There is no infrared thermometer.',
      'whether there is an infrared thermometer',
    ),
  ),
  'torch-on-house': torch(({ building }) =>
    building.use === 'other'
      ? null
      : building.use === 'dwelling'
        ? 'This is a house.'
        : 'Not known: whether this is a house.',
  ),
  'kettle-distance': kettle(({ hotWork }) =>
    ifNearer(hotWork.kettleToOpeningFt, limits.kettleFt.value, 'kettle to openings and what burns'),
  ),
  'kettle-fuel': kettle(fuelTooNear),
  'kettle-attended': oneOf('hot-asphalt'),
  'propane-inside': gas(({ hotWork }) =>
    ifPresent(hotWork.propaneStoredInside, 'Propane is stored inside.', 'where the propane is stored'),
  ),
  'propane-distance': gas(
    anyOf(
      ({ hotWork }) => ifNearer(hotWork.cylinderToTorchFt, limits.cylinderToTorchFt.value, 'cylinder to torch'),
      ({ hotWork }) => ifNearer(hotWork.cylinderToHeaterFt, limits.cylinderToHeaterFt.value, 'cylinder to heater'),
    ),
  ),
  'propane-frost': oneOf('torch', 'hot-asphalt'),
  'propane-overnight': oneOf('torch', 'hot-asphalt'),
  'solvent-ignition': withMethod(['solvent-adhesive', 'cold-adhesive', 'liquid-resin'], ({ hotWork }) =>
    ifNearer(
      hotWork.ignitionToSolventFt,
      limits.solventIgnitionFt.value,
      'flame, welder or smoking to the wet solvent',
    ),
  ),
  sparks,
  'hot-air': oneOf('hot-air'),
  'welder-cord': withMethod(['hot-air'], longCord),
  'alarms-off': (facts, when) =>
    flameOrSparks(facts, when) === null
      ? null
      : ifPresent(
          facts.hotWork.alarmsOff,
          'Sprinklers or alarms are out of service.',
          'whether sprinklers and alarms are in service',
        ),
  'cannot-see-below': torch(({ hotWork }) =>
    ifMissing(hotWork.canSeeBelow, 'Nobody can see below the deck.', 'whether anybody can see below the deck'),
  ),
  'openings-sealed': anyOf(oneOf('torch'), sparks),
  'night-check': oneOf('torch', 'hot-asphalt'),
  'extinguisher-count': (facts, when) =>
    flameOrSparks(facts, when) === null
      ? null
      : `${figure(facts.roof.areaSqFt, 0)} sq ft: ${areaExtinguishers(facts.roof.areaSqFt)} at the least.`,
};
