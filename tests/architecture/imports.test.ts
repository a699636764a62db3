import { describe, expect, test } from 'vitest';
import { forbiddenImports, moduleRequests, TABLE } from './support/imports.ts';
import { productFiles } from './support/sources.ts';

const files = productFiles();
/** What runs before the TypeScript does: three lines that start it, and the roots of the build. */
const STARTERS = [/\.mjs$/, /^src\/[^/]+$/];
const layered = files.filter(({ path }) => !STARTERS.some((pattern) => pattern.test(path)));

describe('imports run downhill', () => {
  test('in every file of src and machines', () => {
    expect(layered.flatMap((file) => forbiddenImports(file))).toEqual([]);
  });

  test('and the table knows every folder', () => {
    expect(layered.length).toBeGreaterThan(100);
    expect(Object.keys(TABLE)).toEqual(expect.arrayContaining(['units', 'plant', 'diagnosis', 'app']));
  });

  test('every relative import carries its ending', () => {
    const endings = /\.(ts|tsx|mjs|css|json|svg)$/;
    const bare = layered.flatMap((file) =>
      moduleRequests(file)
        .filter((request) => request.startsWith('.') && !endings.test(request))
        .map((request) => `${file.path} imports ${request}`),
    );
    expect(bare).toEqual([]);
  });
});

describe('a bad import is caught', () => {
  const caught = (path: string, text: string): string[] => forbiddenImports({ path, text });

  test('the plant reads content', () => {
    const text = "const files = import.meta.glob('../../content/**/*.json', { eager: true });";
    expect(caught('src/plant/a.ts', text)).toEqual(['src/plant/a.ts imports ../../content/**/*.json']);
  });

  test('units import the plant', () => {
    const text = "import { setUp } from '../plant/plant.ts'; setUp();";
    expect(caught('src/units/a.ts', text)).toEqual(['src/units/a.ts imports ../plant/plant.ts']);
  });

  test('the diagnosis imports a package', () => {
    expect(caught('src/diagnosis/a.ts', "import { z } from 'zod'; z;")).toHaveLength(1);
    expect(caught('src/diagnosis/a.ts', "import 'zod';")).toHaveLength(1);
    expect(caught('src/diagnosis/a.ts', "export { z } from 'zod';")).toHaveLength(1);
    expect(caught('src/diagnosis/a.ts', "export * from 'zod';")).toHaveLength(1);
    expect(caught('src/diagnosis/a.ts', "const z = await import('zod'); z;")).toHaveLength(1);
  });

  test('the app goes round the engine to the plant, or into the command line', () => {
    expect(caught('src/app/hooks/a.ts', "import { setUp } from '../../plant/plant.ts'; setUp;")).toHaveLength(
      1,
    );
    expect(caught('src/app/hooks/a.ts', "import { main } from '../../cli/main.ts'; main;")).toHaveLength(1);
  });

  test('a folder nobody knows', () => {
    expect(caught('src/helpers/a.ts', '')).toHaveLength(1);
  });

  test('a type beside a value does not hide the value', () => {
    expect(caught('src/plant/a.ts', "import { type Z, z } from 'zod'; z;")).toHaveLength(1);
  });
});

describe('types are free', () => {
  test.each([
    "import type { Box } from '../schema/netlist.ts';",
    "import { type Box } from '../schema/netlist.ts';",
  ])('%s', (text) => {
    expect(forbiddenImports({ path: 'src/plant/a.ts', text })).toEqual([]);
  });

  test('a re-exported type too', () => {
    const text = "export type { Box } from '../schema/netlist.ts';";
    expect(forbiddenImports({ path: 'src/plant/a.ts', text })).toEqual([]);
  });
});
