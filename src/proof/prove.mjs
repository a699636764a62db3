import { rmSync } from 'node:fs';
import { mkdir, mkdtemp, writeFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

/**
 * Plays simulated calls on all cores and prints what came of them.
 *
 * `--quick` a few calls; `--calls N` so many of each kind; `--by trees|planner` who proposes;
 * `--seed N`; `--workers N`; `--json FILE` writes the figures, `--all FILE` every call as well.
 */
const words = process.argv.slice(2);
const flag = (name) => {
  const place = words.indexOf(name);
  if (place < 0) return undefined;
  const value = words[place + 1];
  if (value === undefined) fail(`${name} needs a value`);
  return value;
};
const fail = (text) => {
  console.error(text);
  process.exit(2);
};
const number = (name, usual) => {
  const value = Number(flag(name) ?? usual);
  if (!Number.isInteger(value) || value < 1) fail(`${name} needs a whole number above 0`);
  return value;
};
const by = flag('--by') ?? 'planner';
if (by !== 'trees' && by !== 'planner') fail('--by is trees or planner');

const root = fileURLToPath(new URL('../..', import.meta.url));
await mkdir(join(root, '.cache'), { recursive: true });
const out = await mkdtemp(join(root, '.cache/prove-'));
process.on('exit', () => rmSync(out, { recursive: true, force: true }));
await build({
  root,
  configFile: false,
  logLevel: 'error',
  publicDir: false,
  build: {
    ssr: true,
    outDir: out,
    emptyOutDir: false,
    minify: false,
    target: 'node20',
    rolldownOptions: {
      input: {
        prove: join(root, 'src/proof/prove/prove.ts'),
        worker: join(root, 'src/proof/prove/worker.ts'),
        table: join(root, 'src/proof/prove/table.ts'),
      },
    },
  },
});
const load = (name) => import(pathToFileURL(join(out, `${name}.js`)));
const [{ prove, FULL, QUICK, countsOf }, { figuresText }] = await Promise.all(['prove', 'table'].map(load));

const counts = words.includes('--quick')
  ? QUICK
  : flag('--calls') === undefined
    ? FULL
    : countsOf(number('--calls'));
const began = performance.now();
let shown = 0;
const progress = (done, of) => {
  const now = performance.now();
  if (!process.stderr.isTTY && now - shown < 30_000 && done < of) return;
  shown = now;
  const left = ((now - began) / done) * (of - done);
  process.stderr.write(
    `${process.stderr.isTTY ? '\r' : ''}${done} of ${of} calls, about ${Math.ceil(left / 60_000)} min left   ${process.stderr.isTTY && done < of ? '' : '\n'}`,
  );
};
const { figures, calls } = await prove({
  content: join(root, 'content'),
  script: join(out, 'worker.js'),
  workers: number('--workers', availableParallelism()),
  seed: number('--seed', 1),
  by,
  counts,
  progress,
});
const seconds = (performance.now() - began) / 1000;
console.log(figuresText(figures, calls));
console.log(`${(calls.length / seconds).toFixed(2)} calls per second`);
const write = async (name, data) => {
  const file = flag(name);
  if (file !== undefined)
    await writeFile(resolve(process.env.INIT_CWD ?? '', file), `${JSON.stringify(data, null, 2)}\n`);
};
await write('--json', figures);
await write('--all', calls);
