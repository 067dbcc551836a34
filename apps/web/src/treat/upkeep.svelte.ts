// When the towel is soaked and the tank is empty, by the question `boiler`, once the facts of the machine are known.
import { compute } from '../engine/compute';
import type { BoilerAnswer, JobState } from '../engine/shapes';
import { kitOf, testInUse } from '../kit/fold_request';
import type { Left } from './work.svelte';

/** The question, or null while the machine's tank, power or water is not recorded. */
export function boilerRequest(state: JobState, left: Left): Record<string, unknown> | null {
  const test = testInUse(state);
  const kit = test ? kitOf(test, state) : null;
  const machine = kit?.machine ?? state.kit.machines.at(-1) ?? null;
  const head = kit?.head ?? state.kit.heads.at(-1) ?? null;
  if (!machine || typeof machine.tank !== 'string' || typeof machine.power_watts !== 'number' || typeof machine.water_kilograms !== 'number') return null;
  const weighing = state.weighings.filter((one) => one.machine === machine.id).at(-1);
  const towelled = kit?.towel?.use === 'wrapped' && typeof head?.length_metres === 'number' && typeof head.width_metres === 'number';
  return {
    tank: machine.tank, power_watts: machine.power_watts, water_kilograms: machine.water_kilograms,
    ...(typeof machine.gauge_pascal === 'number' && machine.tank !== 'kettle' ? { gauge_pascal: machine.gauge_pascal } : {}),
    ...(weighing ? { weighing: { before_kilograms: weighing.before_kilograms, after_kilograms: weighing.after_kilograms, minutes: weighing.minutes } } : {}),
    ...(towelled ? { towelled_head: { length_metres: head.length_metres, width_metres: head.width_metres } } : {}),
    steam_minutes: Math.min(480, Math.max(0.1, left.seconds / 60)),
  };
}

/** Steam that the towel on the head has taken up: seconds of strokes since it was last changed. */
export function towelSeconds(state: JobState): number {
  const changed = state.edge_marks.filter((one) => one.what === 'towel_changed').map((one) => one.id).sort().at(-1) ?? '';
  return state.strokes.filter((one) => one.id > changed && one.towel !== 'none').reduce((sum, one) => sum + Number(one.seconds), 0);
}

export class Upkeep {
  answer = $state.raw<BoilerAnswer | null>(null);
  private readonly generation = compute.generation();
  private asked = '';

  ask(state: JobState, left: Left): void {
    const request = boilerRequest(state, { ...left, seconds: Math.ceil(left.seconds / 60) * 60 });
    const key = JSON.stringify(request);
    if (key === this.asked) return;
    this.asked = key;
    if (!request) {
      this.answer = null;
      return;
    }
    void compute.ask<BoilerAnswer>('boiler', request, this.generation, 8).then((outcome) => {
      if (this.asked === key) this.answer = outcome.ok ? outcome.answer : null;
    });
  }

  /** Minutes of steam until the tank wants water, of the work that is left; null when it lasts. */
  get refillMinutes(): number | null {
    const at = this.answer?.phases.findIndex((one) => one.kind === 'cool' || one.kind === 'refill') ?? -1;
    return at < 0 ? null : this.answer!.phases.slice(0, at).reduce((sum, one) => sum + one.steam_minutes, 0);
  }

  towelSoaked(state: JobState): boolean {
    const limit = this.answer?.towel?.change_after_minutes;
    return limit !== undefined && towelSeconds(state) >= limit * 60;
  }
}
