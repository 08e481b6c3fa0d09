import { compressorEfficiency, correctedFlow, correctedSpeed, pressureRatio } from '@trochoid/compute/boost/quantities.ts'
import type { Pixel, Traced } from '@trochoid/compute/boost/mapTrace.ts'
import { mapFaults } from '@trochoid/compute/boost/mapFaults.ts'
import { quantity, role, type CompressorMap } from '@trochoid/compute/quantity/quantity.ts'
import { write, writeNumber } from '@trochoid/compute/quantity/write.ts'
import { useEffect, useState } from 'preact/hooks'
import { Choose } from '../islands/parts/Choose.tsx'
import { useStore } from '../islands/parts/useStore.ts'
import { system as systemStore } from '../state/system.ts'
import { Asked } from './Asked.tsx'
import { empty, mapOf, pointsOf, valuesAt, withAxisValue, withPoints, withStroke, type Draft, type Stroke, type Target } from './draft.ts'
import { MapPicture } from './MapPicture.tsx'
import { Pad } from './Pad.tsx'
import { reference } from './reference.ts'

const largest = 4000
const volumeFlow = quantity('Corrected flow by volume', 'V', 'volumeFlow', [0, 2], 0.005, { show: ['m³/s', 'ft³/min'] })
const axisNames = { 'flow 0': 'Flow axis, first place', 'flow 1': 'Flow axis, second place', 'ratio 0': 'Pressure ratio axis, first place', 'ratio 1': 'Pressure ratio axis, second place' } as const

