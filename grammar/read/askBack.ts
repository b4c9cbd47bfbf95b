// grammar/read/askBack.ts: birds are spoken of, but one thing is missing: the question back that asks for it.
import { commonOf, isSolid, refsOf, type Reader } from './common.ts'
import type { Reading } from '../reading.ts'
import type { AskBackQuestion, BirdRef } from '../../core/question.ts'

const ask = (
  reading: Reading,
  missing: AskBackQuestion['missing'],
  birds: readonly BirdRef[],
  about?: string,
): AskBackQuestion => ({
  kind: 'ask-back',
  missing,
  ...(about === undefined || about === '' ? {} : { about }),
  options: [],
  birds,
  ...commonOf(reading),
})

/** A picture, or words that point at something unseen. */
export const readPhoto: Reader = (reading) =>
  reading.has('photo') ? ask(reading, 'look', refsOf(reading.scene.birds.filter(isSolid))) : undefined

/** One bird and no other, or birds by their looks only. */
export const readMissing: Reader = (reading) => {
  const { scene, tokens } = reading
  const solid = scene.birds.filter(isSolid)
  const mated = scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams]).filter(isSolid)
  const birds = [...mated, ...solid]
  if (scene.wanted.some(({ firm }) => firm)) return ask(reading, 'birds', refsOf(birds))
  if (birds.length === 1) return ask(reading, 'other-bird', refsOf(birds), birds[0]!.said)
  if (birds.length > 1) return ask(reading, 'which-is-male', refsOf(birds).slice(0, 6))
  const looks = tokens.filter(({ type }) => type === 'colour')
  const joins = tokens.some(({ type }) => type === 'over' || type === 'under' || type === 'cross' || type === 'sexlink')
  const chicks = tokens.some(({ type }) => type === 'chick' || type === 'cock' || type === 'hen')
  if (looks.length > 0 && (joins || chicks)) return ask(reading, 'birds', refsOf(scene.birds))
  if (joins && chicks && (reading.asks || scene.matings.length > 0)) return ask(reading, 'birds', [])
  if (scene.matings.length > 0) return ask(reading, 'birds', [])
  return undefined
}

/** Readable, but with nothing in it to read: signs only, one letter, symbols, a word said over and over. */
export const readNoise: Reader = (reading) => {
  const letters = reading.text.replace(/[^\p{L}\p{N}]/gu, '')
  const words = new Set(reading.words.filter((word) => /[\p{L}\p{N}]/u.test(word)))
  const repeated = reading.words.filter((word) => /[\p{L}\p{N}]/u.test(word)).length > 6 && words.size <= 2
  const oneRun = words.size === 1 && letters.length > 24
  const code =
    /\b(?:select|insert|drop|delete|update)\b.+\b(?:from|into|table|where|set)\b|[{}<>;]{2,}|\$\{|\bfunction\b/iu.test(
      reading.text.slice(0, 2000),
    )
  return letters.length < 3 || repeated || oneRun || code ? ask(reading, 'birds', []) : undefined
}

/** Only words that point back, and nothing to point to. */
export const readContextMissing = (reading: Reading): AskBackQuestion =>
  ask(reading, 'context', refsOf(reading.scene.changes.flatMap(() => [])))
