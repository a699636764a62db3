import { posix } from 'node:path';
import { parseSync } from 'vite';
import type { SourceFile } from './sources.ts';

/**
 * Who may import whom at run time. Imports run downhill only; types are free, since they are gone
 * before anything runs.
 */
export interface Allowed {
  /** Top folders, besides its own. */
  readonly folders: readonly string[];
  /** Packages by name; `node` stands for Node's own modules. */
  readonly packages: readonly string[];
}

const ENGINE = ['units', 'schema', 'catalog', 'plant', 'diagnosis', 'dispatch', 'practice', 'tables'];

export const TABLE: Readonly<Record<string, Allowed>> = {
  units: { folders: [], packages: [] },
  schema: { folders: ['units'], packages: ['zod'] },
  catalog: { folders: ['schema', 'units', 'content'], packages: [] },
  plant: { folders: ['units'], packages: [] },
  diagnosis: { folders: ['units', 'plant'], packages: [] },
  dispatch: { folders: ['units', 'plant', 'diagnosis'], packages: [] },
  practice: { folders: ['units', 'plant', 'diagnosis'], packages: [] },
  tables: { folders: ['units', 'plant', 'diagnosis'], packages: [] },
  machines: { folders: ['units', 'diagnosis'], packages: ['xstate'] },
  records: { folders: ['units', 'schema'], packages: ['dexie', 'fflate'] },
  app: {
    folders: [...ENGINE.filter((folder) => folder !== 'plant'), 'machines', 'records'],
    packages: ['react', 'react-dom', '@xstate/react', 'virtual:pwa-register'],
  },
  cli: { folders: [...ENGINE, 'machines', 'records', 'content', 'proof'], packages: ['node'] },
  proof: { folders: [...ENGINE, 'machines', 'records', 'content'], packages: ['node'] },
};

/** `src/plant/plant.ts` → plant; `machines/call/call.ts` → machines. */
export function folderOf(path: string): string {
  const [top = '', second = ''] = path.split('/');
  return top === 'src' && path.split('/').length > 2 ? second : top;
}

/** Everything that one file imports and that is still there when it runs. */
export function runtimeImports({ path, text }: SourceFile): string[] {
  return [...moduleRequests({ path, text }), ...callsIn(parseSync(path, text).program)];
}

/** What stands in import and export statements, types left out. */
export function moduleRequests({ path, text }: SourceFile): string[] {
  const { module } = parseSync(path, text);
  const statics = module.staticImports
    .filter(({ entries }) => entries.length === 0 || entries.some(({ isType }) => !isType))
    .map(({ moduleRequest }) => moduleRequest.value);
  const reExports = module.staticExports
    .flatMap(({ entries }) => entries)
    .filter(({ moduleRequest, isType }) => moduleRequest !== null && !isType)
    .map(({ moduleRequest }) => moduleRequest?.value ?? '');
  return [...statics, ...reExports];
}

/** What `import('…')`, `import.meta.glob('…')` and `new URL('…', import.meta.url)` ask for. */
function callsIn(node: unknown): string[] {
  if (typeof node !== 'object' || node === null) return [];
  if (Array.isArray(node)) return node.flatMap(callsIn);
  const inner = Object.values(node).flatMap(callsIn);
  const type = field(node, 'type');
  if (type === 'ImportExpression') return [...inner, ...texts(field(node, 'source'))];
  const callee = field(node, 'callee');
  const isGlob = field(field(callee, 'property'), 'name') === 'glob';
  const isUrl = type === 'NewExpression' && field(callee, 'name') === 'URL';
  const [first] = argumentsOf(node);
  return isGlob || isUrl ? [...inner, ...texts(first).filter((text) => text.startsWith('.'))] : inner;
}

/** The text of a literal, or of all in a list. */
function texts(node: unknown): string[] {
  const value = field(node, 'value');
  if (typeof value === 'string') return [value];
  const elements = field(node, 'elements');
  return Array.isArray(elements) ? elements.flatMap(texts) : [];
}

function argumentsOf(node: object): readonly unknown[] {
  const list = field(node, 'arguments');
  return Array.isArray(list) ? list : [];
}

function field(node: unknown, name: string): unknown {
  return typeof node === 'object' && node !== null ? Reflect.get(node, name) : undefined;
}

/** `path imports what` for every import that the table does not allow. */
export function forbiddenImports(file: SourceFile, table = TABLE): string[] {
  const from = folderOf(file.path);
  const allowed = table[from];
  if (allowed === undefined) return [`${file.path} stands in a folder that the import table does not know`];
  return runtimeImports(file)
    .filter((request) => !isAllowed(file.path, request, { from, allowed }))
    .map((request) => `${file.path} imports ${request}`);
}

function isAllowed(
  path: string,
  request: string,
  { from, allowed }: { from: string; allowed: Allowed },
): boolean {
  if (request.startsWith('.')) {
    const target = posix.join(posix.dirname(path), request);
    const to = folderOf(target.replace(/\*.*$/, 'x'));
    return to === from || allowed.folders.includes(to);
  }
  if (request.startsWith('node:')) return allowed.packages.includes('node');
  const name = request
    .split('/')
    .slice(0, request.startsWith('@') ? 2 : 1)
    .join('/');
  return allowed.packages.includes(name);
}
