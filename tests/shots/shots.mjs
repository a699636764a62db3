import { copyFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';
import { chromiumPath } from '../browser.mjs';

/** `npm run shots`: pictures of a call into .cache/shots, and the README's one beside this file. */
const at = (path) => fileURLToPath(new URL(path, import.meta.url));
// The runner is closed once it has loaded: what it would load later is settled here.
process.env.CHROMIUM_PATH ??= await chromiumPath();
const { module } = await runnerImport(at('./take.ts'), { root: at('../../src'), configFile: false });
const taken = await module.takeShots(at('../../.cache/shots'));
for (const path of taken) console.log(path);
const step = taken.find((path) => path.includes('/phone-splice-') && path.includes('check-ohms-'));
if (step !== undefined) await copyFile(step, at('./step.png'));
