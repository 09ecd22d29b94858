import type { BoxView, GroupView, ProblemView } from '../../../views/forms/form-view.ts';
import type { InputProblem } from '../../input/problems.ts';
import type { AnswerField, Question } from '../../input/six-answers/answers.ts';
import * as choices from '../../input/six-answers/choices.ts';
import { type AnswersRead, blankAnswers, type SixAnswers } from '../../input/six-answers.ts';
import type { Posted } from './apply.ts';
import { problemSentence } from './problems.ts';
import { foldOf } from './section-view.ts';

type Words = Readonly<Record<string, string>>;
type Asked = readonly [field: AnswerField, label: string, choices: Words | null, hint?: string];

interface QuestionSpec {
  number: Question;
  title: string;
  note: string;
  boxes: readonly Asked[];
  folds?: readonly (readonly [title: string, boxes: readonly Asked[]])[];
  /** Boxes that belong together two by two, under a title of their own. */
  pairs?: readonly [title: string, boxes: readonly Asked[]];
}

const GUESS = 'a guess will do: about 30 ft';

const sideBoxes = (['low', 'right', 'back', 'left'] as const).flatMap((place): Asked[] => [
  [`${place}SideKind`, `${sideName(place)}: what is it?`, choices.sideKindChoices],
  [`${place}SideMayOpen`, `${sideName(place)}: may water ever leave there?`, choices.mayOpenChoices],
]);

function sideName(place: 'low' | 'right' | 'back' | 'left'): string {
  return place === 'back' ? 'High side, at the back' : `${place.charAt(0).toUpperCase()}${place.slice(1)} side`;
}

const questions: readonly QuestionSpec[] = [
  {
    number: 1,
    title: 'How long and how deep is it?',
    note: 'Stand below its low side and look at the building.',
    boxes: [
      ['label', 'Name of the roof', null, 'back section, porch'],
      ['lengthText', 'Length along the low side', null, `30', 24'-6 1/2", 7.47 m; ${GUESS}`],
      ['depthText', 'Depth from the low side to the back', null, `24'; ${GUESS}`],
    ],
  },
  {
    number: 2,
    title: 'Where does water leave now, and where may it?',
    note: 'A neighbour, a walk or a door below may forbid a side.',
    boxes: [['leavesNow', 'Water leaves now', choices.leavesNowChoices]],
    folds: [
      [
        'Where the drain is',
        [
          ['drainAlongText', 'Along the low side', null, 'feet, from its left end'],
          ['drainBackText', 'Back from the low side', null, 'feet'],
        ],
      ],
      [
        'Where the scupper is',
        [
          ['scupperSide', 'In which side', choices.sideChoices],
          ['scupperAlongText', 'Along its side', null, 'feet, from the corner'],
        ],
      ],
    ],
    pairs: ['The four sides', sideBoxes],
  },
  {
    number: 3,
    title: 'Where and how deep does water stand two days after rain?',
    note: 'A ring of dirt shows where it stood.',
    boxes: [
      ['pondWhere', 'Water stands', choices.pondPlaceChoices],
      ['pondDepthText', 'How deep', null, '3/4", 20 mm'],
      ['pondLasts', 'It is', choices.pondLastsChoices],
    ],
  },
  {
    number: 4,
    title: 'What is the lowest thing that must stay above the new roof?',
    note: 'A door, a sill, siding, a curb or the first shingles; and its height above the roof.',
    boxes: [
      ['lowestKind', 'The lowest thing is', choices.lowestKindChoices],
      ['lowestHeightText', 'Its height above the roof', null, '6", 15 cm'],
      ['lowestSide', 'On which side', choices.sideChoices],
    ],
    folds: [
      [
        'Where the curb is',
        [
          ['curbSizeText', 'Its size', null, `4' x 4'`],
          ['curbAlongText', 'Along the low side to its middle', null, 'feet, from the left end'],
          ['curbBackText', 'Back to its middle', null, 'feet'],
        ],
      ],
    ],
  },
  {
    number: 5,
    title: 'What is below, and is the deck seen from inside?',
    note: 'Where boards are the ceiling, no screw may come through.',
    boxes: [
      ['below', 'Below it is', choices.belowChoices],
      ['deckSeen', 'Is the underside of the deck the ceiling?', choices.mayOpenChoices],
    ],
  },
  {
    number: 6,
    title: 'In which town?',
    note: 'For the rain and the climate.',
    boxes: [['town', 'Town and state', null, 'Nashville, TN']],
  },
];

