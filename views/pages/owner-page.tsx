import { photosToTake, roofersQuestions } from '../../src/core/report/owner/open.ts';
import { shownLayout } from '../../src/core/report/page-layouts.ts';
import {
  OriginBook,
  type OwnerFinding,
  type OwnerPageModel,
  ownerPage,
  statementsOf,
} from '../../src/core/report/page-owner.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { planPair } from '../../src/drawing/plan-pair.ts';
import type { PageLinks, PageSetting } from '../page-setting.ts';
import { BeforeAfter } from '../parts/before-after.tsx';
import { Photos } from '../parts/photos.tsx';
import { Sections } from '../parts/sections.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { Origins, Said, SaidTogether, Stops } from '../parts/statement.tsx';

export interface OwnerPageProps {
  assessment: Assessment;
  setting: PageSetting;
}

interface PartProps {
  model: OwnerPageModel;
  book: OriginBook;
}

/** The three numbers that matter, today and with the new roof. */
function Numbers({ model: { numbers }, book }: PartProps) {
  return (
    <dl class="three">
      {numbers.map(({ title, today, next }) => (
        <div>
          <dt>{title}</dt>
          <dd>
            <span class="label">Today</span> <Said statement={today} book={book} />
          </dd>
          {next === null ? null : (
            <dd>
              <span class="label">New roof</span>{' '}
              <b>
                <Said statement={next} book={book} />
              </b>
            </dd>
          )}
        </div>
      ))}
    </dl>
  );
}

function Sectioned({ model: { sections }, book }: PartProps) {
  return sections.map(({ id, title, statements }) => (
    <section class={`owner-${id}`}>
      <h2>{title}</h2>
      {id === 'wishes' || id === 'changes' || id === 'edges' || id === 'extra' ? (
        <ul>
          {statements.map((statement) => (
            <li>
              <Said statement={statement} book={book} />
            </li>
          ))}
        </ul>
      ) : (
        <SaidTogether statements={statements} book={book} />
      )}
    </section>
  ));
}

function Open({ model: { open, more, kept, shownWhen }, book }: PartProps) {
  return (
    <section>
      <h2>What we do not know yet</h2>
      <ul>
        {open.map(({ what, findOut }) => (
          <li>
            <Said statement={what} book={book} /> <b>To find out:</b> {findOut}
          </li>
        ))}
      </ul>
      {more === null ? null : (
        <p>
          <Said statement={more} book={book} />
        </p>
      )}
      {kept ? null : (
        <p>{shownWhen}, the roof is measured again. The plan can change then, and you should hear of it first.</p>
      )}
    </section>
  );
}

function Found({
  findings,
  book,
  links,
}: {
  findings: readonly OwnerFinding[];
  book: OriginBook;
  links: PageLinks | null;
}) {
  if (findings.length === 0) return null;
  return (
    <section>
      <h2>What was found on the roof</h2>
      <ul>
        {findings.map(({ number, title, statement, photos }) => (
          <li>
            <Said statement={statement} book={book} />
            {links === null ? null : (
              <Photos
                photos={photos.map((id) => ({
                  src: `${links.photos}/${id}`,
                  alt: `Photo of finding ${number}, ${title}`,
                }))}
              />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What the owner can do: ask, take photos, look once more at the end. */
function Yours() {
  return (
    <>
      <section>
        <h2>Ask any roofer</h2>
        <ol>
          {roofersQuestions.map((text) => (
            <li>{text}</li>
          ))}
        </ol>
      </section>
      <section>
        <h2>Photos you can take</h2>
        <p>Stay off the roof, and off the ladder too.</p>
        <ul>
          {photosToTake.map((text) => (
            <li>{text}</li>
          ))}
        </ul>
      </section>
      <section>
        <h2>The last check</h2>
        <p>
          Wait for the first good rain after the work, then two days more. Ask for photos of the whole roof on that day.
          No water may stand on it. Tie the last part of the pay to it if you can.
        </p>
      </section>
    </>
  );
}

/** For the owner: plain words and pictures, and where every figure comes from. */
export function OwnerPage({ assessment, setting }: OwnerPageProps) {
  const layout = shownLayout(assessment);
  const pair = planPair(assessment, layout);
  const model = ownerPage(assessment);
  const book = new OriginBook(statementsOf(model));
  const [first, ...rest] = model.today.statements;
  return (
    <Sheet assessment={assessment} setting={setting} page="owner">
      <h1 class="quiet">Your roof: {assessment.label}</h1>
      <Stops statements={model.stops} book={book} />
      <p class="headline">
        <Said statement={first} book={book} />
      </p>
      <div class="owner">
        <SaidTogether statements={rest} book={book} />
      </div>
      <BeforeAfter pair={pair} links={null} />
      <p class="quiet">
        The first drawing is the roof today. {model.drawn} Blue is water: the darker, the deeper. Arrows point the way
        it runs, and say how many inches the roof falls in each foot.
      </p>
      <h2>Three numbers that matter</h2>
      {model.numbersLead === null ? null : (
        <p class="owner">
          <Said statement={model.numbersLead} book={book} />
        </p>
      )}
      <Numbers model={model} book={book} />
      <Sections sections={pair.sections.slice(0, 1)} />
      <div class="owner columns">
        <Found findings={model.findings} book={book} links={setting.links} />
        <Sectioned model={model} book={book} />
        <Open model={model} book={book} />
        <Yours />
        <section>
          <h2>Stay safe</h2>
          <p>Please stay off the roof. Keep people and cars away from its edges while the work goes on.</p>
          <p class="quiet deferral">{assessment.deferral}</p>
        </section>
      </div>
      <Origins book={book} links={setting.links} />
    </Sheet>
  );
}
