import { caution } from './caution/index.js';
import { cite } from './cite/index.js';
import type { Directive } from './contract.js';
import { cupCost } from './cup-cost/index.js';
import { doing } from './do/index.js';
import { energySplit } from './energy-split/index.js';
import { formCompare } from './form-compare/index.js';
import { goalCard } from './goal-card/index.js';
import { handsUp } from './hands-up/index.js';
import { level } from './level/index.js';
import { number } from './n/index.js';
import { only } from './only/index.js';
import { paceChart } from './pace-chart/index.js';
import { plateMap } from './plate-map/index.js';
import { plateTurn } from './plate-turn/index.js';
import { portionGuide } from './portion-guide/index.js';
import { quiz } from './quiz/index.js';
import { rinseDrop } from './rinse-drop/index.js';
import { safeFood } from './safe-food/index.js';
import { say } from './say/index.js';
import type { ServicePiece } from './service.js';
import { show } from './show/index.js';
import { slide } from './slide/index.js';
import { staff } from './staff/index.js';
import { stepPlan } from './step-plan/index.js';
import { swapBoard } from './swap-board/index.js';
import { term } from './t/index.js';
import { teachBack } from './teach-back/index.js';
import { weekOfMoves } from './week-of-moves/index.js';
import { worksheet } from './worksheet/index.js';
import { write } from './write/index.js';

/** Every directive that a lesson may use. To add one: its folder and its line here. */
export const DIRECTIVES: readonly Directive[] = [
  caution,
  cupCost,
  energySplit,
  formCompare,
  goalCard,
  handsUp,
  paceChart,
  plateMap,
  plateTurn,
  portionGuide,
  quiz,
  rinseDrop,
  safeFood,
  show,
  stepPlan,
  swapBoard,
  teachBack,
  weekOfMoves,
  write,
];

/** Containers and running text of the lesson itself, each with a folder that shows how it is written. */
export const SERVICE: readonly ServicePiece[] = [
  slide,
  say,
  doing,
  level,
  only,
  worksheet,
  staff,
  number,
  term,
  cite,
];
