import { buildAll } from './build/all.ts'

await buildAll()
