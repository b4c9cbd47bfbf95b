// core/answers/partners/quick.ts: a first look at a pair by its genes alone: whether it may serve a goal at all, before it is played through.
import { breedNamed, genesOf, lineOf, type Breed } from '../../breeds.ts'
import type { BirdRef, Goal } from '../../question.ts'

/** Belief, 0 to 1, that a copy of this allele is what the bird has at its locus; told genes stand over the catalogue. */
export type Carries = (locus: string, allele: string) => number

const mean = (parts: readonly number[]): number => parts.reduce((sum, part) => sum + part, 0) / parts.length

function ofBreed(breed: Breed, line: string | undefined, locus: string, allele: string): number {
  const gene = genesOf(breed, line)[locus]
  if (!gene) return allele.endsWith('+') ? 1 : 0
  if (gene.kind === 'fixed') return gene.allele === allele ? 1 : 0
  if (gene.kind === 'segregates') return gene.freq[allele] ?? 0
  return mean(gene.alleles.map((one) => (one === allele ? 1 : 0)))
}

/** A cross-bred bird stands at the mean of its parents: good enough for a first look. */
export function carriesOf(bird: BirdRef): Carries {
  const breed = bird.breed === undefined ? undefined : breedNamed(bird.breed)
  const parents = bird.cross && [carriesOf(bird.cross.sire), carriesOf(bird.cross.dam)]
  return (locus, allele) => {
    const told = bird.genotype?.[locus]
    if (told) return mean(told.map((one) => (one === allele ? 1 : 0)))
    if (parents) return mean(parents.map((parent) => parent(locus, allele)))
    if (breed) return ofBreed(breed, bird.line, locus, allele)
    return allele.endsWith('+') ? 1 : 0
  }
}

/** How far the marks lie on the hen while the cock lacks them; 0 = no colour, wing or skin sign can be hoped for. */
export function quickSexing(cock: Carries, hen: Carries): number {
  const dark = Math.min(1, cock('E', 'E') + hen('E', 'E'))
  const white = Math.max(cock('I', 'I'), hen('I', 'I') * 0.9)
  const silver = cock('S', 's+') * hen('S', 'S') * (1 - dark)
  const barred = cock('B', 'b+') * hen('B', 'B') * (0.4 + 0.6 * Math.max(dark, cock('E', 'E^R')))
  const chocolate = cock('choc', 'choc') * hen('choc', 'Choc+') * dark * (0.7 + 0.3 * hen('E', 'E')) // pure black shows it cleanest
  const slow = cock('K', 'k+') * hen('K', 'K') * 0.3
  const skin = cock('Fm', 'Fm') * cock('Id', 'id+') * hen('Id', 'Id') * 0.8
  return Math.max(Math.max(silver, barred, chocolate) * (1 - white), slow, skin)
}

const brownOf = (bird: BirdRef): number => {
  if (bird.cross) return mean([brownOf(bird.cross.sire), brownOf(bird.cross.dam)])
  const breed = bird.breed === undefined ? undefined : breedNamed(bird.breed)
  if (!breed) return 3
  return lineOf(breed, bird.line)?.brownScore ?? breed.shell.brownScore
}

const near = (x: number, wanted: number, reach: number): number => Math.max(0, 1 - Math.abs(x - wanted) / reach)

type Quick = (own: BirdRef, other: BirdRef, breed: Breed) => number
const blue = (own: BirdRef, other: BirdRef): number => Math.max(carriesOf(own)('O', 'O'), carriesOf(other)('O', 'O'))
const shell = (own: BirdRef, other: BirdRef): number => mean([brownOf(own), brownOf(other)])
const level = { low: 0.1, medium: 0.5, high: 1 } as const
const calm = /calm|friendly|placid/
const wild = /flighty|wild|aggressive|fights|nervous/

/** Whether the other bird is worth playing through for a goal, 0 to 1. */
export const quickGoal: Readonly<Record<Exclude<Goal, 'sexable'>, Quick>> = {
  eggs: (_own, other, breed) => (lineOf(breed, other.line)?.eggsFirstYear ?? breed.eggsFirstYear).likely / 300,
  'blue-eggs': (own, other) => blue(own, other) * (0.1 + 0.9 * near(shell(own, other), 0.3, 1.5)),
  'green-eggs': (own, other) => blue(own, other) * near(shell(own, other), 2.4, 2.5),
  'olive-eggs': (own, other) => blue(own, other) * near(Math.min(shell(own, other), 6), 6, 3.5), // never too dark
  'brown-eggs': (own, other) => (1 - blue(own, other)) * near(shell(own, other), 5, 3),
  'dark-eggs': (own, other) =>
    (1 - blue(own, other)) * Math.max(near(shell(own, other), 8.5, 3.5), shell(own, other) / 40), // the darkest there is, where none is dark
  'white-eggs': (own, other) => (1 - blue(own, other)) * near(shell(own, other), 0, 2),
  size: (_own, _other, breed) => Math.min(1, breed.weights.henKg / 4.5),
  meat: (_own, _other, breed) => Math.min(1, breed.weights.cockKg / 5),
  calm: (_own, _other, breed) => (wild.test(breed.temper) ? 0.1 : calm.test(breed.temper) ? 1 : 0.5),
  family: (_own, _other, breed) => (wild.test(breed.temper) ? 0.1 : calm.test(breed.temper) ? 1 : 0.5),
  barred: (_own, other) => carriesOf(other)('B', 'B'),
  laced: (_own, other) => carriesOf(other)('Ml', 'Ml') * carriesOf(other)('Pg', 'Pg'),
  show: (own, other, breed) =>
    breed.name === own.breed ? 1 : breed.family === breedNamed(own.breed ?? '')?.family && other ? 0.6 : 0,
  cold: (_own, _other, breed) => level[breed.hardiness.cold],
  heat: (_own, _other, breed) => level[breed.hardiness.heat],
  broody: (_own, _other, breed) => breed.broody.rate,
}
