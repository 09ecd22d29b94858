import { readJpeg } from './jpeg.ts';
import { ascii, MOST_BYTES, type Photo, PhotoFault, type PhotoProblem, type PhotoReading } from './photo.ts';
import { readPng } from './png.ts';
import { readWebp } from './webp.ts';

const startsWith = (bytes: Uint8Array, ...start: readonly number[]): boolean =>
  start.every((byte, i) => bytes[i] === byte);

/** How a file of each kind that is taken begins. */
const readers: readonly { is: (bytes: Uint8Array) => boolean; read: (bytes: Uint8Array) => Photo | Promise<Photo> }[] =
  [
    { is: (bytes) => startsWith(bytes, 0xff, 0xd8, 0xff), read: readJpeg },
    { is: (bytes) => startsWith(bytes, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a), read: readPng },
    {
      is: (bytes) => bytes.length >= 16 && ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP',
      read: readWebp,
    },
  ];

const JPEG = 'a JPEG, PNG or WebP photo';

/** What a file that is not taken really is, by how it begins: its name says nothing. */
const strangers: readonly { is: (bytes: Uint8Array) => boolean; what: string; instead: string }[] = [
  {
    is: (bytes) => ascii(bytes, 4, 4) === 'ftyp' && /^(hei|hev|mif|msf|avi)/.test(ascii(bytes, 8, 4)),
    what: 'a photo in the HEIC or AVIF form',
    instead: 'a JPEG: set the phone’s camera to its most compatible form, or save the photo again as JPEG',
  },
  { is: (bytes) => ascii(bytes, 4, 4) === 'ftyp', what: 'a film', instead: 'a still photo as JPEG' },
  { is: (bytes) => startsWith(bytes, 0x4d, 0x5a), what: 'a program', instead: JPEG },
  { is: (bytes) => startsWith(bytes, 0x7f, 0x45, 0x4c, 0x46), what: 'a program', instead: JPEG },
  { is: (bytes) => startsWith(bytes, 0x23, 0x21), what: 'a script', instead: JPEG },
  { is: (bytes) => ascii(bytes, 0, 4) === 'GIF8', what: 'a GIF', instead: JPEG },
  { is: (bytes) => ascii(bytes, 0, 4) === '%PDF', what: 'a PDF', instead: 'the photo itself, as JPEG' },
  { is: (bytes) => startsWith(bytes, 0x50, 0x4b), what: 'a packed folder', instead: 'the photos one by one, as JPEG' },
  { is: (bytes) => /^\s*</.test(ascii(bytes, 0, 64)), what: 'a web page or drawing in text', instead: JPEG },
];

/** Said before a file is read, where the request tells its length. */
export const tooLarge = (bytes: number): PhotoProblem => ({
  code: 'too-large',
  message: `The file has ${Math.ceil(bytes / 1e5) / 10} MB.`,
  instead: `a photo of at most ${MOST_BYTES / 1e6} MB: send it in a smaller size`,
});

function stranger(bytes: Uint8Array): PhotoProblem {
  const known = strangers.find(({ is }) => is(bytes));
  if (known === undefined) {
    return { code: 'not-a-photo', message: 'The file does not begin as a photo does.', instead: JPEG };
  }
  const message = `The file is ${known.what}, whatever its name says.`;
  return { code: 'wrong-kind', message, instead: known.instead };
}

/**
 * A file as a photo that may be kept, by its content alone: its name and the type that the browser claims are not looked
 * at. Sizes come from the headers, and the data must be enough for them: the rows of a PNG are unpacked and counted, piece by
 * piece, nothing else is decoded. Of the file only what draws the picture is kept, so place, time, maker and thumbnails are
 * gone.
 * @returns the photo, or why it is not taken; never rejects for what stands in the file
 */
export async function checkPhoto(bytes: Uint8Array): Promise<PhotoReading> {
  if (bytes.length > MOST_BYTES) return { ok: false, problem: tooLarge(bytes.length) };
  if (bytes.length === 0) {
    const problem: PhotoProblem = { code: 'empty', message: 'No file came, or an empty one.', instead: JPEG };
    return { ok: false, problem };
  }
  const reader = readers.find(({ is }) => is(bytes));
  if (reader === undefined) return { ok: false, problem: stranger(bytes) };
  try {
    return { ok: true, photo: await reader.read(bytes) };
  } catch (error) {
    if (error instanceof PhotoFault) return { ok: false, problem: error.problem };
    throw error;
  }
}
