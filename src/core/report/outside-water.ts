import { waterLoadPerInch } from '../../../reference/deflection.ts';
import { rainFlowFactor } from '../../../reference/rain-flow.ts';
import { plainNumber } from '../../units/print.ts';
import { openWorkLoad } from '../drainage/open-work.ts';
import { sourceNote } from '../finding.ts';
import { flowGpm } from '../outlets/flow.ts';
import { liveLoadOf, SAME_LOAD_PSF } from '../outlets/live-load.ts';
import type { DesignRain } from '../outlets/rain.ts';
import type { Site } from '../site/site.ts';
import { finding } from './part-finding.ts';
import type { Finding, OutletReport, Working } from './types.ts';
import { areaWords } from './words.ts';

/** Water that comes from beyond the section: walls, steep roofs, downspouts; with what leaving it out would understate. */
export function outsideWater(
  site: Site,
  outlets: readonly OutletReport[],
  rain: DesignRain,
): { findings: Finding[]; workings: Working[] } {
  const added = outlets.reduce((sum, { addedSqFt }) => sum + addedSqFt, 0);
  if (added < 1e-6) return { findings: [], workings: [] };
  const own = site.section.areaSqFt;
  const inPerHr = rain.primaryInPerHr;
  const [forgotten, all] = [flowGpm(own, inPerHr), flowGpm(own + added, inPerHr)];
  const source = sourceNote(rainFlowFactor);
  const factor = plainNumber(all / forgotten, 2);
  const wall = site.edges.some(({ edge }) => edge.wallHeightFt !== null);
  const upperSqFt =
    site.roof.inflows.reduce((sum, { fromSqFt }) => sum + fromSqFt, 0) +
    site.edges.reduce((sum, { edge }) => sum + (edge.shedsSqFt ?? 0), 0);
  const words = (what: string): string =>
    `${what}: the outlets are sized for ${areaWords(own + added)}, not for the ${areaWords(own)} of the section. Left out, the flow would be understated ${factor} times.`;
  const part = {
    level: 'note',
    where: 'the section',
    value: areaWords(own + added),
    limit: areaWords(own),
    source,
  } as const;
  return {
    findings: [
      ...(wall
        ? [finding({ ...part, id: 'wall-water', message: words('Rain on the wall above runs onto the section') })]
        : []),
      ...(upperSqFt > 0
        ? [
            finding({
              ...part,
              id: 'upper-roof-water',
              message: words(`Water of ${areaWords(upperSqFt)} of higher roof runs onto the section`),
            }),
          ]
        : []),
    ],
    workings: [
      {
        id: 'section.flow-if-forgotten',
        what: 'Flow if walls and higher roofs were forgotten',
        formula: 'Q = 0.0104 x area of the section x rain',
        inputs: { areaSqFt: own, inPerHr },
        value: forgotten,
        unit: 'gpm',
        source,
      },
      {
        id: 'section.flow',
        what: 'Flow of everything that reaches the section',
        formula: 'Q = 0.0104 x (area + added area) x rain',
        inputs: { areaSqFt: own, addedSqFt: added, inPerHr },
        value: all,
        unit: 'gpm',
        source,
      },
    ],
  };
}

/** Rain while the work is open and every way out is shut: one hour of the design rain. Only where walls hold it. */
export function phasingFindings(site: Site, rain: DesignRain, enclosed: boolean): Finding[] {
  if (!enclosed) return [];
  const depthIn = rain.primaryInPerHr;
  const { loadPsf, weightLb } = openWorkLoad(depthIn, site.section.areaSqFt);
  const live = liveLoadOf(site.roof.deck.liveLoadPsf);
  const heavy = loadPsf > live.psf + SAME_LOAD_PSF;
  // Capped outlets are a state of today, not a plan: then it is a stop.
  const shutNow = site.roof.outlets.length > 0 && site.roof.outlets.every(({ working }) => !working);
  const then = heavy
    ? ` That is more than the roof live load of ${live.psf} psf: it never comes to that, or an engineer has looked at it first.`
    : '';
  return [
    finding({
      id: 'phasing',
      level: heavy && shutNow ? 'stop' : 'fix',
      where: 'while the work is open',
      message: `With the outlets capped, an hour of the design rain leaves ${plainNumber(depthIn, 1)} in of water: ${plainNumber(loadPsf, 1)} psf, ${plainNumber(weightLb)} lb.${then} No outlet is closed before its replacement is open, and two ways out stand open at the end of every work day.`,
      value: `${loadPsf.toFixed(1)} psf`,
      limit: `${live.psf} psf`,
      source: sourceNote(waterLoadPerInch),
    }),
  ];
}
