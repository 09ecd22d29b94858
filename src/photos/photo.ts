/** A photo as it is kept: only the picture, none of what the camera wrote beside it. */
export interface Photo {
  type: PhotoType;
  widthPx: number;
  heightPx: number;
  /** How a viewer turns it, 1 to 8 as cameras number it; 1 = as it stands. */
  orientation: number;
  bytes: Uint8Array;
}

export type PhotoType = 'image/jpeg' | 'image/png' | 'image/webp';

/** Why a file is not taken: what is wrong, and what to send instead. */
export interface PhotoProblem {
  code: 'too-large' | 'empty' | 'not-a-photo' | 'wrong-kind' | 'cut-off' | 'damaged' | 'too-many-pixels' | 'moving';
  message: string;
  instead: string;
}

export type PhotoReading = { ok: true; photo: Photo } | { ok: false; problem: PhotoProblem };

/** Thrown inside the readers of this folder alone; `checkPhoto` turns it into a typed reading. */
export class PhotoFault extends Error {
  readonly problem: PhotoProblem;

  constructor(problem: PhotoProblem) {
    super(problem.message);
    this.problem = problem;
  }
}

/** Largest file: a full-size phone photo has 3 to 10 MB. */
export const MOST_BYTES = 12_000_000;

/** Most pixels: above the 12 to 24 million that phones save by themselves, below what stalls a phone that has to draw it. */
export const MOST_PIXELS = 40_000_000;

/** Memory for one point of a picture that is drawn. */
const BYTES_DRAWN = 4;

/** Longest side, whatever the area: decoders of other programs fail beyond it. */
export const LONGEST_SIDE_PX = 16_000;

const AGAIN = 'the photo once more, straight from the camera or saved again as JPEG';

export const cutOff = (): PhotoFault =>
  new PhotoFault({ code: 'cut-off', message: 'The file ends in the middle of the picture.', instead: AGAIN });

export const damaged = (what: string): PhotoFault =>
  new PhotoFault({ code: 'damaged', message: `The picture is damaged: ${what}.`, instead: AGAIN });

const megabytes = (bytes: number): string =>
  bytes < 1e9 ? `${Math.ceil(bytes / 1e6)} MB` : `${Math.ceil(bytes / 1e8) / 10} GB`;

/** Refuses a picture by the size that its header claims, before anything of it is decoded. */
export function checkSize(widthPx: number, heightPx: number): void {
  if (widthPx < 1 || heightPx < 1) throw damaged('its header gives no size');
  if (widthPx * heightPx <= MOST_PIXELS && Math.max(widthPx, heightPx) <= LONGEST_SIDE_PX) return;
  throw new PhotoFault({
    code: 'too-many-pixels',
    message: `The picture says that it has ${widthPx} x ${heightPx} pixels; a phone would need ${megabytes(widthPx * heightPx * BYTES_DRAWN)} of memory to show it.`,
    instead: `a photo of at most ${MOST_PIXELS / 1e6} million pixels, no side over ${LONGEST_SIDE_PX} pixels`,
  });
}

export const ascii = (bytes: Uint8Array, at: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + length));

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const out = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}

export const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
