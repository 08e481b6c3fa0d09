// Draws the icons in public/ anew. Run it after changing scripts/icons/: `node scripts/icons.ts`.

import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { launchOptions } from './browser/launch.ts'
import { maskableIcon, plainIcon } from './icons/icon.ts'
import { root } from './root.ts'

const into = (name: string) => join(root, 'public', name)
writeFileSync(into('icon.svg'), plainIcon())

const browser = await chromium.launch(launchOptions())
const pictures = [
  ['icon-180.png', 180, maskableIcon()],
  ['icon-192.png', 192, plainIcon()],
  ['icon-512.png', 512, plainIcon()],
  ['icon-maskable-512.png', 512, maskableIcon()],
] as const
for (const [name, size, svg] of pictures) {
  const page = await browser.newPage({ viewport: { width: size, height: size } })
  await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`)
  await page.screenshot({ path: into(name), omitBackground: true })
  await page.close()
}
await browser.close()
