import { readFileSync } from 'node:fs'
import { BadInput } from './badInput.ts'
import { buildCommand } from './buildCommand.ts'
import { chanceCommand } from './chanceCommand.ts'
import { checksCommand } from './checksCommand.ts'
import { compareCommand } from './compareCommand.ts'
import { describeCommand, listCommand, runCommand, solveCommand } from './calculationCommands.ts'
import { logCommand } from './logCommand.ts'
import { mapCommand } from './mapCommand.ts'
import { sessionCommand } from './sessionCommand.ts'
import { type Workshop } from './workshop.ts'

const usage = 'list | describe <id> | run <id> <json> | run - | solve <id> <input> <json> | build <file or link> [--set path=value]… [--speeds a,b,…] | chance <file or link> [--samples n] [--seed n] [--set path=value]… [--tolerance path=half width]… | compare <file or link> <file or link> | session <file> [--over circuit or log] [--minutes n] [--start cold|warm] | log <log.csv> <file> [--map column=channel:unit]… [--pull from,to] | map <table.csv> [--temperature t] [--pressure p] | map --inducer d --exducer d | checks'

/** Bad input as the contract tells it; null where the fault is ours. */
const refusal = (error: unknown): { readonly error: { readonly field: string; readonly message: string } } | null => (error instanceof BadInput ? { error: { field: error.field, message: error.message } } : null)

/** Runs one command, prints what it answers, and returns the exit code. */
export async function calc(workshop: Workshop, args: readonly string[], lines: AsyncIterable<string>, print: (answer: unknown) => void): Promise<0 | 2> {
  try { await obey(workshop, args, lines, print); return 0 } catch (error) {
    const told = refusal(error)
    if (!told) throw error
    print(told)
    return 2
  }
}

async function obey(workshop: Workshop, [command, ...rest]: readonly string[], lines: AsyncIterable<string>, print: (answer: unknown) => void): Promise<void> {
  if (command === 'list') return print(listCommand(workshop))
  if (command === 'describe') return print(describeCommand(workshop, rest[0]))
  if (command === 'run' && rest[0] === '-') {
    for await (const line of lines) {
      if (line.trim() === '') continue
      try {
        const asked = parse(line, 'line')
        if (typeof asked !== 'object' || asked === null || Array.isArray(asked)) throw new BadInput('line', 'A line is an object: {"id": …, "inputs": {…}}.')
        const { id, inputs } = asked as { id?: unknown; inputs?: unknown }
        print(runCommand(workshop, id, inputs))
      } catch (error) { const told = refusal(error); if (!told) throw error; print(told) }
    }
    return
  }
  if (command === 'run') return print(runCommand(workshop, rest[0], parse(rest[1] ?? '{}', 'inputs')))
  if (command === 'solve') return print(solveCommand(workshop, rest[0], rest[1], parse(rest[2] ?? '', 'wanted')))
  if (command === 'build') return print(await buildCommand(workshop, rest, text))
  if (command === 'chance') return print(await chanceCommand(workshop, rest, text))
  if (command === 'compare') return print(await compareCommand(workshop, rest, text))
  if (command === 'session') return print(await sessionCommand(workshop, rest, text, readFileSync))
  if (command === 'log') return print(await logCommand(workshop, rest, text, readFileSync))
  if (command === 'map') return print(mapCommand(rest, text))
  if (command === 'checks') return print(checksCommand(workshop))
  throw new BadInput('command', `Use: ${usage}`)
}

const text = (file: string): string => readFileSync(file, 'utf8')
function parse(json: string, field: string): unknown {
  try { return JSON.parse(json) } catch { throw new BadInput(field, 'This is not JSON.') }
}
