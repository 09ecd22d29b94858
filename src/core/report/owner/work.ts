import { plainNumber } from '../../../units/print.ts';
import { boardFeet, count, depthFigure } from '../page-figures.ts';
import { raisedNoun, raisedRows } from './edges.ts';
import { laidOver } from './planned.ts';
import { keepsOldRoof, type Situation } from './situation.ts';
import { alsoSaying, type Because, type OwnerStatement, say, standingOn, type Taker, takerOf } from './statement.ts';
import { isWoodDeck } from './wood.ts';

const SMALL_IN = 0.25;

const caution = ({ assessment }: Situation, take: Taker, ...ids: readonly string[]): Because | null => {
  const i = assessment.cautions.findIndex(({ id }) => ids.includes(id));
  return i < 0 ? null : take.quote('answer-cautions', 'Caution for this job', `cautions.${i}.because`);
};

function smell(situation: Situation, take: Taker): OwnerStatement[] {
  const asphalt = caution(situation, take, 'asphalt-fume');
  const resin = caution(situation, take, 'resin-vapor', 'isocyanate');
  const glue = caution(situation, take, 'solvent-limit');
  if (asphalt !== null)
    return [standingOn(say`Hot asphalt smokes and smells. Shut windows and air inlets on that side.`, asphalt)];
  if (resin !== null)
    return [standingOn(say`The resin smells strongly while it cures. Shut windows and air inlets.`, resin)];
  return glue === null
    ? []
    : [standingOn(say`Primer or glue can smell. Shut windows and air inlets while it is used.`, glue)];
}

/** Findings that say that no screw goes into the deck. */
const glued: ReadonlySet<string> = new Set(['no-field-screws', 'no-field-fasteners', 'nothing-drilled']);

function overTheRoom(situation: Situation, take: Taker): OwnerStatement[] {
  const { assessment } = situation;
  const below = caution(situation, take, 'rooms-below');
  const noScrew = assessment.findings.findIndex(({ id }) => glued.has(id));
  const seen = noScrew >= 0 && /from below|underside/.test(assessment.findings[noScrew].message);
  const screws = assessment.materials.flatMap(({ id }, i) => (/^screw-/.test(id) ? [`materials.${i}.item`] : []));
  return [
    ...(below === null
      ? []
      : [
          standingOn(
            say`The room below shares its ceiling with the roof. Dust and bits will fall: clear or cover what stands there.`,
            below,
          ),
        ]),
    ...(noScrew < 0
      ? []
      : [
          standingOn(
            seen
              ? say`The boards are to be glued there, so that no screw point shows from below.`
              : say`The boards are to be glued: this deck takes no screws.`,
            take.quote('answer-to-do', 'Screws', `findings.${noScrew}.message`),
          ),
        ]),
    ...(screws.length === 0 || noScrew >= 0
      ? []
      : [
          standingOn(
            say`The boards are held with screws into the deck. Ask how long they are, and what lies under it.`,
            take.count('answer-materials', 'Kinds of board screws', screws),
          ),
        ]),
  ];
}

/** What is open to the rain at the end of a day, and what closes it. */
function nights({ layout, at, plan }: Situation, take: Taker): OwnerStatement[] {
  const rule = say`No more may be opened in a day than is closed again that day. At night every way out for water must stand clear. Ask who comes if it rains.`;
  const parts = plan === 'taper' ? (layout?.workParts ?? []) : [];
  const paths = (pick: (part: (typeof parts)[number]) => boolean, key: string): string[] =>
    parts.flatMap((part, i) => (pick(part) ? [`${at}.workParts.${i}.${key}`] : []));
  const all = take.count(
    'answer-outlets',
    'Parts that are laid open',
    paths(() => true, 'areaSqFt'),
  );
  const lonely = paths((part) => !part.overAnEdge && part.waysOut.length < 2, 'waysOut');
  const alone = take.count('answer-outlets', 'Parts with one way out at most', lonely);
  const wet = paths(({ holdsIn }) => holdsIn > SMALL_IN, 'holdsIn');
  const holds = take.figure('answer-outlets', 'Water that the bare deck holds', 'greatest', wet, depthFigure);
  return [
    rule,
    ...(parts.length < 2 ? [] : [say`The roof has ${all} parts, each with its own way out.`]),
    ...(lonely.length === 0
      ? []
      : parts.length === 1
        ? [
            standingOn(
              say`One plugged drain would hold the rain back, so the open part must be made watertight each night.`,
              alone,
            ),
          ]
        : [
            say`In ${alone} of them one plugged drain would hold the rain back, so each of those must be made watertight each night.`,
          ]),
    ...(wet.length === 0
      ? []
      : [say`The bare deck itself can hold ${holds} of water, so it may be opened only in dry weather.`]),
  ];
}

