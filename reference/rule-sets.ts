import type { Cited, Grade, SourceId } from './sources.ts';
import type { PipeGeneration } from './storm-pipes.ts';

/** One sentence of a code, in our own words, with its section. */
export interface Clause extends Cited {
  text: string;
}

/** How the building rule states its least slope. */
export type SlopeMethod =
  | { kind: 'by-covering'; sections: 'irc' | 'ibcTo2018' | 'ibcFrom2021' }
  | { kind: 'design-and-finished'; designInPerFt: number; finishedInPerFt: number };

export interface BuildingRule extends Cited {
  id: string;
  title: string;
  slope: SlopeMethod;
  /** A re-roof may keep less slope under this clause; null = no such exception. */
  reRoofSlope: Clause | null;
  /** A re-roof need not add overflows under this clause; null = no such exception. */
  reRoofOverflow: Clause | null;
  /** The exceptions hold only if the structure is also checked for ponding and snow. */
  structureCheckedToo: boolean;
  drainsWithin: Clause & { hours: number };
  overflow: Clause & { inletAboveLowPointIn: number };
  overflowScupper: Clause & { rule: 'three-times' | 'by-flow'; leastOpeningIn: number };
  /** Rain behind the overflow and its head: `15-min` may be taken as twice the hourly rate. */
  rainLoad: Clause & { duration: '60-min' | '15-min' };
}

const SLOPE_TEXT = 'A re-roof need not have the least slope if the finished roof drains within 48 h.';
const OVERFLOW_TEXT =
  'A re-roof need not add overflows if the finished roof drains within 48 h; overflows that are there stay or are replaced.';

const drains48h = {
  hours: 48,
  text: 'Drained: water is gone 48 h after rain, with all deflections of the deck counted.',
  source: 'ibc-2018',
  at: '202, positive roof drainage',
  grade: 'found',
} as const;

const openingBothWays = {
  rule: 'by-flow',
  leastOpeningIn: 4,
  text: 'An overflow scupper opens at least 4 in each way and is sized by flow, with the primary outlets blocked.',
} as const;

const practiceInlet = {
  inletAboveLowPointIn: 2,
  text: 'Overflows where walls or parapets can hold water if the primary outlets back up. Height of the inlet: 2 in by practice.',
} as const;

const threeTimes = {
  rule: 'three-times',
  leastOpeningIn: 4,
  text: 'An overflow scupper has three times the size of the roof drain and is at least 4 in high.',
} as const;

const twoInches = {
  inletAboveLowPointIn: 2,
  text: 'Overflow drain of the size of the roof drain, or overflow scupper, with its inlet 2 in above the low point.',
} as const;

const noRainLoadClause = {
  duration: '15-min',
  text: 'The house code has no rain-load clause; the 15-minute rain of the load standard is used.',
  source: 'asce-7-16',
  at: '8.2',
  grade: 'found',
} as const;

const clause = (text: string, source: SourceId, at: string, grade: Grade): Clause => ({ text, source, at, grade });

/**
 * Building codes. A project follows the IBC or the IEBC as a whole, not a mix. Editions that were not read carry grade `memory`
 * on the clause, not on the rule: the house code of 2021 and 2024 is taken to repeat R903.4.1 and R908.1 of 2018.
 * Who disagrees: a proposal of 2019 to strike the overflow exception because of collapses failed, and a technical advisory warns
 * that its result can be unsafe; one legal comment says that the existing-building code of its day lacked that exception.
 * Adopted locally with amendments: the building official's text governs.
 */
