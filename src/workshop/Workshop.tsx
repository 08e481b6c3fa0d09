import { mapFile } from '@trochoid/compute/boost/mapFile.ts'
import { useRef, useState } from 'preact/hooks'
import { keepMap } from '../state/maps.ts'
import { Bring } from './Bring.tsx'
import { Shelf } from './Shelf.tsx'
import { TraceFold } from './TraceFold.tsx'

/** Compressor maps: those that are there, one brought as a table, one traced from a picture. */
export function Workshop() {
  const [chosen, choose] = useState('medium')
  const [text, setText] = useState('')
  const top = useRef<HTMLDivElement>(null)
  const bring = useRef<HTMLDetailsElement>(null)
  const kept = (map: Parameters<typeof keepMap>[0]) => {
    choose(keepMap(map))
    top.current?.focus()
    top.current?.scrollIntoView({ block: 'start' })
  }
  return (
    <>
      <div ref={top} tabIndex={-1}>
        <Shelf chosen={chosen} onChoose={choose} onEdit={(map) => { setText(mapFile({ ...map, name: `Copy of ${map.name}`.slice(0, 120) })); if (bring.current) { bring.current.open = true; bring.current.querySelector('textarea')?.focus() } }} />
      </div>
      <details ref={bring} class="section no-print">
        <summary><h2 id="bring">Bring a map as a table</h2></summary>
        <Bring text={text} onText={setText} onKeep={kept} />
      </details>
      <details class="section no-print">
        <summary><h2 id="trace">Trace a map from a picture</h2></summary>
        <TraceFold onKeep={kept} />
      </details>
    </>
  )
}
