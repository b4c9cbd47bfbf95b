// test/core/crosses/skin.test.ts: dark skin with the inhibitor on the Z, both ways round, as published.
import { expect } from 'vitest'
import type { Look } from '../../../core/looks/look.ts'
import { bred, cock, hen, sharesOf } from '../../brood.ts'
import { published } from '../../published.ts'

const punnett = { ref: 'Punnett 1911, Mendelism, 3rd ed., ratios only', status: 'read' } as const
const deep = ({ chick }: Look) => (chick.skin === 'dark' ? 'deep' : 'nearly clear')
const silkyCock = () => cock('Fm/Fm id+/id+')
const silkyHen = () => hen('Fm/Fm id+/-')
const leghornCock = () => cock('Id/Id')
const leghornHen = () => hen('Id/-')

published('Leghorn cock x Silky hen: both sexes nearly clear', punnett, () => {
  const mating = { sire: leghornCock(), dam: silkyHen() }
  expect([sharesOf(mating, 'M', deep), sharesOf(mating, 'F', deep)]).toEqual([
    { 'nearly clear': 1 },
    { 'nearly clear': 1 },
  ])
})

published('Silky cock x Leghorn hen: sons nearly clear, daughters deep', punnett, () => {
  const mating = { sire: silkyCock(), dam: leghornHen() }
  expect([sharesOf(mating, 'M', deep), sharesOf(mating, 'F', deep)]).toEqual([{ 'nearly clear': 1 }, { deep: 1 }])
})

for (const [way, sire] of [
  ['Silky cock', () => bred(silkyCock(), leghornHen())],
  ['Silky hen', () => bred(leghornCock(), silkyHen())],
] as const)
  published(`F1 cock out of a ${way} x Leghorn hen: one chick in eight deep, all of them hens`, punnett, () => {
    const mating = { sire: sire(), dam: leghornHen() }
    expect(sharesOf(mating, 'M', deep)).toEqual({ 'nearly clear': 1 })
    expect(sharesOf(mating, 'F', deep)['deep']).toBeCloseTo(1 / 4, 12)
  })

published('F1 hen x Leghorn cock: none deep', punnett, () => {
  const mating = { sire: leghornCock(), dam: bred(silkyCock(), leghornHen()) }
  expect([sharesOf(mating, 'M', deep), sharesOf(mating, 'F', deep)]).toEqual([
    { 'nearly clear': 1 },
    { 'nearly clear': 1 },
  ])
})
