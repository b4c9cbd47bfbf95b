// core/breeds/colours.ts: what each colour variety looks like in cock, hen and day-old chick, as the show books have it.
import * as z from 'zod'
import rows from '../data/colours.json' with { type: 'json' }
import { Chick, Plumage } from '../looks/look.ts'

/** Of each list the bird shows one: breeds of one colour differ in shade. Absent barring and mottling: none. */
const Coat = z.strictObject({
  pattern: z.array(Plumage.shape.pattern).min(1).readonly(),
  black: z.array(Plumage.shape.black).min(1).readonly(),
  red: z.array(Plumage.shape.red).min(1).readonly(),
  barring: Plumage.shape.barring.optional(),
  mottled: z.boolean().optional(),
})
export type Coat = z.infer<typeof Coat>

/** Descriptions are from memory of standards and breed books; none was copied. */
export const Colour = z.strictObject({
  id: z.string(),
  title: z.string(),
  cock: Coat,
  hen: Coat,
  chick: z.strictObject({
    colour: z.array(Chick.shape.colour).min(1).readonly(),
    pattern: z.array(Chick.shape.pattern).min(1).readonly(),
  }),
})
export type Colour = z.infer<typeof Colour>

const colours: readonly Colour[] = z.array(Colour).parse(rows)
const byId: ReadonlyMap<string, Colour> = new Map(colours.map((colour) => [colour.id, colour]))

export const colourIds: readonly string[] = [...byId.keys()]
export const colourNamed = (id: string): Colour | undefined => byId.get(id)
