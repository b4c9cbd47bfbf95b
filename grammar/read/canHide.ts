// grammar/read/canHide.ts: "can a splash carry black", "do rose combs hide single", "can a barred cock throw plain chicks": of what a bird shows and what may lie under it.
import { breedNamed, genesOf } from '../../core/breeds.ts'
import { traitsIn } from '../bird.ts'
import { varietiesOf } from '../variety.ts'
import { chicksCounted } from './chicks.ts'
import { isToldPair } from './pairs.ts'
import { birdsIn, factOf } from './topic.ts'
import type { Reader } from './common.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'

const hides = /^(?:hides?|hiding|hidden|masks?|masking)$/u
const isVerb = ({ type, word }: Token): boolean => type === 'carries' || type === 'split' || hides.test(word)

/** Names of the breed or of its usual variety. */
const namesOf = (token: Token): readonly string[] =>
  token.type === 'breed'
    ? token.names.slice(0, 1)
    : token.type === 'family'
      ? varietiesOf(token.family, []).names.slice(0, 1)
      : []

/** What these words show: colours, combs, and those of the breeds that are named. */
function looksOf(tokens: readonly Token[]): ReadonlySet<string> {
  const breeds = tokens.flatMap(namesOf)
  const combs = breeds.flatMap((name) => {
    const breed = breedNamed(name)
    return (['R', 'P'] as const).flatMap((locus) => {
      const gene = breed && genesOf(breed)[locus]
      const usual =
        gene?.kind === 'fixed' ? gene.allele === locus : gene?.kind === 'segregates' && (gene.freq[locus] ?? 0) > 1 / 2
      return usual ? [locus === 'R' ? 'rose comb' : 'pea comb'] : []
    })
  })
  return new Set([
    ...tokens.flatMap((token) => (token.type === 'colour' ? [token.colour] : [])),
    ...traitsIn(tokens),
    ...tokens.flatMap(({ word }) => word.split(' ')).filter((word) => /^(?:rose|pea|singles?)$/u.test(word)),
    ...breeds.flatMap((name) => name.toLowerCase().split(' ')),
    ...combs,
  ])
}
const among = (looks: ReadonlySet<string>, ...wanted: readonly string[]): boolean =>
  wanted.some((look) => looks.has(look))

/** What is shown and what is hidden, by the record that tells of the two. */
function recordOf(shown: ReadonlySet<string>, hidden: ReadonlySet<string>): string | undefined {
  if (among(hidden, 'black') && among(shown, 'splash')) return 'blue-hides-black'
  if (among(hidden, 'barring', 'barred') && among(shown, 'white')) return 'what-hides-barring'
  return isSingle(hidden) && isHigherComb(shown) ? 'comb-hides-single' : undefined
}
const isSingle = (looks: ReadonlySet<string>): boolean => among(looks, 'single', 'singles', 'single comb')
const isHigherComb = (looks: ReadonlySet<string>): boolean => among(looks, 'rose', 'pea', 'rose comb', 'pea comb')

const throws =
  /^(?:throws?|throwing|threw|gives?|giving|gave|gets?|getting|had|has|have|having|makes?|produces?|producing|sires?|fathers?)$/u
const noBars =
  /\b(?:un-?barred|(?:non|not|no|without|lacking)[ -](?:any )?(?:barred|bars?|barring|stripes?|striped)|(?:plain|solid|all)(?: black)?|black) (?:chicks?|babies|baby|kids?|offspring|young|youngsters|ones?|birds?|daughters?|sons?|pullets?|girls?)\b|\bchicks? (?:that (?:are|have) )?(?:without|with no|unbarred|not barred)\b/u

/** "rose combed hamburgs giving single combs", "can a barred cock have plain chicks". */
function thrownBy({ tokens, words }: Reading): string | undefined {
  const verb = tokens.findIndex(({ word }, i) => i > 0 && throws.test(word.split(' ')[0]!))
  if (verb < 0) return undefined
  const [before, after] = [looksOf(tokens.slice(0, verb)), looksOf(tokens.slice(verb + 1, verb + 4))]
  if (isHigherComb(before) && isSingle(after)) return 'comb-hides-single'
  const cock = tokens.slice(0, verb).some(({ type }) => type === 'cock')
  return cock && among(before, 'barred', 'cuckoo', 'barring') && noBars.test(words.join(' '))
    ? 'barred-cock-unbarred'
    : undefined
}

export const readCanHide: Reader = (reading) => {
  const { tokens, words } = reading
  const asked =
    reading.asks ||
    reading.has('question', 'define', 'claim') ||
    /\b(?:can|could|cant|swears|insists|reckons|says|fault|why|how|how come)\b/u.test(words.join(' '))
  const counted = chicksCounted(tokens).some(({ look, count }) => look.length > 0 && count > 1)
  const pure = words.some((word) => /^(?:pure|homozygous|copies)$/u.test(word)) // of one bird, by its chicks
  if (!asked || isToldPair(reading) || counted || pure) return undefined
  const verb = tokens.findIndex(isVerb)
  const record =
    (verb < 0 ? undefined : recordOf(looksOf(tokens.slice(0, verb)), looksOf(tokens.slice(verb + 1, verb + 4)))) ??
    thrownBy(reading)
  return record === undefined ? undefined : factOf(reading, record, birdsIn(reading))
}
