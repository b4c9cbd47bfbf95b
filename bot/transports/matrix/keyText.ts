// bot/transports/matrix/keyText.ts: IndexedDB keys as text and back; equal keys give equal text, which v8.serialize does not promise.

export type Key = string | number | Date | ArrayBuffer | ArrayBufferView | readonly Key[]
type Tagged =
  | string
  | number
  | { readonly n: string }
  | { readonly d: number }
  | { readonly b: string }
  | readonly Tagged[]

const bytesOf = (key: ArrayBuffer | ArrayBufferView): Buffer =>
  ArrayBuffer.isView(key) ? Buffer.from(key.buffer, key.byteOffset, key.byteLength) : Buffer.from(key)

const isList = (key: Key): key is readonly Key[] => Array.isArray(key)

const tagged = (key: Key): Tagged => {
  if (typeof key === 'string') return key
  if (typeof key === 'number') return Number.isFinite(key) ? key + 0 : { n: String(key) } // + 0: -0 and 0 are one key
  if (key instanceof Date) return { d: key.getTime() }
  if (isList(key)) return Array.from(key, tagged)
  return { b: bytesOf(key).toString('base64') }
}

const isTaggedList = (key: Tagged): key is readonly Tagged[] => Array.isArray(key)

const untagged = (key: Tagged): Key => {
  if (typeof key === 'string' || typeof key === 'number') return key
  if (isTaggedList(key)) return key.map(untagged)
  if ('n' in key) return Number(key.n)
  if ('d' in key) return new Date(key.d)
  return new Uint8Array(Buffer.from(key.b, 'base64'))
}

export const keyToText = (key: Key): string => JSON.stringify(tagged(key))
export const textToKey = (text: string): Key => {
  const key: Tagged = JSON.parse(text)
  return untagged(key)
}
