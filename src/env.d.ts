declare namespace App {
  interface Locals {
    /** Ids of the sources of the article being written, in the order in which they are numbered. */
    sources?: readonly string[]
  }
}

/** What plain TypeScript takes a component file for; the checker of Astro reads the file itself. */
declare module '*.astro' {
  import type { AstroComponentFactory } from 'astro/runtime/server/index.js'
  const component: AstroComponentFactory
  export default component
}

interface ImportMetaEnv {
  /** Which handbook this is: its version and the day it was built. */
  readonly EDITION: string
}
