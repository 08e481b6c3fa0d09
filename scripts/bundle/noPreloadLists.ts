import { type Plugin } from 'vite'

/** Leaves out the lists of what each file wants next: their random names do not compress, and would outweigh the files. */
export const noPreloadLists = (): Plugin => ({
  name: 'no-preload-lists',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
})
