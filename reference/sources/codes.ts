import type { Source } from '../source.ts';

/** Building, plumbing and load documents, and the trade texts from which the drainage tables were read. */
export const codeSources = {
  'state-energy-taper': {
    title: 'Washington State Energy Code, WAC 51-11C-610226, Tables A102.2.6(1) and (2)',
    publisher: 'State of Washington',
    edition: '51-11C',
  },
  'ashrae-trans-117': {
    title: 'ASHRAE Transactions 117 part 1, thermal performance of tapered insulation',
    publisher: 'ASHRAE',
    edition: '2011',
  },
  'iecc-ceilings': {
    title: 'Minimum insulation of new homes in the editions 2009 to 2021 of the International Energy Conservation Code',
    publisher: 'national building laboratory',
    edition: null,
  },
  'iecc-residential': {
    title: 'International Energy Conservation Code, residential provisions',
    publisher: 'International Code Council',
    edition: null,
  },
  'iecc-commercial': {
    title: 'International Energy Conservation Code, commercial provisions',
    publisher: 'International Code Council',
    edition: null,
  },
  'iecc-502-taper': {
    title: 'International Energy Conservation Code, tapered insulation, as explained in a trade association magazine',
    publisher: 'trade association',
    edition: '2006 and 2009',
  },
  'iecc-c503': {
    title: 'International Energy Conservation Code, existing buildings, as explained in a trade magazine',
    publisher: 'trade magazine',
    edition: '2015',
  },
  'ashrae-90-1': {
    title: 'ASHRAE 90.1, building envelope requirements, from a public copy of the tables',
    publisher: 'ASHRAE',
    edition: '2019',
  },
  'irc-r806-5': {
    title: 'International Residential Code, unvented roofs, as written out in a public rule set',
    publisher: 'International Code Council',
    edition: '2018, unchanged in 2021',
  },
  'state-energy-replacement': {
    title: 'Washington State Energy Code, WAC 51-11C-40221 (roof insulation)',
    publisher: 'State of Washington',
    edition: '51-11C',
  },
  'minn-1323': {
    title: 'Minnesota Rules 1323.0402 (commercial energy code, roof replacement)',
    publisher: 'State of Minnesota',
    edition: null,
  },
  'square-point-picking': {
    title: 'Square point picking, closed forms of mean distances',
    publisher: 'an online mathematics handbook',
    edition: null,
  },

  'irc-2018': { title: 'International Residential Code', publisher: 'International Code Council', edition: '2018' },
  'irc-2021': { title: 'International Residential Code', publisher: 'International Code Council', edition: '2021' },
  'irc-2024': { title: 'International Residential Code', publisher: 'International Code Council', edition: '2024' },
  'ibc-2018': { title: 'International Building Code', publisher: 'International Code Council', edition: '2018' },
  'ibc-2021': { title: 'International Building Code', publisher: 'International Code Council', edition: '2021' },
  'ibc-2024': { title: 'International Building Code', publisher: 'International Code Council', edition: '2024' },
  'iebc-2018': {
    title: 'International Existing Building Code',
    publisher: 'International Code Council',
    edition: '2018',
  },
  'ibc-1611-rain': {
    title: 'International Building Code, section 1611 (rain loads)',
    publisher: 'International Code Council',
    edition: '2021',
  },
  'ibc-t1604-3': {
    title: 'International Building Code, Table 1604.3 (deflection limits)',
    publisher: 'International Code Council',
    edition: 'as reprinted in an engineering magazine',
  },
  'icc-performance': {
    title: 'ICC Performance Code, Table 501.3.4 (size of rain event)',
    publisher: 'International Code Council',
    edition: 'as read on a public code page',
  },
  'ipc-2012': { title: 'International Plumbing Code', publisher: 'International Code Council', edition: '2012' },
  'ipc-2015': { title: 'International Plumbing Code', publisher: 'International Code Council', edition: '2015' },
  'ipc-2018': { title: 'International Plumbing Code', publisher: 'International Code Council', edition: '2018' },
  'ipc-2018-app-b': {
    title: 'International Plumbing Code, Appendix B (rates of rainfall for various cities)',
    publisher: 'International Code Council',
    edition: '2018',
  },
  'ipc-2021': { title: 'International Plumbing Code', publisher: 'International Code Council', edition: '2021' },
  'upc-2000': {
    title: 'Uniform Plumbing Code, storm drainage tables, as reprinted in a state extension bulletin (B-6240)',
    publisher: 'state university extension service',
    edition: '2000',
  },
  'upc-app-d': {
    title: 'Uniform Plumbing Code, Appendix D (sizing storm-water drainage systems)',
    publisher: 'plumbing code body',
    edition: 'edition not stated',
  },
  'upc-2021': {
    title: 'Uniform Plumbing Code, section 1103.4 (vertical walls), as quoted in training text',
    publisher: 'plumbing code body',
    edition: '2021',
  },
  'cpc-2010': { title: 'California Plumbing Code', publisher: 'State of California', edition: '2010' },
  'chicago-18-29': {
    title: 'Municipal Code of Chicago, chapter 18-29 (plumbing), roof drains and strainers',
    publisher: 'City of Chicago',
    edition: 'as read on a public code page',
  },
  'nspc-2006': { title: 'National Standard Plumbing Code', publisher: 'trade association', edition: '2006' },
  'nspc-2015': {
    title: 'National Standard Plumbing Code, Appendix A',
    publisher: 'trade association',
    edition: '2015',
  },
  'louisiana-plumbing': {
    title: 'Louisiana Administrative Code 51:XIV (plumbing), sections 1113, 1115 and 1803',
    publisher: 'State of Louisiana',
    edition: null,
  },
  'minn-1305': {
    title: 'Minnesota Rules 1305.1507 (amends the building code)',
    publisher: 'State of Minnesota',
    edition: '2014',
  },
  'florida-hvhz': {
    title: 'Florida Building Code 1514.4.2 and training text on roof drainage in high-velocity hurricane zones',
    publisher: 'State of Florida',
    edition: 'about 2004',
  },
  'asce-7-05-c8': {
    title: 'ASCE 7-05, commentary to chapter 8 (rain loads)',
    publisher: 'American Society of Civil Engineers',
    edition: '2005',
  },
  'asce-7-16': {
    title: 'ASCE 7-16, chapter 8 (rain loads)',
    publisher: 'American Society of Civil Engineers',
    edition: '2016',
  },
  'asce-7-16-snow': {
    title: 'ASCE 7-16, chapter 7 (snow loads)',
    publisher: 'American Society of Civil Engineers',
    edition: '2016',
  },
  'drift-example': {
    title: 'Roof-step snow drift worked under ASCE 7-16 and 7-22, article of a structural engineer',
    publisher: 'engineering office',
    edition: null,
  },
  'asce-7-22': {
    title: 'ASCE 7-22, chapter 8 (rain loads), as described in an engineering magazine',
    publisher: 'American Society of Civil Engineers',
    edition: '2022',
  },
  'asce-7-example': {
    title: 'Rain load calculation, ASCE 7 example 2, worked',
    publisher: 'lecture notes',
    edition: null,
  },
  'bs-6229-2018': {
    title: 'BS 6229, flat roofs with continuously supported flexible waterproof coverings',
    publisher: 'British Standards Institution',
    edition: '2018, as summarised in the trade press',
  },
  'nds-kcr': {
    title: 'National Design Specification for wood, 3.5.2 (long-term loading), as explained by its publisher',
    publisher: 'trade association',
    edition: '2012',
  },
  'fpl-ponding': {
    title: 'Wood handbook page on ponding of flat roofs',
    publisher: 'US Forest Products Laboratory',
    edition: null,
  },
  'builders-deflection': {
    title: 'Article on drainage problems of low-slope roofs',
    publisher: 'builders magazine',
    edition: null,
  },
  'engineers-list-2000': {
    title: "Engineers' discussion of ponding and slope, mailing list archive",
    publisher: 'structural engineers association',
    edition: '2000',
  },
  'gutter-magazine': {
    title: 'Gutter sizing by adjusted area and five-minute rain',
    publisher: 'home improvement magazine',
    edition: null,
  },
  'gutter-rain-list': {
    title: 'List of five-minute rain by city for gutter sizing',
    publisher: 'gutter contractor',
    edition: null,
  },
  'copper-manual': {
    title: 'Copper flashings, a manual, page 63 (leaders and gutters)',
    publisher: 'trade association',
    edition: 'historic edition',
  },
  'inspection-notes': {
    title: 'Notes on slopes and downspouts for home inspectors',
    publisher: 'inspection school',
    edition: null,
  },
  'weir-table': {
    title: 'Table of the Francis formula for rectangular weirs with end contractions',
    publisher: 'engineering handbook page',
    edition: null,
  },
  'scupper-area-page': {
    title: 'Worked page on overflow scuppers (area table at 5 in/h)',
    publisher: 'trade page',
    edition: null,
  },
  'pipe-table-forum': {
    title: 'Comparison of storm pipe tables of 2012 and 2021',
    publisher: 'plumbing forum',
    edition: null,
  },
  'leader-table-copy': {
    title: 'Round leader capacities labelled IPC 2021, public copy',
    publisher: 'second-hand copy',
    edition: '2021',
  },
  'leader-reprint': {
    title: 'Reprinted leader and storm drain tables',
    publisher: 'second-hand reprint',
    edition: null,
  },
  'plumbing-sizing-lecture': {
    title: 'Lecture on sizing roof leaders and scuppers',
    publisher: 'lecture notes',
    edition: null,
  },
  'plumbing-question': {
    title: 'Question on leader areas of the plumbing code of 2012',
    publisher: 'examination text',
    edition: null,
  },
  'drain-study-question': {
    title: 'Exercise on sizing roof drains and scuppers',
    publisher: 'architects examination forum',
    edition: null,
  },
  'insurer-data-sheet': {
    title: 'Data sheet on roof loads and drainage',
    publisher: 'property insurer',
    edition: null,
  },
  'ars-tombstone': {
    title: 'Pan evaporation rates of southeastern Arizona',
    publisher: 'US Department of Agriculture, Agricultural Research Service',
    edition: null,
  },
  'noaa-atlas-14': {
    title: 'NOAA Atlas 14, precipitation frequency (layout of the answer as used in public code)',
    publisher: 'National Weather Service',
    edition: null,
  },
  'recover-article': {
    title: 'Article on recovering versus replacing under IBC 2012, 1510.3',
    publisher: 'trade magazine',
    edition: '2012',
  },
  'nyc-1511': { title: 'New York City Building Code 1511.3.1.1', publisher: 'City of New York', edition: null },
  'cricket-pages': {
    title: 'Pages on chimney crickets under IRC R903.2.2 and R1003.20',
    publisher: 'inspectors and trade pages',
    edition: null,
  },
} as const satisfies Record<string, Source>;
