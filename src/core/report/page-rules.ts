import { area, plainNumber, rain } from '../../units/print.ts';
import { counted, gpm, NOT_KNOWN, orNotKnown, slopeFigure } from './page-figures.ts';
import type { BuildingStanding, PlumbingStanding, RuleComparison, RuleStanding, SourceNote, Verdict } from './types.ts';
import { listed } from './words.ts';

const verdictWords: Record<Verdict, string> = {
  'meets-minimum': 'meets it',
  'drains-below-minimum': 'drains, under the least slope',
  ponds: 'ponds',
  undecided: 'undecided',
};

/** The section in print, with its mark where it was not read. */
const cited = ({ text, grade }: SourceNote): string => (grade === 'memory' ? `${text} (from memory, verify)` : text);

const stageWords: Record<RuleStanding['stage'], string> = { new: '', design: ' design', finished: ' finished' };

/** "0.05 in/ft short", "0.05 in/ft more than asked", with its word where the printed percentage lets it pass. */
function marginWords(marginInPerFt: number | null, passes: boolean | null): string {
  if (marginInPerFt === null) return NOT_KNOWN;
  if (Math.abs(marginInPerFt) < 5e-4) return 'met, nothing over';
  const figure = `${plainNumber(Math.abs(marginInPerFt), 3)} in/ft`;
  if (marginInPerFt > 0) return `met, ${figure} over`;
  return passes === true ? `${figure} under, but the printed percentage` : `${figure} short`;
}

export interface BuildingRow {
  id: string;
  code: string;
  own: boolean;
  /** One line to a stage: design and finished stand apart where the code has both. */
  slopes: readonly { least: string; today: string; planned: string }[];
  slopeAt: string;
  verdict: string;
  why: string;
  exception: string;
  exceptionWhy: string;
  exceptionAt: string;
  overflow: string;
  overflowNote: string;
  overflowAt: string;
  rain: string;
  rainAt: string;
  scupper: string;
  needs: string;
  scupperAt: string;
}

/** What an overflow takes here; where none is asked for, only if somebody makes one. */
const needsWords = (needs: string, required: boolean): string =>
  required ? needs : `none asked for; if made: ${needs}`;

const buildingRow = (row: BuildingStanding): BuildingRow => ({
  id: row.id,
  code: row.title,
  own: row.own,
  slopes: row.slopes.map((slope) => ({
    least: `${slopeFigure(slope.limitInPerFt)}${stageWords[slope.stage]}`,
    today: marginWords(slope.todayMarginInPerFt, slope.todayPasses),
    planned: marginWords(slope.plannedMarginInPerFt, slope.plannedPasses),
  })),
  slopeAt: cited(row.slopeSource),
  verdict: verdictWords[row.verdict],
  why: row.why,
  exception: row.slopeException.applies ? 'may keep its slope' : 'no',
  exceptionWhy: row.slopeException.why,
  exceptionAt: row.slopeException.source === null ? '' : cited(row.slopeException.source),
  overflow: row.overflow.required ? 'required' : 'not required',
  overflowNote: row.overflow.note,
  overflowAt: cited(row.overflow.source),
  rain: `${rain(row.rain.overflowInPerHr)}: ${row.rain.basis}`,
  rainAt: cited(row.rain.source),
  scupper: row.scupper.text,
  needs: needsWords(row.scupper.needs, row.overflow.required),
  scupperAt: cited(row.scupper.source),
});

export const buildingRows = ({ buildings }: RuleComparison): BuildingRow[] => buildings.map(buildingRow);

export interface PlumbingRow {
  id: string;
  code: string;
  own: boolean;
  pipes: string;
  codeAt: string;
  mainRain: string;
  mainRainAt: string;
  overflowRain: string;
  overflowRainAt: string;
  walls: string;
  wallsText: string;
  wallsAt: string;
  flow: string;
  outlets: string;
  scupper: string;
  needs: string;
  scupperAt: string;
}

function outletWords({ carrying, short, notKnown }: PlumbingStanding): string {
  if (carrying + short + notKnown === 0) return 'no way out is known';
  const parts = [
    carrying === 0 ? '' : `${plainNumber(carrying)} carry it`,
    short === 0 ? '' : `${plainNumber(short)} too small`,
    notKnown === 0 ? '' : `${counted(notKnown, 'size')} not known`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}

const plumbingRow = (row: PlumbingStanding, required: boolean): PlumbingRow => ({
  id: row.id,
  code: row.title,
  own: row.own,
  pipes: row.pipes,
  codeAt: cited(row.source),
  mainRain: rain(row.primaryRain.inPerHr),
  mainRainAt: cited(row.primaryRain.source),
  overflowRain: rain(row.overflowRain.inPerHr),
  overflowRainAt: cited(row.overflowRain.source),
  walls: row.walls.addedSqFt < 0.5 ? 'none' : area(row.walls.addedSqFt),
  wallsText: row.walls.text,
  wallsAt: cited(row.walls.source),
  flow: gpm(row.flowGpm),
  outlets: outletWords(row),
  scupper: row.scupper.text,
  needs: needsWords(row.scupper.needs, required),
  scupperAt: cited(row.scupper.source),
});

/** Whether an overflow is asked for is the building code's word: that of the job. */
export function plumbingRows({ buildings, plumbings }: RuleComparison): PlumbingRow[] {
  const required = buildings.find(({ own }) => own)?.overflow.required ?? true;
  return plumbings.map((row) => plumbingRow(row, required));
}

/** What the codes agree and differ on, in sentences. */
export function comparisonWords(comparison: RuleComparison): string[] {
  const { buildings, todayInPerFt, plannedInPerFt, scupperReadings: widths } = comparison;
  const verdicts = [...new Set(buildings.map(({ verdict }) => verdictWords[verdict]))];
  const met = buildings.filter(({ slopes }) => slopes.every(({ todayPasses }) => todayPasses === true)).length;
  const planned = buildings.filter(({ slopes }) => slopes.every(({ plannedPasses }) => plannedPasses === true)).length;
  const all = plainNumber(buildings.length);
  const required = buildings.filter(({ overflow }) => overflow.required).length;
  return [
    verdicts.length === 1
      ? `All ${all} building codes say the same of the roof as it is: “${verdicts[0]}”.`
      : `The codes differ on the roof as it is: ${listed(verdicts.map((each) => `“${each}”`))}.`,
    `Its flattest plane falls ${orNotKnown(todayInPerFt, (s) => (s < 5e-3 ? 'nowhere' : slopeFigure(s)))}: ${met === 0 ? 'none' : plainNumber(met)} of ${all} would take that for a new roof.`,
    ...(plannedInPerFt === null
      ? []
      : [`The new roof falls ${slopeFigure(plannedInPerFt)}: ${plainNumber(planned)} of ${all} take that.`]),
    required === 0
      ? 'None of them asks for an overflow here.'
      : `${plainNumber(required)} of ${all} ask${required === 1 ? 's' : ''} for an overflow.`,
    ...(widths === null
      ? []
      : [
          `“Three times the size” of the ${plainNumber(widths.drainSizeIn, 1)}-in drain, at ${plainNumber(widths.heightIn)} in high: ${plainNumber(widths.threeAreasIn, 1)} in wide by area, ${plainNumber(widths.threeDiametersIn, 1)} in by diameter; inspectors differ, the wider is taken. By circumference: ${plainNumber(widths.circumferenceIn, 1)} in.`,
        ]),
  ];
}