/** A map traced from a picture: axes, surge, speed lines, lines of equal efficiency. */
export function Tracing({ onKeep }: { onKeep: (map: CompressorMap) => void }) {
  const system = useStore(systemStore)
  const [picture, setPicture] = useState<ImageBitmap | null>(null)
  const [draft, setDraft] = useState<Draft>(empty)
  const [target, aim] = useState<Target>('flow 0')
  const [told, tell] = useState('')
  const begun = draft.surge.length > 0 || draft.strokes.length > 0
  useEffect(() => {
    // An hour of tracing is not to be lost to a wrong key.
    if (!begun) return undefined
    const ask = (e: BeforeUnloadEvent) => e.preventDefault()
    addEventListener('beforeunload', ask)
    return () => removeEventListener('beforeunload', ask)
  }, [begun])

  const open = async (file: File | undefined) => {
    if (!file) return
    try {
      const whole = await createImageBitmap(file)
      const shrink = Math.min(1, largest / Math.max(whole.width, whole.height))
      setPicture(shrink < 1 ? await createImageBitmap(whole, { resizeWidth: Math.round(whole.width * shrink), resizeHeight: Math.round(whole.height * shrink) }) : whole)
      tell(`${file.name} is open. Begin with a printed value on the flow axis.`)
    } catch {
      tell(`${file.name} could not be read as a picture. Open a PNG, JPEG or WebP; of a PDF, save the page as a picture first.`)
    }
  }
  const flow = draft.by === 'mass' ? correctedFlow : volumeFlow
  const say = (at: Pixel): string => {
    const values = valuesAt(draft, at)
    return values ? `flow ${write(values[0], flow)}, pressure ratio ${writeNumber(values[1], 4)}` : `${Math.round(at[0])} px across, ${Math.round(at[1])} px down`
  }
  const nameOf = (s: Stroke): string => (s.kind === 'line' ? `Speed line${s.value === null ? '' : `, ${write(s.value, correctedSpeed)}`}` : `Equal efficiency${s.value === null ? '' : `, ${writeNumber(s.value * 100, 3)}\u202f%`}`)
  const add = (kind: Stroke['kind']) => {
    const [next, id] = withStroke(draft, kind)
    setDraft(next)
    aim(id)
  }
  const axis = typeof target === 'string' && target !== 'surge' ? ([target.slice(0, -2), Number(target.at(-1))] as ['flow' | 'ratio', 0 | 1]) : null
  const stroke = typeof target === 'number' ? draft.strokes.find(({ id }) => id === target) : undefined
  const made = useMapOf(draft)
  const keep = () => {
    // Not the map that is drawn, which waits until the hand rests: it may lack the last point or letter.
    const now = mapOf(draft)
    if (!usable(now)) return
    onKeep(now.map)
    setDraft(empty)
    setPicture(null)
    aim('flow 0')
  }

  return (
    <>
      <div class="row"><label class="button">Open a picture<input type="file" class="hidden-input" accept="image/*" onChange={(e) => { const input = e.currentTarget; void open(input.files?.[0]).then(() => { input.value = '' }) }} /></label></div>
      <p role="status" class="small">{told}</p>
      {picture && (
        <>
          <div class="two">
            <div class="field"><label for="trace-name">Name of the map</label><input id="trace-name" type="text" maxLength={120} value={draft.name} onInput={(e) => setDraft({ ...draft, name: e.currentTarget.value })} /></div>
            <Choose id="trace-by" label="Its flow is printed" value={draft.by} options={[['mass', 'by mass'], ['volume', 'by volume at the reference conditions']]} onChoose={(by) => setDraft({ ...draft, by: by as Draft['by'] })} />
            <Asked id="trace-temperature" of={reference.temperature} system={system} onValue={(temperature) => setDraft((now) => ({ ...now, temperature }))} />
            <Asked id="trace-pressure" of={reference.pressure} system={system} onValue={(pressure) => setDraft((now) => ({ ...now, pressure }))} />
          </div>
          <Choose id="trace-target" label="The next point belongs to" value={String(target)}
            options={[...Object.entries(axisNames), ['surge', 'Surge line'], ...draft.strokes.map((s) => [String(s.id), `${nameOf(s)} (${s.points.length} points)`] as const)]}
            onChoose={(value) => aim(/^\d+$/.test(value) ? Number(value) : value as Target)} />
          <div class="row">
            <button type="button" onClick={() => add('line')}>Begin a speed line</button>
            <button type="button" onClick={() => add('island')}>Begin a line of equal efficiency</button>
            <button type="button" disabled={pointsOf(draft, target).length === 0} onClick={() => setDraft(withPoints(draft, target, pointsOf(draft, target).slice(0, -1)))}>Take the last point away</button>
            {stroke && <button type="button" onClick={() => { setDraft({ ...draft, strokes: draft.strokes.filter((s) => s !== stroke) }); aim('surge') }}>Remove this line</button>}
          </div>
          {axis && (
            <div class="two">
              <Asked key={`${target} ${draft.by}`} id="trace-value" of={axis[0] === 'flow' ? role(flow, flow.symbol, 'Flow printed there') : role(pressureRatio, pressureRatio.symbol, 'Pressure ratio printed there')} system={system} {...(draft[axis[0]].value[axis[1]] !== null && { start: draft[axis[0]].value[axis[1]]! })} onValue={(value) => setDraft((now) => withAxisValue(now, axis[0], axis[1], value))} />
              <Choose id="trace-scale" label="Scale of this axis" value={draft[axis[0]].scale} options={[['linear', 'even'], ['log', 'logarithmic']]} onChoose={(scale) => setDraft({ ...draft, [axis[0]]: { ...draft[axis[0]], scale } })} />
            </div>
          )}
          {stroke && <Asked key={stroke.id} id="trace-stroke" of={stroke.kind === 'line' ? correctedSpeed : compressorEfficiency} system={system} {...(stroke.value !== null && { start: stroke.value })} onValue={(value) => setDraft((now) => ({ ...now, strokes: now.strokes.map((s) => (s.id === stroke.id ? { ...s, value } : s)) }))} />}
          <Pad picture={picture} draft={draft} target={target} onDraft={setDraft} say={say} onSet={tell} />
          {made.ok ? <MapPicture map={made.map} system={system} /> : <p class="small">{made.says}</p>}
          <button type="button" disabled={!usable(made)} onClick={keep}>Keep this map</button>
        </>
      )}
    </>
  )
}

const usable = (made: Traced): made is Extract<Traced, { ok: true }> => made.ok && mapFaults(made.map).every(({ weight }) => weight === 'doubt')

const pause = 150
/** The map that a draft makes, worked out when the hand rests: dragging a point stays light. */
function useMapOf(draft: Draft): Traced {
  const [made, setMade] = useState(() => mapOf(draft))
  useEffect(() => {
    const timer = setTimeout(() => setMade(mapOf(draft)), pause)
    return () => clearTimeout(timer)
  }, [draft])
  return made
}
