import { indoorClasses } from '../../../reference/vapor.ts';
import { plainNumber } from '../../units/print.ts';
import { cOfF, fOfC } from '../heat/degrees.ts';
import type { Assumption } from '../report/types.ts';
import { monthPressures } from './balance.ts';
import { dewPointOf, saturationPa } from './psychrometrics.ts';
import { excessShare, type Winter } from './winter.ts';

/** Air of the rooms that their humidity is told at, F. */
export const ROOM_F = 70;

const [, ordinary] = indoorClasses;

export interface Room {
  /** At `ROOM_F`. */
  humidityPct: number;
  given: boolean;
  dewPointF: number;
  /** Vapor pressure indoors over outdoors in frost, Pa. */
  excessPa: number;
}

/** Damp of the rooms in January: as given, else that of ordinary dwellings. @param givenPct at `ROOM_F` */
export function roomOf(winter: Winter, givenPct: number | null): Room {
  const january = monthPressures(winter, 0, 0);
  const saturated = saturationPa(cOfF(ROOM_F));
  const share = Math.max(0.2, excessShare(january.outsideC));
  const excessPa =
    givenPct === null ? ordinary.excessPa : Math.max(0, ((givenPct / 100) * saturated - january.outsidePa) / share);
  const insidePa = monthPressures(winter, 0, excessPa).insidePa;
  return {
    humidityPct: (100 * insidePa) / saturated,
    given: givenPct !== null,
    dewPointF: fOfC(dewPointOf(insidePa)),
    excessPa,
  };
}

export function roomAssumed(room: Room | null, winter: Winter | null): Assumption[] {
  if (room === null || winter === null || room.given) return [];
  return [
    {
      path: 'building.winterHumidityPct',
      value: `${plainNumber(room.humidityPct)} %`,
      because: `rooms of an ordinary dwelling in January with the outdoor air of ${winter.place}`,
      findOut: 'hang up a humidity meter for a week in January',
    },
  ];
}
