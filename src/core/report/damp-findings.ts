import { inches } from '../../units/print.ts';
import { flatWords } from './flat-words.ts';
import { finding } from './part-finding.ts';
import type {
  EnergyRulesReport,
  Finding,
  FlatBoardsReport,
  Layout,
  MoistureReport,
  StatedConstraint,
  VentReport,
} from './types.ts';

const quoted = (constraints: readonly StatedConstraint[]): string =>
  constraints.map(({ words }) => `"${words}"`).join(', ');

function compliance({ constraints, noCompliantOption, options, relax, source }: MoistureReport): Finding[] {
  if (!noCompliantOption) return [];
  const why = options.map(({ title, why: reason, breaks, reachesTarget }) => {
    const against =
      breaks.length === 0 ? '' : ` Against ${quoted(constraints.filter(({ id }) => breaks.includes(id)))}.`;
    return `${title}: ${reason}${reachesTarget === 'no' ? ' The R that is asked for is not reached.' : ''}${against}`;
  });
  const [first, ...more] = relax;
  return [
    finding({
      id: 'no-compliant-insulation',
      level: 'stop',
      where: 'the insulation',
      message:
        `Nothing keeps all that was asked for (${quoted(constraints)}), stays dry and reaches the R. ${why.join(' ')} ${
          first === undefined ? '' : `What to relax first: ${first.text}`
        }${more.map(({ text }) => ` Or: ${text}`).join('')}`.trim(),
      source,
    }),
  ];
}

/** What a layout does against what was said must stay. */
function broken({ constraints }: MoistureReport, layout: Layout | null): Finding[] {
  if (layout === null) return [];
  const said: Record<StatedConstraint['id'], string | null> = {
    'keep-covering': 'You said that the covering must stay. Every layout here lays a new covering over new boards',
    'no-foam-above': `You said that no board may go on above the deck. The layout here lays ${inches(layout.leastThicknessIn)} to ${inches(layout.greatestThicknessIn)} of it`,
    'no-spray-foam': null,
  };
  return constraints.flatMap(({ id, words }) => {
    const text = said[id];
    if (text === null) return [];
    return [
      finding({
        id: 'constraint-broken',
        level: 'fix',
        where: words,
        message: `${text}: it holds only if that is given up, and nothing here decides that for you.`,
      }),
    ];
  });
}

/** A verdict that is not "safe": what puts it right, or what has to be found out. */
function verdictFindings({ verdict, answer, todo, notKnown, source, tests, cure }: MoistureReport): Finding[] {
  const where = 'inside the roof';
  const failed = tests.find(({ state }) => state === 'fails');
  const figures = { value: failed?.found ?? null, limit: failed?.asked ?? null, source: failed?.source ?? source };
  if (verdict === 'at-risk') {
    const settled = cure !== null && cure.moreIn !== null && cure.fits === true;
    const message = [answer, ...todo].join(' ');
    return [finding({ id: 'condensation-risk', level: settled ? 'fix' : 'stop', where, message, ...figures })];
  }
  if (verdict === 'safe-if')
    return [
      finding({
        id: 'damp-conditions',
        level: 'fix',
        where,
        message: [answer, 'Only if this is done:', ...todo].join(' '),
        ...figures,
      }),
    ];
  if (verdict === 'not-known')
    return [
      finding({
        id: 'damp-not-known',
        level: 'fix',
        where,
        message: [answer, `Not known: ${notKnown.join(' ')}`, ...todo].join(' '),
        source,
      }),
    ];
  return [];
}

/** What of damp, constraints and insulation somebody must act on. */
export function dampFindings(moisture: MoistureReport, layout: Layout | null): Finding[] {
  const { verdict } = moisture;
  const unvented = moisture.options.find(({ id }) => id === 'unvented-batts');
  const alone =
    moisture.noCompliantOption && verdict !== 'at-risk' && unvented !== undefined && unvented.dry !== true
      ? [
          finding({
            id: 'condensation-risk',
            level: 'fix',
            where: 'inside the roof',
            message: unvented.why,
            source: unvented.source,
          }),
        ]
      : [];
  return [...compliance(moisture), ...verdictFindings(moisture), ...alone, ...broken(moisture, layout)];
}

/** A covering that a cool-roof rule does not let pass. */
export const coolRoofFindings = ({ coolRoof, coverings }: EnergyRulesReport): Finding[] =>
  coolRoof
    .filter(({ result }) => result === 'fail')
    .map(({ id, title, asked, found, source }) => {
      const open = coverings.filter(({ rule, passes }) => rule === id && passes).map(({ name }) => name);
      return finding({
        id: 'cool-roof-short',
        level: 'fix',
        where: 'the covering',
        message: `${title}: ${asked} asked for; ${found}. ${open.length === 0 ? 'None of the coverings here passes.' : `These pass: ${open.join(', ')}.`}`,
        value: found,
        limit: asked,
        source,
      });
    });

/** Vents of the attic beside the section. */
export const ventFindings = ({ verdict, answer, todo, warnings, source }: VentReport): Finding[] => [
  ...(verdict === 'short'
    ? [
        finding({
          id: 'attic-vents-short',
          level: 'note',
          where: 'the attic beside the section',
          message: [answer, ...todo].join(' '),
          source,
        }),
      ]
    : []),
  ...warnings.map(({ text, source: from }) =>
    finding({ id: 'attic-vents', level: 'note', where: 'the attic beside the section', message: text, source: from }),
  ),
];

/** Flat boards in place of a taper: laid, or why not. */
export const flatBoardFindings = (flat: FlatBoardsReport): Finding[] => [
  finding({
    id: flat.used ? 'flat-boards' : 'flat-boards-do-not-drain',
    level: flat.used ? 'note' : 'fix',
    where: 'the insulation',
    message: flat.used ? flatWords(flat) : flat.text,
    source: flat.source,
  }),
];
