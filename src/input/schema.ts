import { z } from 'zod';
import { type CriterionId, criteria } from '../../reference/membranes/criteria.ts';
import {
  answers,
  belowInsulationKinds,
  belowKinds,
  coveringKinds,
  curbKinds,
  deckKinds,
  edgeKinds,
  findingKinds,
  foundByKinds,
  gutterProfiles,
  inflowKinds,
  openingKinds,
  outletRoles,
  pipeKinds,
  readOnKinds,
  senses,
  severities,
  statuses,
  strainers,
  taperRules,
  ventKinds,
} from './choices.ts';
import {
  choice,
  endHeightsSchema,
  group,
  measures,
  pairSchema,
  planSchema,
  pointSchema,
  ringSchema,
  sideSchema,
} from './schema-fields.ts';

const text = z.string({ error: 'text in quotes' });
const yesNo = z.boolean({ error: 'true or false' });
const m = measures;

const openingSchema = group({
  kind: choice(openingKinds),
  fromFt: m.length.nullish(),
  toFt: m.length.nullish(),
  heightIn: m.height.nullish(),
});

const gutterSchema = group({
  profile: choice(gutterProfiles).nullish(),
  sizeIn: m.thickness.nullish(),
  slopeInPerFt: m.slope.nullish(),
  downspouts: z.array(m.length, { error: 'distances along the side in feet: [3, 27]' }).nullish(),
  downspoutSizeIn: pairSchema.nullish(),
});

export const edgeSchema = group({
  side: sideSchema,
  fromFt: m.length.nullish(),
  toFt: m.length.nullish(),
  kind: choice(edgeKinds),
  mayDrain: choice(answers).nullish(),
  topIn: endHeightsSchema.nullish(),
  clearIn: endHeightsSchema.nullish(),
  gutter: gutterSchema.nullish(),
  pitchIn12: m.pitch.nullish(),
  shedsSqFt: m.area.nullish(),
  wallHeightFt: m.length.nullish(),
  openings: z.array(openingSchema).nullish(),
});

export const curbSchema = group({
  id: text.nullish(),
  kind: choice(curbKinds).nullish(),
  outline: ringSchema,
  heightIn: m.height.nullish(),
});

export const pipeSchema = group({
  at: pointSchema,
  diameterIn: m.thickness.nullish(),
  kind: choice(pipeKinds),
  topIn: m.height.nullish(),
});

export const inflowSchema = group({ at: pointSchema, kind: choice(inflowKinds), fromSqFt: m.area });

const outletKeys = {
  id: text.nullish(),
  role: choice(outletRoles).nullish(),
  status: choice(statuses).nullish(),
  inletIn: m.height.nullish(),
  working: yesNo.nullish(),
};

const drainSchema = group({
  kind: z.literal('drain'),
  at: pointSchema,
  sizeIn: m.thickness.nullish(),
  insertBoreIn: m.thickness.nullish().describe('Inside diameter of a retrofit insert in the pipe.'),
  strainer: choice(strainers).nullish(),
  strainerFreeSqIn: z
    .number({ error: 'the free area of the strainer in square inches: 24' })
    .positive()
    .max(1000)
    .nullish()
    .describe('All openings of the strainer together, square inches.'),
  leaderRoute: choice(answers).nullish(),
  ...outletKeys,
});

const scupperSchema = group({
  kind: z.literal('scupper'),
  side: sideSchema,
  alongFt: m.length,
  widthIn: m.thickness.nullish(),
  heightIn: m.thickness.nullish(),
  ...outletKeys,
});

export const outletSchema = z.discriminatedUnion('kind', [drainSchema, scupperSchema]);

