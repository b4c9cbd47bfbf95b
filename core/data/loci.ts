// core/data/loci.ts: every locus that shows in a bird a keeper meets: its chromosome, its alleles, who says so. Data only.
import type { Locus } from '../vocabulary.ts'
import { literature as by } from './literature.ts'

/**
 * In the order in which genotypes are written. Alleles stand dominant first, for what a keeper sees; where a pair blends,
 * the rules of looks say how. `at` is a chromosome and a place on it, as far as known.
 */
export const loci = {
  S: {
    name: 'silver and gold', on: 'Z', alleles: ['S', 's+', 's^al'], wild: 's+',
    at: { chromosome: 'Z', place: '10.88-10.90 Mb, GRCg7b', status: 'read' },
    sources: [by.gunnarsson2007, by.nature1964, by.crew1933],
  },
  K: {
    name: 'slow feathering', on: 'Z', alleles: ['K^n', 'K^s', 'K', 'k+'], wild: 'k+',
    at: { chromosome: 'Z', place: 'about 10 Mb, beside S', status: 'from memory' },
    sources: [by.omiaK, by.bitgood1999, by.pennState],
  },
  B: {
    name: 'sex-linked barring', on: 'Z', alleles: ['B^0', 'B^Sd', 'B', 'b+'], wild: 'b+',
    at: { chromosome: 'Z', place: 'about 78.8 Mb, galGal4', status: 'from memory' },
    sources: [by.hellstrom2010, by.omiaB],
  },
  Id: {
    name: 'inhibitor of dermal black', on: 'Z', alleles: ['Id', 'id+'], wild: 'id+',
    at: { chromosome: 'Z', place: 'about 79 Mb, galGal4; the gene is disputed', status: 'read' },
    sources: [by.omiaId, by.gushi2017, by.shank2026],
  },
  choc: {
    name: 'sex-linked chocolate', on: 'Z', alleles: ['Choc+', 'choc'], wild: 'Choc+',
    at: { chromosome: 'Z', place: '31.23-31.24 Mb, GRCg7b', status: 'read' },
    sources: [by.omiaChoc],
  },
  dw: {
    name: 'sex-linked dwarf', on: 'Z', alleles: ['Dw+', 'dw^M', 'dw^B', 'dw'], wild: 'Dw+',
    at: { chromosome: 'Z', place: 'about 13 Mb', status: 'from memory' },
    sources: [by.omiaDw, by.nature1964],
  },
  y: {
    does: 'White skin of the Z, y, keeps yellow out of shanks and beak even where the bird would have yellow skin.',
    name: 'sex-linked white skin', on: 'Z', alleles: ['Y+', 'y'], wild: 'Y+',
    at: { chromosome: 'Z', place: 'the far end, probably', status: 'read' },
    sources: [by.mcgibbon1981, by.bitgood1986],
  },
  E: {
    name: 'extension of black', on: 'A', alleles: ['E', 'E^R', 'e^Wh', 'e+', 'e^b', 'e^s', 'e^bc', 'e^y'], wild: 'e+',
    at: { chromosome: '11', place: 'about 18.8 Mb, GRCg6a', status: 'from memory' },
    sources: [by.smyth1990, by.campo1993, by.davenport1909, by.iowa105],
  },
  Co: {
    name: 'columbian restriction', on: 'A', alleles: ['Co', 'co+'], wild: 'co+',
    sources: [by.smyth1990, by.campo1993, by.campo1991],
  },
  Db: {
    name: 'dark brown', on: 'A', alleles: ['Db', 'db+'], wild: 'db+',
    at: { chromosome: '1', place: '51.04 Mb, GRCg6a', status: 'read' },
    sources: [by.gunnarsson2011, by.carefootCampine],
  },
  Ml: {
    does: 'Melanotic, Ml, spreads black over hackle, saddle and back and sharpens lacing; with the pattern gene it makes lacing and spangling.',
    name: 'melanotic', on: 'A', alleles: ['Ml', 'ml+'], wild: 'ml+',
    at: { chromosome: '1', place: '92.60-92.62 Mb, GRCg7b', status: 'read' },
    sources: [by.omiaMl, by.campo1991],
  },
  Pg: {
    name: 'pattern', on: 'A', alleles: ['Pg', 'pg+'], wild: 'pg+',
    at: { chromosome: '1', place: 'by classical linkage with Ml', status: 'read' },
    sources: [by.carefootPencilling, by.campo1991, by.fayoumi],
  },
  Cha: {
    does: 'Charcoal, Cha, blackens the hackle, as in the Indian Game; whether it is dominant is disputed.',
    name: 'charcoal, the black hackle', on: 'A', alleles: ['Cha', 'cha+'], wild: 'cha+',
    at: { chromosome: '1', place: 'at P', status: 'read' },
    sources: [by.carefoot2001],
  },
  Mh: {
    name: 'mahogany', on: 'A', alleles: ['Mh', 'mh+'], wild: 'mh+',
    sources: [by.smyth1990],
  },
  Di: {
    does: 'Dilute, Di, thins red to buff and buff to straw; black it leaves alone.',
    name: 'dilute', on: 'A', alleles: ['Di', 'di+'], wild: 'di+',
    sources: [by.smyth1990],
  },
  cb: {
    does: 'Champagne blond, cb, washes gold and red out to straw; little has been proved of it.',
    name: 'champagne blond', on: 'A', alleles: ['Cb+', 'cb'], wild: 'Cb+',
    sources: [by.smyth1990],
  },
  ig: {
    name: 'inhibitor of gold, cream', on: 'A', alleles: ['Ig+', 'ig'], wild: 'Ig+',
    sources: [by.smyth1990],
  },
  Bl: {
    name: 'blue', on: 'A', alleles: ['Bl', 'bl+'], wild: 'bl+',
    sources: [by.omiaBl, by.punnett1911, by.campo1991],
  },
  lav: {
    name: 'lavender', on: 'A', alleles: ['Lav+', 'lav'], wild: 'Lav+',
    at: { chromosome: '7', place: 'about 4.7 Mb', status: 'from memory' },
    sources: [by.vaez2008],
  },
  I: {
    name: 'dominant white and its kin', on: 'A', alleles: ['I', 'I^S', 'I^D', 'i+'], wild: 'i+',
    at: { chromosome: '33', status: 'read' },
    sources: [by.kerje2004, by.warrenHutt1936, by.davenport1909],
  },
  c: {
    name: 'recessive white', on: 'A', alleles: ['C+', 'c', 'c^re', 'c^a'], wild: 'C+',
    at: { chromosome: '1', place: 'about 187 Mb', status: 'from memory' },
    sources: [by.davenport1909, by.punnett1911, by.iowa105],
  },
  mo: {
    name: 'mottling', on: 'A', alleles: ['Mo+', 'mo', 'mo^w'], wild: 'Mo+',
    at: { chromosome: '4', place: '11.16-11.17 Mb', status: 'read' },
    sources: [by.kinoshita2014],
  },
  Fm: {
    name: 'dark skin', on: 'A', alleles: ['Fm', 'fm+'], wild: 'fm+',
    at: { chromosome: '20', place: '10.2-11.7 Mb', status: 'read' },
    sources: [by.omiaFm, by.punnett1911],
  },
  W: {
    name: 'white and yellow skin', on: 'A', alleles: ['W+', 'w'], wild: 'W+',
    at: { chromosome: '24', place: '6.17-6.19 Mb, GRCg7b', status: 'read' },
    sources: [by.eriksson2008],
  },
  R: {
    name: 'rose comb', on: 'A', alleles: ['R', 'r+'], wild: 'r+',
    at: { chromosome: '7', place: 'inversion 16.50-23.88 Mb', status: 'read' },
    sources: [by.imsland2012, by.punnett1911],
  },
  P: {
    name: 'pea comb', on: 'A', alleles: ['P', 'p+'], wild: 'p+',
    at: { chromosome: '1', place: 'about 67.8 Mb', status: 'from memory' },
    sources: [by.wright2009, by.punnett1911],
  },
  D: {
    does: 'Duplex, D, splits the comb: two horns in a V as in the La Flèche, or a cup as in the Buttercup.',
    name: 'duplex comb: V and cup', on: 'A', alleles: ['D^C', 'D^V', 'd+'], wild: 'd+',
    at: { chromosome: '2', place: '38.55-38.89 Mb', status: 'read' },
    sources: [by.omiaD, by.davenport1909],
  },
  bd: {
    does: 'Combless, bd, leaves the bird without a comb, or with two small knobs, as in the Breda.',
    name: 'combless', on: 'A', alleles: ['Bd+', 'bd'], wild: 'Bd+',
    sources: [by.punnett1911, by.general],
  },
  Cr: {
    name: 'crest', on: 'A', alleles: ['Cr', 'cr+'], wild: 'cr+',
    at: { chromosome: '33', status: 'read' },
    sources: [by.warrenHutt1936, by.li2021crest, by.davenport1909],
  },
  Mb: {
    name: 'muffs and beard', on: 'A', alleles: ['Mb', 'mb+'], wild: 'mb+',
    at: { chromosome: '27', status: 'from memory' },
    sources: [by.general],
  },
  Et: {
    does: 'Ear tufts, Et, are feathers on a small fleshy lobe by the ear; one copy shows in most birds, two kill the chick in the shell.',
    name: 'ear tufts', on: 'A', alleles: ['Et', 'et+'], wild: 'et+',
    at: { chromosome: '15', place: 'about 1.3 Mb', status: 'from memory' },
    sources: [by.somes1981],
  },
  Na: {
    name: 'naked neck', on: 'A', alleles: ['Na', 'na+'], wild: 'na+',
    at: { chromosome: '3', place: 'about 104 Mb', status: 'from memory' },
    sources: [by.omiaNa],
  },
  F: {
    name: 'frizzle', on: 'A', alleles: ['F', 'f+'], wild: 'f+',
    at: { chromosome: '33', status: 'read' },
    sources: [by.hutt1930, by.ng2012, by.warrenHutt1936],
  },
  mf: {
    does: 'The frizzle modifier, mf, in two copies weakens frizzling, so that a frizzle with one copy may look nearly plain.',
    name: 'modifier of frizzle', on: 'A', alleles: ['Mf+', 'mf'], wild: 'Mf+',
    sources: [by.hutt1949],
  },
  h: {
    name: 'silkie feather', on: 'A', alleles: ['H+', 'h'], wild: 'H+',
    at: { chromosome: '3', place: 'about 67.8 Mb', status: 'from memory' },
    sources: [by.omiaNa],
  },
  Hf: {
    name: 'hen feathering', on: 'A', alleles: ['Hf', 'hf+'], wild: 'hf+',
    at: { chromosome: '10', status: 'from memory' },
    sources: [by.general],
  },
  Pti: {
    name: 'feathered shanks', on: 'A', alleles: ['Pti-1^B', 'Pti-1^L', 'pti-1+'], wild: 'pti-1+',
    at: { chromosome: '13', place: 'about 15.6 Mb', status: 'read' },
    sources: [by.omiaPti, by.davenport1909],
  },
  Pti2: {
    does: 'This second factor adds to the feathering of the shanks that Pti-1 gives.',
    name: 'feathered shanks, the second factor', on: 'A', alleles: ['Pti-2', 'pti-2+'], wild: 'pti-2+',
    at: { chromosome: '15', status: 'read' },
    sources: [by.omiaPti],
  },
  v: {
    does: 'Vulture hocks, v, are stiff feathers at the hock pointing back and down.',
    name: 'vulture hocks', on: 'A', alleles: ['V+', 'v'], wild: 'V+',
    sources: [by.general],
  },
  Po: {
    name: 'fifth toe', on: 'A', alleles: ['Po^d', 'Po', 'po+'], wild: 'po+',
    at: { chromosome: '2', place: 'about 4.8 Mb', status: 'read' },
    sources: [by.omiaPo, by.davenport1909],
  },
  Rp: {
    name: 'rumpless', on: 'A', alleles: ['Rp', 'rp+'], wild: 'rp+',
    at: { chromosome: '2', status: 'read' },
    sources: [by.somes1981, by.davenport1909],
  },
  Cp: {
    name: 'creeper, short legs', on: 'A', alleles: ['Cp', 'cp+'], wild: 'cp+',
    at: { chromosome: '7', place: '21.799-21.811 Mb', status: 'read' },
    sources: [by.omiaCp, by.kinoshita2020],
  },
  adw: {
    does: 'The autosomal dwarf, adw, in two copies makes a bird some third smaller; it is another gene than the dwarf on the Z.',
    name: 'autosomal dwarf', on: 'A', alleles: ['Adw+', 'adw'], wild: 'Adw+',
    at: { chromosome: '1', place: 'about 53.6 Mb', status: 'from memory' },
    sources: [by.omiaDw, by.general],
  },
  O: {
    name: 'blue shell', on: 'A', alleles: ['O', 'o+'], wild: 'o+',
    at: { chromosome: '1', place: 'about 67.3 Mb, galGal3', status: 'from memory' },
    sources: [by.wang2013, by.punnett1933],
  },
} as const satisfies Record<string, Locus>

export type LocusId = keyof typeof loci

export const isLocus = (id: string): id is LocusId => Object.hasOwn(loci, id)
export const locusIds: readonly LocusId[] = Object.keys(loci).filter(isLocus)

/** Every allele symbol of the catalogue; no two loci share one. */
export type AlleleId = (typeof loci)[LocusId]['alleles'][number]
