// core/breeds/record.ts: the shape of one bird of the catalogue, and what a row must obey. A bad row is told by its path.
import * as z from 'zod'
import { colourIds } from './colours.ts'
import { allelesIn, Genes, Status } from './gene.ts'

const list = <T extends z.ZodType>(item: T) => z.array(item).readonly()
const Share = z.number().min(0).max(1)
const Positive = z.number().gt(0)

/** Low and high bound what a keeper may expect of a flock; likely is the middle of belief. Eggs a year. */
const Eggs = z
  .strictObject({ low: Positive, likely: Positive, high: Positive, status: Status })
  .refine((s) => s.low <= s.likely && s.likely <= s.high, 'want low <= likely <= high')

/** A line of a breed: what differs from the breed as a whole. Absent = as the breed. */
export const Line = z.strictObject({
  id: z.string().regex(/^[a-z-]+$/, 'want a lower-case word'),
  covers: list(z.enum(['production', 'hatchery', 'utility', 'heritage', 'exhibition'])), // other words that mean this line here
  alsoCalled: list(z.string()),
  differs: z.string().optional(), // what sets it apart, one clause
  eggsFirstYear: Eggs.optional(),
  henKg: Positive.optional(),
  cockKg: Positive.optional(),
  eggGrams: Positive.optional(),
  broodyRate: Share.optional(),
  brownScore: z.number().min(0).max(10).optional(),
  status: Status, // of the figures without a status of their own
  genes: Genes.optional(),
})
export type Line = z.infer<typeof Line>

const Source = z.strictObject({ ref: z.string().min(1), status: Status })
const Level = z.enum(['low', 'medium', 'high'])

/** One variety. A colour variety is a record of its own: Light and Speckled Sussex are two birds. */
export const Breed = z
  .strictObject({
    name: z.string().min(1), // canonical; unique in the catalogue
    family: z.string().min(1), // the bare breed name, shared by its varieties
    class: z.string(), // where show books put it
    type: z.enum(['heavy', 'light', 'bantam', 'landrace', 'hybrid', 'described']),
    colour: z
      .string()
      .refine((id) => colourIds.includes(id), 'no such colour in core/data/colours.json')
      .optional(), // absent: many colours, or none described
    alsoCalled: list(z.string()),
    misspelt: list(z.string()),
    shows: list(list(z.string()).refine((any) => any.length > 0, 'want at least one allele')).optional(), // of each inner list the bird shows at least one
    madeFrom: list(z.strictObject({ sire: z.string(), dam: z.string(), weight: Share })).optional(), // a hybrid: its usual parents, weights add to 1
    genes: Genes,
    comb: z.string(),
    shank: z.string(),
    shell: z.strictObject({ colour: z.string(), brownScore: z.number().min(0).max(10), status: Status }), // 0 white, 3 tinted, 5 brown, 7 dark, 9 very dark
    weights: z.strictObject({ cockKg: Positive, henKg: Positive, status: Status }), // of the standard; lines may be lighter
    eggGrams: z.strictObject({ likely: Positive, status: Status }),
    eggsFirstYear: Eggs, // line not told
    broody: z.strictObject({ rate: Share, status: Status }), // share of hens that go broody in a year, if let
    temper: z.string(),
    hardiness: z.strictObject({ cold: Level, heat: Level, status: Status }),
    usualLine: z.string().optional(), // line id that is meant where none is told
    lines: list(Line),
    note: z.string(), // what a keeper should know of it, one or two sentences
    sources: z.strictObject({
      genes: list(Source),
      weights: list(Source),
      eggs: list(Source),
      shell: list(Source),
      behaviour: list(Source),
    }),
  })
  .superRefine((breed, context) => {
    const fault = (path: (string | number)[], message: string): void => {
      context.addIssue({ code: 'custom', path, message })
    }
    const ids = breed.lines.map((line) => line.id)
    ids.forEach((id, at) => {
      if (ids.indexOf(id) !== at) fault(['lines', at, 'id'], `line ${id} stands twice`)
    })
    if (breed.usualLine !== undefined && !ids.includes(breed.usualLine))
      fault(['usualLine'], `no line ${breed.usualLine}; lines: ${ids.join(', ')}`)
    const weights = breed.madeFrom?.reduce((sum, { weight }) => sum + weight, 0) ?? 1
    if (Math.abs(weights - 1) > 1e-9) fault(['madeFrom'], `weights add to ${weights}, want 1`)
    breed.shows?.forEach((any, at) => {
      const carried = new Set(Object.values(breed.genes).flatMap(allelesIn))
      if (!any.some((allele) => carried.has(allele)))
        fault(['shows', at], `none of ${any.join(', ')} is among its genes`)
    })
  })
export type Breed = z.infer<typeof Breed>
