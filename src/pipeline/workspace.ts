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
}

/** A workspace in memory, for tests and previews. Paths of assets begin with `assets/`. */
export function memoryWorkspace(
  files: Readonly<Record<string, string | Uint8Array>>,
  assets: Workspace['asset'],
): Workspace {
  const bytes = (path: string) => {
    const file = files[path];
    return typeof file === 'string' ? new TextEncoder().encode(file) : file;
  };
  return {
    read: bytes,
    folders: (path) => {
      const below = `${path}/`;
      const names = Object.keys(files).flatMap((p) =>
        p.startsWith(below) && p.slice(below.length).includes('/')
          ? [p.slice(below.length).split('/')[0] ?? '']
          : [],
      );
      return [...new Set(names)].sort();
    },
    asset: (path) => bytes(`assets/${path}`) ?? assets(path),
  };
}

/** A text file of the workspace, or `undefined`. Tables and packs are UTF-8; a byte order mark is dropped. */
export function readText(read: (path: string) => Uint8Array | undefined, path: string): string | undefined {
  const bytes = read(path);
  return bytes === undefined ? undefined : new TextDecoder('utf-8').decode(bytes);
}
