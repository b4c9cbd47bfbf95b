// core/data/hen/shell.ts: shell colour: how brown adds up in crosses and where one word ends and the next begins. Data only.
import type { Citation } from '../../vocabulary.ts'

const judged: Citation = { ref: 'judgement of the project from keepers’ reports of crosses', status: 'from memory' }

/** Scale of brown: 0 white, 3 tinted, 5 brown, 7 dark, 9 very dark. Mostly additive. */
export const brown = {
  /** Taken from the score, times the share of loci crossed with a white- or blue-egged line. */
  lossWhenCrossedToWhite: 0.25,
  whiteBelow: 0.75, // a line under this score counts as white-egged
  /** What is left of the brown where a hen's Z comes from a Leghorn-type white line. Reported, not proven. */
  leftByPaleZ: 0.45,
  spread: 0.6, // standard deviation between hens of one line or first cross, of middling score or browner
  genes: 6, // how many genes of like effect the difference of two lines is spread over: few make an F2 vary widely
  sources: [
    { ref: 'Guo et al. 2020: shell lightness heritable 0.65, dominance 0.23', status: 'read' },
    { ref: 'keepers: paler eggs from a Leghorn sire than from a Leghorn dam', status: 'common practice' },
    judged,
  ],
} as const satisfies Record<string, number | readonly Citation[]>

export type Band = { readonly upTo: number; readonly colour: string }

/** Colour word by brown score on a white shell; the last band has no upper end. */
export const onWhite: readonly Band[] = [
  { upTo: 0.6, colour: 'white' },
  { upTo: 1.8, colour: 'cream' },
  { upTo: 3.5, colour: 'tinted' },
  { upTo: 4.5, colour: 'light brown' },
  { upTo: 6.7, colour: 'brown' },
  { upTo: 8, colour: 'dark brown' },
  { upTo: Infinity, colour: 'very dark brown' },
]

/** The same on a blue shell: the brown lies over it. */
export const onBlue: readonly Band[] = [
  { upTo: 0.8, colour: 'blue' },
  { upTo: 1.5, colour: 'blue-green' },
  { upTo: 3.5, colour: 'green' },
  { upTo: Infinity, colour: 'olive' },
]

/** Shares smaller than this join the band next to them: nobody promises one egg in twenty. */
export const leastShare = 0.08
