/**
 * The import table of the project's design: what each folder of src/ may import.
 * Data flows one way (read, check, compute, compare, draw, publish, pages), so an import
 * points up this table only.
 */
export const rooms = {
  model: [],
  read: ['model'],
  check: ['model', 'read', 'compute/nutrients', 'compute/lots'],
  statistics: [],
  // What a recipe amounts to; knows nothing of trials, so that the check may use it too.
  'compute/nutrients': ['model', 'statistics'],
  // How lots are drawn, so that the check may draw them again.
  'compute/lots': ['model', 'statistics'],
  compute: ['model', 'statistics'],
  compare: ['model', 'statistics', 'compute'],
  draw: ['model', 'compute'],
  publish: ['model', 'compute', 'compare'],
  sheets: ['model', 'read', 'check', 'compute', 'compare', 'draw', 'publish'],
  // A trial folder drawn up, checked and weighed up before anything is sown.
  plan: ['model', 'read', 'check', 'statistics', 'compute', 'publish'],
  // A weigh-in as it goes on, in the browser.
  weigh: ['model', 'read', 'check', 'statistics', 'compute', 'draw'],
  // A grower's own spreadsheet made into the files of a trial's folder.
  intake: ['model', 'read', 'check', 'weigh'],
};

/** Packages that only one room may know. */
export const onlyIn = {
  papaparse: ['read'],
  '@e965/xlsx': ['read'],
  yaml: ['read'],
  ajv: ['check'],
  'ajv-formats': ['check'],
};

const everything = Object.keys(rooms);
const front = ['pages', 'layouts', 'components', 'styles'];
for (const room of front) rooms[room] = [...everything, ...front];
rooms.commands = [...everything, ...front];

/** The room that a path lies in: a folder of src/, or a room within one. */
function roomOf(path) {
  const inside = /(?:^|\/)src\/(.+\/)/.exec(path.replaceAll('\\', '/'))?.[1];
  if (inside === undefined) return undefined;
  const within = everything.find((room) => room.includes('/') && inside.startsWith(`${room}/`));
  return within ?? inside.split('/')[0];
}

/** Resolves a relative import against the importing file, without touching the disk. */
function target(filename, source) {
  const parts = filename.replaceAll('\\', '/').split('/').slice(0, -1);
  for (const part of source.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.') parts.push(part);
  }
  return parts.join('/');
}

function check(context, node) {
  const source = node.source?.value;
  const from = roomOf(context.filename);
  if (typeof source !== 'string' || from === undefined) return;
  if (!source.startsWith('.')) {
    const name = source.startsWith('@') ? source.split('/').slice(0, 2).join('/') : source.split('/')[0];
    const allowed = onlyIn[name];
    if (allowed && !allowed.includes(from)) {
      context.report({ node, message: `'${name}' may be imported only in src/${allowed.join(', src/')}` });
    }
    return;
  }
  const to = roomOf(target(context.filename, source) + '/');
  if (to === undefined || to === from) return;
  // A room within another is open to that one, and to all that may import that one.
  const outer = to.split('/')[0];
  const allowed = [from.split('/')[0] === from ? from : '', ...(rooms[from] ?? [])];
  if (!allowed.includes(to) && !(outer !== to && allowed.includes(outer))) {
    context.report({ node, message: `src/${from} may not import from src/${to}` });
  }
}

export default {
  rules: {
    'import-table': {
      meta: {
        type: 'problem',
        docs: { description: 'imports point up the table of rooms only' },
        schema: [],
      },
      create: (context) => ({
        ImportDeclaration: (node) => check(context, node),
        ImportExpression: (node) => check(context, node),
        ExportNamedDeclaration: (node) => check(context, node),
        ExportAllDeclaration: (node) => check(context, node),
      }),
    },
  },
};
