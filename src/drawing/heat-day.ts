import { clock, degreesF, otherColorRoof } from '../core/report/page-heat.ts';
import type { HeatOfRoof, HeatReport, Point } from '../core/report/types.ts';
import { type DrawList, lettering, line, type Mark } from './draw-list.ts';
import type { Pen } from './pens.ts';
import { linesWithin, spreadUp } from './side-labels.ts';

/** All lengths in letters of the sheet: one letter is one foot of the list. */
const HOUR = 0.7;
const PLOT_WIDE = 24 * HOUR;
const PLOT_HIGH = 17;
const SAMPLE = 2.2;
const WORDS_X = PLOT_WIDE + 4.1;
const WIDE = 34;
const LINE_HIGH = 1.15;
const STEP_F = 20;

interface Curve {
  name: string;
  pen: Pen;
  values: readonly number[];
  /** Highest point, between the hours where it is known. */
  peakF: number;
  peakAtH: number;
  bold: boolean;
}

const roofCurve = (roof: HeatOfRoof, name: string, pen: Pen, bold = false): Curve => ({
  name,
  pen,
  values: roof.surfaceF,
  peakF: roof.peakSurfaceF,
  peakAtH: roof.peakSurfaceAtH,
  bold,
});

function curvesOf(heat: HeatReport): Curve[] {
  const { old, new: next, day } = heat;
  const other = otherColorRoof(heat);
  const airF = Math.max(...day.airF);
  return [
    roofCurve(old, 'old roof', 'old'),
    ...(next === null ? [] : [roofCurve(next, next.title, 'surface', true)]),
    ...(other === null ? [] : [roofCurve(other, `the same in another color: ${other.title}`, 'area')]),
    { name: 'air', pen: 'plane', values: day.airF, peakF: airF, peakAtH: day.airF.indexOf(airF), bold: false },
  ];
}

interface Label {
  curve: Curve;
  level: number;
  lines: readonly string[];
}

const highOf = ({ lines }: Label): number => (1 + lines.length) * LINE_HIGH + 0.5;

function labelMarks({ label, y }: { label: Label; y: number }): Mark[] {
  const { curve, level, lines } = label;
  const first = y + (lines.length * LINE_HIGH) / 2;
  return [
    {
      kind: 'polyline',
      points: [
        [curve.peakAtH * HOUR, level],
        [PLOT_WIDE, level],
        [PLOT_WIDE + 1, first],
      ],
      pen: 'dimension',
    },
    { kind: 'circle', at: [curve.peakAtH * HOUR, level], radiusFt: 0.22, pen: null, fill: 'ink' },
    line([PLOT_WIDE + 1.4, first], [PLOT_WIDE + 1.4 + SAMPLE, first], curve.pen),
    lettering([WORDS_X, first], `${degreesF(curve.peakF)}, ${clock(curve.peakAtH)}`, {
      anchor: 'start',
      bold: curve.bold,
    }),
    ...lines.map((text, i) =>
      lettering([WORDS_X, first - (i + 1) * LINE_HIGH], text, { anchor: 'start', size: 'small' }),
    ),
  ];
}

const HOURS: readonly (readonly [number, string])[] = [
  [0, 'midnight'],
  [6, '6 am'],
  [12, 'noon'],
  [18, '6 pm'],
  [24, 'midnight'],
];

function scaleMarks(leastF: number, mostF: number, up: (f: number) => number): Mark[] {
  const ticks = Array.from({ length: Math.round((mostF - leastF) / STEP_F) + 1 }, (_, i) => leastF + i * STEP_F);
  return [
    ...ticks.flatMap((f): Mark[] => [
      line([0, up(f)], [PLOT_WIDE, up(f)], 'hatch'),
      lettering([-0.4, up(f)], `${f}`, { size: 'small', anchor: 'end' }),
    ]),
    lettering([-0.4, up(mostF) + 1.3], '°F', { size: 'small', anchor: 'end' }),
    line([0, 0], [PLOT_WIDE, 0], 'scale'),
    line([0, 0], [0, up(mostF)], 'scale'),
    ...HOURS.flatMap(([hour, name]): Mark[] => [
      line([hour * HOUR, 0], [hour * HOUR, -0.4], 'scale'),
      lettering([hour * HOUR, -1.2], name, { size: 'small' }),
    ]),
  ];
}

/** A smooth curve has its peak between two hours: it is put in. */
function pointsOf({ values, peakAtH, peakF }: Curve, up: (f: number) => number): Point[] {
  const points = values.map((f, h): Point => [h * HOUR, up(f)]);
  if (Number.isInteger(peakAtH)) return points;
  points.splice(Math.ceil(peakAtH), 0, [peakAtH * HOUR, up(peakF)]);
  return points;
}

/** Surface of the old roof, of the new one and of the new one in the farthest other color, hour by hour. */
export function heatDayDrawing(heat: HeatReport): DrawList {
  const curves = curvesOf(heat);
  const all = curves.flatMap(({ values, peakF }) => [...values, peakF]);
  const leastF = Math.floor(Math.min(...all) / STEP_F) * STEP_F;
  const mostF = Math.ceil(Math.max(...all) / STEP_F) * STEP_F;
  const up = (f: number): number => (PLOT_HIGH * (f - leastF)) / (mostF - leastF);
  const labels = curves
    .map((curve): Label => ({ curve, level: up(curve.peakF), lines: linesWithin(curve.name, WIDE - WORDS_X) }))
    .sort((a, b) => a.level - b.level);
  const stood = spreadUp(labels, highOf);
  const top = Math.max(PLOT_HIGH + 2, ...stood.map(({ label, y }) => y + highOf(label) / 2));
  return {
    title: 'Surface of the roof through a hot clear day',
    description: [
      `Hour by hour, ${heat.day.date}, ${heat.day.town}.`,
      ...curves.map(({ name, peakF, peakAtH }) => `${name}: highest ${degreesF(peakF)} at ${clock(peakAtH)}.`),
    ].join(' '),
    box: { minX: -3, maxX: WIDE, minY: -2.2, maxY: top + 0.4 },
    letterFt: 1,
    marks: [
      ...scaleMarks(leastF, mostF, up),
      ...curves.map((curve): Mark => ({ kind: 'polyline', points: pointsOf(curve, up), pen: curve.pen })),
      ...stood.flatMap(labelMarks),
    ],
  };
}
