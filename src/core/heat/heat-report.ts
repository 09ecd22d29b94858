import { designDayFractions, insideFilms, roomAir } from '../../../reference/heat.ts';
import { foamStock } from '../../../reference/heat-layers.ts';
import { insulationBases } from '../../../reference/insulation.ts';
import { membraneHeat, sriConditions } from '../../../reference/membranes/heat.ts';
import type { Cited } from '../../../reference/sources.ts';
import { sourceNote } from '../finding.ts';
import { type MembraneId, membraneOf, membranes, rowFor } from '../membrane/options.ts';
import type { HeatOfRoof, HeatReport, Layout, MembraneReport } from '../report/types.ts';
import type { Site } from '../site/site.ts';
import { hotDay, hotRun } from './days.ts';
import { fOfC } from './degrees.ts';
import { heatAssumed } from './heat-assumed.ts';
import { inWinter } from './in-winter.ts';
import { dayBtuPerSqFt, heatOf, hourly, type NamedRoof, peakSurfaceF } from './measured.ts';
import { evenFoamIn, foamR, newRoof } from './new-roofs.ts';
import { type TownWeather, weatherFor } from './place-weather.ts';
import type { DesignDayRun } from './roof-day.ts';
import { oldLayers, oldSurfaceOf } from './roof-layers.ts';
import { splitOf } from './split.ts';

export interface HeatInput {
  site: Pick<Site, 'roof' | 'given' | 'section'>;
  /** null = nothing fits yet. */
  layout: Layout | null;
  membranes: readonly MembraneReport[];
  chosenMembrane: MembraneId | null;
}

/** A roof under which a system holds the air. */
const isCooled = ({ given }: HeatInput['site']): boolean => given.below !== 'unheated' && given.below !== 'outdoors';

const oldRoof = (site: HeatInput['site']): NamedRoof => {
  const { reflectance, emittance } = oldSurfaceOf(site);
  return {
    id: 'old',
    title: 'old roof',
    membrane: null,
    foamIn: null,
    layers: oldLayers(site),
    surface: { reflectance, emittance },
  };
};

/** The new roof under every membrane; those of like color and make share one calculation. */
function optionsOf(input: HeatInput, foamIn: number, run: DesignDayRun): HeatReport['options'] {
  const { site, membranes: reports } = input;
  const known = new Map<string, HeatOfRoof>();
  return membranes.map(({ id, name }) => {
    const roof = newRoof(site, id, foamIn, { id: `option-${id}`, title: name });
    const key = `${roof.surface.reflectance}|${roof.surface.emittance}|${roof.layers[0].name}`;
    const heat = known.get(key) ?? heatOf(roof, run, site.section.areaSqFt);
    known.set(key, heat);
    const vetoed = (reports.find((report) => report.id === id)?.veto ?? null) !== null;
    return { ...heat, id: roof.id, title: name, membrane: id, vetoed };
  });
}

/** The option farthest in color from the chosen one: of those that may be laid, if any of them is of another color. */
function otherColorOf(options: HeatReport['options'], chosen: HeatOfRoof): string | null {
  const farthest = (some: HeatReport['options']) =>
    some.reduce<(typeof some)[number] | null>((most, option) => {
      const apart = Math.abs(option.reflectance - chosen.reflectance);
      return apart > Math.abs((most ?? chosen).reflectance - chosen.reflectance) + 1e-9 ? option : most;
    }, null);
  return (farthest(options.filter(({ vetoed }) => !vetoed)) ?? farthest(options))?.id ?? null;
}

function sourcesOf(town: TownWeather, input: HeatInput): HeatReport['sources'] {
  const rows: Cited[] = [
    town,
    designDayFractions,
    town.julyTau === null
      ? { source: 'haurwitz-1945', at: 'clear sky by the height of the sun', grade: 'found' }
      : { source: 'ashrae-sky-2009', at: 'clear sky, optical depths of the station', grade: 'found' },
    { source: 'clark-allen-1978', at: 'clear sky as a radiator', grade: 'found' },
    insideFilms[0],
    sriConditions,
    foamStock,
    insulationBases[1],
    oldSurfaceOf(input.site),
    ...(input.chosenMembrane === null ? [] : [rowFor(membraneHeat, input.chosenMembrane)]),
  ];
  return rows.map(sourceNote);
}

