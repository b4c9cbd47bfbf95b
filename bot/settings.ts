// bot/settings.ts: every setting an operator has: its shape, its default, its name in file and environment.
import * as z from 'zod'

const Words = z.string().trim().min(1)
const Flag = z.union(
  [z.boolean(), z.enum(['true', 'yes', 'false', 'no']).transform((word) => word === 'true' || word === 'yes')],
  'want true or false',
)
const Count = z.coerce.number('want a whole number').int('want a whole number').min(1, 'want 1 or more')
const Port = z.coerce.number('want a port number').int().min(0).max(65535, 'want a port number')
const List = z
  .union([z.string().transform((text) => text.split(',')), z.array(z.string())])
  .transform((items) => items.map((item) => item.trim()).filter((item) => item !== ''))
  .default([])
/** A secret stands in the setting itself or, better, in a file of its own that the setting with `File` names. */
const Secret = Words.optional()

const Matrix = z.strictObject({
  homeserver: z.url({ protocol: /^https?$/u, error: 'want an address such as https://matrix.example.org' }),
  user: Words.regex(/^@[^:]+:.+$/u, 'want a full name such as @hen:example.org'),
  password: Secret,
  passwordFile: Secret,
  accessToken: Secret,
  accessTokenFile: Secret,
  recoveryKey: Secret,
  recoveryKeyFile: Secret,
  /** Shown beside the bot's sessions in other people's clients. */
  deviceName: Words.default('Henwife'),
  /** false: the bot joins and answers in rooms without encryption only. */
  encryption: Flag.default(true),
  /** A message in a room that begins with this word is said to the bot. */
  prefix: Words.regex(/^[^/\s]\S*$/u, 'want one word that does not begin with /').default('!hen'),
  /** Who may invite: people by full name, servers by name, spaces by id; and rooms by id, whoever invites. None = nobody. */
  invitesFromUsers: List,
  invitesFromServers: List,
  /** Members of these may; the bot sees who they are once it has been invited into the space itself, by anybody. */
  invitesFromSpaces: List,
  invitesToRooms: List,
  /** Rooms by id in which plain questions are answered though nobody called the bot. */
  listensIn: List,
  /** One line on coming into a room. */
  greets: Flag.default(true),
  pictures: Flag.default(true),
})

export const Settings = z.strictObject({
  /** Folder of everything that must survive a restart. */
  state: Words.default('state'),
  matrix: Matrix.optional(),
  limits: z
    .strictObject({ answersPerPersonPerMinute: Count.default(6), answersPerRoomPerMinute: Count.default(20) })
    .prefault({}),
  /** How far back the bot reads what was said while it was away. */
  catchUp: z.strictObject({ messagesPerRoom: Count.default(2000), days: Count.default(7) }).prefault({}),
  /** How long it is remembered which reply answers which message, and which messages were handled. */
  keep: z
    .strictObject({
      answersDays: Count.default(7),
      seenDays: Count.min(30, 'want 30 or more: a shorter memory answers old questions again').default(30),
    })
    .prefault({}),
  health: z.strictObject({ host: Words.default('127.0.0.1'), port: Port.default(9464) }).prefault({}),
  log: z.strictObject({ level: z.enum(['debug', 'info', 'warn', 'error']).default('info') }).prefault({}),
})

export type Config = z.infer<typeof Settings>
export type MatrixConfig = NonNullable<Config['matrix']>

export const prefix = 'HENWIFE_'
/** `matrix.accessTokenFile` in the file is HENWIFE_MATRIX_ACCESS_TOKEN_FILE in the environment. */
export const environmentName = (path: readonly string[]): string =>
  prefix + path.map((key) => key.replaceAll(/[A-Z]/gu, (letter) => `_${letter}`).toUpperCase()).join('_')

const inside = (schema: unknown): unknown =>
  schema instanceof z.ZodOptional || schema instanceof z.ZodPrefault ? schema.unwrap() : schema
const pathsOf = (schema: unknown, path: readonly string[] = []): readonly (readonly string[])[] => {
  const inner = inside(schema)
  if (!(inner instanceof z.ZodObject)) return [path]
  return Object.entries(inner.shape).flatMap(([key, below]) => pathsOf(below, [...path, key]))
}

/** Every setting by its place in the file, with its name in the environment. */
export const settings: readonly { readonly path: readonly string[]; readonly variable: string }[] = pathsOf(
  Settings,
).map((path) => ({ path, variable: environmentName(path) }))
