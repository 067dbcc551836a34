// Checked by the compiler only: what the engine's generated types say must fit the shapes that the page reads. When a
// question changes, this file stops compiling before a person sees a wrong screen.
import type * as page from './shapes';
import type * as engine from './questions';

type Fits<Wide, Narrow extends Wide> = Narrow;

export type Furniture = Fits<Omit<page.Furniture, 'edges' | 'vertices_metres'>, engine.FurnitureAnswer>;
export type Edges = Fits<Pick<page.Edge, 'id' | 'title' | 'kind' | 'part' | 'length_metres' | 'height_metres' | 'in_sight'>, engine.FurnitureAnswer['edges'][number]>;
export type FoldTest = Fits<Omit<page.FoldTestAnswer, 'posterior'>, engine.FoldTestAnswer>;
export type Pace = Fits<Pick<page.PaceAnswer, 'basis' | 'verdict_at_recommended' | 'harm_at_recommended' | 'recommended_metres_per_second' | 'style' | 'passes' | 'towel' | 'limited_by' | 'reason' | 'effective_samples' | 'samples'>, engine.PaceAnswer>;
export type Pass = Fits<Pick<page.PassAnswer, 'depths' | 'times_seconds' | 'temperatures_celsius'>, engine.PassAnswer>;
export type Requests = Fits<Pick<page.JobRequests, 'test_in_use'>, engine.JobRequestsAnswer>;
export type Folded = Fits<Pick<page.FoldedRecord, 'event_count' | 'state_hash' | 'conflicts' | 'unknown'>, engine.FoldEventsAnswer>;
export type Treated = Fits<Omit<page.TreatedAnswer, 'redo' | 'spot_readings'>, engine.AsTreatedAnswer>;
export type TreatedRedo = Fits<page.TreatedAnswer['redo'][number], engine.AsTreatedAnswer['redo'][number]>;
export type Boiler = Fits<Pick<page.BoilerAnswer, 'phases' | 'refills' | 'towel' | 'text'>, engine.BoilerAnswer>;
