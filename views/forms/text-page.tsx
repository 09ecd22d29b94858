import { EditFrame, type EditFrameProps } from './edit-frame.tsx';
import type { ProblemView } from './form-view.ts';
import { Outcome } from './problem-summary.tsx';

export interface TextFormProps {
  /** Where the form is sent; also says whether a roof is edited or brought in. */
  action: string;
  text: string;
  problems: readonly ProblemView[];
  notes: readonly string[];
  saved: string | null;
  /** True where a file may be sent instead of the text. */
  upload: boolean;
}

const KEPT = 'The text below is what you typed; nothing of it is lost.';

/** The whole roof file as text, or as an upload. */
function TextForm({ action, text, problems, notes, saved, upload }: TextFormProps) {
  return (
    <>
      <Outcome problems={problems} kept={KEPT} saved={saved} />
      <form
        method="post"
        action={action}
        enctype={upload ? 'multipart/form-data' : undefined}
        hx-post={upload ? undefined : action}
        hx-target="#form"
        hx-swap="outerHTML"
      >
        {upload ? (
          <div class="box">
            <label for="upload">Roof file (*.roof.json, at most 10 MB)</label>
            <input id="upload" type="file" name="upload" accept=".json,application/json" />
          </div>
        ) : null}
        <div class={problems.length > 0 ? 'box wrong' : 'box'}>
          <label for="file">{upload ? 'or its text' : 'Roof file'}</label>
          {problems.length === 0 ? null : (
            <ul class="problem" id="file-problem">
              {problems.map((problem) => (
                <li>
                  {problem.where}: {problem.text}
                </li>
              ))}
            </ul>
          )}
          <textarea
            id="file"
            name="file"
            rows={30}
            spellcheck={false}
            class="code"
            aria-invalid={problems.length > 0 ? 'true' : undefined}
            aria-describedby={problems.length > 0 ? 'file-problem' : undefined}
          >
            {`\n${text}`}
          </textarea>
        </div>
        <div class="buttons">
          <button type="submit" name="next" value="result">
            {upload ? 'Bring it in' : 'Save and show the answer'}
          </button>
          {upload ? null : <button type="submit">Save and check</button>}
        </div>
      </form>
      {notes.length === 0 ? null : (
        <section class="notes">
          <h2>How it was read</h2>
          <ul>
            {notes.map((note) => (
              <li>{note}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

export type TextPageProps = TextFormProps & EditFrameProps;

export function TextPage(props: TextPageProps) {
  const { roof, links, plan } = props;
  const lead = (
    <>
      Everything that the other parts hold, in one text. Its form is written down in the{' '}
      <a href="/schema.json">schema</a>. <a href={`/roofs/${roof.id}/roof.json`}>Save it as a file</a>.
    </>
  );
  return (
    <EditFrame roof={roof} links={links} plan={plan} title="The roof file as text" lead={lead}>
      <TextForm {...props} />
    </EditFrame>
  );
}

export function ImportPage(props: TextFormProps) {
  return (
    <div class="import" id="form">
      <h1>Bring in a roof file</h1>
      <p class="lead">
        Send a file, or paste its text. Its form is written down in the <a href="/schema.json">schema</a>; measurements
        may be numbers or text as people write it.
      </p>
      <TextForm {...props} />
    </div>
  );
}
