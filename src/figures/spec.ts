// Contract

/** Line drawings on a 24 grid that stand for a form: sack of dried beans, can, strainer … */
export type SignName =
  | 'bag'
  | 'can'
  | 'strainer'
  | 'frozen'
  | 'leaf'
  | 'jar'
  | 'scissors'
  | 'pencil'
  | 'pot'
  | 'cup';

/** The data behind a figure, for readers that see no picture. First column heads the rows. */
export interface FigureTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Three layers of text alternative; without them a figure does not compile. */
export interface Alternative {
  /** At most 120 characters: what it is. */
  readonly label: string;
  /** Two to five sentences with all values at this level. On a blank worksheet it gives no answer away. */
  readonly reading: string;
  readonly table: FigureTable;
}

interface FigureBase {
  /** The directive's id, unique in the lesson. */
  readonly id: string;
  readonly alternative: Alternative;
  /** Ids of all numbers that it shows or tells. */
  readonly numbers: readonly string[];
  /** `shown` prints values; `blank` leaves them to the learner; `key` prints them as answers. */
  readonly mode: 'shown' | 'blank' | 'key';
}

/** A dot's place on a lane. `value` is null when it is not known. */
export interface LaneDot {
  readonly letter: string;
  readonly value: number | null;
  /** As printed, such as `360 mg` or `not known`. */
  readonly text: string;
  /** Id of the number. */
  readonly number: string;
}

/** A line from zero with a lettered dot a row. Each lane has a scale of its own. */
export interface Lane {
  readonly name: string;
  readonly note?: string;
  readonly dots: readonly LaneDot[];
  /** At most one in a figure: an arrow from dot to dot with its word. */
  readonly look?: { readonly from: string; readonly to: string; readonly word: string };
}

/** Rows compared on several measures: a legend, then a lane for each measure. */
export interface DotLanes extends FigureBase {
  readonly kind: 'dot-lanes';
  readonly rows: readonly { readonly letter: string; readonly sign: SignName; readonly words: string }[];
  readonly lanes: readonly Lane[];
}

/** One row of bricks. All in the figure's unit; `sure` ≤ `possible` ≤ `total`. */
export interface BrickRow {
  readonly name: string;
  readonly note: string;
  readonly sign: SignName;
  readonly total: number;
  /** What is there for sure (solid). */
  readonly sure: number;
  /** What may be there at most (hatched up to here, dashed beyond). */
  readonly possible: number;
  /** Both ends as printed, where sure and possible differ. */
  readonly ends?: { readonly low: string; readonly high: string; readonly words: string };
  /** The word under the bracket of the unsure part; look here. */
  readonly look?: string;
}

/** An amount counted in bricks, before and after. */
export interface BrickRows extends FigureBase {
  readonly kind: 'brick-rows';
  /** What one brick is worth, in the rows' unit. */
  readonly worth: number;
  readonly rows: readonly BrickRow[];
  readonly words: { readonly sure: string; readonly unsure: string; readonly gone: string };
}

/** One part of a whole, in percent. */
export interface ShareRow {
  readonly name: string;
  /** `null` is not known. */
  readonly share: number | null;
  /** As printed, such as `57%` or `not known`. */
  readonly text: string;
  /** Id of the number. */
  readonly number: string;
  /** A span to hold the share against, as a bracket over the row. It is no answer: a blank shows it too. */
  readonly range?: { readonly low: number; readonly high: number; readonly words: string };
}

/** Parts of one whole, each a row of twenty bricks of 5 percent. */
export interface ShareRows extends FigureBase {
  readonly kind: 'share-rows';
  readonly rows: readonly ShareRow[];
  /** What a brick and a bracket mean. */
  readonly words: { readonly brick: string; readonly range: string };
}

/** Minutes of a day or a week that count, those of vigorous activity already doubled. */
export interface CountedMinutes {
  readonly moderate: number;
  readonly vigorous: number;
  /** As printed; empty when nothing counts. */
  readonly text: string;
  /** Id of the number. */
  readonly number: string;
}

export interface WeekDay extends CountedMinutes {
  readonly name: string;
  /** Ringed. */
  readonly strength: boolean;
  /** Marked with the letter for balance. */
  readonly balance: boolean;
}

/** Seven columns of ten-minute bricks, and their sum against the minutes a week that guidelines ask for. */
export interface WeekBricks extends FigureBase {
  readonly kind: 'week-bricks';
  readonly days: readonly WeekDay[];
  readonly sum: CountedMinutes;
  /** Rules on the sum, in ascending order, with their words. */
  readonly goals: readonly { readonly at: number; readonly words: string }[];
  readonly words: {
    /** Heads of the columns and of the sum. */
    readonly days: string;
    readonly sum: string;
    readonly brick: string;
    readonly vigorous: string;
    readonly strength: string;
    readonly balance: string;
    /** One letter. */
    readonly balanceLetter: string;
  };
}

