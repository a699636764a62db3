import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { playwright } from '@vitest/browser-playwright';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { ARGS, chromiumPath } from './tests/browser.mjs';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const executablePath = process.env.VITEST ? await chromiumPath(process.env.BROWSER_FROM) : '';

export default defineConfig({
  root: at('./src'),
  publicDir: at('./public'),
  base: './',
  envDir: at('.'),
  cacheDir: at('./node_modules/.vite'),
  build: { outDir: at('./dist'), emptyOutDir: true, target: 'es2022' },
  server: { fs: { allow: [at('.')] } },
  worker: { format: 'es' },
  plugins: [
    react(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,webmanifest}'],
        navigateFallback: 'index.html',
        cleanupOutdatedCaches: true,
        maximumFileSizeToCacheInBytes: 4_000_000,
      },
      manifest: {
        name: 'Ohmwell',
        short_name: 'Ohmwell',
        description: 'Finds what is wrong with a submersible well-pump system, one reading at a time.',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#F4F2EA',
        theme_color: '#14181A',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
    }),
  ],
  test: {
    root: at('.'),
    reporters: [
      'default',
      {
        /** The plain closing line that a build server can count. */
        onTestRunEnd(modules) {
          const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
          for (const module of modules) {
            for (const test of module.children.allTests()) count[test.result().state]++;
            if (module.state() === 'failed' && module.errors().length > 0) count.failed++;
          }
          console.log(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
        },
      },
    ],
    projects: [
      {
        extends: true,
        root: at('.'),
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/journeys/**'],
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        root: at('.'),
        test: {
          name: 'ui',
          environment: 'jsdom',
          include: ['tests/**/*.ui.test.tsx'],
          setupFiles: [at('./tests/setup-ui.ts')],
        },
      },
      {
        extends: true,
        root: at('.'),
        test: {
          name: 'browser',
          include: ['tests/**/*.browser.test.tsx'],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions: { executablePath, args: ARGS } }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        extends: true,
        root: at('.'),
        test: {
          name: 'journeys',
          environment: 'node',
          globalSetup: [at('./tests/journeys/build.ts')],
          include: ['tests/journeys/**/*.test.ts'],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
