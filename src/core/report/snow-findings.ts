import { flatRoofSnow, iceBarrier, rainOnSnow, slidingSnow, windwardDrift } from '../../../reference/snow.ts';
import { plainNumber } from '../../units/print.ts';
import { driftAtWall, flatRoofSnowPsf, rainOnSnowPsf, slidePsf } from '../drainage/snow.ts';
import { sourceNote } from '../finding.ts';
import { direction, dot } from '../geometry/vector.ts';
import { type LiveLoad, liveLoadOf } from '../outlets/live-load.ts';
import type { Point } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import { isOpenEdge } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import { finding } from './part-finding.ts';
import type { Assumption, Finding } from './types.ts';
import { listed } from './words.ts';

const psf = (value: number): string => `${plainNumber(value, 0)} psf`;
const NOT_A_DESIGN =
  'This only tells that somebody must look: a structural engineer finds the load and says what the roof bears.';

/** The line of what is not known about snow, and how to find out. */
export function snowAssumed({ roof }: Site): Assumption[] {
  if (roof.place.groundSnowPsf !== null) return [];
  return [
    {
      path: 'place.groundSnowPsf',
      value: 'not known: snow is not judged',
      because: 'the ground snow load of the place was not given',
      findOut: 'the building office names it; a place without snow has 0',
    },
  ];
}

/**
 * Where snow governs over the roof live load: even snow, drifts against what is higher, slides from above, rain on snow; and ice.
 * @param slopeInPerFt least slope of the finished roof, else of the old one
 * Correctness: tests/unit/drainage/snow.test.ts
 */
export function snowFindings(site: Site, slopeInPerFt: number): Finding[] {
  const groundPsf = site.roof.place.groundSnowPsf;
  if (groundPsf === null || groundPsf <= 0) return [];
  const live = liveLoadOf(site.roof.deck.liveLoadPsf);
  const snow = { site, groundPsf, evenPsf: flatRoofSnowPsf(groundPsf), live };
  return [...evenSnow(snow), ...drifts(snow), ...slides(snow), ...soakedSnow(snow, slopeInPerFt), ...ice(site)];
}

interface Snow {
  site: Site;
  groundPsf: number;
  evenPsf: number;
  live: LiveLoad;
}

const bears = ({ psf: livePsf, assumed }: LiveLoad): string =>
  assumed.length > 0 ? `${livePsf} psf, as taken for an ordinary roof` : `${livePsf} psf`;

function evenSnow({ evenPsf, live }: Snow): Finding[] {
  if (evenPsf <= live.psf) return [];
  return [
    finding({
      id: 'snow-over-live-load',
      level: live.assumed.length > 0 ? 'fix' : 'stop',
      where: 'the section',
      message: `Engineer: even snow of the place weighs about ${psf(evenPsf)} on a flat roof, more than the roof live load of ${bears(live)}. A better insulated roof keeps its snow longer. ${NOT_A_DESIGN}`,
      value: psf(evenPsf),
      limit: psf(live.psf),
      source: sourceNote(flatRoofSnow),
    }),
  ];
}

/** How far the section reaches away from an edge, ft. */
function reachFt(site: Site, { from, to }: SiteEdge): number {
  const along = direction(from, to);
  const inward: Point = [-along[1], along[0]];
  return Math.max(...site.outline.map((p) => dot([p[0] - from[0], p[1] - from[1]], inward)));
}

function heightFt({ edge }: SiteEdge): number | null {
  if (edge.kind === 'parapet') return edge.topIn === null ? null : Math.max(...edge.topIn) / 12;
  return edge.wallHeightFt;
}

/**
 * Edges against which snow drifts: what stands higher than the section. A parapet of unknown height is left out, and so is a side
 * that nobody described: that it is closed is only assumed.
 */
const isHigher = (site: Site, { edge }: SiteEdge): boolean =>
  site.roof.edges.some(({ side, kind }) => side === edge.side && kind === edge.kind) &&
  (['wall', 'party-wall', 'shingles-above'].includes(edge.kind) || (edge.kind === 'parapet' && edge.topIn !== null));

