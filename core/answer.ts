// core/answer.ts: the shape of every Answer: what the core found, as plain data. Its only prose: names, reasons, cautions.
import * as z from 'zod'
import { Assumed } from './question.ts'
import { Look } from './looks/look.ts'

/** A bird as understood. `genotype` in normal form: 's+/s+ b+/b+', hens 'S/-'. */
export type BirdSeen = {
  readonly breed?: string | undefined
  readonly line?: string | undefined
  readonly genotype?: string | undefined
  readonly cross?: { readonly sire: BirdSeen; readonly dam: BirdSeen } | undefined
  readonly name?: string | undefined
}
export const BirdSeen: z.ZodType<BirdSeen> = z.lazy(() =>
  z.strictObject({
    breed: z.string().optional(),
    line: z.string().optional(),
    genotype: z.string().optional(),
    cross: z.strictObject({ sire: BirdSeen, dam: BirdSeen }).optional(),
    name: z.string().optional(),
  }),
)

export const Source = z.strictObject({ ref: z.string(), status: z.enum(['read', 'common practice', 'from memory']) })
export type Source = z.infer<typeof Source>
export const Caution = z.strictObject({
  topic: z.enum([
    'surplus-males',
    'lethal',
    'welfare',
    'disease',
    'hygiene',
    'by-laws',
    'health',
    'inbreeding',
    'size',
    'strains',
  ]),
  text: z.string(),
})
export type Caution = z.infer<typeof Caution>

const Share = z.number().min(0).max(1)
const list = <T extends z.ZodType>(item: T) => z.array(item).readonly()
const Range = z.strictObject({ low: z.number(), likely: z.number(), high: z.number() })

/** What every answer but silent, decline and error carries. */
const Common = {
  summary: z.string().max(160), // the verdict in plain words
  assumptions: list(z.string()), // in words
  assumed: list(Assumed), // the same from the reading, as data
  cautions: list(Caution),
  sources: list(Source),
  birds: list(BirdSeen),
  sire: list(BirdSeen),
  dam: list(BirdSeen),
}

export const LookShare = z.strictObject({
  share: Share, // of the living chicks of this sex
  down: z.string(),
  headSpot: z.string(),
  adult: z.string(),
  shank: z.string(),
  comb: z.string(),
  feathering: z.enum(['fast', 'slow', 'unknown']),
  form: list(z.string()), // what else shows: 'crested', 'muffed', 'feathered shanks', 'five toes' …
  alleles: z.string(), // the loci that set it apart, normal form
  look: Look,
})
export type LookShare = z.infer<typeof LookShare>

export const Sign = z.strictObject({
  sign: z.enum([
    'down colour',
    'head spot',
    'wing feathers',
    'skin colour',
    'shank colour',
    'stripes',
    'plumage',
    'marks',
  ]),
  window: z.string(), // 'at hatch', 'day 0 to 2' …
  cockerel: z.string(),
  pullet: z.string(),
  accuracy: Share.nullable(), // null: no figure that may be shown
  basis: z.string(), // where the accuracy comes from
  status: z.enum(['read', 'common practice', 'from memory']),
})
export type Sign = z.infer<typeof Sign>

export const Sexing = z.strictObject({
  verdict: z.enum(['yes', 'partly', 'no']), // days 0 to 3
  why: z.string(), // one clause
  accuracy: Share.nullable(), // share of all chicks that end in the right pen
  pulletsTrue: Share.nullable(), // share right among those read as pullets
  cockerelsTrue: Share.nullable(),
  readable: Share, // share of chicks that show any sign at all
  signs: list(Sign), // best first, readable in days 0 to 3
  laterSign: Sign.nullable(),
  breaks: list(z.string()),
  reverse: z.strictObject({ verdict: z.enum(['yes', 'partly', 'no']), says: z.string() }).nullable(),
})
export type Sexing = z.infer<typeof Sexing>

export const Hen = z.strictObject({
  eggsFirstYear: Range,
  eggsByYear: list(Range),
  ageFirstEggDays: Range,
  shell: list(z.strictObject({ colour: z.string(), share: Share })),
  eggWeightGrams: Range,
  bodyWeightKg: Range,
  cockWeightKg: Range,
  feedGramsPerDay: Range,
  feedKgPerDozen: Range,
  broody: z.strictObject({ rate: Range, words: z.string() }),
  temper: z.string(),
  hardiness: z.strictObject({ cold: z.string(), heat: z.string() }),
  yearsWorthKeeping: Range.nullable(),
  liveability: Range, // share alive after a laying year
  carcassKg: Range, // what is left for the pot: a brother at sixteen weeks, dressed
  line: z.string(), // what sets these lines apart, one clause; '' when nothing
  vigour: z.string().optional(), // how far apart the lines stand and what crossing them adds, one clause; absent where nothing is crossed
  status: z.enum(['read', 'common practice', 'from memory']),
})
export type Hen = z.infer<typeof Hen>

