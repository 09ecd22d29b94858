import { membraneMass } from '../../../reference/membranes/stock.ts';
import { builtUp, type LiquidCoat, liquidCoats } from '../../../reference/takeoff/adhesives.ts';
import { area, plainNumber } from '../../units/print.ts';
import type { MaterialLine } from '../report/types.ts';
import type { Job } from './job.ts';
import { lineOf, whole } from './line.ts';
import type { Strip } from './strips.ts';

/** Wet film of one gallon on one square, mil. 231 cu in per gallon over 14,400 sq in; arithmetic. */
export const WET_MIL_PER_GAL_PER_SQ = (231 / 14400) * 1000;

/** Film left by so many gallons on a square, mil dry. */
export const dryMil = (galPerSq: number, solids: number): number => galPerSq * WET_MIL_PER_GAL_PER_SQ * solids;

/** Gallons for a square that leave this film. */
export const galPerSq = (mil: number, solids: number): number => mil / (WET_MIL_PER_GAL_PER_SQ * solids);

const coats: readonly LiquidCoat[] = liquidCoats;
const PAIL_GAL = 5;

const stripSqFt = (strips: readonly Strip[]): number =>
  strips.reduce((sum, { lengthFt, widthIn }) => sum + (lengthFt * widthIn) / 12, 0);

/** Resin or coating by film thickness, and the fleece it soaks. */
export function liquidLines(job: Job, strips: readonly Strip[]): MaterialLine[] {
  const coat = coats.find(({ membrane }) => membrane === job.membrane?.id);
  if (coat === undefined || job.membrane === null) return [];
  const flashing = stripSqFt(strips);
  const areaSqFt = job.areaSqFt + flashing;
  const rate = galPerSq(coat.dryMil, coat.solids);
  const gallons = (rate * areaSqFt) / 100;
  const mass = membraneMass.find(({ membrane }) => membrane === coat.membrane);
  const span = mass === undefined ? '' : ` (range ${mass.thicknessMil[0]} to ${mass.thicknessMil[1]} mil)`;
  const lines = [
    lineOf({
      id: 'membrane-liquid',
      group: 'Membrane',
      item: `${job.membrane.name}, all coats`,
      quantity: gallons,
      unit: 'gal',
      order: whole(gallons / PAIL_GAL),
      orderUnit: '5 gal pails',
      basis: `${area(job.areaSqFt)} of roof + ${area(flashing)} of flashing; ${coat.dryMil} mil dry${span} / (16.04 x ${coat.solids} solids) = ${plainNumber(rate, 2)} gal per square`,
      row: coat,
    }),
  ];
  if (coat.fleeceLaps !== null)
    lines.push(
      lineOf({
        id: 'membrane-fleece',
        group: 'Membrane',
        item: 'Fleece for the liquid membrane',
        quantity: areaSqFt,
        unit: 'sq ft',
        order: whole((areaSqFt * (1 + coat.fleeceLaps)) / 10) * 10,
        orderUnit: 'sq ft, in whole rolls of the maker',
        basis: `${area(areaSqFt)} with flashings, + ${plainNumber(coat.fleeceLaps * 100)} % for laps of 2 to 4 in`,
        row: coat,
      }),
    );
  return lines;
}

/** Felts, asphalt and gravel of a built-up roof. */
export function builtUpLines(job: Job, strips: readonly Strip[]): MaterialLine[] {
  if (job.membrane?.id !== 'bur-hot') return [];
  const { plies, feltWidthIn, feltLapIn, feltRollFt } = builtUp;
  const areaSqFt = job.areaSqFt;
  const flashing = stripSqFt(strips);
  const exposureIn = (feltWidthIn - feltLapIn) / plies;
  const feltFt = (areaSqFt + flashing) / (exposureIn / 12);
  const squares = areaSqFt / 100;
  const asphalt = squares * (plies * builtUp.asphaltLbPerSqPly + builtUp.floodLbPerSq);
  const gravel = squares * builtUp.gravelLbPerSq;
  const draft = { group: 'Membrane', row: builtUp } as const;
  return [
    lineOf({
      ...draft,
      id: 'membrane-felt',
      item: `Felt, ${plies} plies shingled`,
      quantity: feltFt,
      unit: 'ft',
      order: whole(feltFt / feltRollFt),
      orderUnit: `rolls ${feltWidthIn} in x ${feltRollFt} ft`,
      basis: `(${area(areaSqFt)} + ${area(flashing)} of flashing) / exposure (${feltWidthIn} - ${feltLapIn}) / ${plies} = ${exposureIn} in`,
    }),
    lineOf({
      ...draft,
      id: 'membrane-asphalt',
      item: 'Roofing asphalt',
      quantity: asphalt,
      unit: 'lb',
      order: whole(asphalt / builtUp.kegLb),
      orderUnit: '100 lb kegs',
      basis: `${plainNumber(squares, 1)} squares x (${plies} plies x ${builtUp.asphaltLbPerSqPly} + flood coat ${builtUp.floodLbPerSq}) lb`,
    }),
    lineOf({
      ...draft,
      id: 'membrane-gravel',
      item: 'Roofing gravel',
      quantity: gravel,
      unit: 'lb',
      order: whole(gravel / 2000),
      orderUnit: 'tons',
      basis: `${plainNumber(squares, 1)} squares x ${builtUp.gravelLbPerSq} lb`,
    }),
  ];
}
