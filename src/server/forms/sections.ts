import { criteria } from '../../../reference/membranes/criteria.ts';
import { membraneOptions } from '../../../reference/membranes/options.ts';
import { buildingRules, plumbingRules } from '../../../reference/rule-sets.ts';
import * as choices from '../../input/choices.ts';
import { fields, type SingleField } from '../../units/fields.ts';
import type { FieldKind, FieldSpec, GroupSpec, SectionSpec } from './spec.ts';

const field = (key: string, label: string, kind: FieldKind, hint?: string): FieldSpec => ({
  ...kind,
  key,
  label,
  hint,
});

const measure = (key: string, label: string, of: SingleField, hint?: string): FieldSpec =>
  field(key, `${label} (${fields[of].words})`, { kind: 'measure', field: of }, hint);

const choice = (key: string, label: string, options: Readonly<Record<string, string>>, none?: string): FieldSpec =>
  field(key, label, { kind: 'choice', options, none });

const yesNo = (key: string, label: string, hint?: string): FieldSpec => field(key, label, { kind: 'yes-no' }, hint);
const text = (key: string, label: string, hint?: string): FieldSpec => field(key, label, { kind: 'text' }, hint);
const whole = (key: string, label: string, hint?: string): FieldSpec => field(key, label, { kind: 'whole' }, hint);
const point = (key: string, label: string, hint = 'feet east, feet north: 12, 7.5'): FieldSpec =>
  field(key, label, { kind: 'point' }, hint);
const side = (key = 'side', label = 'Side'): FieldSpec => field(key, label, { kind: 'side' });

const titles = (rows: readonly { id: string; title?: string; name?: string }[]): Record<string, string> =>
  Object.fromEntries(rows.map(({ id, title, name }) => [id, title ?? name ?? id]));

const folded = (fold: string, specs: readonly FieldSpec[]): FieldSpec[] => specs.map((spec) => ({ ...spec, fold }));

const fromTo = [measure('fromFt', 'From', 'length', 'from its first corner'), measure('toFt', 'To', 'length')];

const edges: GroupSpec = {
  at: 'edges',
  title: 'Edges',
  note: 'What each side is, and whether water may ever leave over it. A side without an entry is taken as closed.',
  list: { what: 'edge', blank: 1, every: 'side' },
  fields: [
    side(),
    choice('kind', 'What it is', choices.edgeKinds),
    choice('mayDrain', 'May water leave here?', choices.answers),
    ...folded('Only a part of the side', fromTo),
    ...folded('Shingled slope above', [
      measure('pitchIn12', 'Pitch of the shingled slope', 'pitch'),
      measure('shedsSqFt', 'Steep roof that sheds onto it', 'area'),
    ]),
    ...folded('Gutter', [
      choice('gutter.profile', 'Gutter shape', choices.gutterProfiles),
      measure('gutter.sizeIn', 'Gutter size', 'thickness'),
      measure('gutter.slopeInPerFt', 'Fall of the gutter', 'slope'),
      field(
        'gutter.downspouts',
        'Downspouts along the side (feet)',
        { kind: 'distances' },
        'distances from its first corner: 1, 29; "none" where there is none',
      ),
      field('gutter.downspoutSizeIn', 'Downspout size (inches)', { kind: 'pair' }, '2 x 3'),
    ]),
  ],
};

