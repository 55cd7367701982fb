/** The photographs of every trial, made fit to publish before anything is. */
import type { Library } from '../model/library.ts';
import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { providePhotographs } from '../publish/library.ts';
import { type Photograph, photographsOf } from '../publish/photographs.ts';
import type { PublishedFile } from '../publish/files.ts';

/** The files of the photographs, named from the site's root on, and what is wrong with those that cannot be read. */
export interface MadePhotographs {
  files: readonly PublishedFile[];
  problems: readonly Problem[];
}

/** Makes the photographs and tells the pages of them. */
export async function makePhotographs(library: Library): Promise<MadePhotographs> {
  const files: PublishedFile[] = [];
  const problems: Problem[] = [];
  const shown = new Map<string, readonly Photograph[]>();
  for (const { trial } of library.trials) {
    const made = await photographsOf(trial);
    shown.set(trial.id, made.photographs);
    files.push(...made.files.map((file) => ({ ...file, name: `trials/${trial.id}/${file.name}` })));
    problems.push(...made.unreadable.map((path) => unreadable(trial.id, path)));
  }
  providePhotographs(shown);
  return { files, problems };
}

function unreadable(id: string, path: string): Problem {
  return {
    rule: 'photo-unreadable',
    severity: 'error',
    file: `trials/${id}/${path}`,
    line: null,
    column: null,
    found: path,
    expected: say('a whole picture'),
    message: say(
      '{path} cannot be read as a picture; it may be cut short or damaged: copy it again from the camera',
      { path },
    ),
    hint: null,
    where: null,
  };
}
