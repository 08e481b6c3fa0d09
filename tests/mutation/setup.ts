import fc from 'fast-check'
import { expect, inject, vi } from 'vitest'

// The same samples in every run: a score that changes by itself measures nothing.
fc.configureGlobal({ seed: 20_251_001 })

// The thread is kept from mutant to mutant and from file to file.
type State = { activeMutant?: string | undefined; mutantCoverage?: { static: Record<string, number>; perTest: Record<string, Record<string, number>> } }
const given = inject as unknown as (name: string) => string | undefined
const state = (globalThis as unknown as Record<string, State | undefined>)[given('globalNamespace') ?? '']
if (state) {
  // What a test file computes while it is read must not be computed by the mutant before.
  if (given('mutantActivation') !== 'static') state.activeMutant = undefined
  // What the files before have reached is already told; told again by every file it would count many times over.
  if (state.mutantCoverage) for (const told of [state.mutantCoverage.static, state.mutantCoverage.perTest]) for (const key of Object.keys(told)) Reflect.deleteProperty(told, key)
}

// Compressor maps are prepared once and remembered, so the files that read them are read afresh.
if (/tests.shared.(boost|build)/.test(expect.getState().testPath ?? '')) vi.resetModules()
