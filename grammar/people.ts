// grammar/people.ts: the keeper's own people and places in a message: "hubby says", "in Rhode Island", "my father's Anconas". No birds.
import { placeNames } from './words/places.ts'
import type { Token } from './token.ts'

const human = /^(?:husband|hubby|boyfriend|girlfriend|wife|man|bloke|lad|lady|ladies|fella|fellow|gal|guy)$/u
const doing =
  /^(?:says|said|say|thinks|thought|wants|wanted|gave|gives|bought|brought|told|reckons|swears|insists|loves|hates|threw|picked|built|who|whos|that|in|at|from|next|with|down|up|on|off|called|sold|sells)$/u
const isDoing = (token: Token | undefined): boolean => doing.test((token?.word ?? '').split(' ')[0] ?? '')
/** "hubby says", "the wife wanted", "a man in Norfolk", "a man with one arm": a person, and no cock or hen. */
const isPerson = (tokens: readonly Token[], at: number): boolean => {
  const [token, next] = [tokens[at]!, tokens[at + 1]]
  const mates = next?.type === 'over' && !/^(?:one|two|no|a|his|her)\b/u.test(tokens[at + 2]?.word ?? '')
  const beside = ['breed', 'family', 'colour', 'line'].includes(tokens[at - 1]?.type ?? '')
  return human.test(token.word) && !beside && isDoing(next) && !(mates && next.word !== 'on' && next.word !== 'off')
}

/** "my father's Anconas": whose they were. */
const isOwner = (tokens: readonly Token[], at: number): boolean => {
  const token = tokens[at]!
  const ownedName = tokens[at + 1]?.type === 'breed' || tokens[at + 1]?.type === 'family'
  return (
    token.type === 'cock' && token.parent && /['’]s$/u.test(token.said) && tokens[at - 1]?.type === 'my' && ownedName
  )
}

const writesFrom =
  /^(?:im|here|live|lives|living|based|located|were|hi|hiya|hello|hey|greetings|newbie|moved|up|down|over|out|folks|farm|keeper|i|am|we|are|and|all)$/u
/** "Hi from Delaware!", "I'm in New Hampshire": where he lives. */
const isPlace = (tokens: readonly Token[], at: number): boolean => {
  const [first, before, token, next] = [tokens[at - 2], tokens[at - 1], tokens[at]!, tokens[at + 1]]
  const named = (token.type === 'breed' || token.type === 'family') && placeNames.has(token.word)
  const ends =
    next === undefined ||
    !['cock', 'hen', 'over', 'under', 'cross', 'chick', 'breed', 'family', 'colour'].includes(next.type)
  return (
    named &&
    /^(?:in|from|near)$/u.test(before?.word ?? '') &&
    (first === undefined || first.type === 'stop' || writesFrom.test(first.word)) &&
    ends
  )
}

/** The tokens with people and places made words that say nothing of birds. */
export const withoutPeople = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, at) => {
    const { said, word, at: place, end, gap } = token
    if (isOwner(tokens, at)) return { said, word, at: place, end, gap, type: 'filler' }
    return isPerson(tokens, at) || isPlace(tokens, at) || (word === 'pile' && tokens[at + 1]?.word === 'of')
      ? { said, word, at: place, end, gap, type: 'unknown' }
      : token
  })
