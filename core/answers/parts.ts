// core/answers/parts.ts: what every answer carries beside its own matter: birds understood, assumptions in words, a summary that fits.
import type { BirdSeen, Caution, Source } from '../answer.ts'
import { seenBird } from '../cross/seen.ts'
import type { Assumed, BirdRef } from '../question.ts'

type Told = {
  readonly sire?: readonly BirdRef[] | undefined
  readonly dam?: readonly BirdRef[] | undefined
  readonly birds?: readonly BirdRef[] | undefined
}

const uniqueBirds = (birds: readonly BirdRef[] = []): readonly BirdSeen[] => [
  ...new Map(birds.map((bird) => seenBird(bird)).map((bird) => [JSON.stringify(bird), bird])).values(),
]

export const birdsOf = ({
  sire,
  dam,
  birds,
}: Told): {
  readonly birds: readonly BirdSeen[]
  readonly sire: readonly BirdSeen[]
  readonly dam: readonly BirdSeen[]
} => ({
  birds: uniqueBirds(birds),
  sire: uniqueBirds(sire),
  dam: uniqueBirds(dam),
})

/** What was taken for granted, in words. Skipped words and the language are for the reply alone. */
export function assumptionWords(assumed: readonly Assumed[]): readonly string[] {
  return assumed.flatMap((one) => {
    switch (one.kind) {
      case 'male-first':
        return [`the bird named first is the cock: ${one.sire} on ${one.dam}`]
      case 'variety':
        return [`${one.said} means ${one.taken}`]
      case 'line':
        return [
          `a ${one.breed} called ${one.said} is ${one.taken === undefined ? 'like its breed at large' : `of its usual line (${one.taken})`}, as no such line is known here`,
        ]
      case 'spelling':
        return [`${one.said} means ${one.taken}`]
      case 'sack':
        return [`a bag of feed holds ${one.said}`]
      case 'context':
        return [`this still is ${one.restated}`]
      case 'daughters':
        return [
          `the chicks are shared among ${one.count} of the bird’s own young; the more of them, the more the chicks tell`,
        ]
      case 'language':
      case 'skipped':
        return []
    }
  })
}

/** Most signs of a summary. */
export const longest = 160

/** The first summary that fits into a line of 160 characters; the last one cut at a word. */
export function fitting(...texts: readonly string[]): string {
  const fits = texts.find((text) => text.length <= longest)
  if (fits !== undefined) return fits
  const last = texts.at(-1) ?? ''
  return `${last.slice(0, last.lastIndexOf(' ', longest - 2))} …`
}

/** Sources once each, the surest first. */
export function uniqueSources(sources: readonly Source[]): readonly Source[] {
  const order = ['read', 'common practice', 'from memory']
  const once = new Map(sources.filter(({ ref }) => ref !== '').map(({ ref, status }) => [ref, { ref, status }]))
  return [...once.values()].toSorted((a, b) => order.indexOf(a.status) - order.indexOf(b.status))
}

export const nothingElse: { readonly cautions: readonly Caution[]; readonly sources: readonly Source[] } = {
  cautions: [],
  sources: [],
}
