import { orientationAlone, orientationIn } from './orientation.ts';
import { ascii, checkSize, cutOff, damaged, joined, type Photo, viewOf } from './photo.ts';
import { checkRows, type PngHeader, pngHeader } from './png-rows.ts';

const SIGNATURE = 8;

/** Chunks that the picture needs, and those that say how its colours are meant. All others are left out. */
const kept: ReadonlySet<string> = new Set(['IHDR', 'PLTE', 'IDAT', 'IEND', 'tRNS', 'gAMA', 'cHRM', 'sRGB', 'sBIT']);

const table = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});

/** Check sum of a chunk. Source: CRC-32 as PNG annex D has it. Correctness: IEND's is AE 42 60 82. */
export function crc32(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) c = table[(c ^ byte) & 0xff] ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}

export function pngChunk(name: string, body: Uint8Array): Uint8Array {
  const out = new Uint8Array(12 + body.length);
  const view = viewOf(out);
  view.setUint32(0, body.length);
  out.set(
    Uint8Array.from(name, (letter) => letter.charCodeAt(0)),
    4,
  );
  out.set(body, 8);
  view.setUint32(8 + body.length, crc32(out.subarray(4, 8 + body.length)));
  return out;
}

interface Chunk {
  name: string;
  body: Uint8Array;
  whole: Uint8Array;
}

/** Every chunk up to the end of the picture; what stands behind it is left out. */
function* chunksOf(bytes: Uint8Array): Generator<Chunk> {
  const view = viewOf(bytes);
  for (let at = SIGNATURE; ; ) {
    if (at + 12 > bytes.length) throw cutOff();
    const length = view.getUint32(at);
    const end = at + 12 + length;
    if (end > bytes.length) throw cutOff();
    const name = ascii(bytes, at + 4, 4);
    if (crc32(bytes.subarray(at + 4, end - 4)) !== view.getUint32(end - 4))
      throw damaged(`the sum of its ${name} part`);
    yield { name, body: bytes.subarray(at + 8, end - 4), whole: bytes.subarray(at, end) };
    if (name === 'IEND') return;
    at = end;
  }
}

/**
 * A PNG with the chunks that draw it alone; how it is turned is kept. Its rows are counted against its header.
 * @throws PhotoFault
 * Source: Portable Network Graphics specification, third edition, chunks and their order; from memory.
 */
export async function readPng(bytes: Uint8Array): Promise<Photo> {
  const parts: Uint8Array[] = [];
  const packed: Uint8Array[] = [];
  let header: PngHeader | null = null;
  let palette = false;
  let orientation = 1;
  for (const { name, body, whole } of chunksOf(bytes)) {
    if ((header === null) !== (name === 'IHDR')) throw damaged('its size does not stand first');
    if (name === 'IHDR') {
      if (body.length !== 13) throw damaged('its header has another length');
      const view = viewOf(body);
      const size = [view.getUint32(0), view.getUint32(4)] as const;
      checkSize(...size);
      header = pngHeader(body, ...size);
    }
    if (name === 'eXIf') orientation = orientationIn(body);
    palette ||= name === 'PLTE';
    if (name === 'IDAT') packed.push(body);
    if (kept.has(name)) parts.push(whole);
  }
  if (header === null || packed.length === 0) throw damaged('there is no picture in it');
  if (header.colourType === 3 && !palette) throw damaged('its colours are missing');
  await checkRows(header, packed);
  const turned = orientation === 1 ? [] : [pngChunk('eXIf', orientationAlone(orientation))];
  const { widthPx, heightPx } = header;
  const [first, ...rest] = parts;
  const out = joined([bytes.subarray(0, SIGNATURE), first, ...turned, ...rest]);
  return { type: 'image/png', widthPx, heightPx, orientation, bytes: out };
}
