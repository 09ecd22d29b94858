import { describe, expect, it } from 'vitest';
import { checkPhoto } from '../../../src/photos/check-photo.ts';
import { orientationIn } from '../../../src/photos/orientation.ts';
import { joined, MOST_PIXELS, type Photo } from '../../../src/photos/photo.ts';
import { crc32, pngChunk } from '../../../src/photos/png.ts';
import { riffChunk } from '../../../src/photos/webp.ts';
import {
  bytesOf,
  cameraBlock,
  extendedHead,
  holds,
  jpeg,
  losslessBody,
  PLACE,
  png,
  SCAN_DATA,
  segment,
  webp,
} from './picture-bytes.ts';

function taken(bytes: Uint8Array): Photo {
  const reading = checkPhoto(bytes);
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.photo;
}

function refused(bytes: Uint8Array): string {
  const reading = checkPhoto(bytes);
  if (reading.ok) throw new Error('it was taken');
  expect(reading.problem.message).toMatch(/\.$/);
  expect(reading.problem.instead.length).toBeGreaterThan(5);
  return reading.problem.code;
}

const exif = (orientation: number): Uint8Array =>
  segment(0xe1, joined([bytesOf('Exif\0\0'), cameraBlock(orientation)]));

describe('a picture with its place in it', () => {
  it('JPEG: place, maker, text, thumbnail and what stands behind the picture go; size, turn and picture stay', () => {
    const source = jpeg({
      before: [
        segment(0xe0, joined([bytesOf('JFIF\0'), Uint8Array.of(1, 1, 0, 0, 1, 0, 1, 1, 1), bytesOf('abc')])),
        exif(6),
        segment(0xe1, bytesOf(`http://xmp.invented.test/\0<x>${PLACE}</x>`)),
        segment(0xed, bytesOf(`Retouching\0${PLACE}`)),
        segment(0xe2, bytesOf(`MPF\0${PLACE}`)),
        segment(0xe2, bytesOf('ICC_PROFILE\0 colours')),
        segment(0xfe, bytesOf(PLACE)),
      ],
      behind: joined([jpeg({ before: [exif(1)] }), bytesOf(`ftyp film ${PLACE}`)]),
    });
    expect(holds(source, PLACE)).toBe(true);
    const photo = taken(source);
    expect(photo).toMatchObject({ type: 'image/jpeg', widthPx: 40, heightPx: 30, orientation: 6 });
    for (const gone of [PLACE, 'Invented Maker', 'http:', 'MPF', 'abc']) expect(holds(photo.bytes, gone)).toBe(false);
    expect(holds(photo.bytes, 'ICC_PROFILE')).toBe(true);
    expect(Buffer.from(photo.bytes).includes(Buffer.from(SCAN_DATA))).toBe(true);
    // The turn alone is left of the camera's block: 26 bytes behind the introduction.
    const at = Buffer.from(photo.bytes).indexOf('Exif');
    expect(orientationIn(photo.bytes.subarray(at + 6, at + 32))).toBe(6);
    expect(taken(photo.bytes)).toEqual(photo);
  });

  it('PNG: the same', () => {
    const source = png(2, 2, [
      pngChunk('gAMA', Uint8Array.of(0, 0, 177, 143)),
      pngChunk('eXIf', cameraBlock(8)),
      pngChunk('tEXt', bytesOf(`Location\0${PLACE}`)),
      pngChunk('iTXt', bytesOf(`XML:packet\0${PLACE}`)),
    ]);
    const photo = taken(joined([source, bytesOf(PLACE)]));
    expect(photo).toMatchObject({ type: 'image/png', widthPx: 2, heightPx: 2, orientation: 8 });
    for (const gone of [PLACE, 'Invented Maker', 'tEXt', 'iTXt']) expect(holds(photo.bytes, gone)).toBe(false);
    for (const stays of ['gAMA', 'IDAT', 'IEND']) expect(holds(photo.bytes, stays)).toBe(true);
    expect(taken(photo.bytes)).toEqual(photo);
    expect(crc32(bytesOf('IEND'))).toBe(0xae426082);
  });

  it('WebP: the same, and the flags say what is left', () => {
    const picture = riffChunk('VP8L', losslessBody(640, 480));
    const extras = [
      riffChunk('EXIF', cameraBlock(3)),
      riffChunk('XMP ', bytesOf(PLACE)),
      riffChunk('ABCD', bytesOf(PLACE)),
    ];
    const source = webp([extendedHead(0x1c, 640, 480), picture, ...extras]);
    const photo = taken(source);
    expect(photo).toMatchObject({ type: 'image/webp', widthPx: 640, heightPx: 480, orientation: 3 });
    for (const gone of [PLACE, 'Invented Maker', 'XMP ', 'ABCD']) expect(holds(photo.bytes, gone)).toBe(false);
    // Alpha and the turn stay flagged, XMP (4) does not.
    expect(photo.bytes[20]).toBe(0x18);
    expect(Buffer.from(photo.bytes).readUInt32LE(4)).toBe(photo.bytes.length - 8);
    expect(taken(photo.bytes)).toEqual(photo);
    // Nothing to say beside the picture: the plain form.
    const plain = taken(webp([extendedHead(0x0c, 640, 480), picture, riffChunk('EXIF', cameraBlock(1))]));
    expect(holds(plain.bytes, 'VP8X')).toBe(false);
    expect(holds(plain.bytes, PLACE)).toBe(false);
  });
});

