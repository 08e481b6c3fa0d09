import { faulty } from './faulty.ts'
import { street } from './street.ts'
import { track } from './track.ts'

/** The invented builds that come with the handbook. */
export const builds = { street, track, faulty } as const
