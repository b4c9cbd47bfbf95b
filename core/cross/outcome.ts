// core/cross/outcome.ts: two parents of settled genotype -> the looks of their cockerels and pullets, with shares.
import { linkageGroups } from '../data/linkage.ts'
import { chickGroups } from '../engine/cross.ts'
import type { Parent } from '../engine/mating.ts'
import { express } from '../looks/express.ts'
import type { Look } from '../looks/look.ts'
import type { Genotype, LinkageGroup, Sex } from '../vocabulary.ts'
import { isColour, isLethal } from './blocks.ts'
import { carriedUnseen, type Carried } from './carried.ts'
import { linkedTogether, type Together } from './together.ts'

export type ChickKind = { readonly share: number; readonly look: Look; readonly genotypes: readonly Genotype[] }
export type TraitShares = {
  readonly trait: string
  readonly values: readonly { readonly value: string; readonly share: number }[]
}
/** `whole`: kinds tell traits of form too; else these stand in `traits` alone. */
export type Brood = {
  readonly kinds: readonly ChickKind[]
  readonly traits: readonly TraitShares[]
  readonly whole: boolean
}
export type Outcome = {
  readonly M: Brood
  readonly F: Brood
  /** Share of all embryos that die of a lethal genotype. */
  readonly dies: number
  readonly carried: readonly Carried[]
  /** Linked traits that most chicks show both or neither of, or one of the two. */
  readonly together: readonly Together[]
  /** Share of chicks left out because their kinds are too many and each too rare. */
  readonly leftOut: number
}

type Weighted = { readonly genotype: Genotype; readonly p: number }
type Block = readonly Weighted[]

/** Most kinds of one sex that are told apart in full; beyond it traits of form are told by themselves. */
const fullKinds = 8
/** Most genotypes of one sex that are looked at; beyond it the rarest are left out and counted. */
const budget = 360

const lociOf = (parent: Parent): readonly string[] =>
  'cross' in parent
    ? [...lociOf(parent.cross.sire), ...lociOf(parent.cross.dam), ...Object.keys(parent.genotype ?? {})]
    : Object.keys(parent.genotype)

/** Only groups with a locus that either parent lists: everything else is wild type in every chick. */
function groupsOf(sire: Parent, dam: Parent): readonly LinkageGroup[] {
  const listed = new Set([...lociOf(sire), ...lociOf(dam)])
  return linkageGroups.filter(({ loci }) => loci.some((locus) => listed.has(locus)))
}

/** Independent blocks multiplied out, likeliest kept when they grow past the budget. */
function product(blocks: readonly Block[]): { readonly rows: Block; readonly lost: number } {
  let rows: Block = [{ genotype: {}, p: 1 }]
  for (const block of blocks) {
    rows = rows.flatMap((row) =>
      block.map(({ genotype, p }) => ({ genotype: { ...row.genotype, ...genotype }, p: row.p * p })),
    )
    if (rows.length > budget) rows = rows.toSorted((a, b) => b.p - a.p).slice(0, budget / 3)
  }
  const kept = rows.reduce((sum, { p }) => sum + p, 0)
  return { rows, lost: 1 - kept }
}

const likeliest = (block: Block): Genotype => block.toSorted((a, b) => b.p - a.p)[0]!.genotype

/** What a keeper sees, as a key: the words of the look and what they leave unsaid. */
const seen = ({ chick, plumage, form, shank, skin }: Look): string =>
  [
    chick.words,
    chick.headSpot,
    chick.headSpotClear,
    chick.ground,
    chick.groundClear,
    chick.wing,
    chick.skin,
    plumage.words,
    plumage.barring,
    shank,
    skin,
    ...Object.values(form),
  ].join('|')

type Expressed = Weighted & { readonly look: Look }
const expressAll = (sex: Sex, rows: Block, rest: Genotype): readonly Expressed[] =>
  rows.map((row) => ({ ...row, look: express(sex, { ...rest, ...row.genotype }) }))

function merge(rows: readonly Expressed[]): readonly ChickKind[] {
  const kinds = new Map<string, { share: number; look: Look; genotypes: Genotype[] }>()
  for (const { look, genotype, p } of rows) {
    const key = seen(look)
    const kind = kinds.get(key)
    if (!kind) kinds.set(key, { share: p, look, genotypes: [genotype] })
    else {
      kind.share += p
      kind.genotypes.push(genotype)
    }
  }
  return [...kinds.values()].toSorted((a, b) => b.share - a.share)
}

const traitReaders: Readonly<Record<string, (look: Look) => string>> = {
  comb: ({ form }) => form.comb,
  crest: ({ form }) => form.crest,
  muffs: ({ form }) => form.muffs,
  feet: ({ form }) => form.feet,
  feather: ({ form }) => form.feather,
  neck: ({ form }) => form.neck,
  toes: ({ form }) => form.toes,
  tail: ({ form }) => form.tail,
  legs: ({ form }) => form.legs,
  tufts: ({ form }) => form.tufts,
  shank: (look) => look.shank,
  skin: (look) => look.skin,
  shellBlue: (look) => look.shellBlue,
}

