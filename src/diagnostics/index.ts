export { type FormatOptions, formatProblem, formatSummary } from './format.js';
export { nearest } from './nearest.js';
export {
  type CodeInfo,
  type CodeTable,
  createReport,
  type Place,
  type Problem,
  problemsOf,
  type Report,
  type Severity,
  type Spoils,
  sortProblems,
} from './problem.js';