const planAndEdges: SectionSpec = {
  slug: 'plan',
  title: 'Plan and edges',
  lead: 'The perimeter as you walk it, and what stands at each side.',
  groups: [
    {
      at: '',
      title: 'The perimeter',
      fields: [
        text('label', 'Name of the roof'),
        field(
          'outline',
          'Perimeter',
          { kind: 'outline' },
          `walked: 30' ahead, left, 24'-6", left, 30', left, 24'-6"; or corners in feet, one to a line: 0, 0`,
        ),
      ],
    },
    edges,
    {
      at: 'inflows',
      title: 'Water from elsewhere',
      note: 'Downspouts and valleys of other roofs that empty onto this section.',
      list: { what: 'inflow', blank: 1 },
      fields: [
        point('at', 'Where'),
        choice('kind', 'What', choices.inflowKinds, 'choose one'),
        measure('fromSqFt', 'Roof behind it', 'area'),
      ],
    },
    {
      at: 'building',
      title: 'The building',
      fields: [
        measure('heightFt', 'Height of the edge above the ground', 'length'),
        choice('below', 'What is below', choices.belowKinds),
        whole('yearBuilt', 'Year built'),
        field('planFt', 'Whole building in plan (feet)', { kind: 'pair' }, '52 x 34'),
        whole('winterHumidityPct', 'Humidity of the rooms in January (percent)', 'a 10-dollar meter shows it'),
      ],
    },
    {
      at: 'place',
      title: 'The place',
      fields: [
        text('city', 'Town', 'Town, ST'),
        text('state', 'State', 'two letters'),
        text('climateZone', 'Climate zone', '4A'),
        whole('californiaZone', 'California energy zone, 1 to 16', 'in California only'),
        measure('groundSnowPsf', 'Ground snow load', 'load', 'the building office knows it; 0 where it never snows'),
        ...folded('Rain rate, where you know it', [
          measure('rain.inPerHr', 'Rate', 'rain'),
          measure('rain.durationMin', 'Lasting', 'minutes'),
          measure('rain.returnYears', 'Comes back every', 'years'),
        ]),
      ],
    },
  ],
};

const heights: SectionSpec = {
  slug: 'heights',
  title: 'Heights and openings',
  lead: 'The lowest sill, siding or shingle decides how thick the new roof may get. Heights are measured from the surface that is read, at that spot.',
  groups: [
    {
      at: 'edges',
      title: 'Heights at the edges',
      list: { what: 'edge', blank: 0 },
      fields: [
        field(
          'topIn',
          'Top of the parapet or rake stop (inches)',
          { kind: 'ends' },
          'one height, or start, end: 14, 16',
        ),
        field('clearIn', 'Lowest siding, shingle or flashing (inches)', { kind: 'ends' }, 'one height, or start, end'),
        measure('wallHeightFt', 'Wall above the section', 'length', 'for the rain that it sheds'),
      ],
      inner: [
        {
          at: 'openings',
          title: 'Openings in this side',
          list: { what: 'opening', blank: 1 },
          fields: [
            choice('kind', 'What', choices.openingKinds, 'choose one'),
            measure('heightIn', 'Height of its sill', 'height'),
            measure('fromFt', 'From', 'length'),
            measure('toFt', 'To', 'length'),
          ],
        },
      ],
    },
  ],
};

const curbsAndPipes: SectionSpec = {
  slug: 'curbs',
  title: 'Curbs and pipes',
  lead: 'Everything that comes up through the roof: each keeps its height above the new surface.',
  groups: [
    {
      at: 'curbs',
      title: 'Curbs',
      list: { what: 'curb', blank: 1 },
      fields: [
        text('id', 'Name'),
        choice('kind', 'What', choices.curbKinds),
        field(
          'outline',
          'Place and size (feet)',
          { kind: 'ring' },
          'size at its lower left corner: 4 x 4 at 9, 13; or corners, one to a line',
        ),
        measure('heightIn', 'Height of the curb', 'height'),
      ],
    },
    {
      at: 'pipes',
      title: 'Pipes',
      list: { what: 'pipe', blank: 1 },
      fields: [
        choice('kind', 'What', choices.pipeKinds, 'choose one'),
        point('at', 'Where'),
        measure('diameterIn', 'Diameter', 'thickness'),
        measure('topIn', 'Height of its top', 'height'),
      ],
    },
  ],
};

