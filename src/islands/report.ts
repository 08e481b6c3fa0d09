/** The most lines of numbers that a report carries. */
const most = 80

/** What stands on the page, as a text: its address, what was typed, what came out. */
function textOf(edition: string): string {
  const said = (of: Element | null | undefined): string => (of?.textContent ?? '').replace(/\s+/g, ' ').trim()
  const fields = [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('main [data-part=card] :is(input, select)')].map((field) => `  ${said(document.querySelector(`label[for="${field.id}"]`))}: ${field.value}`)
  const results = [...document.querySelectorAll('main .result dl > div')].map((one) => `  ${said(one.querySelector('dt'))}: ${said(one.querySelector('output'))}`)
  const numbers = [...document.querySelectorAll<HTMLDataElement>('main data[data-live]')].map((one) => `  ${one.dataset.live}: ${said(one)}`)
  const part = (name: string, lines: readonly string[]): string[] => (lines.length > 0 ? [name, ...lines.slice(0, most)] : [])
  return [
    `Page: ${said(document.querySelector('h1'))}`, `Address: ${location.href}`, `Version: ${edition}`,
    ...part('Given:', fields), ...part('Shown:', results), ...part('Numbers in the text:', [...new Set(numbers)]),
    'Expected, and where that stands: ',
  ].join('\n')
}

export function report(about: HTMLElement): void {
  const area = about.querySelector('textarea')!
  const button = about.querySelector('button')!
  const status = about.querySelector('[role=status]')!
  about.querySelector('[data-address]')!.textContent = location.origin + location.pathname
  area.value = textOf(import.meta.env.EDITION)
  button.hidden = false
  button.onclick = () => navigator.clipboard.writeText(area.value).then(() => { status.textContent = 'Copied.' }, () => { status.textContent = 'Mark the text and copy it: the browser did not allow it.' })
}
