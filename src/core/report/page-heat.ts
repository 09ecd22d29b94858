import { decimalInches, plainNumber, rValue } from '../../units/print.ts';
import type { HeatOfRoof, HeatReport, HeatSplit } from './types.ts';

/** Heat of a roof in figures and sentences; whole degrees and no false digits. */

export const degreesF = (f: number): string => `${plainNumber(Math.round(f))} °F`;

/** Btu in a day, whole; per hour to a tenth. */
const wholeBtu = (btu: number): string => plainNumber(Math.round(btu));

const roundedTo = (value: number, step: number): string => plainNumber(Math.round(value / step) * step);

/** "12:30 pm". */
export function clock(hour: number): string {
  const minutes = Math.round((hour % 24) * 60) % 1440;
  const [h, m] = [Math.floor(minutes / 60), minutes % 60];
  return `${h % 12 === 0 ? 12 : h % 12}:${String(m).padStart(2, '0')} ${h < 12 ? 'am' : 'pm'}`;
}

const span = ([least, most]: readonly [number, number]): string =>
  `${plainNumber(Math.round(least))} to ${degreesF(most)}`;

/** Where the heat goes that comes through the roof. */
export const heatedPlace = ({ roomF, attic }: HeatReport['day']): string =>
  attic ? 'the rooms under the attic' : roomF === null ? 'the space below' : 'the room';

const NO_VENTS =
  ' The attic is taken as a still air space between roof and rooms: how much its vents carry away was not computed.';

/** What both roofs come to, first. */
export function heatSentence({ old, new: next, windRangeF, day }: HeatReport): string {
  const room = heatedPlace(day);
  const vents = day.attic ? NO_VENTS : '';
  const was = `the old roof reaches about ${degreesF(old.peakSurfaceF)} (${span(windRangeF.old)} by the wind)`;
  if (next === null || windRangeF.new === null)
    return `On a hot clear day ${was}, and ${wholeBtu(old.dayBtuPerSqFt)} Btu per sq ft come into ${room}. There is no new roof to set beside it yet.${vents}`;
  const is = `the new one ${degreesF(next.peakSurfaceF)} (${span(windRangeF.new)})`;
  return `On a hot clear day ${was}, ${is}. Heat into ${room} in that day: ${wholeBtu(old.dayBtuPerSqFt)} Btu per sq ft through the old roof, ${wholeBtu(next.dayBtuPerSqFt)} through the new one.${vents}`;
}

/** What the day is. */
export function heatDaySentence({ day }: HeatReport): string {
  const room =
    day.roomF === null ? 'the space below as warm as the air outside' : `the room held at ${degreesF(day.roomF)}`;
  const sky = day.sky === 'depths' ? '' : ' by the height of the sun alone, up to 6 % high in damp air';
  return `Taken: ${day.date}, clear sky${sky}, weather of ${day.town}${day.standsIn ? ', assumed, as the place is not in the table' : ''} (${plainNumber(day.hotF)} °F is passed in 1 % of the hours), ${room}, medium wind, surfaces as aged. Hours are standard time: on summer time the clock shows one more.`;
}

const percent = (share: number): string => `${plainNumber(Math.round(100 * share))} %`;

function shareWords(insulationShare: number, colorShare: number): string {
  if (colorShare < 0) return 'all of it is insulation: the new color takes in more sun than the old one';
  if (insulationShare < 0) return 'all of it is color: the new roof insulates less than the old one';
  return `${percent(insulationShare)} is insulation and ${percent(colorShare)} is color`;
}

/** How much is insulation and how much color, with what the two have in common. */
export function splitSentence(split: HeatSplit): string {
  const { savedBtu, insulationAloneBtu, colorAloneBtu, insulationShare, colorShare } = split;
  if (insulationShare === null || colorShare === null)
    return savedBtu < 0
      ? `The new roof lets in ${wholeBtu(-savedBtu)} Btu per sq ft more in that day than the old one.`
      : 'The new roof keeps out next to nothing more than the old one in that day.';
  const alone = `insulation alone would keep out ${wholeBtu(insulationAloneBtu)}, color alone ${wholeBtu(colorAloneBtu)}`;
  const overlap =
    split.overlapBtu > 0.5
      ? ` That is ${wholeBtu(split.overlapBtu)} more than both together, because each leaves less for the other; the shares are the mean of both orders.`
      : '';
  return `Of the ${wholeBtu(savedBtu)} Btu per sq ft kept out in that day, ${shareWords(insulationShare, colorShare)}: ${alone}.${overlap}`;
}

