interface ListedRoof {
  id: string;
  label: string;
  hasDraft: boolean;
  saved: string;
}

export interface RoofListProps {
  roofs: readonly ListedRoof[];
  /** Taken off the list, the last one first. */
  deleted: readonly ListedRoof[];
  /** The roof that was taken off just now. */
  justDeleted: ListedRoof | null;
}

function PutBack({ id, label, words }: { id: string; label: string; words: string }) {
  return (
    <form method="post" action={`/roofs/${id}/put-back`}>
      <button type="submit" aria-label={`${words}: ${label}`}>
        {words}
      </button>
    </form>
  );
}

function Deleted({ deleted }: Pick<RoofListProps, 'deleted'>) {
  if (deleted.length === 0) return null;
  return (
    <details>
      <summary>Taken off the list ({deleted.length})</summary>
      <ul class="taken-off">
        {deleted.map(({ id, label, saved }) => (
          <li>
            {label} <span class="hint">saved {saved}</span>
            <PutBack id={id} label={label} words="Put it back" />
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Asked before a roof leaves the list. */
export function DeleteRoofPage({ id, label }: { id: string; label: string }) {
  return (
    <div class="plain">
      <h1>Take this roof off the list?</h1>
      <p class="lead">
        {label}. Its file, its earlier texts and its heights as laid are kept, and it can be put back from the foot of
        the list.
      </p>
      <form method="post" action={`/roofs/${id}/delete`} class="buttons">
        <button type="submit">Take it off the list</button>
        <a href="/roofs">Leave it there</a>
      </form>
    </div>
  );
}

export function RoofListPage({ roofs, deleted, justDeleted }: RoofListProps) {
  return (
    <div class="roof-list">
      <h1>Roofs</h1>
      {justDeleted === null ? null : (
        <div class="saved" role="status">
          {justDeleted.label} was taken off the list.
          <PutBack id={justDeleted.id} label={justDeleted.label} words="Undo" />
        </div>
      )}
      <p class="buttons">
        <a class="button" href="/new">
          New roof: six questions
        </a>
        <a class="button" href="/import">
          Bring in a roof file
        </a>
      </p>
      <section class="scroll" tabindex={0} aria-label="Saved roofs">
        <table>
          <thead>
            <tr>
              <th scope="col">Roof</th>
              <th scope="col">Go to</th>
            </tr>
          </thead>
          <tbody>
            {roofs.map(({ id, label, hasDraft, saved }) => (
              <tr>
                <th scope="row">
                  <a href={`/roofs/${id}`}>{label}</a>
                  <span class="hint"> saved {saved}</span>
                  {hasDraft ? <span class="hint"> ; an edit waits to be put right</span> : null}
                </th>
                <td class="links">
                  <a href={`/roofs/${id}/edit/plan`} aria-label={`Edit ${label}`}>
                    edit
                  </a>
                  <a href={`/roofs/${id}/estimate`} aria-label={`Estimate of ${label}`}>
                    estimate
                  </a>
                  <a href={`/roofs/${id}/crew`} aria-label={`Crew sheet of ${label}`}>
                    crew sheet
                  </a>
                  <a href={`/roofs/${id}/owner`} aria-label={`Owner's page of ${label}`}>
                    owner's page
                  </a>
                  <a href={`/roofs/${id}/roof.json`} aria-label={`Roof file of ${label}`}>
                    roof file
                  </a>
                  <a href={`/roofs/${id}/delete`} aria-label={`Take off ${label}`}>
                    take off
                  </a>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {roofs.length === 0 ? <p>No roof is on the list.</p> : null}
      <Deleted deleted={deleted} />
    </div>
  );
}
