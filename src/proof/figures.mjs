import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

/** Prints how well the figures of the content are known, and what would settle those that matter most. */
const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const load = async (path) =>
  (await runnerImport(at(path), { configFile: false, root: at('../..'), logLevel: 'error' })).module;
const [{ figuresOf }, { settlements }, { windowsAt }, { figuresText }, { SITES }, { catalogFrom }] =
  await Promise.all(
    [
      './figures.ts',
      './figures-settle.ts',
      './figures-windows.ts',
      './figures-text.ts',
      './separate-sites.ts',
      '../proof/content.ts',
    ].map(load),
  );
const { catalog, problems } = catalogFrom(at('../../content'));
if (catalog === undefined) {
  console.error(`the content has ${problems.length} problems: npm run check:content`);
  process.exit(1);
}
const figures = figuresOf(catalog);
console.log(
  figuresText({ figures, windows: windowsAt(catalog, SITES), settled: settlements(catalog, figures) }),
);
