// Made by `lastegg types` from the engine's table of questions. Do not edit.

/** A quantity in the unit of its key, or text with a unit, such as "1 in/s". */
export type Quantity = number | string;

export interface EngineError {
  kind: "bad_input" | "not_found" | "out_of_domain" | "internal";
  message: string;
  /** JSON pointer into the request; empty for the whole of it. */
  where: string;
  value?: number | string;
  limit?: number | string;
  unit?: string;
}

export interface Refusal {
  error: EngineError;
}

/** Pressure, temperature, heat and density of boiling water; dew temperature of steam mixed with air. */
export type SaturationRequest = {
  /** Temperature of boiling water; beside a steam fraction: of a surface. [celsius] [at least 0, at most 350] */
  temperature_celsius?: number | string;
  /** Absolute pressure; beside a steam fraction: of the mixture. [pascal] [at least 611.213, at most 16529164] */
  pressure_pascal?: number | string;
  /** Elevation above sea level, from which the standard atmosphere gives the pressure. [metres] [at least -500, at most 6000] */
  elevation_metres?: number | string;
  /** Moles of steam per mole of the mixture of steam and air. [fraction] [more than 0, at most 1] */
  steam_fraction?: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type SaturationAnswer = {
  /** Saturation pressure; of a mixture: its whole pressure. [pascal] */
  pressure_pascal: number;
  /** Saturation temperature. [celsius] */
  temperature_celsius?: number;
  /** Where steam begins to condense from the mixture; no wet surface gets hotter. [celsius] */
  dew_temperature_celsius?: number;
  /** The steam's share of the pressure. [pascal] */
  steam_pressure_pascal?: number;
  /** Whether steam condenses on a surface of the given temperature. */
  condenses?: boolean;
  /** Heat released by condensing. [joules per kilogram] */
  latent_heat_joules_per_kilogram: number;
  /** Density of saturated vapour. [kilograms per m3] */
  vapour_density_kilograms_per_m3: number;
  /** Density of saturated liquid. [kilograms per m3] */
  liquid_density_kilograms_per_m3: number;
  /** Enthalpy of saturated liquid, zero at the triple point. [joules per kilogram] */
  liquid_enthalpy_joules_per_kilogram: number;
  /** Enthalpy of saturated vapour, the same zero. [joules per kilogram] */
  vapour_enthalpy_joules_per_kilogram: number;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** Temperatures by conduction inside a stack of dry layers, at depths and times. */
export type ConductionRequest = {
  /** Layers from the front face inwards. [1 to 100 entries] */
  layers: {
    /** Thickness. [metres] [more than 0, at most 100] */
    thickness_metres: number | string;
    /** Thermal conductivity. [watts per metre kelvin] [more than 0, at most 5000] */
    conductivity_watts_per_metre_kelvin: number | string;
    /** Heat capacity per volume: density times specific heat. [joules per m3 kelvin] [more than 0, at most 100000000] */
    heat_capacity_joules_per_m3_kelvin: number | string;
    /** Start temperature of this layer, if it differs. [celsius] [at least -273.15, at most 2000] */
    start_celsius?: number | string;
  }[];
  /** Temperature of the stack at the start. [celsius] [at least -273.15, at most 2000] */
  start_celsius: number | string;
  /** The front face. */
  front: {
    /** What happens at the face. */
    kind: "fixed";
    /** Temperature of the face. [celsius] [at least -273.15, at most 2000] */
    celsius: number | string;
  } | {
    /** What happens at the face. */
    kind: "convective";
    /** Temperature of the fluid. [celsius] [at least -273.15, at most 2000] */
    celsius: number | string;
    /** Film coefficient. [watts per m2 kelvin] [more than 0, at most 1000000] */
    film_watts_per_m2_kelvin: number | string;
  } | {
    /** What happens at the face. */
    kind: "flux";
    /** Heat flux into the stack, negative if cooled. [watts per m2] [at least -10000000, at most 10000000] */
    flux_watts_per_m2: number | string;
  } | {
    /** What happens at the face. */
    kind: "insulated";
  };
  /** The back face; insulated if left out. Default {"kind":"insulated"}. */
  back?: {
    /** What happens at the face. */
    kind: "fixed";
    /** Temperature of the face. [celsius] [at least -273.15, at most 2000] */
    celsius: number | string;
  } | {
    /** What happens at the face. */
    kind: "convective";
    /** Temperature of the fluid. [celsius] [at least -273.15, at most 2000] */
    celsius: number | string;
    /** Film coefficient. [watts per m2 kelvin] [more than 0, at most 1000000] */
    film_watts_per_m2_kelvin: number | string;
  } | {
    /** What happens at the face. */
    kind: "flux";
    /** Heat flux into the stack, negative if cooled. [watts per m2] [at least -10000000, at most 10000000] */
    flux_watts_per_m2: number | string;
  } | {
    /** What happens at the face. */
    kind: "insulated";
  };
  /** Places asked for. [1 to 500 entries] */
  depths_metres: (number | string)[];
  /** Moments asked for. [1 to 1000 entries] */
  times_seconds: (number | string)[];
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type ConductionAnswer = {
  /** One row per time, in the order asked. */
  temperatures_celsius: number[][];
  /** Heat balance up to the last asked time. */
  energy: {
    /** Heat that came in through the front face. [joules per m2] */
    front_joules_per_m2: number;
    /** Heat that came in through the back face. [joules per m2] */
    back_joules_per_m2: number;
    /** Heat stored since the start. [joules per m2] */
    stored_joules_per_m2: number;
  };
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What a series of temperatures at one place does to eggs, nymphs or adults there, and whether it is lethal. */
export type DoseRequest = {
  /** Stage of the bug. */
  stage: "egg" | "nymph" | "adult";
  /** Readings, joined by straight lines. */
  series: {
    /** Times, strictly increasing. [2 to 1000000 entries] */
    seconds: (number | string)[];
    /** Temperatures at the coldest place where a bug can sit, one for each time. [2 to 1000000 entries] */
    celsius: (number | string)[];
  };
  /** What heats the place. Default "air". */
  exposure?: "air" | "steam";
  /** Taken off every reading. [kelvin] [at least 0, at most 20] Default 0. */
  uncertainty_celsius?: number | string;
  /** Longer intervals are gaps and earn nothing; if left out, more than four usual intervals of a log of six readings or more. [seconds] [more than 0] */
  longest_gap_seconds?: number | string;
  /** Override, for checking. [kelvin] [at least 1, at most 20] */
  z_kelvin?: number | string;
  /** Override, for checking. [celsius] [at least -273.15, at most 100] */
  onset_celsius?: number | string;
  /** Override, for checking. [celsius] [at least 30, at most 1000] */
  cap_celsius?: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type DoseAnswer = {
  /** Dose at the worse z, in minutes at the reference temperature. [minutes] */
  equivalent_minutes: number;
  /** Reference temperature of the stage. [celsius] */
  reference_celsius: number;
  /** Dose that kills 99 %. [minutes] */
  lt99_minutes: number;
  /** R, the dose over it. */
  ratio_to_lt99: number;
  /** R that a verdict lethal asks for. */
  required_ratio: number;
  /** Verdict for this stage. */
  verdict: "lethal" | "short" | "not_proven";
  /** What the verdict rests on. */
  verdict_reason: {
    /** Why. */
    code: "enough" | "too_little" | "near_limit" | "slow_ramp" | "gap" | "coarse_readings" | "body_lag" | "overridden";
    /** In a sentence. */
    text: string;
  };
  /** Both ends of the range of z. */
  by_z: {
    /** Temperature difference of a tenfold change of time. [kelvin] */
    z_kelvin: number;
    /** Dose. [minutes] */
    equivalent_minutes: number;
  }[];
  /** Below it nothing is earned. [celsius] */
  onset_celsius: number;
  /** Above it nothing more is earned. [celsius] */
  cap_celsius: number;
  /** Highest reading, uncertainty taken off. [celsius] */
  highest_celsius: number;
  /** R of the body: of an egg, or of an unfed nymph or adult. */
  ratio_with_body_lag: number;
  /** R of a fed adult, shown apart: it is large and in sight. */
  ratio_engorged?: number;
  /** Mean rate of the rise, in K/min, from the onset to the egg's reference. */
  ramp_kelvin_per_minute?: number;
  /** Holes of the log that earned nothing. */
  gaps: {
    /** Last reading before. [seconds] */
    from_seconds: number;
    /** First reading after. [seconds] */
    to_seconds: number;
  }[];
  /** Share of bugs of this stage that this kills, over the disagreement of studies; at most 0.99. */
  kill_probability: number;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What one pass of a known head does in a stack: temperatures, dose, water, the surface after. */
export type PassRequest = {
  /** A head with its towel, as the cloth feels it. */
  head: {
    /** Contact length along the travel. [metres] [at least 0.002, at most 1] */
    length_metres: number | string;
    /** Dew temperature of the steam under the head. [celsius] [more than 0, at most 110] */
    dew_celsius: number | string;
    /** Effective exchange between steam and surface. [watts per m2 kelvin] [at least 10, at most 10000] */
    film_watts_per_m2_kelvin: number | string;
    /** Most heat the supply can bring. [watts per m2] [at least 1000, at most 1000000] */
    flux_cap_watts_per_m2: number | string;
    /** Speed at which steam is pushed into the cloth. [metres per second] [at least 0, at most 0.1] */
    forced_gas_metres_per_second: number | string;
    /** Reach of the weaker steam before and behind the head. [metres] [at least 0, at most 0.2] Default 0.02. */
    skirt_length_metres?: number | string;
    /** Strength of the skirt against that under the head. [at least 0, at most 1] Default 0.25. */
    skirt_factor?: number;
    /** Speed of the head along the edge. [metres per second] [at least 0.0005, at most 1] */
    pace_metres_per_second: number | string;
  };
  /** Layers from the steamed surface down. [1 to 12 entries] */
  stack: {
    /** Key of a material of the data files. */
    material?: string;
    /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
    thickness_metres?: number | string;
    /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
    heat_capacity_joules_per_m3_kelvin?: number | string;
    /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
    conductivity_watts_per_metre_kelvin?: number | string;
    /** Whether steam can enter. */
    permeable?: boolean;
    /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
    porosity?: number;
    /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
    tortuosity?: number;
    /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
    sorption_scale_kilograms_per_m3?: number | string;
  }[];
  /** How well vapour moves in this cloth, against the model's cloth (phi). [at least 0, at most 1.5] */
  vapour_efficiency: number;
  /** Temperature of cloth and bugs before. [celsius] [at least -25, at most 60] Default 20. */
  start_celsius?: number | string;
  /** Relative humidity in the pores before. [at least 0, at most 0.95] Default 0.5. */
  start_activity?: number;
  /** Room air around the pass. */
  air?: {
    /** Exchange with room air. [watts per m2 kelvin] [at least 1, at most 100] Default 10. */
    film_watts_per_m2_kelvin?: number | string;
    /** Room temperature; the start temperature if left out. [celsius] [at least -25, at most 60] */
    celsius?: number | string;
    /** Of the room. [at least 0, at most 1] Default 0.5. */
    relative_humidity?: number;
  };
  /** Passes one after the other. [at least 1, at most 10] Default 1. */
  passes?: number;
  /** Time between passes. [seconds] [at least 0.1, at most 3600] Default 20. */
  gap_seconds?: number | string;
  /** Places asked for. [1 to 64 entries] */
  depths_metres: (number | string)[];
  /** Time watched after the last pass. [seconds] [at least 1, at most 3600] Default 60. */
  observe_seconds?: number | string;
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type PassAnswer = {
  /** The places asked for. */
  depths: {
    /** As asked. [metres] */
    depth_metres: number;
    /** Highest temperature. [celsius] */
    peak_celsius: number;
    /** When, from the arrival of the leading skirt. [seconds] */
    peak_seconds: number;
    /** Log10 of the equivalent minutes at 48 C with z = 4 K over 71.5, without onset, cap or lag. */
    log10_egg_dose: number;
  }[];
  /** Per depth: what counts for a verdict. */
  dose: {
    /** Log10 of the dose ratio R at the worst z, body lag included. */
    egg: number;
    /** Log10 of the dose ratio R at the worst z, body lag included. */
    nymph: number;
    /** Log10 of the dose ratio R at the worst z, body lag included. */
    adult: number;
    /** Log10 of the dose ratio R at the worst z, body lag included. */
    engorged_adult: number;
  }[];
  /** Water gained when the head has passed. [grams per m2] */
  water_gain_at_cover_end_grams_per_m2: number;
  /** Water gained when the steam ends. [grams per m2] */
  water_gain_at_liftoff_grams_per_m2: number;
  /** Of it not vapour in the pores. [grams per m2] */
  condensate_at_liftoff_grams_per_m2: number;
  /** When the steam ends. [seconds] */
  liftoff_seconds: number;
  /** The surface afterwards. */
  surface_after_celsius: {
    /** After the steam ends. [seconds] */
    seconds_after: number;
    /** Of the surface. [celsius] */
    celsius: number;
  }[];
  /** Highest temperature of any place while steamed. [celsius] */
  highest_celsius: number;
  /** Times of the table. */
  times_seconds: number[];
  /** Per time. */
  temperatures_celsius: number[][];
  /** Closure of the books. */
  ledger: {
    /** Energy that the march lost, of what came in. */
    energy_error_relative: number;
    /** Water that the march lost, of what came in. */
    water_error_relative: number;
  };
  /** Hash of the discrete choices of the run. */
  branches: string;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What a thermometer in a fold says about this machine, head and towel. */
export type FoldTestRequest = {
  /** Name of the machine. */
  machine: string;
  /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
  head: string | {
    /** Name of the head. */
    name: string;
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
    length_metres?: number | string;
    /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
    width_metres?: number | string;
  };
  /** Towel during the test. Default "none". */
  towel?: "none" | "wrapped" | "laid";
  /** The thermometer; without it no lag is corrected, which can only read low. */
  probe?: {
    /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
    time_constant_seconds?: number | string;
    /** A dip into boiling water; boiling is taken at this air pressure. */
    dip?: {
      /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
      start_celsius?: number | string;
      /** Times and temperatures. [1 to 200 entries] */
      points?: {
        /** Since the tip went in. [seconds] [at least 0, at most 600] */
        seconds: number | string;
        /** Shown. [celsius] [at least -20, at most 120] */
        celsius: number | string;
      }[];
      /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
      seconds_to_63?: number | string;
      /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
      seconds_to_90?: number | string;
    };
  };
  /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
  start_celsius?: number | string;
  /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
  covering?: string;
  /** One layer of the test fold, when readings count layers. [1 entries] */
  cloth?: {
    /** Key of a material of the data files. */
    material?: string;
    /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
    thickness_metres?: number | string;
    /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
    heat_capacity_joules_per_m3_kelvin?: number | string;
    /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
    conductivity_watts_per_metre_kelvin?: number | string;
    /** Whether steam can enter. */
    permeable?: boolean;
    /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
    porosity?: number;
    /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
    tortuosity?: number;
    /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
    sorption_scale_kilograms_per_m3?: number | string;
  }[];
  /** What lies under the fold. [1 to 12 entries] */
  under?: {
    /** Key of a material of the data files. */
    material?: string;
    /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
    thickness_metres?: number | string;
    /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
    heat_capacity_joules_per_m3_kelvin?: number | string;
    /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
    conductivity_watts_per_metre_kelvin?: number | string;
    /** Whether steam can enter. */
    permeable?: boolean;
    /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
    porosity?: number;
    /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
    tortuosity?: number;
    /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
    sorption_scale_kilograms_per_m3?: number | string;
  }[];
  /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
  working_pace_metres_per_second?: number | string;
  /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** The readings. [1 to 64 entries] */
  readings: {
    /** What was done; pass if left out, stationary if hold_seconds is given. */
    kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
    /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
    pace_metres_per_second?: number | string;
    /** Way of the head. [metres] [more than 0, at most 10] */
    distance_metres?: number | string;
    /** Time for that way. [seconds] [more than 0, at most 600] */
    seconds?: number | string;
    /** How long the head rested. [seconds] [at least 10, at most 90] */
    hold_seconds?: number | string;
    /** What lay over the tip; not for a coupon. */
    layers?: number | {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Of the real edge: its covering, or any name with layers given as a stack. */
    covering?: string;
    /** The plate; 1 mm of acrylic sheet if left out. */
    coupon?: {
      /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
      heat_capacity_joules_per_m2_kelvin: number;
    } | {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
    peak_celsius?: number | string;
    /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
    gun_celsius?: number | string;
    /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
    palm?: "cold" | "warm" | "hot";
    /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
    seconds_after?: number | string;
    /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
    spot_metres?: number | string;
    /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
    emissivity_setting?: number;
  }[];
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** The last test of this machine, head and towel, to compare with. */
  earlier?: {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  } | {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
  };
  /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
  same_machine?: ({
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  } | {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
  })[];
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type FoldTestAnswer = {
  /** What this machine, head and towel deliver. */
  posterior: {
    /** Dew temperature of the steam under the head: the ceiling of any wet surface. */
    dew_temperature_celsius: {
      /** Weighted mean. [celsius] */
      mean: number;
      /** Standard deviation. [kelvin] */
      sd: number;
      /** Quantiles. */
      quantiles: {
        /** 5 %. [celsius] */
        p05: number;
        /** 25 %. [celsius] */
        p25: number;
        /** Half. [celsius] */
        p50: number;
        /** 75 %. [celsius] */
        p75: number;
        /** 95 %. [celsius] */
        p95: number;
      };
    };
    /** Effective exchange between steam and cloth. */
    film_watts_per_m2_kelvin: {
      /** Weighted mean. [watts per m2 kelvin] */
      mean: number;
      /** Standard deviation. [watts per m2 kelvin] */
      sd: number;
      /** Quantiles. */
      quantiles: {
        /** 5 %. [watts per m2 kelvin] */
        p05: number;
        /** 25 %. [watts per m2 kelvin] */
        p25: number;
        /** Half. [watts per m2 kelvin] */
        p50: number;
        /** 75 %. [watts per m2 kelvin] */
        p75: number;
        /** 95 %. [watts per m2 kelvin] */
        p95: number;
      };
    };
    /** How well vapour moves in this cloth (phi). */
    vapour_efficiency: {
      /** Weighted mean. */
      mean: number;
      /** Standard deviation. */
      sd: number;
      /** Quantiles. */
      quantiles: {
        /** 5 %. */
        p05: number;
        /** 25 %. */
        p25: number;
        /** Half. */
        p50: number;
        /** 75 %. */
        p75: number;
        /** 95 %. */
        p95: number;
      };
    };
    /** Speed at which steam is pushed into the cloth. */
    forced_gas_metres_per_second: {
      /** Weighted mean. [metres per second] */
      mean: number;
      /** Standard deviation. [metres per second] */
      sd: number;
      /** Quantiles. */
      quantiles: {
        /** 5 %. [metres per second] */
        p05: number;
        /** 25 %. [metres per second] */
        p25: number;
        /** Half. [metres per second] */
        p50: number;
        /** 75 %. [metres per second] */
        p75: number;
        /** 95 %. [metres per second] */
        p95: number;
      };
    };
  };
  /** Size of the ensemble. */
  samples: number;
  /** Samples that the weights leave. */
  effective_samples: number;
  /** Egg kill at working pace under the deepest tested layers. */
  verdict: "lethal" | "short" | "not_proven";
  /** Why. */
  verdict_reason: {
    /** Short name for programs. */
    code: string;
    /** A sentence for people. */
    text: string;
  };
  /** Against the practice target. */
  practice: {
    /** Lower end of the practice target (common practice). [celsius] */
    low_celsius: number;
    /** Upper end. [celsius] */
    high_celsius: number;
    /** Working pace judged. [metres per second] */
    pace_metres_per_second: number;
    /** Layers over the tip judged. */
    layers: number;
    /** Whether the fold reaches the practice target. */
    reached: "yes" | "no" | "not_proven";
    /** Weight that reaches it. */
    probability: number;
    /** In words. */
    text: string;
  };
  /** The fold over pace. */
  fold_celsius_at: {
    /** Pace. [metres per second] */
    pace_metres_per_second: number;
    /** Layers over the place. */
    layers: number;
    /** Of a real edge; the test's own if left out. */
    covering?: string;
    /** Below the surface. [metres] */
    depth_metres: number;
    /** Peak in the fold. */
    quantiles: {
      /** 5 % of the weight lies below. [celsius] */
      p05: number;
      /** 25 % of the weight lies below. [celsius] */
      p25: number;
      /** Half of the weight lies below. [celsius] */
      p50: number;
      /** 75 % of the weight lies below. [celsius] */
      p75: number;
      /** 95 % of the weight lies below. [celsius] */
      p95: number;
    };
    /** Weight that kills eggs, nymphs and unfed adults. */
    lethal_share: number;
  }[];
  /** How the readings fit. */
  readings: {
    /** From 0. */
    index: number;
    /** What was done. */
    kind: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
    /** Over the tip; 0 for a coupon. */
    layers: number;
    /** As given; of a surface the one behind what a gun showed, or the nearest that a palm's word allows. [celsius] */
    measured_celsius: number;
    /** What the model expects there. [celsius] */
    expected_celsius: number;
    /** (measured - expected) / error of this kind of reading. */
    standard_score: number;
    /** When it does not fit. */
    remark?: string;
  }[];
  /** What your steamer does, in words. */
  words: string[];
  /** What the readings cannot tell. */
  unidentified: string[];
  /** Which hold the verdict at not proven where it hangs on them. */
  contradictions: {
    /** What cannot be. */
    code: "slower_is_colder" | "deeper_is_hotter" | "repeats_differ" | "rest_is_colder" | "above_boiling";
    /** The pair, or the one. */
    readings: number[];
    /** The one that disagrees with several others, from 0. */
    suspect?: number;
    /** By how much they disagree. [kelvin] */
    kelvin: number;
    /** In words. */
    text: string;
    /** What to do. */
    advice: string;
  }[];
  /** Which reading would tell most. */
  next_reading: {
    /** Whether it is worth the water. */
    code: "tells_most" | "little_to_gain";
    /** What to do. */
    kind: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
    /** Over the tip; 0 for a coupon. */
    layers: number;
    /** Pace. [metres per second] */
    pace_metres_per_second?: number;
    /** Of a head at rest. [seconds] */
    hold_seconds?: number;
    /** Standard deviation of ln(fastest lethal pace), as known now. */
    spread_now: number;
    /** The same, expected after the reading. */
    spread_then: number;
    /** In words. */
    text: string;
    /** Best first. */
    candidates: {
      /** What to do. */
      kind: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Over the tip. */
      layers: number;
      /** Pace. [metres per second] */
      pace_metres_per_second?: number;
      /** Expected after it. */
      spread_then: number;
    }[];
  };
  /** What the dip tells of the probe. */
  probe?: {
    /** 63 % of a jump. [seconds] */
    time_constant_seconds: number;
    /** 5 %, in a fold. [seconds] */
    low: number;
    /** 95 %, in a fold. [seconds] */
    high: number;
    /** In words. */
    text: string;
  };
  /** Against the earlier test, if one was given. */
  drift?: {
    /** Whether the machine has changed. */
    verdict: "unchanged" | "weaker" | "stronger" | "not_proven";
    /** Compared. */
    readings: number;
    /** Of readings so far off, if nothing had changed. */
    probability: number;
    /** Readings less expected. [kelvin] */
    mean_kelvin: number;
    /** A change that the readings suggest; told too small, since both tests lean on the same prior. */
    dew_shift: {
      /** Now less before. [kelvin] */
      value: number;
      /** Standard deviation, of a ratio that of its logarithm. */
      spread: number;
      /** That it is lower now. */
      probability_weaker: number;
    };
    /** A change that the readings suggest; told too small, since both tests lean on the same prior. */
    film_ratio: {
      /** Now over before. */
      value: number;
      /** Standard deviation, of a ratio that of its logarithm. */
      spread: number;
      /** That it is lower now. */
      probability_weaker: number;
    };
    /** In words. */
    text: string;
    /** What to do. */
    advice: string;
  };
  /** For the coverings of real edges that were read, beside calibration. */
  edge_calibrations?: {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  }[];
  /** What a fold test found, in the form that pace and plan take. */
  calibration: {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  };
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** How fast to move along one edge: the pace that kills there and does no harm, and what limits it. */
export type PaceRequest = {
  /** A head with its towel, as the cloth feels it. */
  head?: {
    /** Contact length along the travel. [metres] [at least 0.002, at most 1] */
    length_metres: number | string;
    /** Dew temperature of the steam under the head. [celsius] [more than 0, at most 110] */
    dew_celsius: number | string;
    /** Effective exchange between steam and surface. [watts per m2 kelvin] [at least 10, at most 10000] */
    film_watts_per_m2_kelvin: number | string;
    /** Most heat the supply can bring. [watts per m2] [at least 1000, at most 1000000] */
    flux_cap_watts_per_m2: number | string;
    /** Speed at which steam is pushed into the cloth. [metres per second] [at least 0, at most 0.1] */
    forced_gas_metres_per_second: number | string;
    /** Reach of the weaker steam before and behind the head. [metres] [at least 0, at most 0.2] Default 0.02. */
    skirt_length_metres?: number | string;
    /** Strength of the skirt against that under the head. [at least 0, at most 1] Default 0.25. */
    skirt_factor?: number;
    /** Of this cloth, if known (phi). [at least 0, at most 1.5] */
    vapour_efficiency?: number;
    /** Towel that belongs to these values. Default "none". */
    towel?: "none" | "wrapped" | "laid";
  };
  /** Fold tests of this machine, head and towel. */
  fold_test?: {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  } | {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  }[];
  /** What fold tests found. */
  calibration?: {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  } | {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  }[];
  /** No test of this head and towel yet: what is usual, and what others of the machine say. */
  prior?: {
    /** Name of the machine. Default "machine". */
    machine?: string;
    /** Name of the head. Default "head". */
    head?: string;
    /** Towel. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
    length_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  };
  /** Temperature of the item before. [celsius] [at least -20, at most 50] Default 20. */
  start_celsius?: number | string;
  /** The covering is damp to the hand. Default false. */
  damp?: boolean;
  /** Confidence of kill and of no harm. [at least 0.5, at most 0.99] Default 0.95. */
  confidence?: number;
  /** Size of the ensemble where no fold test gives it; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** Most water the covering may take up; 50 is an estimate, a hidden-spot test may show another. [grams per m2] [at least 5, at most 500] Default 50. */
  wetting_limit_grams_per_m2?: number | string;
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** An edge, as furniture gives it in `treat`. */
  edge: {
    /** What kind of edge. */
    kind: "seam" | "welt" | "tape_edge" | "fold" | "quilting" | "pleat" | "skirt" | "zip" | "label" | "handle" | "tuft" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap" | "wood_joint" | "screw_hole" | "drawer_runner" | "headboard_back" | "skirting_gap" | "carpet_edge" | "pile" | "curtain_heading" | "wall_joint" | "metal_joint" | "heap" | "electrical_cover";
    /** What covers it. */
    covering: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
    /** What lies behind the covering. Default "batting_foam". */
    fill?: "batting_foam" | "foam" | "wood" | "none";
    /** A finish of wood as furniture names it, or a key of the damage limits. */
    finish?: string;
    /** What a trial on a hidden spot of this covering or finish showed. Default "not_tried". */
    hidden_spot?: "not_tried" | "unharmed" | "marked";
    /** For which the steaming head was held still on a hidden spot, which then dried without a mark. [seconds] [at least 1, at most 120] */
    hidden_spot_seconds?: number | string;
    /** Check whether vapour can enter the covering at all. */
    water_drop?: {
      /** A drop of water on the face of the covering. Default "not_tried". */
      face?: "not_tried" | "soaks" | "beads";
      /** The back of the covering, seen at a hem, a zip or under the dust cover. Default "not_seen". */
      back?: "not_seen" | "open" | "coated";
      /** Until the drop had soaked in. [seconds] [at least 0, at most 3600] */
      seconds?: number | string;
    };
    /** The layers themselves, if known; then target_depth_metres too. [1 to 12 entries] */
    stack?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Deepest place where an egg may lie. [metres] [more than 0, at most 0.2] */
    target_depth_metres?: number | string;
    /** By a hidden-spot wetting test of this covering. [grams per m2] [at least 5, at most 500] */
    wetting_limit_grams_per_m2?: number | string;
  };
  /** Pause to cool between repeat passes, where they are tried; 20 (an estimate) if left out. [seconds] [at least 0.1, at most 3600] */
  gap_seconds?: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type PaceAnswer = {
  /** What the pace stands on. */
  basis: "fold_test" | "same_machine" | "prior" | "head";
  /** At the recommended pace; without a window at the fastest harmless one. */
  verdict_at_recommended: "lethal" | "short" | "not_proven";
  /** Harm, apart from kill. */
  harm_at_recommended: "none" | "scorch" | "soak" | "barred" | "unknown";
  /** Slowest and fastest. [2 entries] */
  window_metres_per_second: number[] | null;
  /** The pace to plan. [metres per second] */
  recommended_metres_per_second: number | null;
  /** How. */
  style: "glide" | "place_hold_move" | null;
  /** For place_hold_move. [seconds] */
  hold_seconds?: number;
  /** For place_hold_move. [metres] */
  move_metres?: number;
  /** Passes one after the other. */
  passes: number;
  /** Towel. */
  towel: "none" | "wrapped" | "laid";
  /** The two limits. */
  limited_by: {
    /** What forbids slower. */
    low: "soak" | "scorch" | "steady_hand" | null;
    /** What forbids faster. */
    high: "egg" | "mobile" | null;
  };
  /** Why there is no window, or what limits it. */
  reason: {
    /** Short name for programs. */
    code: string;
    /** A sentence for people. */
    text: string;
  } | null;
  /** The shape of the edge; absent where the layers were given. */
  shape?: {
    /** How the edge is modelled. */
    family: "flat_stack" | "fold" | "cylinder" | "crack" | "void" | "none";
    /** The place is at least as warm as computed; never proof of too cold. */
    bound: boolean;
    /** In words. */
    text: string;
    /** Places of such an edge that the figure says nothing about. */
    not_covered: string | null;
  };
  /** Alternatives, looked at with a smaller ensemble, when there is no window. */
  tried: {
    /** Towel. */
    towel: "none" | "wrapped" | "laid";
    /** Passes. */
    passes: number;
    /** Slowest and fastest. [2 entries] */
    window_metres_per_second: number[] | null;
    /** What was tried. */
    text: string;
  }[];
  /** Of the hardest stage, at most 0.99. */
  kill_probability_at_recommended: number | null;
  /** Contact and escape included. */
  kill_by_stage: {
    /** Probability, printed at most as 0.99. */
    egg: number;
    /** Probability, printed at most as 0.99. */
    nymph: number;
    /** Probability, printed at most as 0.99. */
    adult: number;
  } | null;
  /** Shown apart. */
  engorged_adult: {
    /** Probability, printed at most as 0.99. */
    kill_probability: number;
    /** What follows. */
    text: string;
  } | null;
  /** Water left at the recommended pace. */
  condensate_grams_per_m2: {
    /** Half. [grams per m2] */
    p50: number;
    /** 95 %. [grams per m2] */
    p95: number;
  } | null;
  /** The middle case before a fan, and a wet case in still air; no liquid wicks to the surface. [2 entries] */
  dry_minutes: number[] | null;
  /** What follows the pass. */
  after: {
    /** After the steam until nothing near the surface is hotter than 48 C, in the hottest of the likely cases; null: longer than a quarter of an hour. [seconds] */
    bare_hand_seconds: number | null;
    /** The surface behind the head. */
    surface_after_celsius: {
      /** After the steam. [seconds] */
      seconds_after: number;
      /** Of the surface, middle case. [celsius] */
      celsius: number;
    }[];
    /** Until dry before a fan, middle case. [minutes] */
    dry_minutes_fan: number | null;
    /** Until dry in still air, middle case. [minutes] */
    dry_minutes_still: number | null;
    /** It may stay wet for longer than a day in still air. */
    mould_caution: boolean;
    /** In words. */
    text: string;
  } | null;
  /** What the surface bears, and where that is written. */
  finish: {
    /** Covering or finish. */
    title: string;
    /** What follows for steaming. */
    action: "allow" | "short_dwell" | "avoid" | "stop" | "hidden_test" | "ask";
    /** What a trial on a hidden spot of this covering or finish showed. */
    hidden_spot: "not_tried" | "unharmed" | "marked";
    /** What its surface bears. [celsius] */
    surface_celsius: number | null;
    /** Above that. [seconds] */
    seconds_allowed: number;
    /** What this rests on, the decisive one first. */
    limits: {
      /** Key of the damage limits. */
      key: string;
      /** What is harmed. */
      title: string;
      /** From which temperature. [celsius] */
      limit_celsius: number | null;
      /** Under which condition; may be empty. */
      when: string;
      /** How. */
      effect: string;
      /** Key of the bibliography. */
      source: string;
      /** Where in it. */
      locator: string;
      /** How good the number is: measured, handbook, practice, estimate, from memory. */
      quality: string;
    }[];
    /** In words. */
    text: string;
  };
  /** The water-drop check. */
  water_drop: {
    /** A drop of water on the face of the covering. */
    face: "not_tried" | "soaks" | "beads";
    /** The back of the covering, seen at a hem, a zip or under the dust cover. */
    back: "not_seen" | "open" | "coated";
    /** Kill is computed as if no vapour entered. */
    shuts_vapour_out: boolean;
    /** What the check says, and what else to look at. */
    text: string;
  };
  /** Where the eggs are. */
  target_depth_metres: {
    /** Median of where eggs may sit. [metres] */
    p50: number;
    /** Target. [metres] */
    p90: number;
  } | null;
  /** When the target lies deeper than 1.5 times what was tested in this covering. */
  beyond_test?: {
    /** Deepest tip of the readings. [metres] */
    tested_depth_metres: number;
    /** In words. */
    text: string;
  };
  /** Samples that the weights leave. */
  effective_samples: number;
  /** Size of the ensemble. */
  samples: number;
  /** Over pace. */
  curve: {
    /** Planned pace. [metres per second] */
    pace_metres_per_second: number;
    /** Weight that kills. */
    lethal_share: number;
    /** Weight that does no harm. */
    harmless_share: number;
    /** Peak where the eggs are. */
    target_celsius_quantiles: {
      /** 5 % of the weight lies below. [celsius] */
      p05: number;
      /** 25 % of the weight lies below. [celsius] */
      p25: number;
      /** Half of the weight lies below. [celsius] */
      p50: number;
      /** 75 % of the weight lies below. [celsius] */
      p75: number;
      /** 95 % of the weight lies below. [celsius] */
      p95: number;
    };
    /** Water left by the pass. */
    condensate_grams_per_m2: {
      /** 5 % of the weight lies below. [grams per m2] */
      p05: number;
      /** 25 % of the weight lies below. [grams per m2] */
      p25: number;
      /** Half of the weight lies below. [grams per m2] */
      p50: number;
      /** 75 % of the weight lies below. [grams per m2] */
      p75: number;
      /** 95 % of the weight lies below. [grams per m2] */
      p95: number;
    };
  }[];
  /** The median case at the recommended pace (else one inch per second), as a request of the question pass; its depths are for the asker to choose. */
  middle_case: unknown;
  /** For orientation: what the customary pace would do (common practice). */
  one_inch_per_second: {
    /** Peak where the eggs are. */
    target_celsius: {
      /** 5 % of the weight lies below. [celsius] */
      p05: number;
      /** 25 % of the weight lies below. [celsius] */
      p25: number;
      /** Half of the weight lies below. [celsius] */
      p50: number;
      /** 75 % of the weight lies below. [celsius] */
      p75: number;
      /** 95 % of the weight lies below. [celsius] */
      p95: number;
    };
    /** Weight that kills. */
    lethal_share: number;
    /** Median. [grams per m2] */
    condensate_grams_per_m2: number;
    /** In words. */
    text: string;
  } | null;
  /** What holds the heat back, and what is least known, in words. */
  explanation: string | null;
  /** First-order sensitivity of the fastest pace, largest first; unknowns that a fold test has tied together share theirs. */
  what_matters: {
    /** Unknown. */
    what: "steam_temperature" | "exchange" | "cloth_vapour" | "forced_flow" | "layers" | "hand";
    /** Of the variance of the fastest pace. */
    share: number;
    /** In words. */
    text: string;
    /** What would tell. */
    remedy: string;
  }[];
  /** What would make it faster. */
  levers: {
    /** What is changed. */
    lever: "longer_head" | "second_pass" | "hotter_steam" | "better_exchange" | "opener_cloth" | "stronger_push" | "conducting_layers";
    /** Fastest pace of the middle case with it over that without. */
    factor: number;
    /** In words. */
    text: string;
  }[];
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What one chosen pace would do on one edge: the heat where the eggs are, kill, water and harm. */
export type AtPaceRequest = {
  /** A head with its towel, as the cloth feels it. */
  head?: {
    /** Contact length along the travel. [metres] [at least 0.002, at most 1] */
    length_metres: number | string;
    /** Dew temperature of the steam under the head. [celsius] [more than 0, at most 110] */
    dew_celsius: number | string;
    /** Effective exchange between steam and surface. [watts per m2 kelvin] [at least 10, at most 10000] */
    film_watts_per_m2_kelvin: number | string;
    /** Most heat the supply can bring. [watts per m2] [at least 1000, at most 1000000] */
    flux_cap_watts_per_m2: number | string;
    /** Speed at which steam is pushed into the cloth. [metres per second] [at least 0, at most 0.1] */
    forced_gas_metres_per_second: number | string;
    /** Reach of the weaker steam before and behind the head. [metres] [at least 0, at most 0.2] Default 0.02. */
    skirt_length_metres?: number | string;
    /** Strength of the skirt against that under the head. [at least 0, at most 1] Default 0.25. */
    skirt_factor?: number;
    /** Of this cloth, if known (phi). [at least 0, at most 1.5] */
    vapour_efficiency?: number;
    /** Towel that belongs to these values. Default "none". */
    towel?: "none" | "wrapped" | "laid";
  };
  /** Fold tests of this machine, head and towel. */
  fold_test?: {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  } | {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  }[];
  /** What fold tests found. */
  calibration?: {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  } | {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  }[];
  /** No test of this head and towel yet: what is usual, and what others of the machine say. */
  prior?: {
    /** Name of the machine. Default "machine". */
    machine?: string;
    /** Name of the head. Default "head". */
    head?: string;
    /** Towel. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
    length_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  };
  /** Temperature of the item before. [celsius] [at least -20, at most 50] Default 20. */
  start_celsius?: number | string;
  /** The covering is damp to the hand. Default false. */
  damp?: boolean;
  /** Confidence of kill and of no harm. [at least 0.5, at most 0.99] Default 0.95. */
  confidence?: number;
  /** Size of the ensemble where no fold test gives it; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** Most water the covering may take up; 50 is an estimate, a hidden-spot test may show another. [grams per m2] [at least 5, at most 500] Default 50. */
  wetting_limit_grams_per_m2?: number | string;
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** An edge, as furniture gives it in `treat`. */
  edge: {
    /** What kind of edge. */
    kind: "seam" | "welt" | "tape_edge" | "fold" | "quilting" | "pleat" | "skirt" | "zip" | "label" | "handle" | "tuft" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap" | "wood_joint" | "screw_hole" | "drawer_runner" | "headboard_back" | "skirting_gap" | "carpet_edge" | "pile" | "curtain_heading" | "wall_joint" | "metal_joint" | "heap" | "electrical_cover";
    /** What covers it. */
    covering: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
    /** What lies behind the covering. Default "batting_foam". */
    fill?: "batting_foam" | "foam" | "wood" | "none";
    /** A finish of wood as furniture names it, or a key of the damage limits. */
    finish?: string;
    /** What a trial on a hidden spot of this covering or finish showed. Default "not_tried". */
    hidden_spot?: "not_tried" | "unharmed" | "marked";
    /** For which the steaming head was held still on a hidden spot, which then dried without a mark. [seconds] [at least 1, at most 120] */
    hidden_spot_seconds?: number | string;
    /** Check whether vapour can enter the covering at all. */
    water_drop?: {
      /** A drop of water on the face of the covering. Default "not_tried". */
      face?: "not_tried" | "soaks" | "beads";
      /** The back of the covering, seen at a hem, a zip or under the dust cover. Default "not_seen". */
      back?: "not_seen" | "open" | "coated";
      /** Until the drop had soaked in. [seconds] [at least 0, at most 3600] */
      seconds?: number | string;
    };
    /** The layers themselves, if known; then target_depth_metres too. [1 to 12 entries] */
    stack?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Deepest place where an egg may lie. [metres] [more than 0, at most 0.2] */
    target_depth_metres?: number | string;
    /** By a hidden-spot wetting test of this covering. [grams per m2] [at least 5, at most 500] */
    wetting_limit_grams_per_m2?: number | string;
  };
  /** The pace to look at. [metres per second] [at least 0.002, at most 0.045] */
  pace_metres_per_second: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type AtPaceAnswer = {
  /** What the figures stand on. */
  basis: "fold_test" | "same_machine" | "prior" | "head";
  /** Size of the ensemble. */
  samples: number;
  /** Samples that the weights leave. */
  effective_samples: number;
  /** At this pace. */
  verdict: "lethal" | "short" | "not_proven";
  /** Harm, apart from kill. */
  harm: "none" | "scorch" | "soak" | "barred" | "unknown";
  /** One pace. */
  at: {
    /** Planned pace. [metres per second] */
    pace_metres_per_second: number;
    /** Weight that kills. */
    lethal_share: number;
    /** Weight that does no harm. */
    harmless_share: number;
    /** Peak where the eggs are. */
    target_celsius_quantiles: {
      /** 5 % of the weight lies below. [celsius] */
      p05: number;
      /** 25 % of the weight lies below. [celsius] */
      p25: number;
      /** Half of the weight lies below. [celsius] */
      p50: number;
      /** 75 % of the weight lies below. [celsius] */
      p75: number;
      /** 95 % of the weight lies below. [celsius] */
      p95: number;
    };
    /** Water left by the pass. */
    condensate_grams_per_m2: {
      /** 5 % of the weight lies below. [grams per m2] */
      p05: number;
      /** 25 % of the weight lies below. [grams per m2] */
      p25: number;
      /** Half of the weight lies below. [grams per m2] */
      p50: number;
      /** 75 % of the weight lies below. [grams per m2] */
      p75: number;
      /** 95 % of the weight lies below. [grams per m2] */
      p95: number;
    };
  } | null;
  /** Contact and escape included. */
  kill_by_stage: {
    /** Probability, printed at most as 0.99. */
    egg: number;
    /** Probability, printed at most as 0.99. */
    nymph: number;
    /** Probability, printed at most as 0.99. */
    adult: number;
  } | null;
  /** Why nothing can be said of this edge. */
  reason: {
    /** Short name for programs. */
    code: string;
    /** A sentence for people. */
    text: string;
  } | null;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What a timed treatment of one edge did: lethal, short or not proven per stretch, how deep, harm, what to do again. */
export type AsTreatedRequest = {
  /** A head with its towel, as the cloth feels it. */
  head?: {
    /** Contact length along the travel. [metres] [at least 0.002, at most 1] */
    length_metres: number | string;
    /** Dew temperature of the steam under the head. [celsius] [more than 0, at most 110] */
    dew_celsius: number | string;
    /** Effective exchange between steam and surface. [watts per m2 kelvin] [at least 10, at most 10000] */
    film_watts_per_m2_kelvin: number | string;
    /** Most heat the supply can bring. [watts per m2] [at least 1000, at most 1000000] */
    flux_cap_watts_per_m2: number | string;
    /** Speed at which steam is pushed into the cloth. [metres per second] [at least 0, at most 0.1] */
    forced_gas_metres_per_second: number | string;
    /** Reach of the weaker steam before and behind the head. [metres] [at least 0, at most 0.2] Default 0.02. */
    skirt_length_metres?: number | string;
    /** Strength of the skirt against that under the head. [at least 0, at most 1] Default 0.25. */
    skirt_factor?: number;
    /** Of this cloth, if known (phi). [at least 0, at most 1.5] */
    vapour_efficiency?: number;
    /** Towel that belongs to these values. Default "none". */
    towel?: "none" | "wrapped" | "laid";
  };
  /** Fold tests of this machine, head and towel. */
  fold_test?: {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  } | {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  }[];
  /** What fold tests found. */
  calibration?: {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  } | {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  }[];
  /** No test of this head and towel yet: what is usual, and what others of the machine say. */
  prior?: {
    /** Name of the machine. Default "machine". */
    machine?: string;
    /** Name of the head. Default "head". */
    head?: string;
    /** Towel. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
    length_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  };
  /** Temperature of the item before. [celsius] [at least -20, at most 50] Default 20. */
  start_celsius?: number | string;
  /** The covering is damp to the hand. Default false. */
  damp?: boolean;
  /** Confidence of kill and of no harm. [at least 0.5, at most 0.99] Default 0.95. */
  confidence?: number;
  /** Size of the ensemble where no fold test gives it; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** Most water the covering may take up; 50 is an estimate, a hidden-spot test may show another. [grams per m2] [at least 5, at most 500] Default 50. */
  wetting_limit_grams_per_m2?: number | string;
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** An edge, as furniture gives it in `treat`. */
  edge: {
    /** What kind of edge. */
    kind: "seam" | "welt" | "tape_edge" | "fold" | "quilting" | "pleat" | "skirt" | "zip" | "label" | "handle" | "tuft" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap" | "wood_joint" | "screw_hole" | "drawer_runner" | "headboard_back" | "skirting_gap" | "carpet_edge" | "pile" | "curtain_heading" | "wall_joint" | "metal_joint" | "heap" | "electrical_cover";
    /** What covers it. */
    covering: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
    /** What lies behind the covering. Default "batting_foam". */
    fill?: "batting_foam" | "foam" | "wood" | "none";
    /** A finish of wood as furniture names it, or a key of the damage limits. */
    finish?: string;
    /** What a trial on a hidden spot of this covering or finish showed. Default "not_tried". */
    hidden_spot?: "not_tried" | "unharmed" | "marked";
    /** For which the steaming head was held still on a hidden spot, which then dried without a mark. [seconds] [at least 1, at most 120] */
    hidden_spot_seconds?: number | string;
    /** Check whether vapour can enter the covering at all. */
    water_drop?: {
      /** A drop of water on the face of the covering. Default "not_tried". */
      face?: "not_tried" | "soaks" | "beads";
      /** The back of the covering, seen at a hem, a zip or under the dust cover. Default "not_seen". */
      back?: "not_seen" | "open" | "coated";
      /** Until the drop had soaked in. [seconds] [at least 0, at most 3600] */
      seconds?: number | string;
    };
    /** The layers themselves, if known; then target_depth_metres too. [1 to 12 entries] */
    stack?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Deepest place where an egg may lie. [metres] [more than 0, at most 0.2] */
    target_depth_metres?: number | string;
    /** By a hidden-spot wetting test of this covering. [grams per m2] [at least 5, at most 500] */
    wetting_limit_grams_per_m2?: number | string;
  };
  /** Of the edge; left out: as far as the passes reach. [metres] [more than 0, at most 100] */
  length_metres?: number | string;
  /** What was done, in order. [0 to 50 entries] */
  passes: {
    /** Where the head was when; between two marks it moved evenly. [2 to 1000 entries] */
    marks?: {
      /** Place of the head's middle, from the start of the edge. [metres] */
      at_metres: number | string;
      /** From the start of the pass. [seconds] [at least 0, at most 86400] */
      seconds: number | string;
      /** What happened since the mark before is not known. Default false. */
      interrupted?: boolean;
      /** A live bug was seen behind the head here. Default false. */
      saw_live_bug?: boolean;
    }[];
    /** Way of an even pass. [metres] [more than 0, at most 100] */
    length_metres?: number | string;
    /** Time of an even pass. [seconds] [more than 0, at most 86400] */
    seconds?: number | string;
    /** Where an even pass began. [metres] [at least 0, at most 100] Default 0. */
    from_metres?: number | string;
    /** Towel of this pass; left out: that of the fold test. */
    towel?: "none" | "wrapped" | "laid";
    /** When the pass began; without it passes are judged one by one. */
    at?: number | string | string;
    /** A live bug was seen behind the head. Default false. */
    saw_live_bug?: boolean;
  }[];
  /** Gun or palm behind the head. [1 to 50 entries] */
  spot_readings?: {
    /** What an infrared gun showed. [celsius] [at least -20, at most 150] */
    gun_celsius?: number | string;
    /** What the back of a hand said; only after the time for a bare hand. */
    palm?: "cold" | "warm" | "hot";
    /** Where along the edge. [metres] [at least 0, at most 100] Default 0.1. */
    at_metres?: number | string;
    /** After the head had left the place. [seconds] [at least 0, at most 600] */
    seconds_after: number | string;
    /** Which pass, from 1; left out: the last that went there. [at least 1, at most 50] */
    pass?: number;
    /** Diameter of what the gun looks at. [metres] [more than 0, at most 1] Default 0.02. */
    spot_metres?: number | string;
    /** Emissivity set on the gun. [at least 0.3, at most 1] Default 0.95. */
    emissivity_setting?: number;
    /** Width of what was steamed. [metres] [more than 0, at most 2] Default 0.1. */
    strip_metres?: number | string;
  }[];
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type AsTreatedAnswer = {
  /** What the verdict stands on. */
  basis: "fold_test" | "same_machine" | "prior" | "head";
  /** Of the edge: that of its worst stretch. */
  verdict: "lethal" | "short" | "not_proven";
  /** What decided. */
  reason: {
    /** Short name for programs. */
    code: string;
    /** A sentence for people. */
    text: string;
  };
  /** Harm, apart from kill. */
  harm: "none" | "scorch" | "soak" | "barred" | "unknown";
  /** Of the hardest stage at the worst stretch, at most 0.99. */
  kill_probability: number | null;
  /** At the worst stretch by its best single visit, contact and escape included. */
  kill_by_stage: {
    /** Probability, printed at most as 0.99. */
    egg: number;
    /** Probability, printed at most as 0.99. */
    nymph: number;
    /** Probability, printed at most as 0.99. */
    adult: number;
  } | null;
  /** Shown apart. */
  engorged_adult: {
    /** Probability, printed at most as 0.99. */
    kill_probability: number;
    /** What follows. */
    text: string;
  } | null;
  /** The edge is lethal down to here at least. [metres] */
  depth_reached_metres: number | null;
  /** Deepest place where eggs may lie. [metres] */
  target_depth_metres: number | null;
  /** Of the edge. [metres] */
  length_metres: number;
  /** Length of its lethal stretches. [metres] */
  lethal_metres: number;
  /** From the start of the edge to its end. */
  stretches: {
    /** Start of the stretch. [metres] */
    from_metres: number;
    /** Its end. [metres] */
    to_metres: number;
    /** Times the head surely went over it. */
    visits: number;
    /** Of these visits. [metres per second] */
    slowest_metres_per_second: number | null;
    /** Of these visits. [metres per second] */
    fastest_metres_per_second: number | null;
    /** Visits whose doses the verdict adds. */
    counted_together: number;
    /** Of the stretch. */
    verdict: "lethal" | "short" | "not_proven";
    /** Why it is not lethal. */
    cause: "none" | "too_fast" | "near_limit" | "unclear_record" | "not_passed" | "saw_live_bug" | "no_model";
    /** Lethal down to here, by the best single visit. [metres] */
    depth_reached_metres: number;
    /** Harm, apart from kill. */
    harm: "none" | "scorch" | "soak" | "barred" | "unknown";
  }[];
  /** What to do again. */
  redo: {
    /** Start. [metres] */
    from_metres: number;
    /** End. [metres] */
    to_metres: number;
    /** Why it is not lethal. */
    cause: "none" | "too_fast" | "near_limit" | "unclear_record" | "not_passed" | "saw_live_bug" | "no_model";
    /** What to do. */
    text: string;
  }[];
  /** What the surface said. */
  spot_readings: {
    /** Read, and expected before. */
    readings: {
      /** What was read. */
      shown: string;
      /** 5 %, half, 95 % of what was expected. [3 entries] */
      expected_celsius: number[];
    }[];
    /** Log10(R/2) of the worst stretch without the readings. */
    lethal_margin_before: number;
    /** With them. */
    lethal_margin_after: number;
    /** What was learnt. */
    text: string;
    /** Of these heads, as the readings weigh them: for `pace` of what is left, in place of those before. */
    calibrations: {
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    }[];
  } | null;
  /** What the surface bears, and where that is written. */
  finish: {
    /** Covering or finish. */
    title: string;
    /** What follows for steaming. */
    action: "allow" | "short_dwell" | "avoid" | "stop" | "hidden_test" | "ask";
    /** What a trial on a hidden spot of this covering or finish showed. */
    hidden_spot: "not_tried" | "unharmed" | "marked";
    /** What its surface bears. [celsius] */
    surface_celsius: number | null;
    /** Above that. [seconds] */
    seconds_allowed: number;
    /** What this rests on, the decisive one first. */
    limits: {
      /** Key of the damage limits. */
      key: string;
      /** What is harmed. */
      title: string;
      /** From which temperature. [celsius] */
      limit_celsius: number | null;
      /** Under which condition; may be empty. */
      when: string;
      /** How. */
      effect: string;
      /** Key of the bibliography. */
      source: string;
      /** Where in it. */
      locator: string;
      /** How good the number is: measured, handbook, practice, estimate, from memory. */
      quality: string;
    }[];
    /** In words. */
    text: string;
  };
  /** The water-drop check. */
  water_drop: {
    /** A drop of water on the face of the covering. */
    face: "not_tried" | "soaks" | "beads";
    /** The back of the covering, seen at a hem, a zip or under the dust cover. */
    back: "not_seen" | "open" | "coated";
    /** Kill is computed as if no vapour entered. */
    shuts_vapour_out: boolean;
    /** What the check says, and what else to look at. */
    text: string;
  };
  /** Samples that the weights leave. */
  effective_samples: number;
  /** Size of the ensemble. */
  samples: number;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What a steamer gives, and when: heating up, steam, pauses, cooling, refills, first drips, towel changes. */
export type BoilerRequest = {
  /** Kind of tank. */
  tank: "continuous" | "pressurised" | "kettle";
  /** Electric power. [watts] [at least 200, at most 12000] */
  power_watts: number | string;
  /** Full tank or reservoir (one litre is one kilogram). [kilograms] [at least 0.1, at most 50] */
  water_kilograms: number | string;
  /** Working pressure above the room; a kettle has none. [pascal] [at least 0, at most 1200000] Default 300000. */
  gauge_pascal?: number | string;
  /** The machine on a scale before and after some minutes of steady steam. */
  weighing?: {
    /** Machine before. [kilograms] [at least 0, at most 200] */
    before_kilograms: number | string;
    /** Machine after. [kilograms] [at least 0, at most 200] */
    after_kilograms: number | string;
    /** Of steam between. [minutes] [more than 0, at most 60] */
    minutes: number | string;
  };
  /** Steam while the trigger is pulled, if known. [grams per second] [at least 0.01, at most 5] */
  supply_grams_per_second?: number | string;
  /** Share of the working time with the trigger pulled. [at least 0.05, at most 1] Default 0.7. */
  trigger_share?: number;
  /** Minutes of steam that the work needs. [minutes] [at least 0.1, at most 480] */
  steam_minutes?: number | string;
  /** Or: length of all edges. [metres] [more than 0, at most 2000] */
  length_metres?: number | string;
  /** And their pace. [metres per second] [at least 0.001, at most 0.5] */
  pace_metres_per_second?: number | string;
  /** Water from the tap. [celsius] [at least 1, at most 60] Default 15. */
  cold_water_celsius?: number | string;
  /** Of the room. [celsius] [at least -10, at most 50] Default 20. */
  room_celsius?: number | string;
  /** Before opening, by the maker; counts if longer than what is computed. [minutes] [at least 0, at most 360] */
  cooling_minutes?: number | string;
  /** A head with a towel wrapped round it. */
  towelled_head?: {
    /** Along the travel. [metres] [at least 0.01, at most 0.6] */
    length_metres: number | string;
    /** Across. [metres] [at least 0.01, at most 0.6] */
    width_metres: number | string;
  };
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type BoilerAnswer = {
  /** Steam of the machine. */
  supply: {
    /** While the trigger is pulled. [grams per second] */
    grams_per_second: number;
    /** Where it comes from. */
    basis: "weighing" | "given" | "power";
    /** What the power keeps up without pauses. [grams per second] */
    kept_up_grams_per_second: number;
  };
  /** In order of time. */
  phases: {
    /** What happens. */
    kind: "heat_up" | "steam" | "recover" | "steam_with_pauses" | "cool" | "refill";
    /** Since switching on. [minutes] */
    from_minutes: number;
    /** How long. [minutes] */
    minutes: number;
    /** Of them with the trigger pulled. [minutes] */
    steam_minutes: number;
    /** In tank or reservoir at its end. [kilograms] */
    water_left_kilograms: number;
  }[];
  /** From switching on to the end. [minutes] */
  minutes: number;
  /** Of steam. [minutes] */
  steam_minutes: number;
  /** Without steam: heating up, pauses, cooling, refills. [minutes] */
  waiting_minutes: number;
  /** Times at the tap. */
  refills: number;
  /** That left as steam. [kilograms] */
  water_kilograms: number;
  /** Electric, in joules. */
  energy_joules: number;
  /** Water before steam: into a bucket, never on the work. */
  drips: {
    /** Hose and head at room temperature. */
    cold_start: {
      /** Until steam comes instead of water. [seconds] */
      seconds: number;
      /** That drips and spits until then. [kilograms] */
      water_kilograms: number;
    };
    /** After a rest of ten minutes. */
    after_ten_minutes: {
      /** Until steam comes instead of water. [seconds] */
      seconds: number;
      /** That drips and spits until then. [kilograms] */
      water_kilograms: number;
    };
  };
  /** The towel. */
  towel: {
    /** Of steam until it is soaked. [minutes] */
    likely_minutes: number;
    /** Of steam: 19 of 20 last longer; plan with this. [minutes] */
    change_after_minutes: number;
    /** At the pace given. [metres] */
    change_after_metres: number | null;
    /** When soaked. [kilograms] */
    holds_kilograms: number;
  } | null;
  /** In words. */
  text: string;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What comes out of a head: speed at the cloth, whether loose bugs scatter, how far a crack is heated, strips side by side. */
export type JetRequest = {
  /** Where the steam comes out. */
  opening: {
    /** Form of the opening. */
    kind: "round" | "slot";
    /** Diameter of the hole, or gap of the slot. [metres] [at least 0.0001, at most 0.05] */
    size_metres: number | string;
    /** Of a slot. [metres] [at least 0.0001, at most 0.6] Default 0.2. */
    width_metres?: number | string;
  };
  /** Of steam. [grams per second] [at least 0.01, at most 5] Default 0.6. */
  supply_grams_per_second?: number | string;
  /** Where the speed is asked. [1 to 50 entries] Default [0.0,0.03,0.06,0.1]. */
  distances_metres?: (number | string)[];
  /** A crack to be steamed. */
  crack?: {
    /** Width of the crack. [metres] [at least 1e-05, at most 0.1] */
    gap_metres: number | string;
    /** Key of a material: its walls. Default "softwood". */
    material?: string;
    /** That the head stands over its mouth. [seconds] [at least 0.05, at most 3600] Default 2. */
    seconds?: number | string;
    /** Of steam through it, if it is open behind. [metres per second] [at least 0, at most 50] */
    through_metres_per_second?: number | string;
    /** Of the steam at its mouth. [celsius] [at least 40, at most 110] Default 97. */
    dew_celsius?: number | string;
    /** Of its walls before. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
  };
  /** Strips side by side. */
  strips?: {
    /** Of the head, across the travel. [metres] [more than 0, at most 0.6] */
    width_metres: number | string;
    /** Width of the face to cover. [metres] [more than 0, at most 10] */
    face_metres: number | string;
    /** Key of the material on top. Default "polyester_fabric". */
    material?: string;
    /** Under the head. [seconds] [at least 0.05, at most 3600] Default 3. */
    seconds?: number | string;
  };
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type JetAnswer = {
  /** Speed of the stream. */
  speeds: {
    /** From the opening. [metres] */
    distance_metres: number;
    /** On the axis, no more than this. [metres per second] */
    metres_per_second: number | null;
    /** What the stream does. */
    scatter: "stays" | "may_scatter" | "scatters";
  }[];
  /** For comparison. */
  moved_at: {
    /** A body. */
    who: string;
    /** That moves it. [metres per second] */
    metres_per_second: number;
  }[];
  /** The crack. */
  crack: {
    /** Heated at most so deep, closed behind. [metres] */
    closed_reach_metres: number;
    /** Steam used up after so much, open behind. [metres] */
    open_reach_metres: number | null;
    /** In words. */
    text: string;
  } | null;
  /** Strips. */
  strips: {
    /** Of the head's width. [metres] */
    counted_width_metres: number;
    /** Of neighbouring strips. [metres] */
    overlap_metres: number;
    /** That cover the face; 0: this head has no width that counts. */
    strips: number;
    /** In words. */
    text: string;
  } | null;
  /** In words. */
  text: string;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** The kinds of items that furniture builds, and what each of them takes. */
export type CatalogueRequest = {
  /** Only kinds of this group. */
  group?: "bed" | "seat" | "storage" | "small" | "room";
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type CatalogueAnswer = {
  /** Group by group. */
  kinds: {
    /** Word for the question furniture. */
    item: string;
    /** In words. */
    title: string;
    /** Where it stands in a list. */
    group: "bed" | "seat" | "storage" | "small" | "room";
    /** Lengths. */
    measures: {
      /** Key of a request of the question furniture. */
      key: string;
      /** What it means. */
      text: string;
      /** If left out. [metres] */
      usual_metres: number;
      /** Smallest accepted. [metres] */
      lowest_metres: number;
      /** Largest accepted. [metres] */
      highest_metres: number;
      /** Where the usual value comes from. */
      source: string;
    }[];
    /** Numbers. */
    counts: {
      /** Key of a request. */
      key: string;
      /** What it counts. */
      text: string;
      /** If left out. */
      usual: number;
      /** Fewest. */
      lowest: number;
      /** Most. */
      highest: number;
    }[];
    /** Switches. */
    options: {
      /** Key of a request. */
      key: string;
      /** What is there. */
      text: string;
    }[];
    /** Usual mattress size, where it takes one. */
    size?: string;
    /** Usual covering, where it takes one. */
    covering?: string;
    /** Takes the finish of its wood or metal. */
    finish: boolean;
  }[];
  /** Sizes that beds take. */
  sizes: {
    /** Word. */
    size: string;
    /** In words. */
    title: string;
    /** Across. [metres] */
    width_metres: number;
    /** Foot to head. [metres] */
    length_metres: number;
  }[];
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** A piece of furniture or a part of a room in three dimensions, with every edge that a steam head runs along. */
export type FurnitureRequest = {
  /** Kind of item. */
  item: "mattress" | "floor_mattress" | "box_spring" | "slatted_frame" | "metal_frame" | "headboard_wood" | "headboard_upholstered" | "bunk_bed" | "cot" | "sofa_bed" | "futon" | "hospital_bed" | "sofa" | "sectional" | "armchair" | "recliner" | "desk_chair" | "dining_chair" | "ottoman" | "vehicle_seat" | "night_table" | "dresser" | "wardrobe" | "bookcase" | "desk" | "clutter" | "luggage" | "wheelchair" | "stroller" | "curtain" | "picture" | "baseboard" | "carpet_edge" | "door_frame" | "socket_plate" | "wall_joint";
  /** Beds: named mattress size; the kind's usual one if left out. */
  size?: "twin" | "twin_xl" | "full" | "queen" | "king" | "california_king" | "80x200" | "90x190" | "90x200" | "100x200" | "120x200" | "140x200" | "160x200" | "180x200";
  /** Across; wins over size (mattress, floor_mattress, box_spring, slatted_frame, metal_frame, headboard_wood, headboard_upholstered, bunk_bed, futon); inside, across (cot); over the arms (sofa_bed, sofa, armchair, recliner); of the platform (hospital_bed); over all, along the back (sectional); left to right (desk_chair, dining_chair, ottoman, vehicle_seat, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller); over the wheels (wheelchair); one panel as it hangs (curtain); of the frame (picture); of the opening (door_frame); of the plate (socket_plate). [metres] [at least 0, at most 20] */
  width_metres?: number | string;
  /** Foot to head; wins over size (mattress, floor_mattress, box_spring, slatted_frame, metal_frame, bunk_bed, futon); inside, foot to head (cot); of the platform (hospital_bed); over all, front to back (sectional); heading to hem (curtain); along the wall (baseboard, carpet_edge, wall_joint). [metres] [at least 0, at most 20] */
  length_metres?: number | string;
  /** Of the mattress (mattress, floor_mattress, futon); of posts and rails (headboard_wood); of the padded board (headboard_upholstered). [metres] [at least 0, at most 20] */
  thickness_metres?: number | string;
  /** Floor to its underside; 0 lies on the floor (mattress). [metres] [at least 0, at most 20] */
  base_height_metres?: number | string;
  /** Of the base alone (box_spring); floor to the top of the rails (slatted_frame, metal_frame); floor to its top (headboard_wood, headboard_upholstered, desk_chair, dining_chair, ottoman, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller, baseboard); floor to the top of the posts (bunk_bed); floor to the top of the sides (cot); floor to the top of the back cushions (sofa_bed, sofa, sectional, armchair, recliner); floor to the platform as it stands now (hospital_bed); floor to the top of the head rest (vehicle_seat); floor to the grips (wheelchair); of the frame (picture); of the opening (door_frame); of the plate (socket_plate); floor to ceiling (wall_joint). [metres] [at least 0, at most 20] */
  height_metres?: number | string;
  /** Floor to the underside (box_spring, sofa_bed, sofa, armchair, recliner, ottoman, night_table, dresser). [metres] [at least 0, at most 20] */
  leg_height_metres?: number | string;
  /** Front to back (sofa_bed, sofa, armchair, recliner, desk_chair, dining_chair, ottoman, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller); of one run (sectional); of the cushion (vehicle_seat); of the seat (wheelchair). [metres] [at least 0, at most 20] */
  depth_metres?: number | string;
  /** Floor to the top of the seat cushions (sofa_bed, sofa, sectional, armchair, recliner); floor to the top of the seat (futon, desk_chair, dining_chair); floor to the top of the cushion (vehicle_seat); floor to the seat (wheelchair). [metres] [at least 0, at most 20] */
  seat_height_metres?: number | string;
  /** Floor to the top of the arms (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
  arm_height_metres?: number | string;
  /** One arm (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
  arm_width_metres?: number | string;
  /** Boxing of the seat cushions (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
  seat_cushion_thickness_metres?: number | string;
  /** Boxing of the back cushions (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
  back_cushion_thickness_metres?: number | string;
  /** Seats side by side (sofa_bed, sofa); seats along the back, without the corner (sectional). [at least 1, at most 12] */
  seats?: number;
  /** Seats of the return, without the corner (sectional). [at least 1, at most 12] */
  return_seats?: number;
  /** Drawers one above the other (night_table); drawers one above the other in each column (dresser); drawers of the pedestal (desk). [at least 1, at most 12] */
  drawers?: number;
  /** Columns of drawers (dresser). [at least 1, at most 12] */
  columns?: number;
  /** Doors side by side (wardrobe). [at least 1, at most 12] */
  doors?: number;
  /** Shelves between top and bottom (bookcase). [at least 1, at most 12] */
  shelves?: number;
  /** Panels side by side (curtain). [at least 1, at most 12] */
  panels?: number;
  /** Rows of buttons or tufts on it (headboard_upholstered, sofa_bed, sofa, armchair, recliner). */
  tufted?: boolean;
  /** A skirt hangs to the floor (sofa, armchair). */
  skirted?: boolean;
  /** It has arm rests (desk_chair). */
  arms?: boolean;
  /** The lid opens (ottoman). */
  storage?: boolean;
  /** Cloth; mattress_tick for mattresses and bases, unknown for everything else if left out. */
  covering?: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
  /** Finish of its wood or metal. */
  finish?: "bare" | "oil" | "wax" | "shellac" | "lacquer" | "varnish" | "paint" | "unknown";
  /** Most water the covering takes up without a mark, by a hidden-spot wetting test. [grams per m2] [at least 5, at most 500] */
  wetting_limit_grams_per_m2?: number | string;
  /** For which the steaming head was held still on a hidden spot, which then dried without a mark. [seconds] [at least 1, at most 120] */
  hidden_spot_seconds?: number | string;
  /** Check whether vapour can enter the covering at all. */
  water_drop?: {
    /** A drop of water on the face of the covering. Default "not_tried". */
    face?: "not_tried" | "soaks" | "beads";
    /** The back of the covering, seen at a hem, a zip or under the dust cover. Default "not_seen". */
    back?: "not_seen" | "open" | "coated";
    /** Until the drop had soaked in. [seconds] [at least 0, at most 3600] */
    seconds?: number | string;
  };
  /** What a person changed of its edges. [0 to 400 entries] */
  changes?: {
    /** What was changed. */
    change: "added" | "renamed" | "split" | "left_out";
    /** Name of an added edge. */
    id?: string;
    /** The edge that is renamed, split or left out. */
    edge?: string;
    /** Of an added or renamed edge. */
    title?: string;
    /** Of an added edge. Default "seam". */
    kind?: "seam" | "welt" | "tape_edge" | "fold" | "tuft" | "quilting" | "pleat" | "skirt" | "zip" | "handle" | "label" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap" | "wood_joint" | "metal_joint" | "screw_hole" | "drawer_runner" | "headboard_back" | "skirting_gap" | "carpet_edge" | "curtain_heading" | "wall_joint" | "heap" | "electrical_cover";
    /** Of an added edge; the first part if left out. */
    part?: string;
    /** Of an added edge. [metres] [more than 0, at most 100] */
    length_metres?: number | string;
    /** Of an added edge. [metres] [at least 0, at most 10] Default 0.5. */
    height_metres?: number | string;
    /** Of an added edge. Default true. */
    in_sight?: boolean;
    /** Where a split lies along the edge; the middle if left out. [at least 0, at most 1] */
    at_share?: number;
  }[];
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type FurnitureAnswer = {
  /** As asked. */
  item: string;
  /** In words. */
  title: string;
  /** Corners. */
  vertices_metres: number[][];
  /** Faces of convex bodies that touch and do not overlap. */
  faces: {
    /** Unique. */
    name: string;
    /** Its part. */
    part: string;
    /** Faces of one body close it. */
    body: string;
    /** Counter-clockwise from outside. [3 to 1000 entries] */
    vertices: number[];
  }[];
  /** Parts to open one by one. */
  parts: {
    /** As faces and edges name it. */
    name: string;
    /** In words. */
    title: string;
  }[];
  /** Every edge, part by part. */
  edges: {
    /** Stable name, from build to build. */
    id: string;
    /** In words. */
    title: string;
    /** Kind of edge. */
    kind: "seam" | "welt" | "tape_edge" | "fold" | "tuft" | "quilting" | "pleat" | "skirt" | "zip" | "handle" | "label" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap" | "wood_joint" | "metal_joint" | "screw_hole" | "drawer_runner" | "headboard_back" | "skirting_gap" | "carpet_edge" | "curtain_heading" | "wall_joint" | "heap" | "electrical_cover";
    /** Name of its part. */
    part: string;
    /** Faces on which the line runs. */
    faces: string[];
    /** The line; the first point comes again at the end of a closed one; an added edge has none. [0 to 1000 entries] */
    points_metres: number[][];
    /** Along the line. [metres] [more than 0] */
    length_metres: number;
    /** Mean above the floor. [metres] [at least 0] */
    height_metres: number;
    /** Above the floor. [2 entries] */
    height_range_metres: number[];
    /** Reached without lifting a cushion, turning the item or opening anything. */
    in_sight: boolean;
    /** What lies between head and bug; handed on unchanged as `edge` of the question pace. */
    treat: {
      /** Kind of edge. */
      kind: "seam" | "welt" | "tape_edge" | "fold" | "tuft" | "quilting" | "pleat" | "skirt" | "zip" | "handle" | "label" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap" | "wood_joint" | "metal_joint" | "screw_hole" | "drawer_runner" | "headboard_back" | "skirting_gap" | "carpet_edge" | "curtain_heading" | "wall_joint" | "heap" | "electrical_cover";
      /** Cloth over it. */
      covering: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
      /** What lies under the cloth. */
      fill: "batting_foam" | "foam" | "wood" | "none";
      /** Finish of the wood or metal met there; electronics is barred. */
      finish?: "bare" | "oil" | "wax" | "shellac" | "lacquer" | "varnish" | "paint" | "unknown" | "electronics";
      /** By the wetting test of the item. [grams per m2] */
      wetting_limit_grams_per_m2?: number;
      /** By the hidden spot of the item. [seconds] */
      hidden_spot_seconds?: number;
      /** Check whether vapour can enter the covering at all. */
      water_drop?: {
        /** A drop of water on the face of the covering. Default "not_tried". */
        face?: "not_tried" | "soaks" | "beads";
        /** The back of the covering, seen at a hem, a zip or under the dust cover. Default "not_seen". */
        back?: "not_seen" | "open" | "coated";
        /** Until the drop had soaked in. [seconds] [at least 0, at most 3600] */
        seconds?: number;
      };
    };
  }[];
  /** What the item was built with. */
  dimensions: {
    /** What was measured. */
    name: string;
    /** As built. [metres] */
    value_metres: number;
    /** Where the value comes from. */
    source: string;
    /** Given, handbook, practice, estimate, from memory. */
    quality: string;
  }[];
  /** To be shown with the item. */
  cautions: {
    /** What to know before it is worked on. */
    text: string;
    /** Where it comes from. */
    source: string;
  }[];
  /** The water-drop check. */
  water_drop?: {
    /** A drop of water on the face of the covering. */
    face: "not_tried" | "soaks" | "beads";
    /** The back of the covering, seen at a hem, a zip or under the dust cover. */
    back: "not_seen" | "open" | "coated";
    /** Kill is computed as if no vapour entered. */
    shuts_vapour_out: boolean;
    /** What the check says, and what else to look at. */
    text: string;
  };
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What an inspection amounts to: how surely there are bed bugs, how many were counted, where the rest is expected, where to look next, what to beware of. */
export type SurveyRequest = {
  /** Rooms. [0 to 10000 entries] */
  rooms?: {
    /** Name in this request. */
    id: string;
  }[];
  /** What was listed. [0 to 10000 entries] */
  items: {
    /** Name in this request. */
    id: string;
    /** Kind of item. */
    kind: "mattress" | "floor_mattress" | "box_spring" | "slatted_frame" | "metal_frame" | "headboard_wood" | "headboard_upholstered" | "bunk_bed" | "cot" | "sofa_bed" | "futon" | "hospital_bed" | "sofa" | "sectional" | "armchair" | "recliner" | "desk_chair" | "dining_chair" | "ottoman" | "vehicle_seat" | "night_table" | "dresser" | "wardrobe" | "bookcase" | "desk" | "clutter" | "luggage" | "wheelchair" | "stroller" | "curtain" | "picture" | "baseboard" | "carpet_edge" | "door_frame" | "socket_plate" | "wall_joint";
    /** Id of its room. */
    room?: string;
    /** Its middle, from the room's left wall. [metres] [at least -1000, at most 1000] */
    x_metres?: number | string;
    /** Its middle, from the room's far wall. [metres] [at least -1000, at most 1000] */
    y_metres?: number | string;
    /** Somebody sleeps or long sits on it. Default false. */
    sleeps_here?: boolean;
    /** How many edges it has. [at least 1, at most 10000] */
    edges?: number;
  }[];
  /** Looks, in any order. [0 to 10000 entries] */
  evidence?: {
    /** Id of the item. */
    item?: string;
    /** Id of the room. */
    room?: string;
    /** Name of the edge; the whole place if left out. */
    edge?: string;
    /** Result of the look. */
    look: "found" | "none_seen" | "not_accessible";
    /** Live adults. [at least 0, at most 100000] Default 0. */
    adults?: number;
    /** Live nymphs. [at least 0, at most 100000] Default 0. */
    nymphs?: number;
    /** Eggs that look alive. [at least 0, at most 100000] Default 0. */
    eggs?: number;
    /** Cast skins. [at least 0, at most 100000] Default 0. */
    cast_skins?: number;
    /** Dark spots of droppings. Default false. */
    spots?: boolean;
    /** Dead bugs only. Default false. */
    dead?: boolean;
    /** How it was looked. Default "eye". */
    how?: "eye" | "light_and_card" | "opened" | "trap" | "told";
    /** True: surely a bed bug; false: unsure; left out: nobody said. */
    certain?: boolean;
  }[];
  /** What traps held. [0 to 10000 entries] */
  traps?: {
    /** Id of the item above it. */
    item?: string;
    /** Id of the room. */
    room?: string;
    /** Adults. [at least 0, at most 100000] Default 0. */
    adults?: number;
    /** Nymphs. [at least 0, at most 100000] Default 0. */
    nymphs?: number;
    /** It was gone, moved or dusty, so it tells nothing. Default false. */
    missing?: boolean;
    /** True: surely bed bugs; false: unsure; left out: nobody said. */
    certain?: boolean;
  }[];
  /** Who and what is at risk. [0 to 10000 entries] */
  risks?: {
    /** Name in this request. */
    id: string;
    /** Who or what. */
    what: "infant" | "pregnant" | "frail" | "asthma" | "heat_sensitive" | "oxygen" | "pets" | "aquarium" | "medicines" | "pressurised_cans" | "ammunition" | "needles" | "smoke_detector" | "heat_detector" | "sprinkler" | "fuel_heater" | "loose_wiring" | "asbestos_or_lead" | "mould" | "weak_floor" | "other";
    /** Id of the room. */
    room?: string;
    /** Id of the item. */
    item?: string;
    /** Said to be dealt with. Default false. */
    settled?: boolean;
    /** Role of who said so. */
    settled_by?: string;
  }[];
  /** Whether bugs were fought here before. Default "not_known". */
  treated_before?: "yes" | "no" | "not_known";
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type SurveyAnswer = {
  /** Of the home. */
  level: "confirmed" | "probable" | "old" | "suspected" | "none" | "not_looked";
  /** Adults and nymphs counted by eye and in traps. */
  live: number;
  /** Eggs counted that look alive. */
  eggs: number;
  /** Class of the count. */
  count_class: "none_counted" | "up_to_12" | "from_13_to_30" | "over_30";
  /** Places were not looked at: there may be more. */
  count_is_least: boolean;
  /** Of the home's bugs: expected in parts that are not listed. */
  unlisted_share: number;
  /** In words. */
  text: string;
  /** As given. */
  items: {
    /** As given. */
    id: string;
    /** How surely. */
    level: "confirmed" | "probable" | "old" | "suspected" | "none" | "not_looked";
    /** Adults and nymphs counted. */
    live: number;
    /** Eggs counted that look alive. */
    eggs: number;
    /** False: somebody could not look at it. */
    reached: boolean;
    /** Of the home's bugs, before anything was seen. */
    prior_share: number;
    /** Of the home's bugs, expected now. */
    share: number;
    /** Standard deviation of that share. */
    share_sd: number;
    /** Chance that bugs in it would have been found so far. */
    covered: number;
    /** In words. */
    text: string;
  }[];
  /** As given. */
  rooms: {
    /** As given. */
    id: string;
    /** How surely. */
    level: "confirmed" | "probable" | "old" | "suspected" | "none" | "not_looked";
    /** Adults and nymphs counted. */
    live: number;
    /** Eggs counted that look alive. */
    eggs: number;
  }[];
  /** Where to look next, first first. */
  next: {
    /** The item. */
    id: string;
    /** From 1. */
    rank: number;
    /** Of the home's bugs: expected in it and not found so far. */
    missed_share: number;
    /** Why. */
    code: "not_looked" | "not_accessible" | "unsure" | "signs" | "trap" | "part" | "by_eye" | "live";
    /** How to look. */
    how: "eye" | "light_and_card" | "opened" | "trap" | "told";
    /** The reason in words. */
    text: string;
  }[];
  /** Hard stops first. */
  cautions: {
    /** Of the risk, as given. */
    id: string;
    /** Word of the risk. */
    what: string;
    /** How far it reaches. */
    stop: "hard" | "caution";
    /** Dealt with, a hard stop by the word of a role that decides; it is still shown. */
    settled: boolean;
    /** Roles whose word settles it. */
    settled_by: string[];
    /** Where, if given. */
    room?: string;
    /** Where, if given. */
    item?: string;
    /** What to know. */
    text: string;
    /** Who decides. */
    who_decides: string;
    /** Where the fact comes from. */
    source: string;
    /** Measured, handbook, practice, estimate, from memory. */
    quality: string;
  }[];
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** A pace or a reason for every edge of the items, top to bottom, with the minutes they take. */
export type PlanRequest = {
  /** A head with its towel, as the cloth feels it. */
  head?: {
    /** Contact length along the travel. [metres] [at least 0.002, at most 1] */
    length_metres: number | string;
    /** Dew temperature of the steam under the head. [celsius] [more than 0, at most 110] */
    dew_celsius: number | string;
    /** Effective exchange between steam and surface. [watts per m2 kelvin] [at least 10, at most 10000] */
    film_watts_per_m2_kelvin: number | string;
    /** Most heat the supply can bring. [watts per m2] [at least 1000, at most 1000000] */
    flux_cap_watts_per_m2: number | string;
    /** Speed at which steam is pushed into the cloth. [metres per second] [at least 0, at most 0.1] */
    forced_gas_metres_per_second: number | string;
    /** Reach of the weaker steam before and behind the head. [metres] [at least 0, at most 0.2] Default 0.02. */
    skirt_length_metres?: number | string;
    /** Strength of the skirt against that under the head. [at least 0, at most 1] Default 0.25. */
    skirt_factor?: number;
    /** Of this cloth, if known (phi). [at least 0, at most 1.5] */
    vapour_efficiency?: number;
    /** Towel that belongs to these values. Default "none". */
    towel?: "none" | "wrapped" | "laid";
  };
  /** Fold tests of this machine, head and towel. */
  fold_test?: {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  } | {
    /** Name of the machine. */
    machine: string;
    /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
    head: string | {
      /** Name of the head. */
      name: string;
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** Towel during the test. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** The thermometer; without it no lag is corrected, which can only read low. */
    probe?: {
      /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
      time_constant_seconds?: number | string;
      /** A dip into boiling water; boiling is taken at this air pressure. */
      dip?: {
        /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
        start_celsius?: number | string;
        /** Times and temperatures. [1 to 200 entries] */
        points?: {
          /** Since the tip went in. [seconds] [at least 0, at most 600] */
          seconds: number | string;
          /** Shown. [celsius] [at least -20, at most 120] */
          celsius: number | string;
        }[];
        /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_63?: number | string;
        /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
        seconds_to_90?: number | string;
      };
    };
    /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
    covering?: string;
    /** One layer of the test fold, when readings count layers. [1 entries] */
    cloth?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** What lies under the fold. [1 to 12 entries] */
    under?: {
      /** Key of a material of the data files. */
      material?: string;
      /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** Whether steam can enter. */
      permeable?: boolean;
      /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
      porosity?: number;
      /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
      tortuosity?: number;
      /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** The readings. [1 to 64 entries] */
    readings: {
      /** What was done; pass if left out, stationary if hold_seconds is given. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** Way of the head. [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** Time for that way. [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** How long the head rested. [seconds] [at least 10, at most 90] */
      hold_seconds?: number | string;
      /** What lay over the tip; not for a coupon. */
      layers?: number | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Of the real edge: its covering, or any name with layers given as a stack. */
      covering?: string;
      /** The plate; 1 mm of acrylic sheet if left out. */
      coupon?: {
        /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
        heat_capacity_joules_per_m2_kelvin: number;
      } | {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
      peak_celsius?: number | string;
      /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
      gun_celsius?: number | string;
      /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number | string;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
      spot_metres?: number | string;
      /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
      emissivity_setting?: number;
    }[];
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  }[];
  /** What fold tests found. */
  calibration?: {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  } | {
    /** Whether readings stand behind it; false: the prior. */
    tested: boolean;
    /** Machine, head and towel. */
    head_key: string;
    /** Head and covering. */
    cloth_key: string;
    /** Covering that was tested. */
    covering: string;
    /** Towel during the test. */
    towel: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
    tested_depth_metres?: number | string;
    /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
    mode: number[];
    /** Lower triangle of the Laplace map. [6 entries] */
    factor: number[][];
    /** Of the samples, sum 1. [16 to 4096 entries] */
    weights: number[];
  }[];
  /** No test of this head and towel yet: what is usual, and what others of the machine say. */
  prior?: {
    /** Name of the machine. Default "machine". */
    machine?: string;
    /** Name of the head. Default "head". */
    head?: string;
    /** Towel. Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
    length_metres?: number | string;
    /** Tests of other heads or towels of this machine: its boiler is one. [1 to 8 entries] */
    same_machine?: ({
      /** Whether readings stand behind it; false: the prior. */
      tested: boolean;
      /** Machine, head and towel. */
      head_key: string;
      /** Head and covering. */
      cloth_key: string;
      /** Covering that was tested. */
      covering: string;
      /** Towel during the test. */
      towel: "none" | "wrapped" | "laid";
      /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] */
      head_length_metres: number | string;
      /** Air pressure at the test. [pascal] [at least 50000, at most 110000] */
      pressure_pascal: number | string;
      /** Deepest tip of the readings in this covering. [metres] [at least 0, at most 0.2] */
      tested_depth_metres?: number | string;
      /** Most probable scores: the four unknowns as the tested covering shows them, then what the head's own dew temperature and film differ by. [6 entries] */
      mode: number[];
      /** Lower triangle of the Laplace map. [6 entries] */
      factor: number[][];
      /** Of the samples, sum 1. [16 to 4096 entries] */
      weights: number[];
    } | {
      /** Name of the machine. */
      machine: string;
      /** The head; without a size, 80 mm along the travel and 200 mm across (estimate). */
      head: string | {
        /** Name of the head. */
        name: string;
        /** Contact length along the travel. [metres] [at least 0.01, at most 0.6] Default 0.08. */
        length_metres?: number | string;
        /** Across the travel. [metres] [at least 0.005, at most 0.6] Default 0.2. */
        width_metres?: number | string;
      };
      /** Towel during the test. Default "none". */
      towel?: "none" | "wrapped" | "laid";
      /** The thermometer; without it no lag is corrected, which can only read low. */
      probe?: {
        /** Time in which the probe covers 63 % of a jump. [seconds] [at least 0, at most 60] */
        time_constant_seconds?: number | string;
        /** A dip into boiling water; boiling is taken at this air pressure. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -20, at most 60] Default 20. */
          start_celsius?: number | string;
          /** Times and temperatures. [1 to 200 entries] */
          points?: {
            /** Since the tip went in. [seconds] [at least 0, at most 600] */
            seconds: number | string;
            /** Shown. [celsius] [at least -20, at most 120] */
            celsius: number | string;
          }[];
          /** Until 63 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number | string;
          /** Until 90 % of the way to boiling shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number | string;
        };
      };
      /** Temperature of the fold before each pass. [celsius] [at least -20, at most 50] Default 20. */
      start_celsius?: number | string;
      /** What the fold was made of: a covering of the furniture, or test_fold. Default "test_fold". */
      covering?: string;
      /** One layer of the test fold, when readings count layers. [1 entries] */
      cloth?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** What lies under the fold. [1 to 12 entries] */
      under?: {
        /** Key of a material of the data files. */
        material?: string;
        /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** Whether steam can enter. */
        permeable?: boolean;
        /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
        porosity?: number;
        /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
        tortuosity?: number;
        /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** Pace at which the practice target is judged. [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
      working_pace_metres_per_second?: number | string;
      /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
      samples?: number;
      /** The readings. [1 to 64 entries] */
      readings: {
        /** What was done; pass if left out, stationary if hold_seconds is given. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** Speed of the head. [metres per second] [at least 0.001, at most 0.3] */
        pace_metres_per_second?: number | string;
        /** Way of the head. [metres] [more than 0, at most 10] */
        distance_metres?: number | string;
        /** Time for that way. [seconds] [more than 0, at most 600] */
        seconds?: number | string;
        /** How long the head rested. [seconds] [at least 10, at most 90] */
        hold_seconds?: number | string;
        /** What lay over the tip; not for a coupon. */
        layers?: number | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Of the real edge: its covering, or any name with layers given as a stack. */
        covering?: string;
        /** The plate; 1 mm of acrylic sheet if left out. */
        coupon?: {
          /** Of a metal plate, J/m2K: 1 mm of aluminium 2400, of steel 3700. [at least 500, at most 4500] */
          heat_capacity_joules_per_m2_kelvin: number;
        } | {
          /** Key of a material of the data files. */
          material?: string;
          /** Thickness; a material's usual thickness if left out. [metres] [at least 1e-05, at most 0.5] */
          thickness_metres?: number | string;
          /** Heat capacity of the dry layer by volume. [joules per m3 kelvin] [at least 1000, at most 10000000] */
          heat_capacity_joules_per_m3_kelvin?: number | string;
          /** Conductivity of the dry layer. [watts per metre kelvin] [at least 0.005, at most 5] */
          conductivity_watts_per_metre_kelvin?: number | string;
          /** Whether steam can enter. */
          permeable?: boolean;
          /** Share of gas in the layer's volume; a permeable layer needs it. [at least 0.01, at most 0.999] */
          porosity?: number;
          /** Lengthening of the gas paths; a permeable layer needs it. [at least 1, at most 20] */
          tortuosity?: number;
          /** Water-holding scale W_h; a permeable layer needs it. [kilograms per m3] [at least 0.01, at most 200] */
          sorption_scale_kilograms_per_m3?: number | string;
        }[];
        /** Highest reading; of a stationary one the steady value; all kinds but surface need it. [celsius] [at least -20, at most 120] */
        peak_celsius?: number | string;
        /** Of a surface: what an infrared gun showed; its error, 2 K and what an unknown emissivity of 0.93 +- 0.03 makes, is an estimate. [celsius] [at least -20, at most 150] */
        gun_celsius?: number | string;
        /** Of a surface: what the back of a hand said, which tells only a wide interval; only after the time for a bare hand. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number | string;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] Default 0.02. */
        spot_metres?: number | string;
        /** Of a gun: the setting. [at least 0.3, at most 1] Default 0.95. */
        emissivity_setting?: number;
      }[];
      /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number | string;
      /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
      elevation_metres?: number | string;
    })[];
  };
  /** Temperature of the item before. [celsius] [at least -20, at most 50] Default 20. */
  start_celsius?: number | string;
  /** The covering is damp to the hand. Default false. */
  damp?: boolean;
  /** Confidence of kill and of no harm. [at least 0.5, at most 0.99] Default 0.95. */
  confidence?: number;
  /** Size of the ensemble where no fold test gives it; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** Most water the covering may take up; 50 is an estimate, a hidden-spot test may show another. [grams per m2] [at least 5, at most 500] Default 50. */
  wetting_limit_grams_per_m2?: number | string;
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** Request of the question furniture. [1 to 40 entries] */
  items: {
    /** Kind of item. */
    item: "mattress" | "floor_mattress" | "box_spring" | "slatted_frame" | "metal_frame" | "headboard_wood" | "headboard_upholstered" | "bunk_bed" | "cot" | "sofa_bed" | "futon" | "hospital_bed" | "sofa" | "sectional" | "armchair" | "recliner" | "desk_chair" | "dining_chair" | "ottoman" | "vehicle_seat" | "night_table" | "dresser" | "wardrobe" | "bookcase" | "desk" | "clutter" | "luggage" | "wheelchair" | "stroller" | "curtain" | "picture" | "baseboard" | "carpet_edge" | "door_frame" | "socket_plate" | "wall_joint";
    /** Beds: named mattress size; the kind's usual one if left out. */
    size?: "twin" | "twin_xl" | "full" | "queen" | "king" | "california_king" | "80x200" | "90x190" | "90x200" | "100x200" | "120x200" | "140x200" | "160x200" | "180x200";
    /** Across; wins over size (mattress, floor_mattress, box_spring, slatted_frame, metal_frame, headboard_wood, headboard_upholstered, bunk_bed, futon); inside, across (cot); over the arms (sofa_bed, sofa, armchair, recliner); of the platform (hospital_bed); over all, along the back (sectional); left to right (desk_chair, dining_chair, ottoman, vehicle_seat, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller); over the wheels (wheelchair); one panel as it hangs (curtain); of the frame (picture); of the opening (door_frame); of the plate (socket_plate). [metres] [at least 0, at most 20] */
    width_metres?: number | string;
    /** Foot to head; wins over size (mattress, floor_mattress, box_spring, slatted_frame, metal_frame, bunk_bed, futon); inside, foot to head (cot); of the platform (hospital_bed); over all, front to back (sectional); heading to hem (curtain); along the wall (baseboard, carpet_edge, wall_joint). [metres] [at least 0, at most 20] */
    length_metres?: number | string;
    /** Of the mattress (mattress, floor_mattress, futon); of posts and rails (headboard_wood); of the padded board (headboard_upholstered). [metres] [at least 0, at most 20] */
    thickness_metres?: number | string;
    /** Floor to its underside; 0 lies on the floor (mattress). [metres] [at least 0, at most 20] */
    base_height_metres?: number | string;
    /** Of the base alone (box_spring); floor to the top of the rails (slatted_frame, metal_frame); floor to its top (headboard_wood, headboard_upholstered, desk_chair, dining_chair, ottoman, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller, baseboard); floor to the top of the posts (bunk_bed); floor to the top of the sides (cot); floor to the top of the back cushions (sofa_bed, sofa, sectional, armchair, recliner); floor to the platform as it stands now (hospital_bed); floor to the top of the head rest (vehicle_seat); floor to the grips (wheelchair); of the frame (picture); of the opening (door_frame); of the plate (socket_plate); floor to ceiling (wall_joint). [metres] [at least 0, at most 20] */
    height_metres?: number | string;
    /** Floor to the underside (box_spring, sofa_bed, sofa, armchair, recliner, ottoman, night_table, dresser). [metres] [at least 0, at most 20] */
    leg_height_metres?: number | string;
    /** Front to back (sofa_bed, sofa, armchair, recliner, desk_chair, dining_chair, ottoman, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller); of one run (sectional); of the cushion (vehicle_seat); of the seat (wheelchair). [metres] [at least 0, at most 20] */
    depth_metres?: number | string;
    /** Floor to the top of the seat cushions (sofa_bed, sofa, sectional, armchair, recliner); floor to the top of the seat (futon, desk_chair, dining_chair); floor to the top of the cushion (vehicle_seat); floor to the seat (wheelchair). [metres] [at least 0, at most 20] */
    seat_height_metres?: number | string;
    /** Floor to the top of the arms (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
    arm_height_metres?: number | string;
    /** One arm (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
    arm_width_metres?: number | string;
    /** Boxing of the seat cushions (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
    seat_cushion_thickness_metres?: number | string;
    /** Boxing of the back cushions (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
    back_cushion_thickness_metres?: number | string;
    /** Seats side by side (sofa_bed, sofa); seats along the back, without the corner (sectional). [at least 1, at most 12] */
    seats?: number;
    /** Seats of the return, without the corner (sectional). [at least 1, at most 12] */
    return_seats?: number;
    /** Drawers one above the other (night_table); drawers one above the other in each column (dresser); drawers of the pedestal (desk). [at least 1, at most 12] */
    drawers?: number;
    /** Columns of drawers (dresser). [at least 1, at most 12] */
    columns?: number;
    /** Doors side by side (wardrobe). [at least 1, at most 12] */
    doors?: number;
    /** Shelves between top and bottom (bookcase). [at least 1, at most 12] */
    shelves?: number;
    /** Panels side by side (curtain). [at least 1, at most 12] */
    panels?: number;
    /** Rows of buttons or tufts on it (headboard_upholstered, sofa_bed, sofa, armchair, recliner). */
    tufted?: boolean;
    /** A skirt hangs to the floor (sofa, armchair). */
    skirted?: boolean;
    /** It has arm rests (desk_chair). */
    arms?: boolean;
    /** The lid opens (ottoman). */
    storage?: boolean;
    /** Cloth; mattress_tick for mattresses and bases, unknown for everything else if left out. */
    covering?: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
    /** Finish of its wood or metal. */
    finish?: "bare" | "oil" | "wax" | "shellac" | "lacquer" | "varnish" | "paint" | "unknown";
    /** Most water the covering takes up without a mark, by a hidden-spot wetting test. [grams per m2] [at least 5, at most 500] */
    wetting_limit_grams_per_m2?: number | string;
    /** For which the steaming head was held still on a hidden spot, which then dried without a mark. [seconds] [at least 1, at most 120] */
    hidden_spot_seconds?: number | string;
    /** Check whether vapour can enter the covering at all. */
    water_drop?: {
      /** A drop of water on the face of the covering. Default "not_tried". */
      face?: "not_tried" | "soaks" | "beads";
      /** The back of the covering, seen at a hem, a zip or under the dust cover. Default "not_seen". */
      back?: "not_seen" | "open" | "coated";
      /** Until the drop had soaked in. [seconds] [at least 0, at most 3600] */
      seconds?: number | string;
    };
    /** What a person changed of its edges. [0 to 400 entries] */
    changes?: {
      /** What was changed. */
      change: "added" | "renamed" | "split" | "left_out";
      /** Name of an added edge. */
      id?: string;
      /** The edge that is renamed, split or left out. */
      edge?: string;
      /** Of an added or renamed edge. */
      title?: string;
      /** Of an added edge. Default "seam". */
      kind?: "seam" | "welt" | "tape_edge" | "fold" | "tuft" | "quilting" | "pleat" | "skirt" | "zip" | "handle" | "label" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap" | "wood_joint" | "metal_joint" | "screw_hole" | "drawer_runner" | "headboard_back" | "skirting_gap" | "carpet_edge" | "curtain_heading" | "wall_joint" | "heap" | "electrical_cover";
      /** Of an added edge; the first part if left out. */
      part?: string;
      /** Of an added edge. [metres] [more than 0, at most 100] */
      length_metres?: number | string;
      /** Of an added edge. [metres] [at least 0, at most 10] Default 0.5. */
      height_metres?: number | string;
      /** Of an added edge. Default true. */
      in_sight?: boolean;
      /** Where a split lies along the edge; the middle if left out. [at least 0, at most 1] */
      at_share?: number;
    }[];
  }[];
  /** What an inspection found; it decides most of what matters first. [0 to 400 entries] */
  seen?: {
    /** Item, from 0. [at least 0, at most 39] */
    item_index: number;
    /** Edge of the item; every edge of the item if left out. */
    id?: string;
    /** What was seen. */
    what: "signs" | "live";
  }[];
  /** Paces that were asked for already; the others are computed. [0 to 1000 entries] */
  known_paces?: {
    /** `treat` of an edge. */
    treat: unknown;
    /** Answer of the question pace for it, by the same fold test or prior. */
    pace: {
      /** What the pace stands on. */
      basis: "fold_test" | "same_machine" | "prior" | "head";
      /** At the recommended pace; without a window at the fastest harmless one. */
      verdict_at_recommended: "lethal" | "short" | "not_proven";
      /** Harm, apart from kill. */
      harm_at_recommended: "none" | "scorch" | "soak" | "barred" | "unknown";
      /** Slowest and fastest. [2 entries] */
      window_metres_per_second: (number | string)[] | null;
      /** The pace to plan. [metres per second] */
      recommended_metres_per_second: number | string | null;
      /** How. */
      style: "glide" | "place_hold_move" | null;
      /** For place_hold_move. [seconds] */
      hold_seconds?: number | string;
      /** For place_hold_move. [metres] */
      move_metres?: number | string;
      /** Passes one after the other. */
      passes: number;
      /** Towel. */
      towel: "none" | "wrapped" | "laid";
      /** The two limits. */
      limited_by: {
        /** What forbids slower. */
        low: "soak" | "scorch" | "steady_hand" | null;
        /** What forbids faster. */
        high: "egg" | "mobile" | null;
      };
      /** Why there is no window, or what limits it. */
      reason: {
        /** Short name for programs. */
        code: string;
        /** A sentence for people. */
        text: string;
      } | null;
      /** The shape of the edge; absent where the layers were given. */
      shape?: {
        /** How the edge is modelled. */
        family: "flat_stack" | "fold" | "cylinder" | "crack" | "void" | "none";
        /** The place is at least as warm as computed; never proof of too cold. */
        bound: boolean;
        /** In words. */
        text: string;
        /** Places of such an edge that the figure says nothing about. */
        not_covered: string | null;
      };
      /** Alternatives, looked at with a smaller ensemble, when there is no window. */
      tried: {
        /** Towel. */
        towel: "none" | "wrapped" | "laid";
        /** Passes. */
        passes: number;
        /** Slowest and fastest. [2 entries] */
        window_metres_per_second: (number | string)[] | null;
        /** What was tried. */
        text: string;
      }[];
      /** Of the hardest stage, at most 0.99. */
      kill_probability_at_recommended: number | null;
      /** Contact and escape included. */
      kill_by_stage: {
        /** Probability, printed at most as 0.99. */
        egg: number;
        /** Probability, printed at most as 0.99. */
        nymph: number;
        /** Probability, printed at most as 0.99. */
        adult: number;
      } | null;
      /** Shown apart. */
      engorged_adult: {
        /** Probability, printed at most as 0.99. */
        kill_probability: number;
        /** What follows. */
        text: string;
      } | null;
      /** Water left at the recommended pace. */
      condensate_grams_per_m2: {
        /** Half. [grams per m2] */
        p50: number | string;
        /** 95 %. [grams per m2] */
        p95: number | string;
      } | null;
      /** The middle case before a fan, and a wet case in still air; no liquid wicks to the surface. [2 entries] */
      dry_minutes: (number | string)[] | null;
      /** What follows the pass. */
      after: {
        /** After the steam until nothing near the surface is hotter than 48 C, in the hottest of the likely cases; null: longer than a quarter of an hour. [seconds] */
        bare_hand_seconds: number | string | null;
        /** The surface behind the head. */
        surface_after_celsius: {
          /** After the steam. [seconds] */
          seconds_after: number | string;
          /** Of the surface, middle case. [celsius] */
          celsius: number | string;
        }[];
        /** Until dry before a fan, middle case. [minutes] */
        dry_minutes_fan: number | string | null;
        /** Until dry in still air, middle case. [minutes] */
        dry_minutes_still: number | string | null;
        /** It may stay wet for longer than a day in still air. */
        mould_caution: boolean;
        /** In words. */
        text: string;
      } | null;
      /** What the surface bears, and where that is written. */
      finish: {
        /** Covering or finish. */
        title: string;
        /** What follows for steaming. */
        action: "allow" | "short_dwell" | "avoid" | "stop" | "hidden_test" | "ask";
        /** What a trial on a hidden spot of this covering or finish showed. */
        hidden_spot: "not_tried" | "unharmed" | "marked";
        /** What its surface bears. [celsius] */
        surface_celsius: number | string | null;
        /** Above that. [seconds] */
        seconds_allowed: number | string;
        /** What this rests on, the decisive one first. */
        limits: {
          /** Key of the damage limits. */
          key: string;
          /** What is harmed. */
          title: string;
          /** From which temperature. [celsius] */
          limit_celsius: number | string | null;
          /** Under which condition; may be empty. */
          when: string;
          /** How. */
          effect: string;
          /** Key of the bibliography. */
          source: string;
          /** Where in it. */
          locator: string;
          /** How good the number is: measured, handbook, practice, estimate, from memory. */
          quality: string;
        }[];
        /** In words. */
        text: string;
      };
      /** The water-drop check. */
      water_drop: {
        /** A drop of water on the face of the covering. */
        face: "not_tried" | "soaks" | "beads";
        /** The back of the covering, seen at a hem, a zip or under the dust cover. */
        back: "not_seen" | "open" | "coated";
        /** Kill is computed as if no vapour entered. */
        shuts_vapour_out: boolean;
        /** What the check says, and what else to look at. */
        text: string;
      };
      /** Where the eggs are. */
      target_depth_metres: {
        /** Median of where eggs may sit. [metres] */
        p50: number | string;
        /** Target. [metres] */
        p90: number | string;
      } | null;
      /** When the target lies deeper than 1.5 times what was tested in this covering. */
      beyond_test?: {
        /** Deepest tip of the readings. [metres] */
        tested_depth_metres: number | string;
        /** In words. */
        text: string;
      };
      /** Samples that the weights leave. */
      effective_samples: number;
      /** Size of the ensemble. */
      samples: number;
      /** Over pace. */
      curve: {
        /** Planned pace. [metres per second] */
        pace_metres_per_second: number | string;
        /** Weight that kills. */
        lethal_share: number;
        /** Weight that does no harm. */
        harmless_share: number;
        /** Peak where the eggs are. */
        target_celsius_quantiles: {
          /** 5 % of the weight lies below. [celsius] */
          p05: number | string;
          /** 25 % of the weight lies below. [celsius] */
          p25: number | string;
          /** Half of the weight lies below. [celsius] */
          p50: number | string;
          /** 75 % of the weight lies below. [celsius] */
          p75: number | string;
          /** 95 % of the weight lies below. [celsius] */
          p95: number | string;
        };
        /** Water left by the pass. */
        condensate_grams_per_m2: {
          /** 5 % of the weight lies below. [grams per m2] */
          p05: number | string;
          /** 25 % of the weight lies below. [grams per m2] */
          p25: number | string;
          /** Half of the weight lies below. [grams per m2] */
          p50: number | string;
          /** 75 % of the weight lies below. [grams per m2] */
          p75: number | string;
          /** 95 % of the weight lies below. [grams per m2] */
          p95: number | string;
        };
      }[];
      /** The median case at the recommended pace (else one inch per second), as a request of the question pass; its depths are for the asker to choose. */
      middle_case: unknown;
      /** For orientation: what the customary pace would do (common practice). */
      one_inch_per_second: {
        /** Peak where the eggs are. */
        target_celsius: {
          /** 5 % of the weight lies below. [celsius] */
          p05: number | string;
          /** 25 % of the weight lies below. [celsius] */
          p25: number | string;
          /** Half of the weight lies below. [celsius] */
          p50: number | string;
          /** 75 % of the weight lies below. [celsius] */
          p75: number | string;
          /** 95 % of the weight lies below. [celsius] */
          p95: number | string;
        };
        /** Weight that kills. */
        lethal_share: number;
        /** Median. [grams per m2] */
        condensate_grams_per_m2: number | string;
        /** In words. */
        text: string;
      } | null;
      /** What holds the heat back, and what is least known, in words. */
      explanation: string | null;
      /** First-order sensitivity of the fastest pace, largest first; unknowns that a fold test has tied together share theirs. */
      what_matters: {
        /** Unknown. */
        what: "steam_temperature" | "exchange" | "cloth_vapour" | "forced_flow" | "layers" | "hand";
        /** Of the variance of the fastest pace. */
        share: number;
        /** In words. */
        text: string;
        /** What would tell. */
        remedy: string;
      }[];
      /** What would make it faster. */
      levers: {
        /** What is changed. */
        lever: "longer_head" | "second_pass" | "hotter_steam" | "better_exchange" | "opener_cloth" | "stronger_push" | "conducting_layers";
        /** Fastest pace of the middle case with it over that without. */
        factor: number;
        /** In words. */
        text: string;
      }[];
      [key: string]: unknown;
    };
  }[];
  /** Time left for steaming. [minutes] [at least 0, at most 1440] */
  minutes_left?: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type PlanAnswer = {
  /** Items as given. */
  items: {
    /** Name of the item. */
    title: string;
    /** Edges of the item. */
    edges: number;
    /** Of them with a pace. */
    edges_with_window: number;
  }[];
  /** Item by item, top to bottom. */
  edges: {
    /** Item, from 0. */
    item_index: number;
    /** Edge of the item. */
    id: string;
    /** Name of the edge. */
    title: string;
    /** Part of the item. */
    part: string;
    /** Length. [metres] */
    length_metres: number;
    /** Mean height above the floor. [metres] */
    height_metres: number;
    /** Seen without moving the item. */
    in_sight: boolean;
    /** Time for all passes, without changes of place; null without a pace. [seconds] */
    seconds: number | null;
    /** Which entry of `paces` is its pace. */
    pace_index: number;
    /** Share of the bugs on these edges that is expected here. */
    bug_share: number;
    /** Of all bugs on these edges, expected. */
    killed_share_per_minute: number;
    /** From 1, most killed per minute first; null without a pace. */
    rank: number | null;
  }[];
  /** The different answers; edges alike share one. */
  paces: {
    /** What the pace stands on. */
    basis: "fold_test" | "same_machine" | "prior" | "head";
    /** At the recommended pace; without a window at the fastest harmless one. */
    verdict_at_recommended: "lethal" | "short" | "not_proven";
    /** Harm, apart from kill. */
    harm_at_recommended: "none" | "scorch" | "soak" | "barred" | "unknown";
    /** Slowest and fastest. [2 entries] */
    window_metres_per_second: number[] | null;
    /** The pace to plan. [metres per second] */
    recommended_metres_per_second: number | null;
    /** How. */
    style: "glide" | "place_hold_move" | null;
    /** For place_hold_move. [seconds] */
    hold_seconds?: number;
    /** For place_hold_move. [metres] */
    move_metres?: number;
    /** Passes one after the other. */
    passes: number;
    /** Towel. */
    towel: "none" | "wrapped" | "laid";
    /** The two limits. */
    limited_by: {
      /** What forbids slower. */
      low: "soak" | "scorch" | "steady_hand" | null;
      /** What forbids faster. */
      high: "egg" | "mobile" | null;
    };
    /** Why there is no window, or what limits it. */
    reason: {
      /** Short name for programs. */
      code: string;
      /** A sentence for people. */
      text: string;
    } | null;
    /** The shape of the edge; absent where the layers were given. */
    shape?: {
      /** How the edge is modelled. */
      family: "flat_stack" | "fold" | "cylinder" | "crack" | "void" | "none";
      /** The place is at least as warm as computed; never proof of too cold. */
      bound: boolean;
      /** In words. */
      text: string;
      /** Places of such an edge that the figure says nothing about. */
      not_covered: string | null;
    };
    /** Alternatives, looked at with a smaller ensemble, when there is no window. */
    tried: {
      /** Towel. */
      towel: "none" | "wrapped" | "laid";
      /** Passes. */
      passes: number;
      /** Slowest and fastest. [2 entries] */
      window_metres_per_second: number[] | null;
      /** What was tried. */
      text: string;
    }[];
    /** Of the hardest stage, at most 0.99. */
    kill_probability_at_recommended: number | null;
    /** Contact and escape included. */
    kill_by_stage: {
      /** Probability, printed at most as 0.99. */
      egg: number;
      /** Probability, printed at most as 0.99. */
      nymph: number;
      /** Probability, printed at most as 0.99. */
      adult: number;
    } | null;
    /** Shown apart. */
    engorged_adult: {
      /** Probability, printed at most as 0.99. */
      kill_probability: number;
      /** What follows. */
      text: string;
    } | null;
    /** Water left at the recommended pace. */
    condensate_grams_per_m2: {
      /** Half. [grams per m2] */
      p50: number;
      /** 95 %. [grams per m2] */
      p95: number;
    } | null;
    /** The middle case before a fan, and a wet case in still air; no liquid wicks to the surface. [2 entries] */
    dry_minutes: number[] | null;
    /** What follows the pass. */
    after: {
      /** After the steam until nothing near the surface is hotter than 48 C, in the hottest of the likely cases; null: longer than a quarter of an hour. [seconds] */
      bare_hand_seconds: number | null;
      /** The surface behind the head. */
      surface_after_celsius: {
        /** After the steam. [seconds] */
        seconds_after: number;
        /** Of the surface, middle case. [celsius] */
        celsius: number;
      }[];
      /** Until dry before a fan, middle case. [minutes] */
      dry_minutes_fan: number | null;
      /** Until dry in still air, middle case. [minutes] */
      dry_minutes_still: number | null;
      /** It may stay wet for longer than a day in still air. */
      mould_caution: boolean;
      /** In words. */
      text: string;
    } | null;
    /** What the surface bears, and where that is written. */
    finish: {
      /** Covering or finish. */
      title: string;
      /** What follows for steaming. */
      action: "allow" | "short_dwell" | "avoid" | "stop" | "hidden_test" | "ask";
      /** What a trial on a hidden spot of this covering or finish showed. */
      hidden_spot: "not_tried" | "unharmed" | "marked";
      /** What its surface bears. [celsius] */
      surface_celsius: number | null;
      /** Above that. [seconds] */
      seconds_allowed: number;
      /** What this rests on, the decisive one first. */
      limits: {
        /** Key of the damage limits. */
        key: string;
        /** What is harmed. */
        title: string;
        /** From which temperature. [celsius] */
        limit_celsius: number | null;
        /** Under which condition; may be empty. */
        when: string;
        /** How. */
        effect: string;
        /** Key of the bibliography. */
        source: string;
        /** Where in it. */
        locator: string;
        /** How good the number is: measured, handbook, practice, estimate, from memory. */
        quality: string;
      }[];
      /** In words. */
      text: string;
    };
    /** The water-drop check. */
    water_drop: {
      /** A drop of water on the face of the covering. */
      face: "not_tried" | "soaks" | "beads";
      /** The back of the covering, seen at a hem, a zip or under the dust cover. */
      back: "not_seen" | "open" | "coated";
      /** Kill is computed as if no vapour entered. */
      shuts_vapour_out: boolean;
      /** What the check says, and what else to look at. */
      text: string;
    };
    /** Where the eggs are. */
    target_depth_metres: {
      /** Median of where eggs may sit. [metres] */
      p50: number;
      /** Target. [metres] */
      p90: number;
    } | null;
    /** When the target lies deeper than 1.5 times what was tested in this covering. */
    beyond_test?: {
      /** Deepest tip of the readings. [metres] */
      tested_depth_metres: number;
      /** In words. */
      text: string;
    };
    /** Samples that the weights leave. */
    effective_samples: number;
    /** Size of the ensemble. */
    samples: number;
    /** Over pace. */
    curve: {
      /** Planned pace. [metres per second] */
      pace_metres_per_second: number;
      /** Weight that kills. */
      lethal_share: number;
      /** Weight that does no harm. */
      harmless_share: number;
      /** Peak where the eggs are. */
      target_celsius_quantiles: {
        /** 5 % of the weight lies below. [celsius] */
        p05: number;
        /** 25 % of the weight lies below. [celsius] */
        p25: number;
        /** Half of the weight lies below. [celsius] */
        p50: number;
        /** 75 % of the weight lies below. [celsius] */
        p75: number;
        /** 95 % of the weight lies below. [celsius] */
        p95: number;
      };
      /** Water left by the pass. */
      condensate_grams_per_m2: {
        /** 5 % of the weight lies below. [grams per m2] */
        p05: number;
        /** 25 % of the weight lies below. [grams per m2] */
        p25: number;
        /** Half of the weight lies below. [grams per m2] */
        p50: number;
        /** 75 % of the weight lies below. [grams per m2] */
        p75: number;
        /** 95 % of the weight lies below. [grams per m2] */
        p95: number;
      };
    }[];
    /** The median case at the recommended pace (else one inch per second), as a request of the question pass; its depths are for the asker to choose. */
    middle_case: unknown;
    /** For orientation: what the customary pace would do (common practice). */
    one_inch_per_second: {
      /** Peak where the eggs are. */
      target_celsius: {
        /** 5 % of the weight lies below. [celsius] */
        p05: number;
        /** 25 % of the weight lies below. [celsius] */
        p25: number;
        /** Half of the weight lies below. [celsius] */
        p50: number;
        /** 75 % of the weight lies below. [celsius] */
        p75: number;
        /** 95 % of the weight lies below. [celsius] */
        p95: number;
      };
      /** Weight that kills. */
      lethal_share: number;
      /** Median. [grams per m2] */
      condensate_grams_per_m2: number;
      /** In words. */
      text: string;
    } | null;
    /** What holds the heat back, and what is least known, in words. */
    explanation: string | null;
    /** First-order sensitivity of the fastest pace, largest first; unknowns that a fold test has tied together share theirs. */
    what_matters: {
      /** Unknown. */
      what: "steam_temperature" | "exchange" | "cloth_vapour" | "forced_flow" | "layers" | "hand";
      /** Of the variance of the fastest pace. */
      share: number;
      /** In words. */
      text: string;
      /** What would tell. */
      remedy: string;
    }[];
    /** What would make it faster. */
    levers: {
      /** What is changed. */
      lever: "longer_head" | "second_pass" | "hotter_steam" | "better_exchange" | "opener_cloth" | "stronger_push" | "conducting_layers";
      /** Fastest pace of the middle case with it over that without. */
      factor: number;
      /** In words. */
      text: string;
    }[];
  }[];
  /** Edges with a pace. */
  edges_with_window: number;
  /** All edges. */
  edge_count: number;
  /** Share of edges with a pace. */
  share_with_window: number;
  /** Their length. [metres] */
  length_with_window_metres: number;
  /** Of all edges. [metres] */
  length_metres: number;
  /** For all edges with a pace, without changes of place. [minutes] */
  minutes: number;
  /** What leaves edges without a pace, most edges first. */
  closed_by: {
    /** Reason. */
    code: string;
    /** Edges without a pace for it. */
    edges: number;
    /** What it means and what would open them. */
    text: string;
  }[];
  /** One sentence. */
  summary: string;
  /** What matters most in the time left. */
  in_minutes_left?: {
    /** As given. [minutes] */
    minutes: number;
    /** By the edges chosen. [minutes] */
    minutes_used: number;
    /** What to treat, most per minute first. */
    edges: number[];
    /** Share of the bugs on all edges that is expected on these. */
    bug_share: number;
    /** In words. */
    text: string;
  };
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** Every method for every item: allowed, to be checked first, to be agreed or barred, with reasons and cost. */
export type MethodRequest = {
  /** Items of the home. [1 to 100 entries] */
  items: {
    /** Name by which risks and consents speak of it. */
    id?: string;
    /** Kind of item. */
    item: "mattress" | "floor_mattress" | "box_spring" | "slatted_frame" | "metal_frame" | "headboard_wood" | "headboard_upholstered" | "bunk_bed" | "cot" | "sofa_bed" | "futon" | "hospital_bed" | "sofa" | "sectional" | "armchair" | "recliner" | "desk_chair" | "dining_chair" | "ottoman" | "vehicle_seat" | "night_table" | "dresser" | "wardrobe" | "bookcase" | "desk" | "clutter" | "luggage" | "wheelchair" | "stroller" | "curtain" | "picture" | "baseboard" | "carpet_edge" | "door_frame" | "socket_plate" | "wall_joint";
    /** What people call it. */
    title?: string;
    /** Name of its room. */
    room?: string;
    /** A covering of the question furniture; what is usual if left out. */
    covering?: string;
    /** Finish of its wood or metal, or a key of the damage limits. */
    finish?: string;
    /** What a trial on a hidden spot of this covering or finish showed. Default "not_tried". */
    hidden_spot?: "not_tried" | "unharmed" | "marked";
    /** For which the steaming head was held still on a hidden spot, which then dried without a mark. [seconds] [at least 1, at most 120] */
    hidden_spot_seconds?: number | string;
    /** What an inspection found. Default "none". */
    seen?: "none" | "signs" | "live";
    /** What the piece is like, in place of what is usual. [0 to 40 entries] */
    traits?: string[];
    /** What the question plan found. */
    steam?: {
      /** Edges of the item. [at least 0, at most 10000] */
      edges: number;
      /** Of them with a pace. [at least 0] */
      edges_with_pace: number;
      /** Of steaming. [minutes] [at least 0] */
      minutes: number | string;
      /** Of the other edges. [metres] [at least 0] Default 0. */
      length_without_pace_metres?: number | string;
      /** Of an egg at the weakest edge with a pace. [at least 0, at most 1] */
      kill_probability?: number;
    };
    /** What a person decided. */
    chosen?: {
      /** Method that a person chose. */
      method: string;
      /** Why. */
      reason?: string;
    };
  }[];
  /** What there is. [0 to 20 entries] Default ["vacuum","steamer","cover","leg_traps"]. */
  equipment?: ("vacuum" | "steamer" | "chamber" | "dryer" | "washer" | "freezer" | "room_heaters" | "cover" | "leg_traps")[];
  /** Of the steamer. [watts] [at least 200, at most 12000] */
  steamer_watts?: number | string;
  /** Risks of the record. [0 to 400 entries] */
  risks?: {
    /** A word of the record's kind risk/1, such as pets. */
    what: string;
    /** Dealt with. Default false. */
    settled?: boolean;
    /** Role of who decided or approved. */
    settled_by?: string;
    /** Name of the item; of the room or home if left out. */
    item?: string;
    /** Name of the room. */
    room?: string;
  }[];
  /** Consents of the record. [0 to 400 entries] */
  consents?: {
    /** A word of the record's kind consent/1. */
    to: string;
    /** The answer. */
    answer: "given" | "refused" | "not_asked";
    /** Name of the item; of the room or home if left out. */
    item?: string;
    /** Name of the room. */
    room?: string;
  }[];
  /** What was tried before. [0 to 100 entries] */
  prior_treatments?: string[];
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type MethodAnswer = {
  /** Items as given. */
  items: {
    /** As given; empty: none. */
    id: string;
    /** Of the item. */
    title: string;
    /** Its kind. */
    item: string;
    /** Its traits. */
    traits: string[];
    /** What it gets. */
    method: "vacuum" | "steam" | "hot_chamber" | "dryer" | "wash" | "freezer" | "hot_room" | "encase" | "isolate" | "discard" | null;
    /** Every method, the vacuum first. */
    methods: {
      /** The method. */
      method: "vacuum" | "steam" | "hot_chamber" | "dryer" | "wash" | "freezer" | "hot_room" | "encase" | "isolate" | "discard";
      /** Its name. */
      title: string;
      /** What it does. */
      text: string;
      /** What it is for. */
      role: "first" | "kill" | "contain" | "remove";
      /** Whether it may be used. */
      standing: "allowed" | "needs_check" | "needs_consent" | "barred";
      /** From 1. */
      rank: number;
      /** What stands against it, the gravest first. */
      reasons: {
        /** What it is, for programs. */
        code: string;
        /** In words. */
        text: string;
        /** Key of the bibliography, or how it was judged. */
        source: string;
        /** Where in it. */
        locator: string;
        /** Measured, handbook, practice, estimate, from memory. */
        quality: string;
        /** Whether it may be used. */
        standing: "allowed" | "needs_check" | "needs_consent" | "barred";
        /** Why it matters. */
        grounds: "hazard" | "damage" | "practical";
      }[];
      /** Of an egg, as computed; null: not computed. */
      kill_probability: number | null;
      /** Reaches every place of the item, as far as is known. */
      whole: boolean;
      /** Steam by the practice of the trade alone. */
      unproven: boolean;
      /** What is known of it. */
      evidence: {
        /** All, egg, nymph or adult. */
        stage: string;
        /** In words. */
        text: string;
        /** At which. [celsius] */
        celsius: number | null;
        /** For how long. [minutes] */
        minutes: number | null;
        /** Key of the bibliography or of the data file. */
        source: string;
        /** Where in it. */
        locator: string;
        /** Measured, handbook, practice, estimate, from memory. */
        quality: string;
      }[];
      /** Of one person. [minutes] */
      hands_minutes: number;
      /** From start to end. [minutes] */
      clock_minutes: number;
      /** Electric, in joules. */
      energy_joules: number;
      /** How wet the thing gets. */
      wetting: "none" | "damp" | "wet";
      /** What it may do to the thing. */
      harm: string;
      /** Whether a person may choose it: all but what could hurt someone or cannot be done. */
      may_be_chosen: boolean;
    }[];
    /** What a person decided, and what it costs. */
    override: {
      /** As chosen. */
      method: string;
      /** As given; empty: none. */
      reason: string;
      /** Whether it was taken. */
      taken: boolean;
      /** Why not. */
      code: "taken" | "not_known" | "hazard" | "not_possible";
      /** What was offered first. */
      instead_of: "vacuum" | "steam" | "hot_chamber" | "dryer" | "wash" | "freezer" | "hot_room" | "encase" | "isolate" | "discard" | null;
      /** Against what was offered first; may be negative. [minutes] */
      extra_hands_minutes: number;
      /** Against what was offered first; null: not computed. */
      kill_probability_lost: number | null;
      /** What the choice costs. */
      text: string;
    } | null;
    /** One sentence. */
    text: string;
  }[];
  /** On dusts and sprays. */
  recorded_only: string;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** The timetable of a visit: who does what when and why it waits, can they sleep in it tonight, what matters most in the minutes left, load of the circuits, water, and a quote. */
export type VisitRequest = {
  /** People who work. [at least 1, at most 4] Default 1. */
  crew?: number;
  /** Time there is. [minutes] [at least 1, at most 1440] */
  minutes?: number | string;
  /** In the order of steaming. [1 to 100 entries] */
  items: {
    /** Name of the item. */
    id?: string;
    /** What people call it. */
    title: string;
    /** Its room. Default "". */
    room?: string;
    /** A word of the question method; nothing is done if left out. */
    method?: string;
    /** Somebody sleeps in it, or it carries the bed. Default false. */
    bed?: boolean;
    /** Two people turn it over. Default false. */
    turns?: boolean;
    /** It is taken apart, cushions or slats. Default false. */
    dismantles?: boolean;
    /** It has legs that go into leg traps. Default false. */
    legs?: boolean;
    /** A cover goes on afterwards. Default false. */
    encased?: boolean;
    /** It has a dust cover underneath. Default false. */
    dust_cover?: boolean;
    /** The client lets it be opened. Default false. */
    dust_cover_consent?: boolean;
    /** The client lets it be taken apart. Default true. */
    dismantle_consent?: boolean;
    /** Of other methods. [minutes] [at least 0, at most 1440] Default 0. */
    hands_minutes?: number | string;
    /** Of other methods. [minutes] [at least 0, at most 20160] Default 0. */
    clock_minutes?: number | string;
    /** From the question plan. */
    steam?: {
      /** Of steaming on edges in sight. [minutes] [at least 0, at most 1440] Default 0. */
      minutes?: number | string;
      /** How many they are. [at least 0, at most 10000] Default 0. */
      edges?: number;
      /** On edges that show only when it is turned or opened. [minutes] [at least 0, at most 1440] Default 0. */
      hidden_minutes?: number | string;
      /** How many they are. [at least 0, at most 10000] Default 0. */
      hidden_edges?: number;
      /** Edges that steam cannot treat. [at least 0] Default 0. */
      edges_without_pace?: number;
    };
    /** Low, high. [2 entries] */
    dry_minutes?: (number | string)[];
  }[];
  /** Steamers, all alike. [at least 0, at most 4] Default 1. */
  machines?: number;
  /** The steamer, as the question boiler takes it; without tank and water its pauses are not known. */
  steamer?: {
    /** Kind of tank. */
    tank?: "continuous" | "pressurised" | "kettle";
    /** Electric power. [watts] [at least 200, at most 12000] */
    power_watts: number | string;
    /** Full tank or reservoir (one litre is one kilogram). [kilograms] [at least 0.1, at most 50] */
    water_kilograms?: number | string;
    /** Working pressure above the room; a kettle has none. [pascal] [at least 0, at most 1200000] Default 300000. */
    gauge_pascal?: number | string;
    /** The machine on a scale before and after some minutes of steady steam. */
    weighing?: {
      /** Machine before. [kilograms] [at least 0, at most 200] */
      before_kilograms: number | string;
      /** Machine after. [kilograms] [at least 0, at most 200] */
      after_kilograms: number | string;
      /** Of steam between. [minutes] [more than 0, at most 60] */
      minutes: number | string;
    };
    /** Steam while the trigger is pulled, if known. [grams per second] [at least 0.01, at most 5] */
    supply_grams_per_second?: number | string;
    /** Share of the working time with the trigger pulled. [at least 0.05, at most 1] Default 0.7. */
    trigger_share?: number;
    /** Water from the tap. [celsius] [at least 1, at most 60] Default 15. */
    cold_water_celsius?: number | string;
    /** Of the room. [celsius] [at least -10, at most 50] Default 20. */
    room_celsius?: number | string;
    /** Before opening, by the maker; counts if longer than what is computed. [minutes] [at least 0, at most 360] */
    cooling_minutes?: number | string;
    /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
  };
  /** Vacuum cleaners. [at least 0, at most 4] Default 1. */
  vacuums?: number;
  /** Of one. [watts] [at least 100, at most 5000] */
  vacuum_watts?: number | string;
  /** Of the heater of a tent. [watts] [at least 200, at most 12000] Default 1500. */
  heater_watts?: number | string;
  /** Dryers that may be used. [at least 0, at most 10] Default 1. */
  dryers?: number;
  /** Laundry. [0 to 40 entries] Default []. */
  loads?: {
    /** What it is. */
    title: string;
    /** Where it comes from. Default "". */
    room?: string;
    /** Of the drum. [minutes] [at least 5, at most 600] Default 40. */
    minutes?: number | string;
    /** The bed waits for it. Default false. */
    bedding?: boolean;
  }[];
  /** Circuits of the home. [0 to 40 entries] Default []. */
  circuits?: {
    /** What people call it. */
    title: string;
    /** Its room. Default "". */
    room?: string;
    /** Nominal. [volts] [at least 90, at most 500] Default 120. */
    volts?: number | string;
    /** Of the breaker. [amperes] [at least 1, at most 200] */
    breaker_amperes: number | string;
    /** Of what else runs. [watts] [at least 0, at most 50000] Default 0. */
    other_load_watts?: number | string;
  }[];
  /** The crew stays until the bed is dry, covered and put back; else the people of the home do that. Default true. */
  waits_for_bed?: boolean;
  /** Time left for steaming. [minutes] [at least 0, at most 1440] */
  minutes_left?: number | string;
  /** Edges with a pace, for minutes_left. [0 to 4000 entries] */
  edges?: {
    /** Title of its item. */
    item: string;
    /** Of its item. */
    item_id?: string;
    /** Of the edge. */
    id?: string;
    /** Name of the edge. */
    title: string;
    /** Of steaming. [seconds] [more than 0, at most 86400] */
    seconds: number | string;
    /** Of all bugs, from the question plan. [at least 0, at most 1] */
    bug_share: number;
    /** From the question plan. [at least 0] */
    killed_share_per_minute: number;
  }[];
  /** What the firm asks. */
  rates?: {
    /** ISO 4217, such as USD. */
    currency: string;
    /** For coming at all. [at least 0, at most 1000000] Default 0. */
    per_visit?: number;
    /** For an hour of one person. [at least 0, at most 1000000] Default 0. */
    per_hour?: number;
  };
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type VisitAnswer = {
  /** From coming to going. */
  minutes: number;
  /** If all goes quickly, slowly. [2 entries] */
  range_minutes: number[];
  /** No timetable of these tasks is shorter. */
  shortest_possible_minutes: number;
  /** Within the minutes there are; null: not given. */
  fits: boolean | null;
  /** By their begin. */
  tasks: {
    /** Arrive, start_check, heat_up, strip, carry_load, load, fold_load, vacuum, dismantle, steam, turn, open_cover, steam_hidden, chamber_setting, hold, chamber_clearing, bag, discard, dry, encase, isolate, put_back, hand_over. */
    kind: string;
    /** Item, load or room; empty: the whole visit. */
    subject: string;
    /** Item, from 0; null: none. */
    item_index: number | null;
    /** From the start. */
    from_minutes: number;
    /** How long. */
    minutes: number;
    /** From the start. */
    to_minutes: number;
    /** How many it takes. */
    people: number;
    /** Who. */
    who: number[];
    /** Steamer, vacuum, dryer, heater; empty: none. */
    device: string;
    /** Circuit it is plugged into; null: none or not known. */
    circuit_index: number | null;
    /** That it draws there. [amperes] */
    amperes: number;
    /** Plugged in in another room: a heavy cord, and nobody trips. */
    cord_from_other_room: boolean;
    /** Tasks that end before it. */
    after: number[];
    /** May outlast the visit, such as drying. */
    tail: boolean;
    /** Why it begins no earlier. */
    waits: {
      /** Why it begins no earlier. */
      code: "none" | "after" | "people" | "machine" | "vacuum" | "dryer" | "circuit";
      /** Index in `tasks`; null: none. */
      task: number | null;
    };
    /** In words. */
    text: string;
  }[];
  /** People, steamers, vacuums, dryers, then amperes of the circuits. */
  resources: {
    /** What is shared. */
    name: string;
    /** How much there is. */
    capacity: number;
    /** Most that is used at once. */
    peak: number;
  }[];
  /** What is not done, and why. */
  left_out: {
    /** Why. */
    code: "no_second_person" | "no_consent" | "no_circuit" | "other_visit" | "no_method" | "no_machine" | "no_vacuum" | "no_dryer";
    /** Title of the item. */
    item: string;
    /** Kind of task. */
    task: string;
    /** In words. */
    text: string;
  }[];
  /** Can they sleep in it tonight. */
  sleep: {
    /** Can they sleep in it tonight. */
    verdict: "yes" | "no" | "not_proven" | "no_bed";
    /** From the start, when the bed is back; null: not by this visit. [minutes] */
    ready_minutes: number | null;
    /** What is missing or not known. */
    missing: {
      /** What. */
      code: string;
      /** Where. */
      item: string;
      /** In words. */
      text: string;
    }[];
    /** In words. */
    text: string;
  };
  /** What matters most in the minutes left. */
  in_minutes_left: {
    /** As given. [minutes] */
    minutes: number;
    /** By the edges chosen. [minutes] */
    minutes_used: number;
    /** Most per minute first. */
    edges: number[];
    /** Of all bugs on the edges, expected on these. */
    bug_share: number;
    /** In words. */
    text: string;
  } | null;
  /** Electrical load. */
  load: {
    /** Whether the circuits carry the visit. */
    verdict: "within" | "refused" | "not_proven";
    /** As given. */
    circuits: {
      /** Of the circuit. */
      title: string;
      /** Most that the visit draws. [amperes] */
      peak_amperes: number;
      /** 80 % of its breaker less what runs already. [amperes] */
      allowed_amperes: number;
      /** Of its breaker. [amperes] */
      breaker_amperes: number;
    }[];
    /** Refusals. */
    refused: {
      /** What could not be plugged in for. */
      item: string;
      /** Kind of task. */
      task: string;
      /** It needs. [amperes] */
      amperes: number;
      /** Most that any circuit has. [amperes] */
      allowed_amperes: number;
      /** In words. */
      text: string;
    }[];
    /** Of the 80 %. */
    source: string;
  };
  /** Water and energy. */
  water: {
    /** Of the head on edges. [minutes] */
    steam_minutes: number;
    /** Times at the tap; null: not known. */
    refills: number | null;
    /** That leaves as steam; null: not known. [kilograms] */
    water_kilograms: number | null;
    /** That the boiler makes wait; null: not known. [minutes] */
    waiting_minutes: number | null;
    /** Of steamer, vacuum and heater, in joules. */
    energy_joules: number;
    /** In words. */
    text: string;
  };
  /** What it costs. */
  quote: {
    /** As given. */
    currency: string;
    /** If all goes quickly. */
    low: number;
    /** To be quoted. */
    likely: number;
    /** If all goes slowly. */
    high: number;
    /** Likely minutes times crew, in hours. */
    person_hours: number;
    /** In words. */
    text: string;
  } | null;
  /** In words. */
  text: string;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What the people of the home do before, on the day and after, and what the firm looks after. */
export type PreparationRequest = {
  /** Items with their methods. [0 to 100 entries] */
  items: {
    /** As the question method gives them. Default []. */
    traits?: string[];
    /** As the question method gives it. */
    method?: string;
  }[];
  /** Of the home. [0 to 20 entries] Default []. */
  equipment?: string[];
  /** Risks of the record. [0 to 400 entries] */
  risks?: {
    /** A word of the record's kind risk/1, such as pets. */
    what: string;
    /** Dealt with. Default false. */
    settled?: boolean;
    /** Role of who decided or approved. */
    settled_by?: string;
    /** Name of the item; of the room or home if left out. */
    item?: string;
    /** Name of the room. */
    room?: string;
  }[];
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type PreparationAnswer = {
  /** For the people of the home. */
  home: {
    /** What it is, for programs. */
    code: string;
    /** In words. */
    text: string;
    /** Key of the bibliography, or how it was judged. */
    source: string;
    /** Where in it. */
    locator: string;
    /** Measured, handbook, practice, estimate, from memory. */
    quality: string;
    /** The text with {name} where a number stands. */
    template: string;
    /** Numbers of the sentence. */
    params: {
      /** As it stands in the text. */
      name: string;
      /** In the unit beside it. */
      value: number;
      /** Min, C, m or 1. */
      unit: string;
      /** Key of the bibliography. */
      source: string;
    }[];
    /** When. */
    time: "before" | "day" | "after";
    /** Methods that are barred until it is settled. */
    hard_stop: string[];
  }[];
  /** For those who work. */
  firm: {
    /** What it is, for programs. */
    code: string;
    /** In words. */
    text: string;
    /** Key of the bibliography, or how it was judged. */
    source: string;
    /** Where in it. */
    locator: string;
    /** Measured, handbook, practice, estimate, from memory. */
    quality: string;
    /** The text with {name} where a number stands. */
    template: string;
    /** Numbers of the sentence. */
    params: {
      /** As it stands in the text. */
      name: string;
      /** In the unit beside it. */
      value: number;
      /** Min, C, m or 1. */
      unit: string;
      /** Key of the bibliography. */
      source: string;
    }[];
    /** When. */
    time: "before" | "day" | "after";
    /** Methods that are barred until it is settled. */
    hard_stop: string[];
  }[];
  /** Sentences for the firm that bar a method. */
  hard_stops: number;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** The requests of method, visit and preparation for a job and its plan. */
export type VisitRequestsRequest = {
  /** State of a job, as the question fold_events gives it. */
  state: {
    [key: string]: unknown;
  };
  /** Items of the plan's request, in the order of the state's items: tells which edges there are. [0 to 100 entries] */
  plan_items?: {
    /** Kind of item. */
    item: "mattress" | "floor_mattress" | "box_spring" | "slatted_frame" | "metal_frame" | "headboard_wood" | "headboard_upholstered" | "bunk_bed" | "cot" | "sofa_bed" | "futon" | "hospital_bed" | "sofa" | "sectional" | "armchair" | "recliner" | "desk_chair" | "dining_chair" | "ottoman" | "vehicle_seat" | "night_table" | "dresser" | "wardrobe" | "bookcase" | "desk" | "clutter" | "luggage" | "wheelchair" | "stroller" | "curtain" | "picture" | "baseboard" | "carpet_edge" | "door_frame" | "socket_plate" | "wall_joint";
    /** Beds: named mattress size; the kind's usual one if left out. */
    size?: "twin" | "twin_xl" | "full" | "queen" | "king" | "california_king" | "80x200" | "90x190" | "90x200" | "100x200" | "120x200" | "140x200" | "160x200" | "180x200";
    /** Across; wins over size (mattress, floor_mattress, box_spring, slatted_frame, metal_frame, headboard_wood, headboard_upholstered, bunk_bed, futon); inside, across (cot); over the arms (sofa_bed, sofa, armchair, recliner); of the platform (hospital_bed); over all, along the back (sectional); left to right (desk_chair, dining_chair, ottoman, vehicle_seat, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller); over the wheels (wheelchair); one panel as it hangs (curtain); of the frame (picture); of the opening (door_frame); of the plate (socket_plate). [metres] [at least 0, at most 20] */
    width_metres?: number | string;
    /** Foot to head; wins over size (mattress, floor_mattress, box_spring, slatted_frame, metal_frame, bunk_bed, futon); inside, foot to head (cot); of the platform (hospital_bed); over all, front to back (sectional); heading to hem (curtain); along the wall (baseboard, carpet_edge, wall_joint). [metres] [at least 0, at most 20] */
    length_metres?: number | string;
    /** Of the mattress (mattress, floor_mattress, futon); of posts and rails (headboard_wood); of the padded board (headboard_upholstered). [metres] [at least 0, at most 20] */
    thickness_metres?: number | string;
    /** Floor to its underside; 0 lies on the floor (mattress). [metres] [at least 0, at most 20] */
    base_height_metres?: number | string;
    /** Of the base alone (box_spring); floor to the top of the rails (slatted_frame, metal_frame); floor to its top (headboard_wood, headboard_upholstered, desk_chair, dining_chair, ottoman, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller, baseboard); floor to the top of the posts (bunk_bed); floor to the top of the sides (cot); floor to the top of the back cushions (sofa_bed, sofa, sectional, armchair, recliner); floor to the platform as it stands now (hospital_bed); floor to the top of the head rest (vehicle_seat); floor to the grips (wheelchair); of the frame (picture); of the opening (door_frame); of the plate (socket_plate); floor to ceiling (wall_joint). [metres] [at least 0, at most 20] */
    height_metres?: number | string;
    /** Floor to the underside (box_spring, sofa_bed, sofa, armchair, recliner, ottoman, night_table, dresser). [metres] [at least 0, at most 20] */
    leg_height_metres?: number | string;
    /** Front to back (sofa_bed, sofa, armchair, recliner, desk_chair, dining_chair, ottoman, night_table, dresser, wardrobe, bookcase, desk, clutter, luggage, stroller); of one run (sectional); of the cushion (vehicle_seat); of the seat (wheelchair). [metres] [at least 0, at most 20] */
    depth_metres?: number | string;
    /** Floor to the top of the seat cushions (sofa_bed, sofa, sectional, armchair, recliner); floor to the top of the seat (futon, desk_chair, dining_chair); floor to the top of the cushion (vehicle_seat); floor to the seat (wheelchair). [metres] [at least 0, at most 20] */
    seat_height_metres?: number | string;
    /** Floor to the top of the arms (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
    arm_height_metres?: number | string;
    /** One arm (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
    arm_width_metres?: number | string;
    /** Boxing of the seat cushions (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
    seat_cushion_thickness_metres?: number | string;
    /** Boxing of the back cushions (sofa_bed, sofa, armchair, recliner). [metres] [at least 0, at most 20] */
    back_cushion_thickness_metres?: number | string;
    /** Seats side by side (sofa_bed, sofa); seats along the back, without the corner (sectional). [at least 1, at most 12] */
    seats?: number;
    /** Seats of the return, without the corner (sectional). [at least 1, at most 12] */
    return_seats?: number;
    /** Drawers one above the other (night_table); drawers one above the other in each column (dresser); drawers of the pedestal (desk). [at least 1, at most 12] */
    drawers?: number;
    /** Columns of drawers (dresser). [at least 1, at most 12] */
    columns?: number;
    /** Doors side by side (wardrobe). [at least 1, at most 12] */
    doors?: number;
    /** Shelves between top and bottom (bookcase). [at least 1, at most 12] */
    shelves?: number;
    /** Panels side by side (curtain). [at least 1, at most 12] */
    panels?: number;
    /** Rows of buttons or tufts on it (headboard_upholstered, sofa_bed, sofa, armchair, recliner). */
    tufted?: boolean;
    /** A skirt hangs to the floor (sofa, armchair). */
    skirted?: boolean;
    /** It has arm rests (desk_chair). */
    arms?: boolean;
    /** The lid opens (ottoman). */
    storage?: boolean;
    /** Cloth; mattress_tick for mattresses and bases, unknown for everything else if left out. */
    covering?: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
    /** Finish of its wood or metal. */
    finish?: "bare" | "oil" | "wax" | "shellac" | "lacquer" | "varnish" | "paint" | "unknown";
    /** Most water the covering takes up without a mark, by a hidden-spot wetting test. [grams per m2] [at least 5, at most 500] */
    wetting_limit_grams_per_m2?: number | string;
    /** For which the steaming head was held still on a hidden spot, which then dried without a mark. [seconds] [at least 1, at most 120] */
    hidden_spot_seconds?: number | string;
    /** Check whether vapour can enter the covering at all. */
    water_drop?: {
      /** A drop of water on the face of the covering. Default "not_tried". */
      face?: "not_tried" | "soaks" | "beads";
      /** The back of the covering, seen at a hem, a zip or under the dust cover. Default "not_seen". */
      back?: "not_seen" | "open" | "coated";
      /** Until the drop had soaked in. [seconds] [at least 0, at most 3600] */
      seconds?: number | string;
    };
    /** What a person changed of its edges. [0 to 400 entries] */
    changes?: {
      /** What was changed. */
      change: "added" | "renamed" | "split" | "left_out";
      /** Name of an added edge. */
      id?: string;
      /** The edge that is renamed, split or left out. */
      edge?: string;
      /** Of an added or renamed edge. */
      title?: string;
      /** Of an added edge. Default "seam". */
      kind?: "seam" | "welt" | "tape_edge" | "fold" | "tuft" | "quilting" | "pleat" | "skirt" | "zip" | "handle" | "label" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap" | "wood_joint" | "metal_joint" | "screw_hole" | "drawer_runner" | "headboard_back" | "skirting_gap" | "carpet_edge" | "curtain_heading" | "wall_joint" | "heap" | "electrical_cover";
      /** Of an added edge; the first part if left out. */
      part?: string;
      /** Of an added edge. [metres] [more than 0, at most 100] */
      length_metres?: number | string;
      /** Of an added edge. [metres] [at least 0, at most 10] Default 0.5. */
      height_metres?: number | string;
      /** Of an added edge. Default true. */
      in_sight?: boolean;
      /** Where a split lies along the edge; the middle if left out. [at least 0, at most 1] */
      at_share?: number;
    }[];
  }[];
  /** Answer of the question plan for all items of the state, in their order. */
  plan?: {
    [key: string]: unknown;
  };
  /** What there is besides the kit. [0 to 20 entries] */
  equipment?: string[];
  /** In place of the recorded visit. [at least 1, at most 4] */
  crew?: number;
  /** In place of the recorded visit. [minutes] [at least 1, at most 1440] */
  minutes?: number | string;
  /** For steaming. [minutes] [at least 0, at most 1440] */
  minutes_left?: number | string;
  /** Steamers, all alike. [at least 0, at most 4] */
  machines?: number;
  /** The crew stays until the bed is put back. */
  waits_for_bed?: boolean;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type VisitRequestsAnswer = {
  /** `seen` of the question plan, from the evidence. */
  seen: unknown[];
  /** Request of the question method; null without items. */
  method: unknown | null;
  /** Request of the question visit; null without items. */
  visit: unknown | null;
  /** Request of the question preparation; null without items. */
  preparation: unknown | null;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** What the record of a job says now: its state, open contradictions, and what could not be counted. */
export type FoldEventsRequest = {
  /** Lines of events.ndjson. */
  lines?: string[];
  /** Events as objects, where bytes do not matter. */
  events?: unknown[];
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type FoldEventsAnswer = {
  /** What the record says now; dwelling is null unless there is one. */
  state: {
    /** What the job is called. Its subject is the job's id. */
    job: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** The day the job began. */
      opened_on?: string;
      /** Above sea level. [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** What the person typed, key by key, with the unit as typed. */
      typed?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    } | null;
    /** A home that is looked at or treated. */
    dwelling: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** Apartment, house, ... */
      kind?: string;
      /** The job it belongs to. */
      job?: string;
      /** Above sea level. [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** What the person typed, key by key, with the unit as typed. */
      typed?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    } | null;
    /** By id. */
    dwellings: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** Apartment, house, ... */
      kind?: string;
      /** The job it belongs to. */
      job?: string;
      /** Above sea level. [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** What the person typed, key by key, with the unit as typed. */
      typed?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    rooms: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** The dwelling it is in. */
      dwelling?: string;
      /** Where its walls stand. */
      outline?: {
        /** Left wall, on the dwelling's plan. [metres] [at least -1000, at most 1000] */
        x_metres: number;
        /** Far wall, on the dwelling's plan. [metres] [at least -1000, at most 1000] */
        y_metres: number;
        /** Left to right. [metres] [more than 0, at most 200] */
        width_metres: number;
        /** Far to near. [metres] [more than 0, at most 200] */
        depth_metres: number;
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    items: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** A word of the question catalogue, as furniture takes it. */
      kind: string;
      /** The room it stands in. */
      room?: string;
      /** Of a sofa or sectional. [at least 1, at most 20] */
      seats?: number;
      /** Name of a mattress size. */
      size?: string;
      /** Where measured. [metres] [more than 0, at most 20] */
      length_metres?: number;
      /** Where measured. [metres] [more than 0, at most 20] */
      width_metres?: number;
      /** Where measured. [metres] [more than 0, at most 20] */
      depth_metres?: number;
      /** Where measured. [metres] [more than 0, at most 20] */
      height_metres?: number;
      /** The cloth, a word the question furniture takes; unknown if not known. */
      covering: string;
      /** What is on the cloth or wood, if known. */
      finish?: string;
      /** Water the covering took without a mark in a hidden-spot test. [grams per m2] [at least 5, at most 500] */
      wetting_limit_grams_per_m2?: number;
      /** For which the head was held on a hidden spot and left no mark. [seconds] [at least 1, at most 120] */
      hidden_spot_seconds?: number;
      /** The water-drop check of its covering. */
      water_drop?: {
        /** A drop of water on its face. */
        face?: "not_tried" | "soaks" | "beads";
        /** Its back, where it can be seen. */
        back?: "not_seen" | "open" | "coated";
        /** Until the drop had soaked in. [seconds] [at least 0, at most 3600] */
        seconds?: number;
        [key: string]: unknown;
      };
      /** Somebody sleeps or long sits on it. */
      sleeps_here?: boolean;
      /** Where in the room it stands. */
      place?: {
        /** Its middle, from the room's left wall. [metres] [at least -1000, at most 1000] */
        x_metres: number;
        /** Its middle, from the room's far wall. [metres] [at least -1000, at most 1000] */
        y_metres: number;
        /** Turned clockwise, seen from above. [at least -360, at most 360] */
        turn_degrees?: number;
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    arrivals: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** Of the preparation. */
      state: "prepared" | "partly" | "not_prepared";
      /** What was decided. */
      decision?: "treat" | "treat_part" | "reschedule";
      /** The day. */
      on?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    evidence: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** Result of the look. */
      look: "found" | "none_seen" | "not_accessible";
      /** Live adults. [at least 0, at most 100000] */
      adults?: number;
      /** Live nymphs. [at least 0, at most 100000] */
      nymphs?: number;
      /** Eggs that look alive. [at least 0, at most 100000] */
      eggs?: number;
      /** Cast skins. [at least 0, at most 100000] */
      cast_skins?: number;
      /** Dark spots of droppings. */
      spots?: boolean;
      /** Dead bugs only. */
      dead?: boolean;
      /** How it was looked: by eye, with light and a card along the edge, taken apart, from a trap, told by the people there. */
      how?: "eye" | "light_and_card" | "opened" | "trap" | "told";
      /** Sure that it is a bed bug. */
      certain?: boolean;
      /** The room. */
      room?: string;
      /** The item. */
      item?: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    traps: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** What it is. */
      type?: "leg_trap" | "other";
      /** Where in the room. */
      place?: {
        /** From the room's left wall. [metres] [at least -1000, at most 1000] */
        x_metres: number;
        /** From the room's far wall. [metres] [at least -1000, at most 1000] */
        y_metres: number;
        [key: string]: unknown;
      };
      /** Since when. */
      set_on?: string;
      /** The room. */
      room?: string;
      /** The item. */
      item?: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    trap_checks: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The trap. */
      trap: string;
      /** The day. */
      on?: string;
      /** Adults. [at least 0, at most 100000] */
      adults?: number;
      /** Nymphs. [at least 0, at most 100000] */
      nymphs?: number;
      /** Sure that they are bed bugs. */
      certain?: boolean;
      /** It was gone, moved or dusty, so it tells nothing. */
      missing?: boolean;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    edge_changes: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The item. */
      item: string;
      /** What was changed. */
      change: "added" | "renamed" | "split" | "left_out";
      /** Name of the edge that is renamed, split or left out. */
      edge?: string;
      /** What people call it. */
      title?: string;
      /** Kind of an added edge, as the question furniture names kinds. */
      kind?: string;
      /** Part of the item that an added edge is on. */
      part?: string;
      /** Of an added edge. [metres] [more than 0, at most 100] */
      length_metres?: number;
      /** Of an added edge, above the floor. [metres] [at least 0, at most 10] */
      height_metres?: number;
      /** Of an added edge. */
      in_sight?: boolean;
      /** Where a split lies along the edge. [at least 0, at most 1] */
      at_share?: number;
      /** Why it is left out. */
      reason?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    damages: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What is damaged. */
      what?: string;
      /** Name of the photo's blob. */
      photo?: string;
      /** The room. */
      room?: string;
      /** The item. */
      item?: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    photos: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** SHA-256 of its bytes. */
      blob: string;
      /** Such as image/jpeg. */
      media_type: string;
      /** Pixels. [at least 1, at most 100000] */
      width?: number;
      /** Pixels. [at least 1, at most 100000] */
      height?: number;
      /** Of the blob. [at least 1, at most 100000000] */
      bytes?: number;
      /** The entity that it shows. */
      of?: string;
      /** The room. */
      room?: string;
      /** The item. */
      item?: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    risks: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What it is. */
      what: "infant" | "pregnant" | "frail" | "asthma" | "heat_sensitive" | "oxygen" | "pets" | "aquarium" | "medicines" | "pressurised_cans" | "ammunition" | "needles" | "smoke_detector" | "heat_detector" | "sprinkler" | "fuel_heater" | "loose_wiring" | "asbestos_or_lead" | "mould" | "weak_floor" | "other";
      /** Dealt with; the note says how. */
      settled?: boolean;
      /** Role of who decided or approved. */
      settled_by?: string;
      /** The room. */
      room?: string;
      /** The item. */
      item?: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    prior_treatments: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** Kind of treatment. */
      what: "steam" | "hot_room" | "cold" | "spray" | "dust" | "vacuum" | "encasement" | "washing" | "discarding" | "other" | "not_known";
      /** When. */
      on?: string;
      /** Role of who did it. */
      by?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    consents: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What was asked. */
      to: "steam" | "open_dust_cover" | "dismantle" | "hot_room" | "discard" | "photos" | "neighbours" | "other";
      /** The answer. */
      answer: "given" | "refused" | "not_asked";
      /** For one item alone. */
      item?: string;
      /** Role of who answered. */
      by?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    circuits: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** Nominal voltage. [volts] [more than 0, at most 500] */
      volts?: number;
      /** Rating of its breaker. [amperes] [more than 0, at most 200] */
      breaker_amperes: number;
      /** Outlets on it. [at least 1, at most 100] */
      outlets?: number;
      /** Of what else runs on it. [watts] [at least 0, at most 50000] */
      other_load_watts?: number;
      /** Where its outlets are. */
      room?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    weighings: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The steamer. */
      machine: string;
      /** Before. [kilograms] [at least 0, at most 200] */
      before_kilograms: number;
      /** After. [kilograms] [at least 0, at most 200] */
      after_kilograms: number;
      /** Of steam between. [minutes] [more than 0, at most 60] */
      minutes: number;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    probe_checks: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The probe. */
      probe: string;
      /** Into what. */
      in: "melting_ice" | "boiling_water";
      /** What it showed. [celsius] [at least -25, at most 130] */
      shown_celsius: number;
      /** Of the air, by a barometer. [pascal] [at least 50000, at most 110000] */
      pressure_pascal?: number;
      /** Above sea level. [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** The day. */
      on?: string;
      /** What the person typed, key by key, with the unit as typed. */
      typed?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    jet_checks: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The head. */
      head: string;
      /** Between opening and tissue. [metres] [more than 0, at most 2] */
      distance_metres: number;
      /** What the tissue did. */
      seen: "stays" | "flutters" | "blown_off";
      /** What the person typed, key by key, with the unit as typed. */
      typed?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    start_checks: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The steamer. */
      machine: string;
      /** No leak, no crack. */
      hose_sound?: boolean;
      /** Seal of the cap and of the head. */
      gasket_sound?: boolean;
      /** Steam comes dry. */
      warmed_up?: boolean;
      /** First water let off away from the work. */
      first_spit_away?: boolean;
      /** The towel is dry. */
      towel_dry?: boolean;
      /** Gloves and eye protection are on. */
      hands_and_eyes?: boolean;
      /** The day. */
      on?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    visits: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** The day. */
      on?: string;
      /** Technicians. [at least 1, at most 20] */
      crew?: number;
      /** Time there is. [minutes] [more than 0, at most 1440] */
      minutes?: number;
      /** What for. */
      purpose?: "inspect" | "treat" | "follow_up";
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    rates: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** ISO 4217, such as USD. */
      currency: string;
      /** For coming at all. [at least 0, at most 1000000] */
      per_visit?: number;
      /** For an hour of one technician. [at least 0, at most 1000000] */
      per_hour?: number;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    methods: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The item. */
      item: string;
      /** A word of the question method. */
      method: string;
      /** Why, where it is not the one that was offered first. */
      reason?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    edge_orders: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The item. */
      item: string;
      /** The order. */
      order: "top_to_bottom" | "bottom_to_top";
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    strokes: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The item. */
      item: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge: string;
      /** Of the edge that was passed. [metres] [more than 0, at most 100] */
      length_metres: number;
      /** From the first mark to the last. [seconds] [at least 0, at most 86400] */
      seconds: number;
      /** Marks on the way. */
      marks?: {
        /** Place along the edge. [metres] [at least 0, at most 100] */
        at_metres: number;
        /** Since the first mark. [seconds] [at least 0, at most 86400] */
        seconds: number;
        /** What happened since the mark before is not known. */
        interrupted?: boolean;
        [key: string]: unknown;
      }[];
      /** Part of the time is not known. */
      interrupted?: boolean;
      /** Towel that was used. */
      towel?: "none" | "wrapped" | "laid";
      /** The head. */
      head?: string;
      /** The test the pace rests on. */
      fold_test?: string;
      /** Pace that was planned. [metres per second] [more than 0, at most 2] */
      planned_metres_per_second?: number;
      /** How the head went. */
      style?: "glide" | "place_hold_move";
      /** During which visit. */
      visit?: string;
      /** The mark of a live bug that this pass answers. */
      follows?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    edge_marks: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The item. */
      item: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge: string;
      /** A live bug behind the head, could not be reached, left for later, towel changed, treated as practice has it without a computed pace. */
      what: "live_bug" | "could_not_reach" | "skipped" | "towel_changed" | "treated_by_practice";
      /** Where along the edge. [metres] [at least 0, at most 100] */
      at_metres?: number;
      /** Why. */
      reason?: string;
      /** During which visit. */
      visit?: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    spot_readings: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The item. */
      item: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge: string;
      /** What an infrared gun showed. [celsius] [at least -20, at most 150] */
      gun_celsius?: number;
      /** What the back of a hand said. */
      palm?: "cold" | "warm" | "hot";
      /** After the head had left the place. [seconds] [at least 0, at most 600] */
      seconds_after: number;
      /** Where along the edge. [metres] [at least 0, at most 100] */
      at_metres?: number;
      /** What the person typed, key by key, with the unit as typed. */
      typed?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    redo_notes: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The item. */
      item: string;
      /** Name of the edge, as the question furniture gives it, or the id of an added edge. */
      edge: string;
      /** Why. */
      reason: string;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** By id. */
    issued: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** What it is. */
      document: "report" | "preparation_sheet" | "quote";
      /** The day. */
      on?: string;
      /** The record it was made from. */
      state_hash: string;
      /** Version that computed it. */
      engine?: string;
      /** SHA-256 of its bytes, where they are kept. */
      blob?: string;
      /** As it was computed. */
      answer?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** Equipment. */
    kit: {
      /** By id. */
      machines: {
        /** Subject of its events. */
        id: string;
        /** The statement shown; a correction names it. */
        event: string;
        /** All standing statements about it; several agree or conflict. */
        events: string[];
        /** What people call it; no names of persons, no addresses. */
        title: string;
        /** As its plate says. [watts] [more than 0, at most 50000] */
        power_watts?: number;
        /** Kind of tank. */
        tank?: "continuous" | "pressurised" | "kettle";
        /** Full tank or reservoir. [kilograms] [more than 0, at most 50] */
        water_kilograms?: number;
        /** Working pressure above the room. [pascal] [at least 0, at most 1200000] */
        gauge_pascal?: number;
        /** Descaled or repaired last: older tests are due. */
        serviced_on?: string;
        /** What the person typed, key by key, with the unit as typed. */
        typed?: {
          [key: string]: unknown;
        };
        /** A remark. */
        note?: string;
        /** True in made-up data, such as the demo's. */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      /** By id. */
      heads: {
        /** Subject of its events. */
        id: string;
        /** The statement shown; a correction names it. */
        event: string;
        /** All standing statements about it; several agree or conflict. */
        events: string[];
        /** What people call it; no names of persons, no addresses. */
        title: string;
        /** The machine it belongs to. */
        machine?: string;
        /** Along the pass. [metres] [more than 0, at most 2] */
        length_metres: number;
        /** Across the pass. [metres] [more than 0, at most 2] */
        width_metres?: number;
        /** What the person typed, key by key, with the unit as typed. */
        typed?: {
          [key: string]: unknown;
        };
        /** A remark. */
        note?: string;
        /** True in made-up data, such as the demo's. */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      /** By id. */
      towels: {
        /** Subject of its events. */
        id: string;
        /** The statement shown; a correction names it. */
        event: string;
        /** All standing statements about it; several agree or conflict. */
        events: string[];
        /** What people call it; no names of persons, no addresses. */
        title: string;
        /** No towel, around the head, or lying on the cloth. */
        use: "none" | "wrapped" | "laid";
        /** As it lies. [metres] [more than 0, at most 0.1] */
        thickness_metres?: number;
        /** What the person typed, key by key, with the unit as typed. */
        typed?: {
          [key: string]: unknown;
        };
        /** A remark. */
        note?: string;
        /** True in made-up data, such as the demo's. */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      /** By id. */
      probes: {
        /** Subject of its events. */
        id: string;
        /** The statement shown; a correction names it. */
        event: string;
        /** All standing statements about it; several agree or conflict. */
        events: string[];
        /** What people call it; no names of persons, no addresses. */
        title: string;
        /** Until 63 % of a sudden change shows. [seconds] [more than 0, at most 600] */
        time_constant_seconds?: number;
        /** A dip into boiling water, where it was timed. */
        dip?: {
          /** Shown before the dip. [celsius] [at least -25, at most 60] */
          start_celsius?: number;
          /** Until 63 % of the way shows. [seconds] [more than 0, at most 600] */
          seconds_to_63?: number;
          /** Until 90 % of the way shows. [seconds] [more than 0, at most 600] */
          seconds_to_90?: number;
          [key: string]: unknown;
        };
        /** What the person typed, key by key, with the unit as typed. */
        typed?: {
          [key: string]: unknown;
        };
        /** A remark. */
        note?: string;
        /** True in made-up data, such as the demo's. */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      /** By id. */
      vacuums: {
        /** Subject of its events. */
        id: string;
        /** The statement shown; a correction names it. */
        event: string;
        /** All standing statements about it; several agree or conflict. */
        events: string[];
        /** What people call it; no names of persons, no addresses. */
        title: string;
        /** A filter that holds fine dust. */
        fine_filter?: boolean;
        /** What the person typed, key by key, with the unit as typed. */
        typed?: {
          [key: string]: unknown;
        };
        /** A remark. */
        note?: string;
        /** True in made-up data, such as the demo's. */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      /** By id. */
      dryers: {
        /** Subject of its events. */
        id: string;
        /** The statement shown; a correction names it. */
        event: string;
        /** All standing statements about it; several agree or conflict. */
        events: string[];
        /** What people call it; no names of persons, no addresses. */
        title: string;
        /** Dry clothes it takes. [kilograms] [more than 0, at most 100] */
        load_kilograms?: number;
        /** What the person typed, key by key, with the unit as typed. */
        typed?: {
          [key: string]: unknown;
        };
        /** A remark. */
        note?: string;
        /** True in made-up data, such as the demo's. */
        invented?: boolean;
        [key: string]: unknown;
      }[];
    };
    /** By id. */
    fold_tests: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** What people call it; no names of persons, no addresses. */
      title: string;
      /** The machine used. */
      machine?: string;
      /** The head used. */
      head?: string;
      /** The towel used. */
      towel?: string;
      /** The probe used. */
      probe?: string;
      /** Of the cloth before the passes. [celsius] [at least -25, at most 60] */
      start_celsius?: number;
      /** Above sea level. [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** The kind of cloth that was folded. */
      covering?: string;
      /** Material of one layer of the fold. */
      cloth?: string;
      /** The day of the readings. */
      on?: string;
      /** The job in which it was made, where not this one. */
      taken_from?: string;
      /** What the person typed, key by key, with the unit as typed. */
      typed?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      /** Of this test, by id. */
      readings: {
        /** Subject of its events. */
        id: string;
        /** The statement shown; a correction names it. */
        event: string;
        /** All standing statements about it; several agree or conflict. */
        events: string[];
        /** The test it belongs to. */
        fold_test: string;
        /** Speed of the head. [metres per second] [more than 0, at most 2] */
        pace_metres_per_second?: number;
        /** Length of the pass. [metres] [more than 0, at most 20] */
        distance_metres?: number;
        /** Time for that length. [seconds] [more than 0, at most 3600] */
        seconds?: number;
        /** What was done; a pass over the fold if left out. */
        kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
        /** How long the head rested. [seconds] [more than 0, at most 3600] */
        hold_seconds?: number;
        /** Of the real edge that was read. */
        covering?: string;
        /** Over the tip: how many, or a list that names each; a plate or a surface counts as one. */
        layers: number | unknown[];
        /** Highest temperature shown. [celsius] [at least -25, at most 150] */
        peak_celsius?: number;
        /** Of a surface: what an infrared gun showed. [celsius] [at least -25, at most 150] */
        gun_celsius?: number;
        /** Of a surface: what the back of a hand said. */
        palm?: "cold" | "warm" | "hot";
        /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
        seconds_after?: number;
        /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] */
        spot_metres?: number;
        /** Of a gun: the setting. [at least 0.3, at most 1] */
        emissivity_setting?: number;
        /** What the person typed, key by key, with the unit as typed. */
        typed?: {
          [key: string]: unknown;
        };
        /** A remark. */
        note?: string;
        /** True in made-up data, such as the demo's. */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      [key: string]: unknown;
    }[];
    /** Whose fold test has not arrived. */
    readings_without_test: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** The test it belongs to. */
      fold_test: string;
      /** Speed of the head. [metres per second] [more than 0, at most 2] */
      pace_metres_per_second?: number;
      /** Length of the pass. [metres] [more than 0, at most 20] */
      distance_metres?: number;
      /** Time for that length. [seconds] [more than 0, at most 3600] */
      seconds?: number;
      /** What was done; a pass over the fold if left out. */
      kind?: "pass" | "stationary" | "coupon" | "under_real_edge" | "surface";
      /** How long the head rested. [seconds] [more than 0, at most 3600] */
      hold_seconds?: number;
      /** Of the real edge that was read. */
      covering?: string;
      /** Over the tip: how many, or a list that names each; a plate or a surface counts as one. */
      layers: number | unknown[];
      /** Highest temperature shown. [celsius] [at least -25, at most 150] */
      peak_celsius?: number;
      /** Of a surface: what an infrared gun showed. [celsius] [at least -25, at most 150] */
      gun_celsius?: number;
      /** Of a surface: what the back of a hand said. */
      palm?: "cold" | "warm" | "hot";
      /** Of a surface: since the head had left the place. [seconds] [at least 0, at most 300] */
      seconds_after?: number;
      /** Of a gun: diameter of what it looks at. [metres] [more than 0, at most 1] */
      spot_metres?: number;
      /** Of a gun: the setting. [at least 0.3, at most 1] */
      emissivity_setting?: number;
      /** What the person typed, key by key, with the unit as typed. */
      typed?: {
        [key: string]: unknown;
      };
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** How this job is shown. */
    settings: {
      /** Subject of its events. */
      id: string;
      /** The statement shown; a correction names it. */
      event: string;
      /** All standing statements about it; several agree or conflict. */
      events: string[];
      /** Unit of temperatures. */
      temperature?: "C" | "F";
      /** Unit of small lengths and of paces. */
      length?: "mm" | "in";
      /** Language tag, such as en. */
      language?: string;
      /** The fold test that the plan rests on. */
      fold_test?: string;
      /** After which the firm makes a fold test again. [at least 1, at most 3660] */
      fold_test_days?: number;
      /** A remark. */
      note?: string;
      /** True in made-up data, such as the demo's. */
      invented?: boolean;
      [key: string]: unknown;
    } | null;
    /** By id, a fold test with its readings. */
    removed: {
      /** Kind of the entity. */
      kind: string;
      /** The entity as it was. */
      entity: {
        /** Its subject. */
        id: string;
        /** As above. */
        event: string;
        /** As above. */
        events: string[];
        [key: string]: unknown;
      };
      /** The removals; a correction of each puts it back. */
      removed_by: string[];
    }[];
  };
  /** Open contradictions; a verdict must hold for the worst of the values. */
  conflicts: {
    /** The entity. */
    subject: string;
    /** Kind of the statements. */
    kind: string;
    /** Statements of which none corrects another. */
    rivals: string[];
    /** What each says, in the same order. */
    values: unknown[];
  }[];
  /** Kept, not read. */
  unknown: {
    /** Kind. */
    kind: string;
    /** How many events. */
    count: number;
  }[];
  /** Kept, not part of the state. */
  refused: {
    /** The event. */
    id: string;
    /** Why. */
    error: {
      /** Kind of error. */
      kind: string;
      /** A sentence. */
      message: string;
      /** JSON pointer into the event. */
      where: string;
      [key: string]: unknown;
    };
    /** A sound correction has replaced it. */
    settled: boolean;
  }[];
  /** Cannot be kept in a record. */
  not_events: {
    /** JSON pointer into the request. */
    where: string;
    /** Why. */
    error: {
      /** Kind of error. */
      kind: string;
      /** A sentence. */
      message: string;
      /** JSON pointer into the event. */
      where: string;
      [key: string]: unknown;
    };
  }[];
  /** Events of the record, refused and unknown ones too. */
  event_count: number;
  /** SHA-256 of the lines sorted by id, each with a line feed; equal hash, equal record. */
  state_hash: string;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** The requests that a job's recorded facts make of furniture, fold_test, pace and plan. */
export type JobRequestsRequest = {
  /** State of a job, as the question fold_events gives it. */
  state: {
    [key: string]: unknown;
  };
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type JobRequestsAnswer = {
  /** Request of the question furniture, one an item. */
  furniture: {
    /** The item. */
    id: string;
    /** Request of the question furniture, one an item. */
    request: unknown | null;
  }[];
  /** Request of the question fold_test, one a test; null while it has no readings. */
  fold_tests: {
    /** The test. */
    id: string;
    /** Request of the question fold_test, one a test; null while it has no readings. */
    request: unknown | null;
  }[];
  /** What requests of pace and plan share: `fold_test`, a list, the one in use first; or `prior` and elevation. `edge`, `items` and `samples` are the asker's. */
  pace: unknown;
  /** The test that the paces rest on. */
  test_in_use: string | null;
  /** Request of the question plan; null without items. */
  plan: unknown | null;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** A whole job as it was treated: done, measured and computed for every edge, and the redo list. */
export type TreatedRequest = {
  /** State of a job, as the question fold_events gives it. */
  state: {
    [key: string]: unknown;
  };
  /** Open contradictions: what rests on one is not proven. */
  conflicts?: {
    /** What it is about. */
    subject: string;
    [key: string]: unknown;
  }[];
  /** Only these; all if left out. [0 to 400 entries] */
  items?: string[];
  /** `modelled` of an earlier answer's edges. [0 to 10000 entries] */
  known?: {
    /** SHA-256 of everything it was computed from. */
    asked: string;
    /** Fold_test, prior or head. */
    basis: string;
    /** Of the passes. */
    verdict: "lethal" | "short" | "not_proven";
    /** What decided. */
    reason: {
      /** Short name for programs. */
      code: string;
      /** A sentence for people. */
      text: string;
    };
    /** Harm, apart from kill. */
    harm: "none" | "scorch" | "soak" | "barred" | "unknown";
    /** Of the hardest stage, at most 0.99. */
    kill_probability: number | null;
    /** Lethal down to here at least. [metres] */
    depth_reached_metres: number | string | null;
    /** Deepest place where eggs may lie. [metres] */
    target_depth_metres: number | string | null;
    /** Length of its lethal stretches. [metres] */
    lethal_metres: number | string;
    /** Which parts are to do again. */
    redo: {
      /** Start. [metres] */
      from_metres: number | string;
      /** End. [metres] */
      to_metres: number | string;
      /** Why it is not lethal. */
      cause: "none" | "too_fast" | "near_limit" | "unclear_record" | "not_passed" | "saw_live_bug" | "no_model";
      /** What to do. */
      text: string;
    }[];
    /** Samples that the weights leave. */
    effective_samples: number;
    /** Size of the ensemble. */
    samples: number;
  }[];
  /** Size of the ensemble; verdicts use 1024. [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type TreatedAnswer = {
  /** In the order of the record. */
  items: {
    /** Its subject in the record. */
    id: string;
    /** As people call it. */
    title: string;
    /** Kind of item. */
    kind: string;
    /** Title of its room; empty without one. */
    room: string;
    /** The method that was chosen for it. */
    method: string | null;
    /** Request of the question furniture, for its drawing. */
    furniture: unknown;
    /** Part by part. */
    edges: {
      /** Name of the edge, as furniture gives it. */
      id: string;
      /** In words. */
      title: string;
      /** Part of the item. */
      part: string;
      /** Kind of edge. */
      kind: string;
      /** Along the line. [metres] */
      length_metres: number;
      /** Reached without moving anything. */
      in_sight: boolean;
      /** What was done. */
      treated: {
        /** Timed passes. */
        passes: number;
        /** Passed, repeats counted again. [metres] */
        metres: number;
        /** Of these passes. [seconds] */
        seconds: number;
      };
      /** Statements about it. */
      marks: {
        /** A word of edge_mark/1. */
        what: string;
        /** As stated. */
        reason?: string;
        /** Where along the edge. [metres] */
        at_metres?: number;
      }[];
      /** Readings of the surface behind the head. */
      spot_readings: number;
      /** What as_treated computed of an edge. */
      modelled: {
        /** SHA-256 of everything it was computed from. */
        asked: string;
        /** Fold_test, prior or head. */
        basis: string;
        /** Of the passes. */
        verdict: "lethal" | "short" | "not_proven";
        /** What decided. */
        reason: {
          /** Short name for programs. */
          code: string;
          /** A sentence for people. */
          text: string;
        };
        /** Harm, apart from kill. */
        harm: "none" | "scorch" | "soak" | "barred" | "unknown";
        /** Of the hardest stage, at most 0.99. */
        kill_probability: number | null;
        /** Lethal down to here at least. [metres] */
        depth_reached_metres: number | null;
        /** Deepest place where eggs may lie. [metres] */
        target_depth_metres: number | null;
        /** Length of its lethal stretches. [metres] */
        lethal_metres: number;
        /** Which parts are to do again. */
        redo: {
          /** Start. [metres] */
          from_metres: number;
          /** End. [metres] */
          to_metres: number;
          /** Why it is not lethal. */
          cause: "none" | "too_fast" | "near_limit" | "unclear_record" | "not_passed" | "saw_live_bug" | "no_model";
          /** What to do. */
          text: string;
        }[];
        /** Samples that the weights leave. */
        effective_samples: number;
        /** Size of the ensemble. */
        samples: number;
      } | null;
      /** What it is said to be. */
      state: "lethal" | "short" | "not_proven" | "barred" | "not_treated";
      /** Why it is that. */
      cause: {
        /** Short name for programs. */
        code: string;
        /** A sentence for people. */
        text: string;
      };
      /** Harm, apart from kill. */
      harm: "none" | "scorch" | "soak" | "barred" | "unknown";
      /** The redo list. */
      redo: {
        /** On the redo list. */
        state: "none" | "open" | "explained";
        /** Why it is not done again. */
        reason: string | null;
      };
    }[];
    /** Sums over edges. */
    counts: {
      /** Edges of this state. */
      lethal: number;
      /** Edges of this state. */
      short: number;
      /** Edges of this state. */
      not_proven: number;
      /** Edges of this state. */
      barred: number;
      /** Edges of this state. */
      not_treated: number;
      /** All edges. */
      edges: number;
      /** Of all edges. [metres] */
      length_metres: number;
      /** What was done. */
      treated: {
        /** Edges with a timed pass. */
        edges: number;
        /** Timed passes. */
        passes: number;
        /** Passed. [metres] */
        metres: number;
        /** Of passes. [seconds] */
        seconds: number;
      };
      /** Readings of the surface behind the head. */
      spot_readings: number;
      /** What was computed. */
      modelled: {
        /** Edges that were computed. */
        edges: number;
        /** Length found lethal. [metres] */
        lethal_metres: number;
      };
      /** Edges to do again or to explain. */
      redo_open: number;
      /** Edges not done again, with a reason. */
      redo_explained: number;
    };
    /** Why it could not be built. */
    error: string | null;
  }[];
  /** Sums over edges. */
  counts: {
    /** Edges of this state. */
    lethal: number;
    /** Edges of this state. */
    short: number;
    /** Edges of this state. */
    not_proven: number;
    /** Edges of this state. */
    barred: number;
    /** Edges of this state. */
    not_treated: number;
    /** All edges. */
    edges: number;
    /** Of all edges. [metres] */
    length_metres: number;
    /** What was done. */
    treated: {
      /** Edges with a timed pass. */
      edges: number;
      /** Timed passes. */
      passes: number;
      /** Passed. [metres] */
      metres: number;
      /** Of passes. [seconds] */
      seconds: number;
    };
    /** Readings of the surface behind the head. */
    spot_readings: number;
    /** What was computed. */
    modelled: {
      /** Edges that were computed. */
      edges: number;
      /** Length found lethal. [metres] */
      lethal_metres: number;
    };
    /** Edges to do again or to explain. */
    redo_open: number;
    /** Edges not done again, with a reason. */
    redo_explained: number;
  };
  /** Size of the ensemble. */
  samples: number;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** When every surviving egg has hatched, and until when a return visit comes before new eggs. */
export type FollowUpRequest = {
  /** Of the home until the return visit, where eggs lie. [celsius] [at least -40, at most 60] */
  temperature_celsius?: number | string;
  /** A log of the room since the treatment, joined by straight lines. */
  series?: {
    /** Times. [2 entries or more] */
    days?: (number | string)[];
    /** Times. [2 entries or more] */
    seconds?: (number | string)[];
    /** One temperature for each time. [2 entries or more] */
    celsius: (number | string)[];
  };
  /** Day of the treatment. */
  treated_on: string;
  /** Of these temperatures, up and down; widens both ends. [kelvin] [at least 0, at most 10] Default 1. */
  uncertainty_celsius?: number | string;
  /** What the calendar entry is about; no names of persons. */
  title?: string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type FollowUpAnswer = {
  /** An egg laid on the day of the treatment hatches no sooner (fast bound); older eggs hatch before, from the first day on. [days] */
  first_hatch_days: number | null;
  /** By then all surviving eggs have hatched (slow bound). [days] */
  last_hatch_days: number | null;
  /** First day of the return window. */
  return_from: string | null;
  /** Its last day, before new eggs. */
  return_to: string | null;
  /** Days after the treatment. */
  return_from_days: number | null;
  /** Days after the treatment. */
  return_to_days: number | null;
  /** No nymph from a surviving egg is grown up sooner (fast bound, from an egg that was about to hatch). [days] */
  next_adult_days: number | null;
  /** No egg of such an adult is laid sooner. [days] */
  first_new_egg_days: number | null;
  /** From laying to adult at the middle temperature, as tables print it; for comparison, the window does not use it. [days] */
  adult_from_fresh_egg_days: number | null;
  /** Whether there is a window, and why not. */
  reason: {
    /** Short name for programs. */
    code: string;
    /** A sentence for people. */
    text: string;
  };
  /** Common practice, no source. */
  custom: {
    /** The customary interval. [days] */
    days: number;
    /** Its day. */
    on: string;
    /** Against the window. */
    verdict: "too_early" | "inside" | "too_late" | "no_date";
    /** In words. */
    text: string;
  };
  /** That was counted with, uncertainty taken off. [celsius] */
  lowest_celsius: number;
  /** That was counted with, uncertainty added. [celsius] */
  highest_celsius: number;
  /** In one sentence. */
  text: string;
  /** An iCalendar file (.ics) with the window; null without one. */
  calendar: string | null;
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** The client report: found, done, measured, computed, not done and why, how sure. */
export type ReportRequest = {
  /** State of a job, as the question fold_events gives it. */
  state: {
    [key: string]: unknown;
  };
  /** Answers of the question treated: one for the job, or one for each item. [0 to 400 entries] */
  treated: {
    /** Items. */
    items: {
      /** Its subject in the record. */
      id: string;
      /** As people call it. */
      title: string;
      /** Kind of item. */
      kind: string;
      /** Title of its room; empty without one. */
      room: string;
      /** The method that was chosen for it. */
      method: string | null;
      /** Request of the question furniture, for its drawing. */
      furniture: unknown;
      /** Part by part. */
      edges: {
        /** Name of the edge, as furniture gives it. */
        id: string;
        /** In words. */
        title: string;
        /** Part of the item. */
        part: string;
        /** Kind of edge. */
        kind: string;
        /** Along the line. [metres] */
        length_metres: number | string;
        /** Reached without moving anything. */
        in_sight: boolean;
        /** What was done. */
        treated: {
          /** Timed passes. */
          passes: number;
          /** Passed, repeats counted again. [metres] */
          metres: number | string;
          /** Of these passes. [seconds] */
          seconds: number | string;
        };
        /** Statements about it. */
        marks: {
          /** A word of edge_mark/1. */
          what: string;
          /** As stated. */
          reason?: string;
          /** Where along the edge. [metres] */
          at_metres?: number | string;
        }[];
        /** Readings of the surface behind the head. */
        spot_readings: number;
        /** What as_treated computed of an edge. */
        modelled: {
          /** SHA-256 of everything it was computed from. */
          asked: string;
          /** Fold_test, prior or head. */
          basis: string;
          /** Of the passes. */
          verdict: "lethal" | "short" | "not_proven";
          /** What decided. */
          reason: {
            /** Short name for programs. */
            code: string;
            /** A sentence for people. */
            text: string;
          };
          /** Harm, apart from kill. */
          harm: "none" | "scorch" | "soak" | "barred" | "unknown";
          /** Of the hardest stage, at most 0.99. */
          kill_probability: number | null;
          /** Lethal down to here at least. [metres] */
          depth_reached_metres: number | string | null;
          /** Deepest place where eggs may lie. [metres] */
          target_depth_metres: number | string | null;
          /** Length of its lethal stretches. [metres] */
          lethal_metres: number | string;
          /** Which parts are to do again. */
          redo: {
            /** Start. [metres] */
            from_metres: number | string;
            /** End. [metres] */
            to_metres: number | string;
            /** Why it is not lethal. */
            cause: "none" | "too_fast" | "near_limit" | "unclear_record" | "not_passed" | "saw_live_bug" | "no_model";
            /** What to do. */
            text: string;
          }[];
          /** Samples that the weights leave. */
          effective_samples: number;
          /** Size of the ensemble. */
          samples: number;
        } | null;
        /** What it is said to be. */
        state: "lethal" | "short" | "not_proven" | "barred" | "not_treated";
        /** Why it is that. */
        cause: {
          /** Short name for programs. */
          code: string;
          /** A sentence for people. */
          text: string;
        };
        /** Harm, apart from kill. */
        harm: "none" | "scorch" | "soak" | "barred" | "unknown";
        /** The redo list. */
        redo: {
          /** On the redo list. */
          state: "none" | "open" | "explained";
          /** Why it is not done again. */
          reason: string | null;
        };
      }[];
      /** Sums over edges. */
      counts: {
        /** Edges of this state. */
        lethal: number;
        /** Edges of this state. */
        short: number;
        /** Edges of this state. */
        not_proven: number;
        /** Edges of this state. */
        barred: number;
        /** Edges of this state. */
        not_treated: number;
        /** All edges. */
        edges: number;
        /** Of all edges. [metres] */
        length_metres: number | string;
        /** What was done. */
        treated: {
          /** Edges with a timed pass. */
          edges: number;
          /** Timed passes. */
          passes: number;
          /** Passed. [metres] */
          metres: number | string;
          /** Of passes. [seconds] */
          seconds: number | string;
        };
        /** Readings of the surface behind the head. */
        spot_readings: number;
        /** What was computed. */
        modelled: {
          /** Edges that were computed. */
          edges: number;
          /** Length found lethal. [metres] */
          lethal_metres: number | string;
        };
        /** Edges to do again or to explain. */
        redo_open: number;
        /** Edges not done again, with a reason. */
        redo_explained: number;
      };
      /** Why it could not be built. */
      error: string | null;
    }[];
    [key: string]: unknown;
  }[];
  /** Answer of the question follow_up. */
  follow_up?: {
    /** Its sentence. */
    text: string;
    [key: string]: unknown;
  };
  /** Open contradictions, as fold_events gives them. */
  conflicts?: unknown[];
  /** Day on which the report is written. */
  on?: string;
  /** Of the record that all of this was made from. */
  state_hash: string;
  /** Facts of that record. [at least 0] Default 0. */
  event_count?: number;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type ReportAnswer = {
  /** Title of the document. */
  title: {
    /** What is said, for programs. */
    code: string;
    /** The values that stand in it. */
    parameters: unknown;
    /** In words. */
    text: string;
    /** Item it is about. */
    item?: string;
    /** Edge it is about. */
    edge?: string;
    /** State it speaks of: a word of the question treated. */
    state?: string;
  };
  /** Of its text: en, en-GB or es. */
  language: string;
  /** Day. */
  on: string | null;
  /** In reading order. */
  blocks: {
    /** Summary, found, treated, measured, modelled, not_treated, redo, harm, hidden_spots, damage_before, next_visit, cautions, how_sure. */
    code: string;
    /** In words. */
    heading: string;
    /** Sentences. */
    lines: {
      /** What is said, for programs. */
      code: string;
      /** The values that stand in it. */
      parameters: unknown;
      /** In words. */
      text: string;
      /** Item it is about. */
      item?: string;
      /** Edge it is about. */
      edge?: string;
      /** State it speaks of: a word of the question treated. */
      state?: string;
    }[];
    /** Entries of a list. */
    rows: {
      /** What is said, for programs. */
      code: string;
      /** The values that stand in it. */
      parameters: unknown;
      /** In words. */
      text: string;
      /** Item it is about. */
      item?: string;
      /** Edge it is about. */
      edge?: string;
      /** State it speaks of: a word of the question treated. */
      state?: string;
    }[];
  }[];
  /** What to draw beside them. */
  items: {
    /** Its subject. */
    id: string;
    /** Its name. */
    title: string;
    /** Its room. */
    room: string;
    /** Request of furniture, for its drawing. */
    furniture: unknown;
    /** State of each edge. */
    states: Record<string, string>;
    /** Sums over edges. */
    counts: {
      /** Edges of this state. */
      lethal: number;
      /** Edges of this state. */
      short: number;
      /** Edges of this state. */
      not_proven: number;
      /** Edges of this state. */
      barred: number;
      /** Edges of this state. */
      not_treated: number;
      /** All edges. */
      edges: number;
      /** Of all edges. [metres] */
      length_metres: number;
      /** What was done. */
      treated: {
        /** Edges with a timed pass. */
        edges: number;
        /** Timed passes. */
        passes: number;
        /** Passed. [metres] */
        metres: number;
        /** Of passes. [seconds] */
        seconds: number;
      };
      /** Readings of the surface behind the head. */
      spot_readings: number;
      /** What was computed. */
      modelled: {
        /** Edges that were computed. */
        edges: number;
        /** Length found lethal. [metres] */
        lethal_metres: number;
      };
      /** Edges to do again or to explain. */
      redo_open: number;
      /** Edges not done again, with a reason. */
      redo_explained: number;
    };
  }[];
  /** Sums over edges. */
  counts: {
    /** Edges of this state. */
    lethal: number;
    /** Edges of this state. */
    short: number;
    /** Edges of this state. */
    not_proven: number;
    /** Edges of this state. */
    barred: number;
    /** Edges of this state. */
    not_treated: number;
    /** All edges. */
    edges: number;
    /** Of all edges. [metres] */
    length_metres: number;
    /** What was done. */
    treated: {
      /** Edges with a timed pass. */
      edges: number;
      /** Timed passes. */
      passes: number;
      /** Passed. [metres] */
      metres: number;
      /** Of passes. [seconds] */
      seconds: number;
    };
    /** Readings of the surface behind the head. */
    spot_readings: number;
    /** What was computed. */
    modelled: {
      /** Edges that were computed. */
      edges: number;
      /** Length found lethal. [metres] */
      lethal_metres: number;
    };
    /** Edges to do again or to explain. */
    redo_open: number;
    /** Edges not done again, with a reason. */
    redo_explained: number;
  };
  /** What this document stands on. */
  basis: {
    /** Version that computed it. */
    engine: string;
    /** Data files it rests on. */
    data: string[];
    /** Least size of the ensembles. */
    samples: number;
    /** Least that the weights left. */
    effective_samples: number | null;
    /** Of the record. */
    state_hash: string;
    /** Facts. */
    event_count: number;
  };
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

/** Whether a thermometer is right, by what it showed in melting ice or boiling water. */
export type ProbeCheckRequest = {
  /** What the probe was held into. */
  in: "melting_ice" | "boiling_water";
  /** What it showed when it stood still. [celsius] [at least -25, at most 130] */
  shown_celsius: number | string;
  /** Station pressure by barometer. [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** Height above sea level, if no pressure is given. [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** Language of the sentences in the answer or refusal; changes no number, code or key. */
  language?: "en-US" | "en-GB" | "es";
};

export type ProbeCheckAnswer = {
  /** Of the bath. [celsius] */
  bath_celsius: number;
  /** Of the bath, up and down. [kelvin] */
  bath_spread_kelvin: number;
  /** Shown less bath; above zero: reads too hot. [kelvin] */
  error_kelvin: number;
  /** That a probe may be off. [kelvin] */
  tolerance_kelvin: number;
  /** Whether its readings can prove anything. */
  verdict: "sound" | "not_proven" | "off";
  /** The verdict in words. */
  reason: {
    /** Short name for programs. */
    code: string;
    /** A sentence for people. */
    text: string;
  };
  /** Version of the engine that answered. */
  engine: string;
  /** Data files that the answer rests on. */
  data: string[];
  /** What the person should know besides the answer. */
  warnings: {
    /** Stable word for programs. */
    code: string;
    /** The warning in a sentence. */
    text: string;
  }[];
};

export interface Questions {
  saturation: { request: SaturationRequest; answer: SaturationAnswer };
  conduction: { request: ConductionRequest; answer: ConductionAnswer };
  dose: { request: DoseRequest; answer: DoseAnswer };
  pass: { request: PassRequest; answer: PassAnswer };
  fold_test: { request: FoldTestRequest; answer: FoldTestAnswer };
  pace: { request: PaceRequest; answer: PaceAnswer };
  at_pace: { request: AtPaceRequest; answer: AtPaceAnswer };
  as_treated: { request: AsTreatedRequest; answer: AsTreatedAnswer };
  boiler: { request: BoilerRequest; answer: BoilerAnswer };
  jet: { request: JetRequest; answer: JetAnswer };
  catalogue: { request: CatalogueRequest; answer: CatalogueAnswer };
  furniture: { request: FurnitureRequest; answer: FurnitureAnswer };
  survey: { request: SurveyRequest; answer: SurveyAnswer };
  plan: { request: PlanRequest; answer: PlanAnswer };
  method: { request: MethodRequest; answer: MethodAnswer };
  visit: { request: VisitRequest; answer: VisitAnswer };
  preparation: { request: PreparationRequest; answer: PreparationAnswer };
  visit_requests: { request: VisitRequestsRequest; answer: VisitRequestsAnswer };
  fold_events: { request: FoldEventsRequest; answer: FoldEventsAnswer };
  job_requests: { request: JobRequestsRequest; answer: JobRequestsAnswer };
  treated: { request: TreatedRequest; answer: TreatedAnswer };
  follow_up: { request: FollowUpRequest; answer: FollowUpAnswer };
  report: { request: ReportRequest; answer: ReportAnswer };
  probe_check: { request: ProbeCheckRequest; answer: ProbeCheckAnswer };
}

export type QuestionName = keyof Questions;

export const question_names = [
  "saturation",
  "conduction",
  "dose",
  "pass",
  "fold_test",
  "pace",
  "at_pace",
  "as_treated",
  "boiler",
  "jet",
  "catalogue",
  "furniture",
  "survey",
  "plan",
  "method",
  "visit",
  "preparation",
  "visit_requests",
  "fold_events",
  "job_requests",
  "treated",
  "follow_up",
  "report",
  "probe_check",
] as const satisfies readonly QuestionName[];
