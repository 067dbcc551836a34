// The one word, shape and pattern an edge carries on screen, read from what the engine said. Nothing is judged here.
import type { PaceAnswer } from '../engine/shapes';

export type EdgeState = 'lethal' | 'short' | 'not_proven' | 'barred' | 'waiting';

export function edgeState(answer: PaceAnswer | null | undefined): EdgeState {
  if (!answer) return 'waiting';
  if (answer.harm_at_recommended === 'barred') return 'barred';
  return answer.verdict_at_recommended ?? 'not_proven';
}
