import { all, create } from 'mathjs'
import { loadRegistry } from '../../shared/registry.ts'
import { isQuantity } from '../../shared/quantity/quantity.ts'
import { traced } from '../../shared/formula/trace.ts'
import { margins } from '../../shared/build/everything.ts'
import { weighMargins } from '../../shared/build/margins.ts'
import { solveBuild, solveCore } from '../../shared/build/solve.ts'
import { builds } from '../../shared/data/builds/index.ts'
import { leftsOf, workOf } from '../../shared/uncertainty/sampling.ts'
import { wholeModel } from '../../shared/uncertainty/wholeModel.ts'

const sheet = builds.street

/** Median time of one call, in milliseconds, after warming up. */
function median(work: () => unknown, rounds = 101): number {
  for (let i = 0; i < 50; i++) work()
  const times = Array.from({ length: rounds }, () => { const start = performance.now(); work(); return performance.now() - start })
  return times.sort((a, b) => a - b)[rounds >> 1]!
}

const core = median(() => solveCore(sheet))
const everything = median(() => weighMargins(margins, solveBuild(sheet), sheet))
const typing = median(() => weighMargins(margins, solveBuild(sheet, Array.from({ length: 12 }, (_, i) => 160 + i * 60)), sheet))
console.log(`air and boost loop, 36 speeds     ${core.toFixed(2)} ms (limit 3)`)
console.log(`whole build with margins, 36      ${everything.toFixed(2)} ms (limit 10), ${(everything / core).toFixed(2)} times the loop`)
console.log(`whole build with margins, 12      ${typing.toFixed(2)} ms, ${(typing / everything).toFixed(2)} of 36 speeds`)

const drawn = 4
const work = workOf({ sheet, thresholds: {}, tolerances: {}, samples: drawn, seed: 1 }, wholeModel)
const lefts = new Float64Array(work.items * work.weighed.length)
const chance = median(() => { for (const _ of leftsOf(work, wholeModel, 0, drawn, lefts)) { /* every sample */ } })
console.log(`2,000 samples of the whole build  ${(chance / drawn).toFixed(2)} s over two threads (limit 15)`)

// The same formulas through our functions and through compiled mathjs, on the same inputs.
const math = create(all!, {})
const { formulas } = await loadRegistry()
const explicit = [...formulas.values()].filter(({ about }) => 'equation' in about && typeof about.equation === 'string' && !about.units && Object.values(about.in).every(isQuantity))
const cases = explicit.map(({ about, formula }) => {
  const x = Object.fromEntries(Object.entries(about.in).map(([name, q]) => [name, isQuantity(q) ? (q.whole ? Math.round((q.range[0] + q.range[1]) / 2) : (q.range[0] + q.range[1]) / 2) : 0]))
  const scope = { ...x, ...Object.fromEntries(Object.entries(about.constants ?? {}).map(([name, c]) => [name, c.value])) }
  return { run: formula as unknown as (x: unknown) => unknown, bare: formula.bare as unknown as (x: unknown) => unknown, x, scope, compiled: math.compile((about as { equation: string }).equation) }
})
const rounds = 2000
const ours = median(() => { for (let i = 0; i < rounds; i++) for (const c of cases) c.run(c.x) }, 15)
const bare = median(() => { for (let i = 0; i < rounds; i++) for (const c of cases) c.bare(c.x) }, 15)
const theirs = median(() => { for (let i = 0; i < 20; i++) for (const c of cases) c.compiled.evaluate(c.scope) }, 15) * (rounds / 20)
const recorded = median(() => { for (let i = 0; i < 20; i++) traced(() => { for (const c of cases) c.run(c.x); return 0 }) }, 15) * (rounds / 20)
const perCall = (ms: number): string => `${((ms * 1e6) / (rounds * cases.length)).toFixed(0)} ns`
console.log(`one call of ${cases.length} explicit formulas   ${perCall(ours)}; compiled mathjs ${perCall(theirs)}, ${(theirs / ours).toFixed(0)} times`)
console.log(`of that, the trace while off      ${(((ours - bare) / ours) * 100).toFixed(0)} % (limit 20)`)
console.log(`the same with the trace on        ${perCall(recorded)}, ${(recorded / ours).toFixed(1)} times`)