/** One food on a measure. */
export interface MeasurePour {
  readonly name: string;
  /** As printed, such as `1/2 cup`, and the id of its number. */
  readonly amount: string;
  readonly number: string;
  /** What that comes to, such as `100 g`, in lines below one another; none on a blank. */
  readonly under: readonly { readonly text: string; readonly number?: string }[];
  /** The part of the measure up to its line: above 0, 1 for a full one. */
  readonly share: number;
  /** How often it is filled, when that is more than once. */
  readonly how?: string;
}

/** A measure that people own, with the foods that are poured into it. */
export interface MeasureVessel {
  readonly shape: 'cup' | 'spoon';
  /** What it holds when it is full to the rim. */
  readonly milliliters: number;
  readonly name: string;
  readonly note: string;
  readonly pours: readonly MeasurePour[];
}

/** Cups and spoons in outline, each with a line for what is poured; at true size on paper where they fit. */
export interface MeasureRow extends FigureBase {
  readonly kind: 'measure-row';
  readonly vessels: readonly MeasureVessel[];
  readonly words: {
    /** Beside a line of 50 mm: the claim of true size, to hold a ruler to. */
    readonly check: { readonly text: string; readonly number?: string };
    /** Where they had to be drawn smaller. */
    readonly smaller: string;
  };
}

/** One rung of a ladder of costs. */
export interface CostRung {
  readonly letter: string;
  readonly sign: SignName;
  readonly words: string;
  /** In the coin of the figure; `null` where no price may be printed. */
  readonly value: number | null;
  /** As printed: `28¢`, `1 brick`, or what to do where there is no price. Empty on a blank. */
  readonly text: string;
  /** Id of the number, where there is one. */
  readonly number?: string;
}

/** What one cup of each food costs: rungs built of bricks, in the order in which they are read. */
export interface CostRungs extends FigureBase {
  readonly kind: 'cost-rungs';
  /** What one brick is worth, in the coin of the figure. */
  readonly worth: number;
  /** Rungs are rounded to whole bricks, for readers who count. */
  readonly whole: boolean;
  readonly rungs: readonly CostRung[];
  /** Round amounts along the foot, from zero, with their words. */
  readonly posts: readonly { readonly at: number; readonly words: string; readonly number: string }[];
}

/** How many people gave one answer, in one round of asking. */
export interface TallyLine {
  /** When it was asked, where it was asked twice. */
  readonly word: string;
  /** `null` until somebody has counted. */
  readonly people: number | null;
  /** As printed; empty until somebody has counted. */
  readonly text: string;
  /** As printed; empty when fewer than twenty people answered. */
  readonly percent: string;
}

/** Answers of a show of hands, each with boxes to fill: two lines of fifteen, or one line for each round. */
export interface TallyGrid extends FigureBase {
  readonly kind: 'tally-grid';
  readonly rows: readonly {
    readonly letter: string;
    readonly name: string;
    readonly lines: readonly TallyLine[];
  }[];
  /** People that one box stands for. */
  readonly worth: number;
  /** Says so, where it is more than one; empty otherwise. */
  readonly words: { readonly box: string };
}

/** Drawn around counters and in bars, so that kinds are told apart without color. */
export type DishTexture = 'waves' | 'bars' | 'dots';
export type DishShape = 'bowl' | 'plate' | 'tray' | 'lunch-box' | 'shared-pot';

/** A kind of food in a dish. */
export interface DishKindLook {
  /** One letter, on the counters. */
  readonly letter: string;
  readonly texture: DishTexture;
  /** Its word in the bar. */
  readonly word: string;
  /** What is said of it beside the dish, such as `3 of 12: protein`, and its foods, the longest wording first. */
  readonly name: string;
  readonly notes: readonly string[];
  /** Counters, as printed in the bar, and the id of the number; 0 and nothing on a blank. */
  readonly parts: number;
  readonly text: string;
  readonly number?: string;
  /** Counters of the goal, which is no answer. */
  readonly goal: number;
  readonly goalText: string;
  readonly goalNumber?: string;
  /** On a slide that fills step by step: not yet there, just come, or there. */
  readonly look: 'waiting' | 'new' | 'there';
}

/** A food in some of the twelve counters. */
export interface DishCounters {
  /** Place of its kind among the kinds. */
  readonly kind: number;
  readonly picture: string;
  readonly name: string;
  readonly note: string;
  readonly number?: string;
  readonly parts: number;
  /** Ringed. */
  readonly changed?: boolean;
}

/** A dish from above: twelve counters, filled from the lowest row upward in the order of the foods. */
export interface Dish extends FigureBase {
  readonly kind: 'dish';
  readonly shape: DishShape;
  /** Whether words stand beside each food or beside each kind. */
  readonly by: 'food' | 'kind';
  readonly kinds: readonly DishKindLook[];
  /** In the order of the kinds; none on a blank, whose counters are empty. */
  readonly foods: readonly DishCounters[];
  /** Words of the two rows of the bar; without a goal there is none. */
  readonly bar?: { readonly own: string; readonly goal: string };
  /** What stands beside the dish; a slide prints it. */
  readonly beside: string;
}

