import { defineConfig } from 'vite';

export default defineConfig({
  build: {
    ssr: 'src/cli/audit/main.ts',
    outDir: 'dist',
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'audit.js' } },
  },
  ssr: { noExternal: true },
});
