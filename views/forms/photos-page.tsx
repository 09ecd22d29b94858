import type { PhotoLink } from '../parts/photos.tsx';
import { EditFrame, type EditFrameProps } from './edit-frame.tsx';
import type { ProblemView } from './form-view.ts';
import { Outcome } from './problem-summary.tsx';

export interface KeptPhoto extends PhotoLink {
  /** Where the form that throws it away is sent. */
  remove: string;
}

export interface PhotosPageProps extends EditFrameProps {
  /** "Finding 2: Rotten eave, gutter side". */
  title: string;
  note: string | null;
  action: string;
  /** Back to the findings. */
  back: string;
  photos: readonly KeptPhoto[];
  problems: readonly ProblemView[];
  saved: string | null;
  /** What is taken, in words. */
  takes: string;
}

const KEPT = 'The finding and its other photos are kept as they were.';

/** Photos with a button each that throws one away; every button is a form, so that it works without a script. */
export function PhotoList({ photos }: { photos: readonly KeptPhoto[] }) {
  return (
    <ul class="photo-list">
      {photos.map(({ src, alt, remove }) => (
        <li>
          <a href={src}>
            <img src={src} alt={alt} loading="lazy" />
          </a>
          <form method="post" action={remove}>
            <button type="submit" class="small" aria-label={`Throw this photo away: ${alt}`}>
              Throw this photo away
            </button>
          </form>
        </li>
      ))}
    </ul>
  );
}

/** The photos of one finding: those that are kept, and a box to send one more. */
export function PhotosPage(props: PhotosPageProps) {
  const { roof, links, plan, title, note, action, back, photos, problems, saved, takes } = props;
  return (
    <EditFrame roof={roof} links={links} plan={plan} title={title} lead={note ?? 'Photos of this finding.'}>
      <Outcome problems={problems} kept={KEPT} saved={saved} />
      {photos.length === 0 ? <p>No photo is kept yet.</p> : <PhotoList photos={photos} />}
      <form method="post" action={action} enctype="multipart/form-data">
        <div class={problems.length > 0 ? 'box wrong' : 'box'}>
          <label for="photo">One more photo</label>
          <p class="hint" id="photo-hint">
            {takes}
          </p>
          <input
            id="photo"
            type="file"
            name="photo"
            accept="image/jpeg,image/png,image/webp"
            aria-describedby="photo-hint"
            aria-invalid={problems.length > 0 ? 'true' : undefined}
          />
        </div>
        <div class="buttons">
          <button type="submit">Keep this photo</button>
        </div>
      </form>
      <p>
        <a href={back}>Back to the findings</a>
      </p>
    </EditFrame>
  );
}