export const buildingRules = [
  {
    id: 'irc-2018',
    title: 'IRC 2018 (houses)',
    slope: { kind: 'by-covering', sections: 'irc' },
    reRoofSlope: clause(SLOPE_TEXT, 'irc-2018', 'R908.1 exception 1', 'found'),
    reRoofOverflow: clause(OVERFLOW_TEXT, 'irc-2018', 'R908.1 exception 2', 'found'),
    structureCheckedToo: false,
    drainsWithin: drains48h,
    overflow: { ...twoInches, source: 'irc-2018', at: 'R903.4.1', grade: 'found' },
    overflowScupper: { ...threeTimes, source: 'irc-2018', at: 'R903.4.1', grade: 'found' },
    rainLoad: noRainLoadClause,
    source: 'irc-2018',
    at: 'R903, R905, R908',
    grade: 'found',
  },
  {
    id: 'irc-2021',
    title: 'IRC 2021 (houses)',
    slope: { kind: 'by-covering', sections: 'irc' },
    reRoofSlope: clause(SLOPE_TEXT, 'irc-2021', 'R908.1 exception 1', 'memory'),
    reRoofOverflow: clause(OVERFLOW_TEXT, 'irc-2021', 'R908.1 exception 2', 'memory'),
    structureCheckedToo: false,
    drainsWithin: drains48h,
    overflow: { ...twoInches, source: 'irc-2021', at: 'R903.4.1', grade: 'memory' },
    overflowScupper: { ...threeTimes, source: 'irc-2021', at: 'R903.4.1', grade: 'memory' },
    rainLoad: noRainLoadClause,
    source: 'irc-2021',
    at: 'R903, R905, R908',
    grade: 'found',
  },
  {
    id: 'irc-2024',
    title: 'IRC 2024 (houses)',
    slope: { kind: 'by-covering', sections: 'irc' },
    reRoofSlope: clause(SLOPE_TEXT, 'irc-2024', 'R908.1 exception 1', 'memory'),
    reRoofOverflow: clause(OVERFLOW_TEXT, 'irc-2024', 'R908.1 exception 2', 'memory'),
    structureCheckedToo: false,
    drainsWithin: drains48h,
    overflow: { ...twoInches, source: 'irc-2024', at: 'R903.4.1', grade: 'memory' },
    overflowScupper: { ...threeTimes, source: 'irc-2024', at: 'R903.4.1', grade: 'memory' },
    rainLoad: noRainLoadClause,
    source: 'irc-2024',
    at: 'R903, R905, R908',
    grade: 'memory',
  },
  {
    id: 'ibc-2018',
    title: 'IBC 2018',
    slope: { kind: 'by-covering', sections: 'ibcTo2018' },
    reRoofSlope: clause(SLOPE_TEXT, 'ibc-2018', '1511.1 exception 1', 'found'),
    reRoofOverflow: clause(OVERFLOW_TEXT, 'ibc-2018', '1511.1 exception 2', 'found'),
    structureCheckedToo: false,
    drainsWithin: drains48h,
    overflow: { ...practiceInlet, source: 'ibc-2018', at: '1503.4.1', grade: 'found' },
    overflowScupper: { ...openingBothWays, source: 'ibc-2018', at: '1503.4.2', grade: 'found' },
    rainLoad: {
      duration: '60-min',
      text: 'Design rain of 100 years and 60 minutes, or local data.',
      source: 'ibc-2018',
      at: '1611.1',
      grade: 'found',
    },
    source: 'ibc-2018',
    at: 'chapters 15 and 16',
    grade: 'found',
  },
  {
    id: 'ibc-2021',
    title: 'IBC 2021',
    slope: { kind: 'by-covering', sections: 'ibcFrom2021' },
    reRoofSlope: clause(SLOPE_TEXT, 'ibc-2021', '1512.1 exception 1 (second hand)', 'found'),
    reRoofOverflow: clause(OVERFLOW_TEXT, 'ibc-2021', '1512.1 exception 2 (second hand)', 'found'),
    structureCheckedToo: false,
    drainsWithin: drains48h,
    overflow: { ...practiceInlet, source: 'ibc-2021', at: '1502.2', grade: 'found' },
    overflowScupper: { ...openingBothWays, source: 'ibc-2021', at: '1502.3', grade: 'found' },
    rainLoad: {
      duration: '15-min',
      text: 'Rain of 100 years and 15 minutes, or twice the hourly value of the map.',
      source: 'ibc-2021',
      at: '1611.1',
      grade: 'found',
    },
    source: 'ibc-2021',
    at: 'chapters 15 and 16',
    grade: 'found',
  },
  {
    id: 'ibc-2024',
    title: 'IBC 2024',
    slope: { kind: 'by-covering', sections: 'ibcFrom2021' },
    reRoofSlope: clause(SLOPE_TEXT, 'ibc-2024', '1512.1 exception 1', 'memory'),
    reRoofOverflow: clause(OVERFLOW_TEXT, 'ibc-2024', '1512.1 exception 2', 'memory'),
    structureCheckedToo: false,
    drainsWithin: drains48h,
    overflow: { ...practiceInlet, source: 'ibc-2024', at: '1502.2', grade: 'memory' },
    overflowScupper: { ...openingBothWays, source: 'ibc-2024', at: '1502.3', grade: 'memory' },
    rainLoad: {
      duration: '15-min',
      text: 'Aligned with ASCE 7-22: rain of 100 years and 15 minutes.',
      source: 'asce-7-22',
      at: '8.2, risk categories I and II',
      grade: 'found',
    },
    source: 'ibc-2024',
    at: 'chapters 15 and 16',
    grade: 'memory',
  },
  {
    id: 'iebc-2018',
    title: 'IEBC 2018 (existing buildings)',
    slope: { kind: 'by-covering', sections: 'ibcTo2018' },
    reRoofSlope: clause(SLOPE_TEXT, 'iebc-2018', '705.1 exception 1', 'found'),
    reRoofOverflow: clause(OVERFLOW_TEXT, 'iebc-2018', '705.1 exception 2', 'memory'),
    structureCheckedToo: true,
    drainsWithin: drains48h,
    overflow: { ...practiceInlet, source: 'ibc-2018', at: '1503.4.1', grade: 'found' },
    overflowScupper: { ...openingBothWays, source: 'ibc-2018', at: '1503.4.2', grade: 'found' },
    rainLoad: {
      duration: '60-min',
      text: 'Design rain of 100 years and 60 minutes, or local data.',
      source: 'ibc-2018',
      at: '1611.1',
      grade: 'found',
    },
    source: 'iebc-2018',
    at: '705',
    grade: 'found',
  },
  {
    id: 'bs6229-2018',
    title: 'BS 6229:2018 (design 1:40, finished 1:80)',
    slope: { kind: 'design-and-finished', designInPerFt: 0.3, finishedInPerFt: 0.15 },
    reRoofSlope: null,
    reRoofOverflow: null,
    structureCheckedToo: false,
    drainsWithin: {
      hours: 48,
      text: 'Finished falls count, after tolerances, deflection and settlement; 48 h is usual practice.',
      source: 'bs-6229-2018',
      at: 'falls, as summarised in the trade press',
      grade: 'found',
    },
    overflow: {
      inletAboveLowPointIn: 2,
      text: 'At least two points of drainage even on a very small roof. Height of the inlet: 2 in by practice.',
      source: 'bs-6229-2018',
      at: 'number of outlets, as summarised in the trade press',
      grade: 'found',
    },
    overflowScupper: { ...openingBothWays, source: 'practice', at: 'overflow scuppers', grade: 'practice' },
    rainLoad: {
      duration: '15-min',
      text: 'The standard on falls gives no rain; the 15-minute rain is used.',
      source: 'practice',
      at: 'rain behind overflows',
      grade: 'practice',
    },
    source: 'bs-6229-2018',
    at: 'falls',
    grade: 'found',
  },
] as const satisfies readonly BuildingRule[];

