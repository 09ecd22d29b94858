import type { FallCautionId } from '../../../../reference/safety/fall-cautions.ts';
import { safetyLimits } from '../../../../reference/safety/limits.ts';
import type { CautionMoment } from '../../../../reference/safety/row.ts';
import { statePlans, stateRules } from '../../../../reference/safety/state-plans.ts';
import { arrestClearance, coverLoadLb, ladderFor } from '../arrest.ts';
import { dropFt, isFallEdge, isHighEnough, openEdges, parapetIn, surfaceRiseIn } from '../edges.ts';
import type { FallProtection, SafetyEdge, SafetyFacts } from '../facts.ts';
import { fallOptions } from '../fall-options.ts';
import { figure, listed } from '../figure.ts';
import { type RoofPart, roofWidths } from '../roof-width.ts';
import { warningLine } from '../warning-line.ts';
import { ifMissing, ifNearer, ifPresent, type Trigger } from './trigger.ts';

const limits = safetyLimits;

const ft = (value: number | null) => (value === null ? 'a drop not known' : `${figure(value)} ft`);
const edgeAndDrop = (edge: SafetyEdge, when: CautionMoment) => `${edge.label} (${ft(dropFt(edge, when))})`;

/** The open edges in words; a roof of which no edge was entered is taken as open all round. */
function openEdgeFact({ roof }: SafetyFacts, when: CautionMoment): string | null {
  if (roof.edges.length === 0) return 'Not known: what the edges are and how far one can fall.';
  const open = openEdges(roof.edges, when);
  return open.length > 0 ? `Open edges: ${listed(open.map((edge) => edgeAndDrop(edge, when)))}.` : null;
}

/** Runs the rest only where somebody can fall off an edge. */
const atOpenEdge =
  (rest: Trigger): Trigger =>
  (facts, when) =>
    openEdgeFact(facts, when) === null ? null : rest(facts, when);

/** True while the system is chosen, or nothing is. */
const mayUse = ({ work }: SafetyFacts, system: FallProtection) =>
  work.fallProtection === null || work.fallProtection.includes(system);

const using =
  (system: FallProtection, rest: Trigger): Trigger =>
  (facts, when) =>
    mayUse(facts, system) ? rest(facts, when) : null;

const openly = (system: FallProtection, rest: Trigger) => atOpenEdge(using(system, rest));

/** Only this system is chosen, or none yet. */
function onlyOne({ work }: SafetyFacts, system: FallProtection): boolean {
  return work.fallProtection === null || (work.fallProtection.length === 1 && work.fallProtection[0] === system);
}

const parts = ({ roof }: SafetyFacts): readonly RoofPart[] => roofWidths(roof.outline).parts;

function optionsInWords(facts: SafetyFacts): string {
  return parts(facts)
    .map((part) => {
      const allowed = fallOptions({
        slopeIn12: facts.roof.slopeIn12,
        part,
        wheeledEquipment: facts.work.wheeledEquipment,
        roofingWork: true,
      }).filter((option) => option.allowed);
      return `part ${figure(part.lengthFt)} x ${figure(part.widthFt)} ft: ${listed(
        allowed.map((option) => option.name),
        'or',
      )}`;
    })
    .join('; ');
}

function monitorTooWide(facts: SafetyFacts): string | null {
  if (!onlyOne(facts, 'monitor')) return null;
  const wide = parts(facts).filter((part) => part.widthFt > limits.monitorWidthFt.value);
  const words = wide.map((part) => `${figure(part.lengthFt)} x ${figure(part.widthFt)} ft`);
  return wide.length > 0 ? `The part of ${listed(words)} is wider than ${limits.monitorWidthFt.value} ft.` : null;
}

function monitorWithWheels(facts: SafetyFacts): string | null {
  const { fallProtection, wheeledEquipment } = facts.work;
  if (fallProtection?.includes('warning-line')) return null;
  return ifPresent(wheeledEquipment, 'Wheeled equipment is used.', 'whether wheeled equipment is used');
}

function monitorShort({ work }: SafetyFacts): string | null {
  if (work.crewSize === null) return 'Not known: how many people there are.';
  if (work.crewSize < 2) return `A crew of ${work.crewSize} cannot spare a monitor.`;
  return ifMissing(work.monitorOnlyWatches, 'The monitor has other tasks.', 'whether the monitor only watches');
}

