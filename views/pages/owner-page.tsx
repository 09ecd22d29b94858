import { differenceSentence, shownLayout } from '../../src/core/report/page-layouts.ts';
import { ownerChanges, ownerPlan, ownerQuestions, ownerToday } from '../../src/core/report/page-owner.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { planPair } from '../../src/drawing/plan-pair.ts';
import type { PageSetting } from '../page-setting.ts';
import { BeforeAfter } from '../parts/before-after.tsx';
import { Sections } from '../parts/sections.tsx';
import { Sheet } from '../parts/sheet.tsx';

export interface OwnerPageProps {
  assessment: Assessment;
  setting: PageSetting;
}

function Said({ sentences }: { sentences: readonly string[] }) {
  return sentences.map((text) => <p>{text}</p>);
}

/** For the owner, at the kitchen table: plain words and pictures. */
export function OwnerPage({ assessment, setting }: OwnerPageProps) {
  const layout = shownLayout(assessment);
  const pair = planPair(assessment, layout);
  const covering = assessment.membranes.find(({ id }) => id === assessment.chosenMembrane);
  const changes = ownerChanges(assessment, layout);
  const questions = ownerQuestions(assessment);
  return (
    <Sheet assessment={assessment} setting={setting} page="owner">
      <h1 class="quiet">Your roof: {assessment.label}</h1>
      <div class="owner">
        <h2>What is wrong today</h2>
        <Said sentences={ownerToday(assessment)} />
        <h2>What we plan</h2>
        <Said sentences={ownerPlan(assessment, layout)} />
      </div>
      <BeforeAfter pair={pair} links={null} />
      {layout === null ? null : <p class="difference">{differenceSentence(assessment.existing, layout)}</p>}
      <p class="quiet">
        Blue is water: the darker, the deeper. Arrows point the way water runs, and say how many inches the roof falls
        in each foot.
      </p>
      <Sections sections={pair.sections.slice(0, 1)} />
      <div class="owner">
        <h2>Why this covering</h2>
        {covering === undefined ? (
          <p>No covering can be named yet.</p>
        ) : (
          <p>
            <b>{covering.name}.</b> {covering.plain}
          </p>
        )}
        <h3>And not the old one again?</h3>
        <p>{assessment.whyNotTheSame}</p>
        <h2>What changes at walls, doors and edges</h2>
        {changes.length === 0 ? (
          <p>Nothing that we know of.</p>
        ) : (
          <ul>
            {changes.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
        )}
        <h2>What we do not know yet</h2>
        {questions.length === 0 ? (
          <p>Nothing is open. The bare deck still has the last word.</p>
        ) : (
          <ul>
            {questions.map(({ what, findOut }) => (
              <li>
                {what} <b>To find out:</b> {findOut}
              </li>
            ))}
          </ul>
        )}
        <p>
          When the old roof is off, the wood under it is measured again. The plan can change then, and you will hear it
          first.
        </p>
        <h2>Stay safe</h2>
        <p>Please stay off the roof. Keep people and cars away from its edges while the work goes on.</p>
        <p class="quiet">{assessment.deferral}</p>
      </div>
    </Sheet>
  );
}
