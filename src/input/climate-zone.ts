import { winterClimates } from '../../reference/winter-climate.ts';
import { findTown } from '../core/site/town.ts';
import { type InputLog, shown } from './problems.ts';

/** Zones of the model energy code; 0 to 3, 5 and 6 may stand without their letter, for no rule that is held turns on it. */
const ZONES = /^(?:[01][AB]?|[235][ABC]?|6[AB]?|4[ABC]|[78])$/;

/** "zone 5a", "CZ 5A", "IECC climate zone 5-A", "marine 4": number and letter. */
const WRITTEN = /^(?:(?:iecc|ashrae|climate)\s+)*(?:zone|cz)?[\s.:#-]*(\d+)\s*-?\s*([a-z]?)$/;
const REGIMES: readonly [RegExp, string][] = [
  [/\b(?:moist|humid)\b/, 'a'],
  [/\bdry\b/, 'b'],
  [/\bmarine\b/, 'c'],
];

function numberAndLetter(text: string): { number: string; letter: string } | null {
  const lower = text.toLowerCase();
  const regime = REGIMES.find(([word]) => word.test(lower));
  const plain = (regime === undefined ? lower : lower.replace(regime[0], '')).replace(/\(\s*\)/, '').trim();
  const match = WRITTEN.exec(plain);
  if (match === null) return null;
  const [, number, letter] = match;
  if (letter !== '' && regime !== undefined && letter !== regime[1]) return null;
  return { number, letter: (letter || (regime?.[1] ?? '')).toUpperCase() };
}

interface Place {
  city: string | null;
  state: string | null;
}

/** Zone 4 of a listed town has its letter. */
function withLetter(zone: string, { city, state }: Place): string {
  const match = findTown(winterClimates, city, state);
  return zone === '4' && match.kind === 'listed' && match.row.zone.startsWith('4') ? match.row.zone : zone;
}

/**
 * Climate zone of the model code as people write it, as number and letter: "5A". A zone that is none, and zone 4 without its
 * letter where the town does not tell it, are problems.
 */
export function readClimateZone(raw: string | null, place: Place, path: string, log: InputLog): string | null {
  if (raw === null || raw.trim() === '') return null;
  const read = numberAndLetter(raw.trim());
  // No letter belongs to 7 and 8; some lists print one.
  const written = read === null ? '' : /^[78]$/.test(read.number) ? read.number : `${read.number}${read.letter}`;
  const zone = withLetter(written, place);
  if (ZONES.test(zone)) {
    if (zone !== raw) log.note(path, 'reading', `${shown(raw)} is read as climate zone ${zone}.`, zone);
    return zone;
  }
  if (zone === '4') {
    log.problem(path, 'ask', `${shown(raw)} leaves out the letter, and in zone 4 the rules turn on it.`, {
      got: shown(raw),
      proposals: [
        { value: '4A', unit: '', text: '"4A" (moist: the east)' },
        { value: '4B', unit: '', text: '"4B" (dry: inland in the west)' },
        { value: '4C', unit: '', text: '"4C" (marine: the Pacific coast)' },
      ],
    });
    return null;
  }
  const california = read !== null && Number(read.number) >= 9 && Number(read.number) <= 16 && read.letter === '';
  log.problem(path, 'choice', `${shown(raw)} is no climate zone of the model energy code.`, {
    got: shown(raw),
    instead: california
      ? `"californiaZone": ${read.number} for the zone of California, and here the zone of the model code, as "3B"`
      : 'its number, 0 to 8, and its letter A, B or C, as "5A"; 7 and 8 have no letter',
  });
  return null;
}