const outletFields = [
  choice('kind', 'What', { drain: 'drain in the roof', scupper: 'scupper through a wall or parapet' }, 'choose one'),
  text('id', 'Name', 'D1, S1'),
  choice('role', 'Takes', choices.outletRoles),
  choice('status', 'Is it there?', choices.statuses),
  yesNo('working', 'Does it work?'),
  measure('inletIn', 'Height at which water enters', 'height'),
  ...folded('A drain', [
    point('at', 'Where'),
    measure('sizeIn', 'Pipe size', 'thickness'),
    measure('insertBoreIn', 'Inside of a retrofit insert', 'thickness', 'nothing where there is none'),
    choice('strainer', 'Strainer', choices.strainers),
    field(
      'strainerFreeSqIn',
      'Free area of the strainer (square inches)',
      { kind: 'share' },
      'all openings together: 24',
    ),
    choice('leaderRoute', 'Is there a way down for its pipe?', choices.answers),
  ]),
  ...folded('A scupper', [
    side('side', 'In which side'),
    measure('alongFt', 'From the first corner of the side to its middle', 'length'),
    measure('widthIn', 'Width', 'thickness'),
    measure('heightIn', 'Height', 'thickness'),
  ]),
];

const outlets: SectionSpec = {
  slug: 'outlets',
  title: 'Outlets',
  lead: 'Drains and scuppers that are there, and those you would like to add. Gutters belong to the edges.',
  groups: [{ at: 'outlets', title: 'Outlets', list: { what: 'outlet', blank: 1 }, fields: outletFields }],
};

/** How readings were taken; beside the marks of the survey too. */
export const howRead: readonly FieldSpec[] = [
  choice('sense', 'Which way the readings count', choices.senses),
  measure('referenceIn', 'Water level: mark on the reference tube', 'height', 'nothing where readings are differences'),
  measure('errorIn', 'A reading is good to', 'thickness', 'nothing: what is usual for the instrument'),
  choice('readOn', 'Read on', choices.readOnKinds),
];

export const stringLines: GroupSpec = {
  at: 'existing.strings',
  title: 'String lines',
  note: 'A string pulled tight between two spots. A reading is the gap under it: a larger gap is a lower point.',
  list: { what: 'string', blank: 1 },
  fields: [
    point('from', 'First end'),
    point('to', 'Other end'),
    measure('fromIn', 'Height of the string at its first end', 'height', 'neither end: level, at height zero'),
    measure('toIn', 'Height at its other end', 'height'),
    measure('sagIn', 'How far the string hangs at its middle', 'thickness', 'nothing: taken as straight'),
    field(
      'readings',
      'Gaps under it',
      { kind: 'readings' },
      'one to a line: feet from the first end, inches: 4, 1 1/2"',
    ),
  ],
};

const today: SectionSpec = {
  slug: 'today',
  title: 'The roof today',
  lead: 'Where water stands and how the surface runs. What somebody saw two days after rain outranks every computation.',
  groups: [
    {
      at: 'existing',
      title: 'The surface',
      note: 'Give readings, planes or "level": only one of them. Readings say most.',
      fields: [
        choice('surface', 'Level all over?', { level: 'level, checked with a level' }, 'not known, or see below'),
        field(
          'readings',
          'Level readings',
          { kind: 'readings' },
          'one to a line: feet east, feet north, inches: 15, 12, -0.75',
        ),
        ...howRead,
        measure('buildUpIn', 'Thickness of everything above the deck', 'thickness'),
        yesNo('seenDryAfter48h', 'Was it seen dry two days after rain?'),
        ...folded('Sag of the joists, where no readings were taken', [
          measure('sag.depthIn', 'Sag at the middle of a span', 'thickness'),
          whole('sag.spanOver', 'or as span over this number', '240'),
          measure('sag.spanFt', 'Span', 'length'),
          measure('sag.directionDeg', 'The joists run', 'bearing'),
        ]),
      ],
    },
    stringLines,
    {
      at: 'existing.planes',
      title: 'Planes',
      list: { what: 'plane', blank: 1 },
      fields: [
        measure('slopeInPerFt', 'Slope', 'slope'),
        field('fallsToward', 'Falls toward', { kind: 'toward' }, 'side 0, NE, or degrees clockwise from north'),
        field('where', 'Part that it covers (feet)', { kind: 'ring' }, 'nothing for all of it'),
        field('through', 'Through the point', { kind: 'place-and-height' }, 'feet east, feet north, inches'),
        ...folded('Rise that was measured, to check the slope', [
          measure('riseIn', 'Rise', 'thickness'),
          measure('runFt', 'Over a run of', 'length', 'straight up the fall'),
        ]),
      ],
    },
    {
      at: 'existing.seenPonds',
      title: 'Ponds that were seen',
      list: { what: 'pond', blank: 1 },
      fields: [
        point('at', 'Where it is deepest'),
        measure('depthIn', 'How deep', 'thickness'),
        measure('hoursAfterRain', 'How long after rain', 'hours'),
        field('outline', 'Its outline (feet)', { kind: 'ring' }),
      ],
    },
  ],
};

