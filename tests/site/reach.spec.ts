import { expect, pages, settle, test } from './site.ts'

/** The largest page of each kind: what fits there fits on its like. */
const ofKinds = [...new Map([...pages].sort((a, b) => a.html.length - b.html.length).map((page) => [page.kind, page])).values()].filter(({ kind }) => kind !== 'moved')

for (const { path, kind } of ofKinds) {
  test(`/${path}, as a page of kind ${kind}, is read at four times its size, with large type, and in the reader's own colours`, async ({ page, site }) => {
    // A window of 1280 at 400 %.
    await page.setViewportSize({ width: 320, height: 256 })
    await page.goto(site.url + path)
    await settle(page)
    const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    expect.soft(await sideways(), 'at 400 %').toBeLessThanOrEqual(0)

    await page.setViewportSize({ width: 640, height: 800 })
    await page.evaluate(() => { document.documentElement.style.fontSize = '200%' })
    expect.soft(await sideways(), 'type twice as large').toBeLessThanOrEqual(0)
    await page.evaluate(() => { document.documentElement.style.fontSize = '' })

    await page.setViewportSize({ width: 1280, height: 800 })
    await page.emulateMedia({ forcedColors: 'active' })
    for (let i = 0; i < 12; i++) {
      await page.keyboard.press('Tab')
      const ring = await page.evaluate(() => {
        const one = document.activeElement
        if (!one || one === document.body) return null
        const { outlineStyle, outlineWidth } = getComputedStyle(one)
        return { on: one.outerHTML.slice(0, 80), drawn: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) > 0 }
      })
      if (ring) expect.soft(ring.drawn, `focus is seen on ${ring.on}`).toBe(true)
    }
    const bare = await page.evaluate(() => [...document.querySelectorAll<HTMLElement>('main :is(button, input[type=text], select)')].filter((one) => one.checkVisibility() && Number.parseFloat(getComputedStyle(one).borderTopWidth) === 0).map((one) => one.outerHTML.slice(0, 80)))
    expect.soft(bare, 'what is pressed or filled in has an edge').toEqual([])
    // Lines of a chart differ by more than colour, which the reader's own palette takes away.
    const alike = await page.evaluate(() => [...document.querySelectorAll('main svg')].filter((drawing) => {
      const lines = [...drawing.querySelectorAll<SVGElement>('path.line, polyline.line')].filter((line) => line.checkVisibility())
      const looks = lines.map((line) => { const { strokeDasharray, strokeWidth } = getComputedStyle(line); return `${strokeDasharray} ${strokeWidth}` })
      return new Set(looks).size < looks.length && !drawing.querySelector('text')
    }).length)
    expect.soft(alike, 'drawings whose lines cannot be told apart').toBe(0)
  })
}

test('folds open and pages change without anything moving, where the reader asks for that', async ({ page, site }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.goto(`${site.url}margins/`)
  await settle(page)
  await page.locator('main summary').first().click()
  const moving = await page.evaluate(() => document.getAnimations().filter(({ playState, effect }) => playState === 'running' && Number(effect?.getComputedTiming().duration) > 1).length)
  expect(moving).toBe(0)
})

test('the map workshop is gone through with the keyboard alone, what has the focus always seen', async ({ page, site }) => {
  await page.goto(`${site.url}maps/`)
  await settle(page)
  const seen = async () => page.evaluate(() => {
    const one = document.activeElement!
    const { top, bottom } = one.getBoundingClientRect()
    return { tag: one.tagName, on: one !== document.body, within: bottom > 0 && top < innerHeight, outline: getComputedStyle(one).outlineStyle }
  })
  const reached = new Set<string>()
  for (let i = 0; i < 60; i++) {
    await page.keyboard.press('Tab')
    const now = await seen()
    if (!now.on) break
    expect.soft(now.within, `step ${i}, ${now.tag}`).toBe(true)
    expect.soft(now.outline, `step ${i}, ${now.tag}`).not.toBe('none')
    reached.add(now.tag)
  }
  expect([...reached]).toEqual(expect.arrayContaining(['A', 'BUTTON', 'SELECT', 'SUMMARY']))
})
