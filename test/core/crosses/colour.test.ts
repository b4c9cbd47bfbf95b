// test/core/crosses/colour.test.ts: published crosses of black, buff, blue and chocolate, with their counts.
import { expect } from 'vitest'
import type { Look } from '../../../core/looks/look.ts'
import { bred, brood, cock, hen, plumageClass, sharesOf } from '../../brood.ts'
import { chiSquare } from '../../chiSquare.ts'
import { published } from '../../published.ts'

const davenport = (where: string) =>
  ({ ref: `Davenport 1909, Inheritance of Characteristics in Domestic Fowl, ${where}`, status: 'read' }) as const

const blackCochin = 'E/E'
const buffCochin = 'e^Wh/e^Wh Co/Co Di/Di'

published(
  'Black x Buff Cochin: F1 black, hens with colour in the hackle, cocks black and red',
  davenport('Cochin crosses'),
  () => {
    const f1 = { sire: cock(blackCochin), dam: hen(buffCochin) }
    expect(sharesOf(f1, 'F', ({ plumage }) => plumage.pattern)).toEqual({ 'solid with leakage': 1 })
    expect(sharesOf(f1, 'M', ({ plumage }) => plumage.words)).toEqual({
      'black with buff in the hackle, shoulder and saddle': 1,
    })
  },
)

// Of the 25 that were not black, 8 were white: a strain fact that the told genotypes do not hold.
published(
  'Black x Buff Cochin F2, 61 black with or without red : 25 not black: 3:1',
  davenport('Cochin crosses'),
  () => {
    const both = () => bred(cock(blackCochin), hen(buffCochin))
    const shares = brood({ sire: both(), dam: both() }, (look) => (plumageClass(look) === 'black' ? 'black' : 'other'))
    const { value, limit } = chiSquare({ black: 61, other: 25 }, shares)
    expect(value).toBeLessThan(limit)
  },
)

/** Buff with or without black, as the book counts it: a body cleared of black. */
function buffOrGame(look: Look): string {
  if (look.plumage.white) return 'white'
  return ['black-breasted', 'stippled', 'wheaten', 'partridge'].includes(look.plumage.pattern) ? 'game' : 'buff'
}
published('Silkie x Buff Cochin F2, 34 buff : 17 white : 7 game', davenport('Table 62'), () => {
  const both = () => bred(cock('c/c'), hen(buffCochin))
  const shares = brood({ sire: both(), dam: both() }, buffOrGame)
  expect(shares['white']).toBeCloseTo(1 / 4, 12)
  const { value, limit } = chiSquare({ buff: 34, white: 17, game: 7 }, shares)
  expect(value).toBeLessThan(limit)
})

published(
  'splash x black: all blue; blue x blue: 1 black : 2 blue : 1 splash',
  { ref: 'Punnett 1911, Mendelism, 3rd ed.', status: 'read' },
  () => {
    const tint = ({ plumage }: Look) => plumage.black
    expect(brood({ sire: cock('E/E Bl/Bl'), dam: hen('E/E') }, tint)).toEqual({ blue: 1 })
    const shares = brood({ sire: cock('E/E Bl/bl+'), dam: hen('E/E Bl/bl+') }, tint)
    expect(shares).toEqual({ black: 1 / 4, blue: 1 / 2, splash: 1 / 4 })
  },
)

published(
  'blue x blue, 41 black : 78 blue : 39 splash: 1:2:1',
  { ref: 'Bateson & Punnett, counts as remembered', status: 'from memory' },
  () => {
    const shares = brood({ sire: cock('E/E Bl/bl+'), dam: hen('E/E Bl/bl+') }, ({ plumage }) => plumage.black)
    const { value, limit } = chiSquare({ black: 41, blue: 78, splash: 39 }, shares)
    expect(value).toBeLessThan(limit)
  },
)

published(
  'black cock split for chocolate: hens 41 chocolate : 36 black: 1:1',
  { ref: 'Li et al. 2019, as quoted by OMIA:001259-9031', status: 'read' },
  () => {
    const shares = sharesOf(
      { sire: cock('E/E Choc+/choc'), dam: hen('E/E choc/-') },
      'F',
      ({ plumage }) => plumage.black,
    )
    expect(shares).toEqual({ chocolate: 1 / 2, black: 1 / 2 })
    const { value, limit } = chiSquare({ chocolate: 41, black: 36 }, shares)
    expect(value).toBeLessThan(limit)
  },
)

published(
  'campine x spangled hamburgh: only melanotic parts in the F2, 3 not spangled : 1 spangled',
  { ref: 'Carefoot, Br. Poultry Sci., Silver Campine autosomal barring', status: 'read' },
  () => {
    const both = () => bred(cock('E^R/E^R Db/Db Pg/Pg'), hen('E^R/E^R Db/Db Pg/Pg Ml/Ml'))
    const shares = sharesOf({ sire: both(), dam: both() }, 'F', ({ plumage }) => plumage.pattern)
    expect(shares['spangled']).toBeCloseTo(1 / 4, 12)
    expect(shares['autosomal barred']).toBeCloseTo(3 / 4, 12)
  },
)

published(
  'dark brown with one dose of black beside it: half the chicks are black',
  davenport('Table 68, percentages only: 51 in 100'),
  () => {
    const shares = brood({ sire: cock('e^b/e^b Pg/Pg S/S'), dam: hen('E/e+') }, plumageClass)
    expect(shares['black']).toBeCloseTo(1 / 2, 12)
  },
)
