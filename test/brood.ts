// test/brood.ts: the chicks of a told mating as shares of what they look like, for tests of published crosses.
import { linkageGroups } from '../core/data/linkage.ts'
import { chickGroups } from '../core/engine/cross.ts'
import type { Mating, Parent } from '../core/engine/mating.ts'
import { readGenotype } from '../core/genotype.ts'
import { express } from '../core/looks/express.ts'
import type { Look } from '../core/looks/look.ts'
import type { Genotype, Sex } from '../core/vocabulary.ts'

/** A bird of told genotype: `bird('M', 's+/s+ b+/b+')`; loci that are not told are wild type. */
function bird(sex: Sex, genotype: string): Parent {
  const told = readGenotype(genotype, sex)
  if (!told.ok) throw new Error(`${genotype}: ${JSON.stringify(told.fault)}`)
  return { genotype: told.value }
}
export const cock = (genotype: string): Parent => bird('M', genotype)
export const hen = (genotype: string): Parent => bird('F', genotype)
export const bred = (sire: Parent, dam: Parent): Parent => ({ cross: { sire, dam } })

type Weighted = { readonly genotype: Genotype; readonly p: number }

/** Every chick of one sex with its chance. */
export function chicks(mating: Mating, sex: Sex): readonly Weighted[] {
  const blocks = chickGroups(mating, linkageGroups).map((group) => group[sex])
  return blocks.reduce<readonly Weighted[]>(
    (rows, block) =>
      rows.flatMap((row) =>
        block.map(({ genotype, p }) => ({ genotype: { ...row.genotype, ...genotype }, p: row.p * p })),
      ),
    [{ genotype: {}, p: 1 }],
  )
}

/** Shares of what the chicks of one sex are called. */
export function sharesOf(mating: Mating, sex: Sex, call: (look: Look) => string): Record<string, number> {
  const shares: Record<string, number> = {}
  for (const { genotype, p } of chicks(mating, sex)) {
    const name = call(express(sex, genotype))
    shares[name] = (shares[name] ?? 0) + p
  }
  return shares
}

/** Shares over both sexes, half and half. */
export function brood(mating: Mating, call: (look: Look) => string): Record<string, number> {
  const shares: Record<string, number> = {}
  for (const sex of ['M', 'F'] as const)
    for (const [name, p] of Object.entries(sharesOf(mating, sex, call))) shares[name] = (shares[name] ?? 0) + p / 2
  return shares
}

/** Black, white or neither, as the old books count plumage; ticked and splashed whites are white. */
export function plumageClass({ plumage }: Look): 'white' | 'black' | 'coloured' {
  if (plumage.white) return 'white'
  return plumage.pattern === 'solid' || plumage.pattern === 'solid with leakage' ? 'black' : 'coloured'
}
