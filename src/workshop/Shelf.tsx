import { compressorMapOf } from '@trochoid/compute/boost/fields.ts'
import { mapFile } from '@trochoid/compute/boost/mapFile.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import type { CompressorMap } from '@trochoid/compute/quantity/quantity.ts'
import { useState } from 'preact/hooks'
import { Choose } from '../islands/parts/Choose.tsx'
import { saveFile } from '../islands/parts/files.ts'
import { useStore } from '../islands/parts/useStore.ts'
import { change } from '../state/build.ts'
import { keepMap, maps, mapsSaved, removeMap } from '../state/maps.ts'
import { system as systemStore } from '../state/system.ts'
import { invented } from './invented.ts'
import { MapPicture } from './MapPicture.tsx'

const troubles = {
  'full': 'The browser has no room left: the last map is not kept. Save it as a file.',
  'blocked': 'This browser keeps nothing for this site: maps are lost when the page closes. Save them as files.',
  'too large': 'The maps together are too large to keep. Save some as files and remove them here.',
  'damaged': 'The maps this browser had kept could not be read. They were set aside, untouched.',
} as const

/** All maps there are, one of them drawn. */
export function Shelf({ chosen, onChoose, onEdit }: { chosen: string; onChoose: (id: string) => void; onEdit: (map: CompressorMap) => void }) {
  const own = useStore(maps)
  const saved = useStore(mapsSaved)
  const system = useStore(systemStore)
  const [told, tell] = useState('')
  const [removed, setRemoved] = useState<CompressorMap | null>(null)
  const map = own[chosen] ?? invented[chosen] ?? invented['medium']!
  const use = () => {
    change((sheet) => setEntry(sheet, compressorMapOf.path, { value: map, from: map.estimate ? 'guess' : 'maker' }))
    tell(`${map.name} is now the compressor map of your build.`)
  }
  return (
    <>
      <div class="row no-print">
        <Choose id="map" label="Map" value={chosen} options={[...Object.entries(own).map(([id, { name }]) => [id, name] as const), ...Object.entries(invented).map(([id, { name }]) => [id, name] as const)]} onChoose={(id) => { tell(''); onChoose(id) }} />
        <button type="button" onClick={use}>Use in my build</button>
        <button type="button" onClick={() => onEdit(map)}>Edit a copy</button>
        <button type="button" onClick={() => saveFile(`${map.name.toLowerCase().replace(/[^a-z0-9]+/g, '-') || 'map'}.csv`, 'text/csv', mapFile(map))}>Save as CSV</button>
        {own[chosen] && <button type="button" onClick={() => { setRemoved(map); removeMap(chosen); onChoose('medium'); tell(`${map.name} was removed from this browser.`) }}>Remove</button>}
        <button type="button" onClick={() => print()}>Print</button>
      </div>
      <p role="status" class="small">{told} {removed && told.includes('removed') && <button type="button" class="plain" onClick={() => { onChoose(keepMap(removed)); setRemoved(null); tell('It is back.') }}>Bring it back</button>}</p>
      {saved && saved !== 'saved' && <p class="fault" role="alert">{troubles[saved]}</p>}
      <MapPicture map={map} system={system} />
    </>
  )
}
