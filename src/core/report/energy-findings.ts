import { replacementRule, reRoofRelief, smallCeiling } from '../../../reference/energy.ts';
import { shingleRunUp } from '../../../reference/flashing.ts';
import { inches, rValue } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { energyFigure } from './page-thermal.ts';
import { finding } from './part-finding.ts';
import type { EnergyCheck, Finding, Layout, NewHeights, ThermalReport } from './types.ts';

const ids: Record<EnergyCheck['id'], string> = {
  'one-inch-rule': 'insulation-below-target',
  'average-u': 'insulation-below-target',
  'low-point-thickness': 'insulation-thin-at-low-point',
  'thin-end-foam': 'thin-end-condensation',
};

const asksAndHas = ({ asked, found, unit }: EnergyCheck): string =>
  `${energyFigure(asked, unit)} asked for, ${energyFigure(found, unit)} there`;

/** Who asks: the job's own target or the code. Rules of thickness and foam are the code's alone. */
function askedBy({ id }: EnergyCheck, { target }: ThermalReport): string {
  if (target === null || ids[id] !== 'insulation-below-target') return '';
  return target.own
    ? ` (${rValue(target.r)}, the target set for this job; what lies under the deck is not counted)`
    : ` (${rValue(target.r)} of the code, ${target.title}; what lies under the deck is not counted)`;
}

function takes({ baseIn, baseFits }: EnergyCheck): string {
  if (baseIn === null) return 'No flat layer under 16 in would do it.';
  const layer = `A flat layer of ${inches(baseIn)} under the taper would do it`;
  return baseFits === false
    ? `${layer}, but the heights do not bear it.`
    : `${layer}; it is not added unless you ask for it.`;
}

/** What a re-roof may ask for where the heights stop the insulation. */
function relief(check: EnergyCheck, where: string): Finding {
  return finding({
    id: 'insulation-relief',
    level: 'note',
    where,
    message: `Where low doors, parapets, equipment or flashing heights limit the thickness, a building office may let a re-roof have the most that fits, never less R than is there now: ask for it in writing before the order. Whether a re-roof must reach the table at all is the office's to say (${sourceNote(replacementRule).text}).`,
    value: energyFigure(check.found, check.unit),
    limit: energyFigure(check.asked, check.unit),
    source: sourceNote(reRoofRelief),
  });
}

function smallSection(areaSqFt: number, target: number): Finding[] {
  if (areaSqFt > smallCeiling.areaSqFt || target <= smallCeiling.r) return [];
  return [
    finding({
      id: 'small-ceiling',
      level: 'note',
      where: 'the section',
      message: `A ceiling without an attic may drop to ${rValue(smallCeiling.r)} over at most ${smallCeiling.areaSqFt} sq ft or ${smallCeiling.share * 100} % of all ceilings, whichever is less: ask the building office whether it holds here.`,
      limit: `${smallCeiling.areaSqFt} sq ft`,
      source: sourceNote(smallCeiling),
    }),
  ];
}

/**
 * What the energy code makes of a layout: rules in force that it does not meet, relief, and where the readings disagree.
 * @param areaSqFt of the section
 */
export function energyFindings(layout: Layout, areaSqFt: number, commercial: boolean): Finding[] {
  const { thermal } = layout;
  if (thermal === undefined) return [];
  const short = thermal.checks.filter(({ inForce, passes }) => inForce && !passes);
  const stopped = short.find(({ baseFits, baseIn }) => baseFits === false || baseIn === null);
  return [
    ...short.map((check) =>
      finding({
        id: ids[check.id],
        level: check.id === 'thin-end-foam' ? 'fix' : 'note',
        where: 'the insulation',
        message:
          `${check.title}: ${asksAndHas(check)}${askedBy(check, thermal)}. ${takes(check)} ${check.id === 'thin-end-foam' ? `${check.note} This is the table of the code alone; the winter of the place may ask for more: see damp inside the roof.` : ''}`.trim(),
        value: energyFigure(check.found, check.unit),
        limit: energyFigure(check.asked, check.unit),
        source: check.source,
      }),
    ),
    ...(stopped === undefined ? [] : [relief(stopped, 'the insulation')]),
    ...(short.some(({ id }) => ids[id] === 'insulation-below-target') &&
    !commercial &&
    thermal.target !== null &&
    !thermal.target.own
      ? smallSection(areaSqFt, thermal.target.r)
      : []),
    ...(thermal.disagreement === null
      ? []
      : [
          finding({
            id: 'taper-rules-disagree',
            level: 'note',
            where: 'the insulation',
            message: thermal.disagreement,
          }),
        ]),
  ];
}

/** What is stripped at every tie-in under shingles. */
export function tieInFindings({ tieIns }: NewHeights): Finding[] {
  return tieIns.flatMap(({ where, buildUpIn, levelIn, alongIn, stripIn, pitchIn12 }) => {
    if (levelIn === null || alongIn === null || stripIn === null)
      return [
        finding({
          id: 'tie-in-pitch-not-known',
          level: 'note',
          where,
          message: `The pitch of the ${where} was not given: the new roof comes up ${inches(buildUpIn)} there, and the pitch says how far the shingles are stripped.`,
        }),
      ];
    return [
      finding({
        id: 'tie-in-strip',
        level: 'note',
        where,
        message: `The new roof comes up ${inches(buildUpIn)} at the ${where} and buries ${inches(levelIn)} of it level, ${inches(alongIn)} along the slope (${pitchIn12} in 12). Strip at least ${inches(stripIn)} up the slope: that and ${shingleRunUp.heightIn} in of run-up, more where ice is expected.`,
        value: inches(alongIn),
        limit: inches(stripIn),
        source: sourceNote(shingleRunUp),
      }),
    ];
  });
}
