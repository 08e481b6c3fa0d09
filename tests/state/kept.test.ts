import { afterEach, describe, expect, test, vi } from 'vitest'
import { load, save, setAside, type Key } from '../../src/state/kept.ts'

const key: Key<number> = { name: 'test', version: 2, bound: 80, read: (data) => (typeof data === 'number' ? data : null) }
function storage(entries: Record<string, string> = {}, full = false) {
  const map = new Map(Object.entries(entries))
  const made = { getItem: (k: string) => map.get(k) ?? null, setItem: (k: string, v: string) => { if (full) throw new DOMException('no room', 'QuotaExceededError'); map.set(k, v) }, removeItem: (k: string) => void map.delete(k) }
  vi.stubGlobal('localStorage', made)
  return map
}
afterEach(() => { vi.unstubAllGlobals() })

describe('what the browser keeps', () => {
  test('comes back as it was', () => {
    storage()
    expect(save(key, 7)).toBe('saved')
    expect(load(key)).toEqual({ found: 'value', value: 7, sound: true })
  })
  test('is known to be changed by another hand', () => {
    const map = storage()
    save(key, 7)
    map.set('trochoid.test', map.get('trochoid.test')!.replace('"value":7', '"value":8'))
    expect(load(key)).toEqual({ found: 'value', value: 8, sound: false })
  })
  test('is set aside untouched when it cannot be read, a second time beside the first', () => {
    const map = storage({ 'trochoid.test': '{"version":2,"value":' })
    expect(load(key)).toEqual({ found: 'damaged', text: '{"version":2,"value":' })
    expect(map.get(setAside(key))).toBe('{"version":2,"value":')
    expect(map.has('trochoid.test')).toBe(false)
    map.set('trochoid.test', 'worse')
    expect(load(key)).toEqual({ found: 'damaged', text: 'worse' })
    expect(map.get(setAside(key))).toBe('{"version":2,"value":')
    expect(map.get(setAside(key, 2))).toBe('worse')
    expect(map.has('trochoid.test')).toBe(false)
  })
  test('of another version or form is not taken', () => {
    storage({ 'trochoid.test': '{"version":1,"value":7}' })
    expect(load(key).found).toBe('damaged')
    storage({ 'trochoid.test': '{"version":2,"value":"7"}' })
    expect(load(key).found).toBe('damaged')
  })
  test('says when there is no room, when it is too large, when keeping is forbidden', () => {
    storage({}, true)
    expect(save(key, 7)).toBe('full')
    expect(save({ ...key, bound: 5 }, 7)).toBe('too large')
    vi.stubGlobal('localStorage', new Proxy({}, { get: () => { throw new DOMException('no', 'SecurityError') } }))
    expect(save(key, 7)).toBe('blocked')
    expect(load(key)).toEqual({ found: 'blocked' })
  })
})
