// grammar/read/featureFact.ts: one named breed, and what of it is asked: comb, legs, skin, crest, beard, feet, toes, lobes, eyes, origin, flight, ground, copies of a gene, lethal genes, make-up and hidden recessives, breeding true.
import { breedNamed } from '../../core/breeds.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { commonOf, refsOf } from './common.ts'
import { isToldPair } from './pairs.ts'
import { birdsIn, perhaps, topicOf } from './topic.ts'
import type { Aspect, Feature, FactQuestion } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'

/** Features by the words for them; a name of a breed ("Crested Cream Legbar") is taken out before. */
const said: readonly (readonly [Feature, RegExp])[] = [
  ['breeds-true', /\b(?:breeds?|breeding|bred|come|comes) true\b|\btrue breeding\b/u],
  [
    'lethal',
    /\b(?:lethals?|deadly)\b|\bgenes? that kills?\b|\bkill(?:s|er|ing)?\b.*\bgenes?\b|\bdies?\b.*\b(?:genes?|crests?|tufts?)\b/u,
  ],
  [
    'origin',
    /\bwhere (?:do|does|did|are|is|was|were)\b.*\b(?:come|from|originate\w*)\b|\borigins?\b|\boriginat\w+\b|\b(?:what|which) (?:country|countries|land)\b|\b(?:made|created|developed|bred|descended) (?:from|out of)\b|\b(?:what|which) breeds? (?:made|make|are|went|is)\b.*\b(?:in|into|made|behind)?\b|\bhow old is the\b|\bancestors?\b|\bancestry\b|\b(?:what|which \w+) went into\b|\ba cross of what\b/u,
  ],
  [
    'flight',
    /\bfl(?:y|ies|ying|iers?|ight)\b(?! (?:strips?|paper|season))|\bover (?:a|the|my|our) (?:[\d.]+ ?(?:m|ft|foot|feet|metre|meter)? )?fence\b/u,
  ],
  ['eyes', /\beyes?\b/u],
  ['lobes', /\b(?:ear ?)?lobes?\b/u],
  ['skin', /\bskin(?:s|ned)?\b/u],
  ['beard', /\b(?:beards?|bearded|muffs?|muffed|muffs and beards?)\b/u],
  [
    'feet',
    /\bfeather\w*\b.*\b(?:feet|foot|legs?|legged|footed|shanks?|toes)\b|\b(?:feet|foot|legs?|shanks?)\b.*\bfeather\w*\b|\bclean[ -]leg\w*\b|\bboot(?:s|ed)\b/u,
  ],
  ['toes', /\btoes?\b|\btoed\b/u],
  ['tufts', /\bear[ -]?tufts?\b|\btufts?\b|\btufted\b/u],
  ['tail', /\brumpless\b|\btailless\b|\b(?:a|no) tails?\b/u],
  ['neck', /\b(?:bare|naked) necks?\b/u],
  ['short-legs', /\bshort[ -]?leg\w*\b|\bcreepers?\b/u],
  ['crest', /\bcrest(?:s|ed)?\b|\btop ?knots?\b|\btop ?hats?\b|\bpom ?poms?\b/u],
  [
    'copies',
    /\b(?:how many|one|1|two|2|single|double|both|a single) (?:\w+ ){0,2}(?:copy|copies|genes?|alleles?|doses?|bars?|barring)\b|\bor (?:2|two)\b/u,
  ],
  [
    'make-up',
    /\b(?:what|which|whats)\b(?!.*\b(?:eggs?|shells?|lays?|layers?)\b).*\bmakes?\b.*\b(?:colou?r(?:ed)?|pattern|look|that way)\b|\b(?:what|which|whats)(?: are)?(?: the)? (?:colou?r )?genes\b.*\b(?:makes?|made|behind|has|have|got|does|do|is|are|in)\b|\bwhy (?:is|are) .*\b(?:that|this|such a) colou?r\b/u,
  ],
  [
    'looks',
    /\b(?:what|which|whats)(?: the)? colou?rs? (?:is|are|does|do|would|should|of)\b(?!.*\b(?:eggs?|shells?|lays?|legs?|shanks?|skin|lobes?|eyes?|down|chicks?)\b)|\b(?:what|how) (?:does|do|should|would) .*\blooks?(?: like)?\b|\bwhats? .*\blook like\b|^describe\b/u,
  ],
  [
    'hidden',
    /\bhid(?:e|es|ing|den)\b.*\b(?:recessives?|anything|something|genes?|colou?rs?)\b|\b(?:anything|any|what|which) (?:recessives?|hidden)\b|\brecessives? (?:hidden|hiding|do|does|in)\b/u,
  ],
  ['ground', /\b(?:what|which|whats)\b.*\b(?:ground|base) ?(?:colou?r)?\b|\b(?:e locus|e allele|e series|e-locus)\b/u],
]

