import type { Source } from '../source.ts';

/** Documents about keeping people unhurt: federal and state rules, fire documents, health guidance. */
export const safetySources = {
  'osha-1926-500': {
    title: 'OSHA 29 CFR 1926.500 (fall protection: scope and definitions)',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-1926-501': {
    title: 'OSHA 29 CFR 1926.501 (duty to have fall protection)',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-1926-502': {
    title: 'OSHA 29 CFR 1926.502 (fall protection systems)',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-1926-m-app-a': {
    title: 'OSHA 29 CFR 1926 Subpart M, Appendix A (determining roof widths, non-mandatory)',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-1926-503': {
    title: 'OSHA 29 CFR 1926.503 (fall protection training)',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-1926': {
    title: 'OSHA 29 CFR 1926 (construction)',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-1926-1101': {
    title: 'OSHA 29 CFR 1926.1101 (asbestos in construction)',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-1910': {
    title: 'OSHA 29 CFR 1910 (general industry)',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-letters': {
    title: 'OSHA standard interpretation letters',
    publisher: 'US Department of Labor',
    edition: null,
  },
  'osha-heat-proposal': {
    title: 'OSHA proposed rule, heat injury and illness prevention',
    publisher: 'US Department of Labor',
    edition: 'proposal of 30 August 2024, check its status',
  },
  'osha-noaa-lightning': {
    title: 'Lightning safety when working outdoors, fact sheet',
    publisher: 'OSHA and NOAA',
    edition: null,
  },
  'lid-fatality-report': {
    title: 'Fatality investigation, fall through an opening under an unsecured lid',
    publisher: 'NIOSH',
    edition: null,
  },
  'cal-title-8': {
    title: 'California Code of Regulations, Title 8 (sections 1726, 1730, 1731, 3395)',
    publisher: 'State of California',
    edition: 'as read 2024-2025',
  },
  'wac-296-880': {
    title: 'Washington Administrative Code 296-880 (fall protection)',
    publisher: 'State of Washington',
    edition: null,
  },
  'oar-437-003': {
    title: 'Oregon Administrative Rules 437-003 (construction)',
    publisher: 'State of Oregon',
    edition: null,
  },
  'imc-304-11': {
    title: 'International Mechanical Code, section 304.11 (guards)',
    publisher: 'International Code Council',
    edition: null,
  },
  'ifc-2018': {
    title: 'International Fire Code',
    publisher: 'International Code Council',
    edition: '2018',
  },
  'nfpa-1': {
    title: 'NFPA 1, fire code (tar kettles)',
    publisher: 'National Fire Protection Association',
    edition: null,
  },
  'nfpa-51b': {
    title: 'NFPA 51B, fire prevention during welding, cutting and other hot work',
    publisher: 'National Fire Protection Association',
    edition: '2019',
  },
  'nfpa-51b-2014': {
    title: 'NFPA 51B, fire prevention during welding, cutting and other hot work',
    publisher: 'National Fire Protection Association',
    edition: '2014',
  },
  'nfpa-241': {
    title: 'NFPA 241, safeguarding construction, alteration and demolition operations',
    publisher: 'National Fire Protection Association',
    edition: '2022',
  },
  'torch-program': {
    title: 'Torch applicator training program, fire protection requirements',
    publisher: 'trade association',
    edition: null,
  },
  'torch-column-2004': {
    title: 'Technical column on torching and building openings',
    publisher: 'trade association',
    edition: 'May 2004',
  },
  'torch-column-2013': {
    title: 'Technical column on the thermal barrier before torching',
    publisher: 'trade association',
    edition: 'February 2013',
  },
  'hot-work-permit-form': { title: 'Hot-work permit form', publisher: 'property insurer', edition: null },
  'hot-work-fires': {
    title: 'Structure fires started by hot work',
    publisher: 'National Fire Protection Association',
    edition: '2023',
  },
  'neshap-asbestos': {
    title: '40 CFR 61 Subpart M and its Appendix A (asbestos)',
    publisher: 'US Environmental Protection Agency',
    edition: null,
  },
  'fr-60-38725': {
    title: '60 FR 38725 (small residential buildings under the asbestos rule)',
    publisher: 'US Environmental Protection Agency',
    edition: '28 July 1995',
  },
  'epa-rrp': {
    title: '40 CFR 745 (lead renovation, repair and painting)',
    publisher: 'US Environmental Protection Agency',
    edition: null,
  },
  'niosh-asphalt': {
    title: 'Asphalt fume exposures during the application of hot asphalt to roofs, 2003-112',
    publisher: 'NIOSH',
    edition: '2003',
  },
  'niosh-histoplasmosis': {
    title: 'Histoplasmosis: protecting workers at risk, 2005-109',
    publisher: 'NIOSH',
    edition: '2005',
  },
  'isocyanate-guidance': {
    title: 'Health and safety with spray polyurethane foam',
    publisher: 'weatherization assistance program',
    edition: null,
  },
  'ventura-74-20': {
    title: 'Rule 74.20, adhesives and sealants',
    publisher: 'Ventura County air district',
    edition: null,
  },
  'cpsc-generator': {
    title: 'Carbon monoxide from portable generators, release',
    publisher: 'US Consumer Product Safety Commission',
    edition: null,
  },
  'nec-300-4': {
    title: 'National Electrical Code, article 300.4(E) (wiring under roof decking)',
    publisher: 'National Fire Protection Association',
    edition: '2008 and 2011',
  },
  'nec-690-12': {
    title: 'National Electrical Code, article 690.12 (rapid shutdown of solar on buildings)',
    publisher: 'National Fire Protection Association',
    edition: null,
  },
  'line-clearance-twin': {
    title: 'State twin of OSHA 29 CFR 1926.451(f)(6) (clearance to power lines), WAC 296-874-20046',
    publisher: 'State of Washington',
    edition: null,
  },
  'iebc-gravity': {
    title: 'International Existing Building Code, section 606.2 (added gravity load of a re-roof)',
    publisher: 'International Code Council',
    edition: '2012 to 2015',
  },
  'canada-reroofing': {
    title: 'Roofing reference manual, re-roofing operations',
    publisher: 'trade association',
    edition: null,
  },
  'uk-wind-guide': {
    title: 'Guide on wind speed for roof work (United Kingdom), as quoted',
    publisher: 'trade press',
    edition: null,
  },
} as const satisfies Record<string, Source>;