function tooNarrow(facts: SafetyFacts): string | null {
  const travel = facts.work.wheeledEquipment === false ? 'none' : 'both';
  const narrow = parts(facts).filter((part) => warningLine(part.lengthFt, part.widthFt, travel) === null);
  const back = travel === 'none' ? limits.lineFt.value : limits.lineAcrossTravelFt.value;
  const words = narrow.map((part) => `${figure(part.lengthFt)} x ${figure(part.widthFt)} ft`);
  return narrow.length > 0 ? `The part of ${listed(words)} with the line ${back} ft back all round.` : null;
}

const parapets = ({ roof }: SafetyFacts, when: CautionMoment) =>
  roof.edges.filter((edge) => edge.kind === 'parapet' && isFallEdge(edge, when));

function lowParapets(facts: SafetyFacts, when: CautionMoment, guardIn: number): string | null {
  const low = parapets(facts, when).flatMap((edge) => {
    const height = parapetIn(edge, when);
    if (height === null) return [`${edge.label} (height not known)`];
    return height < guardIn ? [`${edge.label} (${figure(height, 1)} in)`] : [];
  });
  return low.length > 0 ? `Parapet at ${listed(low)}; ${guardIn} in are needed.` : null;
}

function taperLowersParapet(facts: SafetyFacts): string | null {
  const lowered = parapets(facts, 'finished').flatMap((edge) => {
    const [old, rise, now] = [edge.parapetIn, surfaceRiseIn(edge), parapetIn(edge, 'finished')];
    if (old === null || rise === null || now === null)
      return [`how high the parapet at ${edge.label} will stand is not known`];
    if (rise <= 0 || now >= limits.guardIn.value) return [];
    return [
      `the roof rises ${figure(rise, 1)} in at ${edge.label}, so the wall that stood ${figure(old, 1)} in high then stands ${figure(now, 1)} in`,
    ];
  });
  return lowered.length > 0 ? `Finished roof: ${listed(lowered)}.` : null;
}

function parapetStrength(facts: SafetyFacts, when: CautionMoment): string | null {
  const relied = parapets(facts, when).filter((edge) => parapetIn(edge, when) === null || isHighEnough(edge, when));
  if (relied.length === 0) return null;
  const words = listed(relied.map((edge) => edge.label));
  return ifMissing(
    facts.roof.parapetStrengthShown,
    `The parapet at ${words} has not been shown to hold 200 lb.`,
    `whether the parapet at ${words} holds 200 lb`,
  );
}

function equipmentNearEdge({ roof }: SafetyFacts): string | null {
  const near = roof.equipment.filter(
    ({ edgeFt, dropFt: drop, parapetFinishedIn }) =>
      (edgeFt === null || edgeFt <= limits.codeGuardEdgeFt.value) &&
      (drop === null || drop * 12 > limits.codeGuardDropIn.value) &&
      (parapetFinishedIn === null || parapetFinishedIn < limits.codeGuardIn.value),
  );
  const words = near.map(({ label, edgeFt, parapetFinishedIn }) => {
    const distance = edgeFt === null ? 'distance from the edge not known' : `${figure(edgeFt)} ft from the edge`;
    const wall = parapetFinishedIn === null ? 'wall height not known' : `wall ${figure(parapetFinishedIn, 1)} in`;
    return `${label} (${distance}, ${wall})`;
  });
  return near.length > 0 ? `${listed(words)}.` : null;
}

function reachesDuty({ roof }: SafetyFacts): string | null {
  const duty = limits.fallDutyFt.value;
  const words = roof.edges.flatMap((edge) => {
    const old = dropFt(edge, 'as-is');
    if (old === null || old >= duty || !isFallEdge(edge, 'finished')) return [];
    const now = dropFt(edge, 'finished');
    return [
      `${edge.label} goes from ${figure(old)} ft to ${now === null ? 'a height not known' : `${figure(now)} ft`}`,
    ];
  });
  return words.length > 0 ? `${listed(words)}.` : null;
}

function openHoles({ roof }: SafetyFacts): string | null {
  const open = roof.openings.filter(
    ({ dropFt: drop, cover, guarded }) =>
      (drop === null || drop > limits.holeDropFt.value) && cover !== 'fixed' && guarded !== true,
  );
  const words = open.map(({ label, cover }) => {
    const state = { loose: 'a loose cover', none: 'no cover', fixed: 'a cover' };
    return `${label} (${cover === null ? 'cover not known' : state[cover]})`;
  });
  return open.length > 0 ? `${listed(words)}.` : null;
}

