import type { ImageParts } from './image-parts.js';

interface Segment {
  readonly marker: number;
  /** The segment from its marker on; for a scan also the packed picture after it. */
  readonly bytes: Uint8Array;
}

/**
 * A JPEG as PDF wants it: its own compression, with every segment taken out that does not help to
 * draw it. Cameras write where and when a picture was taken and add small copies of it; that must
 * not go home with a handout. Bytes that are no JPEG throw: pictures were checked with the lesson.
 */
export function readJpeg(bytes: Uint8Array): ImageParts {
  const segments = readSegments(bytes);
  const frame = segments.find((s) => isFrame(s.marker))?.bytes;
  if (!frame || frame.length < 10) throw new Error('The JPEG does not say how large it is.');
  const components = frame[9] ?? 0;
  const space = components === 1 ? 'DeviceGray' : components === 4 ? 'DeviceCMYK' : 'DeviceRGB';
  const kept = segments.filter((s) => !isNote(s.marker)).map((s) => s.bytes);
  return {
    width: ((frame[7] ?? 0) << 8) | (frame[8] ?? 0),
    height: ((frame[5] ?? 0) << 8) | (frame[6] ?? 0),
    bits: frame[4] ?? 8,
    space,
    data: new Uint8Array(Buffer.concat([Buffer.of(0xff, 0xd8), ...kept, Buffer.of(0xff, 0xd9)])),
    packed: { Filter: 'DCTDecode' },
    // Programs that write APP14 store the four inks upside down.
    ...(space === 'DeviceCMYK' && segments.some((s) => s.marker === 0xee) ? { inverted: true } : {}),
  };
}

/** Segments up to the picture's end (ITU-T T.81, Annex B). */
function readSegments(bytes: Uint8Array): Segment[] {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) throw new Error('The picture is no JPEG.');
  const out: Segment[] = [];
  let at = 2;
  for (;;) {
    while (bytes[at] === 0xff && bytes[at + 1] === 0xff) at++;
    const marker = bytes[at + 1];
    if (bytes[at] !== 0xff || marker === undefined) throw new Error('The JPEG ends in the middle.');
    if (marker === 0xd9) return out;
    const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    let end = at + 2 + length;
    if (length < 2 || end > bytes.length) throw new Error('The JPEG ends in the middle.');
    if (marker === 0xda) end = endOfScan(bytes, end);
    out.push({ marker, bytes: bytes.subarray(at, end) });
    at = end;
  }
}

/** In packed data FF is followed by 0 or by a restart mark; anything else begins the next segment. */
function endOfScan(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at < bytes.length) {
    const next = bytes[at + 1] ?? 0;
    if (bytes[at] === 0xff && next !== 0 && !(next >= 0xd0 && next <= 0xd7)) return at;
    at++;
  }
  return at;
}

/** Start of frame, of any kind of coding. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

/** Comments and notes of programs, but for APP14, which says how the colors were turned. */
function isNote(marker: number): boolean {
  return (marker >= 0xe0 && marker <= 0xef && marker !== 0xee) || marker === 0xfe;
}
