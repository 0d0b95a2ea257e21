// Vite for the app (`npm run dev`, and the app half of `npm run build`). Tests have their own file: vitest.config.ts.
import { defineConfig } from 'vite';
import { developmentHeaders, headers } from './src/serve/policy.js';

const jsx = { runtime: 'automatic', importSource: 'preact' } as const;

export default defineConfig({
  root: 'src',
  publicDir: '../public',
  cacheDir: '../.cache/vite',
  base: './',
  oxc: { jsx },
  // The search for dependencies compiles on its own account, and has to be told again.
  optimizeDeps: { rolldownOptions: { transform: { jsx } } },
  build: {
    outDir: '../dist',
    target: 'es2022',
    sourcemap: true,
    modulePreload: { polyfill: false },
    // An asset inlined as a data: address would be refused by the content policy (fonts, workers).
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 800,
    rolldownOptions: {
      output: {
        // The bundler calls a script after a file in it, and a drill's file name gives the drill away.
        chunkFileNames: ({ moduleIds }) => (moduleIds.some((id) => id.includes('/scenarios/')) ? 'assets/shipped-[hash].js' : 'assets/[name]-[hash].js'),
      },
    },
  },
  // Scenarios and sim stand beside src, not below it.
  server: { host: '127.0.0.1', headers: { ...developmentHeaders }, fs: { allow: ['..'] } },
  preview: { host: '127.0.0.1', headers: { ...headers } },
});
