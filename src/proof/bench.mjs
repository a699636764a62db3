import { writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Simulation } from 'eecircuit-engine';
import { build } from 'vite';

/**
 * Builds the engine as it ships, runs the bench on it and prints it; `--json FILE` writes it as well.
 * The circuit simulator and the deck of the oracle tests are handed in from here.
 */
const root = fileURLToPath(new URL('../..', import.meta.url));
const out = join(root, '.cache/bench');
await build({
  root,
  configFile: false,
  logLevel: 'error',
  publicDir: false,
  build: {
    ssr: true,
    outDir: out,
    emptyOutDir: true,
    minify: false,
    target: 'node20',
    rolldownOptions: {
      input: {
        bench: join(root, 'src/proof/bench.ts'),
        deck: join(root, 'tests/oracle/spice.ts'),
        content: join(root, 'src/proof/content.ts'),
      },
    },
  },
});
const load = (name) => import(pathToFileURL(join(out, `${name}.js`)));
const [{ bench, benchText }, { deck }, { catalogFrom }] = await Promise.all(
  ['bench', 'deck', 'content'].map(load),
);
const { catalog, problems } = catalogFrom(join(root, 'content'));
if (catalog === undefined) {
  console.error(`the content has ${problems.length} problems: npm run check:content`);
  process.exit(1);
}
const simulation = new Simulation();
await simulation.start();
const simulator = {
  deck,
  async simulate(text) {
    simulation.setNetList(text);
    const { data } = await simulation.runSim();
    if (data.length === 0) throw new Error(`the simulator gave nothing: ${simulation.getError().join(' ')}`);
  },
};
const found = await bench({ catalog, simulator, built: join(root, 'dist') });
console.log(benchText(found));
const at = process.argv.indexOf('--json');
const file = at < 0 ? undefined : process.argv[at + 1];
if (at >= 0 && file === undefined) {
  console.error('--json needs a file');
  process.exit(2);
}
if (file !== undefined)
  await writeFile(resolve(process.env.INIT_CWD ?? '', file), `${JSON.stringify(found, null, 2)}\n`);
process.exit(0);