function dayOf(
  town: TownWeather,
  standsIn: boolean,
  run: DesignDayRun,
  cooled: boolean,
): Omit<HeatReport['day'], 'attic'> {
  return {
    town: `${town.city}, ${town.state}`,
    standsIn,
    date: '21 July',
    hotF: town.hotF,
    rangeF: town.dailyRangeF,
    dewPointF: fOfC(hotDay(town).dewC),
    noonWPerM2: Math.max(...run.outside.sunWPerM2),
    sky: town.julyTau === null ? 'height' : 'depths',
    windWPerM2K: run.windWPerM2K,
    roomF: cooled ? roomAir.summerF : null,
    airF: hourly(run.outside.airC).map(fOfC),
  };
}

/** What belongs to the new roof: none of it is known before there is a layout and a membrane. */
type NewPart = Pick<HeatReport, 'new' | 'taper' | 'options' | 'otherColor' | 'split' | 'winter'> & {
  roof: NamedRoof | null;
};

const NO_NEW: NewPart = {
  roof: null,
  new: null,
  taper: [],
  options: [],
  otherColor: null,
  split: null,
  winter: null,
};

function newPart(input: HeatInput, town: TownWeather, run: DesignDayRun, was: NamedRoof, old: HeatOfRoof): NewPart {
  const { site, layout, chosenMembrane } = input;
  if (layout === null || chosenMembrane === null) return NO_NEW;
  const areaSqFt = site.section.areaSqFt;
  const foamIn = evenFoamIn(layout);
  const { shortName } = membraneOf(chosenMembrane);
  const roof = newRoof(site, chosenMembrane, foamIn, { id: 'new', title: `new roof, ${shortName}` });
  const next = heatOf(roof, run, areaSqFt);
  const at = (id: string, title: string, thicknessIn: number): HeatOfRoof =>
    heatOf(newRoof(site, chosenMembrane, thicknessIn, { id, title }), run, areaSqFt);
  const options = optionsOf(input, foamIn, run);
  return {
    roof,
    new: next,
    taper: [
      at('new-thin', 'new roof where it is thinnest', layout.leastThicknessIn),
      at('new-mean', 'new roof at its mean thickness', layout.meanThicknessIn),
      at('new-thick', 'new roof where it is thickest', layout.greatestThicknessIn),
    ],
    options,
    otherColor: otherColorOf(options, next),
    split: splitOf({
      old: old.dayBtuPerSqFt,
      insulationOnly: dayBtuPerSqFt({ layers: roof.layers, surface: was.surface }, run),
      colorOnly: dayBtuPerSqFt({ layers: was.layers, surface: roof.surface }, run),
      both: next.dayBtuPerSqFt,
    }),
    winter: isCooled(site) ? inWinter(town, was, newRoof(site, chosenMembrane, foamIn, roof, foamR.winter)) : null,
  };
}

/**
 * The roof on a hot clear day: surface through the day, heat into the room, what insulation and color save, and winter.
 * Nothing here is measured on the roof; what is taken for it is listed in `assumed`.
 * @param input the site as assumed, the chosen layout and membrane
 * Source: the balance of ASTM E1980 with conduction through the layers. Correctness: tests/published/heat-roof.test.ts
 */
export function heatReport(input: HeatInput): HeatReport {
  const { site } = input;
  const { row: town, assumed } = weatherFor(site.roof.place);
  const cooled = isCooled(site);
  const run = hotRun(town, cooled);
  const was = oldRoof(site);
  const old = heatOf(was, run, site.section.areaSqFt);
  const { roof, ...part } = newPart(input, town, run, was, old);
  const { low, high } = sriConditions.windWPerM2K;
  const range = (of: NamedRoof): [number, number] => [peakSurfaceF(of, run, high), peakSurfaceF(of, run, low)];
  return {
    day: { ...dayOf(town, assumed.length > 0, run, cooled), attic: site.given.below === 'attic' },
    old,
    ...part,
    windRangeF: { old: range(was), new: roof === null ? null : range(roof) },
    figures: {
      peakSurfaceOldF: old.peakSurfaceF,
      peakSurfaceNewF: part.new?.peakSurfaceF ?? null,
      dayOldBtuPerSqFt: old.dayBtuPerSqFt,
      dayNewBtuPerSqFt: part.new?.dayBtuPerSqFt ?? null,
      dayOldBtu: old.dayBtu,
      dayNewBtu: part.new?.dayBtu ?? null,
      insulationShare: part.split?.insulationShare ?? null,
      colorShare: part.split?.colorShare ?? null,
    },
    sources: sourcesOf(town, input),
    assumed: [...assumed, ...heatAssumed(site)],
  };
}
