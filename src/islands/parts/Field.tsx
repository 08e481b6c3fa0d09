import { isQuantity, type Quantity, type Shape } from '@trochoid/compute/quantity/quantity.ts'
import { write } from '@trochoid/compute/quantity/write.ts'
import type { ComponentChildren } from 'preact'
import { short } from '../working/value.ts'
import { Symbol } from './Symbol.tsx'
import { fetchReader } from './typed.ts'

export type Fault = { readonly says: string; readonly choices?: readonly string[] }
type Props = {
  id: string
  label: string
  shape: Shape
  text: string
  unit: string
  fault?: Fault | undefined
  doubt?: string | undefined
  /** What a sum, a fraction or a hose size was read as. */
  heard?: string | undefined
  onType: (text: string) => void
  /** The reader is done with the field. */
  onLeave?: () => void
  /** Up and down keys: one tolerance step. */
  onStep?: (by: 1 | -1) => void
  children?: ComponentChildren
}

/** One field: label with unit, what was typed kept, what is wrong beside it with what would be right. */
export function Field({ id, label, shape, text, unit, fault, doubt, heard, onType, onLeave, onStep, children }: Props) {
  const told = [fault ? `${id}-fault` : doubt ? `${id}-doubt` : `${id}-hint`].join(' ')
  const common = { id, 'aria-describedby': told, 'aria-invalid': fault ? true : undefined, onBlur: onLeave, onFocus: () => void fetchReader() } as const
  return (
    <div class="field">
      <label for={id}>
        {label}{isQuantity(shape) && <>{shape.symbol && <> <Symbol of={shape.symbol} /></>}{unit !== '1' && <span class="unit">, {unit}</span>}</>}
      </label>
      {shape.kind === 'choice'
        ? <select {...common} value={text} onChange={(e) => onType(e.currentTarget.value)}>{Object.entries(shape.choices).map(([value, words]) => <option key={value} value={value} selected={value === text}>{words}</option>)}</select>
        : <input {...common} type="text" inputmode={isQuantity(shape) ? 'decimal' : 'text'} autocomplete="off" spellcheck={false} value={text}
          onInput={(e) => onType(e.currentTarget.value)}
          onKeyDown={(e) => {
            if (!onStep || (e.key !== 'ArrowUp' && e.key !== 'ArrowDown')) return
            e.preventDefault()
            onStep(e.key === 'ArrowUp' ? 1 : -1)
          }} />}
      {fault
        ? <div id={`${id}-fault`} class="fault">{fault.says}{fault.choices && <div class="asks row">{fault.choices.map((choice) => <button type="button" key={choice} onClick={() => onType(choice)}>{choice}</button>)}</div>}</div>
        : doubt ? <p id={`${id}-doubt`} class="doubt">{doubt}</p> : <p id={`${id}-hint`} class="hint">{heard && <strong>Read as {heard}. </strong>}{hintOf(shape, unit)}</p>}
      {children}
    </div>
  )
}

function hintOf(shape: Shape, unit: string): string {
  if (!isQuantity(shape)) return shape.kind === 'grade' ? 'As on the can: 10W-40' : ''
  return `Usually ${bound(shape.range[0], shape, unit)} to ${short(write(shape.range[1], shape, unit))}`
}
/** The lower bound without its unit, which the upper bound carries. */
const bound = (si: number, of: Quantity, unit: string): string => short(write(si, of, unit)).split('\u202f')[0]!
