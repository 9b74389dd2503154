/** Makes a picture's file small: flat areas and sharp letters pack best with no prediction from pixel to pixel. */
import { deflateSync, inflateSync } from 'node:zlib';

const SIGNATURE = 8;
/** Bytes of a chunk around its content: length, type and checksum. */
const AROUND = 12;
/** Bytes of a pixel, 8 bits each of red, green and blue: what the browser writes. */
const PIXEL = 3;

/** The same picture with its rows packed as they are. */
export function packed(png: Buffer): Buffer {
  const chunks: { type: string; content: Buffer }[] = [];
  for (let at = SIGNATURE; at < png.length; ) {
    const length = png.readUInt32BE(at);
    chunks.push({ type: png.toString('latin1', at + 4, at + 8), content: png.subarray(at + 8, at + 8 + length) });
    at += length + AROUND;
  }
  const header = chunks[0]!.content;
  const [width, height, depth, colour] = [header.readUInt32BE(0), header.readUInt32BE(4), header[8], header[9]];
  if (depth !== 8 || colour !== 2) return png;
  const rows = inflateSync(Buffer.concat(chunks.filter(({ type }) => type === 'IDAT').map(({ content }) => content)));
  const pixels = deflateSync(plain(rows, width * PIXEL, height), { level: 9 });
  const parts = [chunk('IHDR', header), chunk('IDAT', pixels), chunk('IEND', Buffer.alloc(0))];
  const small = Buffer.concat([png.subarray(0, SIGNATURE), ...parts]);
  return small.length < png.length ? small : png;
}

/** Rows without the predictions of the PNG specification, section 9.2: each byte as it is. */
function plain(rows: Buffer, width: number, height: number): Buffer {
  for (let y = 0; y < height; y += 1) {
    const start = y * (width + 1);
    const kind = rows[start];
    rows[start] = 0;
    for (let i = start + 1; i <= start + width; i += 1) {
      const left = i - start > PIXEL ? rows[i - PIXEL]! : 0;
      const above = y > 0 ? rows[i - width - 1]! : 0;
      const corner = y > 0 && i - start > PIXEL ? rows[i - width - 1 - PIXEL]! : 0;
      rows[i] = (rows[i]! + predicted(kind, left, above, corner)) & 255;
    }
  }
  return rows;
}

function predicted(kind: number | undefined, left: number, above: number, corner: number): number {
  if (kind === 1) return left;
  if (kind === 2) return above;
  if (kind === 3) return (left + above) >> 1;
  if (kind !== 4) return 0;
  const [byLeft, byAbove, byCorner] = [above - corner, left - corner, left + above - 2 * corner].map(Math.abs) as [number, number, number];
  if (byLeft <= byAbove && byLeft <= byCorner) return left;
  return byAbove <= byCorner ? above : corner;
}

function chunk(type: string, content: Buffer): Buffer {
  const typed = Buffer.concat([Buffer.from(type, 'latin1'), content]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  sum.writeUInt32BE(checksum(typed));
  return Buffer.concat([length, typed, sum]);
}

/** The cyclic redundancy check of PNG chunks. */
function checksum(bytes: Buffer): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