export interface PlumbingRule extends Cited {
  id: string;
  title: string;
  pipes: PipeGeneration;
  primaryRain: Clause;
  overflowRain: Clause & { duration: '60-min' | '15-min' };
  walls: Clause & { rule: 'half' | 'single-adjacent-opposite' };
  /** Width of an overflow scupper: by flow alone, or at least the circumference of the roof drain. */
  overflowScupper: Clause & { rule: 'by-flow' | 'circumference'; leastOpeningIn: number };
}

const hourly = 'Primary outlets carry the rain of 100 years and 60 minutes.';
const sameHourly = {
  duration: '60-min',
  text: 'Overflows carry the same hourly rain with the primary outlets blocked.',
} as const;
const half = { rule: 'half', text: 'Half of every vertical wall that sheds onto the roof is added.' } as const;
const fourInches = {
  rule: 'by-flow',
  leastOpeningIn: 4,
  text: 'An overflow scupper opens at least 4 in each way; sized by flow with the primary outlets blocked.',
} as const;
const wallsByNumber = {
  rule: 'single-adjacent-opposite',
  text: 'Half of a single wall; 35 % of two adjacent walls together; two equal opposite walls nothing.',
} as const;
const circumference = {
  rule: 'circumference',
  leastOpeningIn: 4,
  text: 'An overflow scupper is at least 4 in high and as wide as the circumference of the roof drain.',
} as const;

/**
 * Plumbing codes. Three generations of pipe tables: area tables (IPC to 2012), gpm tables (IPC from 2015), 7/24-full leaders
 * (UPC, NSPC). The 2021 UPC's own pipe table was not seen: the older one is used, marked from memory.
 * Who disagrees: one city counts a quarter of the wall; Louisiana sizes overflows by 15 minutes; the first printing of IPC 2000
 * doubled the overflow rate, withdrawn by erratum.
 */
