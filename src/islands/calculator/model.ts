import { NoAnswer, run, type AnyCalculation, type Run, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { readGrade } from '@trochoid/compute/quantity/grade.ts'
import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import type { Read, Refused } from '@trochoid/compute/quantity/read.ts'
import { shownUnit, type System } from '@trochoid/compute/quantity/write.ts'
import { store, type Store } from '../../state/store.ts'
import type { Fault } from '../parts/Field.tsx'
import { numberText, readTyped } from '../parts/typed.ts'

/** The demo build, a build of the reader's own, or one that was sent. */
export type Whose = 'demo' | 'own' | 'sent'
/** One calculator as it stands: what the build gives, what was typed over it, and the answer to the last good inputs. */
export type State = {
  readonly of: AnyCalculation
  readonly system: System
  /** Whose numbers those under the reader's are. */
  readonly whose: Whose
  readonly base: Values
  readonly values: Values
  readonly texts: Readonly<Record<string, string>>
  readonly units: Readonly<Record<string, string>>
  readonly faults: Readonly<Record<string, Fault>>
  readonly doubts: Readonly<Record<string, string>>
  /** The given whose text is still being read, so that its value is not yet what was typed. */
  readonly reading: string | null
  readonly result: Run | null
  /** Why there is no answer. */
  readonly none: string | null
  /** The answer before the reader began to move something. */
  readonly before: { readonly values: Values; readonly outputs: Readonly<Record<string, number>> } | null
}
export type Model = {
  readonly state: Store<State>
  readonly type: (name: string, text: string) => void
  readonly put: (values: Values) => void
  readonly step: (name: string, by: 1 | -1) => void
  readonly reset: (name?: string) => void
  readonly settle: () => void
  readonly rebase: (base: Values, whose: Whose) => void
  readonly show: (system: System) => void
}

export function start(of: AnyCalculation, base: Values, system: System, whose: Whose = 'demo'): State {
  const units = Object.fromEntries(Object.entries(of.in).map(([name, { shape }]) => [name, isQuantity(shape) ? shownUnit(shape, system) : '']))
  const texts = Object.fromEntries(Object.keys(of.in).map((name) => [name, textOf(of, name, base[name], units[name]!)]))
  return { of, system, whose, base, values: base, texts, units, faults: {}, doubts: {}, reading: null, before: null, ...answered(of, base) }
}

function textOf(of: AnyCalculation, name: string, value: unknown, unit: string): string {
  const { shape } = of.in[name]!
  if (isQuantity(shape)) return typeof value === 'number' ? numberText(value, shape, unit) : ''
  return typeof value === 'string' ? value : ''
}

function answered(of: AnyCalculation, values: Values): Pick<State, 'result' | 'none'> {
  try { return { result: run(of, values), none: null } } catch (error) {
    if (error instanceof NoAnswer) return { result: null, none: error.message }
    throw error
  }
}

/** How long after the last change the old answer goes on standing faintly beside the new one, in ms. */
const settling = 1500

export function model(first: State): Model {
  const state = store(first)
  const { of } = first
  let timer: ReturnType<typeof setTimeout> | undefined
  let turn = 0

  function move(values: Values, more: Partial<State>): void {
    const now = state.get()
    const before = now.before ?? (now.result && { values: now.values, outputs: now.result.outputs })
    state.set({ ...now, ...more, values, before, ...answered(of, values) })
    clearTimeout(timer)
    timer = setTimeout(settle, settling)
  }
  function settle(): void { if (state.get().before) state.set({ ...state.get(), before: null }) }

  function taken(name: string, text: string, reading: Read | Refused): void {
    const now = { ...state.get(), reading: null }
    const { [name]: _f, ...faults } = now.faults
    const { [name]: _d, ...doubts } = now.doubts
    const texts = { ...now.texts, [name]: text }
    if (!reading.ok) {
      if (reading.fault === 'empty' && 'optional' in of.in[name]!) return move({ ...now.values, [name]: null }, { texts, faults, doubts, reading: null })
      return state.set({ ...now, texts, doubts, faults: { ...faults, [name]: reading } })
    }
    const also = reading.at === undefined ? undefined : companion(of, name)
    if (reading.at !== undefined && !also) return state.set({ ...now, texts, faults: { ...faults, [name]: { says: `This field takes no “at ${reading.at}”.` } } })
    move({ ...now.values, [name]: reading.value }, {
      texts, faults, reading: null, units: { ...now.units, [name]: reading.unit }, doubts: reading.doubt ? { ...doubts, [name]: reading.doubt } : doubts,
    })
    if (also) type(also, reading.at!)
  }

  function type(name: string, text: string): void {
    const now = state.get()
    const { shape } = of.in[name]!
    const mine = ++turn
    if (isQuantity(shape)) {
      const reading = readTyped(text, shape, now.units[name]!)
      if (!(reading instanceof Promise)) return taken(name, text, reading)
      state.set({ ...now, texts: { ...now.texts, [name]: text }, reading: name })
      void reading.then((done) => { if (mine === turn || state.get().texts[name] === text) taken(name, text, done) })
    } else if (shape.kind === 'choice') move({ ...now.values, [name]: text }, { texts: { ...now.texts, [name]: text } })
    else if (shape.kind === 'grade') {
      const grade = readGrade(text)
      if (!grade.ok) return state.set({ ...now, texts: { ...now.texts, [name]: text }, faults: { ...now.faults, [name]: grade } })
      const { [name]: _, ...faults } = now.faults
      move({ ...now.values, [name]: grade.value }, { texts: { ...now.texts, [name]: text }, faults })
    }
  }

  function put(values: Values): void {
    const now = state.get()
    const names = Object.keys(values).filter((name) => name in of.in)
    const without = <T>(all: Readonly<Record<string, T>>): Record<string, T> => Object.fromEntries(Object.entries(all).filter(([name]) => !names.includes(name)))
    const texts = Object.fromEntries(names.map((name) => [name, textOf(of, name, values[name], now.units[name]!)]))
    move({ ...now.values, ...values }, { texts: { ...now.texts, ...texts }, faults: without(now.faults), doubts: without(now.doubts) })
  }

  function step(name: string, by: 1 | -1): void {
    const { shape } = of.in[name]!
    const value = state.get().values[name]
    if (!isQuantity(shape) || typeof value !== 'number') return
    const next = value + by * shape.step
    if (next >= shape.range[0] || next > value) put({ [name]: next })
  }

  return {
    state, type, put, step, settle,
    reset(name) { const { base } = state.get(); put(name === undefined ? base : { [name]: base[name] }) },
    rebase(base, whose) {
      // What the reader typed over stays; everything else follows the build.
      const now = state.get()
      const kept = Object.fromEntries(Object.keys(of.in).filter((name) => now.values[name] !== now.base[name]).map((name) => [name, now.values[name]]))
      const { units } = now
      const values = { ...base, ...kept }
      const texts = Object.fromEntries(Object.keys(of.in).map((name) => [name, name in kept ? now.texts[name]! : textOf(of, name, values[name], units[name]!)]))
      state.set({ ...now, base, whose, values, texts, before: null, ...answered(of, values) })
    },
    show(system) {
      const now = state.get()
      if (now.system === system) return
      const units = Object.fromEntries(Object.entries(of.in).map(([name, { shape }]) => [name, isQuantity(shape) ? shownUnit(shape, system) : '']))
      const texts = Object.fromEntries(Object.keys(of.in).map((name) => [name, now.faults[name] ? now.texts[name]! : textOf(of, name, now.values[name], units[name]!)]))
      state.set({ ...now, system, units, texts })
    },
  }
}

/** The input that takes the "at 3 bar" of "650 cc/min at 3 bar". */
function companion(of: AnyCalculation, name: string): string | undefined {
  const input = of.in[name]!
  const at = input.origin === 'field' ? input.at : undefined
  return at === undefined ? undefined : Object.keys(of.in).find((other) => { const o = of.in[other]!; return o.origin === 'field' && o.path === at })
}
