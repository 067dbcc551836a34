// Shapes of the engine's questions that the page asks. Keys are the wire's own names.

export interface Quantiles { p05: number; p25?: number; p50: number; p75?: number; p95: number }
export interface Warning { code: string; text: string }
export interface EngineError { kind: string; message: string; where?: string; value?: unknown; limit?: unknown; unit?: string }
export interface Stamped { engine?: string; data?: string[]; warnings?: Warning[] }
export type Verdict = 'lethal' | 'short' | 'not_proven';
export type Harm = 'none' | 'scorch' | 'soak' | 'barred' | 'unknown';
export type Towel = 'none' | 'wrapped' | 'laid';
export interface Reason { code: string; text: string }
export type Point = [number, number, number];

export const k_coverings = [
  'cotton', 'linen', 'polyester', 'velvet', 'wool', 'viscose', 'acrylic', 'olefin', 'leather', 'coated', 'mattress_tick', 'unknown',
] as const;
export type Covering = (typeof k_coverings)[number];

// furniture
export interface FurnitureRequest {
  item: string; covering?: string; [more: string]: unknown;
}
export interface Treat { kind: string; covering: string; fill?: string; finish?: string; [more: string]: unknown }
export interface Edge {
  id: string; title: string; kind: string; part: string; faces: string[]; points_metres: Point[];
  length_metres: number; height_metres: number; height_range_metres?: [number, number]; in_sight: boolean; treat: Treat;
}
export interface Face { name: string; part: string; vertices: number[] }
export interface Part { name: string; title: string }
export interface Dimension { name: string; value_metres: number; source: string; quality: string }
export interface Furniture extends Stamped {
  item: string; title: string; vertices_metres: Point[]; faces: Face[]; parts: Part[]; edges: Edge[]; dimensions?: Dimension[];
  cautions?: { text: string; source: string }[]; water_drop?: { face: string; back: string; shuts_vapour_out: boolean; text: string };
}

// fold_test
export interface Posterior { mean: number; sd: number; quantiles: Quantiles }
export const k_reading_kinds = ['pass', 'stationary', 'coupon', 'under_real_edge', 'surface'] as const;
export type ReadingKind = (typeof k_reading_kinds)[number];
export interface FoldAt { pace_metres_per_second: number; layers: number | string[]; covering?: string; depth_metres?: number; quantiles: Quantiles; lethal_share: number }
export interface ReadingFit { index: number; measured_celsius: number; expected_celsius: number; standard_score: number; remark?: string }
export interface FoldTestAnswer extends Stamped {
  posterior: Record<string, Posterior>; samples: number; effective_samples: number; verdict: Verdict; verdict_reason: Reason;
  practice: {
    low_celsius: number; high_celsius: number; pace_metres_per_second: number; layers?: number | string[];
    reached: 'yes' | 'no' | 'not_proven'; probability: number; text: string;
  };
  fold_celsius_at: FoldAt[]; readings: ReadingFit[]; words: string[]; unidentified: string[];
  calibration: unknown; edge_calibrations?: unknown[];
  contradictions: { code: string; readings: number[]; suspect?: number; kelvin: number; text: string; advice: string }[];
  next_reading: {
    code: 'tells_most' | 'little_to_gain'; kind: ReadingKind; layers: number; pace_metres_per_second?: number; hold_seconds?: number;
    spread_now: number; spread_then: number; text: string;
  };
  drift?: { verdict: 'unchanged' | 'weaker' | 'stronger' | 'not_proven'; probability: number; mean_kelvin: number; text: string; advice: string };
}

