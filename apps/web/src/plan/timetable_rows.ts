// Rows of the timetable's picture: one for each person, each device that works, and as many for drying as dry at once.
import type { VisitAnswer, VisitTask } from '../engine/shapes';
import { words } from '../words/words';

export type BlockKind = 'hands' | 'steam' | 'alone' | 'dry';
export interface Block { task: VisitTask; number: number; kind: BlockKind }
export interface Row { name: string; blocks: Block[] }

const k_devices = [['steamer', 'steamer'], ['vacuum', 'vacuum'], ['dryer', 'dryer'], ['heater', 'heater']] as const;

function kindOf(task: VisitTask): BlockKind {
  if (task.kind === 'dry') return 'dry';
  if (task.people === 0) return 'alone';
  return task.kind.startsWith('steam') ? 'steam' : 'hands';
}

/** Packs blocks into as few rows as do not overlap. */
function packed(blocks: Block[], name: string): Row[] {
  const rows: Row[] = [];
  for (const block of blocks) {
    const free = rows.find((row) => row.blocks.at(-1)!.task.to_minutes <= block.task.from_minutes);
    if (free) free.blocks.push(block);
    else rows.push({ name: rows.length === 0 ? name : `${name} ${rows.length + 1}`, blocks: [block] });
  }
  return rows;
}

export function rowsOf(visit: VisitAnswer): Row[] {
  const blocks = visit.tasks.map((task, i) => ({ task, number: i + 1, kind: kindOf(task) })).filter((block) => block.task.minutes > 0);
  const crew = visit.resources[0]?.capacity ?? 1;
  const rows: Row[] = [];
  for (let person = 1; person <= crew; person++) {
    rows.push({ name: words.visit.rows.person(person), blocks: blocks.filter((block) => block.task.who.includes(person)) });
  }
  for (const [device, word] of k_devices) rows.push(...packed(blocks.filter((block) => block.task.device === device), words.visit.rows[word]));
  rows.push(...packed(blocks.filter((block) => block.kind === 'dry'), words.visit.rows.dry));
  return rows;
}

/** End of everything that is drawn, and marks every half hour. */
export function endOf(visit: VisitAnswer): number {
  return Math.max(30, ...visit.tasks.map((task) => task.to_minutes));
}

export function marksOf(end: number): number[] {
  return Array.from({ length: Math.floor(end / 30) + 1 }, (_, i) => i * 30);
}
