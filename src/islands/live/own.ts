import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { NoAnswer, type AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { sheetOf } from '../../state/build.ts'
import { builds, isOwn } from '../../state/own.ts'
import { ownPoint, ownValues } from '../../state/ownValues.ts'
import { allFields } from '../../state/solver/look.ts'
import { system } from '../../state/system.ts'
import { loadCalculation } from '../calculator/load.ts'
import { writeAll } from './units.ts'

/** Puts the reader's own numbers in place of those of the demo build. */
export async function fillFromOwn(): Promise<void> {
  const places = [...document.querySelectorAll<HTMLDataElement>('data[data-live]')]
  const files = [...new Set(places.flatMap(({ dataset }) => (dataset.file ? [dataset.file] : [])))]
  const calculations = new Map(await Promise.all(files.map(async (file) => [file, await loadCalculation(file)] as const)))
  const fields = await allFields()
  const fill = async () => {
    const sheet = sheetOf(builds.get())
    const point = await ownPoint()
    const answers = new Map(await Promise.all([...calculations].map(async ([file, of]) => [file, await answer(of)] as const)))
    for (const place of places) {
      const path = place.dataset.live!
      const field = fields.get(path)
      const value = place.dataset.file ? answers.get(place.dataset.file)?.[path.slice(path.indexOf('.') + 1)] : field ? valueAt(sheet, field) : point[path]
      place.value = typeof value === 'number' ? String(value) : ''
      place.textContent = typeof value === 'number' ? '' : value === undefined || value === null ? 'not known' : String(value)
      place.classList.toggle('own', isOwn(builds.get()))
    }
    writeAll(system.get())
  }
  await fill()
  builds.watch(() => void fill())
}

async function answer(of: AnyCalculation): Promise<Readonly<Record<string, unknown>>> {
  const values = await ownValues(of)
  try { return { ...values, ...of.answer(values) } } catch (error) { if (error instanceof NoAnswer) return values; throw error }
}