/** Shares of each trait of form: varied one block at a time on the commonest chick, combs jointly. */
function traitsOf(sex: Sex, colour: Genotype, forms: readonly Block[]): readonly TraitShares[] {
  const shares = new Map<string, Map<string, number>>()
  const base = forms.reduce<Genotype>((all, block) => ({ ...all, ...likeliest(block) }), colour)
  const usual = express(sex, base)
  const add = (rows: readonly Expressed[]): void => {
    for (const [trait, read] of Object.entries(traitReaders)) {
      if (rows.every(({ look }) => read(look) === read(usual))) continue
      const values = new Map<string, number>()
      for (const { look, p } of rows) values.set(read(look), (values.get(read(look)) ?? 0) + p)
      shares.set(trait, values)
    }
  }
  for (const block of joined(forms)) add(expressAll(sex, living(sex, base, block), base))
  return Object.entries(traitReaders).map(([trait, read]) => ({
    trait,
    values: [...(shares.get(trait) ?? [[read(usual), 1] as const])]
      .map(([value, share]) => ({ value, share }))
      .toSorted((a, b) => b.share - a.share),
  }))
}

const combLoci = new Set(['R', 'P', 'D', 'bd'])
const touchesComb = (block: Block): boolean => Object.keys(block[0]!.genotype).some((locus) => combLoci.has(locus))

const touchesLethal = (block: Block): boolean => Object.keys(block[0]!.genotype).some(isLethal)

/** Blocks of form, those that make the comb multiplied into one. */
function joined(forms: readonly Block[]): readonly Block[] {
  const varying = forms.filter((block) => block.length > 1)
  const comb = varying.filter(touchesComb)
  return [...varying.filter((block) => !touchesComb(block)), ...(comb.length > 0 ? [product(comb).rows] : [])]
}

/** Genotypes of a block whose chicks hatch, shares made to sum to 1 again. */
function living(sex: Sex, base: Genotype, block: Block): Block {
  if (!touchesLethal(block)) return block
  const alive = block.filter(({ genotype }) => express(sex, { ...base, ...genotype }).dies !== 'in the egg')
  const total = alive.reduce((sum, { p }) => sum + p, 0)
  return total > 0 ? alive.map(({ genotype, p }) => ({ genotype, p: p / total })) : block
}

function brood(
  sex: Sex,
  blocks: readonly Block[],
): { readonly brood: Brood; readonly dies: number; readonly lost: number } {
  const fixed = blocks
    .filter((block) => block.length === 1)
    .reduce<Genotype>((all, block) => ({ ...all, ...block[0]!.genotype }), {})
  const varying = blocks.filter((block) => block.length > 1)
  const colour = varying.filter((block) => Object.keys(block[0]!.genotype).some(isColour))
  const forms = varying.filter((block) => !colour.includes(block))
  const usual = forms.reduce<Genotype>((all, block) => ({ ...all, ...likeliest(block) }), fixed)
  const size = varying.reduce((n, block) => n * block.length, 1)
  const whole = size <= 256 ? expressAll(sex, product(varying).rows, fixed) : undefined
  const wholeKinds = whole && merge(whole.filter(({ look }) => look.dies !== 'in the egg'))
  const coloured = product(colour)
  const rows = wholeKinds && wholeKinds.length <= fullKinds ? whole : expressAll(sex, coloured.rows, usual)
  const alive = rows.filter(({ look }) => look.dies !== 'in the egg')
  const total = alive.reduce((sum, { p }) => sum + p, 0)
  const kinds = merge(
    alive.map((row) => ({
      ...row,
      genotype: { ...(rows === whole ? fixed : usual), ...row.genotype },
      p: row.p / (total || 1),
    })),
  )
  return {
    brood: { kinds, whole: rows === whole, traits: traitsOf(sex, { ...fixed, ...likeliest(coloured.rows) }, forms) },
    dies: deaths(sex, varying, { ...usual, ...likeliest(coloured.rows) }),
    lost: rows === whole ? 0 : coloured.lost,
  }
}

/** Share of embryos of one sex that die: lethal loci are few and independent, so survival multiplies. */
function deaths(sex: Sex, varying: readonly Block[], base: Genotype): number {
  let lives = 1
  for (const block of varying.filter(touchesLethal)) {
    const lost = block
      .filter(({ genotype }) => express(sex, { ...base, ...genotype }).dies === 'in the egg')
      .reduce((sum, { p }) => sum + p, 0)
    lives *= 1 - lost
  }
  return 1 - lives
}

/** A parent that is cross-bred itself has hatched, so it is of no genotype that dies in the egg. */
const hatches = (genotype: Genotype): number =>
  Object.keys(genotype).some(isLethal) && express('M', genotype).dies === 'in the egg' ? 0 : 1

/** Chicks of a mating whose founders are settled. Pure; meiosis by the engine, looks by the rules. */
export function outcome(sire: Parent, dam: Parent): Outcome {
  const groups = chickGroups({ sire, dam }, groupsOf(sire, dam), hatches)
  const [M, F] = [groups.map((group) => group.M), groups.map((group) => group.F)]
  const [m, f] = [brood('M', M), brood('F', F)]
  const carried = carriedUnseen(M, F)
  const looks = [...m.brood.kinds, ...f.brood.kinds].map(({ look }) => look)
  const together = linkedTogether([M, F], looks)
  return { M: m.brood, F: f.brood, carried, together, dies: (m.dies + f.dies) / 2, leftOut: (m.lost + f.lost) / 2 }
}
