import { existsSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { builtPages } from '../../scripts/site/pages.ts'

const unescaped = (text: string) => text.replaceAll('&amp;', '&').replaceAll('&#38;', '&').replaceAll('&quot;', '"')

function fileOf(dir: string, path: string): string | undefined {
  const file = join(dir, path.endsWith('/') || path === '' ? `${path}index.html` : path)
  return existsSync(file) && statSync(file).isFile() ? file : undefined
}

const hasAnchor = (html: string, id: string) => html.includes(` id="${id}"`) || html.includes(` id='${id}'`)

function faultOf(dir: string, base: string, html: string, link: string): string | undefined {
  if (/^(https?|mailto|data|blob):/.test(link)) return undefined
  if (link.startsWith('#')) return link === '#' || hasAnchor(html, decodeURIComponent(link.slice(1))) ? undefined : 'no such place on the page'
  if (!link.startsWith(base)) return 'does not start at the base of the site'
  const { pathname, hash } = new URL(link, 'http://site.invalid')
  const file = fileOf(dir, decodeURIComponent(pathname).slice(base.length))
  if (!file) return 'no such page or file'
  if (hash && file.endsWith('.html') && !hasAnchor(readFileSync(file, 'utf8'), decodeURIComponent(hash.slice(1)))) return 'no such place on that page'
  return undefined
}

/** Every link, script, style and picture of every built page that leads nowhere, in words. */
export function brokenLinks(dir: string, base: string): string[] {
  return builtPages(dir).flatMap(({ path, html }) => {
    const markup = html.replace(/<script\b(?![^>]*\bsrc=)[\s\S]*?<\/script>/g, '').replace(/<style[\s\S]*?<\/style>/g, '')
    const attributes = markup.matchAll(/\s(?:href|src|component-url|renderer-url|before-hydration-url)="([^"]*)"/g)
    const links = new Set([...attributes].map(([, link]) => unescaped(link)))
    return [...links].flatMap((link) => {
      const fault = faultOf(dir, base, html, link)
      return fault ? [`/${path} -> ${link}: ${fault}`] : []
    })
  })
}
