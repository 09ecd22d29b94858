import { californiaAboveDeck, californiaNotHeld, californiaTrigger } from '../../../reference/cool-roof.ts';
import { area, rValue } from '../../units/print.ts';
import { notRooms } from '../site/under.ts';
import { californiaAboveR } from './cool-roof.ts';
import { CALIFORNIA_ZONE, type Draft, type Facts, HIGHER } from './draft.ts';

const ATTIC =
  'whether California asks for insulation above the deck over this attic: the building office says it, by what lies on the attic floor';

export function californiaDraft(facts: Facts): Draft {
  const zone = facts.site.roof.place.californiaZone;
  const asked = zone === null ? null : californiaAboveR(zone);
  const passes = facts.laidR >= californiaAboveDeck.r - HIGHER;
  // Met either way, it need not be known whether it binds over an attic.
  const open = facts.under === 'attic' && !passes;
  const barred = !facts.california
    ? 'the job is not in California'
    : facts.commercial
      ? 'the job is under the commercial code'
      : facts.under === 'unheated'
        ? notRooms(facts.under)
        : null;
  return {
    id: 'california-above-deck',
    title: 'California: insulation above the deck of a re-roof',
    row: californiaAboveDeck,
    binds: barred !== null ? false : zone === null || (open && asked !== null) ? null : asked !== null,
    why:
      barred ??
      (zone === null
        ? 'the zone of California, 1 to 16, is not given'
        : asked === null
          ? `not in California zone ${zone}`
          : open
            ? 'whether it binds over an attic whose floor is insulated is not held here'
            : `Not where ${rValue(californiaAboveDeck.exceptR)} of continuous insulation is there already; from half of the roof or ${area(californiaTrigger.residentialSqFt)} on.`),
    asked: rValue(californiaAboveDeck.r),
    found: rValue(facts.laidR),
    passes,
    settledBy: open && zone !== null ? ATTIC : CALIFORNIA_ZONE,
  };
}

/** What California asks of other buildings is not held: it is said, and not judged. */
export function californiaNotHeldDraft(facts: Facts): Draft {
  const barred = !facts.california
    ? 'the job is not in California'
    : !facts.commercial
      ? 'the job is under the residential code'
      : facts.under === 'unheated'
        ? notRooms(facts.under)
        : null;
  return {
    id: 'california-nonresidential-insulation',
    title: 'California: insulation of a nonresidential re-roof',
    row: californiaNotHeld,
    binds: barred === null ? null : false,
    why:
      barred ??
      `California asks for insulation in a nonresidential re-roof as well, from half of the roof or ${area(californiaTrigger.nonresidentialSqFt)} on. The rule is not held here, so this roof is not judged by it.`,
    asked: 'not held here',
    found: rValue(facts.laidR),
    passes: null,
    settledBy:
      'what California’s energy code asks of a nonresidential re-roof: the building office or an energy consultant says it',
  };
}
