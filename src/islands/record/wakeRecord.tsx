import { RecordDesk } from './RecordDesk.tsx'
import { wakeDesk } from './wake.tsx'

export const wakeRecord = (root: HTMLElement): Promise<void> => wakeDesk(root, (view) => <RecordDesk view={view} />)
