import {
  ashrae901R,
  ceilingU,
  joistFraming,
  leastAtLowPoint,
  replacementRule,
  residentialRelief,
  smallCeiling,
} from '../../../reference/energy.ts';
import { area, inches, plainNumber, rValue } from '../../units/print.ts';
import { rowForZone, tableFor } from '../layout/energy-target.ts';
import {
  BELOW,
  BELOW_NOT_KNOWN,
  bars,
  byZone,
  type Draft,
  type Facts,
  foundWords,
  HIGHER,
  RECOVER,
  unlessBelow,
  unlessLetOff,
  ZONE,
} from './draft.ts';
import { roofU } from './framing.ts';

const IN_METAL =
  'what the insulation below the deck lies between: metal carries heat past it, and an energy consultant reckons that';

const LEAVE =
  'whether the building office grants the small-ceiling rule: the framing leaves no room for more, and the share of all ceilings is small enough';

/** What the U was reckoned with. */
function pathWords(asked: number, { framing, aboveR, totalR }: Facts): string {
  if (framing === null) return `Without joists in it, ${rValue(1 / asked)} with films is enough.`;
  const { share, woodR, spacingIn, spacingGiven, wood } = framing;
  const joists = `${inches(joistFraming.widthIn)} joists every ${inches(spacingIn)}${spacingGiven ? '' : ' (assumed)'}`;
  const plain = plainNumber(roofU(aboveR, totalR - aboveR, null), 4);
  return `Through insulation and ${joists} side by side: ${plainNumber(100 * share, 1)} % of the area has ${rValue(woodR)} of wood in place of the insulation. Without joists it would be U ${plain}; deck and ceiling board are not counted.${wood ? '' : ' The deck is not of wood: metal in place of the joists would carry more heat.'}`;
}

/** The same ceiling by U, which what lies between joists must reach through the joists too. */
function uDraft(facts: Facts, ceiling: Draft, r: number | null): Draft {
  const pair = ceilingU.find((one) => one.r === r);
  const { aboveR, totalR, framing } = facts;
  const u = roofU(aboveR, totalR - aboveR, framing);
  const reached = pair === undefined ? null : unlessBelow(u <= pair.u + HIGHER, facts);
  const metal = reached === true && framing?.wood === false;
  const why =
    pair === undefined ? 'no U is held for this R' : reached === null ? BELOW_NOT_KNOWN : pathWords(pair.u, facts);
  return {
    id: 'residential-u',
    title: 'The same by U: either may be shown',
    row: pair ?? ceilingU[0],
    binds: ceiling.binds === true ? pair !== undefined : ceiling.binds,
    why: ceiling.binds === true ? why : ceiling.why,
    asked: pair === undefined ? 'not known' : `U ${plainNumber(pair.u, 3)}`,
    found: foundWords(`U ${plainNumber(u, 4)}`, facts),
    passes: metal ? null : reached,
    settledBy: r === null ? ZONE : metal ? IN_METAL : BELOW,
  };
}

export function residentialDrafts(facts: Facts): Draft[] {
  const table = tableFor(facts.ruleSet, false);
  const row = rowForZone(table, facts.climateZone);
  const ceiling = unlessLetOff(
    byZone(facts, { id: 'residential-ceiling', title: `R of the ceiling (${table.title})` }, row, table.rows[0], false),
    facts.recover ? RECOVER : null,
    residentialRelief,
  );
  const small = row !== null && row.value > smallCeiling.r;
  const { planFt } = facts.site.roof.building;
  // Of one story of ceiling, which is all that the plan of the house tells.
  const most = Math.min(
    smallCeiling.areaSqFt,
    planFt === null ? Number.POSITIVE_INFINITY : smallCeiling.share * planFt[0] * planFt[1],
  );
  const isSmall = facts.areaSqFt <= most + HIGHER;
  const reached = unlessBelow(facts.totalR >= smallCeiling.r - HIGHER, facts);
  return [
    ceiling,
    uDraft(facts, ceiling, row?.value ?? null),
    {
      id: 'small-ceiling',
      title: `Ceiling without an attic, up to ${area(smallCeiling.areaSqFt)}`,
      row: smallCeiling,
      binds: ceiling.binds === true ? small && isSmall : ceiling.binds,
      why:
        ceiling.binds !== true
          ? ceiling.why
          : isSmall
            ? `Only where the framing leaves no room, and for at most ${100 * smallCeiling.share} % of all ceilings: ask.`
            : `the section has ${area(facts.areaSqFt)}; ${area(most)} at most${most < smallCeiling.areaSqFt ? `, ${100 * smallCeiling.share} % of a story of ${area(planFt === null ? 0 : planFt[0] * planFt[1])}` : ''}`,
      asked: rValue(smallCeiling.r),
      found: foundWords(rValue(facts.totalR), facts),
      // Whether the framing leaves no room nobody has said: an exception that is not granted meets nothing.
      passes: reached === true ? null : reached,
      settledBy: row === null ? ZONE : reached === true ? LEAVE : BELOW,
    },
  ];
}

export function commercialDrafts(facts: Facts): Draft[] {
  const table = tableFor(facts.ruleSet, true);
  const row = rowForZone(table, facts.climateZone);
  const under = (facts.below.r ?? 0) > 0;
  const off = facts.recover ? RECOVER : under ? 'insulation lies below the deck: a replacement need not meet it' : null;
  const excused = (draft: Draft): Draft => {
    const open = facts.belowUnknown && draft.binds === true && draft.passes === null;
    const why = 'Insulation below the deck, if there is any, lets a replacement off: it is not known.';
    return unlessLetOff(open ? { ...draft, why } : draft, off, replacementRule);
  };
  const row901 = rowForZone(ashrae901R, facts.climateZone);
  const barred = bars(facts, true);
  const leastIn = facts.site.roof.insulation.flatIn ?? facts.layout?.leastThicknessIn ?? 0;
  return [
    excused(
      byZone(facts, { id: 'commercial-roof', title: `R above the deck (${table.title})` }, row, table.rows[0], true),
    ),
    excused(
      byZone(
        facts,
        { id: 'ashrae-roof', title: `R above the deck (${ashrae901R.title})` },
        row901,
        ashrae901R.rows[0],
        true,
      ),
    ),
    excused({
      id: 'low-point',
      title: 'Insulation at the lowest point',
      row: leastAtLowPoint,
      binds: barred === null,
      why: barred ?? 'At the gutter edge, the drain and the scupper.',
      asked: inches(leastAtLowPoint.thicknessIn),
      found: inches(leastIn),
      passes: unlessBelow(leastIn >= leastAtLowPoint.thicknessIn - HIGHER, facts),
      settledBy: BELOW,
    }),
  ];
}
