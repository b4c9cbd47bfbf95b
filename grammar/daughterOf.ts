// grammar/daughterOf.ts: "the daughter of my blue egg hen, her father was a Barnevelder": both parents of one hen, put as the mating she came of.
import type { Token } from './token.ts'

const ofBird: ReadonlySet<string> = new Set(['my', 'filler', 'breed', 'family', 'colour', 'line', 'hen'])
const isName = ({ type }: Token): boolean => type === 'breed' || type === 'family'

/** The tokens of one bird from here on. */
function birdFrom(tokens: readonly Token[], at: number): readonly Token[] {
  const rest = tokens.slice(at, at + 8)
  const end = rest.findIndex(({ type }) => !ofBird.has(type))
  return end < 0 ? rest : rest.slice(0, end)
}

type Told = { readonly from: number; readonly bird: readonly Token[]; readonly to: number }

/** "daughter of my blue egg hen", "out of a Legbar hen". */
function motherIn(tokens: readonly Token[]): Told | undefined {
  for (const [i, token] of tokens.entries()) {
    const kin = token.type === 'kin' && token.kin === 'daughter' && tokens[i + 1]?.type === 'of'
    if (!kin && token.type !== 'outOf') continue
    const start = i + (kin ? 2 : 1)
    const bird = birdFrom(tokens, start)
    const isHen = bird.some(({ type, word }) => type === 'hen' || /\bhen$/u.test(word))
    if (bird.some(isName) && isHen) return { from: i, bird, to: start + bird.length }
  }
  return undefined
}

/** "her father was a Barnevelder", "dad was a Marans". */
function fatherIn(tokens: readonly Token[], after: number): Told | undefined {
  for (let i = after; i < tokens.length; i += 1) {
    const token = tokens[i]!
    if (token.type !== 'cock' || !token.parent || tokens[i + 1]?.type !== 'is') continue
    const bird = birdFrom(tokens, i + 2)
    const from = /^(?:her|hers|their|the|whose)$/u.test(tokens[i - 1]?.word ?? '') ? i - 1 : i
    if (bird.some(isName)) return { from, bird, to: i + 2 + bird.length }
  }
  return undefined
}

/** The mating stands where her father was told. */
export function daughterOf(tokens: readonly Token[]): readonly Token[] {
  const mother = motherIn(tokens.slice(0, 100))
  const father = mother && fatherIn(tokens.slice(0, 100), mother.to)
  const last = father?.bird.at(-1)
  if (!mother || !father || !last) return tokens
  const { said, word, at, end, gap } = last
  const spot = { said, word, at, end, gap: false }
  return [
    ...tokens.slice(0, mother.from),
    ...tokens.slice(mother.to, father.from),
    { ...spot, gap, word: ',', type: 'comma' },
    ...father.bird.filter(({ type }) => type !== 'filler' && type !== 'my'),
    { ...spot, word: 'cock', type: 'cock', many: false, parent: false },
    { ...spot, word: 'over', type: 'over', weak: false },
    ...mother.bird,
    ...tokens.slice(father.to),
  ]
}