/** Losses and gains in the cold. */
export function winterSentence({ winter, day }: HeatReport): string | null {
  if (winter === null) return null;
  const { colorPenaltyBtuPerSqFt: penalty, insulationSavesBtuPerSqFtYear: saves } = winter;
  const amount = wholeBtu(Math.abs(penalty));
  const color =
    Math.abs(penalty) < 0.5
      ? 'In winter the new color makes no difference worth a number.'
      : penalty > 0
        ? `In winter the new color costs: on a clear January day without snow ${amount} Btu per sq ft more leave the room than under the old color; clouds and snow make it less.`
        : `In winter the new color helps: on a clear January day without snow ${amount} Btu per sq ft less leave the room than under the old color; clouds and snow make it less.`;
  const insulation =
    saves >= 0
      ? `its insulation saves about ${roundedTo(saves, 100)} Btu per sq ft`
      : `its thinner insulation costs about ${roundedTo(-saves, 100)} Btu per sq ft`;
  return `${color} Over a winter of ${plainNumber(winter.degreeDays)} degree-days (base 65 °F, sun not counted${day.standsIn ? `; assumed, those of ${day.town}` : ''}) ${insulation}.`;
}

export interface HeatRow {
  id: string;
  name: string;
  /** Foam and R of all layers. */
  made: string;
  surface: string;
  surfaceAt: string;
  peak: string;
  peakAt: string;
  day: string;
  /** Empty for a part of the taper. */
  section: string;
}

const rowOf = (roof: HeatOfRoof): HeatRow => ({
  id: roof.id,
  name: roof.title,
  made: `${roof.foamIn === null ? '' : `${decimalInches(roof.foamIn, 1)} of foam, `}${rValue(roof.layersR)}`,
  surface: degreesF(roof.peakSurfaceF),
  surfaceAt: clock(roof.peakSurfaceAtH),
  peak: plainNumber(roof.peakBtuPerHrSqFt, 1),
  peakAt: clock(roof.peakHeatAtH),
  day: wholeBtu(roof.dayBtuPerSqFt),
  section: roof.id.startsWith('new-') ? '' : roundedTo(roof.dayBtu, 100),
});

/** What stands for a roof whose thickness changes. */
export const EVEN_SENTENCE =
  'The new roof as a whole is taken at the even thickness that lets through as much as the taper does; that is less than its mean.';

/** Old roof, new roof as a whole, and the new roof where it is thin, mean and thick. */
export const heatRows = ({ old, new: next, taper }: HeatReport): HeatRow[] =>
  [old, ...(next === null ? [] : [next]), ...taper].map(rowOf);

export interface HeatOptionRow {
  id: string;
  name: string;
  ruledOut: boolean;
  reflects: string;
  sri: string;
  surface: string;
  day: string;
}

/** The new roof under every membrane, coolest first. */
export const heatOptionRows = ({ options }: HeatReport): HeatOptionRow[] =>
  [...options]
    .sort((a, b) => a.dayBtuPerSqFt - b.dayBtuPerSqFt)
    .map((roof) => ({
      id: roof.id,
      name: roof.title,
      ruledOut: roof.vetoed,
      reflects: percent(roof.reflectance),
      sri: plainNumber(Math.round(roof.sri)),
      surface: degreesF(roof.peakSurfaceF),
      day: wholeBtu(roof.dayBtuPerSqFt),
    }));

/** The option of the other color, where there is one. */
export const otherColorRoof = ({ options, otherColor }: HeatReport): HeatOfRoof | null =>
  options.find(({ id }) => id === otherColor) ?? null;
