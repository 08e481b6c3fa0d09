import type { Chance } from '@trochoid/compute/uncertainty/chances.ts'
import type { Plan } from '@trochoid/compute/uncertainty/sampling.ts'
import { ask } from './ask.ts'

export type ChanceNews = { readonly kind: 'progress'; readonly share: number } | { readonly kind: 'chances'; readonly chances: readonly Chance[] } | { readonly kind: 'failed'; readonly says: string }

/** As many as there are cores for, and two are always worth it. */
const most = 4
const workers = (): number => Math.max(2, Math.min(most, Math.floor(navigator.hardwareConcurrency / 2) || 2))

/**
 * Works out the chances of a build in several workers; the page only joins what they bring. The answer does not depend on how many there are.
 * @param items how many items the plan has: its samples, the build as it stands, and two for each number with a tolerance
 * @returns stops all of them at once
 */
export function askChances(plan: Plan, items: number, told: (news: ChanceNews) => void): () => void {
  const count = workers()
  const parts = new Array<Float64Array>(count)
  const done = new Array<number>(count).fill(0)
  const stops: (() => void)[] = []
  let over = false
  const stop = () => { over = true; for (const one of stops) one() }
  const failed = (says: string) => { if (!over) { stop(); told({ kind: 'failed', says }) } }
  for (let i = 0; i < count; i++) {
    const from = Math.round((items * i) / count)
    const to = Math.round((items * (i + 1)) / count)
    stops.push(ask({ kind: 'sample', plan, from, to }, (news) => {
      if (over) return
      if (news.kind === 'failed') failed(news.says)
      else if (news.kind === 'progress') { done[i] = news.done; told({ kind: 'progress', share: done.reduce((a, b) => a + b, 0) / items }) }
      else if (news.kind === 'sampled') {
        parts[i] = news.lefts
        if (parts.filter(Boolean).length === count) stops.push(counting(plan, joined(parts), (last) => { if (!over) told(last) }))
      }
    }))
  }
  return stop
}

function counting(plan: Plan, lefts: Float64Array, told: (news: ChanceNews) => void): () => void {
  return ask({ kind: 'count', plan, lefts }, (news) => { if (news.kind === 'chances' || news.kind === 'failed') told(news) })
}
function joined(parts: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) { all.set(part, at); at += part.length }
  return all
}