const planeSchema = group({
  slopeInPerFt: m.slope,
  fallsToward: z
    .union([group({ side: sideSchema }), m.bearing], { error: '{ "side": 0 }, "NE", or degrees clockwise from north' })
    .describe('Where the plane falls: { "side": 0 }, a compass point, or degrees clockwise from north.'),
  where: ringSchema.nullish(),
  through: z
    .tuple([m.coordinate, m.coordinate, m.height], { error: 'a place and its height: [12, 7.5, 1.25]' })
    .nullish(),
  riseIn: m.thickness.nullish().describe('Rise measured straight up the fall, to check the slope against.'),
  runFt: m.length.nullish().describe('The run over which that rise was measured.'),
});

const readingSchema = z.tuple([m.coordinate, m.coordinate, m.height], {
  error: 'a reading is a place and its value in inches: [12, 7.5, 1.25]',
});

const stringSchema = group({
  from: pointSchema.nullish().describe('Where its first end is tied.'),
  to: pointSchema.nullish().describe('Where its other end is tied.'),
  fromIn: m.height.nullish().describe('Height of the string at its first end; neither given: level.'),
  toIn: m.height.nullish().describe('Height of the string at its other end.'),
  sagIn: m.thickness.nullish().describe('How far the string itself hangs at its middle.'),
  readings: z
    .array(z.tuple([m.length, m.height], { error: 'a place along the string and the gap under it: [4, 1.5]' }))
    .nullish()
    .describe('Distance from its first end in feet, and the gap under it in inches.'),
});

const seenPondSchema = group({
  outline: ringSchema.nullish(),
  at: pointSchema.nullish(),
  depthIn: m.thickness.nullish(),
  hoursAfterRain: m.hours.nullish(),
});

const sagSchema = group({
  depthIn: m.thickness.nullish(),
  spanOver: z
    .number({ error: 'the number under the span: 240 for a sag of span over 240' })
    .min(20)
    .max(5000)
    .nullish()
    .describe('Sag as span over this number, instead of depthIn.'),
  spanFt: m.length.nullish(),
  directionDeg: m.bearing.nullish(),
}).describe('Sag of the joists under a level surface or planes; readings hold it already.');

export const existingSchema = group({
  surface: z
    .literal('level', { error: '"level"; otherwise planes or readings' })
    .nullish()
    .describe('Only "level"; else give planes or readings.'),
  planes: z.array(planeSchema).nullish(),
  readings: z.array(readingSchema).nullish(),
  sense: choice(senses).nullish(),
  referenceIn: m.height
    .nullish()
    .describe('Water level: the mark on the reference tube; not given: readings are differences.'),
  strings: z.array(stringSchema).nullish(),
  errorIn: m.thickness.nullish(),
  readOn: choice(readOnKinds).nullish(),
  buildUpIn: m.thickness.nullish(),
  sag: sagSchema.nullish(),
  seenPonds: z.array(seenPondSchema).nullish(),
  seenDryAfter48h: yesNo.nullish(),
});

export const findingSchema = group({
  kind: text.describe(`One of: ${Object.keys(findingKinds).join(', ')}.`),
  at: pointSchema.nullish(),
  outline: ringSchema.nullish(),
  side: sideSchema.nullish(),
  fromFt: m.length.nullish(),
  toFt: m.length.nullish(),
  areaSqFt: m.area.nullish().describe('How much of the roof, where no outline was drawn.'),
  sizeIn: m.thickness.nullish().describe('How far a flashing stands off, how wide a split is.'),
  foundBy: choice(foundByKinds).nullish(),
  severity: choice(severities).nullish(),
  note: text.nullish(),
  photos: z
    .array(
      z.string().regex(/^[a-z0-9-]{1,64}$/, { error: 'the name of a photo that is kept beside the roof: "3f09a1c2"' }),
      {
        error: 'names of photos that are kept: ["3f09a1c2"]',
      },
    )
    .max(20, { error: 'at most 20 photos' })
    .nullish()
    .describe('Photos that are kept beside the roof, at most 20.'),
});

