import { person, setPerson } from '../../state/person.ts'
import { useStore } from '../parts/useStore.ts'

/** Who writes: put beside every line that is written from now on. */
export function Who() {
  const me = useStore(person)
  return <div class="field no-print"><label for="who">Who writes (kept in this browser, put beside each line with the day)</label><input id="who" type="text" maxLength={80} value={me.who} onChange={(e) => setPerson({ who: e.currentTarget.value.trim() })} /></div>
}
