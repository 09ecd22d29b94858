import type { Cited } from '../../../reference/sources.ts';
import { feetInches, inches } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { stepReachFt, stepSlopeInPerFt } from '../layout/joint-step.ts';
import { deckSheetStep } from './crew-damp.ts';
import { groundSteps } from './crew-ground.ts';
import { checkRow, type WorkStep, within } from './crew-step.ts';
import { boardFeet, slopeFigure } from './page-figures.ts';
import { sumpSentence } from './page-layouts.ts';
import { raisedRow } from './page-thermal.ts';
import type { Assessment, Caution, Layout, SourceNote, WorkPart } from './types.ts';
import { areaWords, listed } from './words.ts';

/** Largest difference between a spot level and the plan that is let pass. */
export const spotTolerance = (): { withinIn: number; source: SourceNote } => {
  const { withinIn, ...cited } = checkRow('spot-level');
  return { withinIn, source: sourceNote(cited as Cited) };
};

/** Why a step matters: what it does to the water on this slope. */
function stepWords({ slopeInPerFt, boards }: Layout): string {
  const { withinIn } = checkRow('joint-step');
  const reach = feetInches(stepReachFt(withinIn, slopeInPerFt));
  const runFt = boards[0]?.runFt;
  const change =
    runFt === undefined
      ? ''
      : ` Two boards ${inches(withinIn)} apart change the slope by ${slopeFigure(stepSlopeInPerFt(withinIn, runFt))}.`;
  return `A step of ${inches(withinIn)} that faces uphill holds water back ${reach} on ${slopeFigure(slopeInPerFt)}.${change}`;
}

function boardStep(layout: Layout): WorkStep {
  return {
    title: 'Lay the boards from the low side up',
    hold: false,
    lines: [
      'Start at the outlet or the gutter with the thinnest row; the thin edge points to the water’s way out.',
      `Measure the four corners of the first board of every row: within ${within('board-thickness')} of its mark.`,
      `Step between two boards: at most ${within('joint-step')}, and never a step that faces uphill. Gaps over ${within('joint-gap')} are filled.`,
      stepWords(layout),
      sumpSentence(layout) ?? '',
      layout.fill.length === 0 ? '' : 'Fill goes down first, joints staggered over it.',
    ].filter((part) => part !== ''),
  };
}

const MOST_PARTS = 8;

/** How every open part stands when the crew goes home; null where nothing is known about parts. */
function dayEndStep({ workParts = [] }: Layout): WorkStep | null {
  if (workParts.length === 0) return null;
  const line = ({ label, areaSqFt, waysOut, overAnEdge, holdsIn }: WorkPart): string => {
    const ways = waysOut.length === 0 ? 'nothing lets water out' : `water leaves by ${listed(waysOut)}`;
    const alone = overAnEdge || waysOut.length > 1 ? '' : ' One way out is not enough: cover it watertight tonight.';
    const wet = holdsIn > 0.25 ? ` The bare deck holds ${inches(holdsIn)}.` : '';
    return `Area of ${label}, ${areaWords(areaSqFt)}: ${ways}.${alone}${wet}`;
  };
  const more = workParts.length - MOST_PARTS;
  return {
    title: 'At the end of every work day',
    hold: true,
    lines: [
      'Open the deck from the low side up, no more than is covered the same day. The old roof around it is a dam.',
      'Walk every open part: two ways out stand open, strainers in, the cut edge of the old roof sealed.',
      ...workParts.slice(0, MOST_PARTS).map(line),
      ...(more > 0 ? [`And ${more} more areas: the same holds.`] : []),
    ],
  };
}

