import type { InspectionFinding, Ring } from '../core/roof.ts';
import { isWithin } from './check-places.ts';
import { checkStretch, sideExists } from './check-sides.ts';
import type { Placed } from './placed.ts';
import { type InputLog, under } from './problems.ts';
import { placeText } from './ring.ts';

/** A finding at the eave or fascia may lie this far outside the outline. */
const OVERHANG_FT = 3;

function checkOnePlace({ at, outline, side }: InspectionFinding, path: string, log: InputLog): void {
  const given = Object.entries({ at, outline, side }).flatMap(([key, value]) => (value === null ? [] : [key]));
  if (given.length < 2) return;
  log.problem(
    path,
    'conflict',
    `its place is given ${given.length} times: ${given.map((key) => `"${key}"`).join(', ')}.`,
    {
      instead: 'only one: "at" for a spot, "side" for a stretch of an edge, "outline" for an area',
    },
  );
}

/** Findings of which each has one place at most, on this roof. */
export function checkFindings(
  findings: readonly Placed<InspectionFinding>[],
  outline: Ring,
  log: InputLog,
): Placed<InspectionFinding>[] {
  return findings.map(({ item, path }) => {
    checkOnePlace(item, path, log);
    const spots = item.at === null ? (item.outline ?? []) : [item.at];
    const far = spots.find((spot) => !isWithin(spot, outline, OVERHANG_FT));
    if (far !== undefined) {
      log.problem(
        under(path, item.at === null ? 'outline' : 'at'),
        'outside',
        `it lies at ${placeText(far)}, off the roof.`,
        {
          got: placeText(far),
          instead: `a place on the section, or at most ${OVERHANG_FT} ft outside at its eave`,
        },
      );
    }
    if (item.side === null) {
      if (item.fromFt === null && item.toFt === null) return { item, path };
      log.problem(under(path, 'side'), 'missing', 'it reaches along a side, and the side is not given.', {
        instead: 'the number of the side that fromFt and toFt are counted along',
      });
    } else if (sideExists(outline, item.side, under(path, 'side'), log)) {
      return { item: checkStretch(item, { side: item.side }, outline, path, log), path };
    }
    return { item, path };
  });
}