export const Case = z.strictObject({
  weight: Share, // belief, not chance among chicks
  given: z.string(), // '' where there is only one case
  howToTell: z.string(),
  eggsGiven: z.string().optional(), // what of `given` the shell colour hangs on
  cockerels: list(LookShare),
  pullets: list(LookShare),
  diesInEgg: Share, // share of all embryos
  /** Traits of form that vary by themselves, with their shares among the chicks of a sex. */
  traits: list(
    z.strictObject({
      sex: z.enum(['M', 'F']),
      trait: z.string(),
      values: list(z.strictObject({ value: z.string(), share: Share })),
    }),
  ).optional(),
  /** Recessive genes that chicks carry unseen: share of each sex with one hidden copy. */
  carried: list(z.strictObject({ allele: z.string(), name: z.string(), cockerels: Share, pullets: Share })).optional(),
  /** Linked traits that the chicks show: most have both or neither, or else most have one of the two. */
  together: list(z.strictObject({ one: z.string(), other: z.string(), both: z.boolean() })).optional(),
  leftOut: Share.optional(), // share of chicks too various to list
  /** Absent or true: the looks hold. False: the parents' colours are not told, and only form and sexing stand. */
  colourKnown: z.boolean().optional(),
  sexing: Sexing,
  hen: Hen.nullable(),
})
export type Case = z.infer<typeof Case>

/** A rule of looks in one sentence. */
export const RuleTold = z.strictObject({ says: z.string(), certainty: z.enum(['sure', 'usual', 'doubtful']) })
export type RuleTold = z.infer<typeof RuleTold>

export const Crossed = z.strictObject({
  sire: BirdSeen,
  dam: BirdSeen,
  cases: list(Case),
  rules: list(RuleTold).optional(), // where why was asked: what makes the likeliest chicks look as they do, in order
})
export type Crossed = z.infer<typeof Crossed>

