// bot/store/steps.ts: the tables, as the steps that lead from one version of the file to the next. Only ever added to.

/** Step n leads from version n to version n + 1. Times are milliseconds since 1970. */
export const steps: readonly string[] = [
  `CREATE TABLE kept(name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;

   -- Messages taken from the network, written in the same commit as the sync token that covers them.
   -- raw: as received, still encrypted where it came so; emptied once handled. The row stays, so that no message is
   -- handled twice. Order within a room: batch (one sync), then place (negative: fetched to fill the gap before it).
   CREATE TABLE inbox(
     event TEXT PRIMARY KEY, room TEXT NOT NULL, batch INTEGER NOT NULL, place INTEGER NOT NULL,
     state TEXT NOT NULL CHECK(state IN ('new', 'locked', 'done')), raw TEXT NOT NULL, taken INTEGER NOT NULL
   ) STRICT, WITHOUT ROWID;
   CREATE INDEX inbox_new ON inbox(room, batch, place) WHERE state = 'new';
   CREATE INDEX inbox_locked ON inbox(batch, place) WHERE state = 'locked';
   CREATE INDEX inbox_taken ON inbox(taken);

   -- Stretches of a room's history that a sync left out: its messages wait until the stretch is read.
   CREATE TABLE gaps(room TEXT NOT NULL, batch INTEGER NOT NULL, newest TEXT NOT NULL, oldest TEXT,
     PRIMARY KEY(room, batch)) STRICT, WITHOUT ROWID;

   -- What the bot has sent, by transaction id. question: the message answered.
   CREATE TABLE sent(
     key TEXT PRIMARY KEY, event TEXT NOT NULL, room TEXT NOT NULL, question TEXT, thread TEXT, person TEXT,
     at INTEGER NOT NULL
   ) STRICT, WITHOUT ROWID;
   CREATE INDEX sent_question ON sent(question) WHERE question IS NOT NULL;
   CREATE INDEX sent_event ON sent(event);
   CREATE INDEX sent_thread ON sent(thread) WHERE thread IS NOT NULL;

   -- The conversation with one person in one thread; what is in it is bot/memory.ts's.
   CREATE TABLE memories(key TEXT PRIMARY KEY, room TEXT NOT NULL, person TEXT NOT NULL, memory TEXT NOT NULL,
     at INTEGER NOT NULL) STRICT, WITHOUT ROWID;

   -- Rooms the bot is in. inviter: told when the bot may not speak. mute, unread: when it was last said that it cannot.
   -- was: the rooms that moved into this one, the latest first, with spaces between.
   CREATE TABLE rooms(room TEXT PRIMARY KEY, inviter TEXT, greeted INTEGER NOT NULL DEFAULT 0,
     mute INTEGER, unread INTEGER, was TEXT) STRICT, WITHOUT ROWID;

   -- The state of each room as the network last told it, without messages.
   CREATE TABLE synced(room TEXT PRIMARY KEY, how TEXT NOT NULL, data TEXT NOT NULL) STRICT, WITHOUT ROWID`,
]