/** Words of the message without those that name the birds. */
function besides({ tokens }: Reading, birds: readonly Bird[]): string {
  const names = new Set(
    birds.flatMap(({ saidOf }) =>
      saidOf.parts.filter(({ type }) => type === 'breed' || type === 'family').map(({ at }) => at),
    ),
  )
  return tokens
    .filter(({ at }) => !names.has(at))
    .slice(0, 80)
    .map(({ word }) => word)
    .join(' ')
}

/** "is exchequer mo/mo on E": a letter alone that asks for the ground. */
const isGroundLetter = ({ tokens }: Reading): boolean =>
  tokens.some(({ said: written }, at) => /^[Ee]$/u.test(written) && tokens[at - 1]?.word === 'on')

/** Comb and legs have their figures in the catalogue. */
function figuresIn(reading: Reading, words: string): readonly Aspect[] {
  const legs = /\b(?:legs?|shanks?|legged)\b/u.test(words) && !/\bfeather|\bclean|\bshort/u.test(words)
  const comb = /\bcombs?\b|\bcombed\b/u.test(words) || traitsIn(reading.tokens).some((id) => id.endsWith(' comb'))
  return [...(comb ? (['comb'] as const) : []), ...(legs ? (['legs'] as const) : [])]
}

/** The gene whose copies are counted. */
function locusCounted({ tokens }: Reading, words: string): string | undefined {
  const [id] = traitsIn(tokens.filter(({ type }) => type === 'trait' || type === 'colour'))
  return /\bbars?\b/u.test(words) ? 'B' : traits[id ?? '']?.locus
}

/** One breed of its own, or several asked alike; nothing is mated, sought, hatched or debated. */
function subjectOf(reading: Reading): readonly Bird[] {
  const { scene, tokens, has } = reading
  const birds = birdsIn(reading)
  const isOther =
    isToldPair(reading) ||
    scene.wanted.length > 0 ||
    scene.goals.some((goal) => goal.endsWith('-eggs')) || // "has a single comb, what chance of blue eggs"
    scene.matings.length > 0 ||
    scene.tallies.length > 0 ||
    has('father', 'hatchedWhat', 'photo', 'inbreeding') ||
    tokens.some(({ type }) => type === 'chick' || type === 'kin') ||
    scene.aspects.includes('sexing')
  const mated = birds.length > 1 && birds.some(({ sex }) => sex !== undefined)
  const areBreeds = birds.every(
    ({ ref }) => breedNamed(ref.breed ?? '')?.type !== 'described' && ref.cross === undefined,
  )
  return isOther ||
    mated ||
    !areBreeds ||
    birds.length > 2 ||
    birds.every(({ ref }) => breedNamed(ref.breed ?? '')?.type === 'hybrid')
    ? []
    : birds
}

/** A question by its mark, its words or its shortness: "eye colour of Brahma". */
const isAsking = ({ asks, has, words, tokens }: Reading): boolean =>
  asks ||
  has('question', 'define', 'claim') ||
  /^(?:has|have|got)$/u.test(words[0] ?? '') ||
  (words.length <= 6 && !tokens.some(({ type }) => type === 'my'))

/** What a bird carries unseen is a debate, unless copies are counted or genes that kill are meant. */
const isCarried = ({ tokens }: Reading, features: readonly Feature[]): boolean =>
  tokens.some(({ type }) => type === 'carries' || type === 'split') &&
  !features.some((feature) => feature === 'copies' || feature === 'lethal' || feature === 'hidden')

/** "what comb has a Buckeye", "does a Dominique carry one barring gene or two": the bird first, then the rule. */
export const readFeature: Reader = (reading): FactQuestion | undefined => {
  const birds = subjectOf(reading)
  if (birds.length === 0 || !isAsking(reading)) return undefined
  const words = besides(reading, birds)
  const features = said.filter(([, pattern]) => pattern.test(words)).map(([feature]) => feature)
  const all = isGroundLetter(reading) ? [...features, 'ground' as const] : features
  const aspects = figuresIn(reading, words)
  const locus = all.includes('copies') ? locusCounted(reading, words) : undefined
  // "is frizzle lethal in Cochins": of that gene, and not of whatever else the breed may carry
  if (all.includes('lethal') && traitsIn(reading.tokens).some((id) => id === 'frizzle' || id === 'naked neck'))
    return undefined
  const asked = all.includes('copies') && locus === undefined ? all.filter((feature) => feature !== 'copies') : all
  // "have short legs, what do I lose": told, and the harm is asked about
  if (reading.scene.aspects.includes('welfare') && !asked.includes('lethal')) return undefined
  if (asked.length + aspects.length === 0 || isCarried(reading, asked)) return undefined
  return {
    kind: 'fact',
    topic: topicOf(reading, perhaps) ?? 'bird',
    birds: refsOf(birds.map(asNamed)).slice(0, 4),
    ...(locus === undefined ? {} : { locus }),
    ...(aspects.length === 0 ? {} : { aspects }),
    features: asked.slice(0, 3),
    ...commonOf(reading, birds),
  }
}

/** What is asked of the bird is not told of it. */
const asNamed = (bird: Bird): Bird => {
  const { genotype: _, ...ref } = bird.ref
  return { ...bird, ref }
}
