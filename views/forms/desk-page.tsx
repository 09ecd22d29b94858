import type { Child } from 'hono/jsx';
import type { PageSetting } from '../page-setting.ts';
import { Shell } from '../parts/shell.tsx';

type Place = 'roofs' | 'new' | 'import';

const places: readonly (readonly [Place, string, string])[] = [
  ['roofs', '/roofs', 'Roofs'],
  ['new', '/new', 'New roof'],
  ['import', '/import', 'Bring in a roof file'],
];

export interface DeskPageProps {
  title: string;
  setting: PageSetting;
  here: Place | null;
  children?: Child;
}

/** A page on which something is entered or chosen. The script only saves loading the page again. */
export function DeskPage({ title, setting, here, children }: DeskPageProps) {
  const { links } = setting;
  const navigation = (
    <nav aria-label="Main">
      <ul>
        {links === null ? null : (
          <li>
            <a href={links.result}>Answer</a>
          </li>
        )}
        {links === null ? null : (
          <li>
            <a href={links.survey}>Survey sheet</a>
          </li>
        )}
        {places.map(([place, href, words]) => (
          <li>
            <a href={href} aria-current={place === here ? 'page' : undefined}>
              {words}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
  return (
    <Shell title={`${title}: Rainpath`} setting={setting} invented={false} navigation={navigation}>
      <div class="desk">{children}</div>
      <script src="/assets/htmx.js" defer></script>
    </Shell>
  );
}
