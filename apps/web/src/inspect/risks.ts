// Kinds of risks by the group in which they are shown. The compiler holds the list against the engine's own.
import type { SurveyRequest } from '../engine/questions';

export type Risk = NonNullable<SurveyRequest['risks']>[number]['what'];
export const k_risks: { group: 'persons' | 'things' | 'building'; risks: readonly Risk[] }[] = [
  { group: 'persons', risks: ['infant', 'pregnant', 'frail', 'asthma', 'heat_sensitive', 'pets'] },
  { group: 'things', risks: ['oxygen', 'medicines', 'pressurised_cans', 'ammunition', 'needles', 'aquarium'] },
  { group: 'building', risks: ['sprinkler', 'heat_detector', 'smoke_detector', 'fuel_heater', 'loose_wiring', 'asbestos_or_lead', 'mould', 'weak_floor', 'other'] },
];