/** One side of a swap. */
export interface TurnSide {
  readonly picture: string;
  readonly name: string;
  readonly note: string;
}

/** What moved, from the dish before to the dish after. */
export interface TurnLane {
  readonly name: string;
  readonly before: number;
  readonly after: number;
  /** Both values as printed, and whether the nutrient is lost. */
  readonly text: string;
  readonly numbers: readonly string[];
}

/** One dish before and after, side by side; the counters that changed are ringed. */
export interface DishTurn extends FigureBase {
  readonly kind: 'dish-turn';
  readonly shape: DishShape;
  readonly kinds: readonly Pick<DishKindLook, 'letter' | 'texture'>[];
  readonly before: { readonly title: string; readonly foods: readonly DishCounters[] };
  /** None on a blank. */
  readonly after?: { readonly title: string; readonly foods: readonly DishCounters[] };
  /** Only the swaps are drawn where there are no dishes to draw, for beginning readers. */
  readonly dishes: boolean;
  readonly swaps: readonly { readonly old: TurnSide; readonly fresh: TurnSide }[];
  readonly lanes: readonly TurnLane[];
  /** What is lost, which pages say beside the figure. */
  readonly lost: string;
  readonly words: { readonly before: string; readonly after: string; readonly changed: string };
}

/** One food for another, with the job that both do. */
export interface SwapPair {
  readonly old: TurnSide;
  readonly fresh: TurnSide;
  /** Stands on the arrow; may be empty. */
  readonly job: string;
  /** What changes most. */
  readonly lanes: readonly TurnLane[];
  /** What is lost, and what the swap hangs on; a slide prints it, pages say it beside the figure. */
  readonly lost: string;
}

/** Foods in pairs, joined by an arrow that carries their job, with what changes beneath. A slide draws one pair. */
export interface Swaps extends FigureBase {
  readonly kind: 'swaps';
  readonly rows: readonly SwapPair[];
  readonly words: { readonly before: string; readonly after: string };
}

/** How much less there is at a month, from the least to the most, in the marks' unit. */
export interface BandPoint {
  readonly month: number;
  readonly least: number;
  readonly most: number;
}

/** A change from today that is not sure: a hatched band below the line of today, with posts at named months. */
export interface ChangeBand extends FigureBase {
  readonly kind: 'change-band';
  /** Months from today to the far end. */
  readonly months: number;
  /** From today on, months ascending. */
  readonly points: readonly BandPoint[];
  /** Marks down the axis, ascending; the last is the scale's foot. Without words only the guides are drawn. */
  readonly marks: readonly { readonly at: number; readonly words: string }[];
  readonly ticks: readonly { readonly month: number; readonly words: string }[];
  /** Ascending; `words` is the range as printed. */
  readonly posts: readonly (BandPoint & { readonly words: string; readonly number: string })[];
  /** Why nothing is drawn after the last post; look here. */
  readonly stop?: { readonly head: string; readonly why: string };
  /** Two dashed lines over the width, and what lies between them. */
  readonly between?: { readonly low: number; readonly high: number; readonly words: string };
  readonly today: string;
}

/** Lines side by side, of which one is real. Places are shares of the width and of the height. */
export interface LineChoice extends FigureBase {
  readonly kind: 'line-choice';
  readonly lines: readonly {
    readonly letter: string;
    readonly points: readonly { readonly along: number; readonly down: number }[];
    /** Only on the key: which it is. */
    readonly verdict?: { readonly real: boolean; readonly words: string };
  }[];
  readonly words: {
    readonly from: string;
    readonly to: string;
    /** Says on the figure itself that not every line is real. */
    readonly warning: string;
  };
}

/** One step of a plan. */
export interface StepTile {
  /** On its tab. */
  readonly month: string;
  /** Empty on a blank, which has lines to write on. */
  readonly action: string;
  /** What the step changes, parts with numbers carry their ids; none where nothing is told. */
  readonly effect: readonly { readonly text: string; readonly number?: string }[];
  /** Look here: the step of this month. */
  readonly current: boolean;
}

/** Small steps in the order of their months, each on a tile with boxes to check. */
export interface StepTiles extends FigureBase {
  readonly kind: 'step-tiles';
  readonly tiles: readonly StepTile[];
  /** What a box is for. */
  readonly words: { readonly boxes: string };
}

/** What can be drawn. A new kind fails to compile wherever it is not yet handled. */
export type FigureSpec =
  | DotLanes
  | BrickRows
  | ShareRows
  | WeekBricks
  | MeasureRow
  | CostRungs
  | TallyGrid
  | Dish
  | DishTurn
  | Swaps
  | ChangeBand
  | LineChoice
  | StepTiles;
