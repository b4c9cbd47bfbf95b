// core/topics.ts: facts, signs and beliefs the bot can speak of: what each record says, and the words that point to it.
import * as z from 'zod'
import breeding from './data/facts/breeding.json' with { type: 'json' }
import carriers from './data/facts/carriers.json' with { type: 'json' }
import eggs from './data/facts/eggs.json' with { type: 'json' }
import genes from './data/facts/genes.json' with { type: 'json' }
import hiding from './data/facts/hiding.json' with { type: 'json' }
import signs from './data/facts/signs.json' with { type: 'json' }
import sourceRows from './data/facts/sources.json' with { type: 'json' }
import { loci } from './data/loci.ts'
import { cueWords, keyOf, keysOf, occurs, weightOf, type Cue } from './topics/cues.ts'
import type { Citation } from './vocabulary.ts'

const sources: Readonly<Record<string, Citation>> = z
  .record(
    z.string(),
    z.strictObject({ ref: z.string().min(1), status: z.enum(['read', 'common practice', 'from memory']) }),
  )
  .parse(sourceRows)

const list = <T extends z.ZodType>(item: T, least = 0) => z.array(item).min(least).readonly()
const Sentence = z.string().min(1).max(200)

const Row = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/, 'want a lower-case word'),
  title: z.string(), // what it is about, as an operator's list shows it
  verdict: z.enum(['true', 'false', 'partly', 'not asked']), // of the belief that is asked about
  certainty: z.enum(['sure', 'usual', 'doubtful']),
  loci: list(z.string().refine((id) => id in loci, 'no such locus')),
  birdFirst: z.literal(true).optional(), // where a breed is named too, what it carries at the first locus is said first
  sources: list(
    z.string().refine((key) => key in sources, 'not in core/data/facts/sources.json'),
    1,
  ),
  asks: list(z.string()), // how keepers ask it: each must lead here
  cues: list(list(z.string().min(1), 1)), // each: stems that must all occur; see `cueWeight`
  says: list(Sentence, 2), // the first is the verdict, at most 160 characters; each stands alone
})

/** One thing the bot can say. */
export type Topic = Omit<z.infer<typeof Row>, 'sources'> & { readonly sources: readonly Citation[] }

function checked(): readonly Topic[] {
  const rows = Object.entries({ genes, signs, hiding, carriers, eggs, breeding }).flatMap(([file, raw]) => {
    const read = z.array(Row).safeParse(raw)
    if (read.success) return read.data
    const [at, ...rest] = read.error.issues[0]!.path
    throw new Error(`core/data/facts/${file}.json[${String(at)}]: ${rest.join('.')}: ${read.error.issues[0]!.message}`)
  })
  const twice = rows.find((row, at) => rows.findIndex(({ id }) => id === row.id) !== at)
  if (twice) throw new Error(`core/data/facts: the id ${twice.id} stands twice`)
  return rows.map((row) => ({ ...row, sources: row.sources.map((key) => sources[key]!) }))
}

export const topics: readonly Topic[] = checked()

const byId: ReadonlyMap<string, Topic> = new Map(topics.map((topic) => [topic.id, topic]))
export const topicNamed = (id: string): Topic | undefined => byId.get(id)

/**
 * How strongly the words (of `cueWords`) point to the topic: 0, or more the longer the longest of its cues that occurs.
 * A stem of four letters or more, or one with a star, is the beginning of a word; a shorter one is a whole word or its
 * plural; 'pea_comb' is two words in a row.
 */
export function cueWeight(topic: Topic, words: readonly string[]): number {
  const matched = topic.cues.filter((cue) => occurs(cue, words))
  return Math.max(0, ...matched.map(weightOf))
}

/** Cues by their key, so that a text is held only against those that have a chance. */
const byKey: ReadonlyMap<string, readonly { readonly id: string; readonly cue: Cue }[]> = Map.groupBy(
  topics.flatMap(({ id, cues }) => cues.map((cue) => ({ id, cue }))),
  ({ cue }) => keyOf(cue),
)

/** Topics that a text points to, strongest first. */
export function topicsIn(text: string): readonly { readonly id: string; readonly weight: number }[] {
  const words = cueWords(text)
  const weights = new Map<string, number>()
  for (const key of keysOf(words))
    for (const { id, cue } of byKey.get(key) ?? [])
      if (weightOf(cue) > (weights.get(id) ?? 0) && occurs(cue, words)) weights.set(id, weightOf(cue))
  return [...weights].map(([id, weight]) => ({ id, weight })).toSorted((a, b) => b.weight - a.weight)
}
