// core/data/lineKinds.ts: the lines keepers speak of, the words for each, and which line of a breed stands nearest. Data only.

/** `words` as keepers write them, lower case; `nearest` in the order in which a breed's own lines are tried. */
export const lineKinds = {
  production: {
    words: ['production', 'prod', 'commercial', 'laying line', 'layer line', 'laying strain', 'layer strain', 'high production', 'egg line', 'battery'],
    nearest: ['production', 'hatchery', 'utility'],
  },
  hatchery: {
    words: ['hatchery', 'feed store', 'feedstore', 'feed-store', 'farm store', 'store bought', 'store-bought', 'chain store', 'mail order', 'hatchery stock'],
    nearest: ['hatchery', 'production', 'utility'],
  },
  utility: {
    words: ['utility', 'working', 'working line', 'dual purpose', 'dual-purpose', 'farm line', 'farm strain'],
    nearest: ['utility', 'hatchery', 'production', 'heritage'],
  },
  heritage: {
    words: ['heritage', 'old line', 'old-line', 'old type', 'old-type', 'old fashioned', 'standard bred', 'standard-bred', 'traditional', 'foundation'],
    nearest: ['heritage', 'exhibition'],
  },
  exhibition: {
    words: ['exhibition', 'show', 'show line', 'show quality', 'show-quality', 'show type', 'show stock', 'sop', 'breeder quality', 'breeder', 'breeder line', 'fancy', 'standard of perfection'],
    nearest: ['exhibition', 'heritage'],
  },
} as const satisfies Readonly<Record<string, { readonly words: readonly string[]; readonly nearest: readonly string[] }>>

export type LineKind = keyof typeof lineKinds
