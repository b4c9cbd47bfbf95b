// core/statement/fault.ts: faults of a statement, gathered while it is read.

/** Where in a statement something is wrong, and what. */
export type Fault = { readonly path: string; readonly says: string }

/** Notes a fault; reading goes on with a stand-in, and the first fault is told. */
export type Complain = (path: readonly PropertyKey[], says: string) => void

/** individuals[2].sire */
export const pathOf = (path: readonly PropertyKey[]): string =>
  path.map((step, i) => (typeof step === 'number' ? `[${step}]` : `${i > 0 ? '.' : ''}${String(step)}`)).join('')
