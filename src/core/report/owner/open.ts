import type { Assumption } from '../types.ts';
import type { Situation } from './situation.ts';
import { type Because, type OwnerStatement, say, standingOn, takerOf } from './statement.ts';

/** One thing that nobody knows yet, with the cheapest way to find out. */
export interface OpenThing {
  what: OwnerStatement;
  findOut: string;
}

interface OpenWords {
  about: (assumption: Assumption) => boolean;
  what: string;
  findOut: string;
  /** It asks for the old roof, so it falls away where that is off. */
  ofOldRoof?: true;
}

const at =
  (...paths: readonly string[]) =>
  ({ path }: Assumption): boolean =>
    paths.includes(path);

const isColor = ({ path, because }: Assumption): boolean => path === 'covering.kind' && because.startsWith('the color');

/** What an owner can help to find out, the cheapest and the weightiest first. */
const openWords: readonly OpenWords[] = [
  {
    about: at('building.below'),
    what: 'What lies below the roof, and whether the deck can be seen from inside.',
    findOut: 'Look up from the room, or through a hatch.',
  },
  {
    about: at('insulation.below'),
    what: 'Whether there is insulation between the ceiling and the deck.',
    findOut: 'Look past a light fitting or through a hatch.',
  },
  {
    about: ({ path, because }) => path === 'covering.layers' && because.includes('not counted'),
    what: 'How many old roofs lie on top of each other.',
    findOut: 'A roofer cuts one small hole, looks, and patches it the same day.',
    ofOldRoof: true,
  },
  {
    about: (assumption) => at('covering.kind')(assumption) && !isColor(assumption),
    what: 'What the old covering is.',
    findOut: 'Take a photo from a window or with a pole.',
    ofOldRoof: true,
  },
  {
    about: at('existing.buildUpIn'),
    what: 'How thick the old roof is.',
    findOut: 'The same small hole tells it, at a low spot and at a high one.',
    ofOldRoof: true,
  },
  {
    about: ({ path }) => path === 'existing' || path === 'existing (drainage areas)',
    what: 'How the roof slopes: it was not measured.',
    findOut: 'A roofer reads it with a level on a grid in an hour or two.',
  },
  {
    about: at('deck.kind', 'deck.thicknessIn'),
    what: 'What the deck is made of, and how thick it is.',
    findOut: 'Look from inside, or measure at a vent or at the eave.',
  },
  {
    about: ({ path }) => path.startsWith('edges (side'),
    what: 'What stands at one or more edges of the roof.',
    findOut: 'Take a photo of each side from the ground.',
  },
  {
    about: at('building.heightFt'),
    what: 'How high the roof is.',
    findOut: 'Hold a tape at the edge, from the ground.',
  },
  {
    about: isColor,
    what: 'How dark the old roof is.',
    findOut: 'Take a photo from a window at noon, with a sheet of white paper in it.',
    ofOldRoof: true,
  },
  {
    about: at('place.rain', 'place.city'),
    what: 'The rain and the weather of your town.',
    findOut: 'Tell us the town, or the next larger one.',
  },
  {
    about: at('place.groundSnowPsf'),
    what: 'How much snow the roof must bear.',
    findOut: 'The building office tells it on the phone.',
  },
  {
    about: at('ruleSet.building', 'ruleSet.plumbing', 'insulation.targetR'),
    what: 'What the building code of your town asks for.',
    findOut: 'Ask the building office which edition it uses.',
  },
  {
    about: at('building.winterHumidityPct'),
    what: 'How damp the air in the room is in winter.',
    findOut: 'Hang a humidity meter there for a week in January.',
  },
  {
    about: at('deck.liveLoadPsf'),
    what: 'How much weight the roof can bear.',
    findOut: 'An engineer who has seen the joists can say.',
  },
];

/** What we do not know yet. What has no line of its own here stands on the answer page, and is counted. */
export function openThings(situation: Situation): { things: OpenThing[]; more: OwnerStatement | null } {
  const { assessment, call } = situation;
  const off = call === 'off';
  const take = takerOf(assessment);
  const because = (i: number): Because => take.quote('answer-assumed', 'Taken for now', `assumed.${i}.because`);
  const told = new Set<number>();
  const rows = openWords.flatMap(({ about, what, findOut, ofOldRoof }): OpenThing[] => {
    const hits = assessment.assumed.flatMap((assumption, i) => (about(assumption) ? [i] : []));
    for (const i of hits) told.add(i);
    return hits.length === 0 || (off && ofOldRoof)
      ? []
      : [{ what: standingOn(say`${what}`, ...hits.slice(0, 2).map(because)), findOut }];
  });
  const rain = assessment.existing.decidedBy === null || off ? [] : [rainOpen(situation)];
  const rest = assessment.assumed.flatMap(({ findOut }, i) =>
    findOut === null || told.has(i) ? [] : [`assumed.${i}.because`],
  );
  const count = take.count('answer-assumed', 'Smaller things taken for now', rest);
  return {
    things: [...rain, ...rows],
    more:
      rest.length === 0
        ? null
        : say`And ${count} smaller ${rest.length === 1 ? 'thing' : 'things'}, listed on the answer page.`,
  };
}

function rainOpen({ assessment }: Situation): OpenThing {
  const decided = takerOf(assessment).quote('answer-water', 'What would decide it', 'existing.decidedBy');
  return {
    what: standingOn(say`Whether rain still stands on the roof after two days.`, decided),
    findOut: 'Look from a window two days after a rain, or have a photo taken with a pole.',
  };
}

/** Questions for any roofer, this one too. */
export const roofersQuestions: readonly string[] = [
  'Where does the water go, and how do you prove it before you cover the boards?',
  'How much lower is the outlet than the rest of the roof when you are done?',
  'What happens at the doors, the walls and the skylights?',
  'Do you use an open flame? What do you do so that no fire starts?',
  'What do you do with soft wood, and what does each sheet cost?',
  'How do you close the roof at night, and who comes if it rains?',
  'What is not in the price?',
  'Are you insured and licensed, and who gets the permit?',
];

/** Photos that an owner can take with both feet on the ground. */
export const photosToTake: readonly string[] = [
  'From the ground: each side of the house, with the edge of the roof in it.',
  'From a window above, or with the phone on a pole: the roof two days after a rain.',
  'From inside: each stain on the ceiling, with a coin beside it for the size.',
  'From inside each door to the roof, without a step out: the sill, with a tape held up to it.',
  'The gutters and the downspouts, from the ground, while it rains.',
];
