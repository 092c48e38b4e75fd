export {
  IMPORT_FILES,
  type Import,
  type ImportedFood,
  type ImportFile,
  type Skipped,
  startImport,
} from './import.js';
export {
  IMPORTED_FOLDER,
  type ImportedTable,
  importedLines,
  type OpenImport,
  openImported,
} from './table.js';
