import { energyRulesReport } from '../energy/rules.ts';
import { zoneConflict } from '../energy/zone-conflict.ts';
import type { EnergyTarget } from '../layout/energy-target.ts';
import { coolRoofFindings, dampFindings, ventFindings } from '../report/damp-findings.ts';
import type { Assessment, Assumption, Budget, Finding, Layout } from '../report/types.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { ventReport } from '../vents/attic.ts';
import { moistureReport } from './report.ts';

export interface DampInput {
  site: Site;
  ruleSet: RuleSet;
  layout: Layout | null;
  /** Id of the chosen covering. */
  membrane: string | null;
  energy: EnergyTarget;
  /** Every height that limits the build-up. */
  budgets: readonly Budget[];
}

export interface DampAnswers {
  report: Required<Pick<Assessment, 'moisture' | 'energyRules' | 'vents'>>;
  findings: readonly Finding[];
  /** What the headline says where nothing keeps all that was asked for; null = it speaks of the taper. */
  instead: { used: true; text: string } | null;
  assumed: readonly Assumption[];
}

/** Year of a code in its id; the newest that is held where it names none. */
const editionOf = (id: string): number => Number(/\d{4}/.exec(id)?.[0] ?? 2021);

/** Damp, energy rules and the attic beside the section, with what somebody must act on and what was assumed. */
export function dampAnswers(input: DampInput): DampAnswers {
  const { site, ruleSet, layout, membrane } = input;
  const damp = moistureReport(input);
  const { report: moisture, climateZone } = damp;
  const { above, below } = moisture;
  const energyRules = energyRulesReport({
    site,
    ruleSet,
    layout,
    membrane,
    climateZone,
    energy: input.energy,
    above,
    below,
    damp: moisture.verdict,
  });
  const { adjoining } = site.roof;
  const vents =
    adjoining === null
      ? null
      : ventReport({
          adjoining,
          edition: editionOf(ruleSet.building.id),
          climateZone,
          flat: { below: site.given.below, kind: below.kind },
        });
  return {
    report: { moisture, energyRules: energyRules.report, vents: vents?.report ?? null },
    instead: moisture.noCompliantOption
      ? {
          used: true,
          text: `Nothing keeps all that was asked for (${moisture.constraints.map(({ words }) => words).join('; ')}), stays dry and reaches the R.`,
        }
      : null,
    findings: [
      ...zoneConflict(site.roof.place),
      ...dampFindings(moisture, layout),
      ...coolRoofFindings(energyRules.report),
      ...(vents === null ? [] : ventFindings(vents.report)),
    ],
    assumed: [...damp.assumed, ...energyRules.assumed, ...(vents?.assumed ?? [])],
  };
}
