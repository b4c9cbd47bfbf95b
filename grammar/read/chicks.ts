// grammar/read/chicks.ts: chicks counted in a message: how many, of which sex, what they are or are not, and of how many.
import type { Token } from '../token.ts'
import type { Sex } from '../../core/vocabulary.ts'

export type Chicks = {
  readonly count: number
  /** "3 white of 11": the number of all. */
  readonly of?: number
  readonly sex?: Sex
  /** Words of their look; empty where none is told. */
  readonly look: readonly Token[]
  /** Said not to look so. */
  readonly not: boolean
  readonly at: number
  /** Where in the text the count ends. */
  readonly end: number
}

/** What a word does in a count. `mate`: a grown bird; `part`: a word after which the parents come. */
type Role =
  | 'number'
  | 'half'
  | 'not'
  | 'all'
  | 'look'
  | 'young'
  | 'hatched'
  | 'mate'
  | 'part'
  | 'of'
  | 'own'
  | 'article'
  | 'unit'
  | 'stop'
  | 'other'
type Word = { readonly token: Token; readonly role: Role; readonly value: number }

/** Most chicks that a keeper counts. */
const most = 500

const clearWord = /^(?:clear|clean|normal|normals|plain|ordinary|solid|standard)$/u
/** Said of chicks that show nothing of what is in question. */
export const isClear = ({ word }: Token): boolean => clearWord.test(word)

/** "a white head dot", "spot on its head": a mark on the down. */
export const isSpot = (token: Token | undefined): boolean =>
  /^(?:white |yellow |pale |head ?|headed )?(?:dots?|spots?)$|^head ?spots?$|^head ?dots?$|^spotted$/u.test(
    token?.word ?? '',
  )

/** "3 naked 8 feathered", "2 singles": short for what they have, right behind a number or "all". */
const shortLook = /^(?:bare|feathered|smooth|singles?|curly|curlies|rose)$/u
/** "8 of 8 chicks pea": the same wherever it stands. */
const shortAnywhere = /^(?:naked|pea)$/u
/** "15 naked necks": birds that are called by what they show. */
export const isShownBreed = (token: Token): boolean =>
  token.type === 'breed' && (token.names[0] === 'Naked Neck' || token.names[0] === 'Frizzle')

const youngster =
  /^(?:pullets?|pul+[ei]ts?|cockerels?|cockrels?|cockerals?|girls?|boys?|bois?|females?|males?|sons?|daughters?|dtrs?)$/u
const units =
  /^(?:weeks?|wks?|months?|mths?|years?|yrs?|yo|days?|hours?|hrs?|eggs?|inch(?:es)?|percent|pc|pm|times?|toes?|combs?|pens?|acres?|generations?)$/u
const hatchWord = /^(?:hatch|hatched|hatchd|came|come|got|had|popped|alive|altogether|total|kids)$/u
const partTypes: ReadonlySet<string> = new Set(['over', 'under', 'cross', 'by', 'between', 'outOf', 'forWhom', 'plus'])

function roleOf(token: Token, before: Word | undefined): Role {
  const { type, word } = token
  if (token.type === 'number') {
    if (token.percent || token.value > most) return 'other'
    if (token.value === 1 && /^one$/iu.test(token.said)) {
      if (before?.role === 'look') return 'young' // "a white one"
      if (
        before?.role === 'not' ||
        before?.role === 'all' ||
        /^(?:which|the|any|this|that|each)$/u.test(before?.token.word ?? '')
      )
        return 'article' // "not one white", "every one of 9"
    }
    return 'number'
  }
  if (type === 'stop') return 'stop'
  if (type === 'not' || /^(?:zero|nil|without|hasnt|havent|hadnt|nary)$/u.test(word)) return 'not'
  if (isClear(token)) return 'look'
  if (word === 'half') return 'half'
  if (/^(?:all|every|each|only)$/u.test(word)) return 'all'
  if (type === 'colour' || type === 'trait' || isSpot(token)) return 'look'
  if (type === 'unknown' && shortAnywhere.test(word)) return 'look'
  if (/^(?:number|all)$/u.test(before?.role ?? '') && (shortLook.test(word) || isShownBreed(token))) return 'look'
  if (type === 'chick') return 'young'
  if (type === 'cock' || type === 'hen') return !token.parent && youngster.test(word) ? 'young' : 'mate'
  if (type === 'kin') return youngster.test(word) ? 'young' : 'mate'
  if (/^birds?$/u.test(word)) return 'mate'
  if (type === 'breed' || type === 'family') return 'mate'
  if (/^(?:in|among|amongst)$/u.test(word) || type === 'of') return 'of'
  if (partTypes.has(type)) return 'part'
  if (hatchWord.test(word)) return 'hatched'
  if (units.test(word)) return 'unit'
  if (type === 'my' && /^ha(?:ve|s|d)$/u.test(word)) return 'other' // "3 of them have single combs"
  if (type === 'my' || type === 'his' || type === 'her' || /^(?:he|she|hes|shes|who|does|is he|is she)$/u.test(word))
    return 'own'
  if (/^(?:a|an|single)$/u.test(word)) return 'article'
  return 'other'
}

