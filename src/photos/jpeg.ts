import { orientationAlone, orientationIn } from './orientation.ts';
import { ascii, checkSize, cutOff, damaged, joined, type Photo, viewOf } from './photo.ts';

/** Scans of one picture: a progressive photo has about ten; each further one costs the viewer a whole pass. */
const MOST_SCANS = 100;

const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
const APP0 = 0xe0;
const APP1 = 0xe1;
const APP2 = 0xe2;
const APP14 = 0xee;
/** Length of the segment that says how three or four colours are meant; it has no room for anything else. */
const COLOUR_TRANSFORM = 12;

/** Start of frame: every code from C0 to CF but the tables DHT (C4), JPG (C8) and DAC (CC). */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** Tables without which the picture cannot be drawn: DHT, DAC, DQT, DRI. */
const tables: ReadonlySet<number> = new Set([0xc4, 0xcc, 0xdb, 0xdd]);

function segment(marker: number, body: Uint8Array): Uint8Array {
  const head = new Uint8Array([0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 0xff]);
  return joined([head, body]);
}

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

/** What is kept of a segment; null = it says something beside the picture and is left out. */
function keptOf(marker: number, body: Uint8Array): Uint8Array | null {
  if (isFrame(marker) || tables.has(marker)) return body;
  if (marker === APP0 && ascii(body, 0, 5) === 'JFIF\0' && body.length >= 14) {
    // Without the thumbnail, which is a second picture.
    const head = body.slice(0, 14);
    head.set([0, 0], 12);
    return head;
  }
  const isColour = marker === APP2 && ascii(body, 0, 12) === 'ICC_PROFILE\0';
  return isColour || (marker === APP14 && body.length === COLOUR_TRANSFORM) ? body : null;
}

/** End of the entropy-coded data that starts here: the next marker that is not a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1];
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  throw cutOff();
}

/** Huffman-coded frames and the bits that each block of them takes at least: one for its mean, one that ends its detail. */
const leastBits: Readonly<Record<number, number>> = { 192: 2, 193: 2, 194: 1 };

/** Least data that a frame of this size can be drawn from, in bytes; fewer means that most of it is not there. */
function leastData(marker: number, body: Uint8Array, widthPx: number, heightPx: number): number {
  const parts = Array.from({ length: body[5] }, (_, i) => {
    const sampling = body[7 + 3 * i];
    return { across: sampling >> 4, down: sampling & 15 };
  });
  if (
    body.length !== 6 + 3 * parts.length ||
    parts.length === 0 ||
    parts.some(({ across, down }) => across * down === 0)
  )
    throw damaged('its frame names no colours');
  const most = (of: 'across' | 'down'): number => Math.max(...parts.map((part) => part[of]));
  const [across, down] = [most('across'), most('down')];
  const blocks = (sizePx: number, share: number): number => Math.ceil(Math.ceil(sizePx * share) / 8);
  const all = parts.reduce(
    (sum, part) => sum + blocks(widthPx, part.across / across) * blocks(heightPx, part.down / down),
    0,
  );
  return Math.ceil((all * (leastBits[marker] ?? 0)) / 8);
}

class JpegReader {
  readonly #bytes: Uint8Array;
  readonly #view: DataView;
  readonly #kept: Uint8Array[] = [];
  #size: [number, number] | null = null;
  #scans = 0;
  #dataBytes = 0;
  #leastBytes = 0;
  #orientation = 1;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
    this.#view = viewOf(bytes);
  }

  /** Offset after one segment; null after the end of the picture. What stands behind it (a second picture, a film) is left out. */
  #step(from: number): number | null {
    let at = from;
    if (this.#bytes[at] !== 0xff) throw at >= this.#bytes.length ? cutOff() : damaged('a segment does not start');
    while (this.#bytes[at] === 0xff) at++;
    if (at >= this.#bytes.length) throw cutOff();
    const marker = this.#bytes[at];
    if (marker === EOI) return null;
    if (marker === SOI || marker === 0 || (marker >= 0xd0 && marker <= 0xd7)) throw damaged('a marker is out of place');
    if (at + 3 > this.#bytes.length) throw cutOff();
    const length = this.#view.getUint16(at + 1);
    const end = at + 1 + length;
    if (length < 2) throw damaged('a segment is shorter than its own head');
    if (end > this.#bytes.length) throw cutOff();
    const body = this.#bytes.subarray(at + 3, end);
    if (marker === SOS) return this.#scan(body, end);
    this.#look(marker, body);
    const kept = keptOf(marker, body);
    if (kept !== null) this.#kept.push(segment(marker, kept));
    return end;
  }

  #look(marker: number, body: Uint8Array): void {
    if (isFrame(marker)) {
      if (this.#size !== null) throw damaged('it has two frames');
      if (body.length < 6) throw damaged('its frame gives no size');
      const view = viewOf(body);
      this.#size = [view.getUint16(3), view.getUint16(1)];
      checkSize(...this.#size);
      this.#leastBytes = leastData(marker, body, ...this.#size);
    }
    if (marker === APP1 && ascii(body, 0, 6) === 'Exif\0\0') this.#orientation = orientationIn(body.subarray(6));
  }

  #scan(body: Uint8Array, from: number): number {
    if (this.#size === null) throw damaged('the picture starts before its size is given');
    if (++this.#scans > MOST_SCANS) throw damaged(`it is drawn in more than ${MOST_SCANS} passes`);
    const end = endOfScan(this.#bytes, from);
    if (end === from) throw damaged('one of its passes is empty');
    this.#dataBytes += end - from;
    this.#kept.push(segment(SOS, body), this.#bytes.subarray(from, end));
    return end;
  }

  read(): Photo {
    for (let at: number | null = 2; at !== null; ) at = this.#step(at);
    if (this.#size === null || this.#scans === 0) throw damaged('there is no picture in it');
    if (this.#dataBytes < this.#leastBytes) throw damaged('there is less picture in it than its header says');
    const turned = joined([bytesOf('Exif\0\0'), orientationAlone(this.#orientation)]);
    const bytes = joined([
      new Uint8Array([0xff, SOI]),
      ...(this.#orientation === 1 ? [] : [segment(APP1, turned)]),
      ...this.#kept,
      new Uint8Array([0xff, EOI]),
    ]);
    const [widthPx, heightPx] = this.#size;
    return { type: 'image/jpeg', widthPx, heightPx, orientation: this.#orientation, bytes };
  }
}

/**
 * A JPEG with its frame, tables, scans and colour profile alone: place, time, maker, text, thumbnails and what stands
 * behind the picture are left out; how it is turned is kept.
 * @throws PhotoFault
 * Source: ITU-T T.81 annex B (markers and segments), JFIF 1.02, from memory.
 */
export const readJpeg = (bytes: Uint8Array): Photo => new JpegReader(bytes).read();
