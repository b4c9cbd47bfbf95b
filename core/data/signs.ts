// core/data/signs.ts: each sign by which chicks are sexed: when to read it, how often it is misread, who says so. Data only.
import type { Status } from '../vocabulary.ts'

export type SignId = 'down colour' | 'head spot' | 'wing feathers' | 'skin colour' | 'stripes' | 'marks'
type Misread = { readonly rate: number; readonly basis: string; readonly status: Status }
type SignFacts = {
  readonly window: string
  /** Chance that a careful keeper reads the sign wrong, by how clearly it shows. */
  readonly misread: Readonly<Record<string, Misread>>
  /** What would spoil it, each a clause of its own. */
  readonly breaks: readonly string[]
}

export const signs = {
  'down colour': {
    window: 'at hatch, once dry',
    misread: {
      good: { rate: 0.03, basis: 'gold against silver down, both parents pure: easily sorted, with exceptions (Groen Kennisnet 2024, no rate given); the rate is a judgement', status: 'from memory' },
      fair: { rate: 0.12, basis: 'gold against silver on laced, pencilled or striped down: a breeder’s judgement', status: 'from memory' },
      poor: { rate: 0.3, basis: 'gold against silver on dark down: a breeder’s judgement', status: 'from memory' },
      colour: { rate: 0.03, basis: 'two plainly different down colours: a breeder’s judgement', status: 'from memory' },
      shade: { rate: 0.15, basis: 'two near shades of down: a breeder’s judgement', status: 'from memory' },
    },
    breaks: ['a cock that hides one copy of silver (half his daughters then come pale)', 'a hen that is not truly silver (her sons come coloured)', 'black or dominant white hidden in either parent'],
  },
  'head spot': {
    window: 'at hatch, once dry',
    misread: {
      clear: { rate: 0.05, basis: 'unbarred cock on barred hens, dark down: small spots are missed and some unbarred black chicks have white on the head; a breeder’s judgement', status: 'from memory' },
      fair: { rate: 0.12, basis: 'spot on blue down, less plain than on black: a breeder’s judgement', status: 'from memory' },
      faint: { rate: 0.2, basis: 'spot on brown, buff, striped or very pale down: a breeder’s judgement', status: 'from memory' },
      size: { rate: 0.2, basis: 'size and outline of the spot in pure Barred Plymouth Rocks, about 80 in 100 (University of Kentucky, Sexing day-old chicks on small and backyard flocks)', status: 'read' },
    },
    breaks: ['a cock with barring of his own (every chick then has a spot)', 'white, splash or very pale down, which hides the spot'],
  },
  'wing feathers': {
    window: 'within the first day, two at most',
    misread: {
      sure: { rate: 0.1, basis: 'keepers report 80 to 90 in 100 on their own stock; strains bred for it do better', status: 'common practice' },
    },
    breaks: ['a cock that carries slow feathering', 'hens that feather fast', 'reading after the second day, when the cockerels’ primaries have caught up'],
  },
  'skin colour': {
    window: 'within the first days',
    misread: {
      sure: { rate: 0.1, basis: 'dark against light face and skin in Silkie crosses: a breeder’s judgement', status: 'from memory' },
    },
    breaks: ['a hen without the gene for clear shanks', 'black plumage, which darkens the shanks of both sexes: read the skin, not the shank'],
  },
  stripes: {
    window: 'at hatch, once dry',
    misread: {
      sure: { rate: 0.05, basis: 'pale blurred against dark crisp stripes in the autosexing breeds: a breeder’s judgement; 99 to 100 in 100 published for Polbar, another breed', status: 'from memory' },
      marks: { rate: 0.12, basis: 'pale washed-out against marbled or smudged down in the autosexing breeds: a breeder’s judgement', status: 'from memory' },
      blend: { rate: 0.3, basis: 'stripes of one and of two doses of barring in crosses: a breeder’s judgement', status: 'from memory' },
    },
    breaks: ['strains in which the cockerels’ down is not clearly paler', 'an outcross: with one dose of barring a cockerel looks like a pullet'],
  },
  marks: { window: 'at hatch, once dry', misread: {}, breaks: ['strains whose chicks carry few marks, as exhibition ones are said to'] },
} as const satisfies Record<SignId, SignFacts>

/**
 * Pure breeds whose sexes differ in how often the down carries marks: chance of a mark by sex.
 * Such a sign is never better than partly, since it is a difference of frequency.
 */
export const markedBreeds: readonly {
  readonly breed: string
  readonly female: number
  readonly male: number
  readonly mark: string
  readonly basis: string
}[] = [
  {
    // 47.5 % of chicks marked; 84.9 % of the marked were female, 77.8 % of the unmarked male: the two below follow with equal sexes.
    breed: 'Rhode Island Red',
    female: (0.475 * 0.849) / (0.475 * 0.849 + 0.525 * 0.222),
    male: (0.475 * 0.151) / (0.475 * 0.151 + 0.525 * 0.778),
    mark: 'a dark spot on the head or a stripe down the back',
    basis: 'Byerly & Quinn 1937, Poultry Science 16:422-425, 1,102 chicks',
  },
  {
    breed: 'Dandarawi',
    female: 0.9242,
    male: 1 - 0.8902,
    mark: 'a black spot on the head or broken stripes on the back',
    basis: 'British Poultry Science 42(3), 2001, 5,822 chicks of three lines',
  },
  {
    breed: 'Brown Leghorn',
    female: 0.8,
    male: 0.2,
    mark: 'a broad, sharp dark stripe down the back',
    basis: 'Ontario Agricultural College, tests of 1931-33, Poultry Science abstract: about 80 in 100',
  },
]

/**
 * Pure stock on the wild-type ground, for which nobody counted: pullets tend to the sharper stripe, as measured in one breed.
 * The chances are that breed's; they say that the sign is worth a look, and are shown of no other.
 */
export const stripedDown = {
  female: 0.8,
  male: 0.2,
  mark: 'a broad, sharp dark stripe down the back',
  basis: 'stripes of pure wild-type chicks, counted in Brown Leghorns alone: a breeder’s judgement of any other breed',
  breaks: ['crossed stock', 'an eye not yet used to the breed'],
} as const
