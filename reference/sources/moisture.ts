import type { Source } from '../source.ts';

export const moistureSources = {
  'typical-year-weather': {
    title: 'Typical-year weather files of public stations, design headers and hours',
    publisher: 'national laboratory',
    edition: 'TMY3; headers of 2009 to 2021',
  },
  'ashrae-psychrometrics': {
    title: 'ASHRAE Handbook of Fundamentals, psychrometrics (Hyland and Wexler)',
    publisher: 'ASHRAE',
    edition: null,
  },
  'iso-13788': {
    title: 'ISO 13788, hygrothermal performance of building components: interior surface and interstitial condensation',
    publisher: 'ISO',
    edition: '2012',
  },
  'glaser-case': {
    title: 'Worked case of interstitial condensation by ISO 13788, test of a public program for building codes',
    publisher: 'public repository',
    edition: null,
  },
  'irc-r806-note-b': {
    title: 'International Residential Code, unvented roofs: condensing plane at 45 F, as quoted in a trade forum',
    publisher: 'International Code Council',
    edition: '2018',
  },
  'irc-r806-2015': {
    title: 'International Residential Code, roof ventilation, as explained in a handout of a state',
    publisher: 'International Code Council',
    edition: '2015',
  },
  'irc-r806-2012': {
    title: 'International Residential Code, roof ventilation, as digested in a trade article',
    publisher: 'International Code Council',
    edition: '2012',
  },
  'irc-r806-2006': {
    title: 'International Residential Code, roof ventilation, as printed in a handout of a city',
    publisher: 'International Code Council',
    edition: '2006 to 2009',
  },
  'flat-roof-guide': {
    title: 'Flat roof, unvented: assembly guide for climate zone 1A',
    publisher: 'national building laboratory',
    edition: 'IRC 2021',
  },
  'retarder-rules': {
    title:
      'Vapor retarders in low-slope roofs: rules of the trade and of research, as reviewed by a national laboratory',
    publisher: 'national laboratory',
    edition: null,
  },
  'retarder-essay': {
    title: 'Vapor retarders, essay in a trade association magazine',
    publisher: 'trade association',
    edition: '2004',
  },
  'unvented-review': {
    title: 'Vented and unvented roofs, research report',
    publisher: 'building research company',
    edition: 'RR-0404',
  },
  'vent-table': {
    title: 'Net free vent area, worked example of a trade page',
    publisher: 'trade association',
    edition: null,
  },
  'california-2022': {
    title: 'California energy code, low-slope residential alterations, as entered in the rule set of the state',
    publisher: 'State of California',
    edition: '2022',
  },
  'iecc-2009-commercial': {
    title: 'International Energy Conservation Code, commercial roofs, as printed in a trade magazine',
    publisher: 'International Code Council',
    edition: '2009',
  },
  'cool-roof-guide': {
    title: 'Codes and programs for cool roofs',
    publisher: 'trade association',
    edition: null,
  },
} as const satisfies Record<string, Source>;
