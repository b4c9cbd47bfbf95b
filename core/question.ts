// core/question.ts: the shape of every Question: what a message asked, as plain data. No prose.
import * as z from 'zod'
import { shownIds } from './looks/shown.ts'

const Sex = z.enum(['M', 'F'])

/** Told alleles by locus id, dominant first; one allele for a hen at a Z locus, or one where only one copy is told. */
export const ToldGenotype = z.record(z.string(), z.array(z.string()).min(1).max(2).readonly())
export type ToldGenotype = z.infer<typeof ToldGenotype>

/** A bird as the keeper named it. Everything is optional: what is not told is absent. */
export type BirdRef = {
  readonly breed?: string | undefined // canonical catalogue name, e.g. 'Light Sussex'
  readonly line?: string | undefined // line id of that breed, e.g. 'production'
  readonly genotype?: ToldGenotype | undefined // told by the keeper; overrides the catalogue
  readonly cross?: { readonly sire: BirdRef; readonly dam: BirdRef } | undefined // a cross-bred bird: its parents
  readonly name?: string | undefined // the keeper's own name for it, e.g. 'Bert'
  readonly asWritten?: string | undefined // the words of the message, trimmed
}
export const BirdRef: z.ZodType<BirdRef> = z.lazy(() =>
  z.strictObject({
    breed: z.string().optional(),
    line: z.string().optional(),
    genotype: ToldGenotype.optional(),
    cross: z.strictObject({ sire: BirdRef, dam: BirdRef }).optional(),
    name: z.string().optional(),
    asWritten: z.string().optional(),
  }),
)

/** One thing the reading took for granted: the core passes it on, the bot words it. */
export const Assumed = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('male-first'), sire: z.string(), dam: z.string() }),
  z.strictObject({ kind: z.literal('variety'), said: z.string(), taken: z.string() }),
  z.strictObject({ kind: z.literal('line'), said: z.string(), breed: z.string(), taken: z.string().optional() }), // a line of which nothing is known
  z.strictObject({ kind: z.literal('spelling'), said: z.string(), taken: z.string() }),
  z.strictObject({ kind: z.literal('skipped'), words: z.array(z.string()).readonly() }),
  z.strictObject({ kind: z.literal('language'), code: z.string() }),
  z.strictObject({ kind: z.literal('context'), restated: z.string() }),
  z.strictObject({ kind: z.literal('daughters'), count: z.number().int() }), // how many of his own, where nobody said
  z.strictObject({ kind: z.literal('sack'), kilograms: z.number().gt(0), said: z.string() }), // weight of a bag of feed
])
export type Assumed = z.infer<typeof Assumed>

/** What of a cross the keeper asked about; empty = the usual reply. */
export const Aspect = z.enum([
  'sexing',
  'chicks',
  'adults',
  'eggs',
  'shell',
  'size',
  'temper',
  'broody',
  'hardiness',
  'feed',
  'shares',
  'why',
  'more',
  'symbols',
  'reverse',
  'welfare',
  'comb',
  'legs',
  'maturity',
  'egg-size',
  'vigour',
  'meat',
  'wings',
])
export type Aspect = z.infer<typeof Aspect>

/** What of one bird is asked beyond its figures. */
export const Feature = z.enum([
  'crest',
  'beard',
  'feet',
  'toes',
  'tail',
  'tufts',
  'neck',
  'short-legs',
  'skin',
  'lobes',
  'eyes',
  'origin',
  'breeds-true',
  'ground',
  'copies',
  'lethal',
  'flight',
  'marks',
  'sex-signs',
  'make-up',
  'hidden',
  'looks',
  'sex-linked',
])
export type Feature = z.infer<typeof Feature>

/** How the keeper writes, so that the reply can follow. */
export const Manner = z.strictObject({
  symbols: z.boolean(), // used genotype symbols, or asked for them
  units: z.enum(['metric', 'imperial', 'both']),
  currency: z.string().optional(), // e.g. '£'
})
export type Manner = z.infer<typeof Manner>

export const Goal = z.enum([
  'sexable',
  'eggs',
  'blue-eggs',
  'green-eggs',
  'olive-eggs',
  'brown-eggs',
  'dark-eggs',
  'white-eggs',
  'size',
  'meat',
  'calm',
  'barred',
  'laced',
  'show',
  'cold',
  'heat',
  'broody',
  'family',
])
export type Goal = z.infer<typeof Goal>

/** Chicks seen: how many, of which sex, and what they look like in the words of a locus or of a look. */
export const Tally = z.strictObject({
  count: z.number().int().min(0),
  sex: Sex.optional(),
  shows: z.boolean().optional(), // shows the trait in question (white, lavender …) or is clear of it
  look: z.string().optional(), // a look word: 'white', 'black', 'barred', 'pale', 'chipmunk' …
})
export type Tally = z.infer<typeof Tally>

