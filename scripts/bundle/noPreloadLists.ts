import { type Plugin } from 'vite'

/** The bundler's own helper around `import()`: more than a kilobyte on every page, of use only with the lists. */
const helper = '\0vite/preload-helper.js'

/** Leaves out the lists of what each file wants next, and what reads them: their random names do not compress, and would outweigh the files. */
export const noPreloadLists = (): Plugin => ({
  name: 'no-preload-lists',
  enforce: 'pre',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
  load: (id) => (id === helper ? 'export const __vitePreload = (load) => load()' : undefined),
})
