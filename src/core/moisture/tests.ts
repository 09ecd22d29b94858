import {
  condensingPlane,
  foamRetarder,
  leastFoamShare,
  unventedRule,
  wetAlarm,
  wetGrowth,
} from '../../../reference/vapor.ts';
import { plainNumber, rValue } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { MoistureTest } from '../report/types.ts';
import { NOTHING_G, type Water, type YearBalance, yearHolds, yearsToAlarm } from './balance.ts';
import type { BuildUp } from './build-up.ts';
import { deckPlaneF, rAboveFor, shareAbove, tableFoam } from './condensing-plane.ts';
import { foamPerm, isFoam } from './layers.ts';
import { ROOM_F, type Room } from './room.ts';
import type { Winter } from './winter.ts';

export interface TestInput {
  built: BuildUp;
  winter: Winter | null;
  climateZone: string | null;
  room: Room | null;
  balance: YearBalance | null;
}

const percent = (share: number): string => `${plainNumber(100 * share)} %`;
const degrees = (f: number): string => `${plainNumber(f, 1)} F`;

const foamed = ({ below }: BuildUp): boolean => isFoam(below.kind);

type Judged = Pick<MoistureTest, 'state' | 'asked' | 'found' | 'note'>;

const notAsked = (note: string): Judged => ({ state: 'not-asked', asked: 'nothing', found: '', note });
const notKnown = (note: string): Judged => ({ state: 'not-known', asked: 'not known', found: 'not known', note });

/** "Underside of the deck in winter: 45 F asked for, 31.4 F there." */
export const sentenceOf = ({ title, asked, found }: Pick<MoistureTest, 'title' | 'asked' | 'found'>): string =>
  `${title}: ${asked} asked for, ${found} there.`;

/** "288 g per sq m, dry again in summer", "7 g per sq m, 5 left after two years: 200 in about 73 years". */
export function waterWords(water: Water): string {
  const { peakGPerM2, leftGPerM2 } = water;
  const most = `${plainNumber(peakGPerM2)} g per sq m`;
  if (leftGPerM2 <= NOTHING_G) return `${most}, dry again in summer`;
  const when =
    peakGPerM2 > wetAlarm.gPerM2
      ? ''
      : `: ${wetAlarm.gPerM2} in about ${plainNumber(Math.floor(yearsToAlarm(water)))} years`;
  return `${most}, ${plainNumber(leftGPerM2)} left after two years${when}`;
}

const FOAMED = 'The foam lies against the deck: no air from the room reaches it.';

function shareTest({ built, winter }: TestInput): Judged {
  const { above, below } = built;
  if (foamed(built)) return notAsked(FOAMED);
  if (below.r === 0) return notAsked('Nothing lies below the deck: all insulation is above it.');
  if (winter === null) return notKnown('The winter of the place is not known.');
  if (below.r === null) return notKnown('What lies below the deck is not known.');
  const asked = shareAbove(winter.coldF);
  const found = above.winterR === 0 ? 0 : above.winterR / (above.winterR + below.r);
  return {
    state: found >= asked - 1e-9 ? 'holds' : 'fails',
    asked: percent(asked),
    found: percent(found),
    note: `${rValue(above.winterR)} above the deck in winter, ${rValue(below.r)} below it; ${condensingPlane.leastF} F at the deck with ${plainNumber(winter.coldF, 1)} F outside, the mean of the three coldest months (${winter.place}).`,
  };
}

function tableTest({ built, climateZone }: TestInput): Judged {
  const { above, below } = built;
  if (foamed(built)) return notAsked(FOAMED);
  if (below.kind === 'none') return notAsked('The table is for insulation that air passes through, below the deck.');
  const row = tableFoam(climateZone);
  if (row === null) return notKnown('The climate zone is not known.');
  if (below.kind === null) return { ...notKnown('What lies below the deck is not known.'), asked: rValue(row.value) };
  return {
    state: above.labelR >= row.value - 1e-9 ? 'holds' : 'fails',
    asked: rValue(row.value),
    found: rValue(above.labelR),
    note: `For roofs without vents. By label, at the thinnest place, without the cover board${built.kept === null ? '' : ' and the old boards'}; zone ${climateZone}.`,
  };
}

