/** What two logs of one game must agree on: the plays, whoever entered them and however many corrections it took. */
import type { Event, Json } from '../plate.ts';

export interface Entry {
  id: number;
  event: Event;
}

/** An event's kind and what it says. */
export function parts(event: Event): [string, any] {
  if (typeof event === 'string') return [event, {}];
  const [kind, what] = Object.entries(event)[0] ?? ['', {}];
  return [kind, what];
}

/** The entries that count, with corrections applied: undone ones left out, replaced ones as they say now. */
export function counting(log: Entry[]): Event[] {
  const said = new Map<number, Event>();
  const struck = new Set<number>();
  for (const { id, event } of log) {
    const [kind, what] = parts(event);
    if (kind === 'retract') struck.add(what.entry);
    else if (kind === 'reinstate') struck.delete(what.entry);
    else if (kind === 'replace') said.set(what.entry, what.event);
    else if (kind === 'insert') throw new Error('nothing is inserted in this game');
    else said.set(id, event);
  }
  return [...said].filter(([id]) => !struck.has(id)).map(([, event]) => event);
}

/** The players' names by id. */
export function names(log: Entry[]): Map<number, string> {
  const names = new Map<number, string>();
  for (const { event } of log) {
    const [kind, what] = parts(event);
    if (kind === 'player') names.set(what.player.id, what.player.name);
  }
  return names;
}

/** The plays from the call "Play" on, in a form in which two books of one game are equal. */
export function plays(log: Entry[]): Event[] {
  const who = names(log);
  const events = counting(log);
  const plays: Event[] = [];
  for (const event of events.slice(events.indexOf('play_ball'))) {
    const [kind, what] = parts(event);
    // A player who stays in after batting for somebody plays his post by rule: a shift to it says nothing new.
    if (kind === 'player' || (kind === 'change' && what.change.shift?.to.length === 1)) continue;
    const before = plays.at(-1);
    if (kind === 'running' && what.same_play && typeof before === 'object' && before.pitch) {
      before.pitch.action = merged(before.pitch.action, action(what.action));
      continue;
    }
    plays.push(play(kind, what, who));
  }
  return plays;
}

function play(kind: string, what: any, who: Map<number, string>): Event {
  switch (kind) {
    case 'pitch':
      return { pitch: { call: what.call, action: action(what.action) } };
    case 'in_play': {
      // Where exactly a finger came down is not the paper's.
      const { spot: _, ...ball } = what.ball;
      return { in_play: { ball, action: action(what.action) } };
    }
    case 'running':
      return { running: { action: action(what.action) } };
    case 'change':
      return { change: { side: what.side, change: named(what.change, who) } };
    default:
      return Object.keys(what).length > 0 || typeof what === 'string' ? { [kind]: what } : kind;
  }
}

/** Moves by runner, so that the order of mention makes no difference; errors as they are. */
function action(of: any = {}): any {
  const moves = [...(of.moves ?? [])].sort((a, b) => a.from.localeCompare(b.from));
  return { moves, misplays: of.misplays ?? [] };
}

function merged(one: any, other: any): any {
  return action({ moves: [...one.moves, ...other.moves], misplays: [...one.misplays, ...other.misplays] });
}

/** A change with names in place of ids. */
function named(change: Json, who: Map<number, string>): Json {
  return JSON.parse(JSON.stringify(change), (key, value: Json) =>
    ['outgoing', 'incoming', 'player'].includes(key) ? (who.get(value as number) ?? value) : value,
  ) as Json;
}