export const CrossAnswer = z.strictObject({ kind: z.literal('cross'), ...Common, crosses: list(Crossed) })
export const PartnersAnswer = z.strictObject({
  kind: z.literal('partners'),
  ...Common,
  goal: list(z.string()),
  for: list(BirdSeen),
  best: list(
    z.strictObject({
      bird: BirdSeen,
      part: z.enum(['sire', 'dam']),
      with: BirdSeen, // the keeper's bird it goes with
      why: z.string(),
      sexing: Sexing.optional(),
      hen: Hen.optional(),
      condition: z.string().optional(),
    }),
  ),
  avoid: list(z.strictObject({ bird: BirdSeen, why: z.string() })),
})
export const CarrierAnswer = z.strictObject({
  kind: z.literal('carrier'),
  ...Common,
  bird: BirdSeen,
  allele: z.string(),
  trait: z.string(), // plain name of what it shows
  possible: z.boolean(), // false: this bird cannot carry it unseen (a hen at a Z locus, a dominant)
  why: z.string(),
  before: Share.nullable(),
  now: Share.nullable(),
  nowFraction: z.string().nullable(), // exact, e.g. '1/129', only where the rational run made it
  moved: list(z.strictObject({ reading: z.string(), factor: z.number().nullable() })), // how many times likelier a carrier gives this reading than a clear bird; null: a clear bird never does
  moreChicks: list(
    z.strictObject({
      mating: z.string(),
      for95: z.number().nullable(), // power: all of so many more clear, and a carrier would have shown himself 95 times in 100; null: never
      for99: z.number().nullable(),
      to5: z.number().nullable().optional(), // posterior: so many more clear ones bring the chance down to 5 in 100
      to1: z.number().nullable().optional(),
      clear: Share.optional(), // chance that one chick of a carrier, so mated, is clear of it
    }),
  ),
  oneContraryChick: z.string(),
  conflict: list(z.strictObject({ bird: z.string(), reading: z.string() })), // readings that cannot all be true
  rivals: list(z.strictObject({ sire: z.string(), odds: Share, why: z.string() })), // why: does he carry it, by all else that was told
  sensitivity: z.string().nullable(),
})
export const ParentsAnswer = z.strictObject({
  kind: z.literal('parents'),
  ...Common,
  candidates: list(z.strictObject({ sire: BirdSeen, dam: BirdSeen, odds: Share, why: z.string() })),
  ruledOut: list(z.strictObject({ bird: BirdSeen, by: z.string() })),
  ruledOutBy: z.string(), // what would rule the likeliest one out
})
export const HatchAnswer = z.strictObject({
  kind: z.literal('hatch'),
  ...Common,
  topic: z.enum(['eggs-to-set', 'pullets-from', 'dates', 'new-cock-wait', 'ratio', 'sex-ratio']),
  pulletsWanted: z.number().nullable(),
  certainty: z.number(),
  eggsToSet: z.number().nullable(),
  eggsToSetOnAverage: z.number().nullable(),
  pulletsExpected: z.number().nullable(),
  cockerelsExpected: z.number().nullable(),
  chance: Share.nullable(), // of at least pulletsWanted from these eggs, or of the ratio asked about
  distribution: list(z.strictObject({ eggs: z.number(), chance: Share })), // chance of enough pullets by eggs set
  given: z.strictObject({
    fertility: Share,
    hatchOfFertile: Share,
    femaleShare: Share,
    survival: Share,
    shipped: z.boolean(),
    sexingAccuracy: Share.nullable(),
    status: z.enum(['read', 'common practice', 'from memory', 'told']),
  }),
  dates: z
    .strictObject({
      set: z.string(),
      candle: z.string(),
      secondCandle: z.string(),
      lockdown: z.string(),
      hatch: z.string(),
      feathered: z.string(),
      pointOfLay: z.string(),
    })
    .nullable(),
  says: list(z.string()), // for the topics that are a rule of the trade
})
export const LinesAnswer = z.strictObject({
  kind: z.literal('lines'),
  ...Common,
  topic: z.enum(['compare', 'feed-cost', 'keep-until', 'cockerel-cost', 'buy-or-hatch', 'needs']),
  goal: list(z.string()),
  options: list(
    z.strictObject({
      name: z.string(),
      bird: BirdSeen,
      eggsThreeYears: Range,
      eggsByYear: list(Range),
      feedKgPerDozen: Range,
      carcassKg: Range,
      broodyDays: Range,
      hardiness: z.string(),
      temper: z.string(),
      keep: z.string(),
      money: z
        .strictObject({
          costPerDozen: z.number(),
          incomeLessFeedByYear: list(z.number()),
          keepUntilYear: z.number().nullable(),
        })
        .optional(),
      why: z.string(),
    }),
  ),
  tradeOff: z.string(),
  says: list(z.string()),
})
export const FactAnswer = z.strictObject({
  kind: z.literal('fact'),
  ...Common,
  about: z.string(),
  says: list(z.string()), // short sentences of fact, each able to stand alone
  certainty: z.enum(['sure', 'usual', 'doubtful']),
  verdict: z.enum(['true', 'false', 'partly', 'not asked']), // for myths
})
export type AskBackAnswer = {
  readonly kind: 'ask-back'
  readonly missing: string
  readonly about?: string | undefined
  readonly options: readonly { readonly label: string; readonly resolves: string }[]
  readonly example?: string | undefined
  readonly provisional?: Answer | undefined
} & z.infer<z.ZodObject<typeof Common>>
export const DeclineAnswer = z.strictObject({ kind: z.literal('decline'), why: z.string(), summary: z.string() })
export const SilentAnswer = z.strictObject({ kind: z.literal('silent') })
export const ErrorAnswer = z.strictObject({ kind: z.literal('error'), message: z.string(), fault: z.string() })

export const AskBackAnswer: z.ZodType<AskBackAnswer> = z.lazy(() =>
  z.strictObject({
    kind: z.literal('ask-back'),
    ...Common,
    missing: z.string(),
    about: z.string().optional(),
    options: list(z.strictObject({ label: z.string(), resolves: z.string() })),
    example: z.string().optional(),
    provisional: Answer.optional(),
  }),
)

export type CrossAnswer = z.infer<typeof CrossAnswer>
export type PartnersAnswer = z.infer<typeof PartnersAnswer>
export type CarrierAnswer = z.infer<typeof CarrierAnswer>
export type ParentsAnswer = z.infer<typeof ParentsAnswer>
export type HatchAnswer = z.infer<typeof HatchAnswer>
export type LinesAnswer = z.infer<typeof LinesAnswer>
export type FactAnswer = z.infer<typeof FactAnswer>
export type DeclineAnswer = z.infer<typeof DeclineAnswer>
export type SilentAnswer = z.infer<typeof SilentAnswer>
export type ErrorAnswer = z.infer<typeof ErrorAnswer>
export type Answer =
  | CrossAnswer
  | PartnersAnswer
  | CarrierAnswer
  | ParentsAnswer
  | HatchAnswer
  | LinesAnswer
  | FactAnswer
  | AskBackAnswer
  | DeclineAnswer
  | SilentAnswer
  | ErrorAnswer
export const Answer: z.ZodType<Answer> = z.lazy(() =>
  z.union([
    CrossAnswer,
    PartnersAnswer,
    CarrierAnswer,
    ParentsAnswer,
    HatchAnswer,
    LinesAnswer,
    FactAnswer,
    AskBackAnswer,
    DeclineAnswer,
    SilentAnswer,
    ErrorAnswer,
  ]),
)