// pace
export interface PaceCurvePoint {
  pace_metres_per_second: number; lethal_share: number; harmless_share: number; target_celsius_quantiles: Quantiles;
}
export interface PaceAnswer extends Stamped {
  basis: 'fold_test' | 'same_machine' | 'prior' | 'head'; verdict_at_recommended: Verdict | null; harm_at_recommended: Harm;
  window_metres_per_second: [number, number] | null; recommended_metres_per_second: number | null;
  style: 'glide' | 'place_hold_move' | null; hold_seconds?: number | null; move_metres?: number | null; passes: number; towel: Towel;
  limited_by: { low: string | null; high: string | null }; reason: Reason | null;
  tried?: { towel: Towel; passes: number; window_metres_per_second: [number, number] | null; text: string }[];
  kill_probability_at_recommended: number | null; kill_by_stage?: { egg: number; nymph: number; adult: number } | null;
  engorged_adult?: Record<string, unknown> | null; condensate_grams_per_m2?: { p50: number; p95: number } | null;
  dry_minutes: [number, number] | null; target_depth_metres?: { p50: number; p90: number };
  effective_samples: number; samples: number; curve?: PaceCurvePoint[];
  /** The middle case at the recommended pace, as a request of the question `pass` (its depths are for the asker to add). */
  middle_case?: Record<string, unknown> | null;
  one_inch_per_second?: {
    target_celsius?: Quantiles; quantiles?: Quantiles; lethal_share: number; condensate_grams_per_m2?: number | { p50: number; p95: number };
    text: string;
  } | null;
  explanation: string | null;
  what_matters: { what: string; share: number; text: string; remedy: string }[];
  levers: { lever: string; factor: number; text: string }[];
  after?: { bare_hand_seconds: number | null; text: string } | null;
}

// at_pace
export interface AtPaceAnswer extends Stamped {
  basis: PaceAnswer['basis']; samples: number; effective_samples: number; verdict: Verdict; harm: Harm;
  at: (PaceCurvePoint & { condensate_grams_per_m2: Quantiles }) | null;
  kill_by_stage: { egg: number; nymph: number; adult: number } | null; reason: Reason | null;
}

// as_treated
export type RedoCause = 'none' | 'too_fast' | 'near_limit' | 'unclear_record' | 'not_passed' | 'saw_live_bug' | 'no_model';
/** What is known of a head on a cloth; the page only hands it on. */
export interface Calibration { head_key: string; cloth_key: string }
export interface TreatedAnswer extends Stamped {
  verdict: Verdict; harm: Harm; reason: Reason; kill_probability: number | null; depth_reached_metres: number | null;
  length_metres: number; lethal_metres: number; samples: number; effective_samples: number;
  redo: { from_metres: number; to_metres: number; cause: RedoCause; text: string }[];
  spot_readings: { text: string; readings: { shown: string; expected_celsius: number[] }[]; calibrations: Calibration[] } | null;
}

// boiler
export interface BoilerAnswer extends Stamped {
  phases: { kind: string; from_minutes: number; minutes: number; steam_minutes: number }[];
  refills: number; towel: { change_after_minutes: number } | null; text: string;
}

// pass
export interface PassAnswer extends Stamped {
  depths: { depth_metres: number; peak_celsius: number; peak_seconds: number; log10_egg_dose: number }[];
  water_gain_at_liftoff_grams_per_m2: number; surface_after_celsius: { seconds_after: number; celsius: number }[];
  times_seconds: number[]; temperatures_celsius: number[][]; dose?: unknown; branches?: string;
}

// plan, of all items
export interface PlanEdge {
  item_index: number; id: string; title: string; part: string; length_metres: number; seconds: number | null; pace_index: number;
  bug_share: number; killed_share_per_minute: number; rank: number | null;
}
export interface PlanAnswer extends Stamped {
  items: { title: string; edges: number; edges_with_window: number }[]; edges: PlanEdge[]; paces: PaceAnswer[]; minutes: number;
  edges_with_window: number; edge_count: number; in_minutes_left?: { minutes: number; minutes_used: number; edges: number[]; bug_share: number };
}

