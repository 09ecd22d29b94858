import type { Source } from '../source.ts';

/** Documents about coverings: standards, guide specifications, codes' covering chapters, measured values. */
export const materialSources = {
  'astm-e1980': {
    title: 'ASTM E1980, solar reflectance index of horizontal and low-sloped opaque surfaces',
    publisher: 'ASTM International',
    edition: null,
  },
  'barnes-2014': {
    title: 'Barnes, Lehman and Mulla, Priority-flood: an optimal depression-filling and watershed-labeling algorithm',
    publisher: 'Computers & Geosciences 62',
    edition: '2014',
  },
  'astm-d6694': {
    title: 'ASTM D6694/D6694M, liquid-applied silicone coating used in spray polyurethane foam roofing',
    publisher: 'ASTM International',
    edition: '2008',
  },
  'iecc-c402-3': {
    title: 'International Energy Conservation Code, section C402.3 (roof solar reflectance and thermal emittance)',
    publisher: 'International Code Council',
    edition: '2018',
  },
  'ca-title-24': {
    title: 'California Title 24, part 6 (cool roofs)',
    publisher: 'California Energy Commission',
    edition: '2013 and later',
  },
  'lbnl-materials': {
    title: 'Solar reflectance and emittance of roofing materials',
    publisher: 'Lawrence Berkeley National Laboratory',
    edition: null,
  },
  'ornl-coatings': {
    title: 'Weathering of coatings on a low-slope test stand (abstract)',
    publisher: 'Oak Ridge National Laboratory',
    edition: null,
  },
  'ufgs-07550': {
    title: 'Unified Facilities Guide Specifications, section 07550 (modified bitumen roofing)',
    publisher: 'US Department of Defense',
    edition: null,
  },
  'ufgs-epdm': {
    title: 'Unified Facilities Guide Specifications, section 07530 (elastomeric roofing)',
    publisher: 'US Department of Defense',
    edition: null,
  },
  'ti-809-roofing': {
    title: 'Technical instructions TI 809, roofing commentary',
    publisher: 'US Army Corps of Engineers',
    edition: '1999',
  },
  'ep-415': {
    title: 'EP 415, construction inspection of built-up roofing',
    publisher: 'US Army Corps of Engineers',
    edition: null,
  },
  'va-07-54-23': {
    title: 'Master specification 07 54 23, thermoplastic polyolefin roofing',
    publisher: 'US Department of Veterans Affairs',
    edition: '2016',
  },
  'hawaii-guide': {
    title: 'Roofing guide for state buildings',
    publisher: 'State of Hawaii',
    edition: null,
  },
  'alberta-manual': {
    title: 'Roofing application standards manual (Alberta), parts on EPDM and modified bitumen',
    publisher: 'trade association',
    edition: null,
  },
  'canada-bulletin': {
    title: 'Technical bulletin on flameless and self-adhered details',
    publisher: 'trade association',
    edition: null,
  },
  'epdm-faq': {
    title: 'Design questions on EPDM roofs (standing water, repair)',
    publisher: 'trade association',
    edition: null,
  },
  'roll-roofing-guide': {
    title: 'Roll roofing guide (dimensions, laps, least slope, life)',
    publisher: 'home-inspection reference',
    edition: null,
  },
  'torch-guidance-2019': {
    title: 'Column on the 2019 torch safety manual',
    publisher: 'trade association',
    edition: '2019',
  },
  'ufgs-07600': {
    title: 'Unified Facilities Guide Specifications, section 07600 (flashing and sheet metal)',
    publisher: 'US Department of Defense',
    edition: null,
  },
  'county-re-roof': {
    title: 'Project specification of a county building re-roof (single-ply)',
    publisher: 'a county government',
    edition: null,
  },
  'edge-fastening-2006': {
    title: 'Column on the 2003 and 2006 rules for more fasteners at perimeter and corners of insulation boards',
    publisher: 'trade association',
    edition: '2006',
  },
  'mo-312': {
    title: 'MO-312, wood protection (moisture at which wood decays, reading decay)',
    publisher: 'US Navy facilities command',
    edition: null,
  },
  'epdm-army-survey': {
    title: 'Survey of 73 rubber-sheet roofs of the US Army (entry in a trade library)',
    publisher: 'trade association',
    edition: null,
  },
  'state-debris-factors': {
    title: 'Construction and demolition debris conversion factors',
    publisher: 'State of California',
    edition: null,
  },
} as const satisfies Record<string, Source>;