/** What the days leave out under the boards. */
function onTop(situation: Situation): string {
  if (situation.call === 'off') return 'the new deck';
  return isWoodDeck(situation) ? 'bad wood' : 'mending of the deck';
}

/** The deck where a price may leave it out. */
function deckExtra(situation: Situation): OwnerStatement {
  if (situation.call === 'off') return say`The new deck itself: it is in no figure here.`;
  return isWoodDeck(situation) ? say`Wood beyond the amount in the price.` : say`Mending of the deck, if it needs any.`;
}

/** Days of the new roof; a repair has no figure for them. */
function daysStatement(situation: Situation, take: Taker): OwnerStatement {
  const { layout, at, plan, call } = situation;
  if (layout?.workDays === undefined || plan !== 'taper' || keepsOldRoof(call))
    return say`How many days it takes has not been worked out. Ask your roofer, and ask what rain does to that.`;
  const figure = (label: string, key: string) =>
    take.figure('answer-materials', label, 'is', [`${at}.workDays.${key}`], (value) => plainNumber(value));
  const least = figure('Days of work, least', 'leastDays');
  const most = figure('Days of work, most', 'mostDays');
  const people = figure('People at work', 'people');
  const span = least.shown === most.shown ? say`about ${most} dry days` : say`about ${least} to ${most} dry days`;
  return alsoSaying(
    alsoSaying(say`The work takes `, span),
    say` for ${people} people. That is for planning, and no promise: rain and ${onTop(situation)} come on top. Ask your roofer for days.`,
  );
}

/** Days, noise, smell, dust, and the rain. */
export function workStatements(situation: Situation): OwnerStatement[] {
  const take = takerOf(situation.assessment);
  const days = daysStatement(situation, take);
  if (keepsOldRoof(situation.call)) return [days];
  const noise = caution(situation, take, 'noise');
  return [
    days,
    ...(noise === null
      ? []
      : [
          standingOn(
            laidOver(situation) || situation.call === 'off'
              ? say`It is loud.`
              : say`It is loud, most of all while the old roof comes off.`,
            noise,
          ),
        ]),
    ...smell(situation, take),
    ...overTheRoom(situation, take),
    ...nights(situation, take),
  ];
}

/** What a price may leave out. */
export function extraStatements(situation: Situation): OwnerStatement[] {
  const { assessment, layout, at, plan, call } = situation;
  const take = takerOf(assessment);
  const raised = take.count(
    'answer-heights',
    'Made higher',
    raisedRows(situation).map((i) => `${at}.newHeights.raised.${i}.raiseIn`),
  );
  const fill = take.figure('answer-layouts', 'Levelling', 'is', [`${at}.levellingBoardFt`], boardFeet);
  const layers = assessment.assumed.findIndex(
    ({ path, because }) => path === 'covering.layers' && because.includes('not counted'),
  );
  const hidden = take.quote('answer-assumed', 'Old coverings', `assumed.${Math.max(0, layers)}.because`);
  const rows = plan === 'taper' && layout !== null && !keepsOldRoof(call);
  return [
    deckExtra(situation),
    ...(rows && raised.paths.length > 0
      ? [say`Making ${raised} ${raisedNoun(layout, raisedRows(situation))} higher, if it is not in the price.`]
      : []),
    ...(rows && layout.levellingBoardFt >= 0.5 ? [say`Leveling the deck under the boards: about ${fill}.`] : []),
    ...(rows && layout.newOutlets > 0
      ? [
          standingOn(
            say`New ways out for the water, with the pipes that take it to the ground.`,
            take.figure('answer-outlets', 'New ways out', 'is', [`${at}.newOutlets`], count),
          ),
        ]
      : []),
    ...(layers < 0 || call === 'off'
      ? []
      : [standingOn(say`A second old roof under the first, if there is one. Nobody has counted.`, hidden)]),
    say`Permit, waste haul and repairs inside the house: ask whether they are in the price.`,
  ];
}
