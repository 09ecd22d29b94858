import { plainNumber } from '../../../units/print.ts';
import { isFoam } from '../../moisture/layers.ts';
import { degreesF, heatedPlace } from '../page-heat.ts';
import type { HeatReport, MoistureReport } from '../types.ts';
import { isPlanned, type Situation } from './situation.ts';
import { type Because, type OwnerStatement, say, standingOn, type Taker, takerOf } from './statement.ts';

const WEATHER_OF = 'weather of ';

const whole = (value: number): string => plainNumber(Math.round(Math.abs(value)));
const percent = (share: number): string => `${plainNumber(Math.round(100 * share))} %`;

/** How much of the difference is insulation and how much color, with nothing kept back. */
function shares({ figures: { insulationShare, colorShare }, split }: HeatReport, take: Taker): OwnerStatement[] {
  if (split === null) return [];
  const saved = take.figure('answer-heat', 'Heat kept out in that day', 'is', ['heat.split.savedBtu'], whole);
  if (split.savedBtu <= -0.5) {
    const more = take.figure('answer-heat', 'Heat let in more in that day', 'is', ['heat.split.savedBtu'], (btu) =>
      whole(-btu),
    );
    return [say`The new roof lets in ${more} units more than the old one in that day.`];
  }
  if (insulationShare === null || colorShare === null)
    return [standingOn(say`The new roof keeps out next to nothing more than the old one.`, saved)];
  const boards = take.figure('answer-heat', 'Share of the insulation', 'is', ['heat.figures.insulationShare'], percent);
  const color = take.figure('answer-heat', 'Share of the color', 'is', ['heat.figures.colorShare'], percent);
  if (colorShare < 0)
    return [
      standingOn(say`All of the gain comes from the boards. The new color takes in more sun than the old one.`, color),
    ];
  if (insulationShare < 0)
    return [
      standingOn(
        say`All of the gain comes from the color. The new roof holds back less heat than the old one.`,
        boards,
      ),
    ];
  return [say`Of the difference, ${boards} is due to the boards and ${color} to the color.`];
}

function winter({ winter: cold }: HeatReport, take: Taker): OwnerStatement[] {
  if (cold === null) return [];
  const amount = take.figure(
    'answer-heat',
    'Lost more because of the color',
    'is',
    ['heat.winter.colorPenaltyBtuPerSqFt'],
    whole,
  );
  const units = amount.shown === '1' ? 'unit' : 'units';
  if (Math.abs(cold.colorPenaltyBtuPerSqFt) < 0.5)
    return [standingOn(say`In winter the new color makes next to no difference.`, amount)];
  return cold.colorPenaltyBtuPerSqFt > 0
    ? [
        say`In winter the new color costs a little: on a clear January day ${amount} ${units} more leave through each square foot.`,
      ]
    : [
        say`In winter the new color helps a little: on a clear January day ${amount} ${units} less leave through each square foot.`,
      ];
}

/** Town whose weather stands in for that of the roof; null = the roof's own town is listed. */
export function standInTown({ assessment }: Situation): Because | null {
  const i = (assessment.heat?.assumed ?? []).findIndex(
    ({ path, value }) => (path === 'place.city' || path === 'place.climateZone') && value.startsWith(WEATHER_OF),
  );
  if (i < 0) return null;
  const town = (text: string): string => text.slice(WEATHER_OF.length);
  return takerOf(assessment).quote('answer-assumed', 'Weather that was taken', `heat.assumed.${i}.value`, town);
}

/** Where no old roof is left the new one is set beside nothing. */
function newAlone({ assessment }: Situation, heat: HeatReport, stood: readonly OwnerStatement[]): OwnerStatement[] {
  if (heat.new === null) return [];
  const take = takerOf(assessment);
  const figure = (label: string, key: string, print: (value: number) => string) =>
    take.figure('answer-heat', label, 'is', [`heat.figures.${key}`], print);
  const hottest = figure('New surface at its hottest', 'peakSurfaceNewF', degreesF);
  const passes = figure('Heat through the new roof', 'dayNewBtuPerSqFt', whole);
  return [
    say`On a hot clear day the new roof reaches about ${hottest}.`,
    ...stood,
    say`In that day ${passes} units of heat (Btu) pass into ${heatedPlace(heat.day)} through each square foot of it.`,
    ...(heat.day.attic ? [say`The air that moves through the attic is not counted in that.`] : []),
  ];
}

