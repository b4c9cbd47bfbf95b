// grammar/read/sexLinkCock.ts: "can a Light Sussex cock make sex-links": one cock, no hen, and whether his chicks can be told.
import { commonOf, goalsOf, isHybrid, isProduct, isSolid, type Reader } from './common.ts'
import { isToldPair } from './pairs.ts'
import { marks } from '../partTaken.ts'
import { breedNamed } from '../../core/breeds.ts'

const asked = /\b(?:make|makes|making|give|gives|produce|use|used|for|work|works|do)\b/u

/** "my roo, can he make sex-links with Barred Rocks": of no breed, so that the cocks for those hens are told. */
export const readSexLinkHens: Reader = (reading) => {
  const { scene, tokens } = reading
  const made = scene.matings.length === 1 && scene.matings.every(({ sires }) => sires.every(isProduct)) // "make Red sex-links with my Delawares"
  const [hen, ...others] = [...scene.birds, ...(made ? scene.matings[0]!.dams : [])].filter(
    (bird) => isSolid(bird) && !isHybrid(bird),
  )
  const links = made || tokens.some(({ type }) => type === 'sexlink') || scene.birds.some(isHybrid)
  const cock = scene.birds.some(({ sex, named, many }) => sex === 'M' && !named && !many)
  const before = tokens.findLast(({ at, type }) => at < (hen?.saidOf.at ?? 0) && type !== 'filler' && type !== 'my')
  if (!hen || others.length > 0 || hen.sex === 'M' || hen.ref.breed === undefined || !links || !cock) return undefined
  if (
    before?.type !== 'over' ||
    reading.has('claim', 'hearsay') ||
    (isToldPair(reading) && !made) ||
    scene.wanted.length > 0
  )
    return undefined
  return {
    kind: 'partners',
    for: [hen.ref],
    wanted: 'M',
    goals: [...new Set([...goalsOf(reading), 'sexable' as const])],
    among: [],
    ...commonOf(reading, [hen]),
  }
}

/** A cock with bars or silver gives them to every chick; for any other the hens are sought. */
export const readSexLinkCock: Reader = (reading) => {
  const { scene, tokens, words } = reading
  const [cock, ...others] = scene.birds.filter((bird) => isSolid(bird) && !isHybrid(bird))
  const links = tokens.some(({ type }) => type === 'sexlink') || scene.birds.some(isHybrid)
  if (!cock || others.length > 0 || cock.sex !== 'M' || cock.many || cock.ref.breed === undefined || !links)
    return undefined
  if (reading.has('claim', 'hearsay') || breedNamed(cock.ref.breed)?.family === 'described') return undefined
  if (isToldPair(reading) || scene.wanted.length > 0 || scene.matings.length > 0) return undefined
  if (!asked.test(words.join(' ')) || scene.birds.some((bird) => isHybrid(bird) && bird.sex === 'M')) return undefined
  const common = commonOf(reading, [cock])
  if (marks(cock.ref) === true) {
    const barred = breedNamed(cock.ref.breed)?.genes['B']?.kind === 'fixed'
    return { kind: 'fact', topic: barred ? 'barred-cock-on-red' : 'reverse-silver', birds: [cock.ref], ...common }
  }
  return {
    kind: 'partners',
    for: [cock.ref],
    wanted: 'F',
    goals: [...new Set([...goalsOf(reading), 'sexable' as const])],
    among: [],
    ...common,
  }
}
