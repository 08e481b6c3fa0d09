import { useEffect, useState } from 'preact/hooks'
import type { Store } from '../../state/store.ts'

/** The value of a store, drawn again when it changes. */
export function useStore<T>(of: Store<T>): T {
  const [value, setValue] = useState(of.get)
  useEffect(() => {
    setValue(() => of.get())
    return of.watch(() => setValue(() => of.get()))
  }, [of])
  return value
}
