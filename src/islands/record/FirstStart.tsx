import { outsideOf } from '@trochoid/compute/record/expected.ts'
import { measuredItems } from '@trochoid/compute/record/items.ts'
import { startChecks, type Check, type Stated } from '@trochoid/compute/record/startChecks.ts'
import { lineOfStep, startStages, type StartStep } from '@trochoid/compute/record/startSteps.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import type { ComponentChildren } from 'preact'
import type { Store } from '../../state/store.ts'
import type { View } from '../../state/view.ts'
import { written } from '../parts/say.ts'
import { MeasuredLine } from './MeasuredLine.tsx'
import { Step } from './Step.tsx'
import { useRecord } from './useRecord.ts'
import { Who } from './Who.tsx'

const items = new Map(measuredItems.map((item) => [item.id, item]))
const doubts = { common: 'start value', guess: 'guessed' } as const

/** The checklist of a first start with the numbers of this build. Its ticks and figures are lines of the record. */
export function FirstStart({ view }: { view: Store<View> }) {
  const { now, system, record, values, nameOf, writeOf } = useRecord(view)
  const checks = startChecks(now.sheet, now.solved)
  const all = startStages.flatMap(({ steps }) => steps.map(([id, name]) => ({ id, name })))
  const done = ({ id }: { id: StartStep }): boolean => record.lines[lineOfStep(id)]?.done ?? false
  const next = all.find((step) => !done(step))
  const outside = outsideOf(record, values)
  return (
    <>
      <Who />
      <p role="status">{all.filter(done).length} of {all.length} done.{next ? ` Next: ${next.name}.` : ''}{outside.length > 0 && <strong> {outside.length === 1 ? 'One figure' : `${outside.length} figures`} in the record {outside.length === 1 ? 'lies' : 'lie'} outside what is expected: {outside.map((m) => m.name).join('; ')}.</strong>}</p>
      {startStages.map(({ id, title, steps }) => (
        <section key={id}>
          <h2 id={id}>{title}</h2>
          <ol class="checks">
            {steps.map(([step, name]) => (
              <li key={step}>
                <Step name={name} line={record.lines[lineOfStep(step)]} onWrite={writeOf(lineOfStep(step))} />
                <Told check={checks[step]} system={system}>
                  {checks[step].measured?.map((line) => <MeasuredLine key={line} item={items.get(line)!} line={record.lines[line]} fields={values} nameOf={nameOf} system={system} onWrite={writeOf(line)} />)}
                </Told>
              </li>
            ))}
          </ol>
        </section>
      ))}
    </>
  )
}

const Told = ({ check: { how, stop, numbers }, system, children }: { check: Check; system: System; children: ComponentChildren }) => (
  <div class="small">
    <p>{how}{stop && <> <strong>Stop:</strong> {stop.charAt(0).toLowerCase() + stop.slice(1)}</>}</p>
    {numbers.length > 0 && <ul>{numbers.map((n) => <li key={n.name}>{n.name} <Value of={n} system={system} /></li>)}</ul>}
    {children && <div class="two">{children}</div>}
  </div>
)
const Value = ({ of: { value, shape, from }, system }: { of: Stated; system: System }) => (
  <><strong>{written(value, shape, system)}</strong>{value !== null && (from === 'common' || from === 'guess') && <span class="soft"> ({doubts[from]})</span>}</>
)
