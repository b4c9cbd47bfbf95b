// core/breeds/read.ts: rows of a breed file -> checked birds, or every fault with its path.
import * as z from 'zod'
import type { Result } from '../vocabulary.ts'
import { Breed } from './record.ts'

/** `where` is the file and the place in it, e.g. 'reds.json[0] Rhode Island Red: genes.S.allele'. */
export type RowFault = { readonly where: string; readonly why: string }

const nameOf = (row: unknown): string =>
  typeof row === 'object' && row !== null && 'name' in row && typeof row.name === 'string' ? ` ${row.name}` : ''

function rowFaults(file: string, rows: readonly unknown[], issue: z.core.$ZodIssue): RowFault {
  const [at, ...rest] = issue.path
  const row = typeof at === 'number' ? `[${at}]${nameOf(rows[at])}` : ''
  return { where: `${file}${row}${rest.length > 0 ? `: ${rest.join('.')}` : ''}`, why: issue.message }
}

/** @fault every row that does not fit, by path; never only the first. */
export function readBreeds(file: string, rows: unknown): Result<readonly Breed[], readonly RowFault[]> {
  const read = z.array(Breed).readonly().safeParse(rows)
  if (read.success) return { ok: true, value: read.data }
  const given: readonly unknown[] = Array.isArray(rows) ? rows : []
  return { ok: false, fault: read.error.issues.map((issue) => rowFaults(file, given, issue)) }
}

/** What one file cannot see: names that two birds claim, parents that are not in the catalogue. */
export function faultsBetween(breeds: readonly Breed[]): readonly RowFault[] {
  const owner = new Map<string, string>()
  const names = new Set(breeds.map((breed) => breed.name))
  const faults: RowFault[] = []
  for (const breed of breeds) {
    for (const word of [breed.name, ...breed.alsoCalled, ...breed.misspelt]) {
      const before = owner.get(plain(word))
      if (before !== undefined && before !== breed.name)
        faults.push({
          where: breed.name,
          why: `“${word}” already means ${before}: name it once, or list it in core/data/names.json`,
        })
      owner.set(plain(word), breed.name)
    }
    for (const { sire, dam } of breed.madeFrom ?? [])
      for (const parent of [sire, dam])
        if (!names.has(parent))
          faults.push({ where: breed.name, why: `madeFrom names ${parent}, which is not in the catalogue` })
  }
  return faults
}

/** How names are compared: lower case, no accents, no hyphens or dots, single spaces. */
export const plain = (words: string): string =>
  words
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[-.,'’()]/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim()
