import type { HealthCautionId } from '../../../../reference/safety/health-cautions.ts';
import { safetyLimits } from '../../../../reference/safety/limits.ts';
import type { SafetyFacts } from '../facts.ts';
import { figure } from '../figure.ts';
import { heatIndexF, windChillF } from '../weather.ts';
import { anyOf, ifNearer, ifPresent, oneOf, type Trigger, withMethod } from './trigger.ts';

const limits = safetyLimits;

/** Built before the year, or not known when. */
function builtBefore({ building }: SafetyFacts, year: number): string | null {
  if (building.yearBuilt === null) return 'Not known: when the building was built.';
  return building.yearBuilt < year ? `Built in ${building.yearBuilt}.` : null;
}

/** Asbestos is there, or nobody has sampled. */
function asbestos({ work }: SafetyFacts): string | null {
  if (work.asbestos === 'clear') return null;
  return work.asbestos === 'present' ? 'Asbestos was found in a sample.' : 'Not known: no sample result.';
}

const withAsbestos =
  (rest: Trigger): Trigger =>
  (facts, when) =>
    asbestos(facts) === null ? null : rest(facts, when);

const smallHouse = ({ building }: SafetyFacts) =>
  building.use === 'dwelling' &&
  building.dwellingUnits !== null &&
  building.dwellingUnits <= limits.smallDwellingUnits.value &&
  building.severalBuildings === false;

function regulatedBuilding(facts: SafetyFacts): string | null {
  if (smallHouse(facts)) return null;
  const { use, dwellingUnits, severalBuildings } = facts.building;
  if (use === 'other') return 'The building is not a dwelling.';
  if (severalBuildings) return 'It is one of several buildings under one owner or project.';
  if (dwellingUnits !== null && dwellingUnits > limits.smallDwellingUnits.value)
    return `It has ${dwellingUnits} dwelling units.`;
  return 'Not known: use, number of dwelling units, or whether it stands alone.';
}

function cutterArea({ work }: SafetyFacts): string | null {
  if (work.roofCutter === false) return null;
  const area = work.tearOffSqFt;
  if (area !== null && area < limits.asbestosCutterSqFt.value) return null;
  const size = area === null ? 'The area torn off is not known' : `${figure(area, 0)} sq ft are torn off`;
  return `${size}; ${figure(limits.asbestosCutterSqFt.value)} sq ft is the limit for power cutters.`;
}

function leadPaint(facts: SafetyFacts): string | null {
  if (facts.building.use === 'other') return null;
  const age = builtBefore(facts, limits.leadBuiltBefore.value);
  const area = facts.work.paintDisturbedSqFt;
  if (age === null || (area !== null && area < limits.leadPaintSqFt.value)) return null;
  return `${age} ${area === null ? 'The painted area that is disturbed is not known.' : `${figure(area)} sq ft of paint are disturbed.`}`;
}

/** Heat index of the day; not known while temperature or humidity is. */
function heat(facts: SafetyFacts, fromF: number): string | null {
  const { temperatureF, relativeHumidityPercent } = facts.weather;
  if (temperatureF === null || relativeHumidityPercent === null)
    return `Not known: temperature and humidity on the day; it starts at a heat index of ${fromF} F.`;
  const index = heatIndexF(temperatureF, relativeHumidityPercent);
  return index >= fromF ? `Heat index ${figure(index, 0)} F.` : null;
}

function cold({ weather }: SafetyFacts): string | null {
  if (weather.temperatureF === null) return `Not known: temperature on the day; it starts at ${limits.coldF.value} F.`;
  const chill = windChillF(weather.temperatureF, weather.windMph ?? 0);
  return chill <= limits.coldF.value ? `Feels like ${figure(chill, 0)} F.` : null;
}

/** When each health caution holds. Sources stand on the rows. */
export const healthTriggers: Record<HealthCautionId, Trigger> = {
  'asbestos-sample': withAsbestos((facts) =>
    facts.work.asbestos === 'present' ? asbestos(facts) : builtBefore(facts, limits.asbestosBuiltBefore.value),
  ),
  'asbestos-small-house': withAsbestos((facts) =>
    smallHouse(facts) ? `A house that stands alone, dwellings in it: ${facts.building.dwellingUnits}.` : null,
  ),
  'asbestos-notice': withAsbestos(regulatedBuilding),
  'asbestos-cutter': withAsbestos(cutterArea),
  'asbestos-work': asbestos,
  'lead-paint': leadPaint,
  'lead-flashing': ({ roof }) =>
    ifPresent(roof.leadFlashing, 'There is lead flashing.', 'whether any flashing is lead'),
  silica: ({ work }) =>
    ifPresent(work.cutsMasonry, 'Concrete, pavers or masonry are cut.', 'whether concrete, pavers or masonry are cut'),
  isocyanate: oneOf('foam-adhesive', 'spray-foam'),
  'solvent-limit': oneOf('solvent-adhesive', 'cold-adhesive', 'self-adhered'),
  'resin-vapor': oneOf('liquid-resin'),
  'fumes-into-intake': withMethod(['hot-asphalt', 'solvent-adhesive', 'spray-foam', 'liquid-resin'], ({ building }) =>
    building.occupied === false
      ? null
      : ifNearer(building.airIntakeFt, limits.intakeFt.value, 'work to the nearest air intake'),
  ),
  'asphalt-fume': oneOf('hot-asphalt'),
  generator: ({ work }) =>
    ifNearer(work.generatorToOpeningFt, limits.generatorFt.value, 'engine to the nearest opening'),
  'wet-insulation': ({ roof }) =>
    ifPresent(roof.wetInsulation, 'There is wet insulation.', 'whether insulation is wet'),
  'bird-droppings': ({ roof }) =>
    ifPresent(roof.birdDroppings, 'There are droppings.', 'whether there are bird or bat droppings'),
  heat: (facts) => heat(facts, limits.heatIndexF.value),
  'high-heat': (facts) => heat(facts, limits.highHeatIndexF.value),
  cold,
  noise: anyOf(
    ({ work }) => ifPresent(work.roofCutter, 'A roof cutter is used.', 'whether a roof cutter is used'),
    ({ work }) => (work.tearOffSqFt === 0 ? null : 'Old roofing is torn off.'),
  ),
  sun: ({ work }) => ifPresent(work.whiteSurface, 'The new surface is white.', 'color of the new surface'),
};
