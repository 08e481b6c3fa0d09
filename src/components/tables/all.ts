import { coolant } from './coolant.ts'
import { friction } from './friction.ts'
import { fuels } from './fuels.ts'
import { hoses } from './hoses.ts'
import { materials } from './materials.ts'
import { oilGrades } from './oilGrades.ts'
import type { ReferenceTable } from './table.ts'
import { units } from './units.ts'

export const tables: readonly ReferenceTable[] = [hoses, oilGrades, fuels, coolant, materials, friction, units]