const findings: SectionSpec = {
  slug: 'findings',
  title: 'What was found',
  lead: 'Everything that was seen on the roof, at its eaves and from below. Each finding stands with its number on the plan.',
  groups: [
    {
      at: 'findings',
      title: 'Findings',
      note: 'A spot, a stretch of an edge, or an area: only one of them. Nothing where nobody noted the place.',
      list: { what: 'finding', blank: 1 },
      fields: [
        choice('kind', 'What', choices.findingKinds, 'choose one'),
        choice('severity', 'How bad', choices.severities),
        choice('foundBy', 'How it was found', choices.foundByKinds),
        point('at', 'Spot'),
        ...folded('Along an edge', [side('side', 'Side'), ...fromTo]),
        ...folded('Over an area', [
          field('outline', 'Its outline (feet)', { kind: 'ring' }, 'size at its lower left corner: 4 x 4 at 9, 13'),
          measure('areaSqFt', 'or how much, without an outline', 'area'),
        ]),
        measure('sizeIn', 'Size that tells most', 'thickness', 'how far a flashing stands off, how wide a split is'),
        text('note', 'Note'),
      ],
    },
  ],
};

const buildUp: SectionSpec = {
  slug: 'build-up',
  title: 'Covering, deck, insulation and rules',
  lead: 'What lies there now, what the new roof must reach, and the codes it is judged by.',
  groups: [
    {
      at: 'covering',
      title: 'Old covering',
      fields: [
        choice('kind', 'What', choices.coveringKinds),
        whole('layers', 'Layers'),
        measure('ageYears', 'Age', 'age'),
      ],
    },
    {
      at: 'deck',
      title: 'Deck',
      fields: [
        choice('kind', 'What', choices.deckKinds),
        measure('thicknessIn', 'Thickness', 'thickness'),
        measure('liveLoadPsf', 'Live load it was made for', 'load'),
        ...folded('Joists', [
          measure('joists.spanFt', 'Span', 'length'),
          measure('joists.depthIn', 'Depth', 'thickness'),
          measure('joists.spacingIn', 'Spacing', 'thickness'),
          measure('joists.directionDeg', 'They run', 'bearing'),
        ]),
      ],
    },
    {
      at: 'insulation',
      title: 'Insulation',
      fields: [
        measure('targetR', 'R to reach', 'rValue'),
        measure(
          'baseIn',
          'Flat layer under the taper',
          'thickness',
          'nothing: none; the answer says which layer would reach the R',
        ),
        yesNo('keepExisting', 'Keep the old insulation?'),
        ...folded('Insulation below the deck', [
          choice('below.kind', 'What lies below the deck', choices.belowInsulationKinds),
          measure('below.thicknessIn', 'How thick', 'thickness'),
          measure('below.r', 'R of it, where it is known', 'rValue'),
          choice('below.vented', 'Does outside air pass over it?', choices.answers),
        ]),
        ...folded('Flat boards in place of a taper', [
          measure(
            'flatIn',
            'Flat boards over the whole deck',
            'thickness',
            'only where the deck falls enough by itself',
          ),
          whole('flatRPerIn', 'R per inch of them', '5.7'),
        ]),
      ],
    },
    {
      at: '',
      title: 'Tear-off',
      fields: [
        measure('removedIn', 'Build-up that is torn off', 'thickness', 'left empty: all of it; 0: the old roof stays'),
        measure('wind.mph', 'Wind', 'speed'),
        text('wind.edition', 'Edition of the wind map'),
      ],
    },
    {
      at: 'slopeRule',
      title: 'Slope asked for',
      fields: [
        measure('faceInPerFt', 'Planes at least', 'slope'),
        measure('valleyInPerFt', 'Valleys at least', 'slope'),
        yesNo('strict', 'Must valleys reach the slope of the planes too?'),
      ],
    },
    {
      at: 'ruleSet',
      title: 'Codes',
      note: 'The building office says which editions it enforces.',
      fields: [
        choice('building', 'Building code', titles(buildingRules)),
        choice('plumbing', 'Plumbing code', titles(plumbingRules)),
        ...folded('Fixed locally', [
          measure('local.rainInPerHr', 'Rain', 'rain'),
          field('local.wallShare', 'Share of walls', { kind: 'share' }, 'between 0 and 1'),
          measure('local.minimumFlashingIn', 'Flashing height', 'thickness'),
          measure('local.birdBathIn', 'Depth of water that may stay', 'thickness'),
          measure('local.birdBathSqFt', 'Water is flagged from this area on', 'area'),
          yesNo('local.overflowRequired', 'Are overflows required?'),
          choice('local.taperRule', 'Energy code for tapered insulation', choices.taperRules),
        ]),
      ],
    },
  ],
};