function looseLids({ roof }: SafetyFacts): string | null {
  const lids = roof.openings.filter(({ cover, kind }) => cover === 'loose' || (cover === null && kind !== 'skylight'));
  if (lids.length > 0) return `${listed(lids.map(({ label }) => label))}: loose cover, or not known how it is held.`;
  return null;
}

const openingsOf =
  (...kinds: readonly string[]): Trigger =>
  ({ roof }) => {
    const found = roof.openings.filter(({ kind }) => kinds.includes(kind));
    return found.length > 0 ? `${listed(found.map(({ label }) => label))}.` : null;
  };

function holeCovers({ roof }: SafetyFacts): string | null {
  if (roof.openings.length === 0) return null;
  const load = figure(coverLoadLb(2, 250, 300));
  return `${listed(roof.openings.map(({ label }) => label))}. Two people of 250 lb with tools and a roll of 300 lb: ${load} lb.`;
}

function ladderFact({ roof, work }: SafetyFacts): string | null {
  const drops = roof.edges.map((edge) => dropFt(edge, 'as-is')).filter((drop) => drop !== null);
  if (work.ladderUsed !== true || drops.length === 0)
    return ifPresent(work.ladderUsed, 'The way up is a ladder.', 'how people get up');
  const { baseFt, totalFt } = ladderFor(Math.min(...drops));
  return `Landing ${figure(Math.min(...drops), 1)} ft up: foot ${figure(baseFt, 1)} ft out, ladder ${figure(totalFt, 1)} ft at the least.`;
}

function freeFall({ work }: SafetyFacts): string | null {
  if (work.arrest === null)
    return 'Not known: length of the lanyard and height of the anchor. An anchor at foot level rarely fits.';
  const { freeFallFt, allowed } = arrestClearance(work.arrest.lanyardFt, work.arrest.anchorHeightFt);
  return allowed ? null : `Free fall of ${figure(freeFallFt, 1)} ft; ${limits.freeFallFt.value} ft at most.`;
}

function noRoomBelow(facts: SafetyFacts, when: CautionMoment): string | null {
  if (facts.work.arrest === null) return 'Not known: length of the lanyard and height of the anchor.';
  const { belowSurfaceFt } = arrestClearance(facts.work.arrest.lanyardFt, facts.work.arrest.anchorHeightFt);
  if (facts.roof.edges.length === 0)
    return `${figure(belowSurfaceFt, 1)} ft are needed below the surface; the drop is not known.`;
  const short = openEdges(facts.roof.edges, when).filter((edge) => (dropFt(edge, when) ?? 0) < belowSurfaceFt);
  if (short.length === 0) return null;
  return `${figure(belowSurfaceFt, 1)} ft are needed below the surface; ${listed(short.map((edge) => edgeAndDrop(edge, when)))}.`;
}

function restraintReaches({ work }: SafetyFacts): string | null {
  if (work.restraint === null) return 'Not known: reach of the rope and distance to the nearest edge or hole.';
  const { reachFt, leastDistanceFt } = work.restraint;
  return reachFt >= leastDistanceFt
    ? `The rope reaches ${figure(reachFt)} ft; the nearest edge or hole is ${figure(leastDistanceFt)} ft away.`
    : null;
}

function statePlanFact({ building }: SafetyFacts): string | null {
  if (building.state === null) return 'The state is not known.';
  const rule = stateRules.find((row) => row.state === building.state);
  if (rule) return `${rule.state}: ${rule.differs}`;
  const states: readonly string[] = statePlans.states;
  return states.includes(building.state) ? `${building.state} has its own plan.` : null;
}

function monitorSlope({ building, roof }: SafetyFacts): string | null {
  const limit = stateRules.find((row) => row.state === building.state)?.monitorSlopeIn12 ?? null;
  if (limit === null || (roof.slopeIn12 !== null && roof.slopeIn12 <= limit)) return null;
  return `Slope ${roof.slopeIn12 === null ? 'not known' : `${figure(roof.slopeIn12)} in 12`} in ${building.state}.`;
}

