import { labelOf } from '@trochoid/compute/calculation/calculation.ts'
import { shownUnit, write } from '@trochoid/compute/quantity/write.ts'
import { useEffect, useRef, useState } from 'preact/hooks'
import { Field } from '../parts/Field.tsx'
import { heard } from '../parts/heard.ts'
import { say, written } from '../parts/say.ts'
import { short } from '../working/value.ts'
import { useStore } from '../parts/useStore.ts'
import { adopt } from './adopt.ts'
import type { Model } from './model.ts'
import { outLabel, outQuantity, shapesOf } from './shapes.ts'

/** An address keeps nine figures of a number: what it rounded off is no difference. */
const same = (a: unknown, b: unknown): boolean => a === b || (typeof a === 'number' && typeof b === 'number' && Math.abs(a - b) <= 1e-8 * Math.abs(b))

/** Beyond so many numbers a card is longer than its answer is worth: those that the question is about stand first, the others in a fold. */
const most = 10, shownFirst = 7

/** Givens on one side, the answer large on the other, and what it means. */
export function Card({ model, uid }: { model: Model; uid: string }) {
  const now = useStore(model.state)
  const { of } = now
  const [put, setPut] = useState<{ name: string; takeBack: (() => void) | undefined }>()
  const changed = Object.keys(of.in).filter((name) => !same(now.values[name], now.base[name]))
  const waits = Object.keys(now.faults).length > 0
  const given = (name: string) => {
    const input = of.in[name]!
    const { shape } = input
    if (shape.kind === 'curve' || shape.kind === 'map') return <p class="field" key={name}>{labelOf(input)}: <span class="soft">{now.values[name] ? 'as the build sheet has it' : 'not known'}</span></p>
    const differs = input.origin !== 'free' && changed.includes(name)
    return (
      <Field key={name} id={`${uid}-${name}`} label={labelOf(input)} shape={shape} text={now.texts[name]!} unit={now.units[name]!}
        fault={now.faults[name]} doubt={now.doubts[name]} heard={now.reading === name ? undefined : heard(now.texts[name]!, now.values[name], shape, now.units[name]!)} onType={(text) => model.type(name, text)} onLeave={model.settle} onStep={(by) => model.step(name, by)}>
        {differs && (
          <p class="differs">
            Differs from {builds[now.whose]}: {short(written(now.base[name], shape, now.system, 4))}.{' '}
            {input.origin === 'field' && <button type="button" class="plain" onClick={() => void adopt(model, name).then((takeBack) => setPut({ name, takeBack }))}>Put in my build</button>}
            <button type="button" class="plain" onClick={() => model.reset(name)}>Reset</button>
          </p>
        )}
        {!differs && put?.name === name && put.takeBack && <p class="differs" role="status">Put in your build. <button type="button" class="plain" onClick={() => { put.takeBack!(); setPut(undefined) }}>Take back</button></p>}
      </Field>
    )
  }
  const names = Object.keys(of.in)
  const first = names.length > most ? names.slice(0, shownFirst) : names
  const rest = names.slice(first.length)
  const fold = useRef<HTMLDetailsElement>(null)
  // What cannot be read, or was changed by an address, must not stay hidden.
  const wanted = rest.some((name) => now.faults[name] !== undefined || changed.includes(name))
  useEffect(() => { if (wanted && fold.current) fold.current.open = true }, [wanted])
  return (
    <div class="sides">
      <div class="givens">
        {first.map(given)}
        {rest.length > 0 && (
          <details ref={fold} class="rest">
            <summary>{rest.length} more numbers, as {builds[now.whose]} has them</summary>
            {rest.map(given)}
          </details>
        )}
      </div>
      <div class={`result${waits || !now.result ? ' waits' : ''}`}>
        {now.none ? <p class="says" role="status"><strong>No answer.</strong> {now.none}</p> : now.result && (
          <>
            <dl>
              {Object.keys(of.out).map((name, i) => {
                const q = outQuantity(of, name)
                const value = now.result!.outputs[name]!
                const was = now.before?.outputs[name]
                const unit = shownUnit(q, now.system)
                return (
                  <div key={name} class={i === 0 ? 'first' : undefined}>
                    <dt>{outLabel(of, name)}</dt>
                    <dd><output>{write(value, q, unit)}</output>{was !== undefined && was !== value && <span class="was"> was {write(was, q, unit)}</span>}</dd>
                  </div>
                )
              })}
            </dl>
            <p class="says" role="status">{say(now.result.says, shapesOf(of), { ...now.values, ...now.result.outputs }, now.system)}</p>
          </>
        )}
        {waits && <p class="small">This is the answer to the last numbers that could be read: see the marked field.</p>}
        <p class="small soft">Leaves out: {of.leavesOut}</p>
        <p class="small soft">Numbers of {builds[now.whose]}{changed.length > 0 ? ', with yours put in.' : '.'}</p>
        {changed.length > 0 && <p class="on-paper">Printed with {changed.length === 1 ? 'one number' : `${changed.length} numbers`} that {changed.length === 1 ? 'is' : 'are'} not in {builds[now.whose]}: {changed.map((name) => labelOf(of.in[name]!)).join(', ')}.</p>}
      </div>
    </div>
  )
}

const builds = { own: 'your build', sent: 'the build that was sent to you', demo: 'the invented demo build' }
