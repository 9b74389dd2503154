/**
 * A font in which every letter is the same block, made here: with it a page is laid out alike on every machine,
 * whatever fonts are installed. Tables as in the OpenType specification, no more of them than browsers ask for.
 */

/** Font units of an em, and of what a letter takes. */
const EM = 1000;
const WIDTH = 520;
const [ABOVE, BELOW] = [900, 220];
const GLYPHS = 2;

const u16 = (...values: number[]): Buffer => Buffer.concat(values.map((value) => Buffer.from([(value >> 8) & 255, value & 255])));
const u32 = (...values: number[]): Buffer => {
  const bytes = Buffer.alloc(values.length * 4);
  values.forEach((value, i) => bytes.writeUInt32BE(value >>> 0, i * 4));
  return bytes;
};

/** The CSS that puts the whole page into blocks. */
export function inBlocks(): string {
  return `@font-face { font-family: Blocks; src: url(data:font/ttf;base64,${font().toString('base64')}); }
    *, *::before, *::after { font-family: Blocks !important; font-weight: 400 !important; font-style: normal !important;
      text-rendering: geometricPrecision !important; }`;
}

function font(): Buffer {
  const tables: [tag: string, content: Buffer][] = [
    ['OS/2', os2()],
    ['cmap', cmap()],
    ['glyf', block()],
    ['head', head()],
    ['hhea', Buffer.concat([u32(0x10000), u16(ABOVE, -BELOW, 0, WIDTH, 0, 0, WIDTH, 1, 0, 0, 0, 0, 0, 0, 0, GLYPHS)])],
    ['hmtx', u16(WIDTH, 0, WIDTH, 0)],
    ['loca', u32(0, 0, block().length)],
    ['maxp', Buffer.concat([u32(0x10000), u16(GLYPHS, 4, 1, 0, 0, 2, 0, 0, 0, 0, 0, 0, 0, 0)])],
    ['name', names()],
    ['post', Buffer.concat([u32(0x30000, 0), u16(0, 0), u32(1, 0, 0, 0, 0)])],
  ];
  const padded = tables.map(([, content]) => Buffer.concat([content, Buffer.alloc((4 - (content.length % 4)) % 4)]));
  let at = 12 + tables.length * 16;
  const directory = tables.map(([tag, content], i) => {
    const entry = Buffer.concat([Buffer.from(tag, 'latin1'), u32(checksum(padded[i]!), at, content.length)]);
    at += padded[i]!.length;
    return entry;
  });
  // The search fields for ten tables: 16 times the largest power of two, its exponent, and the rest.
  return Buffer.concat([u32(0x10000), u16(tables.length, 128, 3, 32), ...directory, ...padded]);
}

function checksum(table: Buffer): number {
  let sum = 0;
  for (let at = 0; at < table.length; at += 4) sum = (sum + table.readUInt32BE(at)) >>> 0;
  return sum;
}

/** Every character is glyph 1: a table of format 13, many to one. */
function cmap(): Buffer {
  return Buffer.concat([u16(0, 1, 3, 10), u32(12), u16(13, 0), u32(28, 0, 1, 0x20, 0x10ffff, 1)]);
}

/** One contour of four corners. */
function block(): Buffer {
  const [right, top] = [WIDTH - 40, 700];
  const onCurve = Buffer.from([1, 1, 1, 1]);
  return Buffer.concat([u16(1, 40, 0, right, top, 3, 0), onCurve, u16(40, 0, right - 40, 0), u16(0, top, 0, -top)]);
}

function head(): Buffer {
  const [revision, adjustment, magic] = [0x10000, 0, 0x5f0f3cf5];
  const times = u32(0, 0, 0, 0);
  return Buffer.concat([u32(0x10000, revision, adjustment, magic), u16(3, EM), times, u16(0, 0, WIDTH, 700, 0, 8, 2, 1, 0)]);
}

function os2(): Buffer {
  const common = u16(4, WIDTH, 400, 5, 0, 650, 600, 0, 75, 650, 600, 0, 350, 50, 250, 0);
  const panose = Buffer.alloc(10);
  const ranges = u32(1, 0, 0, 0);
  const rest = u16(0x40, 0x20, 0xffff, ABOVE, -BELOW, 0, ABOVE, BELOW);
  return Buffer.concat([common, panose, ranges, Buffer.from('none'), rest, u32(1, 0), u16(500, 700, 0, 0x20, 1)]);
}

function names(): Buffer {
  const text = Buffer.from('Blocks', 'utf16le').swap16();
  const ids = [1, 2, 3, 4, 6];
  const records = ids.map((id) => u16(3, 1, 0x409, id, text.length, 0));
  return Buffer.concat([u16(0, ids.length, 6 + ids.length * 12), ...records, text]);
}
