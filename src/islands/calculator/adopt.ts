import type { Model } from './model.ts'

/** Writes one number of a calculator into the reader's build: the only way from a calculator into the sheet, and only when asked. */
export async function adopt(model: Model, name: string): Promise<void> {
  const { of, base, whose, values, texts } = model.state.get()
  const input = of.in[name]
  if (input?.origin !== 'field') return
  const { putIn } = await import('../../state/putIn.ts')
  putIn(input.path, { value: values[name], typed: texts[name]! })
  model.rebase({ ...base, [name]: values[name] }, whose)
}
