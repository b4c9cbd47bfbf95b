// test/core/crosses/white.test.ts: published crosses of white birds: recessive, dominant, and the two together.
import { expect } from 'vitest'
import { bred, brood, cock, hen, plumageClass, sharesOf } from '../../brood.ts'
import { chiSquare } from '../../chiSquare.ts'
import { published } from '../../published.ts'

const davenport = (where: string) =>
  ({ ref: `Davenport 1909, Inheritance of Characteristics in Domestic Fowl, ${where}`, status: 'read' }) as const
const punnett = { ref: 'Punnett 1911, Mendelism, 3rd ed.', status: 'read' } as const

const silkie = 'c/c h/h Fm/Fm'
const minorca = 'E/E'
const f2 = { sire: bred(cock(silkie), hen(minorca)), dam: bred(cock(silkie), hen(minorca)) }

published('Silkie x Minorca: all F1 chicks are black, F1 cocks gain red', davenport('Table 58'), () => {
  const mating = { sire: cock(silkie), dam: hen(minorca) }
  expect(brood(mating, ({ chick }) => chick.colour)).toEqual({ black: 1 })
  expect(sharesOf(mating, 'M', ({ plumage }) => plumage.words)).toEqual({
    'black with gold in the hackle, shoulder and saddle': 1,
  })
})

const silkieF2: readonly (readonly [string, Record<string, number>])[] = [
  ['all pens, 210 black : 57 game : 95 white', { black: 210, coloured: 57, white: 95 }],
  ['first pen, 119 : 31 : 55', { black: 119, coloured: 31, white: 55 }],
  ['second pen, 91 : 26 : 40', { black: 91, coloured: 26, white: 40 }],
]
for (const [pen, counts] of silkieF2)
  published(`Silkie x Minorca F2, ${pen}: 9:3:4`, davenport('Table 58'), () => {
    const shares = brood(f2, plumageClass)
    expect(shares).toEqual({ black: 9 / 16, coloured: 3 / 16, white: 4 / 16 })
    const { value, limit } = chiSquare(counts, shares)
    expect(value).toBeLessThan(limit)
  })

published('F2 blacks split for black alone, inter se, 64 black : 23 game: 3:1', davenport('Silkie crosses'), () => {
  const shares = brood({ sire: cock('E/e+'), dam: hen('E/e+') }, plumageClass)
  const { value, limit } = chiSquare({ black: 64, coloured: 23 }, shares)
  expect(value).toBeLessThan(limit)
})

published('F1 cock on F2 black hens like himself, 40 : 14 : 13: 9:3:4', davenport('Silkie crosses'), () => {
  const shares = brood({ sire: cock('E/e+ C+/c'), dam: hen('E/e+ C+/c') }, plumageClass)
  const { value, limit } = chiSquare({ black: 40, coloured: 14, white: 13 }, shares)
  expect(value).toBeLessThan(limit)
})

published('F1 cock on three black hens free of white, 30 : 14: 3:1', davenport('Silkie crosses'), () => {
  const shares = brood({ sire: cock('E/e+ C+/c'), dam: hen('E/e+') }, plumageClass)
  const { value, limit } = chiSquare({ black: 30, coloured: 14 }, shares)
  expect(value).toBeLessThan(limit)
})

published('recessive white x recessive white out of that F2: all white', davenport('Silkie crosses'), () => {
  const shares = brood({ sire: cock('E/e+ c/c'), dam: hen('E/e+ c/c') }, plumageClass)
  expect(shares).toEqual({ white: 1 })
})

published('Silkie x White Leghorn: F1 white', davenport('Table 60'), () => {
  expect(brood({ sire: cock(silkie), dam: hen('I/I E/E') }, plumageClass)).toEqual({ white: 1 })
})

// The 17 coloured chicks were 16 game and 1 black; on E under the white most should be black. The strain was another.
published('Silkie x White Leghorn F2, 68 white : 17 coloured: 13:3', davenport('Table 60'), () => {
  const both = () => bred(cock('c/c'), hen('I/I E/E'))
  const shares = brood({ sire: both(), dam: both() }, (look) => (look.plumage.white ? 'white' : 'coloured'))
  const { value, limit } = chiSquare({ white: 68, coloured: 17 }, shares)
  expect(value).toBeLessThan(limit)
})

published('White Leghorn x Black Minorca: F1 white with dark flecks', davenport('White Leghorn crosses'), () => {
  const shares = brood({ sire: cock('I/I E/E'), dam: hen(minorca) }, ({ plumage }) => plumage.words)
  expect(shares).toEqual({ 'white with a few dark flecks': 1 })
})

published('White Leghorn x Black Minorca F2, 116 white : 38 black: 3:1', davenport('White Leghorn crosses'), () => {
  const both = () => bred(cock('I/I E/E'), hen(minorca))
  const shares = brood({ sire: both(), dam: both() }, plumageClass)
  const { value, limit } = chiSquare({ white: 116, black: 38 }, shares)
  expect(value).toBeLessThan(limit)
})

published('that F1 x White Leghorn, 41 white: no other', davenport('White Leghorn crosses'), () => {
  const shares = brood({ sire: bred(cock('I/I E/E'), hen(minorca)), dam: hen('I/I E/E') }, plumageClass)
  expect(shares).toEqual({ white: 1 })
})

// Printed as 62 % white, 19.4 % splashed, 18.6 % black of 150. Only some birds with one copy show flecks.
published(
  'flecked hens x their white brothers, 122 white or flecked : 28 black: 3:1',
  davenport('White Leghorn crosses'),
  () => {
    const shares = brood({ sire: cock('I/i+ E/E'), dam: hen('I/i+ E/E') }, plumageClass)
    const { value, limit } = chiSquare({ white: 122, black: 28 }, shares)
    expect(value).toBeLessThan(limit)
  },
)

published('dominant x recessive white: F2 13 white : 3 coloured', punnett, () => {
  const both = () => bred(cock('I/I E/E'), hen('c/c E/E'))
  const shares = brood({ sire: both(), dam: both() }, plumageClass)
  expect(shares).toEqual({ white: 13 / 16, black: 3 / 16 })
})

published('two recessive whites of different origin: F1 coloured, F2 9 coloured : 7 white', punnett, () => {
  const silky = 'c/c E/E'
  const dorking = 'mo^w/mo^w E/E' // the only other recessive white of the catalogue; which one Punnett had is not known
  expect(brood({ sire: cock(silky), dam: hen(dorking) }, plumageClass)).toEqual({ black: 1 })
  const both = () => bred(cock(silky), hen(dorking))
  expect(brood({ sire: both(), dam: both() }, plumageClass)).toEqual({ black: 9 / 16, white: 7 / 16 })
})
