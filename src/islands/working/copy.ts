import { csv } from '../parts/files.ts'
import { plainOf, texOf } from './math.ts'
import { slotOf } from './ways.ts'

/** A working, read off the page, in three forms. */
export type Form = 'text' | 'tex' | 'csv'

type Row = { readonly step: string; readonly equations: readonly Element[]; readonly values: readonly (readonly [string, string])[]; readonly source: string; readonly range: string }

export function copyOf(root: Element, form: Form): string {
  const rows = [...root.querySelectorAll<HTMLElement>('.steps > .step')].map(rowOf)
  if (form === 'csv') return csv([['step', 'name', 'value', 'source', 'range'], ...rows.flatMap((r) => r.values.map(([name, value]) => [r.step, name, value, r.source, r.range]))])
  if (form === 'tex') return rows.map((r) => [`% ${r.step}`, ...r.equations.map((one) => `\\[${texOf(one)}\\]`)].join('\n')).join('\n\n')
  return rows.map((r, i) => [`${i + 1}. ${r.step}`, ...r.equations.map((one) => `   ${plainOf(one)}`), ...r.values.filter(([name]) => name.startsWith('= ')).map(([name, value]) => `   ${name.slice(2)} = ${value}`), `   ${r.source}. ${r.range}`].join('\n')).join('\n')
}

function rowOf(item: HTMLElement): Row {
  const slots = [...item.querySelectorAll('[data-v]')].map((slot) => [...slotOf(slot.getAttribute('data-v')!), slot.textContent ?? ''] as const)
  const value = new Map(slots.filter(([place, { name }]) => name && !place.startsWith('o.')).map(([place, { name }, text]) => [place, [name, text] as const]))
  for (const [place, { name }, text] of slots) if (place.startsWith('o.')) value.set(place, [`= ${name}`, text])
  return {
    step: item.querySelector('.name')?.textContent?.trim() ?? '',
    equations: [...item.querySelectorAll('math')],
    values: [...value.values()],
    source: item.querySelector('.source')?.textContent ?? '',
    range: item.querySelector('.range')?.textContent ?? '',
  }
}