// method, visit, preparation
export type Standing = 'allowed' | 'needs_check' | 'needs_consent' | 'barred';
export interface Sourced { code: string; text: string; source: string; locator: string; quality: string }
export interface MethodReason extends Sourced { standing: Standing; grounds: 'hazard' | 'damage' | 'practical' }
export interface MethodOffer {
  method: string; title: string; text: string; role: 'first' | 'kill' | 'contain' | 'remove'; standing: Standing; rank: number; reasons: MethodReason[];
  kill_probability: number | null; whole: boolean; unproven: boolean; evidence: { stage: string; text: string; source: string; locator: string; quality: string }[];
  hands_minutes: number; clock_minutes: number; energy_joules: number; wetting: 'none' | 'damp' | 'wet'; harm: string; may_be_chosen: boolean;
}
export interface MethodItem {
  id: string; title: string; item: string; traits: string[]; method: string | null; methods: MethodOffer[]; text: string;
  override: { method: string; reason: string; taken: boolean; code: string; instead_of: string | null; extra_hands_minutes: number; text: string } | null;
}
export interface MethodAnswer extends Stamped { items: MethodItem[]; recorded_only: string }
export interface VisitTask {
  kind: string; subject: string; item_index: number | null; from_minutes: number; minutes: number; to_minutes: number; people: number; who: number[];
  device: string; circuit_index: number | null; amperes: number; cord_from_other_room: boolean; after: number[]; tail: boolean;
  waits: { code: string; task: number | null }; text: string;
}
export interface VisitAnswer extends Stamped {
  minutes: number; range_minutes: [number, number]; shortest_possible_minutes: number; fits: boolean | null; tasks: VisitTask[];
  resources: { name: string; capacity: number; peak: number }[]; left_out: { code: string; item: string; task: string; text: string }[];
  sleep: { verdict: 'yes' | 'no' | 'not_proven' | 'no_bed'; ready_minutes: number | null; missing: { code: string; item: string; text: string }[]; text: string };
  in_minutes_left: { minutes: number; minutes_used: number; edges: number[]; bug_share: number; text: string } | null;
  load: {
    verdict: 'within' | 'refused' | 'not_proven'; circuits: { title: string; peak_amperes: number; allowed_amperes: number; breaker_amperes: number }[];
    refused: { item: string; task: string; amperes: number; allowed_amperes: number; text: string }[]; source: string;
  };
  water: { steam_minutes: number; refills: number | null; water_kilograms: number | null; waiting_minutes: number | null; energy_joules: number; text: string };
  quote: { currency: string; low: number; likely: number; high: number; person_hours: number; text: string } | null; text: string;
}
export interface SheetSentence extends Sourced {
  template: string; params: { name: string; value: number; unit: string; source: string }[]; time: 'before' | 'day' | 'after'; hard_stop: string[];
}
export interface PreparationAnswer extends Stamped { home: SheetSentence[]; firm: SheetSentence[]; hard_stops: number }
export interface VisitEdge { item: string; item_id?: string; id?: string; title: string; seconds: number; bug_share: number; killed_share_per_minute: number }
export interface VisitRequests extends Stamped {
  seen: unknown[]; method: Record<string, unknown> | null; visit: (Record<string, unknown> & { crew?: number; minutes?: number; edges?: VisitEdge[] }) | null;
  preparation: Record<string, unknown> | null;
}

// record
export interface RecordEvent {
  id: string; kind: string; subject: string; device: string; actor: string; at: string; data: Record<string, unknown>; corrects?: string;
}
export interface Entity { id: string; title?: string; [more: string]: unknown }
export interface FoldTest extends Entity { readings: Entity[] }
/** Lists of the state of a job, besides those of the kit. */
export const k_lists = [
  'rooms', 'items', 'arrivals', 'evidence', 'traps', 'trap_checks', 'edge_changes', 'damages', 'photos', 'risks', 'prior_treatments',
  'consents', 'circuits', 'weighings', 'probe_checks', 'jet_checks', 'start_checks', 'visits', 'rates', 'methods', 'edge_orders',
  'strokes', 'edge_marks', 'spot_readings', 'redo_notes', 'issued',
] as const;
export const k_kit_lists = ['machines', 'heads', 'towels', 'probes', 'vacuums', 'dryers'] as const;
export type JobState = Record<(typeof k_lists)[number], Entity[]> & {
  job: Entity | null; dwelling: Entity | null; kit: Record<(typeof k_kit_lists)[number], Entity[]>;
  fold_tests: FoldTest[]; settings: Entity | null;
  removed?: { kind: string; entity: Entity; removed_by: string[] }[];
};
export interface Conflict { subject: string; kind: string; rivals: string[]; values: unknown[] }
export interface FoldedRecord extends Stamped {
  state: JobState; conflicts: Conflict[]; unknown: { kind: string; count: number }[]; refused: { id: string; error: unknown }[];
  event_count: number; state_hash: string;
}

// job_requests
/** Which requests the job's facts make. They go on as they are; the page adds `edge` and `samples`. */
export type TestRequest = Record<string, unknown>;
export interface PaceKit {
  fold_test?: TestRequest[]; prior?: { same_machine?: TestRequest[]; [more: string]: unknown }; elevation_metres?: number;
}
export interface JobRequests extends Stamped {
  furniture: { id: string; request: FurnitureRequest }[]; fold_tests: { id: string; request: TestRequest | null }[];
  pace: PaceKit; test_in_use: string | null;
}

export type Outcome<T> = { ok: true; answer: T } | { ok: false; error: EngineError };