/** Whether the foam is the retarder that the code asks it to be in cold zones. */
function foamTest({ built, climateZone }: TestInput): Judged {
  if (climateZone === null) return notKnown('The climate zone is not known.');
  if (!foamRetarder.zones.some((zone) => climateZone.startsWith(zone))) return notAsked('Asked in zones 5 to 8 only.');
  const perm = foamPerm(built.layers);
  return {
    state: perm <= foamRetarder.mostPerm + 1e-9 ? 'holds' : 'fails',
    asked: `${foamRetarder.mostPerm} perm at most (class II)`,
    found: `${plainNumber(perm, 2)} perm`,
    note: 'The foam itself, with what it is coated with on its room side.',
  };
}

/** Underside of the deck in the mean of the three coldest months, F; null where it is not known or foam covers it. */
export function deckF({ built, winter }: TestInput): number | null {
  const { above, below } = built;
  if (winter === null || below.r === null || foamed(built)) return null;
  return deckPlaneF({
    aboveR: above.winterR,
    belowR: below.r,
    outdoorF: winter.coldF,
    indoorF: condensingPlane.roomF,
  });
}

function deckTest(input: TestInput): Judged {
  if (foamed(input.built)) return notAsked(FOAMED);
  const { room, winter } = input;
  const found = deckF(input);
  if (found === null || room === null || winter === null) return notKnown('Place or insulation below is not known.');
  const leastF = Math.max(condensingPlane.leastF, room.dewPointF);
  return {
    state: found >= leastF - 1e-9 ? 'holds' : 'fails',
    asked: degrees(leastF),
    found: degrees(found),
    note: `There: with ${condensingPlane.roomF} F in the room and ${degrees(winter.coldF)} outside, the mean of the three coldest months. Asked: ${condensingPlane.leastF} F by the method of the code, or where room air of ${ROOM_F} F and ${plainNumber(room.humidityPct)} % humidity turns to water (${degrees(room.dewPointF)}), whichever is more.`,
  };
}

function balanceTest({ balance }: TestInput): Judged {
  if (balance === null) return notKnown('Place or insulation below is not known.');
  return {
    state: yearHolds(balance) ? 'holds' : 'fails',
    asked: `${wetAlarm.gPerM2} g per sq m at most within ${wetGrowth.years} years`,
    found: waterWords(balance),
    note: 'What passes through the layers month by month, with no sun on the roof and no air through gaps: gaps carry more.',
  };
}

const drafts = [
  {
    id: 'share-above',
    title: 'Share of the insulation above the deck',
    row: condensingPlane,
    judge: shareTest,
    byCode: false,
  },
  {
    id: 'table-foam',
    title: 'Board above the deck, by the table of the code',
    row: unventedRule,
    judge: tableTest,
    byCode: true,
  },
  {
    id: 'foam-class',
    title: 'The foam as a vapor retarder, by the code',
    row: foamRetarder,
    judge: foamTest,
    byCode: true,
  },
  { id: 'deck-plane', title: 'Underside of the deck in winter', row: condensingPlane, judge: deckTest, byCode: false },
  {
    id: 'year-balance',
    title: 'Wetting in winter, drying in summer',
    row: wetAlarm,
    judge: balanceTest,
    byCode: false,
  },
] as const;

/** The tests of one roof, the deciding ones first. */
export const moistureTests = (input: TestInput): MoistureTest[] =>
  drafts
    .filter(({ id }) => id !== 'foam-class' || foamed(input.built))
    .map(({ judge, row, ...rest }) => ({ ...rest, ...judge(input), source: sourceNote(row) }));

/** Zones 1 to 3: at least a tenth of all R is foam, whatever the share says. */
const shareFloor = (climateZone: string | null): number =>
  climateZone !== null && /^[123]/.test(climateZone) ? leastFoamShare.share : 0;

/**
 * Least R above the deck over an R of batts by the code alone: table, share of the place and least share, whichever is most;
 * films are not counted, and what the year asks for may be more.
 */
export function leastAbove(winter: Winter | null, climateZone: string | null, belowR: number): number | null {
  if (belowR === 0) return 0;
  const row = tableFoam(climateZone);
  if (row === null || winter === null) return row?.value ?? null;
  const floor = shareFloor(climateZone);
  return Math.max(row.value, rAboveFor(winter.coldF, belowR), (belowR * floor) / (1 - floor));
}
