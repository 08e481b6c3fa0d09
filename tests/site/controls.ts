import { type Locator, type Page } from '@playwright/test'

/** Beyond this many of one sort, further ones load nothing new. */
const enough = 40

async function useField(field: Locator): Promise<void> {
  const type = await field.getAttribute('type')
  if (type === 'checkbox' || type === 'radio') return field.click()
  if (type === 'file' || await field.getAttribute('readonly') !== null) return
  if (type === 'range') return field.press('ArrowRight')
  const value = await field.inputValue()
  // A plain number: sums in a field load the reader of arithmetic, which is counted apart.
  const next = Number.parseFloat(value.replace(',', '.'))
  await field.fill(Number.isFinite(next) ? value.replace(/^[\d.,]+/, String(next * 1.01)) : '1')
}

/** Opens every fold and uses every field, choice and button of a page, so that all it may ever load is loaded. */
export async function useEveryControl(page: Page): Promise<void> {
  await page.evaluate(() => { window.print = () => undefined })
  page.on('dialog', (dialog) => void dialog.dismiss())
  async function each(selector: string, act: (one: Locator) => Promise<unknown>): Promise<void> {
    const all = page.locator('main').locator(selector)
    const count = Math.min(await all.count(), enough)
    for (let i = 0; i < count; i++) {
      const one = all.nth(i)
      if (await one.isVisible() && await one.isEnabled()) await act(one)
    }
    await page.waitForLoadState('networkidle')
  }
  await each('summary', (fold) => fold.click())
  await each('input', useField)
  await each('select', async (select) => select.selectOption({ index: (await select.locator('option').count()) - 1 }))
  await each('button', (button) => button.click())
  await each('summary', (fold) => fold.press('Enter'))
}
