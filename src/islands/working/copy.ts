import { csv } from '../parts/files.ts'
import type { Notes } from './notes.ts'

/** A working, read off the page, in three forms. */
export type Form = 'text' | 'tex' | 'csv'

type Row = { readonly step: string; readonly plain: readonly string[]; readonly tex: readonly string[]; readonly values: readonly (readonly [string, string])[]; readonly source: string; readonly range: string }

export function copyOf(root: Element, form: Form, notes: Notes): string {
  const rows = [...root.querySelectorAll<HTMLElement>('.steps > .step')].map((item) => rowOf(item, notes))
  if (form === 'csv') return csv([['step', 'name', 'value', 'source', 'range'], ...rows.flatMap((r) => r.values.map(([name, value]) => [r.step, name, value, r.source, r.range]))])
  if (form === 'tex') return rows.map((r) => [`% ${r.step}`, ...r.tex.map((t) => `\\[${t}\\]`)].join('\n')).join('\n\n')
  return rows.map((r, i) => [`${i + 1}. ${r.step}`, ...r.plain.map((line) => `   ${line}`), ...r.values.filter(([name]) => name.startsWith('= ')).map(([name, value]) => `   ${name.slice(2)} = ${value}`), `   ${r.source}. ${r.range}`].join('\n')).join('\n')
}

function rowOf(item: HTMLElement, notes: Notes): Row {
  const { ways = {}, tex = [], plain = [] } = notes[item.dataset.formula!] ?? {}
  const value = new Map([...item.querySelectorAll('[data-v]')].map((slot) => [slot.getAttribute('data-v')!, slot.textContent ?? '']))
  const text = (place: string): string => value.get(place) ?? ways[place]?.fixed ?? ways[place]?.name ?? ''
  return {
    step: item.querySelector('.name')?.textContent?.trim() ?? '',
    plain: plain.flatMap((line) => [line.replace(/\{([\w.]+)\}/g, (_, place: string) => (place[0] === 'o' ? ways[place]?.name : text(place)) ?? '')]),
    tex: tex.flatMap((line) => [
      line.replace(/\\v\{([\w.]+)\}/g, (_, place: string) => `{${ways[place]?.tex ?? ''}}`),
      line.replace(/\\v\{([\w.]+)\}/g, (_, place: string) => `\\text{${text(place).replace(/[%#&_$]/g, '\\$&')}}`),
    ]),
    values: Object.entries(ways).filter(([place]) => value.has(place)).map(([place, way]) => [`${place[0] === 'o' ? '= ' : ''}${way.name}`, text(place)]),
    source: item.querySelector('.source')?.textContent ?? '',
    range: item.querySelector('.range')?.textContent ?? '',
  }
}