export const placeSchema = group({
  city: text.nullish().describe('Town, or "Town, ST".'),
  state: text.nullish().describe('Two letters.'),
  rain: z
    .union([group({ inPerHr: m.rain, durationMin: m.minutes.nullish(), returnYears: m.years.nullish() }), m.rain], {
      error: '{ "inPerHr": 3.2, "durationMin": 60, "returnYears": 100 }',
    })
    .nullish()
    .describe('Rate with its duration and return period; a bare rate is asked about.'),
  climateZone: text.nullish().describe('Zone of the model energy code by number and letter: 5A.'),
  groundSnowPsf: m.load.nullish().describe('Ground snow load of the place.'),
  californiaZone: z
    .int({ error: 'one of the sixteen zones of the California energy code: 12' })
    .min(1)
    .max(16)
    .nullish()
    .describe('Zone of the California energy code, 1 to 16.'),
});

const localSchema = group({
  rainInPerHr: m.rain.nullish(),
  wallShare: z.number({ error: 'a share between 0 and 1' }).min(0).max(1).nullish(),
  minimumFlashingIn: m.thickness.nullish(),
  birdBathIn: m.thickness.nullish(),
  birdBathSqFt: m.area.nullish().describe('Water over more than this is flagged, however shallow.'),
  overflowRequired: yesNo.nullish(),
  taperRule: choice(taperRules).nullish().describe('How the energy code takes insulation that tapers.'),
});

export const ruleSetSchema = group({
  building: text.nullish(),
  plumbing: text.nullish(),
  local: localSchema.nullish(),
});

export const buildingSchema = group({
  heightFt: m.length.nullish(),
  below: choice(belowKinds).nullish(),
  yearBuilt: z.int({ error: 'a year: 1988' }).min(1000).max(2200).nullish(),
  planFt: planSchema.nullish(),
  winterHumidityPct: z
    .number({ error: 'relative humidity in percent: 35' })
    .min(5)
    .max(95)
    .nullish()
    .describe('Relative humidity of the rooms in January, percent.'),
});

export const deckSchema = group({
  kind: choice(deckKinds).nullish(),
  thicknessIn: m.thickness.nullish(),
  liveLoadPsf: m.load.nullish(),
  joists: group({
    spanFt: m.length.nullish(),
    depthIn: m.thickness.nullish(),
    spacingIn: m.thickness.nullish(),
    directionDeg: m.bearing.nullish(),
  }).nullish(),
});

export const coveringSchema = group({
  kind: choice(coveringKinds).nullish(),
  layers: z
    .int({ error: 'a whole number of layers' })
    .min(1, { error: 'the coverings that lie there, counted (nothing here where the deck lies bare)' })
    .max(20)
    .nullish(),
  ageYears: m.age.nullish(),
});

const belowInsulationSchema = group({
  kind: choice(belowInsulationKinds).nullish(),
  thicknessIn: m.thickness.nullish(),
  r: m.rValue.nullish().describe('R of all of it; not given: by its kind and thickness.'),
  vented: choice(answers).nullish().describe('Whether outside air passes over it.'),
}).describe('What lies between the deck and the ceiling below it.');

export const insulationSchema = group({
  targetR: m.rValue.nullish(),
  keepExisting: yesNo.nullish(),
  below: belowInsulationSchema.nullish(),
  baseIn: m.thickness.nullish().describe('Flat layer under the taper, where one is wanted.'),
  flatIn: m.thickness.nullish().describe('Flat boards over the whole deck in place of a taper.'),
  flatRPerIn: z
    .number({ error: 'R per inch of the flat boards: 5.7' })
    .positive()
    .max(10)
    .nullish()
    .describe('R per inch of those flat boards.'),
});

const ventSchema = group({
  kind: choice(ventKinds),
  count: z
    .number({ error: 'how many, or how many feet: 12' })
    .min(0)
    .max(100_000)
    .nullish()
    .describe('Pieces; feet of a ridge or soffit strip; square feet of perforated soffit.'),
  netFreeSqIn: z
    .number({ error: 'net free area in square inches: 18' })
    .min(0)
    .max(100_000)
    .nullish()
    .describe('Net free area of one piece, foot or square foot, from its label, square inches.'),
  high: yesNo.nullish().describe('Within 3 ft of the highest point.'),
});

