import { inches, plainNumber, rValue } from '../../units/print.ts';
import type { EnergyCheck, Layout, NewHeights, SourceNote, ThermalReport } from './types.ts';

/** "R-30", "U 0.032", "1″". */
export function energyFigure(value: number, unit: EnergyCheck['unit']): string {
  if (unit === 'R') return rValue(value);
  return unit === 'U' ? `U ${plainNumber(value, 3)}` : inches(value);
}

function layerWords(baseIn: number | null, fits: boolean | null): string {
  if (baseIn === null) return 'more than 16 in';
  if (baseIn === 0) return 'none';
  return `${inches(baseIn)}, ${fits === false ? 'heights do not bear it' : 'heights bear it'}`;
}

export interface BasisRow {
  name: string;
  thinnest: string;
  average: string;
  effective: string;
  u: string;
  layer: string;
  source: SourceNote;
}

/** One line for each basis of R per inch. */
export const basisRows = ({ bases, target }: ThermalReport): BasisRow[] =>
  bases.map(({ name, thinnestR, averageR, effectiveR, u, baseForTargetIn, baseFits, source }) => ({
    name,
    thinnest: rValue(thinnestR),
    average: rValue(averageR),
    effective: rValue(effectiveR),
    u: plainNumber(u, 3),
    layer: target === null ? 'no target known' : layerWords(baseForTargetIn, baseFits),
    source,
  }));

export interface EnergyRow {
  title: string;
  state: 'holds' | 'short';
  /** "in force" or "shown beside it". */
  standing: string;
  asked: string;
  found: string;
  layer: string;
  note: string;
  source: SourceNote;
}

/** One line for each rule of the energy code. */
export const energyRows = ({ checks }: ThermalReport): EnergyRow[] =>
  checks.map(({ title, passes, inForce, asked, found, unit, baseIn, baseFits, note, source }) => ({
    title,
    state: passes ? 'holds' : 'short',
    standing: inForce ? 'in force' : 'the other reading',
    asked: energyFigure(asked, unit),
    found: energyFigure(found, unit),
    layer: layerWords(baseIn, baseFits),
    note,
    source,
  }));

/** Whose R it is: the job's own or the code's. */
const whose = ({ target }: ThermalReport): string =>
  target === null
    ? 'no R to reach is known'
    : target.own
      ? `the target of this job, ${rValue(target.r)}`
      : `${rValue(target.r)} of the code (${target.title})`;

/** Caption of the rules: against what they are held. */
export const energyCaption = (thermal: ThermalReport): string => `Insulation held against ${whose(thermal)}`;

/** Which R is to be reached and who asks for it, which reading is in force, and whether somebody named it. */
export function ruleSentence(thermal: ThermalReport): string {
  const { taperRule, target, codeTarget, noTarget, checksOn } = thermal;
  if (target === null) return `No R to reach is known: none was given, and ${noTarget}.`;
  const reading =
    taperRule.id === 'one-inch' ? 'the full R where the taper has risen 1 in' : 'the U averaged over the area';
  const who = taperRule.given
    ? 'by the local rule of this job'
    : 'taken because none was named; ask the building office';
  const code =
    !target.own || codeTarget === null
      ? ''
      : ` The code’s table asks for ${rValue(codeTarget.r)} (${codeTarget.title}): whether that is met stands with the energy rules.`;
  const from = target.own ? 'the target set for this job, which is no rule of the code' : `the code: ${target.title}`;
  return `To reach: ${rValue(target.r)} (${from}), or U ${plainNumber(target.u, 3)} with the films.${code} In force is ${reading}, ${who}. Rules are held against the ${checksOn}. What lies under the deck is not counted in this table; the energy rules count it where the code does.`;
}

export interface HeightRow {
  what: string;
  now: string;
  after: string;
  todo: string;
}

const known = (valueIn: number | null): string => (valueIn === null ? 'not known' : inches(valueIn));

/** A curb, pipe or inlet as it must stand, and what is done for it. */
export function raisedRow({
  where,
  kind,
  clearIn,
  nowIn,
  neededIn,
  raiseIn,
  vents,
}: NewHeights['raised'][number]): HeightRow {
  const who = kind === 'pipe' ? ', by a licensed trade' : '';
  const rise =
    raiseIn === null
      ? 'measure it'
      : raiseIn > 1 / 32
        ? `raise it ${inches(raiseIn)}${who}`
        : vents
          ? 'high enough for the flashing'
          : 'high enough';
  const clear = clearIn > 0 ? `, ${inches(clearIn)} of it clear` : '';
  return {
    what: where,
    now: known(nowIn),
    after: `${inches(neededIn)}${clear}`,
    todo: vents ? `${rise}; its listed height is not known: a licensed trade looks` : rise,
  };
}

function parapetRow({ where, nowIn, newIn, guardNow, guardNew, guardIn }: NewHeights['parapets'][number]): HeightRow {
  const lost = guardNow === true && guardNew === false;
  const guards = lost
    ? `no guard any more: under ${inches(guardIn)}`
    : guardNew === true
      ? `${inches(guardIn)} or more; its strength is another question`
      : guardNew === false
        ? `no guard: under ${inches(guardIn)}`
        : 'measure it';
  return { what: where, now: known(nowIn), after: known(newIn), todo: guards };
}

/** What must stand higher and what stands lower over the new roof. */
export function heightRows({ newHeights }: Layout): HeightRow[] {
  if (newHeights === undefined) return [];
  const { raised, parapets, tieIns, faces } = newHeights;
  return [
    ...raised.map(raisedRow),
    ...parapets.map(parapetRow),
    ...tieIns.map(({ where, buildUpIn, levelIn, alongIn, stripIn }) => ({
      what: where,
      now: '',
      after: `new roof comes up ${inches(buildUpIn)}`,
      todo:
        levelIn === null || alongIn === null || stripIn === null
          ? 'pitch not known: measure it'
          : `buries ${inches(levelIn)} level, ${inches(alongIn)} along the slope; strip at least ${inches(stripIn)}`,
    })),
    ...faces.map(({ edge, lowIn, highIn }) => ({
      what: `face of the edge metal, ${edge}`,
      now: '',
      after: highIn - lowIn < 1 / 16 ? inches(highIn) : `${inches(lowIn)} to ${inches(highIn)}`,
      todo: 'covers boards, deck edge and 1 in of the fascia',
    })),
  ];
}
