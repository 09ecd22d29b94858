import { deflateSync } from 'node:zlib';
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
  type PngKind,
  png,
  SCAN_DATA,
  segment,
  webp,
} from './picture-bytes.ts';

async function taken(bytes: Uint8Array): Promise<Photo> {
  const reading = await checkPhoto(bytes);
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.photo;
}

async function refused(bytes: Uint8Array): Promise<string> {
  const reading = await checkPhoto(bytes);
  if (reading.ok) throw new Error('it was taken');
  expect(reading.problem.message).toMatch(/\.$/);
  expect(reading.problem.instead.length).toBeGreaterThan(5);
  return reading.problem.code;
}

const exif = (orientation: number): Uint8Array =>
  segment(0xe1, joined([bytesOf('Exif\0\0'), cameraBlock(orientation)]));

describe('a picture with its place in it', () => {
  it('JPEG: place, maker, text, thumbnail and what stands behind the picture go; size, turn and picture stay', async () => {
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
    const photo = await taken(source);
    expect(photo).toMatchObject({ type: 'image/jpeg', widthPx: 40, heightPx: 30, orientation: 6 });
    for (const gone of [PLACE, 'Invented Maker', 'http:', 'MPF', 'abc']) expect(holds(photo.bytes, gone)).toBe(false);
    expect(holds(photo.bytes, 'ICC_PROFILE')).toBe(true);
    expect(Buffer.from(photo.bytes).includes(Buffer.from(SCAN_DATA))).toBe(true);
    // The turn alone is left of the camera's block: 26 bytes behind the introduction.
    const at = Buffer.from(photo.bytes).indexOf('Exif');
    expect(orientationIn(photo.bytes.subarray(at + 6, at + 32))).toBe(6);
    expect(await taken(photo.bytes)).toEqual(photo);
  });

  it('PNG: the same', async () => {
    const source = png(2, 2, [
      pngChunk('gAMA', Uint8Array.of(0, 0, 177, 143)),
      pngChunk('eXIf', cameraBlock(8)),
      pngChunk('tEXt', bytesOf(`Location\0${PLACE}`)),
      pngChunk('iTXt', bytesOf(`XML:packet\0${PLACE}`)),
    ]);
    const photo = await taken(joined([source, bytesOf(PLACE)]));
    expect(photo).toMatchObject({ type: 'image/png', widthPx: 2, heightPx: 2, orientation: 8 });
    for (const gone of [PLACE, 'Invented Maker', 'tEXt', 'iTXt']) expect(holds(photo.bytes, gone)).toBe(false);
    for (const stays of ['gAMA', 'IDAT', 'IEND']) expect(holds(photo.bytes, stays)).toBe(true);
    expect(await taken(photo.bytes)).toEqual(photo);
    expect(crc32(bytesOf('IEND'))).toBe(0xae426082);
  });

  it('WebP: the same, and the flags say what is left', async () => {
    const picture = riffChunk('VP8L', losslessBody(640, 480));
    const extras = [
      riffChunk('EXIF', cameraBlock(3)),
      riffChunk('XMP ', bytesOf(PLACE)),
      riffChunk('ABCD', bytesOf(PLACE)),
    ];
    const source = webp([extendedHead(0x1c, 640, 480), picture, ...extras]);
    const photo = await taken(source);
    expect(photo).toMatchObject({ type: 'image/webp', widthPx: 640, heightPx: 480, orientation: 3 });
    for (const gone of [PLACE, 'Invented Maker', 'XMP ', 'ABCD']) expect(holds(photo.bytes, gone)).toBe(false);
    // Alpha and the turn stay flagged, XMP (4) does not.
    expect(photo.bytes[20]).toBe(0x18);
    expect(Buffer.from(photo.bytes).readUInt32LE(4)).toBe(photo.bytes.length - 8);
    expect(await taken(photo.bytes)).toEqual(photo);
    // Nothing to say beside the picture: the plain form.
    const plain = await taken(webp([extendedHead(0x0c, 640, 480), picture, riffChunk('EXIF', cameraBlock(1))]));
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
  ])('%s', async (_, bytes, code) => {
    expect(await refused(bytes)).toBe(code);
  });

  it.each<[string, Uint8Array]>([
    ['JPEG', jpeg({ widthPx: 65_000, heightPx: 65_000, dataBytes: 1 })],
    ['JPEG, long and thin', jpeg({ widthPx: 20_000, heightPx: 10, dataBytes: 1 })],
    ['JPEG of 64 million', jpeg({ widthPx: 8000, heightPx: 8000, dataBytes: 1 })],
    ['PNG', png(50_000, 50_000)],
    ['PNG beyond 31 bits', png(4_294_967_295, 4_294_967_295)],
    ['WebP by its head', webp([extendedHead(0, 16_000_000, 1), riffChunk('VP8L', losslessBody(4, 4))])],
    ['WebP by its picture', webp([riffChunk('VP8L', losslessBody(16_384, 16_384))])],
  ])('a %s whose header claims too many pixels, with nothing decoded', async (_, bytes) => {
    expect(bytes.length).toBeLessThan(1000);
    expect(await refused(bytes)).toBe('too-many-pixels');
  });

  it('a photo just inside the limit is taken, one row more is not', async () => {
    expect((await taken(jpeg({ widthPx: 8000, heightPx: MOST_PIXELS / 8000 }))).heightPx).toBe(5000);
    expect(await refused(jpeg({ widthPx: 8000, heightPx: MOST_PIXELS / 8000 + 1 }))).toBe('too-many-pixels');
  });

  it('a picture of thousands of passes, a moving one, two frames, a wrong check sum', async () => {
    expect(await refused(jpeg({ scans: 2000 }))).toBe('damaged');
    expect(await refused(webp([extendedHead(2, 4, 4), riffChunk('ANIM', new Uint8Array(6))]))).toBe('moving');
    const bent = png();
    bent[bent.length - 20] ^= 1;
    expect(await refused(bent)).toBe('damaged');
  });

  it('each kind cut off at every byte: refused with a reason, and nothing thrown', async () => {
    const whole = [
      jpeg({ before: [exif(6)] }),
      png(2, 2, [pngChunk('eXIf', cameraBlock(8))]),
      webp([extendedHead(8, 9, 9), riffChunk('VP8L', losslessBody(9, 9)), riffChunk('EXIF', cameraBlock(3))]),
    ];
    for (const bytes of whole) {
      for (let length = 0; length < bytes.length; length++) {
        expect((await checkPhoto(bytes.subarray(0, length))).ok, `${length} of ${bytes.length}`).toBe(false);
      }
      expect((await checkPhoto(bytes)).ok).toBe(true);
    }
  });

  it('every single bent byte gives a photo or a reason, never an exception', async () => {
    const bytes = jpeg({ before: [exif(6)] });
    for (let i = 0; i < bytes.length; i++) {
      for (const value of [0, 0x7f, 0xff]) {
        const bent = bytes.slice();
        bent[i] = value;
        await expect(checkPhoto(bent)).resolves.toHaveProperty('ok');
      }
    }
  });
});

