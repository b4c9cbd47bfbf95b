// grammar/token.ts: a word of the message with its meaning: the typed token that the grammar reads.
import type { Aspect, Goal } from '../core/question.ts'
import type { Colour } from './words/colours.ts'
import type { SaidLine } from './words/lines.ts'

/** What a phrase of the lexicon stands for. */
export type Meaning =
  | { readonly type: 'breed'; readonly names: readonly string[] } // catalogue names, likeliest first
  | { readonly type: 'family'; readonly family: string } // a breed without its colour
  | { readonly type: 'colour'; readonly colour: Colour }
  | { readonly type: 'line'; readonly line: SaidLine }
  | { readonly type: 'cock' | 'hen'; readonly many: boolean; readonly parent: boolean }
  | { readonly type: 'kin'; readonly kin: Kin }
  | { readonly type: 'trait'; readonly trait: string } // id of words/traits.ts
  | { readonly type: 'over'; readonly weak: boolean }
  | { readonly type: 'goal'; readonly goal: Goal }
  | { readonly type: 'aspect'; readonly aspect: Aspect }
  | { readonly type: 'generation'; readonly generation: 1 | 2 }
  | { readonly type: Plain }

export type Kin = 'daughter' | 'son' | 'sibling' | 'grandchild' | 'grandfather' | 'grandmother'

export type Plain =
  | 'under'
  | 'plus'
  | 'and'
  | 'or'
  | 'slash'
  | 'comma'
  | 'open'
  | 'close'
  | 'is'
  | 'not'
  | 'of'
  | 'forWhom'
  | 'outOf'
  | 'by'
  | 'between'
  | 'cross'
  | 'half'
  | 'chick'
  | 'sexlink'
  | 'my'
  | 'his'
  | 'her'
  | 'their'
  | 'which'
  | 'want'
  | 'carries'
  | 'split'
  | 'pure'
  | 'single'
  | 'swap'
  | 'same'
  | 'about'
  | 'instead'
  | 'together'
  | 'name'
  | 'filler'
  | 'unknown'

export type Spot = {
  readonly said: string // as written
  readonly word: string // folded; after correction
  readonly at: number // UTF-16 units into the message
  readonly end: number
  /** A word that is not known was left out just before it. */
  readonly gap: boolean
}

export type Token = Spot &
  (
    | Meaning
    | { readonly type: 'gene' }
    | { readonly type: 'number'; readonly value: number; readonly percent: boolean }
    | { readonly type: 'money'; readonly value: number; readonly currency: string }
    | { readonly type: 'stop'; readonly asks: boolean }
  )

/** A word that was read as another: said when it matters. */
export type Correction = { readonly said: string; readonly taken: string; readonly rival?: string }
