import { Photos } from '../parts/photos.tsx';
import type { BoxView, GroupView } from './form-view.ts';

const describedBy = ({ id, hint, understood, problems }: BoxView): string | undefined => {
  const ids = [
    ...(problems.length > 0 ? [`${id}-problem`] : []),
    ...(hint === null ? [] : [`${id}-hint`]),
    ...(understood === null ? [] : [`${id}-read`]),
  ];
  return ids.length === 0 ? undefined : ids.join(' ');
};

function Input({ view }: { view: BoxView }) {
  const common = {
    id: view.id,
    name: view.id,
    'aria-describedby': describedBy(view),
    'aria-invalid': view.problems.length > 0 ? 'true' : undefined,
  } as const;
  // A browser drops the first line break of a text area: one of ours goes before the text.
  if (view.box === 'area') {
    return (
      <textarea {...common} rows={view.rows} spellcheck={false}>
        {`\n${view.value}`}
      </textarea>
    );
  }
  if (view.box === 'select') {
    return (
      <select {...common}>
        {view.options.map(([value, words]) => (
          <option value={value} selected={value === view.value}>
            {words}
          </option>
        ))}
      </select>
    );
  }
  return <input {...common} type="text" value={view.value} autocomplete="off" spellcheck={false} />;
}

/** A labelled box with its hint, what was understood, and what is wrong, in that order of reading. */
export function Box({ view }: { view: BoxView }) {
  return (
    <div class={view.problems.length > 0 ? 'box wrong' : 'box'}>
      <label for={view.id}>{view.label}</label>
      {view.hint === null ? null : (
        <p class="hint" id={`${view.id}-hint`}>
          {view.hint}
        </p>
      )}
      {view.problems.length === 0 ? null : (
        <p class="problem" id={`${view.id}-problem`}>
          {view.problems.map((text) => (
            <span>{text} </span>
          ))}
        </p>
      )}
      <Input view={view} />
      {view.understood === null ? null : (
        <p class="understood" id={`${view.id}-read`}>
          {view.understood}
        </p>
      )}
    </div>
  );
}

function GroupBody({ view }: { view: GroupView }) {
  return (
    <>
      {view.note === null ? null : <p class="hint">{view.note}</p>}
      {view.problems.map((text) => (
        <p class="problem">{text}</p>
      ))}
      {view.boxes.length === 0 ? null : (
        <div class={view.grid === 'pairs' ? 'boxes pairs' : 'boxes'}>
          {view.boxes.map((box) => (
            <Box view={box} />
          ))}
        </div>
      )}
      {view.folds.map(({ title, open, boxes }) => (
        <details class="fold" open={open}>
          <summary>{title}</summary>
          <div class="boxes">
            {boxes.map((box) => (
              <Box view={box} />
            ))}
          </div>
        </details>
      ))}
      {view.groups.map((group) => (
        <Group view={group} />
      ))}
      {view.photos === undefined ? null : (
        <div class="photo-row">
          <Photos photos={view.photos.list} />
          <button type="submit" name="next" value={view.photos.next} class="small">
            {view.photos.words}
          </button>
        </div>
      )}
      {view.removeName === null ? null : (
        <label class="remove">
          <input type="checkbox" name={view.removeName} value="yes" /> take this entry out
        </label>
      )}
    </>
  );
}

/** A group of boxes. An empty entry stays folded, so that what is there is not lost among what is not. */
export function Group({ view }: { view: GroupView }) {
  if (view.blank && view.problems.length === 0) {
    return (
      <details class="entry blank">
        <summary>{view.title}</summary>
        <fieldset id={view.id === '' ? undefined : view.id}>
          <legend class="visually-hidden">{view.title}</legend>
          <GroupBody view={view} />
        </fieldset>
      </details>
    );
  }
  return (
    <fieldset class="entry" id={view.id === '' ? undefined : view.id} tabindex={-1}>
      <legend>{view.title}</legend>
      <GroupBody view={view} />
    </fieldset>
  );
}
