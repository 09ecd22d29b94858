import { wetGrowth } from '../../../reference/vapor.ts';
import { atLeast, atMost, plainNumber, rValue } from '../../units/print.ts';
import { waterWords } from '../moisture/tests.ts';
import { placeWords } from '../vents/pieces.ts';
import type {
  CoolRoofOption,
  EnergyRuleRow,
  EnergyRulesReport,
  InsulationOption,
  MoistureReport,
  MoistureTest,
  RuleResult,
  VentReport,
} from './types.ts';
import { sentence } from './words.ts';

export const dampVerdictWords: Readonly<Record<MoistureReport['verdict'], string>> = {
  safe: 'Safe from damp inside the roof.',
  'safe-if': 'Safe from damp inside the roof, once this is done.',
  'at-risk': 'At risk of damp inside the roof.',
  'not-known': 'Not known yet.',
  'not-asked': 'Not a question here.',
};

export const testStateWords: Readonly<Record<MoistureTest['state'], string>> = {
  holds: 'holds',
  fails: 'short',
  'not-known': 'not known',
  'not-asked': 'not asked',
};

export const ruleResultWords: Readonly<Record<RuleResult, string>> = {
  pass: 'pass',
  fail: 'fail',
  'not-applicable': 'does not apply',
  'not-known': 'not known',
};

const degrees = (f: number): string => `${plainNumber(f)} F`;

/** The winter and the room that the answer stands on, in one sentence; null where nobody lives below. */
export function winterWords({ winter, room }: MoistureReport): string | null {
  if (winter === null || room === null) return null;
  const from = room.given ? 'as measured' : 'as in ordinary homes';
  return `Winter of ${winter.place}${winter.standsIn ? `, assumed, as the coldest listed place of zone ${winter.climateZone}` : ''}: January ${degrees(winter.januaryF)}, the three coldest months ${degrees(winter.coldF)}. Rooms at ${degrees(room.airF)} and ${plainNumber(room.humidityPct)} % humidity (${from}): that air turns to water at ${degrees(room.dewPointF)}.`;
}

/** January through the roof, outside first: a face that is colder than its dew point gathers water. */
export const profileRows = ({ profile }: MoistureReport): { face: string; air: string; dew: string }[] =>
  profile.map(({ face, airF, dewPointF }) => ({ face, air: degrees(airF), dew: degrees(dewPointF) }));

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** Water in the roof at the end of each month, and with a lining what decides: its most, what is left, and the years to too much. */
export function monthWords({ balance }: MoistureReport): string | null {
  if (balance === null || balance.peakGPerM2 < 0.5) return null;
  const months = balance.months.map(({ month, gPerM2 }) => `${MONTHS[month]} ${plainNumber(gPerM2)}`).join(', ');
  const sealed = balance.withLining;
  const lined = ` With ${sealed.what}: ${waterWords(sealed)}.`;
  return `Water in the roof at the end of each month, g per sq m: ${months}.${lined} More than ${balance.alarmGPerM2} within ${wetGrowth.years} years is too much, by the careful limit of wood decks.`;
}

const reachWords: Readonly<Record<InsulationOption['reachesTarget'], string>> = {
  yes: 'reaches it',
  'by-exception': 'only by the small-ceiling rule',
  no: 'short of it',
  'not-known': 'no target known',
};

export interface OptionRow {
  option: InsulationOption;
  r: string;
  dry: string;
  code: string;
  target: string;
  /** What was asked for that it breaks; empty = keeps all. */
  breaks: string;
}

/** The ways to place the insulation, one line each. */
export const optionRows = ({ options, constraints }: MoistureReport): OptionRow[] =>
  options.map((option) => ({
    option,
    r: rValue(option.r),
    dry: option.dry === null ? 'not known' : option.dry ? 'yes' : 'no',
    code: option.allowedByCode ? 'allowed' : 'not allowed',
    target: reachWords[option.reachesTarget],
    breaks: constraints
      .filter(({ id }) => option.breaks.includes(id))
      .map(({ words }) => words)
      .join('; '),
  }));

/** "Asked for: the covering stays; no sprayed foam." or null. */
export const constraintWords = ({ constraints }: MoistureReport): string | null =>
  constraints.length === 0 ? null : `Asked for: ${constraints.map(({ words }) => words).join('; ')}.`;

