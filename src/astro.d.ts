/** What plain TypeScript takes a component file for; the checker of Astro reads the file itself. */
declare module '*.astro' {
  const component: import('astro/runtime/server/index.js').AstroComponentFactory
  export default component
}
