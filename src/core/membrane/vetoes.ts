import {
  type CoolRoofRule,
  coolRoofRules,
  type MembraneHeat,
  membraneHeat,
} from '../../../reference/membranes/heat.ts';
import { type MembraneVeto, membraneVetoes, type VetoCondition } from '../../../reference/membranes/vetoes.ts';
import type { Cited } from '../../../reference/sources.ts';
import { sourceNote } from '../finding.ts';
import { deckNames } from '../kind-names.ts';
import type { SourceNote } from '../report/types.ts';
import { isCombustible } from '../safety/deck-fire.ts';
import { figure } from '../safety/figure.ts';
import { attachmentChoices } from './attachment.ts';
import type { MembraneFacts } from './facts.ts';
import { bituminous, type Membrane, type MembraneId, rowFor } from './options.ts';
import { agedSri } from './scores.ts';
import { finishedSlope, needsMoreSlope, slopeRow } from './slope.ts';
import { waterStays } from './weights.ts';

export interface Veto {
  id: string;
  why: string;
  source: SourceNote;
}

const vetoTable: readonly MembraneVeto[] = membraneVetoes;
const heatTable: readonly MembraneHeat[] = membraneHeat;
const coolTable: readonly CoolRoofRule[] = coolRoofRules;

/** What burns, or may burn, within reach of a flame, in words; null = nothing does. */
export function woodInReach({ deck, eaveWood }: MembraneFacts): string | null {
  const burns = deck.combustible ?? isCombustible(deck.kind);
  if (burns) return `The deck here is ${deck.kind === null ? 'combustible' : deckNames[deck.kind]}.`;
  if (burns === null) return 'It is not known that the deck here cannot burn.';
  if (eaveWood) return 'There is wood at the eave, wall or curb.';
  return eaveWood === null ? 'Nobody has shown that eave, walls and curbs are free of wood.' : null;
}

function bitumenInContact(facts: MembraneFacts): string | null {
  const { covering } = facts.existing;
  if (facts.coverBoard || facts.residueRemovedOrCovered) return null;
  if (covering === null) return 'The old covering is not known, so asphalt is taken to be there.';
  return bituminous.has(covering) ? 'The old covering is asphalt, and nothing is planned that parts them.' : null;
}

function wetOrLayered({ base, existing }: MembraneFacts): string | null {
  if (base !== 'old-covering') return null;
  if (existing.wet) return 'The old roof is wet.';
  if (existing.wet === null) return 'It is not known whether the old roof is dry: cut a core.';
  if (existing.layers === null) return 'The number of old roofs is not known.';
  return existing.layers > 1 ? `There are ${existing.layers} roofs already.` : null;
}

/** The fact of the job under which each veto holds, in words; null = it does not hold. */
const conditions: Record<VetoCondition, (facts: MembraneFacts) => string | null> = {
  'wood-in-flame-reach': woodInReach,
  'flame-barred': (facts) => (facts.noFlame ? 'That was asked for.' : null),
  'water-stays': (facts) => {
    if (!waterStays(facts)) return null;
    if (facts.residualPondIn === null) return 'It is not shown that the finished roof drains.';
    return `${figure(facts.residualPondIn)} in of water would still stand.`;
  },
  'bitumen-in-contact': bitumenInContact,
  'oils-on-roof': (facts) => (facts.grease ? 'Grease or oil reaches this roof.' : null),
  'wet-or-layered-below': wetOrLayered,
  'nothing-old-below': (facts) => (facts.base === 'new-boards' ? 'New boards are planned here.' : null),
  'cured-silicone-below': (facts) =>
    facts.base === 'old-covering' && facts.existing.covering === 'coating' && !facts.residueRemovedOrCovered
      ? 'The old roof carries a coating that may be silicone.'
      : null,
};

/** Only a covering that needs more slope than the others goes by it: a roof too flat for all is a matter of the slope. */
function slopeVeto({ covering }: Membrane, facts: MembraneFacts): Veto | null {
  if (!needsMoreSlope(covering)) return null;
  const standing = finishedSlope(covering, facts.leastSlopeInPerFt, facts.reRoofException);
  if (standing !== 'too-flat' && standing !== 'not-known') return null;
  const row = slopeRow(covering);
  const needed = `It needs ${figure(row.leastInPerFt)} in per ft of slope`;
  const why =
    facts.leastSlopeInPerFt === null
      ? `${needed}, and the finished slope is not known.`
      : `${needed}; the finished roof has ${figure(facts.leastSlopeInPerFt, 3)}.`;
  return { id: 'slope', why, source: sourceNote(row) };
}

function attachmentVeto(id: MembraneId, facts: MembraneFacts): Veto | null {
  const choices = attachmentChoices(id, facts);
  const refusals = choices.map((choice) => choice.refused).filter((refused) => refused !== null);
  const first = refusals[0];
  if (!first || refusals.length < choices.length) return null;
  const why = [...new Set(refusals.map((refused) => refused.why))].join(' ');
  return { id: first.kind, why, source: sourceNote(first.row) };
}

/**
 * An energy rule passes by the pair (reflectance and emittance) or by the index: the routes are not equivalent.
 * @param agedReflectance 0..1, three-year value
 */
export function passesCoolRoof(agedReflectance: number, emittance: number, sri: number, rule: CoolRoofRule): boolean {
  const byPair = agedReflectance >= rule.agedReflectance && emittance >= rule.emittance;
  return byPair || sri >= rule.agedSri;
}

function coolRoofVeto(id: MembraneId, facts: MembraneFacts): Veto | null {
  const rule = coolTable.find((row) => row.id === facts.coolRoofRule);
  const heat = rowFor(heatTable, id);
  if (!rule || passesCoolRoof(heat.agedReflectance, heat.emittance, agedSri(id), rule)) return null;
  return {
    id: 'cool-roof-rule',
    why: `${rule.title} asks for an aged SRI of ${rule.agedSri} or reflectance ${rule.agedReflectance} with emittance ${rule.emittance}; this one has SRI ${figure(agedSri(id), 0)} and reflectance ${heat.agedReflectance}.`,
    source: sourceNote(rule),
  };
}

function tableVeto(membrane: Membrane, row: MembraneVeto, facts: MembraneFacts): Veto | null {
  if (!row.removes.some((trait) => membrane.traits.includes(trait))) return null;
  const fact = conditions[row.when](facts);
  return fact === null ? null : { id: row.id, why: `${row.why} ${fact}`, source: sourceNote(row as Cited) };
}

/** Everything that takes a covering out on this job, in the order of the table; empty = it may be weighed. */
export function vetoesOf(membrane: Membrane, facts: MembraneFacts): readonly Veto[] {
  return [
    ...vetoTable.map((row) => tableVeto(membrane, row, facts)),
    slopeVeto(membrane, facts),
    attachmentVeto(membrane.id, facts),
    coolRoofVeto(membrane.id, facts),
  ].filter((veto) => veto !== null);
}