describe('what is not taken', () => {
  it.each<[string, Uint8Array, string]>([
    ['a file of 40 MB', new Uint8Array(40_000_000).fill(0xff), 'too-large'],
    ['nothing', new Uint8Array(), 'empty'],
    ['a program called photo.jpg', joined([bytesOf('MZ\x90\0'), new Uint8Array(300)]), 'wrong-kind'],
    ['another program', joined([Uint8Array.of(0x7f), bytesOf('ELF'), new Uint8Array(300)]), 'wrong-kind'],
    ['a web page', bytesOf('  <!doctype html><script>alert(1)</script>'), 'wrong-kind'],
    ['a drawing in text', bytesOf('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'wrong-kind'],
    ['a phone’s HEIC', bytesOf('\0\0\0\x18ftypheic\0\0\0\0mif1'), 'wrong-kind'],
    ['noise', Uint8Array.of(1, 2, 3, 4, 5), 'not-a-photo'],
    ['the first bytes of a JPEG alone', Uint8Array.of(0xff, 0xd8, 0xff), 'cut-off'],
  ])('%s', (_, bytes, code) => {
    expect(refused(bytes)).toBe(code);
  });

  it.each<[string, Uint8Array]>([
    ['JPEG', jpeg({ widthPx: 65_000, heightPx: 65_000 })],
    ['JPEG, long and thin', jpeg({ widthPx: 20_000, heightPx: 10 })],
    ['PNG', png(50_000, 50_000)],
    ['PNG beyond 31 bits', png(4_294_967_295, 4_294_967_295)],
    ['WebP by its head', webp([extendedHead(0, 16_000_000, 1), riffChunk('VP8L', losslessBody(4, 4))])],
    ['WebP by its picture', webp([riffChunk('VP8L', losslessBody(16_384, 16_384))])],
  ])('a %s whose header claims too many pixels, with nothing decoded', (_, bytes) => {
    expect(bytes.length).toBeLessThan(1000);
    expect(refused(bytes)).toBe('too-many-pixels');
  });

  it('a photo just inside the limit is taken, one row more is not', () => {
    expect(taken(jpeg({ widthPx: 8000, heightPx: MOST_PIXELS / 8000 })).heightPx).toBe(8000);
    expect(refused(jpeg({ widthPx: 8000, heightPx: MOST_PIXELS / 8000 + 1 }))).toBe('too-many-pixels');
  });

  it('a picture of thousands of passes, a moving one, two frames, a wrong check sum', () => {
    expect(refused(jpeg({ scans: 2000 }))).toBe('damaged');
    expect(refused(webp([extendedHead(2, 4, 4), riffChunk('ANIM', new Uint8Array(6))]))).toBe('moving');
    const bent = png();
    bent[bent.length - 20] ^= 1;
    expect(refused(bent)).toBe('damaged');
  });

  it('each kind cut off at every byte: refused with a reason, and nothing thrown', () => {
    const whole = [
      jpeg({ before: [exif(6)] }),
      png(2, 2, [pngChunk('eXIf', cameraBlock(8))]),
      webp([extendedHead(8, 9, 9), riffChunk('VP8L', losslessBody(9, 9)), riffChunk('EXIF', cameraBlock(3))]),
    ];
    for (const bytes of whole) {
      for (let length = 0; length < bytes.length; length++) {
        expect(checkPhoto(bytes.subarray(0, length)).ok, `${length} of ${bytes.length}`).toBe(false);
      }
      expect(checkPhoto(bytes).ok).toBe(true);
    }
  });

  it('every single bent byte gives a photo or a reason, never an exception', () => {
    const bytes = jpeg({ before: [exif(6)] });
    for (let i = 0; i < bytes.length; i++) {
      for (const value of [0, 0x7f, 0xff]) {
        const bent = bytes.slice();
        bent[i] = value;
        expect(() => checkPhoto(bent)).not.toThrow();
      }
    }
  });
});

describe('a camera’s block that lies', () => {
  it.each<[string, (block: Uint8Array) => void]>([
    ['its list starts beyond the end', (block) => block.set([255, 255, 255, 0], 4)],
    ['it has more entries than bytes', (block) => block.set([255, 255], 8)],
    ['its turn is none', (block) => block.set([9, 0], 10 + 12 + 8)],
  ])('%s: taken as it stands', (_, bend) => {
    const block = cameraBlock(6);
    bend(block);
    expect(orientationIn(block)).toBe(_.includes('more entries') ? 6 : 1);
  });
});
