import { inches } from '../../../units/print.ts';
import type { StatedConstraint } from '../types.ts';
import { askedCovering } from './covering.ts';
import { keepsOldRoof, type Situation } from './situation.ts';
import { alsoSaying, type OwnerStatement, say, standingOn, type Taker, takerOf } from './statement.ts';

/** What new boards on the deck go against. */
const AGAINST_BOARDS: ReadonlySet<StatedConstraint['id']> = new Set(['keep-covering', 'no-foam-above']);

/** What a plan without new boards does, where it lays none. */
function keptBy({ call, plan }: Situation): string | null {
  if (plan === 'edge-first') return 'Work on the edge alone keeps to that. The new roof that is drawn here would not.';
  if (call === 'upkeep') return 'Leaving it as it is keeps to that. The new roof that is drawn here would not.';
  if (call === 'repair') return 'Mending keeps to that. The new roof that is drawn here would not.';
  return call === 'coat' ? 'A coating keeps to that. The new roof that is drawn here would not.' : null;
}

/** The old covering cannot stay: it is off, or what was found has it come off. */
const comesOff = ({ call }: Situation): boolean => call === 'off' || call === 'tear-off';

function notToKeep({ assessment: { scope }, call }: Situation, take: Taker): OwnerStatement {
  const i = scope?.ways.findIndex(({ id }) => id === 'tear-off') ?? -1;
  const why = take.quote('answer-scope', 'Why it comes off', `scope.ways.${i}.reasons.0.text`);
  return call === 'off'
    ? standingOn(say`It cannot be kept: the old roof is off.`, why)
    : say`It cannot be kept: the old roof has to come off. ${why}`;
}

/** What the plan makes of one wish, and why. */
function answerTo(situation: Situation, id: StatedConstraint['id'], take: Taker): OwnerStatement {
  const { layout, at, plan } = situation;
  if (id === 'keep-covering' && comesOff(situation)) return notToKeep(situation, take);
  if (!AGAINST_BOARDS.has(id)) return say`Nothing that is drawn here goes against that.`;
  const kept = keptBy(situation);
  if (kept !== null) return say`${kept}`;
  if (plan === 'flat-boards')
    return say`This plan does not keep to it. It lays flat boards, and a new covering on them.`;
  if (layout === null) return say`No plan fits yet, so nothing goes against that so far.`;
  const thin = take.figure('answer-layouts', 'Thinnest board', 'is', [`${at}.leastThicknessIn`], inches);
  const thick = take.figure('answer-layouts', 'Thickest board', 'is', [`${at}.greatestThicknessIn`], inches);
  return id === 'no-foam-above'
    ? say`The new roof that is drawn here does not keep to it. It lays boards on the deck, from ${thin} to ${thick} thick, as they make the slope.`
    : say`The new roof that is drawn here does not keep to it. It lays boards from ${thin} to ${thick} thick to make the slope, and they need a new covering.`;
}

/** Flat boards that were asked for and are not laid. */
function flatWish({ assessment, layout }: Situation, take: Taker): OwnerStatement[] {
  const flat = assessment.flatBoards;
  if (flat == null || flat.used) return [];
  const thick = take.figure('answer-layouts', 'Flat boards', 'is', ['flatBoards.thicknessIn'], inches);
  const why = take.quote('answer-layouts', 'Why not flat boards', 'flatBoards.text');
  const asked = say`You asked for flat boards, ${thick} thick. They would keep the slope of today, and it does not drain as it must.`;
  return [standingOn(layout === null ? asked : alsoSaying(asked, say` So boards with a slope are drawn.`), why)];
}

/** What the old roof makes of a coat that was asked for; null = it comes off, so the new boards decide. */
function coatWish({ assessment: { scope }, call }: Situation, take: Taker): OwnerStatement | null {
  const ways = scope?.ways ?? [];
  const i = ways.findIndex(({ id }) => id === 'coat');
  if (i < 0 || !(keepsOldRoof(call) || call === 'open')) return null;
  const why = take.quote('answer-scope', ways[i].title, `scope.ways.${i}.reasons.0.text`);
  const { standing } = ways[i];
  if (standing === 'not-known') return say`Whether the old roof can be coated is not known yet. ${why}`;
  if (standing === 'barred') return say`The old roof cannot be coated. ${why}`;
  const first = scope?.mends ? ', once what is broken is mended' : '';
  return standingOn(
    call === 'coat'
      ? say`A coat is what this roof asks for${first}.`
      : say`The old roof can be coated${first}. Nothing that was found asks for it.`,
    why,
  );
}

/** A covering that was asked for and is not the one that comes out first. */
function coveringWish(situation: Situation, take: Taker): OwnerStatement[] {
  const wished = askedCovering(situation);
  if (wished === null) return [];
  const { findings, membranes } = situation.assessment;
  const { at } = wished;
  const asked = say`You asked for this covering: ${take.quote('answer-covering', 'What was asked for', `membranes.${at}.name`)}. `;
  // Over new boards a coat is out; the old roof may take it.
  const coat = wished.coat ? coatWish(situation, take) : null;
  if (coat !== null) return [alsoSaying(asked, coat)];
  if (membranes[at].veto === null)
    return [
      standingOn(
        alsoSaying(asked, say`It may be used, but another one suits this roof better.`),
        take.quote(
          'answer-to-do',
          'What was asked for',
          `findings.${findings.findIndex(({ id }) => id === 'asked-membrane')}.message`,
        ),
      ),
    ];
  const why = take.quote('answer-covering', 'Why it is out', `membranes.${at}.veto.why`);
  return [alsoSaying(asked, say`It is out on this roof. ${why}`)];
}

/** What was asked for beyond a dry roof, what the plan makes of it, and that nobody decides it for the owner. */
export function wishStatements(situation: Situation): OwnerStatement[] {
  const { assessment, call, layout, plan } = situation;
  const constraints = assessment.moisture?.constraints ?? [];
  const take = takerOf(assessment);
  const broken =
    !keepsOldRoof(call) &&
    (plan === 'flat-boards' || (plan !== 'edge-first' && layout !== null)) &&
    constraints.some(({ id }) => AGAINST_BOARDS.has(id) && !(id === 'keep-covering' && comesOff(situation)));
  return [
    ...constraints.map(({ id }, i) => {
      const words = take.quote('answer-damp', 'What was asked for', `moisture.constraints.${i}.words`);
      return alsoSaying(say`You asked for this: ${words}. `, answerTo(situation, id, take));
    }),
    ...(broken ? [say`You decide whether that is given up. Nothing is settled until you do.`] : []),
    ...flatWish(situation, take),
    ...coveringWish(situation, take),
  ];
}
