import { feetInches, inches, plainNumber } from '../../../units/print.ts';
import { distanceFt, toSegment } from '../../geometry/vector.ts';
import { boardFeet } from '../../report/page-figures.ts';
import type { Alternative, Layout } from '../../report/types.ts';
import type { Point } from '../../roof.ts';
import { isOpenEdge } from '../../site/offers.ts';
import { outletPoint } from '../../site/site.ts';
import { localFill } from '../ground-report.ts';
import { type AlternativeFacts, alternative } from './facts.ts';

/** A low spot nearer to an edge than this is drained through it, else by a drain. */
const NEAR_EDGE_FT = 3;
/** Water this near to an outlet is at it. */
const AT_OUTLET_FT = 1;

const GAL_PER_BOARD_FT = 144 / 231;

/** The low spot where water stands that is at no outlet. */
function lowSpot({ site, existing }: AlternativeFacts) {
  const deep = existing.ponds.filter(({ birdBath }) => !birdBath);
  const [pond] = deep;
  if (pond === undefined || existing.edgeFirst) return null;
  const outlets = site.roof.outlets.filter(({ working, role }) => working && role === 'primary');
  const near = outlets.some((outlet) => distanceFt(outletPoint(site.roof, outlet), pond.deepestAt) < AT_OUTLET_FT);
  return near ? null : { pond, alone: deep.length === 1 };
}

/** Straight way from a point to the nearest way out, ft; null where there is none. */
function wayFt({ site }: AlternativeFacts, p: Point): number | null {
  const ways = [
    ...site.roof.outlets
      .filter(({ working, role }) => working && role === 'primary')
      .map((outlet) => distanceFt(outletPoint(site.roof, outlet), p)),
    ...site.edges.filter(isOpenEdge).map((edge) => toSegment(p, edge.from, edge.to).distanceFt),
  ];
  return ways.length === 0 ? null : Math.min(...ways);
}

const isForLowSpot = ({ id }: Layout): boolean => id.startsWith('scupper-') || id.startsWith('drain-at-low-spot');

/** A scupper or drain where the water stands, when no layout that is chosen has one already. */
export function outletAtLowSpot(facts: AlternativeFacts): Alternative | null {
  const { site, chosen, layouts } = facts;
  const low = lowSpot(facts);
  if (low === null || (chosen !== null && isForLowSpot(chosen))) return null;
  const { pond } = low;
  const edge = site.edges
    .map((one) => ({ one, ft: toSegment(pond.deepestAt, one.from, one.to).distanceFt }))
    .sort((a, b) => a.ft - b.ft)[0];
  const kind =
    edge !== undefined && edge.ft <= NEAR_EDGE_FT ? `scupper through the ${edge.one.label.split(',')[0]}` : 'drain';
  const way = wayFt(facts, pond.deepestAt);
  const tried = layouts.find(isForLowSpot);
  const saves =
    tried === undefined
      ? []
      : [
          {
            name: tried.rejected === null ? 'a taper to it takes' : 'a taper to it is not offered',
            value:
              tried.rejected === null
                ? `${boardFeet(tried.volumeBoardFt + tried.levellingBoardFt)}, ${inches(tried.greatestThicknessIn)} at its thickest${chosen === null ? '' : `; the chosen one ${boardFeet(chosen.volumeBoardFt + chosen.levellingBoardFt)}, ${inches(chosen.greatestThicknessIn)}`}`
                : tried.rejected.why,
          },
        ];
  return alternative(
    'outlet-at-low-spot',
    `Water stands ${inches(pond.greatestDepthIn)} deep at one low spot (${pond.where})${way === null ? ', and nothing drains it' : `, ${feetInches(way)} from the nearest way out`}.`,
    [
      { name: 'kind', value: kind },
      { name: 'place', value: pond.where },
      ...(way === null ? [] : [{ name: 'way of the water now', value: feetInches(way) }]),
      ...saves,
    ],
  );
}

/** One hollow filled, on a roof that drains otherwise. */
export function localFillFor(facts: AlternativeFacts): Alternative | null {
  const { chosen } = facts;
  const fill = chosen?.groundFill;
  if (fill?.local) {
    return alternative('local-fill', fill.note, [
      { name: 'fill', value: `${boardFeet(fill.boardFt)}, up to ${inches(fill.greatestIn)}` },
      { name: 'extent', value: `${plainNumber(fill.areaSqFt)} sq ft` },
    ]);
  }
  const low = lowSpot(facts);
  if (low === null || !low.alone) return null;
  const { greatestDepthIn, areaSqFt, volumeGal, where } = low.pond;
  if (greatestDepthIn > localFill.greatestIn || areaSqFt > localFill.areaSqFt) return null;
  return alternative(
    'local-fill',
    `Only one hollow holds water: ${inches(greatestDepthIn)} over ${plainNumber(areaSqFt)} sq ft (${where}).`,
    [
      {
        name: 'to the level of its rim',
        value: `${boardFeet(volumeGal / GAL_PER_BOARD_FT)}, up to ${inches(greatestDepthIn)}`,
      },
      {
        name: 'and on to a fall',
        value: 'feathered out over the hollow so that it sheds: 1/8 in more for each foot of its width',
      },
    ],
  );
}
