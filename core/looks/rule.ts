// core/looks/rule.ts: the form of a rule of looks, and the draft of a bird that the rules fill in one after the other.
import type { LocusId } from '../data/loci.ts'
import type { Citation } from '../vocabulary.ts'
import type { Bird } from './carries.ts'
import type { Chick, Form, Look, Plumage } from './look.ts'

/** What the E series makes of a bird before any other gene acts; `/e` = over any of e+, e^b, e^Wh and their kin. */
type Ground = 'E' | 'E/E^R' | 'E/e' | 'E^R' | 'E^R/e' | 'e^Wh' | 'e^Wh/e' | 'e+' | 'e+/e^b' | 'e^b' | 'spotted'

/** A bird half drawn. Rules read and replace its fields; the workings at the end do not leave `express`. */
export type Draft = Omit<Chick, 'words' | 'colour' | 'pattern' | 'ground' | 'groundClear' | 'skin'> &
  Omit<Plumage, 'words'> &
  Form &
  Pick<Look, 'shank' | 'skin' | 'shellBlue' | 'dies'> & {
    readonly down: Chick['colour']
    readonly downPattern: Chick['pattern']
    readonly tone: Chick['ground']
    readonly toneClear: Chick['groundClear']
    readonly chickSkin: Chick['skin']
    readonly base: Ground
    /** How much red or silver shows through a black bird. */
    readonly leak: 'none' | 'trace' | 'some'
    /** How far Co and Db push black out of the body. */
    readonly restrained: 'no' | 'partly' | 'fully'
    /** Melanotic or charcoal: hackle and back darker than the pattern alone makes them. */
    readonly darkened: boolean
    /** Mahogany showing through silver: on the cock's shoulder. */
    readonly redShoulder: boolean
    /** Bars paler than barring alone makes them. */
    readonly paleBars: boolean
  }

export type Patch = Partial<Draft>

export type Rule = {
  readonly id: string
  /** The loci that `when` and `look` read, and no others. */
  readonly loci: readonly LocusId[]
  /** The rule in one plain sentence, for an answer to "why?". */
  readonly says: string
  readonly when: (bird: Bird, draft: Draft) => boolean
  readonly look: Patch | ((bird: Bird, draft: Draft) => Patch)
  /** sure: the books agree; usual: as a rule; doubtful: rests on memory or the books disagree. */
  readonly certainty: 'sure' | 'usual' | 'doubtful'
  /** What a keeper should be told about it, a short phrase. */
  readonly hedge?: string
  readonly source: Citation
}

/** A wild-type bird before its first rule. */
export const blank: Draft = {
  down: 'brown',
  downPattern: 'striped',
  belly: 'same',
  extraWhite: false,
  headSpot: 'none',
  headSpotClear: 'no',
  tone: 'hidden',
  toneClear: 'no',
  wing: 'fast',
  chickSkin: 'light',
  pattern: 'black-breasted',
  black: 'black',
  red: 'none',
  barring: 'none',
  mottled: false,
  white: false,
  comb: 'single',
  crest: 'none',
  muffs: 'none',
  feet: 'clean',
  feather: 'normal',
  neck: 'feathered',
  toes: 'four',
  tail: 'tailed',
  legs: 'normal',
  tufts: 'none',
  henFeathered: false,
  shank: 'white',
  skin: 'white',
  shellBlue: 'no',
  dies: 'no',
  base: 'e+',
  leak: 'none',
  restrained: 'no',
  darkened: false,
  redShoulder: false,
  paleBars: false,
}
