import { deflateSync } from 'node:zlib';
import { joined } from '../../../src/photos/photo.ts';
import { pngChunk } from '../../../src/photos/png.ts';
import { riffChunk, riffFile } from '../../../src/photos/webp.ts';

/** Pictures made byte by byte, with what cameras write beside them. */

export const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

export const holds = (bytes: Uint8Array, text: string): boolean => Buffer.from(bytes).includes(Buffer.from(text));

export const PLACE = 'GPS 12 deg 34 min N';

/** A camera's block: how it was held (tag 274), its maker (tag 271), and a place (tag 34853). Little-endian, as phones write it. */
export function cameraBlock(orientation: number): Uint8Array {
  const maker = bytesOf('Invented Maker\0');
  const place = bytesOf(`${PLACE}\0`);
  const entries = 3;
  const after = 8 + 2 + 12 * entries + 4;
  const out = Buffer.alloc(after + maker.length + place.length);
  out.write('II*\0', 0, 'latin1');
  out.writeUInt32LE(8, 4);
  out.writeUInt16LE(entries, 8);
  const entry = (i: number, tag: number, type: number, count: number, value: number) => {
    const at = 10 + 12 * i;
    out.writeUInt16LE(tag, at);
    out.writeUInt16LE(type, at + 2);
    out.writeUInt32LE(count, at + 4);
    out.writeUInt32LE(value, at + 8);
  };
  entry(0, 271, 2, maker.length, after);
  entry(1, 274, 3, 1, orientation);
  entry(2, 34853, 2, place.length, after + maker.length);
  out.set(maker, after);
  out.set(place, after + maker.length);
  return out;
}

export function segment(marker: number, body: Uint8Array): Uint8Array {
  return joined([Uint8Array.of(0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 0xff), body]);
}

const frame = (widthPx: number, heightPx: number): Uint8Array =>
  segment(0xc0, Uint8Array.of(8, heightPx >> 8, heightPx & 0xff, widthPx >> 8, widthPx & 0xff, 1, 1, 0x11, 0));

/** Entropy-coded data with a stuffed FF and a restart marker, which must both be passed over. */
export const SCAN_DATA = Uint8Array.of(0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56);

export interface JpegParts {
  widthPx?: number;
  heightPx?: number;
  before?: readonly Uint8Array[];
  behind?: Uint8Array;
  scans?: number;
  /** Bytes of each scan behind its first few; as many as the size asks for where it is not said, 0 = none at all. */
  dataBytes?: number;
}

export function jpeg({
  widthPx = 40,
  heightPx = 30,
  before = [],
  behind,
  scans = 1,
  dataBytes,
}: JpegParts = {}): Uint8Array {
  // Two bits at least for each block of 8 x 8 pixels.
  const filler = new Uint8Array(dataBytes ?? Math.ceil((Math.ceil(widthPx / 8) * Math.ceil(heightPx / 8)) / 4)).fill(
    0x55,
  );
  const scan = joined([segment(0xda, Uint8Array.of(1, 1, 0, 0, 63, 0)), dataBytes === 0 ? filler : SCAN_DATA, filler]);
  return joined([
    Uint8Array.of(0xff, 0xd8),
    ...before,
    segment(0xdb, new Uint8Array(65)),
    frame(widthPx, heightPx),
    segment(0xc4, new Uint8Array(20)),
    ...Array.from({ length: scans }, () => scan),
    Uint8Array.of(0xff, 0xd9),
    behind ?? new Uint8Array(),
  ]);
}

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);

/** Rows of a grey picture of 2 x 2 points, packed. */
const twoRows = (): Uint8Array => deflateSync(Buffer.from([0, 10, 200, 0, 90, 30]));

/** Depth, colour type, packing, filter, interlace. */
export type PngKind = readonly [number, number, number, number, number];

export function png(
  widthPx = 2,
  heightPx = 2,
  extra: readonly Uint8Array[] = [],
  packed: readonly Uint8Array[] = [twoRows()],
  kind: PngKind = [8, 0, 0, 0, 0],
): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(widthPx, 0);
  header.writeUInt32BE(heightPx, 4);
  header.set(kind, 8);
  return joined([
    SIGNATURE,
    pngChunk('IHDR', header),
    ...extra,
    ...packed.map((body) => pngChunk('IDAT', body)),
    pngChunk('IEND', new Uint8Array()),
  ]);
}

/** Head of a lossless picture of this size, then data that nobody decodes. */
export function losslessBody(widthPx: number, heightPx: number): Uint8Array {
  const out = Buffer.alloc(12);
  out[0] = 0x2f;
  out.writeUInt32LE(((widthPx - 1) | ((heightPx - 1) << 14)) >>> 0, 1);
  return out;
}

/** The head that claims a size and says what follows it. */
export function extendedHead(flags: number, widthPx: number, heightPx: number): Uint8Array {
  const out = Buffer.alloc(10);
  out[0] = flags;
  out.writeUIntLE(widthPx - 1, 4, 3);
  out.writeUIntLE(heightPx - 1, 7, 3);
  return riffChunk('VP8X', out);
}

export const webp = (chunks: readonly Uint8Array[]): Uint8Array => riffFile(chunks);
