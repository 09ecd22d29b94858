/** Names of the states and the federal district with their postal letters, so that "Town, Vermont" is understood. */
const states: Readonly<Record<string, string>> = {
  AL: 'Alabama',
  AK: 'Alaska',
  AZ: 'Arizona',
  AR: 'Arkansas',
  CA: 'California',
  CO: 'Colorado',
  CT: 'Connecticut',
  DE: 'Delaware',
  DC: 'District of Columbia',
  FL: 'Florida',
  GA: 'Georgia',
  HI: 'Hawaii',
  ID: 'Idaho',
  IL: 'Illinois',
  IN: 'Indiana',
  IA: 'Iowa',
  KS: 'Kansas',
  KY: 'Kentucky',
  LA: 'Louisiana',
  ME: 'Maine',
  MD: 'Maryland',
  MA: 'Massachusetts',
  MI: 'Michigan',
  MN: 'Minnesota',
  MS: 'Mississippi',
  MO: 'Missouri',
  MT: 'Montana',
  NE: 'Nebraska',
  NV: 'Nevada',
  NH: 'New Hampshire',
  NJ: 'New Jersey',
  NM: 'New Mexico',
  NY: 'New York',
  NC: 'North Carolina',
  ND: 'North Dakota',
  OH: 'Ohio',
  OK: 'Oklahoma',
  OR: 'Oregon',
  PA: 'Pennsylvania',
  RI: 'Rhode Island',
  SC: 'South Carolina',
  SD: 'South Dakota',
  TN: 'Tennessee',
  TX: 'Texas',
  UT: 'Utah',
  VT: 'Vermont',
  VA: 'Virginia',
  WA: 'Washington',
  WV: 'West Virginia',
  WI: 'Wisconsin',
  WY: 'Wyoming',
};

/** Postal letters of a state given by letters or by name; null for anything else. */
export function stateLetters(text: string): string | null {
  const wanted = text.trim().toLowerCase();
  const found = Object.entries(states).find(
    ([letters, name]) => letters.toLowerCase() === wanted || name.toLowerCase() === wanted,
  );
  return found?.[0] ?? null;
}

/** "Town, ST" or "Town, State" in its two parts; a town alone has no state. */
export function townAndState(text: string): { city: string; state: string | null } {
  const comma = text.lastIndexOf(',');
  const state = comma > 0 ? stateLetters(text.slice(comma + 1)) : null;
  return state === null ? { city: text.trim(), state } : { city: text.slice(0, comma).trim(), state };
}
