// core/cross/blocks.ts: which loci a chick's colour hangs on jointly; all others are traits of form, each by itself.

/** Loci read together: colour of down and plumage, and what is read beside it for sexing. */
const colourLoci = new Set('E Co Db Ml Pg Cha Mh Di cb ig S B I c Bl lav choc mo pk rs K Li ko Hf'.split(' '))

/** Loci with a genotype that dies in the egg (creeper, ear tufts). */
const lethalLoci = new Set(['Cp', 'Et'])

export const isColour = (locus: string): boolean => colourLoci.has(locus)
export const isLethal = (locus: string): boolean => lethalLoci.has(locus)
