// grammar/shellColours.ts: colour words said of eggs: a wish, a question, or what a hen shows of her genes, and no bird of that colour.
import type { Goal } from '../core/question.ts'
import type { Token } from './token.ts'

/** Shades as keepers call them, and the goal each stands for; cream and tinted are nobody's goal. */
const shades: ReadonlyMap<string, Goal | undefined> = new Map<string, Goal | undefined>([
  ...['blue', 'bluer', 'turquoise', 'aqua'].map((word) => [word, 'blue-eggs'] as const),
  ...['green', 'greener', 'seafoam', 'sea foam', 'teal', 'mint', 'sage'].map((word) => [word, 'green-eggs'] as const),
  ...['olive', 'olives'].map((word) => [word, 'olive-eggs'] as const),
  ...['brown', 'tan', 'beige'].map((word) => [word, 'brown-eggs'] as const),
  ...['dark', 'darker', 'chocolate'].map((word) => [word, 'dark-eggs'] as const),
  ['white', 'white-eggs'],
  ...['cream', 'tinted', 'tint', 'pinkish', 'pink', 'coloured', 'colored'].map((word) => [word, undefined] as const),
])
const ofBlue = /^(?:blue|green|olive)-eggs$/u

const isShade = ({ word, type }: Token | Placeless): boolean =>
  shades.has(word) && ['colour', 'unknown', 'goal', 'filler'].includes(type)
type Placeless = { readonly word: string; readonly type: string }
const none: Placeless = { word: '', type: 'stop' }

const ofBird: ReadonlySet<string> = new Set(['breed', 'family', 'colour', 'line', 'cock', 'hen', 'trait'])
const isEgg = ({ word }: Token | Placeless): boolean => /^(?:eggs?|shells?|egg basket|basket|carton)$/u.test(word)
const isLaying = ({ word }: Token | Placeless): boolean => /^(?:lay|lays|laying|laid)$/u.test(word)
const slight = /^(?:a|an|the|my|our|their|her|really|very|nice|lovely|pretty|more|bit|to|be|come|turn|of|all|only)$/u

/** Index of the nearest word before `at` that is not slight, nor another shade with its "or". */
function before(tokens: readonly Token[], at: number): number {
  let i = at - 1
  while (i >= 0 && (slight.test(tokens[i]!.word) || tokens[i]!.type === 'or' || isShade(tokens[i]!))) i -= 1
  return i
}

/** "lay cream or brown", "eggs bluer", with no bird behind. */
function isBehindEggs(tokens: readonly Token[], at: number): boolean {
  const said = tokens[before(tokens, at)] ?? none
  const next = tokens[at + 1] ?? none
  return (isLaying(said) || isEgg(said)) && !ofBird.has(next.type) && next.type !== 'chick'
}

/** "more blue in the eggs", "olive for the basket". */
function isInEggs(tokens: readonly Token[], at: number): boolean {
  const link = tokens[at + 1] ?? none
  let i = at + 2
  while (i < at + 5 && slight.test(tokens[i]?.word ?? '')) i += 1
  return /^(?:in|into|on|for|to)$/u.test(link.word) && isEgg(tokens[i] ?? none)
}

/** "blue, or pale green?": one of two shades is of no bird's feathers, so the other is of eggs too. */
function isBesideGreen(tokens: readonly Token[], at: number): boolean {
  const near = tokens.slice(Math.max(0, at - 4), at + 5).filter((token) => token !== tokens[at])
  const joined = tokens.slice(Math.max(0, at - 3), at + 4).some(({ type }) => type === 'or')
  const green = (token: Token | Placeless): boolean =>
    /^(?:green|greener|olive|olives|seafoam|teal|mint)$/u.test(token.word)
  const next = tokens[at + 1] ?? none
  return (
    joined && (green(tokens[at]!) || near.some((token) => green(token) && isShade(token))) && !ofBird.has(next.type)
  )
}

/** "an Easter Egger who lays seafoam": the verb right behind a hen that may lay several colours. */
function isShown(tokens: readonly Token[], verb: number): boolean {
  let i = verb - 1
  while (i >= 0 && /^(?:who|that|which|she|and|hen|hens|pullet|girl|girls)$/u.test(tokens[i]!.word)) i -= 1
  const bird = tokens[i]
  return (
    (bird?.type === 'family' && bird.family === 'Easter Egger') ||
    (bird?.type === 'breed' && /^(?:Easter|Olive) Egger$/u.test(bird.names[0] ?? ''))
  )
}

/** "lays green": the phrase of a goal, said of her. */
const showsBlue = (token: Token): boolean =>
  token.type === 'goal' && ofBlue.test(token.goal) && /^lay(?:s|ing)? /u.test(token.word)

/** What every token has, without its meaning. */
const bare = ({ said, word, at, end, gap }: Token): Pick<Token, 'said' | 'word' | 'at' | 'end' | 'gap'> => ({
  said,
  word,
  at,
  end,
  gap,
})

/** The tokens, with every colour that is said of eggs turned into what it says of them. */
export function shellColours(tokens: readonly Token[]): readonly Token[] {
  const shown = new Set<number>()
  const read = tokens.map((token, at): Token => {
    if (showsBlue(token) && isShown(tokens, at)) return { ...bare(token), type: 'trait', trait: 'lays blue' }
    if (isLaying(token) && isShown(tokens, at)) {
      const shade = tokens.slice(at + 1, at + 4).find(isShade)
      if (shade !== undefined && ofBlue.test(shades.get(shade.word) ?? '')) {
        shown.add(tokens.indexOf(shade))
        return { ...bare(token), type: 'trait', trait: 'lays blue' }
      }
    }
    if (!isShade(token) || !(isBehindEggs(tokens, at) || isInEggs(tokens, at) || isBesideGreen(tokens, at)))
      return token
    const goal = shades.get(token.word)
    return goal === undefined
      ? { ...bare(token), type: 'aspect', aspect: 'shell' }
      : { ...bare(token), type: 'goal', goal }
  })
  return read.filter((_, at) => !shown.has(at))
}