/** All rules: those that bind first, what does not apply last. */
export function energyRuleRows({ rows, coolRoof }: EnergyRulesReport): EnergyRuleRow[] {
  const order: Record<RuleResult, number> = { fail: 0, pass: 1, 'not-known': 2, 'not-applicable': 3 };
  const upper = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
  return [...rows, ...coolRoof]
    .sort((a, b) => order[a.result] - order[b.result])
    .map((row) => ({ ...row, clause: upper(row.clause), note: sentence(upper(row.note)) }));
}

export interface CoveringRow {
  name: string;
  chosen: boolean;
  reflectance: string;
  emits: string;
  index: string;
  route: string;
}

const routeWords = ({ by }: CoolRoofOption): string =>
  by === 'pair' ? 'by reflectance' : by === 'index' ? 'by SRI' : 'does not pass';

/** Coverings against the first cool-roof rule that binds: the rules of one job ask the same. */
export function coolCoverings({ coverings }: EnergyRulesReport): CoveringRow[] {
  const [first] = coverings;
  return coverings
    .filter(({ rule }) => rule === first.rule)
    .sort((a, b) => Number(b.chosen) - Number(a.chosen) || b.sri - a.sri)
    .map((one) => ({
      name: one.name,
      chosen: one.chosen,
      reflectance: plainNumber(one.agedReflectance, 2),
      emits: plainNumber(one.emittance, 2),
      index: plainNumber(one.sri),
      route: routeWords(one),
    }));
}

const ventPlaceWords: Readonly<Record<VentReport['vents'][number]['where'], string>> = {
  high: 'high',
  eaves: 'at the eaves',
  between: 'between high and eaves',
};

/** The vents that were counted, one line each. */
export const ventPieceRows = ({ vents }: VentReport) =>
  vents.map(({ name, count, eachSqIn, totalSqIn, where, stays, given, source }) => ({
    name,
    count: count === null ? 'not counted' : plainNumber(count),
    each: `${plainNumber(eachSqIn)} sq in${given ? '' : ', usual'}`,
    total: count === null ? 'not known' : `${plainNumber(totalSqIn)} sq in`,
    where: `${ventPlaceWords[where]}${stays ? '' : ', to close'}`,
    source,
  }));

export const ventStateWords: Readonly<Record<VentReport['conditions'][number]['state'], string>> = {
  met: 'met',
  'not-met': 'not met',
  'not-known': 'not known',
};

const squareInches = (value: number | null): string => (value === null ? 'not known' : `${atLeast(value)} sq in`);

const uncounted = ({ vents }: VentReport): string[] =>
  vents.filter(({ count }) => count === null).map(({ name }) => name.split(',')[0]);

/** What nobody counted is no zero. */
function countedWords(areaSqIn: number, open: readonly string[]): string {
  if (open.length === 0) return `${atMost(areaSqIn)} sq in`;
  const names = open.join('; ');
  return areaSqIn > 0 ? `${atMost(areaSqIn)} sq in, and what nobody counted: ${names}` : `not counted: ${names}`;
}

/** What is needed by both rules, and what is there. */
export const ventFigures = (vents: VentReport): { what: string; value: string }[] => [
  { what: 'By 1/150 of the attic floor', value: squareInches(vents.needed150SqIn) },
  { what: 'By 1/300, where its conditions hold', value: squareInches(vents.needed300SqIn) },
  {
    what: 'High part of the 1/300',
    value:
      vents.highFromSqIn === null || vents.highToSqIn === null
        ? 'not known'
        : `${atLeast(vents.highFromSqIn)} to ${atMost(vents.highToSqIn)} sq in`,
  },
  { what: 'There today', value: countedWords(vents.thereSqIn, uncounted(vents)) },
  {
    what: vents.toClose.length === 0 ? 'Of that' : `Left with the ${vents.toClose.join(' and the ')} closed`,
    value: `${vents.toClose.length === 0 || vents.countedSqIn === 0 ? '' : `${atMost(vents.countedSqIn)} sq in: `}${[
      placeWords(vents.vents, 'high'),
      placeWords(vents.vents, 'eaves'),
      ...(vents.vents.some(({ where, stays }) => stays && where === 'between')
        ? [placeWords(vents.vents, 'between')]
        : []),
    ].join(', ')}`,
  },
];
