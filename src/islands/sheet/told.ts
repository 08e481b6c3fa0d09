import { store, type Store } from '../../state/store.ts'

/** What the sheet last did, for those who cannot see it. */
export const told: Store<string> = store('')
