import { viewOf } from './photo.ts';

const TAG = 0x0112;
const SHORT = 3;

/**
 * How a camera held the picture, from the block in which it also writes place, time and maker.
 * @param tiff the block from its byte-order mark on
 * @returns 1 to 8; 1 where the block does not say or cannot be read
 * Source: TIFF 6.0 tag 274 (Orientation), as Exif uses it; from memory. Correctness: tests/unit/photos/*.test.ts
 */
export function orientationIn(tiff: Uint8Array): number {
  if (tiff.length < 14) return 1;
  const view = viewOf(tiff);
  const order = view.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) return 1;
  const little = order === 0x4949;
  const first = view.getUint32(4, little);
  if (first + 2 > tiff.length) return 1;
  const entries = view.getUint16(first, little);
  for (let i = 0; i < entries; i++) {
    const at = first + 2 + 12 * i;
    if (at + 12 > tiff.length) return 1;
    if (view.getUint16(at, little) !== TAG) continue;
    const value = view.getUint16(at + 8, little);
    return view.getUint16(at + 2, little) === SHORT && value >= 1 && value <= 8 ? value : 1;
  }
  return 1;
}

/** The same block with nothing in it but how the picture is turned. */
export function orientationAlone(orientation: number): Uint8Array {
  const out = new Uint8Array(26);
  const view = viewOf(out);
  view.setUint16(0, 0x4d4d);
  view.setUint16(2, 42);
  view.setUint32(4, 8);
  view.setUint16(8, 1);
  view.setUint16(10, TAG);
  view.setUint16(12, SHORT);
  view.setUint32(14, 1);
  view.setUint16(18, orientation);
  return out;
}
