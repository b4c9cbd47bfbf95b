// test/runs.ts: how many made-up cases a law is tried on; fewer where every changed line of the engine is to be noticed one by one.

/** @param cases as many as a run of the tests takes; an eighth of them under `npm run mutants` */
export const runs = (cases: number): number => (process.env['MUTANTS'] === undefined ? cases : Math.ceil(cases / 8))