function wordsOf(tokens: readonly Token[]): readonly Word[] {
  const found: Word[] = []
  for (const token of tokens) {
    const role = roleOf(token, found.at(-1))
    found.push({ token, role, value: token.type === 'number' ? Math.round(token.value) : 0 })
  }
  return found
}

const sexOf = ({ token: { type, word } }: Word): Sex | undefined =>
  type === 'hen' || /^(?:daughters?|dtrs?)$/u.test(word)
    ? 'F'
    : type === 'cock' || /^sons?$/u.test(word)
      ? 'M'
      : undefined

/** The next word that is more than an article, a verb or "the". */
function next(words: readonly Word[], from: number): number {
  let i = from
  while (i < words.length && (words[i]!.role === 'other' || words[i]!.role === 'article') && !isMark(words[i]!)) i += 1
  return i
}
const isMark = ({ token: { type } }: Word): boolean => type === 'comma' || type === 'slash'

/** "from 2 black birds", "over 4 of his own daughters": grown birds are counted, not chicks. */
function isOfMates(words: readonly Word[], at: number): boolean {
  const behind = words
    .slice(0, at)
    .findLast(({ role, token }) => role !== 'article' && role !== 'own' && token.type !== 'filler')
  let i = next(words, at + 1)
  const own = words[i]?.role === 'of' && words.slice(i + 1, i + 3).some(({ role }) => role === 'own')
  while (words[i]?.role === 'look' || words[i]?.role === 'of' || words[i]?.role === 'own') i = next(words, i + 1)
  const grown = words[i]?.role === 'mate' && !isOfYoung(words, i)
  if (behind?.role !== 'part') return grown && !isChickCount(words, at)
  const isFrom = ['outOf', 'between'].includes(behind.token.type)
  return grown || (words[i]?.role === 'young' && (own || !isFrom || words[i]!.token.type !== 'chick'))
}
/** "10 Barred Rock chicks": the name is that of the chicks. */
const isOfYoung = (words: readonly Word[], at: number): boolean =>
  words[at]?.token.type === 'breed' && words[at + 1]?.token.type === 'chick'
/** "got 5 hens and 3 roos". */
const isChickCount = (words: readonly Word[], at: number): boolean =>
  words.slice(Math.max(0, at - 4), at).some(({ role }) => role === 'hatched')

type Phrase = {
  readonly look: readonly Token[]
  readonly not: boolean
  readonly sex?: Sex
  readonly young: boolean
  readonly end: number
}

/** What is said of a count, up to the next one or to the parents. */
function phraseFrom(words: readonly Word[], from: number): Phrase {
  const look: Token[] = []
  let [not, young, hatched, end]: [boolean, boolean, boolean, number] = [false, false, false, from]
  let sex: Sex | undefined
  for (let i = from; i < Math.min(words.length, from + 14); i += 1) {
    const word = words[i]!
    end = i
    const had = word.token.word === 'with' ? words[next(words, i + 1)]?.token : undefined
    if (had?.type === 'trait' || (had && isSpot(had))) continue // "with a single comb"
    if (word.token.word === 'without' && (!words[i + 1] || isMark(words[i + 1]!) || words[i + 1]!.role === 'stop')) {
      not = true
      end = i + 1
      break // "5 with spots and 4 without, ..."
    }
    if (['number', 'half', 'stop', 'part', 'own'].includes(word.role) || word.token.type === 'carries') break
    if (word.token.word === 'how') break // "keeping 20, how many lavender"
    if (word.role === 'of' && words[next(words, i + 1)]?.role === 'number') break
    if (word.role === 'mate' && isOfYoung(words, i)) continue
    if (word.role === 'mate') {
      if (words[i - 1]?.role === 'look') look.pop() // "a lavender hen"
      break
    }
    if (word.role === 'not' && look.length === 0) not = true
    if (word.role === 'not' && look.length > 0) break // "7 black, none lavender"
    if (word.role === 'look' && words[i - 1]?.token.type === 'number' && look.length > 0) break // "one black one blue"
    if (word.role === 'look') look.push(word.token)
    if (word.role === 'hatched') hatched = true
    if (word.role === 'young') {
      young = true
      sex ??= sexOf(word)
    }
    end = i + 1
  }
  return { look, not, ...(sex === undefined ? {} : { sex }), young: young || hatched, end }
}

