// grammar/read/photoFact.ts: a picture of one named breed, which is not seen: what to look for to know the breed, or the sex at that age.
import { breedNamed } from '../../core/breeds.ts'
import { commonOf } from './common.ts'
import { isToldPair } from './pairs.ts'
import { birdsIn } from './topic.ts'
import type { FactQuestion } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'

/** "bin said Ameraucana, what is she really", "sold as", "is she a pure one". */
const asksKind =
  /\b(?:really|actually|sold (?:to me |me )?as|bought as|(?:bin|label|sign|ad|advert|seller|breeder|store|hatchery|lady|guy|man|she|he|they) (?:said|says|swears|told me|claims|claimed)|labell?ed|supposed to be|marked as|pure|purebred|legit|genuine|what (?:is|are) (?:she|he|it|they|this|these)|whats (?:she|he|it|this))\b/u

/** The one breed that is shown: the first where another is what it may be instead. */
function shownIn(reading: Reading): Bird | undefined {
  const { scene } = reading
  const [bird, ...others] = birdsIn(reading)
  const isBreed = breedNamed(bird?.ref.breed ?? '')?.type !== 'described'
  const kept = others.every(({ ref }) => ref.breed === bird?.ref.breed || /Egger|Mixed/u.test(ref.breed ?? ''))
  return bird && isBreed && kept && !isToldPair(reading) && scene.matings.length === 0 && scene.tallies.length === 0
    ? bird
    : undefined
}

const asFact = (reading: Reading, bird: Bird, topic: string, feature: 'marks' | 'sex-signs'): FactQuestion => {
  const { genotype: _, asWritten: __, ...ref } = bird.ref
  return { kind: 'fact', topic, birds: [ref], features: [feature], unseen: true, ...commonOf(reading, [bird]) }
}

const isAged = ({ words }: Reading): boolean =>
  words.some((word) => /^(?:\d*(?:weeks?|wks?|wk|wo|months?|mths?|mos?))$/u.test(word))

/** "[photo] 8 week Buff Orpington, boy or girl", "is this comb too red for a girl". */
const asksSex = ({ tokens, scene }: Reading): boolean =>
  scene.aspects.includes('sexing') ||
  tokens.some((token) => (token.type === 'cock' || token.type === 'hen') && !token.many && !token.parent)

export const readPhotoBird: Reader = (reading) => {
  const bird = reading.has('photo') ? shownIn(reading) : undefined
  if (!bird) return undefined
  if (asksSex(reading) && isAged(reading)) return asFact(reading, bird, 'later-signs', 'sex-signs')
  const kind = asksKind.test(reading.words.slice(0, 80).join(' '))
  return kind && !reading.has('carry', 'father') ? asFact(reading, bird, 'bird', 'marks') : undefined
}
