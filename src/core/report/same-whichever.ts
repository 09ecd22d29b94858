import { decimalInches, inches, plainNumber, slope } from '../../units/print.ts';
import { sentenceStart } from '../membrane/flip-words.ts';
import type { Layout, SameWhichever, ScopeReport } from './types.ts';
import { listed } from './words.ts';

function waterWays({ outlets }: Layout): string {
  const ways = outlets.map(({ label, status }) =>
    status === 'proposed' && !label.startsWith('new') ? `${label} (new)` : label,
  );
  return ways.length === 0 ? 'none known' : listed(ways);
}

function edgeMetal({ nailers, newHeights }: Layout): string | null {
  const ends = nailers.flatMap(({ startIn, endIn }) => [startIn, endIn]);
  const lengthFt = nailers.reduce((sum, piece) => sum + piece.lengthFt, 0);
  if (ends.length === 0) return null;
  const faces = (newHeights?.faces ?? []).map(({ highIn }) => highIn);
  const face = faces.length === 0 ? '' : `; the metal's face up to ${inches(Math.max(...faces))}`;
  return `Wood ${inches(Math.min(...ends))} to ${inches(Math.max(...ends))} high along ${plainNumber(lengthFt)} ft of edge${face}.`;
}

function raisedWords({ newHeights }: Layout): string | null {
  const raised = (newHeights?.raised ?? []).filter(({ raiseIn }) => raiseIn !== null && raiseIn > 0);
  const tieIns = (newHeights?.tieIns ?? []).map(({ where }) => where);
  const parts = [
    raised.length === 0 ? null : `To be raised: ${listed(raised.map(({ where }) => where))}.`,
    tieIns.length === 0 ? null : `Run up under the shingles: ${listed(tieIns)}.`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? null : parts.join(' ');
}

function woodWords(scope: ScopeReport | undefined): string | null {
  const rows = scope?.wood?.rows ?? [];
  if (rows.length === 0) return null;
  return `${sentenceStart(rows.map(({ what, likely, oneInTen, unit }) => `${what}: ${plainNumber(likely)} ${unit} likely, ${plainNumber(oneInTen)} in one job in ten`).join('; '))}.`;
}

/**
 * What is done, and is as good or as bad, under every covering: so that the choice of a sheet is not taken for the repair.
 * Empty where no layout is chosen.
 */
export function sameWhichever(layout: Layout | null, scope: ScopeReport | undefined): readonly SameWhichever[] {
  if (layout === null) return [];
  const { leastFaceSlopeInPerFt: planes, leastValleySlopeInPerFt: valleys } = layout;
  const falls = [
    planes === null ? null : `planes at least ${slope(planes)}`,
    valleys === null ? null : `valleys at least ${slope(valleys)}`,
  ].filter((part) => part !== null);
  const rows: (SameWhichever | null)[] = [
    {
      what: 'The slope',
      text: `${falls.length === 0 ? 'As laid out' : sentenceStart(listed(falls))}: no sheet mends a pond.`,
    },
    {
      what: 'The boards',
      text: `${plainNumber(layout.volumeBoardFt)} board feet, ${inches(layout.leastThicknessIn)} to ${inches(layout.greatestThicknessIn)} thick, ${decimalInches(layout.meanThicknessIn, 1)} on average, with the cover board on them.`,
    },
    {
      what: 'Ways out for the water',
      text: `${sentenceStart(waterWays(layout))}; overflow ${layout.overflow.required ? 'required' : 'not required by the code'}.`,
    },
    nullable('Nailers and edge metal', edgeMetal(layout)),
    nullable('Heights of flashings and curbs', raisedWords(layout)),
    nullable('Wood that may have to be replaced', woodWords(scope)),
  ];
  return rows.filter((row) => row !== null);
}

const nullable = (what: string, text: string | null): SameWhichever | null => (text === null ? null : { what, text });
