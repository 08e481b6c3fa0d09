import { Worker } from 'node:worker_threads'
import { readValue } from '../calculation/inputs.ts'
import { readArithmetic } from '../quantity/arithmetic.ts'
import { chancesOf } from '../uncertainty/chances.ts'
import { inputsOf, type Tolerances } from '../uncertainty/inputs.ts'
import { workOf, type Plan } from '../uncertainty/sampling.ts'
import { wholeModel } from '../uncertainty/wholeModel.ts'
import { BadInput } from './badInput.ts'
import { setField } from './buildCommand.ts'
import { sheetFrom } from './sheetFrom.ts'
import { type Workshop } from './workshop.ts'

const mostSamples = 100_000
const threads = 2

/** The chance that each link of a build holds, by sampling over two threads: seed and samples decide it to the last digit. */
export async function chanceCommand(shop: Workshop, args: readonly string[], readFile: (path: string) => string) {
  const [file, ...options] = args
  if (!file) throw new BadInput('file', 'Name a build file.')
  let sheet = await sheetFrom(file, shop, readFile)
  let samples = 2000
  let seed = 1
  const said: [string, string][] = []
  for (let i = 0; i < options.length; i += 2) {
    const value = options[i + 1]
    if (options[i] === '--samples' && value !== undefined) samples = whole('samples', value, mostSamples)
    else if (options[i] === '--seed' && value !== undefined) seed = whole('seed', value, 2147483645)
    else if (options[i] === '--set' && value !== undefined) sheet = setField(sheet, value, shop)
    else if (options[i] === '--tolerance' && value !== undefined) said.push(cut(value))
    else throw new BadInput(options[i] ?? '', 'Options are --samples n, --seed n, --set path=value and --tolerance path=half width, the last two any number of times.')
  }
  const inputs = inputsOf(sheet, wholeModel.fields)
  const tolerances: Tolerances = Object.fromEntries(said.map(([id, text]) => {
    const input = inputs.find((one) => one.id === id)
    if (!input) throw new BadInput(id.slice(0, 80), 'No number of this build that could be out has that name.')
    const read = readValue(/^[\d.]+(e-?\d+)?$/i.test(text) ? Number(text) : text, input.of, readArithmetic)
    if (!read.ok || !((read.value as number) >= 0)) throw new BadInput(id, read.ok ? 'A tolerance is half a width: nothing or more.' : read.says)
    return [id, { form: input.usual.form, half: read.value as number }]
  }))
  const plan: Plan = { sheet, thresholds: {}, tolerances, samples, seed }
  const work = workOf(plan, wholeModel)
  const lefts = new Float64Array(work.items * work.weighed.length)
  await Promise.all(Array.from({ length: threads }, async (_, i) => {
    const from = Math.round((work.items * i) / threads)
    lefts.set(await run(plan, from, Math.round((work.items * (i + 1)) / threads)), from * work.weighed.length)
  }))
  return {
    name: sheet.name, samples, seed, speeds: work.speeds, says: 'Chance in this model is not chance in the car.', knock: 'not known',
    chances: chancesOf(work, lefts), inputs: work.inputs.map(({ id, name, from, spread }) => ({ id, name, from, ...spread })),
  }
}

const run = (plan: Plan, from: number, to: number): Promise<Float64Array> => new Promise((done, failed) => {
  const worker = new Worker(new URL('./chanceThread.ts', import.meta.url), { workerData: { plan, from, to } })
  worker.once('message', done)
  worker.once('error', failed)
})

function whole(name: string, text: string, most: number): number {
  const value = Number(text)
  if (!Number.isInteger(value) || value < 1 || value > most) throw new BadInput(name, `${name} is a whole number from 1 to ${most}.`)
  return value
}
function cut(text: string): [string, string] {
  const at = text.indexOf('=')
  if (at < 1) throw new BadInput('tolerance', 'A tolerance is given as path=half width, in SI or with a unit.')
  return [text.slice(0, at), text.slice(at + 1)]
}