/** "8 chicks from a lavender hen are black": what is said of the chicks behind their parents. */
function lookBehindParents(words: readonly Word[], { end }: Phrase): Partial<Pick<Phrase, 'look' | 'not'>> {
  if (words[end]?.role !== 'part') return {}
  const rest = words.slice(end, end + farWords)
  const stop = rest.findIndex(({ role }) => role === 'stop' || role === 'number')
  const at = rest
    .slice(0, stop < 0 ? rest.length : stop)
    .findIndex(
      ({ token }, i) => i > 1 && turned.test(token.word) && !/^(?:that|which|who)$/u.test(rest[i - 1]!.token.word),
    )
  if (at < 0) return {}
  const { look, not } = phraseFrom(words, end + at + 1)
  return look.length > 0 ? { look, not: not || words[end + at]!.role === 'not' } : {}
}
const turned = /^(?:are|were|was|is|came|come|all|none|turned|feathered|hatched|look|looked)$/u

/** "if a lavender chick hatches", "would one prove it": nothing was seen. */
const supposed = /\b(?:if|would|will|could|can|need|until|unless|should|expect|chance|odds|prove|proves|how many)\b/u

/** Words of a sentence looked at on each side: a long one is not read whole for each of its words. */
const farWords = 60

const counted = new WeakMap<readonly Token[], readonly Chicks[]>()
/** Chicks counted among these tokens, in order. Asked of one message many times, reckoned once. */
export function chicksCounted(tokens: readonly Token[]): readonly Chicks[] {
  const known = counted.get(tokens) ?? countedIn(tokens)
  counted.set(tokens, known)
  return known
}

