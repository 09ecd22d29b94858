import { coverBoard } from '../../../reference/insulation.ts';
import { reRoofSlopeException } from '../drainage/slope-rule.ts';
import { bindingCoolRoof, coolRoofJob } from '../energy/cool-roof.ts';
import { distanceFt, toSegment } from '../geometry/vector.ts';
import { keepsItsSlope } from '../layout/flat-boards.ts';
import { nailersOn } from '../layout/nailers.ts';
import type { AttachmentChoice } from '../membrane/attachment.ts';
import type { MembraneFacts } from '../membrane/facts.ts';
import type { EdgeKind } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { SafetyEdge, SafetyFacts } from '../safety/facts.ts';
import { nothingKnown } from '../safety/nothing-known.ts';
import { deckSoft, wetFound } from '../scope/bearing.ts';
import { isOpenEdge } from '../site/offers.ts';
import { comesOff, keptIn } from '../site/planned-work.ts';
import type { Site } from '../site/site.ts';
import { climateZoneOf } from '../site/town.ts';
import type { ExistingReport, Layout } from './types.ts';

const overLiving = (site: Site): boolean | null =>
  site.roof.building.below === null ? null : site.roof.building.below.startsWith('living');

/** What the covering choice hangs on, read from the roof and the chosen layout. */
export function membraneFacts(
  site: Site,
  existing: ExistingReport,
  layout: Layout | null,
  ruleSet: RuleSet,
): MembraneFacts {
  const { roof, given } = site;
  const { preferences } = roof;
  const kept = keepsItsSlope(roof, existing);
  const shown = layout === null && !kept ? 'not-shown' : 'drains';
  return {
    deck: {
      kind: roof.deck.kind,
      combustible: null,
      thicknessIn: roof.deck.thicknessIn,
      undersideExposed: given.below === 'living-exposed-deck' || given.below === 'outdoors',
    },
    eaveWood: site.edges.some(({ edge }) => edge.kind === 'gutter' || edge.kind === 'drip' || edge.kind === 'rake')
      ? true
      : null,
    reRoofException: reRoofSlopeException(ruleSet, true, shown).applies,
    leastSlopeInPerFt: layout?.leastFaceSlopeInPerFt ?? existing.leastFaceSlopeInPerFt,
    residualPondIn: layout === null && !kept ? (existing.ponds[0]?.greatestDepthIn ?? null) : 0,
    birdBathIn: ruleSet.birdBathIn,
    existing: {
      covering: roof.covering.kind,
      layers: roof.covering.layers,
      wet: wetFound(roof.findings),
      ponds: existing.verdict === 'ponds' ? true : existing.verdict === 'undecided' ? null : false,
    },
    base: 'new-boards',
    coverBoard: coverBoard.thicknessIn > 0,
    residueRemovedOrCovered: preferences.residueRemovedOrCovered,
    grease: preferences.grease,
    noFlame: preferences.noFlame,
    debris: preferences.debris,
    footTraffic: preferences.footTraffic,
    shade: null,
    tightBudget: preferences.tightBudget,
    workTemperatureF: preferences.workTemperatureF,
    climateZone: climateZoneOf(roof.place),
    livingSpaceBelow: overLiving(site),
    coolRoofRule: bindingCoolRoof(
      coolRoofJob(site, ruleSet, layout?.leastFaceSlopeInPerFt ?? existing.leastFaceSlopeInPerFt ?? 0),
    ),
    askedFor: preferences.membrane,
    ownWeights: preferences.weights,
  };
}

/** Edges beyond which somebody would fall. */
const OPEN_AIR: ReadonlySet<EdgeKind> = new Set(['gutter', 'drip', 'rake', 'parapet', 'box-gutter']);

function safetyEdges(site: Site, layout: Layout | null): SafetyEdge[] {
  return site.edges.map(({ edge, label, from, to }) => {
    const on = nailersOn(layout?.nailers ?? [], { from, to });
    const highIn = on.length === 0 ? null : Math.max(...on.flatMap(({ startIn, endIn }) => [startIn, endIn]));
    return {
      label,
      kind: edge.kind,
      dropFt: OPEN_AIR.has(edge.kind) ? site.given.heightFt : edge.kind === 'roof-below' ? null : 0,
      parapetIn: edge.kind === 'parapet' && edge.topIn !== null ? Math.min(...edge.topIn) : null,
      oldBuildUpIn: site.given.buildUpIn,
      newBuildUpIn: highIn === null ? null : highIn + keptIn(site.given),
    };
  });
}

/** What the cautions hang on. What the roof file cannot know stays on the cautious side. */
export function safetyFacts(
  site: Site,
  existing: ExistingReport,
  layout: Layout | null,
  attachment: AttachmentChoice | null,
): SafetyFacts {
  const { roof, given } = site;
  const blank = nothingKnown(roof.outline, site.section.areaSqFt);
  const slopes = [existing.leastFaceSlopeInPerFt ?? 0, layout?.slopeInPerFt ?? 0];
  const primary = layout?.outlets ?? existing.outlets;
  const openAir = site.edges.filter(({ edge }) => OPEN_AIR.has(edge.kind) && edge.kind !== 'parapet');
  // Soft places are cut out; whether more is replaced shows once the deck is bare.
  const soft = deckSoft(roof.findings);
  return {
    ...blank,
    building: {
      ...blank.building,
      state: roof.place.state,
      // Somebody lives below: a dwelling. What else stands below tells nothing of the rest of the building.
      use: overLiving(site) === true ? 'dwelling' : null,
      dwellingUnits: null,
      yearBuilt: roof.building.yearBuilt,
      occupied: overLiving(site),
      ceilingIsDeck: roof.building.below === null ? null : given.below === 'living-exposed-deck',
    },
    roof: {
      ...blank.roof,
      slopeIn12: Math.max(...slopes),
      edges: safetyEdges(site, layout),
      openings: roof.curbs
        .filter(({ kind }) => kind === 'skylight' || kind === 'hatch')
        .map(({ id, kind }) => ({
          label: id === kind ? kind : `${kind} ${id}`,
          kind: kind as 'skylight' | 'hatch',
          dropFt: given.heightFt,
          cover: null,
          guarded: null,
        })),
      pipes: roof.pipes.map(({ kind }) => kind),
      outlets: primary.map(({ label, at }) => ({
        label,
        openEdgeFt:
          openAir.length === 0 ? null : Math.min(...openAir.map(({ from, to }) => toSegment(at, from, to).distanceFt)),
      })),
      pondDepthIn: existing.ponds[0]?.greatestDepthIn ?? (existing.verdict === 'undecided' ? null : 0),
      finishedPondDepthIn: layout === null ? null : 0,
      overflowMissing: site.edges.some(isOpenEdge) ? false : layout === null ? null : layout.outlets.length < 2,
      wetInsulation: wetFound(roof.findings),
      ballast: roof.covering.kind === null ? null : roof.covering.kind === 'bur-gravel',
      deck: { ...blank.roof.deck, kind: roof.deck.kind, soft, replaced: soft },
    },
    work: {
      ...blank.work,
      methods: attachment === null ? null : [...attachment.methods],
      newNailers: true,
      tearOffSqFt: comesOff(site) ? site.section.areaSqFt : 0,
      addedLoadPsf: layout?.addedPsf ?? null,
      tapered: true,
    },
    weather: { ...blank.weather, temperatureF: roof.preferences.workTemperatureF },
  };
}

/** Length of the section's sides, ft. */
export const perimeterOf = (site: Site): number =>
  site.edges.reduce((sum, { from, to }) => sum + distanceFt(from, to), 0);
