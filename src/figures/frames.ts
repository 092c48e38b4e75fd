/** Kinds of slide by what stands on the stage. */
export type Master = 'open' | 'say' | 'words' | 'show' | 'ask' | 'answer' | 'do' | 'caution' | 'sources';

export interface FrameRequest {
  readonly master: Master;
  readonly format: '16:9' | '4:3';
  /** Lines of words on the shelf's front: 2 to 4; its height follows. */
  readonly shelfLines: 2 | 3 | 4;
  /** Height of the title as set, in pixels; 0 where the stage needs no title. */
  readonly titleHeight: number;
  /** Columns on the stage of `ask` and `answer`. Default 3. */
  readonly columns?: number;
}

/** Pixels from the slide's upper left corner. */
export interface FrameBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The places of a slide by name; see `BOXES` for which master has which. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Throws on a name that the master does not have. */
  box(name: BoxName): FrameBox;
}

/** What a master has beside `slide`, `stage`, `title`, `shelf`, `words` and `number`. */
const BOXES = {
  open: ['audience', 'vessels'],
  say: ['sentence', 'vessels'],
  words: ['text', 'vessels'],
  show: ['figure'],
  ask: ['column-1', 'column-2', 'column-3', 'column-4'],
  answer: ['column-1', 'column-2', 'column-3', 'column-4'],
  do: ['minutes', 'steps', 'vessels'],
  caution: ['bar', 'heads', 'lines', 'caution'],
  sources: ['list'],
} as const satisfies Readonly<Record<Master, readonly string[]>>;

export type BoxName =
  | 'slide'
  | 'stage'
  | 'title'
  | 'shelf'
  | 'words'
  | 'number'
  | (typeof BOXES)[Master][number];

const SIDE = 56;
const TOP = 44;
const SHELF_HEIGHT = { 2: 124, 3: 164, 4: 204 } as const;
const SHELF_LINE = 6;
const NUMBER_WIDTH = 60;
const NUMBER_CLEAR = 48;

type Style = Readonly<Record<string, string | number>>;

/** An empty box that is laid out like CSS flex; its key is the name by which its place is asked for. */
interface Node {
  readonly type: 'div';
  readonly key: string;
  readonly props: { readonly style: Style; readonly children: readonly Node[] };
}

function node(key: string, style: Style, ...children: readonly Node[]): Node {
  // By default satori counts padding on top of widths, as CSS did before border-box.
  return {
    type: 'div',
    key,
    props: { style: { display: 'flex', boxSizing: 'border-box', ...style }, children },
  };
}

const column: Style = { flexDirection: 'column' };
const row: Style = { flexDirection: 'row' };

/** What stands between title and shelf, by master. */
function stageOf({ master, format, titleHeight, columns = 3 }: FrameRequest): readonly Node[] {
  const wide = format === '16:9';
  switch (master) {
    case 'open':
      return [
        node(
          'body',
          { ...row, flex: 1, justifyContent: 'space-between' },
          node('audience', { width: wide ? 620 : 400, marginTop: 16 }),
          node('vessels', { flex: 1 }),
        ),
      ];
    case 'say':
      return [
        node(
          'body',
          { ...row, flex: 1, justifyContent: 'space-between' },
          node('sentence', { width: wide ? 800 : 560 }),
          node('vessels', { width: wide ? 340 : 260 }),
        ),
      ];
    case 'words':
      return [
        node(
          'body',
          { ...row, flex: 1, justifyContent: 'space-between' },
          node('text', { width: wide ? 780 : 540, marginTop: 20 }),
          node('vessels', { width: wide ? 340 : 260 }),
        ),
      ];
    case 'show':
      return [node('figure', { flex: 1, marginTop: 22 })];
    case 'ask':
    case 'answer':
      return [
        node(
          'body',
          { ...row, flex: 1, marginTop: 24, gap: wide ? 32 : 16 },
          ...Array.from({ length: columns }, (_, i) => node(`column-${i + 1}`, { flex: 1 })),
        ),
      ];
    case 'do':
      return [
        node('minutes', {
          position: 'absolute',
          top: TOP,
          right: SIDE,
          width: wide ? 560 : 300,
          height: 100,
        }),
        node(
          'body',
          { ...row, flex: 1, marginTop: 24, justifyContent: 'space-between' },
          node('steps', { width: wide ? 700 : 560 }),
          node('vessels', { flex: 1 }),
        ),
      ];
    case 'caution':
      return [
        node(
          'caution',
          { ...row, flex: 1, marginTop: titleHeight > 0 ? 20 : 0, marginBottom: 24 },
          node('bar', { width: 44 }),
          node('heads', { width: 254, marginLeft: 28, marginTop: 30, marginRight: 16 }),
          node('lines', { flex: 1, marginTop: 30, marginRight: 37, marginBottom: 26 }),
        ),
      ];
    case 'sources':
      return [node('list', { flex: 1, marginTop: 20 })];
  }
}

function slideOf(request: FrameRequest, width: number): Node {
  const { shelfLines, titleHeight } = request;
  return node(
    'slide',
    { ...column, width, height: 720 },
    node(
      'stage',
      { ...column, flex: 1, paddingTop: TOP, paddingLeft: SIDE, paddingRight: SIDE },
      node('title', { height: titleHeight }),
      ...stageOf(request),
    ),
    node(
      'shelf',
      {
        ...row,
        height: SHELF_HEIGHT[shelfLines],
        paddingTop: SHELF_LINE,
        paddingLeft: SIDE,
        paddingRight: SIDE,
        alignItems: 'center',
      },
      node('words', { flex: 1, height: shelfLines * 40, marginRight: NUMBER_CLEAR }),
      node('number', { width: NUMBER_WIDTH, height: 40 }),
    ),
  );
}

/** Lays frames out and remembers them: a deck has few different ones. */
export type FrameMaker = (request: FrameRequest) => Promise<Frame>;

export function createFrames(): FrameMaker {
  const kept = new Map<string, Promise<Frame>>();
  return (request) => {
    const key = JSON.stringify([
      request.master,
      request.format,
      request.shelfLines,
      request.titleHeight,
      request.columns ?? 3,
    ]);
    const before = kept.get(key);
    if (before) return before;
    const made = makeFrame(request);
    kept.set(key, made);
    return made;
  };
}

/**
 * The places of a slide's parts. satori lays out boxes without any text in them, so it needs no font;
 * the words are set by our own engine and put where the boxes stand. Frames run from left to right; who
 * paints from right to left mirrors what it paints.
 */
async function makeFrame(request: FrameRequest): Promise<Frame> {
  const width = request.format === '16:9' ? 1280 : 960;
  const boxes = new Map<string, FrameBox>();
  // Loaded only when a deck is laid out: most commands draw no slide.
  const { default: satori } = await import('satori');
  await satori(slideOf(request, width), {
    width,
    height: 720,
    fonts: [],
    // Without this, places are rounded to whole pixels and columns differ by one.
    pointScaleFactor: 0,
    onNodeDetected: ({ key, left, top, width: w, height: h }) => {
      if (key !== null && key !== undefined) boxes.set(String(key), { x: left, y: top, width: w, height: h });
    },
  });
  return {
    width,
    height: 720,
    box(name) {
      const found = boxes.get(name);
      if (!found) throw new Error(`A slide of kind ${request.master} has no place for ${name}.`);
      return found;
    },
  };
}
