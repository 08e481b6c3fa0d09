type Files = Readonly<Record<string, () => Promise<unknown>>>
/** One list of names for each discipline: who wants one calculation carries the names of its neighbours only. */
const lists = import.meta.glob<{ files: Files }>('./loaders/*.ts')

/** How a calculation is loaded that is known by the file it lies in, `fuel/injectorDuty`. */
export async function listed(file: string): Promise<() => Promise<unknown>> {
  const list = await lists[`./loaders/${file.split('/')[0]!}.ts`]?.()
  const load = list?.files[`/shared/${file}.calc.ts`]
  if (!load) throw new Error(`There is no calculation ${file}.`)
  return load
}
