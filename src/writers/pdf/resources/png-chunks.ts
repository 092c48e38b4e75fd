/** What the chunks of a PNG say, with the picture still packed. */
export interface PngFile {
  readonly width: number;
  readonly height: number;
  /** Bits a sample. */
  readonly bits: number;
  /** Samples a pixel: 1 gray or palette, 2 gray and alpha, 3 RGB, 4 RGB and alpha. */
  readonly channels: number;
  readonly hasAlpha: boolean;
  readonly interlaced: boolean;
  /** Three bytes a color. */
  readonly palette?: Uint8Array;
  /** The body of tRNS. */
  readonly transparency?: Uint8Array;
  /** The joined IDAT bodies: a zlib stream. */
  readonly data: Uint8Array;
}

const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const CHANNELS: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };

/** Reads the chunks that matter, by the W3C's PNG specification. Anything broken throws. */
export function readChunks(bytes: Uint8Array): PngFile {
  if (!SIGNATURE.every((byte, index) => bytes[index] === byte)) throw new Error('The picture is no PNG.');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const data: Uint8Array[] = [];
  let head: DataView | undefined;
  let ended = false;
  let palette: Uint8Array | undefined;
  let transparency: Uint8Array | undefined;
  for (let at = 8; !ended && at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const kind = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    const body = bytes.subarray(at + 8, at + 8 + length);
    if (body.length < length) throw new Error('The PNG ends in the middle.');
    if (kind === 'IHDR' && length >= 13) head = new DataView(body.buffer, body.byteOffset, 13);
    else if (kind === 'PLTE') palette = body;
    else if (kind === 'tRNS') transparency = body;
    else if (kind === 'IDAT') data.push(body);
    else if (kind === 'IEND') ended = true;
    at += length + 12;
  }
  if (!ended) throw new Error('The PNG ends in the middle.');
  if (!head || data.length === 0) throw new Error('The PNG has no picture in it.');
  const colorType = head.getUint8(9);
  const channels = CHANNELS[colorType];
  if (channels === undefined || (colorType === 3 && !palette))
    throw new Error(`The PNG has a kind of color that does not exist: ${colorType}.`);
  return {
    width: head.getUint32(0),
    height: head.getUint32(4),
    bits: head.getUint8(8),
    channels,
    hasAlpha: colorType >= 4,
    interlaced: head.getUint8(12) === 1,
    data: data.length === 1 && data[0] ? data[0] : new Uint8Array(Buffer.concat(data)),
    ...(colorType === 3 && palette ? { palette } : {}),
    ...(colorType < 4 && transparency ? { transparency } : {}),
  };
}
