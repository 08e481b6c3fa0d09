import { createInterface } from 'node:readline'
import { calc } from './commands.ts'
import { openWorkshop } from './workshop.ts'

/** Lines of standard input, opened only by the command that reads them. */
async function* lines(): AsyncGenerator<string> { yield* createInterface({ input: process.stdin }) }

process.exitCode = await calc(await openWorkshop(), process.argv.slice(2), lines(), (answer) => { process.stdout.write(`${JSON.stringify(answer)}\n`) })
