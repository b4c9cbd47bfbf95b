// core/data/parting.ts: how often two linked genes part, as it may be said to a keeper: figures where a work was read, hedges elsewhere. Data only.
import type { Status } from '../vocabulary.ts'

/** By the ids of two neighbours in map order. `words` follow "they". */
export const parting: Readonly<Record<string, { readonly words: string; readonly status: Status }>> = {
  'K S': { words: 'part in 2 or 3 of 100 chicks', status: 'read' }, // 2.4 of 169, Bitgood 1999; 2.8, Nature 1964
  'S dw': { words: 'part in a few of 100 chicks, perhaps 7', status: 'from memory' },
  'dw choc': { words: 'part often; how often was never measured', status: 'from memory' },
  'B Id': { words: 'usually go together; how often they part is disputed', status: 'from memory' },
  'O P': { words: 'part in perhaps 3 to 5 of 100 chicks', status: 'from memory' },
  'P Cha': { words: 'hardly ever part: none of 35 chicks did', status: 'read' }, // Carefoot 2001
  'Ml Pg': { words: 'part in about 12 of 100 chicks', status: 'read' }, // 12.2, standard error 2.1, Campo & Alvarez 1991
  'Cr I': { words: 'part in about 12 or 13 of 100 chicks', status: 'read' }, // 12.5 of 1984, Warren & Hutt 1936
  'I F': { words: 'part in about 17 of 100 chicks', status: 'read' }, // 17.1 of 1105, Warren & Hutt 1936
  'Na h': { words: 'part nearly as often as by chance', status: 'read' }, // about 43, OMIA:000913-9031
  'Cr F': { words: 'part in 25 to 30 of 100 chicks', status: 'read' }, // 29.4, Warren & Hutt 1936; 25.3 over I without interference
  'R Cp': { words: 'hardly ever part; older works say 8 of 100', status: 'read' }, // 8, Serebrovsky & Petrov 1928; far less later
}
