import { attachments } from '../../reference/membranes/limits.ts';
import { assess } from '../../src/core/assess.ts';
import type { AttachmentChoice } from '../../src/core/membrane/attachment.ts';
import type { MembraneId } from '../../src/core/membrane/options.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import type { Roof } from '../../src/core/roof.ts';
import { ruleSetFor } from '../../src/core/rule-set.ts';
import { siteOf } from '../../src/core/site/site.ts';
import { type TakeOff, takeOff } from '../../src/core/takeoff/take-off.ts';
import { parseRoofObject } from '../../src/input/parse-roof.ts';

/** A rectangle on bare level deck: gutter on the first side, rakes and a wall. Invented. */
export const gutterRoof = (widthFt: number, depthFt: number, more: Record<string, unknown> = {}): unknown => ({
  version: 1,
  label: 'Invented rectangle',
  invented: true,
  building: { heightFt: 10, below: 'attic' },
  deck: { kind: 'plywood', thicknessIn: 0.625 },
  outline: [
    [0, 0],
    [widthFt, 0],
    [widthFt, depthFt],
    [0, depthFt],
  ],
  edges: [
    { side: 0, kind: 'gutter', mayDrain: 'yes' },
    { side: 1, kind: 'rake', mayDrain: 'no' },
    { side: 2, kind: 'wall', mayDrain: 'no' },
    { side: 3, kind: 'rake', mayDrain: 'no' },
  ],
  existing: { surface: 'level', readOn: 'deck' },
  covering: { kind: 'sbs-granule', layers: 1 },
  ...more,
});

/** A roof file that must parse. */
export function roofOf(file: unknown): Roof {
  const parsed = parseRoofObject(file);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return parsed.roof;
}

/** The answer for a roof under its own rule set. */
export function assessed(roof: Roof): Assessment {
  const rules = ruleSetFor(roof.ruleSet.building, roof.ruleSet.plumbing, roof.ruleSet.local);
  if (!rules.ok) throw new Error('no rule set');
  return assess(roof, rules.ruleSet);
}

/** First layout of a roof that holds, of those with so many new outlets where a number is named. */
export function layoutOf(roof: Roof, newOutlets: number | null = null): Layout {
  const layout = assessed(roof).layouts.find(
    (one) => one.rejected === null && (newOutlets === null || one.newOutlets === newOutlets),
  );
  if (layout === undefined) throw new Error('no layout holds');
  return layout;
}

export function wayOf(membrane: MembraneId, kind?: string): AttachmentChoice {
  const way = attachments.find((row) => row.membrane === membrane && (kind === undefined || row.kind === kind));
  if (way === undefined) throw new Error(`no way of holding ${membrane}`);
  return { ...way, refused: null };
}

/** Material list of a roof with a covering, on its first layout. */
export function listOf(roof: Roof, membrane: MembraneId, kind?: string, layout: Layout = layoutOf(roof)): TakeOff {
  return takeOff({ site: siteOf(roof), layout, membrane, attachment: wayOf(membrane, kind) });
}
