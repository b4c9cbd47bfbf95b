// core/looks/look.ts: what a bird looks like, as plain data: at hatch, grown, and in form. Types and word lists only.
import * as z from 'zod'

/** Colour of the down on the back. The words are plain English, fit to be shown. */
const downColours = [
  'black',
  'blue-grey',
  'smoky white',
  'lavender grey',
  'chocolate',
  'mauve',
  'dun',
  'khaki',
  'white',
  'pale yellow',
  'cream',
  'silver grey',
  'grey-brown',
  'brown',
  'dark brown',
  'golden brown',
  'buff',
  'red-buff',
] as const
const downPatterns = [
  'plain',
  'striped',
  'blurred stripes',
  'broken stripes',
  'faint stripes',
  'marbled',
  'smudged',
] as const
const blackTints = [
  'none',
  'black',
  'blue',
  'splash',
  'lavender',
  'pale lavender',
  'chocolate',
  'mauve',
  'dun',
  'khaki',
  'white',
  'white with dark flecks',
] as const
const redTints = [
  'none',
  'red',
  'mahogany',
  'gold',
  'buff',
  'straw',
  'cream',
  'brassy silver',
  'silver',
  'white',
  'salmon',
] as const
const patterns = [
  'solid',
  'solid with leakage',
  'birchen',
  'black-breasted',
  'wheaten',
  'partridge',
  'pencilled',
  'columbian',
  'black-tailed',
  'self',
  'single laced',
  'double laced',
  'spangled',
  'autosomal barred',
  'smudged columbian',
  'belted',
  'partly laced',
  'stippled',
  'mixed',
  'white',
] as const

export const Chick = z.strictObject({
  colour: z.enum(downColours),
  pattern: z.enum(downPatterns),
  belly: z.enum(['pale', 'same']), // paler belly, throat and wing tips, as on black down
  extraWhite: z.boolean(), // mottling: white on face, breast and wing tips
  headSpot: z.enum(['none', 'small', 'large', 'blurred', 'hidden']), // hidden: barring may be there, nothing shows it
  headSpotClear: z.enum(['clear', 'fair', 'faint', 'no']), // how well a spot would show on this down
  ground: z.enum(['gold', 'silver', 'hidden']), // gold or silver as the down shows it
  groundClear: z.enum(['good', 'fair', 'poor', 'no']), // how well gold and silver can be told on this down
  wing: z.enum(['fast', 'slow']), // primaries longer than coverts, or not, in the first day or two
  skin: z.enum(['light', 'dark', 'tinged']), // face and skin within days of hatch
  words: z.string(), // e.g. 'black with a pale belly'
})
export type Chick = z.infer<typeof Chick>

/** Dark downs have one colour in gold and in silver; what can be told of it shows in the face. */
export const darkDowns: ReadonlySet<Chick['colour']> = new Set<Chick['colour']>([
  'black',
  'dark brown',
  'blue-grey',
  'smoky white',
  'lavender grey',
  'chocolate',
  'mauve',
  'dun',
  'khaki',
])
/** Pale and grey downs that are silver unless a tinge of gold is told. */
export const greyDowns: ReadonlySet<Chick['colour']> = new Set<Chick['colour']>(['cream', 'grey-brown'])

export const Plumage = z.strictObject({
  pattern: z.enum(patterns),
  black: z.enum(blackTints), // what colour the black parts are; none = no such parts
  red: z.enum(redTints), // what colour the red-or-silver parts are
  barring: z.enum(['none', 'single dose', 'double dose']),
  mottled: z.boolean(),
  white: z.boolean(), // white all over (ticks aside)
  words: z.string(), // e.g. 'black with gold in the hackle, barred'
})
export type Plumage = z.infer<typeof Plumage>

export const Form = z.strictObject({
  comb: z.string(), // 'single' | 'rose' | 'pea' | 'walnut' | 'V' | 'cup' | 'none' …
  crest: z.enum(['none', 'small', 'large']),
  muffs: z.enum(['none', 'small', 'full']),
  feet: z.enum(['clean', 'light feathering', 'feathered']),
  feather: z.enum(['normal', 'frizzled', 'over-frizzled', 'silkie']),
  neck: z.enum(['feathered', 'bow-tie', 'naked']),
  toes: z.enum(['four', 'five', 'four or five']),
  tail: z.enum(['tailed', 'rumpless', 'rumpless or tailed']),
  legs: z.enum(['normal', 'short', 'dwarf']),
  tufts: z.enum(['none', 'tufted', 'tufted or clean']),
  henFeathered: z.boolean(),
})
export type Form = z.infer<typeof Form>

export const Look = z.strictObject({
  chick: Chick,
  plumage: Plumage, // of the grown bird of this sex
  form: Form,
  shank: z.string(), // grown: 'yellow', 'white', 'slate', 'willow', 'dark' …
  skin: z.enum(['white', 'yellow', 'dark']),
  shellBlue: z.enum(['no', 'one copy', 'two copies']), // hens lay it; cocks pass it on unseen
  dies: z.enum(['no', 'in the egg', 'some in the egg']), // lethal genotypes
  rules: z.array(z.string()).readonly(), // ids of the rules that made it, in order
  hedges: z.array(z.string()).readonly(), // short phrases on what is doubtful, e.g. 'amount of gold in the hackle varies'
})
export type Look = z.infer<typeof Look>
