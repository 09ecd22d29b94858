import { depthForLoadIn } from '../core/drainage/rain-load.ts';
import { depthFigure, psf } from '../core/report/page-figures.ts';
import { type LoadRung, liveLoadWords, loadRungs } from '../core/report/page-water.ts';
import type { ExistingReport, Point } from '../core/report/types.ts';
import { inches } from '../units/print.ts';
import { hatchLines } from './crossings.ts';
import { type DrawList, lettering, line, type Mark, polygon } from './draw-list.ts';
import { linesWithin, spreadUp } from './side-labels.ts';

/** All lengths in letters of the sheet: one letter is one foot of the list. */
const PLOT_HIGH = 21;
const SCALE_X = 3.4;
const WATER: readonly [number, number] = [4, 10.5];
const WORDS_X = 13;
const WIDE = 37;
const LINE_HIGH = 1.15;
/** Levels above these are in the table only. */
const MOST_RUNGS = 8;

/** Words in lines that fit beside the water. */
const linesOf = (text: string): string[] => linesWithin(text, WIDE - WORDS_X - 0.5);

interface Label {
  depthIn: number;
  /** Height of its level on the sheet. */
  level: number;
  head: string;
  lines: readonly string[];
  stop: boolean;
  limit: boolean;
}

const highOf = ({ lines }: Label): number => (1 + lines.length) * LINE_HIGH + 0.5;

const STEPS_IN = [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48];

function scaleMarks(topIn: number, up: (depthIn: number) => number): Mark[] {
  const step = STEPS_IN.find((each) => topIn / each <= 8) ?? 96;
  const ticks = Array.from({ length: Math.floor(topIn / step) + 1 }, (_, i) => i * step);
  return [
    line([SCALE_X, 0], [SCALE_X, up(topIn)], 'scale'),
    ...ticks.flatMap((depthIn): Mark[] => [
      line([SCALE_X - 0.4, up(depthIn)], [SCALE_X, up(depthIn)], 'scale'),
      lettering([SCALE_X - 0.7, up(depthIn)], inches(depthIn), { size: 'small', anchor: 'end' }),
    ]),
  ];
}

function labelMarks({ label, y }: { label: Label; y: number }): Mark[] {
  const { level, head, lines, stop, limit } = label;
  const first = y + (lines.length * LINE_HIGH) / 2;
  const tone = stop ? 'stop' : limit ? 'ink' : 'water';
  return [
    line([limit ? SCALE_X : WATER[0], level], [WATER[1], level], limit ? 'old' : 'shore'),
    {
      kind: 'polyline',
      points: [
        [WATER[1], level],
        [WATER[1] + 0.8, level],
        [WORDS_X - 0.4, first],
      ],
      pen: 'dimension',
    },
    lettering([WORDS_X, first], head, { anchor: 'start', bold: true, tone }),
    ...lines.map((text, i) =>
      lettering([WORDS_X, first - (i + 1) * LINE_HIGH], text, { anchor: 'start', size: 'small' }),
    ),
  ];
}

const box = (y0: number, y1: number): Point[] => [
  [WATER[0], y0],
  [WATER[1], y0],
  [WATER[1], y1],
  [WATER[0], y1],
];

function labelOf({ label, depthIn, loadPsf, exceeds }: LoadRung, up: (depthIn: number) => number): Label {
  const over = exceeds === true ? ': over' : '';
  const head = `${depthIn === 0 ? '0″' : depthFigure(depthIn)}, ${psf(loadPsf)}${over}`;
  return { depthIn, level: up(depthIn), head, lines: linesOf(label), stop: exceeds === true, limit: false };
}

/**
 * Levels that water reaches as ways out are shut, heights to scale, each with its load, against what the roof bears.
 * @returns null where no level is known
 */
export function loadLadderDrawing(existing: ExistingReport): DrawList | null {
  const all = loadRungs(existing).sort((a, b) => a.depthIn - b.depthIn);
  const { liveLoad } = existing;
  if (all.length === 0) return null;
  const rungs = all.slice(0, MOST_RUNGS);
  const liveIn = liveLoad === undefined ? null : depthForLoadIn(liveLoad.psf);
  const deepestIn = rungs[rungs.length - 1].depthIn;
  const topIn = Math.max(deepestIn, liveIn ?? 0, 0.25);
  const up = (depthIn: number): number => (PLOT_HIGH * depthIn) / topIn;
  const limit: Label[] =
    liveLoad === undefined || liveIn === null
      ? []
      : [
          {
            depthIn: liveIn,
            level: up(liveIn),
            head: `${psf(liveLoad.psf)}, roof live load`,
            lines: linesOf(`${inches(liveIn)} of water${liveLoad.assumed ? '; taken, not given' : ''}`),
            stop: false,
            limit: true,
          },
        ];
  const labels = [...rungs.map((rung) => labelOf(rung, up)), ...limit].sort((a, b) => a.depthIn - b.depthIn);
  const stood = spreadUp(labels, highOf);
  const topOfWords = Math.max(...stood.map(({ label, y }) => y + highOf(label) / 2));
  const over = liveIn === null || deepestIn <= liveIn ? [] : box(up(liveIn), up(deepestIn));
  const more = all.length > rungs.length ? ` ${all.length - rungs.length} higher levels stand in the table.` : '';
  return {
    title: 'How deep water gets, and what it weighs',
    description: [
      `Levels over the low point, heights to scale.${more}`,
      liveLoadWords(existing) ?? '',
      ...all.map(({ label, depthIn, loadPsf }) => `${depthFigure(depthIn)}, ${psf(loadPsf)}: ${label}.`),
    ].join(' '),
    box: { minX: 0, maxX: WIDE, minY: -1.6, maxY: Math.max(PLOT_HIGH, topOfWords) + 1.2 },
    letterFt: 1,
    marks: [
      ...(deepestIn > 0 ? [polygon(box(0, up(deepestIn)), 'water-0')] : []),
      ...(over.length === 0 ? [] : hatchLines([over], 0.8).map(([a, b]) => line(a, b, 'stop'))),
      ...scaleMarks(topIn, up),
      line([SCALE_X, 0], [WATER[1] + 1, 0], 'surface'),
      lettering([WATER[0], -0.8], 'low point', { anchor: 'start', size: 'small' }),
      ...stood.flatMap(labelMarks),
    ],
  };
}
