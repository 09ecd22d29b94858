import type { Source } from '../source.ts';

/** Documents about weather, sun, films and the heat that passes a roof. */
export const heatSources = {
  'station-weather': {
    title: 'Design conditions in the headers of public weather files',
    publisher: 'ASHRAE; US Department of Energy',
    edition: null,
  },
  'station-summary': {
    title: 'Station summaries beside public weather files',
    publisher: 'US Department of Energy',
    edition: 'TMY3',
  },
  'ashrae-sky-2009': {
    title: 'ASHRAE Handbook, Fundamentals, climatic design information (clear sky by two optical depths)',
    publisher: 'ASHRAE',
    edition: '2009',
  },
  'ashrae-hof-2005': {
    title: 'ASHRAE Handbook, Fundamentals, chapters 25 and 30 (properties of materials)',
    publisher: 'ASHRAE',
    edition: '2005',
  },
  'air-film-table': {
    title: 'Table of surface air films in a state energy code',
    publisher: 'State of Washington',
    edition: 'WAC 51-11-0526',
  },
  'sol-air-note': {
    title: 'Article on sol-air temperature (secondary)',
    publisher: 'encyclopedia',
    edition: null,
  },
  'haurwitz-1945': {
    title: 'Haurwitz, Insolation in relation to cloudiness and cloud density',
    publisher: 'Journal of Meteorology 2',
    edition: '1945',
  },
  'spencer-1971': {
    title: 'Spencer, Fourier series representation of the position of the sun',
    publisher: 'Search 2',
    edition: '1971',
  },
  'spa-2008': {
    title: 'Reda and Andreas, Solar position algorithm for solar radiation applications',
    publisher: 'National Renewable Energy Laboratory',
    edition: '2008',
  },
  'clark-allen-1978': {
    title: 'Clark and Allen, The estimation of atmospheric radiation for clear and cloudy skies',
    publisher: 'National passive solar conference',
    edition: '1978',
  },
  'iso-13786': {
    title: 'ISO 13786, dynamic thermal characteristics of building components',
    publisher: 'International Organization for Standardization',
    edition: null,
  },
  'konopacki-2001': {
    title:
      'Konopacki and Akbari, Measured energy savings from a reflective roof membrane on a large retail store in Austin',
    publisher: 'Lawrence Berkeley National Laboratory',
    edition: '2001',
  },
  'gaffin-2012': {
    title: 'Gaffin and others, white roofs in New York, side by side, as reported',
    publisher: 'Environmental Research Letters',
    edition: '2012',
  },
  'levinson-2010': {
    title: 'Levinson and Akbari, Potential benefits of cool roofs on commercial buildings',
    publisher: 'Energy Efficiency 3',
    edition: '2010',
  },
} as const satisfies Record<string, Source>;