export const adjoiningSchema = group({
  atticSqFt: m.area.nullish(),
  ceilingRetarder: choice(answers).nullish(),
  vents: z.array(ventSchema).nullish(),
}).describe('The attic of a steep roof beside the section.');

const boardGroupSchema = group({
  slopeInPerFt: m.slope,
  runFt: m.length.describe('Length along the slope: 4 or 8 ft.'),
  widthFt: m.length.nullish().describe('Length of the level side; not given: 4 ft.'),
  lowEdgesIn: z
    .array(m.thickness, { error: 'the low edges of the boards in inches, thinnest first: [0.5, 1.5]' })
    .describe('Low edge of every board of the group, thinnest first; each rises slope x run.'),
  fillStepIn: m.thickness.describe('Flat fill under the next round of the group: boards x rise.'),
});

export const boardsSchema = group({
  groups: z.array(boardGroupSchema).nullish().describe('Tapered boards; not given: those common to the trade.'),
  flat: z
    .array(group({ thicknessIn: m.thickness, lengthFt: m.length.nullish(), widthFt: m.length.nullish() }))
    .nullish()
    .describe('Flat boards for fill and base; not given: 1/2 to 4 in, 4 x 8 ft.'),
  strips: z
    .array(group({ highIn: m.thickness, runIn: m.thickness }))
    .nullish()
    .describe('Tapered edge strips that start at nothing.'),
  leastPieceIn: m.thickness.nullish().describe('Smaller pieces are cut from an offcut beside them; not given: 4 in.'),
  sumpFt: m.length
    .nullish()
    .describe(
      'Side of the sump at every drain; 0 = none; not given: 4 ft where a flat layer under the taper has room for it.',
    ),
}).describe('Boards the supplier has.');

const price = z.number({ error: 'a price in your own money, as a number: 2.4' }).min(0).max(1_000_000).nullish();

export const pricesSchema = group({
  boardFt: price.describe('A board foot of board, laid; without it the other prices do not count.'),
  drain: price.describe('A new drain with its leader.'),
  scupper: price.describe('A new scupper.'),
  edgeFt: price.describe('A foot of gutter with its downspouts along an edge that is opened.'),
  parapetFt: price.describe('A foot of parapet that is cut down for a gutter.'),
}).describe('What layouts are compared by, in your own money.');

export const slopeRuleSchema = group({
  faceInPerFt: m.slope.nullish(),
  valleyInPerFt: m.slope.nullish(),
  strict: yesNo.nullish(),
});

export const windSchema = group({ mph: m.speed.nullish(), edition: text.nullish() });

const weightShare = z
  .number({ error: 'a share in percent: 30' })
  .min(0, { error: 'a share in percent, 0 or more: 30' })
  .max(100, { error: 'a share in percent, at most 100: 30' });

const weightsSchema = group(
  Object.fromEntries(
    criteria.map(({ id, title }) => [id, weightShare.nullish().describe(`${title}: share in percent.`)]),
  ) as Record<CriterionId, z.ZodOptional<z.ZodNullable<typeof weightShare>>>,
).describe('What each count of the covering choice weighs, in percent; what is not named shares the rest as usual.');

export const preferencesSchema = group({
  noFlame: yesNo.nullish(),
  residueRemovedOrCovered: yesNo.nullish(),
  grease: yesNo.nullish(),
  debris: yesNo.nullish(),
  footTraffic: yesNo.nullish(),
  tightBudget: yesNo.nullish(),
  workTemperatureF: m.temperature.nullish(),
  membrane: text.nullish(),
  weights: weightsSchema.nullish(),
  keepCovering: yesNo.nullish().describe('The covering that is there must stay.'),
  noSprayFoam: yesNo.nullish().describe('No foam may be sprayed.'),
  noFoamAbove: yesNo.nullish().describe('No insulation board may go on above the deck.'),
});