export const plumbingRules = [
  {
    id: 'ipc-2012',
    title: 'IPC to 2012 (area tables)',
    pipes: 'ipc-area',
    primaryRain: clause(hourly, 'ipc-2012', '1106.1', 'memory'),
    overflowRain: { ...sameHourly, source: 'ipc-2012', at: '1108.3', grade: 'memory' },
    walls: { ...half, source: 'ipc-2012', at: '1106.4', grade: 'found' },
    overflowScupper: { ...fourInches, source: 'ipc-2012', at: '1108.3', grade: 'memory' },
    source: 'ipc-2012',
    at: 'chapter 11',
    grade: 'found',
  },
  {
    id: 'ipc-2015',
    title: 'IPC 2015',
    pipes: 'ipc-gpm',
    primaryRain: clause(hourly, 'ipc-2015', '1106.1', 'found'),
    overflowRain: { ...sameHourly, source: 'ipc-2015', at: '1108.3', grade: 'found' },
    walls: { ...half, source: 'ipc-2015', at: '1106.4', grade: 'found' },
    overflowScupper: { ...fourInches, source: 'ipc-2015', at: '1108.3', grade: 'found' },
    source: 'ipc-2015',
    at: 'chapter 11',
    grade: 'found',
  },
  {
    id: 'ipc-2018',
    title: 'IPC 2018',
    pipes: 'ipc-gpm',
    primaryRain: clause(hourly, 'ipc-2018', '1106.1', 'found'),
    overflowRain: { ...sameHourly, source: 'ipc-2018', at: '1108.3', grade: 'memory' },
    walls: { ...half, source: 'ipc-2018', at: '1106.4', grade: 'found' },
    overflowScupper: { ...fourInches, source: 'ipc-2018', at: '1108.3', grade: 'found' },
    source: 'ipc-2018',
    at: 'chapter 11',
    grade: 'found',
  },
  {
    id: 'ipc-2021',
    title: 'IPC 2021',
    pipes: 'ipc-gpm',
    primaryRain: clause(hourly, 'ipc-2021', '1106.1', 'memory'),
    overflowRain: { ...sameHourly, source: 'ipc-2021', at: '1108.3', grade: 'memory' },
    walls: { ...half, source: 'ipc-2021', at: '1106.4', grade: 'memory' },
    overflowScupper: { ...fourInches, source: 'ipc-2021', at: '1108.3', grade: 'memory' },
    source: 'ipc-2021',
    at: 'chapter 11',
    grade: 'found',
  },
  {
    id: 'upc-2000',
    title: 'UPC to 2018 (leaders 7/24 full)',
    pipes: 'seven-twenty-fourths',
    primaryRain: clause(hourly, 'upc-app-d', 'Table D-1', 'found'),
    overflowRain: { ...sameHourly, source: 'upc-app-d', at: 'Appendix D', grade: 'memory' },
    walls: { ...wallsByNumber, source: 'upc-2021', at: '1103.4', grade: 'found' },
    overflowScupper: { ...circumference, source: 'cpc-2010', at: '1101.11.2.1', grade: 'found' },
    source: 'upc-2000',
    at: 'storm drainage tables',
    grade: 'found',
  },
  {
    id: 'upc-2021',
    title: 'UPC 2021 (leaders 7/24 full)',
    pipes: 'seven-twenty-fourths',
    primaryRain: clause(hourly, 'upc-app-d', 'Table D-1', 'memory'),
    overflowRain: { ...sameHourly, source: 'upc-app-d', at: 'Appendix D', grade: 'memory' },
    walls: { ...wallsByNumber, source: 'upc-2021', at: '1103.4', grade: 'found' },
    overflowScupper: { ...circumference, source: 'cpc-2010', at: '1101.11.2.1', grade: 'found' },
    source: 'upc-2021',
    at: '1101 to 1103',
    grade: 'found',
  },
] as const satisfies readonly PlumbingRule[];

/** Used where the roof file names none. */
export const defaultRuleIds = { building: 'irc-2021', plumbing: 'ipc-2021' } as const;

export interface RecoverBar extends Cited {
  /** Recovering is refused from this many layers on. */
  layers: number;
  coverings: readonly string[];
}

/**
 * No recover over a soaked or rotted base, over slate, clay, cement or asbestos-cement tile, or over two or more applications.
 * IBC 1510.3 to 2012, 1511.3.1.1 in 2015 and 2018, 1512.2.1.1 from 2021, IRC R908.3.1.1. Some places replace all when over 25 % is wet.
 */
export const recoverBar = {
  layers: 2,
  coverings: ['slate', 'clay', 'cement-tile', 'asbestos-cement-tile'],
  source: 'recover-article',
  at: '1510.3',
  grade: 'found',
} as const satisfies RecoverBar;