/** The order of work of a new roof, with the points where everybody waits. */
export function orderOfWork(assessment: Assessment, layout: Layout): WorkStep[] {
  const covering = assessment.membranes.find(({ id }) => id === assessment.chosenMembrane)?.name ?? null;
  const { ground } = assessment.planned;
  const fresh = layout.outlets.filter(({ status }) => status === 'proposed');
  const raised = (layout.newHeights?.raised ?? [])
    .filter(({ raiseIn }) => raiseIn !== null && raiseIn > 1 / 32)
    .map((row) => `${row.where}: ${raisedRow(row).todo}`);
  const steps: (WorkStep | null)[] = [
    ...groundSteps(assessment.planned),
    fresh.length === 0 ? null : { title: 'Make the new ways out', hold: false, lines: fresh.map(({ label }) => label) },
    deckSheetStep(assessment),
    layout.levellingBoardFt < 0.5
      ? null
      : {
          title: layout.groundFill?.how === 'filled' ? `Fill ${ground} where water would not fall` : `Level ${ground}`,
          hold: false,
          lines: [
            layout.groundFill?.note ??
              `About ${boardFeet(layout.levellingBoardFt)} of fill brings ${ground} to the plane the boards are made for.`,
          ],
        },
    raised.length === 0 ? null : { title: 'Raise what stands in the way', hold: false, lines: raised },
    {
      title: 'Set the wood at the edges',
      hold: false,
      lines: ['Heights at both ends of every piece are in the table below; between them the wood runs straight.'],
    },
    {
      title: 'Snap the lines',
      hold: false,
      lines: ['Outlets, valleys and ridges first, then the rows. Write the mark of the board beside each line.'],
    },
    boardStep(layout),
    {
      title: 'Shoot the boards',
      hold: true,
      lines: [
        'Read every check point again and type the heights in. They are judged against the plan: what would stand, and where.',
        'Cover nothing before no water would stand.',
      ],
    },
    dayEndStep(layout),
    { title: 'Cover board, covering, edges', hold: false, lines: covering === null ? [] : [`Covering: ${covering}.`] },
    {
      title: 'Run water',
      hold: true,
      lines: ['Hose every high corner and watch the valleys. Outlets open, strainers in, nothing left on the roof.'],
    },
  ];
  return steps.filter((step): step is WorkStep => step !== null);
}

export interface CheckRow {
  id: string;
  place: string;
  where: string;
  /** Ground that the boards lie on, against point 1. */
  base: string;
  buildUp: string;
  finished: string;
  finishedIn: number;
}

/** Signed, because the base may lie lower than point 1. */
const signed = (valueIn: number): string => (valueIn > 1 / 32 ? `+${inches(valueIn)}` : inches(valueIn));

export function checkRows({ checkPoints }: Layout): CheckRow[] {
  const [first] = checkPoints;
  return checkPoints.map(({ id, where, heightIn, thicknessIn }) => ({
    id,
    place: `check-${id}`,
    where,
    base: signed(heightIn - thicknessIn - (first.heightIn - first.thicknessIn)),
    buildUp: inches(thicknessIn),
    finished: signed(heightIn),
    finishedIn: heightIn,
  }));
}

export interface NailerRow {
  edge: string;
  length: string;
  start: string;
  end: string;
}

export const nailerRows = ({ nailers }: Layout): NailerRow[] =>
  nailers.map(({ edge, lengthFt, startIn, endIn }) => ({
    edge,
    length: feetInches(lengthFt),
    start: inches(startIn),
    end: inches(endIn),
  }));

const GRAVEST = 4;
const GRAVE = 3;

export interface CrewCautions {
  top: readonly Caution[];
  rest: readonly Caution[];
}

/** What the crew reads before it climbs: the gravest, and the grave ones that a known fact of this job calls for. */
export function crewCautions(cautions: readonly Caution[]): CrewCautions {
  const isTop = ({ severity, when, because }: Caution): boolean =>
    when === 'during' && (severity === GRAVEST || (severity === GRAVE && !because.startsWith('Not known')));
  const known = ({ because }: Caution): number => (because.startsWith('Not known') ? 1 : 0);
  return {
    top: cautions.filter(isTop).sort((a, b) => known(a) - known(b)),
    rest: cautions.filter((caution) => caution.when !== 'finished' && !isTop(caution)),
  };
}
