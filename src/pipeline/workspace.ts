/**
 * The outside world as the pipeline sees it: files by their path with forward slashes. The one on
 * disk is in cli/; tests use one in memory.
 */
export interface Workspace {
  /** A file of the workspace, such as `lessons/beans-three-ways/lesson.md`; `undefined` when it is not there. */
  readonly read: (path: string) => Uint8Array | undefined;
  /** Names of the folders in a folder of the workspace, sorted; none when it is not there. */
  readonly folders: (path: string) => readonly string[];
  /** A file of the program's own assets, such as `fonts/…`. */
  readonly asset: (path: string) => Uint8Array | undefined;
  /** A file of an installed package, by its specifier, such as a WebAssembly module. */
  readonly module: (specifier: string) => Uint8Array;
}

/** A workspace in memory, for tests and previews; the program's own files come from `program`. */
export function memoryWorkspace(
  files: Readonly<Record<string, string | Uint8Array>>,
  program: Pick<Workspace, 'asset' | 'module'>,
): Workspace {
  const bytes = (path: string) => {
    const file = files[path];
    return typeof file === 'string' ? new TextEncoder().encode(file) : file;
  };
  const folders = (path: string) => {
    const below = `${path}/`;
    const paths = Object.keys(files).filter((p) => p.startsWith(below));
    const names = paths.map((p) => p.slice(below.length).split('/')).filter((parts) => parts.length > 1);
    return [...new Set(names.map(([name = '']) => name))].sort();
  };
  return {
    read: bytes,
    folders,
    asset: (path) => bytes(`assets/${path}`) ?? program.asset(path),
    module: program.module,
  };
}

/** A text file of the workspace, or `undefined`. Tables and packs are UTF-8; a byte order mark is dropped. */
export function readText(read: (path: string) => Uint8Array | undefined, path: string): string | undefined {
  const bytes = read(path);
  return bytes === undefined ? undefined : new TextDecoder('utf-8').decode(bytes);
}
