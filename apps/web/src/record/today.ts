/** The day of a moment by the clock of this place, not by UTC. */
export function dayOf(moment: Date): string {
  return [moment.getFullYear(), moment.getMonth() + 1, moment.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

export function today(): string {
  return dayOf(new Date());
}
