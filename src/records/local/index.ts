export { isDay, monthsLater } from './calendar.js';
export { localCodes } from './codes.js';
export { LOCAL_FOODS_FILE, type LocalFood, readLocalFoods } from './foods.js';
export { type LocalLine, type LocalLines, lineOn, NO_LINES, readLines } from './lines.js';
export {
  LOCAL_NOTICES_FILE,
  type Notice,
  type NoticePage,
  noticeSource,
  noticesFor,
  readNotices,
} from './notices.js';
export type { LocalPrice } from './price-row.js';
export {
  LOCAL_PRICES_FILE,
  type LocalPrices,
  NO_PRICES,
  noPricesAt,
  PRICE_HEADINGS,
  readPrices,
} from './prices.js';
export { PACK_FILES, type PackFile, packJsonSchema } from './schemas.js';
export {
  type InterpreterLine,
  interpreterLine,
  type LocalPlace,
  readSite,
  type Site,
} from './site.js';
