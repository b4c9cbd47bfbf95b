// test/grammar/answered.ts: the table test/data/messages/answered.table, and what of a message's birds is not in its answer.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { resolve } from '../../core/resolve.ts'
import { emptyContext } from '../../grammar/context.ts'
import { understand } from '../../grammar/understand.ts'
import { kindCounts } from './keepers.ts'
import type { Answer, BirdSeen } from '../../core/answer.ts'

type Place = 'sire' | 'dam' | 'birds'
export type Message = {
  readonly kind: string
  readonly text: string
  readonly before: string | undefined
  /** Kinds of answer that count in place of the usual ones of the section; `+ask` lets a question back count beside them. */
  readonly kinds: readonly string[]
  readonly places: Readonly<Record<Place, readonly string[]>>
}

const list = (told = ''): readonly string[] =>
  told
    .split(' | ')
    .map((one) => one.trim())
    .filter(Boolean)

/** `A | B x C`, or `sire A; dam B; birds C`; `-` and `+` name none. */
function placesOf(told: string): Message['places'] {
  const [sire, dam] = told.split(/ x (?![^(]*\))/u)
  if (dam !== undefined) return { sire: list(sire), dam: list(dam), birds: [] }
  const part = (place: Place) => list(new RegExp(`${place} ([^;]*)`, 'u').exec(told)?.[1])
  return { sire: part('sire'), dam: part('dam'), birds: part('birds') }
}

function messageOf(kind: string, line: string): Message {
  const [said = '', birds = '', kinds = '', before = ''] = line.split('||').map((part) => part.trim())
  return {
    kind,
    text: said.replaceAll(String.raw`\n`, '\n'),
    before: before === '' ? undefined : before,
    kinds: kinds.split(',').filter(Boolean),
    places: placesOf(birds),
  }
}

/** The messages, section by section: `message || birds || kinds || message before`. */
export function messages(): readonly Message[] {
  const text = readFileSync(join(import.meta.dirname, '../data/messages/answered.table'), 'utf8')
  return text
    .split('\n## ')
    .slice(1)
    .flatMap((section) => {
      const [kind = '', ...lines] = section.split('\n').map((line) => line.trim())
      return lines.filter(Boolean).map((line) => messageOf(kind, line))
    })
}

/** Where silence is wanted, the message was not meant for the bot. */
export function answered({ text, before, kinds }: Message): Answer {
  const nothing = { ...emptyContext(), addressed: !kinds.includes('silent') }
  const context = before === undefined ? nothing : understand(before, nothing).context
  return resolve(understand(text, context).question)
}

export function rightKind({ kind, kinds, text }: Message, answer: Answer): boolean {
  const named = kinds.filter((one) => !one.startsWith('+'))
  if (named.length > 0) return named.includes(answer.kind)
  return kindCounts({ id: 0, kind, text, sire: null, dam: null, askDue: kinds.includes('+ask') }, answer)
}

/** Is it that bird? Each part is looked at only where it is told; a bare family stands for any of its varieties. */
function matches(bird: BirdSeen, told: string): boolean {
  const parents = /^F1 \((.*) x (.*)\)$/u.exec(told)
  if (parents)
    return bird.cross !== undefined && matches(bird.cross.sire, parents[1]!) && matches(bird.cross.dam, parents[2]!)
  const name = told.replace(/[[{].*$/u, '').trim()
  const line = /\[([a-z-]+)\]/u.exec(told)?.[1]
  const genes = (/\{(.*?)\}/u.exec(told)?.[1] ?? '').split(' ').filter(Boolean)
  const has = (bird.genotype ?? '').split(' ')
  const isNamed = name === '' || bird.breed === name || bird.breed?.endsWith(` ${name}`) === true
  return isNamed && (line === undefined || bird.line === line) && genes.every((gene) => has.includes(gene))
}

type Shown = {
  readonly sire?: readonly BirdSeen[]
  readonly dam?: readonly BirdSeen[]
  readonly birds?: readonly BirdSeen[]
  readonly provisional?: Answer | undefined
}

/** Birds in a place of the answer. Those whose part is not told may stand anywhere, and a choice offered shows them too. */
function shownAt(answer: Answer, place: Place): readonly BirdSeen[] {
  const { sire = [], dam = [], birds = [], provisional } = answer as Shown
  const own =
    place === 'birds'
      ? [...sire, ...dam, ...birds]
      : [...(place === 'sire' ? sire : dam), ...(answer.kind === 'cross' ? [] : birds)]
  return provisional ? [...own, ...shownAt(provisional, place)] : own
}

/** What of the birds meant is not in the answer; empty where all is. */
export const missing = ({ places }: Message, answer: Answer): readonly string[] =>
  (['sire', 'dam', 'birds'] as const).flatMap((place) => {
    const shown = shownAt(answer, place)
    return places[place].filter((told) => !shown.some((bird) => matches(bird, told))).map((told) => `${place} ${told}`)
  })
