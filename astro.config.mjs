import { defineConfig } from 'astro/config'
import mdx from '@astrojs/mdx'
import preact from '@astrojs/preact'
import { satteri } from '@astrojs/markdown-satteri'
import { alignByClass } from './scripts/markdown/alignByClass.ts'
import { linksBelowBase } from './scripts/markdown/linksBelowBase.ts'
import { pinnedIds } from './scripts/markdown/pinnedIds.ts'
import { groups } from './scripts/bundle/chunks.ts'
import { noIdleImports } from './scripts/bundle/noIdleImports.ts'
import { noPreloadLists } from './scripts/bundle/noPreloadLists.ts'
import { ownCopies } from './scripts/bundle/ownCopies.ts'
import { solverOnly } from './scripts/bundle/solverOnly.ts'
import { untold } from './scripts/bundle/untold.ts'
import { edition } from './scripts/edition.ts'
import { base, outDir } from './scripts/root.ts'

export default defineConfig({
  // Known only to whoever hosts the site: `SITE=https://example.org` makes the canonical addresses whole.
  site: process.env.SITE || undefined,
  base,
  outDir,
  output: 'static',
  trailingSlash: 'always',
  build: {
    format: 'directory',
    assets: 'assets',
    // In the page itself: a file of its own would hold back the first paint by one more journey to the host.
    inlineStylesheets: 'always',
  },
  integrations: [mdx(), preact()],
  markdown: {
    processor: satteri({ hastPlugins: [pinnedIds, alignByClass, linksBelowBase(base)] }),
    // Highlighting colours code with style attributes, which the policy below refuses.
    syntaxHighlight: false,
  },
  devToolbar: { enabled: false },
  security: {
    csp: {
      // Not among the directives: frame-ancestors, which browsers heed only in a header.
      directives: [
        "default-src 'self'",
        "base-uri 'none'",
        "object-src 'none'",
        "form-action 'none'",
        "frame-src 'none'",
        "img-src 'self' data:",
        "worker-src 'self'",
        "manifest-src 'self'",
      ],
      // The search engine is compiled from WebAssembly in the page.
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
    },
  },
  vite: {
    define: { 'import.meta.env.EDITION': JSON.stringify(edition) },
    // Marks for the bundler alone, which it else leaves in what is sent.
    worker: { format: 'es', plugins: () => [solverOnly()], rolldownOptions: { output: { comments: false } } },
    plugins: [noPreloadLists(), ownCopies(), noIdleImports(), untold()],
    environments: { client: { build: { rolldownOptions: { output: { codeSplitting: { groups } } } } } },
  },
})
