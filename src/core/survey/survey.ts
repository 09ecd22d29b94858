import type { Point, Roof } from '../roof.ts';
import { siteEdges } from '../site/edges.ts';
import { baseLineOf, gridSpacingFt } from './base-line.ts';
import { heightsToTape } from './heights.ts';
import { inWalkingOrder } from './order.ts';
import { spotsOf } from './spots.ts';
import { placesInWords } from './words.ts';

export type MarkKind = 'corner' | 'edge-end' | 'edge-middle' | 'outlet' | 'beside-outlet' | 'curb' | 'pond' | 'grid';

/** A spot to read, before it has a number. */
export interface Spot {
  at: Point;
  kind: MarkKind;
  why: string;
  /** Side of the outline that it lies on, and how far along from its first corner; null = inside. */
  on: { side: number; alongFt: number } | null;
}

/** One numbered spot of the survey. */
export interface SurveyMark extends Omit<Spot, 'on'> {
  id: number;
  /** How to find it with a tape. */
  place: string;
}

/** A height that is taped from the roof right under it, not read with the level. */
export interface HeightToTape {
  /** "H1", so that it is not taken for a mark. */
  id: string;
  what: string;
  at: Point;
  /** Where the roof file holds it: `edges[1].openings[0].heightIn`. */
  path: string;
  knownIn: number | null;
}

export interface Survey {
  marks: readonly SurveyMark[];
  heights: readonly HeightToTape[];
  /** Spacing of the grid inside; ft. */
  gridFt: number;
}

/**
 * Where to measure a roof section, in the order in which one walks it: once round the perimeter, then in rows back and
 * forth. It depends on the plan alone, never on readings, so a half filled survey keeps its marks.
 * Correctness: tests/unit/survey/survey.test.ts
 */
export function surveyOf(roof: Roof): Survey {
  const { edges } = siteEdges(roof);
  const base = baseLineOf(roof.outline);
  const gridFt = gridSpacingFt(roof.outline);
  const ordered = inWalkingOrder(spotsOf(roof, edges, base, gridFt), base, gridFt);
  const places = placesInWords(ordered, roof.outline, edges, base);
  return {
    marks: ordered.map(({ at, kind, why }, i) => ({ id: i + 1, at, kind, why, place: places[i] })),
    heights: heightsToTape(roof),
    gridFt,
  };
}
