import { expect, pages, test } from './site.ts'

/** What the content security policy of every page must say, whatever else is allowed. */
const musts = ["default-src 'self'", "base-uri 'none'", "object-src 'none'", "form-action 'none'", "worker-src 'self'"]

for (const { path, html } of pages) {
  test(`/${path} carries the whole content security policy`, () => {
    const policy = /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(html)?.[1] ?? ''
    const directives = policy.split(';').map((directive) => directive.trim())
    expect(directives).toEqual(expect.arrayContaining(musts))
    const scripts = directives.find((directive) => directive.startsWith('script-src ')) ?? ''
    expect(scripts).toContain("'wasm-unsafe-eval'")
    expect(policy).not.toMatch(/'unsafe-inline'|'unsafe-eval'|https?:/)
    expect(html.indexOf('content-security-policy'), 'the policy stands before the first script').toBeLessThan(
      (html.indexOf('<script') + 1 || html.length + 1) - 1)
  })
}

test('a page refuses a script that is not its own', async ({ page, site }) => {
  await page.goto(site.url)
  const ran = await page.evaluate(() => {
    const script = document.createElement('script')
    script.textContent = 'document.documentElement.dataset.intruder = "yes"'
    document.head.append(script)
    return document.documentElement.dataset.intruder
  })
  expect(ran).toBeUndefined()
})