/** A named flock: birds with parents and readings, and broods with tallies. What a debate is settled from. */
export const FlockBird = z.strictObject({
  name: z.string(), // unique in the flock; the keeper's name or a made one ('the cock', 'chick 3')
  sex: Sex.optional(),
  bird: BirdRef.optional(),
  sire: z.string().optional(), // name of a flock bird
  dam: z.string().optional(),
  shows: z.record(z.string(), z.boolean()).optional(), // allele -> shows it / is clear of it
  carries: z.record(z.string(), z.boolean()).optional(), // allele -> known carrier / known not to carry
})
export type FlockBird = z.infer<typeof FlockBird>
export const Brood = z.strictObject({
  sire: z.string(),
  dam: z.string(),
  chicks: z.array(Tally).readonly(),
  rivals: z.array(z.string()).readonly().optional(), // other cocks that may be the sire
})
export type Brood = z.infer<typeof Brood>
export const Flock = z.strictObject({ birds: z.array(FlockBird).readonly(), broods: z.array(Brood).readonly() })
export type Flock = z.infer<typeof Flock>

const Common = { assumed: z.array(Assumed).readonly(), manner: Manner }

export const CrossQuestion = z.strictObject({
  kind: z.literal('cross'),
  matings: z
    .array(z.strictObject({ sire: BirdRef, dam: BirdRef }))
    .min(1)
    .readonly(),
  aspects: z.array(Aspect).readonly(),
  shown: z.array(z.enum(shownIds)).readonly().optional(), // how many of the chicks show these is asked
  outOf: z.number().int().min(1).optional(), // of so many chicks, where the keeper said how many there are to be
  counted: z.array(Tally).readonly().optional(), // all the chicks so far, by their look: do they fit?
  ...Common,
})
export const PartnersQuestion = z.strictObject({
  kind: z.literal('partners'),
  for: z.array(BirdRef).min(1).readonly(), // the keeper's own birds
  wanted: Sex, // the part that is looked for
  goals: z.array(Goal).readonly(), // empty = sexable
  among: z.array(BirdRef).readonly(), // only these, where the keeper names candidates; empty = whole catalogue
  besides: z.array(BirdRef).readonly().optional(), // not these: the keeper has them, or does not want them
  minimumEggs: z.number().optional(), // a year
  chicks: z.string().optional(), // the one colour that all chicks shall have
  each: z.boolean().optional(), // asked goal by goal: which give this, and which give that
  line: z.string().optional(), // only birds of that line, where the breed has it: 'heritage'
  ...Common,
})
export const CarrierQuestion = z.strictObject({
  kind: z.literal('carrier'),
  of: z.string(), // name of a bird in the flock
  allele: z.string(), // e.g. 'lav', 'choc', 'c', 's+'
  locus: z.string(), // its locus id
  flock: Flock,
  rivals: z.array(z.string()).readonly(), // other possible sires of the broods, by name
  ...Common,
})
export const ParentsQuestion = z.strictObject({
  kind: z.literal('parents'),
  chicks: z
    .array(z.strictObject({ tally: Tally, comb: z.string().optional(), form: z.array(z.string()).readonly() }))
    .readonly(),
  sires: z.array(BirdRef).readonly(),
  dams: z.array(BirdRef).readonly(),
  egg: z.string().optional(), // shell colour the chick came from
  unseen: z.boolean().optional(), // a picture of the chick was sent or spoken of: it is said that none is seen
  ...Common,
})
export const HatchQuestion = z.strictObject({
  kind: z.literal('hatch'),
  pulletsWanted: z.number().int().min(1).optional(),
  eggsSet: z.number().int().min(1).optional(), // asked the other way: how many pullets from these eggs
  certainty: z.number().gt(0).lt(1).optional(), // default 0.9
  shipped: z.boolean().optional(),
  hatchRate: z.number().gt(0).max(1).optional(), // of all eggs set, as told
  mating: z.strictObject({ sire: BirdRef, dam: BirdRef }).optional(), // sexing accuracy of that very cross
  setOn: z.string().optional(), // ISO date, or --MM-DD where the year is not told
  topic: z.enum(['eggs-to-set', 'pullets-from', 'dates', 'new-cock-wait', 'ratio', 'sex-ratio']),
  cock: BirdRef.optional(), // for ratio: whose hens are counted
  cocks: z.number().int().min(1).optional(), // for ratio: so many with so many hens
  hens: z.number().int().min(1).optional(),
  males: z.number().int().min(0).optional(), // for sex-ratio: males among chicks
  chicks: z.number().int().min(1).optional(),
  ...Common,
})
export const LinesQuestion = z.strictObject({
  kind: z.literal('lines'),
  goals: z.array(Goal).readonly(),
  compare: z.array(BirdRef).readonly(), // birds of one part, or cross-bred birds; empty = the best of the catalogue
  prices: z.strictObject({
    feedPerKg: z.number().optional(),
    eggsPerDozen: z.number().optional(),
    chick: z.number().optional(),
  }),
  topic: z.enum(['compare', 'feed-cost', 'keep-until', 'cockerel-cost', 'buy-or-hatch', 'needs']),
  weeks: z.number().optional(),
  year: z.number().int().min(1).max(10).optional(), // laying year that is asked about
  hens: z.number().int().min(1).optional(),
  eggsPerWeek: z.number().min(1).optional(), // for needs: eggs that are wanted
  people: z.number().min(1).optional(), // for needs: mouths to feed
  breedsOn: z.boolean().optional(), // only birds that give their own kind again: no first crosses
  ...Common,
})
export const FactQuestion = z.strictObject({
  kind: z.literal('fact'),
  topic: z.string(), // id of a record in core/data/facts, or 'bird', 'locus', 'linked', 'flock'
  birds: z.array(BirdRef).readonly(),
  mating: z.strictObject({ sire: BirdRef, dam: BirdRef }).optional(), // the birds, where it is told who is put to whom
  locus: z.string().optional(),
  otherLocus: z.string().optional(), // for topic 'linked': the second gene
  aspects: z.array(Aspect).readonly().optional(), // what of one bird is asked, said first
  features: z.array(Feature).readonly().optional(), // the same, of what has no figure
  unseen: z.boolean().optional(), // a picture was sent or spoken of: it is said that none is seen
  flock: Flock.optional(), // for topic 'flock': what has been told so far
  ...Common,
})
/** Something is missing. Each option, if the keeper takes it, is a whole Question; the core decides whether asking matters. */
export type AskBackQuestion = {
  readonly kind: 'ask-back'
  readonly missing:
    | 'variety'
    | 'which-is-male'
    | 'other-bird'
    | 'goal'
    | 'birds'
    | 'context'
    | 'look'
    | 'count'
    | 'spelling'
    | 'trait'
  readonly about?: string | undefined // the words in doubt
  readonly options: readonly { readonly label: string; readonly question: Question }[]
  readonly birds: readonly BirdRef[] // what was understood so far
  readonly sire?: readonly BirdRef[] | undefined // of these, those whose part was told
  readonly dam?: readonly BirdRef[] | undefined
  readonly assumed: readonly Assumed[]
  readonly manner: Manner
}
export const DeclineQuestion = z.strictObject({
  kind: z.literal('decline'),
  why: z.enum(['off-topic', 'health', 'law', 'photo', 'thanks', 'help', 'forgotten']),
  ...Common,
})
export const SilentQuestion = z.strictObject({ kind: z.literal('silent') })
/** Only: over the length limit, or a genotype that cannot be. */
export const FaultQuestion = z.strictObject({
  kind: z.literal('error'),
  fault: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('too-long'), bytes: z.number(), limit: z.number() }),
    z.strictObject({
      kind: z.literal('unknown-allele'),
      written: z.string(),
      locus: z.string().optional(),
      known: z.array(z.string()).readonly(),
    }),
    z.strictObject({
      kind: z.literal('allele-of-another-locus'),
      written: z.string(),
      belongsTo: z.string(),
      with: z.string(),
    }),
    z.strictObject({ kind: z.literal('hen-has-one'), written: z.string(), locus: z.string(), write: z.string() }),
    z.strictObject({ kind: z.literal('too-many-alleles'), written: z.string(), locus: z.string() }),
    z.strictObject({ kind: z.literal('malformed'), detail: z.string() }),
  ]),
})

