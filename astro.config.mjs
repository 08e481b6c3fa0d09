import { defineConfig } from 'astro/config'
import mdx from '@astrojs/mdx'
import preact from '@astrojs/preact'

/** Where the site lives on its host: `BASE=/handbook` for https://host/handbook/, nothing for the root. */
const base = `/${(process.env.BASE ?? '').replace(/^\/+|\/+$/g, '')}`

export default defineConfig({
  site: process.env.SITE || undefined,
  base,
  output: 'static',
  trailingSlash: 'always',
  build: { format: 'directory', assets: 'assets', inlineStylesheets: 'auto' },
  integrations: [mdx(), preact()],
  devToolbar: { enabled: false },
})
