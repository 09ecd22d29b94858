import { Readable } from 'node:stream';
import { createInflate } from 'node:zlib';
import { damaged, PhotoFault } from './photo.ts';

/** What the header of a PNG says of its rows. */
export interface PngHeader {
  widthPx: number;
  heightPx: number;
  bitDepth: number;
  colourType: number;
  interlaced: boolean;
}

/** Samples of a point and the depths they may have, by colour type: grey, colours, palette, grey and alpha, colours and alpha. */
const samples: Readonly<Record<number, { count: number; depths: readonly number[] }>> = {
  0: { count: 1, depths: [1, 2, 4, 8, 16] },
  2: { count: 3, depths: [8, 16] },
  3: { count: 1, depths: [1, 2, 4, 8] },
  4: { count: 2, depths: [8, 16] },
  6: { count: 4, depths: [8, 16] },
};

/** Passes of an interlaced picture: first column and row, and steps. */
const passes: readonly (readonly [x: number, y: number, dx: number, dy: number])[] = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
];

/** @throws PhotoFault where depth, colours or the ways of packing are none that the form knows */
export function pngHeader(body: Uint8Array, widthPx: number, heightPx: number): PngHeader {
  const [bitDepth, colourType, packing, filter, interlace] = body.subarray(8, 13);
  const known = samples[colourType]?.depths.includes(bitDepth) ?? false;
  if (!known || packing !== 0 || filter !== 0 || interlace > 1) throw damaged('its header says what no PNG says');
  return { widthPx, heightPx, bitDepth, colourType, interlaced: interlace === 1 };
}

/**
 * Bytes of all rows once they are unpacked: each row is one byte for its filter and its points, filled up to a byte.
 * Source: Portable Network Graphics specification, third edition, sections 7.2, 8.1 and 9; from memory.
 * Correctness: tests/unit/photos/check-photo.test.ts
 */
export function unpackedBytes({ widthPx, heightPx, bitDepth, colourType, interlaced }: PngHeader): number {
  const bits = bitDepth * samples[colourType].count;
  const rows = (wide: number, high: number): number => (wide === 0 ? 0 : high * (1 + Math.ceil((wide * bits) / 8)));
  if (!interlaced) return rows(widthPx, heightPx);
  const along = (size: number, from: number, step: number): number => Math.max(0, Math.ceil((size - from) / step));
  return passes.reduce((sum, [x, y, dx, dy]) => sum + rows(along(widthPx, x, dx), along(heightPx, y, dy)), 0);
}

/**
 * Unpacks the rows piece by piece, counts them and keeps nothing; stops at the first byte beyond what the header says, so
 * that a small file with a great deal packed into it costs no more than the picture it claims to be.
 * @throws PhotoFault
 */
export async function checkRows(header: PngHeader, packed: readonly Uint8Array[]): Promise<void> {
  const due = unpackedBytes(header);
  let count = 0;
  try {
    // Leaving the loop ends the unpacking.
    for await (const { length } of Readable.from(packed).pipe(createInflate())) {
      count += length;
      if (count > due) throw damaged('more is packed into it than its header says');
    }
  } catch (error) {
    if (error instanceof PhotoFault) throw error;
    if (!String((error as NodeJS.ErrnoException).code).startsWith('Z_')) throw error;
    throw damaged('its rows cannot be unpacked');
  }
  if (count < due) throw damaged('there is less picture in it than its header says');
}
