/** What plain TypeScript takes a component file for; the checker of Astro reads the file itself. */
declare module '*.astro' {
  import type { AstroComponentFactory } from 'astro/runtime/server/index.js'
  const component: AstroComponentFactory
  export default component
}