function drifts({ site, groundPsf, evenPsf, live }: Snow): Finding[] {
  const { planFt } = site.roof.building;
  const at = site.edges
    .filter((edge) => isHigher(site, edge))
    .map((edge) => {
      const upper = edge.edge.kind === 'parapet' || planFt === null ? null : Math.max(...planFt);
      const wallFt = heightFt(edge);
      return {
        edge,
        wallFt,
        ...driftAtWall({ groundPsf, wallFt, ownFetchFt: reachFt(site, edge), upperFetchFt: upper }),
      };
    });
  const governing = at.filter((drift) => drift.psf > 0 && evenPsf + drift.psf > live.psf);
  if (governing.length === 0) return [];
  const worst = governing.reduce((a, b) => (b.psf > a.psf ? b : a));
  const where = listed(governing.map(({ edge }) => edge.label));
  const unknown = governing.some(({ wallFt }) => wallFt === null)
    ? ' Where its height was not given it is taken as high.'
    : '';
  return [
    finding({
      id: 'snow-drift',
      level: 'fix',
      where,
      message: `Engineer: snow drifts against what stands higher (${where}): about ${psf(evenPsf + worst.psf)} at the foot, over some ${plainNumber(worst.widthFt, 0)} ft, against a roof live load of ${bears(live)}.${unknown} No bundles, no dumpster and no deeper parapet there before it is checked. ${NOT_A_DESIGN}`,
      value: psf(evenPsf + worst.psf),
      limit: psf(live.psf),
      source: sourceNote(windwardDrift),
    }),
  ];
}

function slides({ site, groundPsf, evenPsf, live }: Snow): Finding[] {
  return site.edges.flatMap((edge) => {
    const { kind, pitchIn12, shedsSqFt } = edge.edge;
    if (kind !== 'shingles-above' || (pitchIn12 !== null && pitchIn12 <= slidingSnow.overPitchIn12)) return [];
    const part = { id: 'snow-slide', where: edge.label, source: sourceNote(slidingSnow) } as const;
    if (shedsSqFt === null) {
      const message = `Snow slides from the slope above onto the section. How much was not said: give the area that sheds at ${edge.label}, and ask an engineer where snow lies long.`;
      return [finding({ ...part, level: 'note', message })];
    }
    const totalPsf = evenPsf + slidePsf(groundPsf, shedsSqFt / edge.lengthFt);
    const governs = totalPsf > live.psf;
    const load = `about ${psf(totalPsf)} with the snow that lies there, over ${slidingSnow.widthFt} ft below the slope`;
    const message = governs
      ? `Engineer: snow slides from the slope above: ${load}, against a roof live load of ${bears(live)}. ${NOT_A_DESIGN}`
      : `Snow slides from the slope above: ${load}. Keep pipes and skylights out of its way, or have them guarded.`;
    return [finding({ ...part, level: governs ? 'fix' : 'note', message, value: psf(totalPsf), limit: psf(live.psf) })];
  });
}

function soakedSnow({ site, groundPsf, evenPsf, live }: Snow, slopeInPerFt: number): Finding[] {
  const lengthFt = Math.max(...site.edges.map((edge) => reachFt(site, edge)));
  const rainPsf = rainOnSnowPsf(groundPsf, slopeInPerFt, lengthFt);
  if (rainPsf === 0 || evenPsf + rainPsf <= live.psf) return [];
  return [
    finding({
      id: 'rain-on-snow',
      level: 'fix',
      where: 'the section',
      message: `Engineer: rain that soaks into snow adds ${psf(rainPsf)} on a roof as flat and long as this: ${psf(evenPsf + rainPsf)} against a roof live load of ${bears(live)}. More slope takes it away sooner. ${NOT_A_DESIGN}`,
      value: psf(evenPsf + rainPsf),
      limit: psf(live.psf),
      source: sourceNote(rainOnSnow),
    }),
  ];
}

/** Melt from over the rooms freezes where the roof is cold: at gutters, in scuppers and under the shingles of a tie-in. */
function ice(site: Site): Finding[] {
  if (site.given.below === 'outdoors' || site.given.below === 'unheated') return [];
  const eaves = site.edges.filter((edge) => isOpenEdge(edge) || edge.edge.kind === 'shingles-above');
  const scuppers = site.roof.outlets.flatMap(({ kind, id }) => (kind === 'scupper' ? [`scupper ${id}`] : []));
  const places = [...eaves.map(({ label }) => label), ...scuppers];
  if (places.length === 0) return [];
  const where = listed(places);
  return [
    finding({
      id: 'ice-at-edges',
      level: 'note',
      where,
      message: `Melt from over warm rooms freezes where the roof is cold (${where}) and dams the water behind it. Run the covering under the shingles of a tie-in well above that height, keep openings wide, and ask the building office whether an ice barrier is required.`,
      source: sourceNote(iceBarrier),
    }),
  ];
}
