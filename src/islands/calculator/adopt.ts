import type { Model } from './model.ts'

/**
 * Writes one number of a calculator into the reader's build: the only way from a calculator into the sheet, and only when asked.
 * @returns what takes it back; the calculator then goes on with the number, which differs again
 */
export async function adopt(model: Model, name: string): Promise<(() => void) | undefined> {
  const { of, base, whose, values, texts } = model.state.get()
  const input = of.in[name]
  if (input?.origin !== 'field') return undefined
  const { putIn } = await import('../../state/putIn.ts')
  const takeBack = putIn(input.path, { value: values[name], typed: texts[name]! })
  model.rebase({ ...base, [name]: values[name] }, whose)
  return () => {
    takeBack()
    model.rebase({ ...model.state.get().base, [name]: base[name] }, whose)
    model.type(name, texts[name]!)
  }
}
