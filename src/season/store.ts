import type { ExactSolver } from '../stats/exact-solver.ts';

/** A name in a folder. */
export interface FolderEntry {
  readonly name: string;
  readonly isFolder: boolean;
}

/** A file to be written, by its name; without a text it is taken away when an earlier run left one. */
export interface OutputFile {
  readonly name: string;
  readonly text: string | Uint8Array | null;
}

/** Where a season's files are read. Paths are relative to the season folder, with `/` between names; `''` is the season. */
export interface SeasonFiles {
  /** What a folder holds, in name order; nothing when it is not there. */
  readonly list: (folder: string) => Promise<readonly FolderEntry[]>;
  /**
   * The bytes of a file, read again at every call; null when it is not there.
   *
   * @throws UserProblem when it is there and cannot be read: a sheet that is there is never left out in silence
   */
  readonly read: (path: string) => Promise<Uint8Array | null>;
  /** A path as the user would name it. */
  readonly shown: (path: string) => string;
}

/** A file to be written into a season, by its path there. */
export interface FileChange extends OutputFile {
  /** What must still stand there for anything to be written, null for no file; left out where it does not matter. */
  readonly was?: Uint8Array | null;
}

/** A season that can be written too. */
export interface SeasonStore extends SeasonFiles {
  /**
   * Writes all files or none.
   *
   * @throws UserProblem saying why nothing was written
   */
  readonly write: (files: readonly FileChange[]) => Promise<void>;
}

/** A running SHA-256. */
export interface Digest {
  /** Takes a further piece, text as UTF-8. */
  readonly update: (piece: Uint8Array | string) => Digest;
  /** The digest of everything so far, in hexadecimal digits; called once, at the end. */
  readonly hex: () => string;
}

/** What a platform does faster than plain code could, or in its own way. */
export interface Platform {
  /** Starts a digest. */
  readonly digest: () => Digest;
  /** UTF-8 as text, without a byte-order mark. */
  readonly decode: (bytes: Uint8Array) => string;
  /** The solver that large call libraries need. */
  readonly exactSolver: () => Promise<ExactSolver>;
}

/** Files, and what reads them. */
export interface SeasonPlace {
  readonly files: SeasonFiles;
  readonly platform: Platform;
}

/** One week of a season, and where to read it. */
export interface SeasonWeek extends SeasonPlace {
  /** The name of the week's folder in the season, such as `week-09`. */
  readonly week: string;
}

/** Who listens while a command works, and the day it is. */
export interface Listener {
  /** Takes a line the user should read. */
  readonly note: (line: string) => void;
  /** Takes what is being worked on; the empty text when it is done. */
  readonly progress: (line: string) => void;
  /** Today, YYYY-MM-DD. */
  readonly today: string;
}