const boards: SectionSpec = {
  slug: 'boards',
  title: 'Boards and prices',
  lead: 'What your supplier has and what you pay. Leave this empty to lay out with boards that are common to the trade; where a list is given, only its boards are used.',
  groups: [
    {
      at: 'boards.groups',
      title: 'Tapered boards',
      note: 'One group to each slope: boards that follow on from each other, then the same again on fill. Of two groups of one slope the first is used; boards that start at 0 are for crickets.',
      list: { what: 'group of boards', blank: 1 },
      fields: [
        measure('slopeInPerFt', 'Slope', 'slope'),
        measure('runFt', 'Length along the slope', 'length', '4 or 8'),
        measure('widthFt', 'Length of the level side', 'length', 'nothing: 4'),
        field(
          'lowEdgesIn',
          'Low edges, thinnest first (inches)',
          { kind: 'distances' },
          'two boards at 1/4 in per ft, 4 ft long: 0.5, 1.5',
        ),
        measure('fillStepIn', 'Fill under the next round', 'thickness', 'boards x rise: 2 for two boards of 1 in'),
      ],
    },
    {
      at: 'boards.flat',
      title: 'Flat boards',
      note: 'For the fill under tapered boards and for a base layer.',
      list: { what: 'flat board', blank: 1 },
      fields: [
        measure('thicknessIn', 'Thickness', 'thickness'),
        measure('lengthFt', 'Length', 'length', 'nothing: 8'),
        measure('widthFt', 'Width', 'length', 'nothing: 4'),
      ],
    },
    {
      at: 'boards.strips',
      title: 'Tapered edge strips',
      note: 'Strips that start at nothing and end at a board’s low edge.',
      list: { what: 'edge strip', blank: 1 },
      fields: [
        measure('highIn', 'Thick edge', 'thickness'),
        measure('runIn', 'Width', 'thickness', 'from its thin to its thick edge'),
      ],
    },
    {
      at: 'boards',
      title: 'Small pieces',
      fields: [
        measure(
          'leastPieceIn',
          'Smallest piece that is laid as a board',
          'thickness',
          'nothing: 4; smaller ones are cut from offcuts beside them',
        ),
      ],
    },
    {
      at: 'boards',
      title: 'Sumps at drains',
      note: 'Four steeper planes about a drain, sunk into the flat layer under the taper.',
      fields: [measure('sumpFt', 'Side of a sump', 'length', 'nothing: 4 where there is room; 0: none')],
    },
    {
      at: 'prices',
      title: 'Your prices',
      note: 'In your own money. Layouts are then compared by them; without them by board feet, and new ways out by what common practice makes of them.',
      fields: [
        whole('boardFt', 'A board foot of board, laid'),
        whole('drain', 'A new drain with its leader'),
        whole('scupper', 'A new scupper'),
        whole('edgeFt', 'A foot of gutter where an edge is opened'),
        whole('parapetFt', 'A foot of parapet that is cut down for a gutter'),
      ],
    },
  ],
};