export const AskBackQuestion: z.ZodType<AskBackQuestion> = z.lazy(() =>
  z.strictObject({
    kind: z.literal('ask-back'),
    missing: z.enum([
      'variety',
      'which-is-male',
      'other-bird',
      'goal',
      'birds',
      'context',
      'look',
      'count',
      'spelling',
      'trait',
    ]),
    about: z.string().optional(),
    options: z.array(z.strictObject({ label: z.string(), question: Question })).readonly(),
    birds: z.array(BirdRef).readonly(),
    sire: z.array(BirdRef).readonly().optional(),
    dam: z.array(BirdRef).readonly().optional(),
    ...Common,
  }),
)

export type CrossQuestion = z.infer<typeof CrossQuestion>
export type PartnersQuestion = z.infer<typeof PartnersQuestion>
export type CarrierQuestion = z.infer<typeof CarrierQuestion>
export type ParentsQuestion = z.infer<typeof ParentsQuestion>
export type HatchQuestion = z.infer<typeof HatchQuestion>
export type LinesQuestion = z.infer<typeof LinesQuestion>
export type FactQuestion = z.infer<typeof FactQuestion>
export type DeclineQuestion = z.infer<typeof DeclineQuestion>
export type FaultQuestion = z.infer<typeof FaultQuestion>
export type Question =
  | CrossQuestion
  | PartnersQuestion
  | CarrierQuestion
  | ParentsQuestion
  | HatchQuestion
  | LinesQuestion
  | FactQuestion
  | AskBackQuestion
  | DeclineQuestion
  | z.infer<typeof SilentQuestion>
  | FaultQuestion
export const Question: z.ZodType<Question> = z.lazy(() =>
  z.union([
    CrossQuestion,
    PartnersQuestion,
    CarrierQuestion,
    ParentsQuestion,
    HatchQuestion,
    LinesQuestion,
    FactQuestion,
    AskBackQuestion,
    DeclineQuestion,
    SilentQuestion,
    FaultQuestion,
  ]),
)
