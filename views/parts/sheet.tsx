import type { Child } from 'hono/jsx';
import type { Assessment } from '../../src/core/report/types.ts';
import type { PageLinks, PageSetting } from '../page-setting.ts';
import { Places } from './places.ts';
import { Shell } from './shell.tsx';

export type PageName = 'result' | 'estimate' | 'crew' | 'owner' | 'kitchen' | 'supplier' | 'rules' | 'survey';

const names: Record<PageName, string> = {
  result: 'Answer',
  estimate: 'Estimate',
  crew: 'Crew sheet',
  owner: 'Owner’s page',
  kitchen: 'Kitchen table',
  supplier: 'Supplier request',
  survey: 'Survey sheet',
  rules: 'Rule sets',
};

const order: readonly PageName[] = ['result', 'estimate', 'crew', 'owner', 'kitchen', 'supplier', 'survey', 'rules'];

function Navigation({ links, here }: { links: PageLinks; here: PageName }) {
  return (
    <nav aria-label="Papers of this roof">
      <ul>
        {order.map((name) => (
          <li>
            <a href={links[name]} aria-current={name === here ? 'page' : undefined}>
              {names[name]}
            </a>
          </li>
        ))}
        <li>
          <a href={links.edit}>Change the measurements</a>
        </li>
      </ul>
    </nav>
  );
}

/** Whose roof, when, by which rules, and that the deck has the last word. */
function TitleBlock({ assessment, setting, page }: { assessment: Assessment; setting: PageSetting; page: PageName }) {
  const { label, place, ruleSet, invented, planned } = assessment;
  return (
    <dl class="title-block">
      <div>
        <dt>Roof</dt>
        <dd>{label}</dd>
      </div>
      <div>
        <dt>Place</dt>
        <dd>{place}</dd>
      </div>
      <div>
        <dt>Paper</dt>
        <dd>{names[page]}</dd>
      </div>
      <div>
        <dt>Date</dt>
        <dd class="blank">{setting.dateText}</dd>
      </div>
      <div>
        <dt>Rule sets</dt>
        <dd>
          {ruleSet.building.title}; {ruleSet.plumbing.title}
          {ruleSet.local.map((rule) => (
            <>; {rule}</>
          ))}
        </dd>
      </div>
      <div>
        <dt>Standing</dt>
        <dd>
          Provisional until {planned.ground} is shot{invented ? '. Invented roof' : ''}
        </dd>
      </div>
    </dl>
  );
}

export interface SheetProps {
  assessment: Assessment;
  setting: PageSetting;
  page: PageName;
  extraCss?: string;
  /** Places that the drawings of the page show. */
  places?: ReadonlySet<string>;
  children?: Child;
}

const NONE: ReadonlySet<string> = new Set();

/** A page of one roof, on screen and on paper. */
export function Sheet({ assessment, setting, page, extraCss, places = NONE, children }: SheetProps) {
  const { links, draftHref = null } = setting;
  return (
    <Shell
      title={`${assessment.label}: ${names[page].toLowerCase()}`}
      setting={setting}
      invented={assessment.invented}
      extraCss={extraCss}
      navigation={links === null ? null : <Navigation links={links} here={page} />}
      foot={<TitleBlock assessment={assessment} setting={setting} page={page} />}
    >
      {draftHref === null ? null : (
        <p class="draft-note" role="note">
          An edit waits that cannot be read yet. What you see here is made from the last file that could be read.{' '}
          <a href={draftHref}>Put the edit right</a>
        </p>
      )}
      <Places.Provider value={places}>{children}</Places.Provider>
    </Shell>
  );
}
