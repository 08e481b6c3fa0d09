import { FirstStart } from './FirstStart.tsx'
import { wakeDesk } from './wake.tsx'

export const wakeFirstStart = (root: HTMLElement): Promise<void> => wakeDesk(root, (view) => <FirstStart view={view} />)
