import { orientationAlone, orientationIn } from './orientation.ts';
import { ascii, checkSize, cutOff, damaged, joined, type Photo, PhotoFault, viewOf } from './photo.ts';

const HEAD = 12;
const ICC_FLAG = 0x20;
const ALPHA_FLAG = 0x10;
const EXIF_FLAG = 0x08;

/** Chunks that draw the picture; VP8X is written anew, all others are left out. */
const kept: ReadonlySet<string> = new Set(['VP8 ', 'VP8L', 'ALPH', 'ICCP']);

const fourLetters = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

export function riffChunk(name: string, body: Uint8Array): Uint8Array {
  const out = new Uint8Array(8 + body.length + (body.length % 2));
  out.set(fourLetters(name), 0);
  viewOf(out).setUint32(4, body.length, true);
  out.set(body, 8);
  return out;
}

export function riffFile(chunks: readonly Uint8Array[]): Uint8Array {
  const body = joined([fourLetters('WEBP'), ...chunks]);
  return joined([riffChunk('RIFF', body)]);
}

interface Chunk {
  name: string;
  body: Uint8Array;
}

/** Every chunk inside the length that the file's head gives; what stands behind it is left out. */
function chunksOf(bytes: Uint8Array): Chunk[] {
  const view = viewOf(bytes);
  const end = 8 + view.getUint32(4, true);
  if (end > bytes.length) throw cutOff();
  const chunks: Chunk[] = [];
  for (let at = HEAD; at + 8 <= end; ) {
    const length = view.getUint32(at + 4, true);
    if (at + 8 + length > end) throw cutOff();
    chunks.push({ name: ascii(bytes, at, 4), body: bytes.subarray(at + 8, at + 8 + length) });
    at += 8 + length + (length % 2);
  }
  return chunks;
}

const uint24 = (bytes: Uint8Array, at: number): number => bytes[at] | (bytes[at + 1] << 8) | (bytes[at + 2] << 16);

const LESS = 'there is less picture in it than its header says';

/** Size of the picture itself; the head of the file claims one apart from it. */
function sizeOf({ name, body }: Chunk): [number, number] {
  if (name === 'VP8 ') {
    if (body.length < 10 || uint24(body, 3) !== 0x2a019d) throw damaged('its picture does not start');
    const view = viewOf(body);
    // The first part holds the way every block is coded, a second part its points.
    const first = uint24(body, 0) >> 5;
    if (first === 0 || 10 + first >= body.length) throw damaged(LESS);
    return [view.getUint16(6, true) & 0x3fff, view.getUint16(8, true) & 0x3fff];
  }
  if (body.length < 5 || body[0] !== 0x2f) throw damaged('its picture does not start');
  if (body.length === 5) throw damaged(LESS);
  const bits = viewOf(body).getUint32(1, true);
  return [(bits & 0x3fff) + 1, ((bits >>> 14) & 0x3fff) + 1];
}

function headOf(flags: number, [widthPx, heightPx]: readonly [number, number]): Uint8Array {
  const body = new Uint8Array(10);
  const view = viewOf(body);
  view.setUint8(0, flags);
  view.setUint16(4, (widthPx - 1) & 0xffff, true);
  view.setUint8(6, (widthPx - 1) >> 16);
  view.setUint16(7, (heightPx - 1) & 0xffff, true);
  view.setUint8(9, (heightPx - 1) >> 16);
  return riffChunk('VP8X', body);
}

/**
 * A WebP with the chunks that draw it alone, its head written anew; how it is turned is kept.
 * @throws PhotoFault
 * Source: WebP container specification (RIFF, VP8X flags) and RFC 6386 section 9.1 for the frame header; from memory.
 */
export function readWebp(bytes: Uint8Array): Photo {
  const chunks = chunksOf(bytes);
  const find = (name: string): Chunk | undefined => chunks.find((chunk) => chunk.name === name);
  if (find('ANIM') !== undefined || find('ANMF') !== undefined) {
    throw new PhotoFault({ code: 'moving', message: 'The picture moves.', instead: 'a still photo' });
  }
  const extended = find('VP8X')?.body;
  if (extended !== undefined) {
    if (extended.length < 10) throw damaged('its head is too short');
    checkSize(uint24(extended, 4) + 1, uint24(extended, 7) + 1);
  }
  const pictures = chunks.filter(({ name }) => name === 'VP8 ' || name === 'VP8L');
  if (pictures.length !== 1) throw damaged('there is not exactly one picture in it');
  const size = sizeOf(pictures[0]);
  checkSize(...size);
  const exif = find('EXIF')?.body;
  // Some programs write the JPEG's introduction before the block.
  const tiff = exif !== undefined && ascii(exif, 0, 6) === 'Exif\0\0' ? exif.subarray(6) : exif;
  const orientation = tiff === undefined ? 1 : orientationIn(tiff);
  const alpha = extended === undefined ? 0 : extended[0] & ALPHA_FLAG;
  const flags = alpha | (find('ICCP') === undefined ? 0 : ICC_FLAG) | (orientation === 1 ? 0 : EXIF_FLAG);
  const parts = chunks.filter(({ name }) => kept.has(name)).map(({ name, body }) => riffChunk(name, body));
  const out = riffFile([
    ...(flags === 0 ? [] : [headOf(flags, size)]),
    ...parts,
    ...(orientation === 1 ? [] : [riffChunk('EXIF', orientationAlone(orientation))]),
  ]);
  return { type: 'image/webp', widthPx: size[0], heightPx: size[1], orientation, bytes: out };
}