describe('data against the header', () => {
  const zeros = (length: number): Uint8Array => deflateSync(Buffer.alloc(length));
  const reason = async (bytes: Uint8Array): Promise<string> => {
    const reading = await checkPhoto(bytes);
    return reading.ok ? 'taken' : reading.problem.message;
  };

  // Rows by hand: 5 x 3 points, one filter byte each; the passes of an interlaced one stand beside it.
  it.each<[string, PngKind, number]>([
    ['grey, 8 bits', [8, 0, 0, 0, 0], 3 * (1 + 5)],
    ['grey, 1 bit', [1, 0, 0, 0, 0], 3 * (1 + 1)],
    ['grey, 4 bits', [4, 0, 0, 0, 0], 3 * (1 + 3)],
    ['colours, 16 bits', [16, 2, 0, 0, 0], 3 * (1 + 30)],
    ['grey and alpha', [8, 4, 0, 0, 0], 3 * (1 + 10)],
    ['colours and alpha', [8, 6, 0, 0, 0], 3 * (1 + 20)],
    // Columns 0 / 4 / - / 2 / 0 2 4 / 1 3 / all; rows 0 / 0 / - / 0 / 2 / 0 2 / 1.
    ['grey, interlaced', [8, 0, 0, 0, 1], 2 + 2 + 0 + 2 + 4 + 2 * 3 + 6],
  ])(
    'a PNG of 5 x 3 points, %s, unpacks to as many bytes as its header says, and one more or less is refused',
    async (_, kind, due) => {
      const of = (length: number) => png(5, 3, [], [zeros(length)], kind);
      expect(await reason(of(due))).toBe('taken');
      expect(await reason(of(due + 1))).toContain('more is packed into it');
      expect(await reason(of(due - 1))).toContain('less picture in it');
    },
  );

  it('a PNG with gigabytes packed into it is left at once, with little memory', async () => {
    const bomb = png(40, 30, [], [zeros(400_000_000)]);
    expect(bomb.length).toBeLessThan(1_000_000);
    const started = performance.now();
    const before = process.memoryUsage().rss;
    expect(await reason(bomb)).toContain('more is packed into it');
    expect(performance.now() - started).toBeLessThan(1000);
    expect(process.memoryUsage().rss - before).toBeLessThan(50_000_000);
  });

  it('a PNG of 36 million points is unpacked beside other work, not before it', async () => {
    const large = png(6000, 6000, [], [zeros(6000 * 6001)]);
    let turns = 0;
    const timer = setInterval(() => turns++, 1);
    expect(await reason(large)).toBe('taken');
    clearInterval(timer);
    expect(turns).toBeGreaterThan(2);
  });

  it('a PNG without data, with bent data, or with data in pieces', async () => {
    expect(await reason(png(2, 2, [], []))).toContain('no picture in it');
    const empty = png(2, 2, [], [new Uint8Array()]);
    expect(empty.length).toBeLessThan(70);
    expect(await reason(empty)).toMatch(/cannot be unpacked|less picture/);
    expect(await reason(png(2, 2, [], [bytesOf('no rows')]))).toContain('cannot be unpacked');
    const rows = zeros(6);
    expect(await reason(png(2, 2, [], [rows.subarray(0, -3)]))).toContain('cannot be unpacked');
    expect(await reason(png(2, 2, [], [rows.subarray(0, 4), rows.subarray(4)]))).toBe('taken');
  });

  it.each<PngKind>([
    [3, 0, 0, 0, 0],
    [4, 2, 0, 0, 0],
    [8, 1, 0, 0, 0],
    [8, 0, 1, 0, 0],
    [8, 0, 0, 1, 0],
    [8, 0, 0, 0, 2],
  ])('a PNG whose header says %i %i %i %i %i is refused', async (...kind) => {
    expect(await reason(png(2, 2, [], undefined, kind))).toContain('what no PNG says');
  });

  it('a PNG that draws by a palette needs one', async () => {
    const kind: PngKind = [8, 3, 0, 0, 0];
    expect(await reason(png(2, 2, [], undefined, kind))).toContain('colours are missing');
    expect(await reason(png(2, 2, [pngChunk('PLTE', new Uint8Array(3))], undefined, kind))).toBe('taken');
  });

  it('a JPEG needs two bits for every block of its frame, and data in every pass', async () => {
    // 100 x 100 pixels are 13 x 13 blocks: 43 bytes.
    expect(await reason(jpeg({ widthPx: 100, heightPx: 100, dataBytes: 43 - SCAN_DATA.length }))).toBe('taken');
    expect(await reason(jpeg({ widthPx: 100, heightPx: 100, dataBytes: 42 - SCAN_DATA.length }))).toContain(
      'less picture',
    );
    expect(await reason(jpeg({ dataBytes: 0 }))).toContain('passes is empty');
  });

  it('a WebP needs data behind its head', async () => {
    expect(await reason(webp([riffChunk('VP8L', losslessBody(9, 9).subarray(0, 5))]))).toContain('less picture');
    const lossy = (first: number, bytes: number): Uint8Array => {
      const body = Buffer.alloc(bytes);
      body.writeUIntLE((first << 5) | 0x10, 0, 3);
      body.set([0x9d, 0x01, 0x2a, 40, 0, 30, 0], 3);
      return webp([riffChunk('VP8 ', body)]);
    };
    expect(await reason(lossy(20, 60))).toBe('taken');
    expect(await reason(lossy(20, 30))).toContain('less picture');
    expect(await reason(lossy(0, 10))).toContain('less picture');
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
