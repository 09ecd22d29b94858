export interface RoofListProps {
  roofs: readonly { id: string; label: string; hasDraft: boolean; saved: string }[];
}

export function RoofListPage({ roofs }: RoofListProps) {
  return (
    <div class="roof-list">
      <h1>Roofs</h1>
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
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </div>
  );
}