function countedIn(tokens: readonly Token[]): readonly Chicks[] {
  const words = wordsOf(tokens)
  const found: Chicks[] = []
  const taken = new Set<number>()
  const total = (from: number): { readonly count: number; readonly end: number } | undefined => {
    const own = next(words, from)
    const at = words[own]?.role === 'own' ? next(words, own + 1) : own // "8 of my 10"
    if (words[at]?.role !== 'number' || isOfMates(words, at)) return undefined
    taken.add(at)
    return { count: words[at].value, end: at + 1 }
  }
  const endBefore = (at: number): number => words[Math.min(at, words.length) - 1]?.token.end ?? 0
  const joins = (word: Word | undefined): boolean =>
    word !== undefined &&
    (word.role === 'of' || word.token.type === 'outOf' || word.token.type === 'between' || word.token.type === 'slash')
  /** "4 of 9", "1 chick out of 9". */
  const totalBehind = (at: number): ReturnType<typeof total> => {
    const joint = words[at]?.role === 'young' && words[next(words, at + 2)]?.role === 'number' ? at + 1 : at
    return joins(words[joint]) ? total(joint + 1) : undefined
  }
  for (const [i, { role, value, token }] of words.entries()) {
    if (taken.has(i)) continue
    const sentence = (): string => {
      const before = words.slice(Math.max(0, i - farWords), i)
      const after = words.slice(i, i + farWords)
      const end = after.findIndex((word, k) => k > 0 && word.role === 'stop')
      return [
        ...before.slice(before.findLastIndex((word) => word.role === 'stop') + 1),
        ...after.slice(0, end < 0 ? after.length : end),
      ]
        .map((word) => word.token.word)
        .join(' ')
    }
    const last = found.at(-1)
    const listed = role === 'number' && last !== undefined && token.at - last.end <= ' and '.length // "9 blue and 1 splash"
    const lone = !listed && (role === 'article' || (role === 'number' && value === 1))
    if (lone && words[i - 1]?.role !== 'not' && supposed.test(sentence())) continue
    if (role === 'number') {
      const after = next(words, i + 1)
      if (words[after]?.role === 'unit' || isOfMates(words, i)) continue
      if (words.slice(Math.max(0, i - 2), i).some((word) => word.token.word === 'many')) continue // "how many of 16 come mottled"
      const whole = totalBehind(after)
      const first = phraseFrom(words, whole?.end ?? i + 1)
      const said = first.look.length > 0 ? first : { ...first, ...lookBehindParents(words, first) }
      const later = whole ?? (joins(words[said.end]) && said.look.length > 0 ? total(said.end + 1) : undefined)
      const isRest = said.not && said.look.length === 0 && found.some(({ look }) => look.length > 0)
      const isCounted =
        isRest || said.young || said.look.length > 0 || ['all', 'hatched'].includes(words[i - 1]?.role ?? '') || later
      if (!isCounted) continue
      const bare = said.look.length === 0 && said.not ? found.findLast(({ look }) => look.length > 0) : undefined
      found.push({
        count: value,
        ...(later && later.count >= value ? { of: later.count } : {}),
        ...(said.sex ? { sex: said.sex } : {}),
        look: bare?.look ?? said.look, // "5 with a head spot and 4 without"
        not: bare ? !bare.not : said.not,
        at: token.at,
        end: endBefore(Math.max(first.end, later?.end ?? 0)),
      })
    } else if (role === 'not') {
      // "no whites in 14 chicks", "none of the 12 were lavender"
      const after = next(words, i + 1)
      const first = joins(words[after]) ? total(after + 1) : undefined
      const said = phraseFrom(words, first?.end ?? i + 1)
      const whole = first ?? (joins(words[said.end]) && said.look.length > 0 ? total(said.end + 1) : undefined)
      if (whole && said.look.length > 0)
        found.push({
          count: 0,
          of: whole.count,
          ...(said.sex ? { sex: said.sex } : {}),
          look: said.look,
          not: false,
          at: token.at,
          end: endBefore(Math.max(said.end, whole.end)),
        })
    } else if (role === 'half') {
      const after = next(words, i + 1)
      const whole = joins(words[after]) ? total(after + 1) : undefined
      const said = phraseFrom(words, whole?.end ?? i + 1)
      if (whole && said.look.length > 0)
        found.push({
          count: Math.round(whole.count / 2),
          of: whole.count,
          look: said.look,
          not: said.not,
          at: token.at,
          end: endBefore(said.end),
        })
    } else if (role === 'look' && isBareChick(words, i)) {
      found.push({ count: 1, look: [token], not: false, at: token.at, end: endBefore(i + 2) })
    } else if (role === 'article' && words[i - 1]?.role !== 'not' && words[i + 1]?.role === 'look') {
      const said = phraseFrom(words, i + 1)
      const young = words.slice(i + 1, i + 5).find((word) => word.role !== 'look')
      const isSeen =
        young?.role === 'young' &&
        (young.token.type === 'chick' ||
          young.token.type === 'number' ||
          isChickCount(words, i) ||
          hasOutcome(words, i))
      if (isSeen && said.look.length > 0)
        found.push({
          count: 1,
          ...(said.sex ? { sex: said.sex } : {}),
          look: said.look,
          not: false,
          at: token.at,
          end: endBefore(said.end),
        })
    }
  }
  return found
}
/** "White chick popped up …": one chick at the head of a sentence, without a number. */
const isBareChick = (words: readonly Word[], at: number): boolean =>
  (at === 0 || words[at - 1]!.role === 'stop') &&
  words[at + 1]?.role === 'young' &&
  /[^s]$/u.test(words[at + 1]!.token.word) &&
  /^(?:popped|turned|showed|appeared|came|hatched)$/u.test(words[at + 2]?.token.word ?? '')
const hasOutcome = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 5), at)
    .some(({ token }) => /^(?:gave|gives|threw|throws|produced|made|sired|laid|got|had)$/u.test(token.word))

/** What is said of all the chicks at once, away from their number: "…, all black"; "none lavender"; or just "none". */
export function saidOfAll(
  tokens: readonly Token[],
): { readonly look: readonly Token[]; readonly not: boolean } | undefined {
  const words = wordsOf(tokens)
  for (const [i, { role }] of words.entries()) {
    if (role !== 'all' && role !== 'not') continue
    const said = phraseFrom(words, i + 1)
    if (said.look.length > 0) return { look: said.look, not: role === 'not' || said.not }
    const after = words[next(words, i + 1)]
    if (/^none$/u.test(words[i]!.token.word) && (after === undefined || after.role === 'stop'))
      return { look: [], not: true }
  }
  return undefined
}

/** The text but for the chicks that are counted in it: who was put to whom. */
export function withoutCounts(text: string, tokens: readonly Token[]): string {
  return chicksCounted(tokens).reduceRight((left, { at, end }) => `${left.slice(0, at)} ${left.slice(end)}`, text)
}