/** When each fall caution holds. Sources stand on the rows. */
export const fallTriggers: Record<FallCautionId, Trigger> = {
  'fall-protection-not-chosen': atOpenEdge(({ work }) =>
    work.fallProtection === null || work.fallProtection.length === 0 ? 'Nobody has chosen a system yet.' : null,
  ),
  'fall-protection-required': (facts, when) => {
    const open = openEdgeFact(facts, when);
    return open === null ? null : `${open} Allowed by the federal rule: ${optionsInWords(facts)}.`;
  },
  'too-steep-for-lines': ({ roof }) => {
    if (roof.slopeIn12 === null) return 'The slope is not known.';
    return roof.slopeIn12 > limits.lowSlopeIn12.value
      ? `Slope ${figure(roof.slopeIn12)} in 12; 4 in 12 at most.`
      : null;
  },
  'monitor-alone-too-wide': atOpenEdge(monitorTooWide),
  'monitor-with-wheels': openly('monitor', monitorWithWheels),
  'monitor-only-watches': openly('monitor', monitorShort),
  'line-alone': atOpenEdge((facts) =>
    onlyOne(facts, 'warning-line') ? 'Nothing is chosen besides the line, or nothing at all.' : null,
  ),
  'warning-line-set': openly('warning-line', openEdgeFact),
  'warning-line-wheels': openly('warning-line', ({ work }) =>
    ifPresent(work.wheeledEquipment, 'Wheeled equipment is used.', 'whether wheeled equipment is used'),
  ),
  'roof-too-narrow-for-line': openly('warning-line', tooNarrow),
  'odd-shape-width': openly('monitor', ({ roof }) =>
    roofWidths(roof.outline).needsCompetentPerson
      ? 'The outline is not built of right angles, or has many inside corners.'
      : null,
  ),
  'parapet-too-low': (facts, when) => lowParapets(facts, when, limits.guardIn.value),
  'taper-lowers-parapet': taperLowersParapet,
  'parapet-not-code-guard': (facts, when) => lowParapets(facts, when, limits.codeGuardIn.value),
  'parapet-strength': parapetStrength,
  'equipment-near-edge': equipmentNearEdge,
  'build-up-reaches-duty': reachesDuty,
  'open-hole': openHoles,
  'hole-cover': holeCovers,
  'loose-lid': looseLids,
  skylight: openingsOf('skylight'),
  'hatch-open': openingsOf('hatch'),
  'deck-work': ({ roof }) =>
    ifPresent(
      roof.deck.replaced,
      'Deck is cut out and replaced.',
      'whether deck has to be replaced; the tear-off shows it',
    ),
  'nailers-at-edge': atOpenEdge(({ work }) =>
    ifPresent(work.newNailers, 'New wood nailers go on the edge.', 'whether new nailers go on the edge'),
  ),
  'free-fall': openly('personal-arrest', freeFall),
  'arrest-clearance': openly('personal-arrest', noRoomBelow),
  anchor: atOpenEdge((facts) =>
    mayUse(facts, 'personal-arrest') || mayUse(facts, 'restraint') ? 'Harness is used or possible.' : null,
  ),
  'restraint-reach': openly('restraint', restraintReaches),
  'swing-fall': openly('personal-arrest', () => 'Harness is used or possible.'),
  'rescue-plan': openly('personal-arrest', ({ work }) =>
    ifMissing(work.rescuePlan, 'There is no written plan.', 'whether a rescue plan is written'),
  ),
  'other-trades': ({ work }) =>
    ifPresent(work.otherTrades, 'Other trades are on the roof.', 'whether other trades come on the roof'),
  'materials-at-edge': atOpenEdge(({ work }) =>
    work.fallProtection?.includes('guardrail')
      ? null
      : ifNearer(work.materialsToEdgeFt, limits.storageFt.value, 'distance of materials from the edge'),
  ),
  ladder: ladderFact,
  'step-between-levels': ({ roof }, when) => {
    const high = roof.edges.filter(
      (edge) => edge.kind === 'roof-below' && (dropFt(edge, when) ?? Infinity) * 12 >= limits.stepIn.value,
    );
    return high.length > 0 ? `${listed(high.map((edge) => edgeAndDrop(edge, when)))}.` : null;
  },
  'training-record': ({ work }) =>
    ifMissing(work.trainingRecords, 'Records are missing.', 'whether everybody has a training record'),
  'inspection-stand-back': openEdgeFact,
  california: ({ building }) =>
    building.state === 'CA' ? 'The job is in California.' : building.state === null ? 'The state is not known.' : null,
  'state-plan': statePlanFact,
  'monitor-slope-oregon': openly('monitor', monitorSlope),
  'dark-or-alone': ({ work }) =>
    ifPresent(
      work.darkOrAlone,
      'Work in the dark, in glare or alone is planned.',
      'whether anybody works in the dark or alone',
    ),
};
