/** A page that only says something: not found, too large, a fault of ours. */
export function PlainPage({ title, says }: { title: string; says: string }) {
  return (
    <div class="plain">
      <h1>{title}</h1>
      <p class="lead">{says}</p>
      <p>
        <a href="/roofs">To the list of roofs</a>
      </p>
    </div>
  );
}
