import fc from 'fast-check'
import { expect, inject, vi } from 'vitest'

// The same samples in every run: a score that changes by itself measures nothing.
fc.configureGlobal({ seed: 20_251_001 })

// The thread is kept from mutant to mutant: what a test file computes while it is read must not be computed by the one before.
const given = inject as unknown as (name: string) => string | undefined
const name = given('globalNamespace')
if (name !== undefined && given('mutantActivation') !== 'static') {
  const state = (globalThis as unknown as Record<string, { activeMutant?: string | undefined } | undefined>)[name]
  if (state) state.activeMutant = undefined
}

// Compressor maps are prepared once and remembered, so the files that read them are read afresh.
if (/tests.shared.(boost|build)/.test(expect.getState().testPath ?? '')) vi.resetModules()
