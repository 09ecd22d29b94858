import { readFileSync } from 'node:fs';

/** Names of the invented roofs in `src/demo`, in the order in which they are listed; the first is opened first. */
export const demoNames = ['back-section', 'corner-drain', 'twenty-drains'] as const;

/** Text of an invented roof's file. */
export function demoText(name: (typeof demoNames)[number]): string {
  return readFileSync(new URL(`../demo/${name}.roof.json`, import.meta.url), 'utf8');
}

/** The three invented roofs that a new database starts with. */
export function demoRoofs(): { id: string; label: string; text: string }[] {
  return demoNames.map((id) => {
    const text = demoText(id);
    return { id, label: (JSON.parse(text) as { label: string }).label, text };
  });
}
