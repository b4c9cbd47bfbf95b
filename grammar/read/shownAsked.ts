// grammar/read/shownAsked.ts: what of the chicks is counted or asked for by name: "how many mottled", "will they be striped".
import { traitsIn } from '../bird.ts'
import type { BirdSaid } from '../saying.ts'
import type { Bird } from '../bird.ts'
import type { Pair } from './pairs.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { CrossQuestion } from '../../core/question.ts'

type ShownId = NonNullable<CrossQuestion['shown']>[number]

const ofTrait: Readonly<Record<string, ShownId>> = {
  lavender: 'lavender',
  chocolate: 'chocolate',
  'recessive white': 'white',
  'dominant white': 'white',
  mottling: 'mottled',
  silver: 'silver',
  gold: 'gold',
  barring: 'barred',
  blue: 'blue',
  'pea comb': 'pea comb',
  'rose comb': 'rose comb',
  'single comb': 'single comb',
  frizzle: 'frizzle',
  'silkie feather': 'silkie feather',
  'naked neck': 'naked neck',
  'dark skin': 'dark skin',
  muffs: 'muffs',
  crest: 'crest',
  'feathered legs': 'feathered legs',
  'five toes': 'five toes',
  tufts: 'tufts',
  rumplessness: 'rumpless',
  'short legs': 'short legs',
  dwarf: 'dwarf',
  columbian: 'columbian',
  dun: 'dun',
  'hen feathering': 'hen feathering',
  lacing: 'laced',
}
const ofColour: Readonly<Record<string, ShownId>> = {
  black: 'black',
  blue: 'blue',
  splash: 'splash',
  mauve: 'mauve',
  khaki: 'khaki',
  smooth: 'smooth',
  pencilled: 'pencilled',
  tailed: 'tailed',
}

function idOf(token: Token): ShownId | undefined {
  if (token.type === 'colour' && ofColour[token.colour] !== undefined) return ofColour[token.colour]
  const form = token.type === 'breed' && (token.names[0] === 'Naked Neck' || token.names[0] === 'Frizzle')
  if (token.type !== 'colour' && token.type !== 'trait' && !form) return undefined
  const [trait] = traitsIn([token])
  return trait === undefined ? undefined : ofTrait[trait]
}

const partsOf = ({ parts, carried, lacks, cross }: BirdSaid): readonly number[] => [
  ...[...parts, ...lacks, ...carried.flatMap(({ what }) => what)].map(({ at }) => at),
  ...(cross ? [...cross.first, ...cross.second].flatMap(partsOf) : []),
]

const counting =
  /\b(?:how many|how much|what part|percent|percentage|share|fraction|proportion|ratio|odds|chances?|number)\b|%|\bout of \d/u
const will = /\b(?:will|would|wil|gonna|do|does|can|could|should|might|are|is|any|get)\b/u
const young =
  /\b(?:they|them|any|all|chicks?|babies|offspring|kids|sons|daughters|boys|girls|pullets|cockerels|some|half|everyone|everything)\b/u

const text = (tokens: readonly Token[]): string => tokens.map(({ word }) => word).join(' ')

/** Words of one sentence on each side of a word. */
const near = 9

/** "how many mottled", "curly percentage", "will they be striped": asked of the chicks at this word. */
function isAsked(tokens: readonly Token[], at: number): boolean {
  const before = tokens.slice(Math.max(0, at - near), at)
  const after = tokens.slice(at + 1, at + 5)
  const since = before.slice(before.findLastIndex(({ type }) => type === 'stop') + 1)
  const stop = after.findIndex(({ type }) => type === 'stop')
  const till = stop < 0 ? after : after.slice(0, stop)
  const last = before.at(-1)
  if (last?.type === 'carries' || last?.type === 'split' || last?.type === 'number') return false
  const end = tokens.slice(at + 1).find(({ type }) => type === 'stop')
  if (tokens[at]!.type === 'trait' && end?.type === 'stop' && end.asks) return true
  if (isOrNot(tokens, at)) return true
  if (counting.test(text(since)) || counting.test(text(till))) return true
  const asking = text(since)
  if (/^any(?: of (?:the|them))?$/u.test(text(since.slice(-1)))) return true // "any chocolate boys"
  const verb = will.exec(asking)
  return verb !== null && young.test(asking) && !/\b(?:tell|see|know|sort|pick|spot)\b/u.test(asking)
}

/** "babies white or no", "chicks all barred or not": of the chicks just spoken of. */
const isOrNot = (tokens: readonly Token[], at: number): boolean =>
  /^(?:ones |chicks |babies )?or (?:no|not|nah|nope|what)\b/u.test(text(tokens.slice(at + 1, at + 5))) &&
  tokens.slice(Math.max(0, at - 4), at).some(({ type, word }) => type === 'chick' || young.test(word))

/** "how many will be split": to whatever the parents carry. */
const isBareSplit = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.type === 'split' ||
  (tokens[at]!.type === 'carries' &&
    ![...namedKinds, 'cock', 'hen', 'chick'].includes(
      tokens.slice(at + 1, at + 3).find(({ type }) => type !== 'filler')?.type ?? '',
    ))
const namedKinds: readonly Token['type'][] = ['colour', 'trait', 'gene', 'breed', 'family', 'sexlink']

/** "over the Polish hen, crests?": put behind the bird as a question. */
const isAskedBehind = (tokens: readonly Token[], at: number): boolean => {
  const end = tokens[at + 1]
  return tokens[at]!.type === 'trait' && tokens[at - 1]?.type === 'comma' && end?.type === 'stop' && end.asks
}

/** What the message asks how many of the chicks show; nothing where it stands in the birds that are mated. */
export function shownAsked(pairs: readonly Pair[], { tokens }: Reading): readonly ShownId[] {
  const told = new Set(pairs.flatMap(({ sire, dam }) => [sire, dam]).flatMap(({ saidOf }: Bird) => partsOf(saidOf)))
  const head = tokens.slice(0, 200)
  const ids = head.flatMap((token, at): readonly ShownId[] => {
    const id =
      told.has(token.at) && !isAskedBehind(head, at) ? undefined : isBareSplit(head, at) ? 'split' : idOf(token)
    return id === undefined || !isAsked(head, at) ? [] : [id]
  })
  return [...new Set(ids)].slice(0, 3)
}

/** "keeping 20, how many lavender", "how many of 16": the one number of chicks that is told. */
export function outOfIn({ tokens }: Reading): number | undefined {
  const head = tokens.slice(0, 200)
  const numbers = head.filter(
    (token, i) =>
      token.type === 'number' &&
      !token.percent &&
      token.value >= 4 &&
      token.value <= 200 &&
      /^(?:back|keep|keeping|of|out of|from|hatch|hatched|hatching|in|raise|raising|batch)$/u.test(
        head[i - 1]?.word ?? '',
      ) &&
      ['stop', 'comma', 'chick', undefined, 'filler'].includes(head[i + 1]?.type),
  )
  const [only, ...others] = numbers
  return only?.type === 'number' && others.length === 0 ? Math.round(only.value) : undefined
}
