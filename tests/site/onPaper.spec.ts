import { expect, pages, settle, test } from './site.ts'

/** The largest page of each kind, and those that are made to be printed. */
const printed = ['before-first-start/', 'explain/', 'first-build/', 'mix-card/', 'record/', 'report/', 'two-stages/', 'which-oil/']
const ofKinds = [...new Map([...pages].sort((a, b) => a.html.length - b.html.length).map((page) => [page.kind, page])).values()].filter(({ kind }) => kind !== 'not-found' && kind !== 'moved')
const paths = [...new Set([...ofKinds.map(({ path }) => path), ...printed])].sort()

/** Points of an inch at 72 to the inch, as a PDF states its sheet. */
const sheets = { A4: [595, 842], Letter: [612, 792] } as const
const widest = { A4: 794, Letter: 816 } as const

test.describe('on paper', () => {
  test('every page that is made to be printed is there', () => {
    for (const path of printed) expect(pages.map((page) => page.path)).toContain(path)
  })

  for (const path of paths) {
    test(`/${path} prints black on white, without furniture, within its sheet, from a dark screen too`, async ({ page, site }) => {
      await page.emulateMedia({ colorScheme: 'dark' })
      await page.goto(site.url + path)
      await settle(page)
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' })

      const look = await page.evaluate(() => {
        const style = getComputedStyle(document.body)
        const seen = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)].filter((one) => one.checkVisibility()).map((one) => one.outerHTML.slice(0, 80))
        return { ink: style.color, paper: [getComputedStyle(document.documentElement).backgroundColor, style.backgroundColor], furniture: seen('nav, header.top, dialog, button, .no-print, .skip, input[type=range]'), cautions: seen('.cautions').length, words: document.body.innerText }
      })
      expect.soft(look.ink).toBe('rgb(0, 0, 0)')
      expect.soft(look.paper.every((colour) => /^(rgb\(255, 255, 255\)|rgba\(0, 0, 0, 0\))$/.test(colour)), look.paper.join()).toBe(true)
      expect.soft(look.furniture).toEqual([])
      expect.soft(look.cautions, 'cautions are printed').toBeGreaterThan(0)

      for (const format of ['A4', 'Letter'] as const) {
        await page.setViewportSize({ width: widest[format] - 2 * 60, height: 1000 })
        const over = await page.evaluate(() => {
          const { clientWidth } = document.documentElement
          return [...document.querySelectorAll<HTMLElement>('main :is(table, figure, svg, pre, p, li, dl)')].filter((one) => one.checkVisibility() && one.getBoundingClientRect().right > clientWidth + 1).map((one) => one.outerHTML.slice(0, 80))
        })
        expect.soft(over, `${format}: nothing is cut at the right edge`).toEqual([])

        const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1')
        const boxes = [...pdf.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)].map(([, w, h]) => [Math.round(Number(w)), Math.round(Number(h))])
        expect.soft(boxes.length, `${format}: sheets`).toBeGreaterThan(0)
        expect.soft(boxes.length, `${format}: sheets`).toBeLessThan(200)
        const [wide, high] = sheets[format]
        for (const [w, h] of boxes) expect.soft(Math.abs(w! - wide) <= 1 && Math.abs(h! - high) <= 1, `${format}: ${w} by ${h} points`).toBe(true)
      }
    })
  }
})
