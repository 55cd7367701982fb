import type { FolderFiles, Unread } from './folder-files.ts';
import { isOutside, type Taken } from './unzip.ts';

/** A trial's folder among what was given. */
export interface GivenTrial {
  /** The folder's name; null where the files were given without one. */
  name: string | null;
  files: FolderFiles;
}

/** What was given, sorted: one trial's folder, several, or a content folder of a site. */
export interface GivenFolders {
  kind: 'trial' | 'trials' | 'content';
  trials: readonly GivenTrial[];
  /** Null where the file is absent. */
  site: Uint8Array | null;
  cultivars: Uint8Array | null;
  /** The fact sheets across trials, of a content folder. */
  sheets: FolderFiles;
}

type Tree = ReadonlyMap<string, Taken>;

/** The files that make a folder a trial's. */
const ofTrial = /^(trial\.ya?ml|layout\.csv|harvest\.csv|readings\.csv|factsheet\.mdx)$/i;
const ofContent = /^(site\.yaml|cultivars\.yaml)$/;

/** Finds the trial folders among files by path, however many folders lie around them. */
export function trialFolders(taken: Tree): GivenFolders {
  const { name, tree } = withoutWrapping(taken, null);
  const top = [...tree.keys()].filter((path) => !path.includes('/'));
  const folders = foldersOf(tree);
  const none = { site: null, cultivars: null, sheets: new Map<string, Uint8Array>() };
  const alone = { kind: 'trial', trials: [trialOf(name, tree)], ...none } as const;
  if (top.some((path) => ofTrial.test(path))) return alone;
  if (folders.has('trials') || top.some((path) => ofContent.test(path))) {
    const inside = foldersOf(folders.get('trials') ?? new Map<string, Taken>());
    return {
      kind: 'content',
      trials: trialsOf(inside),
      site: bytesAt(tree, 'site.yaml'),
      cultivars: bytesAt(tree, 'cultivars.yaml'),
      sheets: filesOf(folders.get('fact-sheets') ?? new Map<string, Taken>()),
    };
  }
  const withTrials = [...folders].filter(([, inside]) =>
    [...inside.keys()].some((path) => ofTrial.test(path)),
  );
  if (withTrials.length === 0) return alone;
  return { kind: 'trials', trials: trialsOf(new Map(withTrials)), ...none };
}

/** Takes off a folder that holds all the rest and is nobody's in particular. */
function withoutWrapping(tree: Tree, name: string | null): { name: string | null; tree: Tree } {
  const paths = [...tree.keys()].filter((path) => !isOutside(path));
  const first = paths[0]?.split('/')[0] ?? '';
  const isAround = paths.length > 0 && paths.every((path) => path.startsWith(`${first}/`));
  if (!isAround || first === 'trials') return { name, tree };
  const inside = new Map(
    [...tree].map(([path, content]) => [isOutside(path) ? path : path.slice(first.length + 1), content]),
  );
  return withoutWrapping(inside, first);
}

function foldersOf(tree: Tree): Map<string, Map<string, Taken>> {
  const folders = new Map<string, Map<string, Taken>>();
  for (const [path, content] of tree) {
    const cut = path.indexOf('/');
    if (cut === -1 || isOutside(path)) continue;
    const inside = folders.get(path.slice(0, cut)) ?? new Map<string, Taken>();
    folders.set(path.slice(0, cut), inside.set(path.slice(cut + 1), content));
  }
  return folders;
}

function trialsOf(folders: ReadonlyMap<string, Tree>): GivenTrial[] {
  return [...folders].map(([name, tree]) => trialOf(name, tree)).sort((a, b) => (a.name! < b.name! ? -1 : 1));
}

function trialOf(name: string | null, tree: Tree): GivenTrial {
  return { name, files: filesOf(tree) };
}

function filesOf(tree: Tree): FolderFiles {
  const files = new Map<string, Uint8Array>();
  const unread: Unread[] = [];
  for (const [path, content] of tree) {
    const file = folderNamedAsFile(path);
    if (typeof content === 'string') unread.push({ path, reason: content });
    else if (file === null) files.set(path, content);
    else if (!unread.some((one) => one.path === file))
      unread.push({ path: file, reason: 'not a regular file' });
  }
  const inOrder = new Map([...files].sort(([a], [b]) => (a < b ? -1 : 1)));
  unread.sort((a, b) => (a.path < b.path ? -1 : 1));
  return Object.assign(inOrder, { unread });
}

/** The part of a path that is a folder with the name of a table or text; null where none is. */
function folderNamedAsFile(path: string): string | null {
  return /^(?:.+\/)?[^/]+\.(?:csv|yaml|mdx)(?=\/)/.exec(path)?.[0] ?? null;
}

function bytesAt(tree: Tree, path: string): Uint8Array | null {
  const content = tree.get(path);
  return content === undefined || typeof content === 'string' ? null : content;
}
