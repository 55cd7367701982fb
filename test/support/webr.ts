import { WebR } from 'webr';

/** What comes back from R: scalars, arrays, and objects keyed by R's names. NA becomes null. */
export type FromR = null | boolean | number | string | FromR[] | { [name: string]: FromR };

/** What may be handed to R by name: bound as R objects, so that doubles arrive bit for bit. */
export type ToR = number | string | boolean | readonly number[] | readonly string[];

export interface R {
  /** Evaluates R code and returns its last value, doubles bit for bit. `given` is bound first, by name. */
  run(code: string, given?: Record<string, ToR>): Promise<FromR>;
  /** Evaluates R code as a script and returns the lines it printed on standard output. */
  printed(code: string): Promise<string[]>;
  /** Writes a text file into R's own file system, such as '/home/web_user/weights.csv'. */
  writeFile(path: string, text: string): Promise<void>;
  close(): void;
}

/**
 * Shapes any R value into plain lists and vectors before it crosses to JavaScript: a factor by its labels,
 * a matrix as a list of rows, a data frame as a list of columns, a named vector as a named list.
 */
const plainInR = `
.plain <- function(x) {
  if (is.null(x)) return(NULL)
  if (is.factor(x)) return(as.character(x))
  if (is.matrix(x)) return(lapply(seq_len(nrow(x)), function(i) .plain(x[i, , drop = TRUE])))
  if (is.list(x)) return(lapply(unclass(x), .plain))
  if (is.language(x) || is.function(x) || is.environment(x)) return(NULL)
  if (!is.null(names(x)) && length(x) > 0) return(lapply(as.list(x), .plain))
  attributes(x) <- NULL
  x
}`;

interface Node {
  type: string;
  names?: (string | null)[] | null;
  values?: unknown[];
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

function fromNode(value: unknown): FromR {
  if (!isNode(value)) {
    if (value === null || ['number', 'string', 'boolean'].includes(typeof value)) return value as FromR;
    throw new Error(`an R value of JavaScript type ${typeof value} has no plain form`);
  }
  if (value.type === 'null') return null;
  if (value.values === undefined) throw new Error(`an R value of type ${value.type} has no plain form`);
  const children = value.values.map(fromNode);
  if (value.type !== 'list') return children.length === 1 ? children[0]! : children;
  if (!value.names?.some((name) => name)) return children;
  return Object.fromEntries(children.map((child, index) => [value.names?.[index] || `[${index}]`, child]));
}

/**
 * Starts R (webr: R compiled to WebAssembly, in this process's own worker). It takes about a second.
 * A vector of one element comes back as a scalar; a matrix as an array of rows; a data frame as an object
 * of columns. An R error rejects the promise with R's message.
 */
export async function openR(): Promise<R> {
  const webR = new WebR({ interactive: false });
  await webR.init();
  await webR.evalRVoid(plainInR);
  return {
    async run(code, given = {}) {
      for (const [name, value] of Object.entries(given)) {
        await webR.objs.globalEnv.bind(name, typeof value === 'object' ? [...value] : value);
      }
      const result = await webR.evalR(`.plain({\n${code}\n})`);
      try {
        return fromNode(await result.toJs());
      } finally {
        await webR.destroy(result);
      }
    },
    async printed(code) {
      const shelter = await new webR.Shelter();
      try {
        const { output } = await shelter.captureR(code, { captureGraphics: false });
        return output
          .filter((line: { type: string; data: unknown }) => line.type === 'stdout')
          .map((line: { type: string; data: unknown }) => String(line.data));
      } finally {
        await shelter.purge();
      }
    },
    async writeFile(path, text) {
      await webR.FS.writeFile(path, new TextEncoder().encode(text));
    },
    close() {
      webR.close();
    },
  };
}
