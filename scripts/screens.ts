// Pictures of one page of every kind, as a phone and a desk show it, by day, by night and on paper, into screens/.
//
//   npm run screens              one page of every kind
//   npm run screens -- margins   the pages whose kind or path has that word in it

import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { chromium, type Page } from '@playwright/test'
import { launchOptions } from './browser/launch.ts'
import { outDir, root } from './root.ts'
import { settle } from './site/settle.ts'
import { serve } from './serve/serve.ts'
import { builtPages } from './site/pages.ts'

const widths = { phone: { width: 390, height: 844 }, desk: { width: 1280, height: 900 } }
const into = join(root, 'screens')

const words = process.argv.slice(2)
const seen = new Set<string>()
const chosen = builtPages().filter(({ kind, live, path }) => {
  if (words.length > 0) return words.some((word) => kind.includes(word) || path.includes(word))
  const sort = `${kind} ${live}`
  return !seen.has(sort) && seen.add(sort)
})

if (words.length === 0) rmSync(into, { recursive: true, force: true })
mkdirSync(into, { recursive: true })
const site = await serve({ dir: outDir })
const browser = await chromium.launch(launchOptions())

async function picture(page: Page, name: string): Promise<void> {
  await settle(page)
  await page.screenshot({ path: join(into, `${name}.png`), fullPage: true, animations: 'disabled' })
}

for (const { path } of chosen) {
  const name = path.replace(/\.html$|\/$/g, '').replaceAll('/', '-') || 'home'
  for (const [width, viewport] of Object.entries(widths)) {
    const page = await browser.newPage({ viewport, serviceWorkers: 'block' })
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      await page.goto(site.url + path)
      await picture(page, `${name}.${width}.${colorScheme}`)
    }
    if (width === 'desk') {
      await page.emulateMedia({ colorScheme: 'light', media: 'print' })
      await picture(page, `${name}.print`)
      await page.pdf({ path: join(into, `${name}.pdf`), format: 'A4', margin: { top: '15mm', bottom: '15mm', left: '15mm', right: '15mm' } })
    }
    await page.close()
  }
  console.log(`/${path}`)
}
await browser.close()
await site.close()
console.log(`${chosen.length} pages, pictures in ${into}`)
