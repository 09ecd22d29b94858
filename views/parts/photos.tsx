export interface PhotoLink {
  src: string;
  alt: string;
}

/** Photos in a row, each leading to the whole of it. */
export function Photos({ photos }: { photos: readonly PhotoLink[] }) {
  if (photos.length === 0) return null;
  return (
    <span class="photos">
      {photos.map(({ src, alt }) => (
        <a href={src}>
          <img src={src} alt={alt} loading="lazy" />
        </a>
      ))}
    </span>
  );
}