const adjoining: SectionSpec = {
  slug: 'attic',
  title: 'Steep roof beside it',
  lead: 'Leave this empty where no steep roof adjoins. The same visit shows whether its attic has enough vents.',
  groups: [
    {
      at: 'adjoining',
      title: 'Its attic',
      fields: [
        measure('atticSqFt', 'Attic floor that is vented', 'area'),
        choice('ceilingRetarder', 'Is there a vapor retarder on the warm side of its ceiling?', choices.answers),
      ],
    },
    {
      at: 'adjoining.vents',
      title: 'Vents that are there',
      note: 'One entry to each kind. The net free area stands on the label; without it the usual one of its kind is taken.',
      list: { what: 'vent', blank: 1 },
      fields: [
        choice('kind', 'What', choices.ventKinds, 'choose one'),
        whole('count', 'How many', 'pieces; feet of a ridge or soffit strip; square feet of perforated soffit'),
        whole('netFreeSqIn', 'Net free area of one (square inches)', 'of one piece, foot or square foot'),
        yesNo('high', 'Within 3 ft of the highest point?'),
      ],
    },
  ],
};

const preferences: SectionSpec = {
  slug: 'wishes',
  title: 'Wishes and limits',
  lead: 'What the owner and the place ask of the covering.',
  groups: [
    {
      at: 'preferences',
      title: 'The covering',
      fields: [
        yesNo('noFlame', 'Must open flame be kept off this job?'),
        yesNo('residueRemovedOrCovered', 'Will old asphalt be taken off or covered?'),
        yesNo('grease', 'Do kitchen exhaust, oil or fat reach the roof?'),
        yesNo('debris', 'Do leaves and branches fall on it?'),
        yesNo('footTraffic', 'Do people walk on it often?'),
        yesNo('tightBudget', 'Is money tight?'),
        measure('workTemperatureF', 'Coldest surface while the work lasts', 'temperature'),
        choice('membrane', 'Covering that the owner asks for', titles(membraneOptions), 'none in particular'),
        ...folded(
          'What counts how much, in percent (nothing: as usual for such a roof)',
          criteria.map(({ id, title }) => whole(`weights.${id}`, title)),
        ),
        yesNo('keepCovering', 'Must the covering that is there stay?'),
        yesNo('noSprayFoam', 'Must sprayed foam be kept out?'),
        yesNo('noFoamAbove', 'Must insulation board above the deck be kept out?'),
      ],
    },
  ],
};

/** The roof file in the order in which a person measures. */
export const sections: readonly SectionSpec[] = [
  planAndEdges,
  heights,
  curbsAndPipes,
  outlets,
  today,
  findings,
  buildUp,
  boards,
  adjoining,
  preferences,
];

export const sectionOf = (slug: string): SectionSpec | null => sections.find((one) => one.slug === slug) ?? null;
