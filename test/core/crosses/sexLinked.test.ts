// test/core/crosses/sexLinked.test.ts: published crosses of silver, barring and their linkage on the Z.
import { expect } from 'vitest'
import { linkageGroups } from '../../../core/data/linkage.ts'
import type { Look } from '../../../core/looks/look.ts'
import { bred, chicks, cock, hen, sharesOf } from '../../brood.ts'
import { chiSquare } from '../../chiSquare.ts'
import { published } from '../../published.ts'

const crew = { ref: 'Crew 1933/34, Proc. Royal Society of Edinburgh', status: 'read' } as const
const barredCrosses = { ref: 'Spillman 1908, Goodale 1909, Pearl & Surface 1910, ratios', status: 'read' } as const

const tone = ({ chick }: Look) => chick.ground
published('gold cock x silver hen: silver sons, gold daughters', crew, () => {
  const mating = { sire: cock('e^Wh/e^Wh s+/s+ Co/Co'), dam: hen('e^Wh/e^Wh S/- Co/Co') }
  expect(sharesOf(mating, 'M', tone)).toEqual({ silver: 1 })
  expect(sharesOf(mating, 'F', tone)).toEqual({ gold: 1 })
})

published(
  'silver cock x gold hen: all silver',
  { ref: 'FAO 1977, Better Farming Series 13, par. 34', status: 'read' },
  () => {
    const mating = { sire: cock('e^Wh/e^Wh S/S Co/Co'), dam: hen('e^Wh/e^Wh s+/- Co/Co') }
    expect([sharesOf(mating, 'M', tone), sharesOf(mating, 'F', tone)]).toEqual([{ silver: 1 }, { silver: 1 }])
  },
)

const bars = ({ plumage }: Look) => (plumage.barring === 'none' ? 'black' : 'barred')
const spot = ({ chick }: Look) => chick.headSpot
const black = () => cock('E/E b+/b+')
const barredHen = () => hen('E/E B/-')

published('black cock x barred hen: barred sons with a head spot, black daughters without', barredCrosses, () => {
  const mating = { sire: black(), dam: barredHen() }
  expect([sharesOf(mating, 'M', bars), sharesOf(mating, 'F', bars)]).toEqual([{ barred: 1 }, { black: 1 }])
  expect([sharesOf(mating, 'M', spot), sharesOf(mating, 'F', spot)]).toEqual([{ small: 1 }, { none: 1 }])
})

published('and its F2: 1 barred : 1 black in both sexes', barredCrosses, () => {
  const both = () => bred(black(), barredHen())
  const mating = { sire: both(), dam: both() }
  expect(sharesOf(mating, 'M', bars)).toEqual({ barred: 1 / 2, black: 1 / 2 })
  expect(sharesOf(mating, 'F', bars)).toEqual({ barred: 1 / 2, black: 1 / 2 })
})

const barredCock = () => cock('E/E B/B')
published('barred cock x black hen: all barred', barredCrosses, () => {
  const mating = { sire: barredCock(), dam: hen('E/E') }
  expect([sharesOf(mating, 'M', bars), sharesOf(mating, 'F', bars)]).toEqual([{ barred: 1 }, { barred: 1 }])
})

published('and its F2: all cocks barred, hens 1:1', barredCrosses, () => {
  const both = () => bred(barredCock(), hen('E/E'))
  const mating = { sire: both(), dam: both() }
  expect(sharesOf(mating, 'M', bars)).toEqual({ barred: 1 })
  expect(sharesOf(mating, 'F', bars)).toEqual({ barred: 1 / 2, black: 1 / 2 })
})

/** Share of daughters that parted from both strands of a cock with the dominant alleles together. */
function recombinants(sire: string, dominant: readonly [string, string], loci: readonly [string, string]): number {
  const parent = { ...cock(sire), phase: 'coupling' as const }
  const daughters = chicks({ sire: parent, dam: hen('E/E') }, 'F')
  const parted = daughters.filter(
    ({ genotype }) => (genotype[loci[0]]?.[0] === dominant[0]) !== (genotype[loci[1]]?.[0] === dominant[1]),
  )
  return parted.reduce((sum, { p }) => sum + p, 0)
}

published(
  'S and K part in 2.4 of 100 gametes of the cock (4 of 169)',
  { ref: 'Bitgood 1999, Poultry Science 78:1100', status: 'read' },
  () => {
    const r = recombinants('S/s+ K/k+', ['S', 'K'], ['S', 'K'])
    expect(r).toBeCloseTo(0.024, 2)
    const { value, limit } = chiSquare({ parted: 4, together: 165 }, { parted: r, together: 1 - r })
    expect(value).toBeLessThan(limit)
  },
)

published(
  'a hen passes her Z whole: no recombination in hens',
  { ref: 'Goodale 1917, as reported in Genetics 6:417-432, 1921', status: 'read' },
  () => {
    const sons = chicks({ sire: cock('s+/s+ k+/k+'), dam: hen('S/- K/-') }, 'M')
    expect(sons.map(({ genotype, p }) => [genotype['S'], genotype['K'], p])).toEqual([[['S', 's+'], ['K', 'k+'], 1]])
  },
)

// 22.9 and 36.9 of 100 in younger cocks of the same work are not the default: silver and barring lie at the two ends of the Z.
published(
  'B and S in third-year cocks, 47.6 of 100, standard error 3.6: free assortment',
  { ref: 'Haldane & Crew 1925, Nature 115:641', status: 'read' },
  () => {
    const r = recombinants('S/s+ B/b+', ['S', 'B'], ['S', 'B'])
    expect(r).toBeCloseTo(0.5, 12)
    expect(Math.abs(r - 0.476)).toBeLessThan(2.576 * 0.036)
  },
)

const between = (one: string, other: string): number => {
  const { loci, r } = linkageGroups.find((group) => group.loci.includes(one) && group.loci.includes(other))!
  return r.slice(loci.indexOf(one), loci.indexOf(other)).reduce((all, next) => all + next - 2 * all * next, 0)
}
const warrenHutt = { ref: 'Warren & Hutt 1936, American Naturalist 70', status: 'read' } as const
published(
  'crest and dominant white part in 12.5 of 100 (1984 gametes), white and frizzle in 17.1 (1105)',
  warrenHutt,
  () => {
    expect(between('Cr', 'I')).toBe(0.125)
    expect(between('I', 'F')).toBe(0.171)
  },
)

published(
  'melanotic and pattern part in 12.2 of 100, standard error 2.1',
  { ref: 'Campo & Alvarez 1991, Poultry Science 70:1-5', status: 'read' },
  () => {
    expect(Math.abs(between('Ml', 'Pg') - 0.122)).toBeLessThan(0.021)
  },
)