export const outlineSchema = z
  .union([ringSchema, group({ walk: text })], {
    error: `a list of corners, or { "walk": "30' ahead, left, 24', left, 30', left, 24'" }`,
  })
  .describe('Corners in order, or the perimeter as it was walked.');

/** The roof file, version 1 (`*.roof.json`). Structure only: text in it is read by parse-roof.ts. */
export const roofFileSchema = group({
  $schema: text.nullish(),
  version: z.literal(1, { error: '1, the version of the roof file that is read here' }),
  label: text.nullish(),
  invented: yesNo.nullish().describe('True for a made-up roof; every paper says so.'),
  place: placeSchema.nullish(),
  ruleSet: ruleSetSchema.nullish(),
  building: buildingSchema.nullish(),
  deck: deckSchema.nullish(),
  outline: outlineSchema,
  edges: z.array(edgeSchema).nullish(),
  curbs: z.array(curbSchema).nullish(),
  pipes: z.array(pipeSchema).nullish(),
  inflows: z.array(inflowSchema).nullish(),
  outlets: z.array(outletSchema).nullish(),
  existing: existingSchema.nullish(),
  covering: coveringSchema.nullish(),
  insulation: insulationSchema.nullish(),
  adjoining: adjoiningSchema.nullish(),
  boards: boardsSchema.nullish(),
  prices: pricesSchema.nullish(),
  slopeRule: slopeRuleSchema.nullish(),
  removedIn: m.thickness.nullish(),
  wind: windSchema.nullish(),
  findings: z.array(findingSchema).nullish(),
  preferences: preferencesSchema.nullish(),
});

export type RoofFile = z.infer<typeof roofFileSchema>;
export type RawEdge = z.infer<typeof edgeSchema>;
export type RawOpening = z.infer<typeof openingSchema>;
export type RawGutter = z.infer<typeof gutterSchema>;
export type RawCurb = z.infer<typeof curbSchema>;
export type RawPipe = z.infer<typeof pipeSchema>;
export type RawInflow = z.infer<typeof inflowSchema>;
export type RawOutlet = z.infer<typeof outletSchema>;
export type RawPlane = z.infer<typeof planeSchema>;
export type RawString = z.infer<typeof stringSchema>;
export type RawSag = z.infer<typeof sagSchema>;
export type RawSeenPond = z.infer<typeof seenPondSchema>;
export type RawExisting = z.infer<typeof existingSchema>;
export type RawFinding = z.infer<typeof findingSchema>;
export type RawPlace = z.infer<typeof placeSchema>;
export type RawLocal = z.infer<typeof localSchema>;
export type RawBuilding = z.infer<typeof buildingSchema>;
export type RawDeck = z.infer<typeof deckSchema>;
export type RawRuleSet = z.infer<typeof ruleSetSchema>;
export type RawCovering = z.infer<typeof coveringSchema>;
export type RawInsulation = z.infer<typeof insulationSchema>;
export type RawAdjoining = z.infer<typeof adjoiningSchema>;
export type RawBoards = z.infer<typeof boardsSchema>;
export type RawSlopeRule = z.infer<typeof slopeRuleSchema>;
export type RawWind = z.infer<typeof windSchema>;
export type RawWeights = z.infer<typeof weightsSchema>;
export type RawPrices = z.infer<typeof pricesSchema>;
export type RawPreferences = z.infer<typeof preferencesSchema>;

/** The roof file as JSON Schema (draft 2020-12): measurements are "number or text", "not known" is said where it may stand. */
export function roofFileJsonSchema(): object {
  return {
    title: 'Rainpath roof file, version 1',
    ...z.toJSONSchema(roofFileSchema, {
      override: ({ zodSchema, jsonSchema }) => {
        if (zodSchema._zod.def.type === 'nullable') jsonSchema.anyOf?.push({ const: 'not known' });
      },
    }),
  };
}