/** What the heat of summer and the cold of winter do, old roof and new. */
export function heatStatements(situation: Situation): OwnerStatement[] {
  const { assessment, call } = situation;
  const { heat } = assessment;
  const planned = isPlanned(situation);
  if (heat === undefined) return [];
  const take = takerOf(assessment);
  const surface = (label: string, key: string) =>
    take.figure('answer-heat', label, 'is', [`heat.figures.${key}`], degreesF);
  const btu = (label: string, key: string) => take.figure('answer-heat', label, 'is', [`heat.figures.${key}`], whole);
  const town = standInTown(situation);
  const stood =
    town === null
      ? []
      : [
          say`We have no weather for your own town, so these figures use that of ${town}. Yours can be hotter or colder.`,
        ];
  const old = say`On a hot clear day the old roof reaches about ${surface('Old surface at its hottest', 'peakSurfaceOldF')}.`;
  if (call === 'off') return newAlone(situation, heat, stood);
  if (heat.new === null) return [old, ...stood, say`There is no new roof yet to set beside it.`];
  const room = heatedPlace(heat.day);
  const verb = planned ? 'The new one reaches about' : 'A new one would reach about';
  const guessed = assessment.assumed.findIndex(
    ({ path, because }) => path === 'covering.kind' && because.startsWith('the color'),
  );
  return [
    old,
    ...stood,
    say`${verb} ${surface('New surface at its hottest', 'peakSurfaceNewF')}.`,
    say`In that day ${btu('Heat through the old roof', 'dayOldBtuPerSqFt')} units of heat (Btu) pass into ${room} through each square foot of the old roof, and ${btu('Heat through the new roof', 'dayNewBtuPerSqFt')} through the new.`,
    ...(heat.day.attic ? [say`The air that moves through the attic is not counted in that.`] : []),
    ...shares(heat, take),
    ...winter(heat, take),
    ...(guessed < 0
      ? []
      : [
          standingOn(
            say`The color of the old roof was not measured, so take these as a guide.`,
            take.quote('answer-assumed', 'Color of the old roof', `assumed.${guessed}.because`),
          ),
        ]),
  ];
}

const damp: Readonly<Record<MoistureReport['verdict'], string | null>> = {
  safe: 'The deck stays warm enough. We see no damp that would gather inside the roof.',
  'safe-if': 'Inside the roof it stays dry, but only if some things are done:',
  'at-risk': 'As it is planned, damp can gather inside the roof:',
  'not-known': 'We cannot say yet whether damp will gather inside the roof.',
  'not-asked': null,
};

/** The same of a new roof that is drawn and not planned. */
const dampIfLaid: Readonly<Record<MoistureReport['verdict'], string | null>> = {
  safe: 'Under the new roof drawn here the deck would stay warm enough. We see no damp that would gather inside it.',
  'safe-if': 'Inside the new roof drawn here it would stay dry, but only if some things are done:',
  'at-risk': 'Inside the new roof drawn here damp could gather:',
  'not-known': 'We cannot say yet whether damp would gather inside a new roof.',
  'not-asked': null,
};

/** Foam against the deck keeps it cold: it stays dry where no room air gets there. */
const safeOverFoam =
  'Where the foam below lies tight against the deck, no room air gets to it. We then see no damp that would gather inside the roof.';
const safeOverFoamIfLaid =
  'Where the foam below lies tight against the deck, no room air gets to it. Under the new roof drawn here we then see no damp that would gather.';

/** Damp inside one roof in a few words, for a table. */
const dampShort: Readonly<Record<MoistureReport['verdict'], string>> = {
  safe: 'stays dry by our figures',
  'safe-if': 'stays dry if what the owner’s page lists is done',
  'at-risk': 'damp can gather: see the owner’s page for what to do',
  'not-known': 'not known yet',
  'not-asked': 'nobody heats the space below, so it was not asked',
};

export function dampCell({ assessment: { moisture } }: Situation, take: Taker): OwnerStatement {
  if (moisture === undefined) return say`not worked out`;
  return standingOn(
    say`${dampShort[moisture.verdict]}`,
    take.quote('answer-damp', 'Damp inside the roof', 'moisture.answer'),
  );
}

/** Whether water gathers inside the roof, from the air of the room. */
export function dampStatements(situation: Situation): OwnerStatement[] {
  const { assessment, layout } = situation;
  const { moisture } = assessment;
  const planned = layout === null || isPlanned(situation);
  if (moisture === undefined) return [];
  const words =
    moisture.verdict === 'safe' && isFoam(moisture.below.kind)
      ? planned
        ? safeOverFoam
        : safeOverFoamIfLaid
      : (planned ? damp : dampIfLaid)[moisture.verdict];
  if (words === null) return [];
  const take = takerOf(assessment);
  const verdict = take.quote('answer-damp', 'Damp inside the roof', 'moisture.answer');
  const todo = moisture.verdict === 'safe' || moisture.verdict === 'not-known' ? [] : moisture.todo.slice(0, 2);
  const winterOf = assessment.assumed.findIndex(
    ({ path, value }) => path === 'place.city' && value.startsWith('the winter of '),
  );
  return [
    standingOn(say`${words}`, verdict),
    ...(winterOf < 0
      ? []
      : [
          say`This goes by ${take.quote('answer-assumed', 'Winter that was taken', `assumed.${winterOf}.value`)}, as we have none for your own town.`,
        ]),
    ...todo.map((_, i) => say`${take.quote('answer-damp', 'To do against damp', `moisture.todo.${i}`)}`),
  ];
}