const labels: ReadonlyMap<string, string> = new Map(
  questions.flatMap(({ boxes, folds = [], pairs }) =>
    [...boxes, ...folds.flatMap(([, inside]) => inside), ...(pairs?.[1] ?? [])].map(([field, label]) => [field, label]),
  ),
);

/** The answers as the form sent them; what it did not send is as in a form that nobody filled in. */
export function answersOf(posted: Posted): SixAnswers {
  const blank = blankAnswers();
  const sent = Object.keys(blank).flatMap((field) => (field in posted ? [[field, posted[field]]] : []));
  return { ...blank, ...(Object.fromEntries(sent) as Partial<SixAnswers>) };
}

/** Where a problem of the drawn roof was asked about. */
const askedAt: readonly (readonly [RegExp, AnswerField])[] = [
  [/^outline/, 'lengthText'],
  [/^edges/, 'lowSideKind'],
  [/^outlets/, 'leavesNow'],
  [/^existing/, 'pondWhere'],
  [/^curbs/, 'lowestKind'],
  [/^building/, 'below'],
  [/^place/, 'town'],
];

const fieldOf = (path: string, known: ReadonlySet<string>): string =>
  known.has(path) ? path : (askedAt.find(([pattern]) => pattern.test(path))?.[1] ?? 'label');

const bare = { blank: false, removeName: null, problems: [], folds: [], groups: [], grid: 'free' } as const;

/** The six questions as a form: what was typed stands, with what was understood and what is wrong beside it. */
export function answersView(
  answers: SixAnswers,
  read: Pick<AnswersRead, 'understood' | 'supposed'> | null,
  problems: readonly InputProblem[],
): { groups: readonly GroupView[]; problems: readonly ProblemView[] } {
  const known = new Set(Object.keys(answers));
  const at = problems.map((problem) => [fieldOf(problem.path, known), problemSentence(problem)] as const);
  const box = ([field, label, words, hint]: Asked): BoxView => {
    const understood = words === null ? read?.understood.find((one) => one.field === field)?.text : undefined;
    const supposed = read?.supposed.find((one) => one.field === field);
    const sayings = [
      ...(understood === undefined || understood === answers[field].trim() ? [] : [`read as ${understood}`]),
      ...(supposed === undefined ? [] : [`for now, ${supposed.text}; to find out: ${supposed.findOut}`]),
    ];
    return {
      id: field,
      label,
      hint: hint ?? null,
      box: words === null ? 'line' : 'select',
      rows: 1,
      value: answers[field],
      options: words === null ? [] : Object.entries(words),
      understood: sayings.length === 0 ? null : sayings.join('; '),
      problems: at.filter(([id]) => id === field).map(([, text]) => text),
    };
  };
  return {
    groups: questions.map(({ number, title, note, boxes, folds = [], pairs }) => ({
      ...bare,
      id: `question-${number}`,
      title: `${number}. ${title}`,
      note,
      boxes: boxes.map(box),
      folds: folds.map(([fold, inside]) => foldOf(fold, inside.map(box))),
      groups:
        pairs === undefined
          ? []
          : [{ ...bare, id: `sides-${number}`, title: pairs[0], note: null, boxes: pairs[1].map(box), grid: 'pairs' }],
    })),
    problems: at.map(([id, text]) => ({ href: `#${id}`, where: labels.get(id) ?? id, text })),
  };
}
