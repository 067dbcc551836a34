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
  /** temperature of boiling water; beside a steam fraction: of a surface [celsius] [at least 0, at most 350] */
  temperature_celsius?: number | string;
  /** absolute pressure; beside a steam fraction: of the mixture [pascal] [at least 611.213, at most 16529164] */
  pressure_pascal?: number | string;
  /** elevation above sea level, from which the standard atmosphere gives the pressure [metres] [at least -500, at most 6000] */
  elevation_metres?: number | string;
  /** moles of steam per mole of the mixture of steam and air [fraction] [more than 0, at most 1] */
  steam_fraction?: number | string;
};

export type SaturationAnswer = {
  /** saturation pressure; of a mixture: its whole pressure [pascal] */
  pressure_pascal: number;
  /** saturation temperature [celsius] */
  temperature_celsius?: number;
  /** where steam begins to condense from the mixture; no wet surface gets hotter [celsius] */
  dew_temperature_celsius?: number;
  /** the steam's share of the pressure [pascal] */
  steam_pressure_pascal?: number;
  /** whether steam condenses on a surface of the given temperature */
  condenses?: boolean;
  /** heat released by condensing [joules per kilogram] */
  latent_heat_joules_per_kilogram: number;
  /** density of saturated vapour [kilograms per m3] */
  vapour_density_kilograms_per_m3: number;
  /** density of saturated liquid [kilograms per m3] */
  liquid_density_kilograms_per_m3: number;
  /** enthalpy of saturated liquid, zero at the triple point [joules per kilogram] */
  liquid_enthalpy_joules_per_kilogram: number;
  /** enthalpy of saturated vapour, the same zero [joules per kilogram] */
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
  /** layers from the front face inwards [1 to 100 entries] */
  layers: {
    /** thickness [metres] [more than 0, at most 100] */
    thickness_metres: number | string;
    /** thermal conductivity [watts per metre kelvin] [more than 0, at most 5000] */
    conductivity_watts_per_metre_kelvin: number | string;
    /** heat capacity per volume: density times specific heat [joules per m3 kelvin] [more than 0, at most 100000000] */
    heat_capacity_joules_per_m3_kelvin: number | string;
    /** start temperature of this layer, if it differs [celsius] [at least -273.15, at most 2000] */
    start_celsius?: number | string;
  }[];
  /** temperature of the stack at the start [celsius] [at least -273.15, at most 2000] */
  start_celsius: number | string;
  /** the front face */
  front: {
    /** what happens at the face */
    kind: "fixed";
    /** temperature of the face [celsius] [at least -273.15, at most 2000] */
    celsius: number | string;
  } | {
    /** what happens at the face */
    kind: "convective";
    /** temperature of the fluid [celsius] [at least -273.15, at most 2000] */
    celsius: number | string;
    /** film coefficient [watts per m2 kelvin] [more than 0, at most 1000000] */
    film_watts_per_m2_kelvin: number | string;
  } | {
    /** what happens at the face */
    kind: "flux";
    /** heat flux into the stack, negative if cooled [watts per m2] [at least -10000000, at most 10000000] */
    flux_watts_per_m2: number | string;
  } | {
    /** what happens at the face */
    kind: "insulated";
  };
  /** the back face; insulated if left out Default {"kind":"insulated"}. */
  back?: {
    /** what happens at the face */
    kind: "fixed";
    /** temperature of the face [celsius] [at least -273.15, at most 2000] */
    celsius: number | string;
  } | {
    /** what happens at the face */
    kind: "convective";
    /** temperature of the fluid [celsius] [at least -273.15, at most 2000] */
    celsius: number | string;
    /** film coefficient [watts per m2 kelvin] [more than 0, at most 1000000] */
    film_watts_per_m2_kelvin: number | string;
  } | {
    /** what happens at the face */
    kind: "flux";
    /** heat flux into the stack, negative if cooled [watts per m2] [at least -10000000, at most 10000000] */
    flux_watts_per_m2: number | string;
  } | {
    /** what happens at the face */
    kind: "insulated";
  };
  /** places asked for [1 to 500 entries] */
  depths_metres: (number | string)[];
  /** moments asked for [1 to 1000 entries] */
  times_seconds: (number | string)[];
};

export type ConductionAnswer = {
  /** one row per time, in the order asked */
  temperatures_celsius: number[][];
  /** heat balance up to the last asked time */
  energy: {
    /** heat that came in through the front face [joules per m2] */
    front_joules_per_m2: number;
    /** heat that came in through the back face [joules per m2] */
    back_joules_per_m2: number;
    /** heat stored since the start [joules per m2] */
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
  /** stage of the bug */
  stage: "egg" | "nymph" | "adult";
  /** readings, joined by straight lines */
  series: {
    /** times, strictly increasing [2 to 1000000 entries] */
    seconds: (number | string)[];
    /** temperatures at the coldest place where a bug can sit, one for each time [2 to 1000000 entries] */
    celsius: (number | string)[];
  };
  /** what heats the place Default "air". */
  exposure?: "air" | "steam";
  /** taken off every reading [kelvin] [at least 0, at most 20] Default 0. */
  uncertainty_celsius?: number | string;
  /** longer intervals are gaps and earn nothing; if left out, more than four usual intervals of a log of six readings or more [seconds] [more than 0] */
  longest_gap_seconds?: number | string;
  /** override, for checking [kelvin] [at least 1, at most 20] */
  z_kelvin?: number | string;
  /** override, for checking [celsius] [at least -273.15, at most 100] */
  onset_celsius?: number | string;
  /** override, for checking [celsius] [at least 30, at most 1000] */
  cap_celsius?: number | string;
};

export type DoseAnswer = {
  /** dose at the worse z, in minutes at the reference temperature [minutes] */
  equivalent_minutes: number;
  /** reference temperature of the stage [celsius] */
  reference_celsius: number;
  /** dose that kills 99 % [minutes] */
  lt99_minutes: number;
  /** R, the dose over it */
  ratio_to_lt99: number;
  /** R that a verdict lethal asks for */
  required_ratio: number;
  /** verdict for this stage */
  verdict: "lethal" | "short" | "not_proven";
  /** what the verdict rests on */
  verdict_reason: {
    /** why */
    code: "enough" | "too_little" | "near_limit" | "slow_ramp" | "gap" | "coarse_readings" | "body_lag" | "overridden";
    /** in a sentence */
    text: string;
  };
  /** both ends of the range of z */
  by_z: {
    /** temperature difference of a tenfold change of time [kelvin] */
    z_kelvin: number;
    /** dose [minutes] */
    equivalent_minutes: number;
  }[];
  /** below it nothing is earned [celsius] */
  onset_celsius: number;
  /** above it nothing more is earned [celsius] */
  cap_celsius: number;
  /** highest reading, uncertainty taken off [celsius] */
  highest_celsius: number;
  /** R of the body: of an egg, or of an unfed nymph or adult */
  ratio_with_body_lag: number;
  /** R of a fed adult, shown apart: it is large and in sight */
  ratio_engorged?: number;
  /** mean rate of the rise, in K/min, from the onset to the egg's reference */
  ramp_kelvin_per_minute?: number;
  /** holes of the log that earned nothing */
  gaps: {
    /** last reading before [seconds] */
    from_seconds: number;
    /** first reading after [seconds] */
    to_seconds: number;
  }[];
  /** share of bugs of this stage that this kills, over the disagreement of studies; at most 0.99 */
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
  /** a head with its towel, as the cloth feels it */
  head: {
    /** contact length along the travel [metres] [at least 0.002, at most 1] */
    length_metres: number | string;
    /** dew temperature of the steam under the head [celsius] [more than 0, at most 110] */
    dew_celsius: number | string;
    /** effective exchange between steam and surface [watts per m2 kelvin] [at least 10, at most 10000] */
    film_watts_per_m2_kelvin: number | string;
    /** most heat the supply can bring [watts per m2] [at least 1000, at most 1000000] */
    flux_cap_watts_per_m2: number | string;
    /** speed at which steam is pushed into the cloth [metres per second] [at least 0, at most 0.1] */
    forced_gas_metres_per_second: number | string;
    /** reach of the weaker steam before and behind the head [metres] [at least 0, at most 0.2] Default 0.02. */
    skirt_length_metres?: number | string;
    /** strength of the skirt against that under the head [at least 0, at most 1] Default 0.25. */
    skirt_factor?: number;
    /** speed of the head along the edge [metres per second] [at least 0.0005, at most 1] */
    pace_metres_per_second: number | string;
  };
  /** layers from the steamed surface down [1 to 12 entries] */
  stack: {
    /** key of a material of the data files */
    material?: string;
    /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
    thickness_metres?: number | string;
    /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
    heat_capacity_joules_per_m3_kelvin?: number | string;
    /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
    conductivity_watts_per_metre_kelvin?: number | string;
    /** whether steam can enter */
    permeable?: boolean;
    /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
    porosity?: number;
    /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
    tortuosity?: number;
    /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
    sorption_scale_kilograms_per_m3?: number | string;
  }[];
  /** how well vapour moves in this cloth, against the model's cloth (phi) [at least 0, at most 1.5] */
  vapour_efficiency: number;
  /** temperature of cloth and bugs before [celsius] [at least -25, at most 60] Default 20. */
  start_celsius?: number | string;
  /** relative humidity in the pores before [at least 0, at most 0.95] Default 0.5. */
  start_activity?: number;
  /** room air around the pass */
  air?: {
    /** exchange with room air [watts per m2 kelvin] [at least 1, at most 100] Default 10. */
    film_watts_per_m2_kelvin?: number | string;
    /** room temperature; the start temperature if left out [celsius] [at least -25, at most 60] */
    celsius?: number | string;
    /** of the room [at least 0, at most 1] Default 0.5. */
    relative_humidity?: number;
  };
  /** passes one after the other [at least 1, at most 10] Default 1. */
  passes?: number;
  /** time between passes [seconds] [at least 0.1, at most 3600] Default 20. */
  gap_seconds?: number | string;
  /** places asked for [1 to 64 entries] */
  depths_metres: (number | string)[];
  /** time watched after the last pass [seconds] [at least 1, at most 3600] Default 60. */
  observe_seconds?: number | string;
  /** station pressure by barometer [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** height above sea level, if no pressure is given [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
};

export type PassAnswer = {
  /** the places asked for */
  depths: {
    /** as asked [metres] */
    depth_metres: number;
    /** highest temperature [celsius] */
    peak_celsius: number;
    /** when, from the arrival of the leading skirt [seconds] */
    peak_seconds: number;
    /** log10 of the equivalent minutes at 48 C with z = 4 K over 71.5, without onset, cap or lag */
    log10_egg_dose: number;
  }[];
  /** per depth: what counts for a verdict */
  dose: {
    /** log10 of the dose ratio R at the worst z, body lag included */
    egg: number;
    /** log10 of the dose ratio R at the worst z, body lag included */
    nymph: number;
    /** log10 of the dose ratio R at the worst z, body lag included */
    adult: number;
    /** log10 of the dose ratio R at the worst z, body lag included */
    engorged_adult: number;
  }[];
  /** water gained when the head has passed [grams per m2] */
  water_gain_at_cover_end_grams_per_m2: number;
  /** water gained when the steam ends [grams per m2] */
  water_gain_at_liftoff_grams_per_m2: number;
  /** of it not vapour in the pores [grams per m2] */
  condensate_at_liftoff_grams_per_m2: number;
  /** when the steam ends [seconds] */
  liftoff_seconds: number;
  /** the surface afterwards */
  surface_after_celsius: {
    /** after the steam ends [seconds] */
    seconds_after: number;
    /** of the surface [celsius] */
    celsius: number;
  }[];
  /** highest temperature of any place while steamed [celsius] */
  highest_celsius: number;
  /** times of the table */
  times_seconds: number[];
  /** per time */
  temperatures_celsius: number[][];
  /** closure of the books */
  ledger: {
    /** energy that the march lost, of what came in */
    energy_error_relative: number;
    /** water that the march lost, of what came in */
    water_error_relative: number;
  };
  /** hash of the discrete choices of the run */
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
  /** name of the machine */
  machine: string;
  /** the head; without a size, 80 mm along the travel and 200 mm across (estimate) */
  head: string | {
    /** name of the head */
    name: string;
    /** contact length along the travel [metres] [at least 0.01, at most 0.6] Default 0.08. */
    length_metres?: number | string;
    /** across the travel [metres] [at least 0.005, at most 0.6] Default 0.2. */
    width_metres?: number | string;
  };
  /** towel during the test Default "none". */
  towel?: "none" | "wrapped" | "laid";
  /** the thermometer; without it no lag is corrected, which can only read low */
  probe?: {
    /** time in which the probe covers 63 % of a jump [seconds] [at least 0, at most 60] */
    time_constant_seconds: number | string;
  };
  /** temperature of the fold before each pass [celsius] [at least -20, at most 50] Default 20. */
  start_celsius?: number | string;
  /** what the fold was made of: a covering of the furniture, or test_fold Default "test_fold". */
  covering?: string;
  /** one layer of the test fold, when readings count layers [1 entries] */
  cloth?: {
    /** key of a material of the data files */
    material?: string;
    /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
    thickness_metres?: number | string;
    /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
    heat_capacity_joules_per_m3_kelvin?: number | string;
    /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
    conductivity_watts_per_metre_kelvin?: number | string;
    /** whether steam can enter */
    permeable?: boolean;
    /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
    porosity?: number;
    /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
    tortuosity?: number;
    /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
    sorption_scale_kilograms_per_m3?: number | string;
  }[];
  /** what lies under the fold [1 to 12 entries] */
  under?: {
    /** key of a material of the data files */
    material?: string;
    /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
    thickness_metres?: number | string;
    /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
    heat_capacity_joules_per_m3_kelvin?: number | string;
    /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
    conductivity_watts_per_metre_kelvin?: number | string;
    /** whether steam can enter */
    permeable?: boolean;
    /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
    porosity?: number;
    /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
    tortuosity?: number;
    /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
    sorption_scale_kilograms_per_m3?: number | string;
  }[];
  /** pace at which the practice target is judged [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
  working_pace_metres_per_second?: number | string;
  /** size of the ensemble; verdicts use 1024 [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** the passes [1 to 64 entries] */
  readings: {
    /** speed of the head [metres per second] [at least 0.001, at most 0.3] */
    pace_metres_per_second?: number | string;
    /** way of the head [metres] [more than 0, at most 10] */
    distance_metres?: number | string;
    /** time for that way [seconds] [more than 0, at most 600] */
    seconds?: number | string;
    /** what lay over the tip */
    layers: number | {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** highest reading of the pass [celsius] [at least -20, at most 120] */
    peak_celsius: number | string;
  }[];
  /** station pressure by barometer [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** height above sea level, if no pressure is given [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
};

export type FoldTestAnswer = {
  /** what this machine, head and towel deliver */
  posterior: {
    /** dew temperature of the steam under the head: the ceiling of any wet surface */
    dew_temperature_celsius: {
      /** weighted mean [celsius] */
      mean: number;
      /** standard deviation [kelvin] */
      sd: number;
      /** quantiles */
      quantiles: {
        /** 5 % [celsius] */
        p05: number;
        /** 25 % [celsius] */
        p25: number;
        /** half [celsius] */
        p50: number;
        /** 75 % [celsius] */
        p75: number;
        /** 95 % [celsius] */
        p95: number;
      };
    };
    /** effective exchange between steam and cloth */
    film_watts_per_m2_kelvin: {
      /** weighted mean [watts per m2 kelvin] */
      mean: number;
      /** standard deviation [watts per m2 kelvin] */
      sd: number;
      /** quantiles */
      quantiles: {
        /** 5 % [watts per m2 kelvin] */
        p05: number;
        /** 25 % [watts per m2 kelvin] */
        p25: number;
        /** half [watts per m2 kelvin] */
        p50: number;
        /** 75 % [watts per m2 kelvin] */
        p75: number;
        /** 95 % [watts per m2 kelvin] */
        p95: number;
      };
    };
    /** how well vapour moves in this cloth (phi) */
    vapour_efficiency: {
      /** weighted mean */
      mean: number;
      /** standard deviation */
      sd: number;
      /** quantiles */
      quantiles: {
        /** 5 % */
        p05: number;
        /** 25 % */
        p25: number;
        /** half */
        p50: number;
        /** 75 % */
        p75: number;
        /** 95 % */
        p95: number;
      };
    };
    /** speed at which steam is pushed into the cloth */
    forced_gas_metres_per_second: {
      /** weighted mean [metres per second] */
      mean: number;
      /** standard deviation [metres per second] */
      sd: number;
      /** quantiles */
      quantiles: {
        /** 5 % [metres per second] */
        p05: number;
        /** 25 % [metres per second] */
        p25: number;
        /** half [metres per second] */
        p50: number;
        /** 75 % [metres per second] */
        p75: number;
        /** 95 % [metres per second] */
        p95: number;
      };
    };
  };
  /** size of the ensemble */
  samples: number;
  /** samples that the weights leave */
  effective_samples: number;
  /** egg kill at working pace under the deepest tested layers */
  verdict: "lethal" | "short" | "not_proven";
  /** why */
  verdict_reason: {
    /** short name for programs */
    code: string;
    /** a sentence for people */
    text: string;
  };
  /** against the practice target */
  practice: {
    /** lower end of the practice target (common practice) [celsius] */
    low_celsius: number;
    /** upper end [celsius] */
    high_celsius: number;
    /** working pace judged [metres per second] */
    pace_metres_per_second: number;
    /** layers over the tip judged */
    layers: number;
    /** whether the fold reaches the practice target */
    reached: "yes" | "no" | "not_proven";
    /** weight that reaches it */
    probability: number;
    /** in words */
    text: string;
  };
  /** the fold over pace */
  fold_celsius_at: {
    /** pace [metres per second] */
    pace_metres_per_second: number;
    /** layers over the place */
    layers: number;
    /** below the surface [metres] */
    depth_metres: number;
    /** peak in the fold */
    quantiles: {
      /** 5 % of the weight lies below [celsius] */
      p05: number;
      /** 25 % of the weight lies below [celsius] */
      p25: number;
      /** half of the weight lies below [celsius] */
      p50: number;
      /** 75 % of the weight lies below [celsius] */
      p75: number;
      /** 95 % of the weight lies below [celsius] */
      p95: number;
    };
    /** weight that kills eggs, nymphs and unfed adults */
    lethal_share: number;
  }[];
  /** how the readings fit */
  readings: {
    /** from 0 */
    index: number;
    /** as given [celsius] */
    measured_celsius: number;
    /** what the model expects the probe to show [celsius] */
    expected_celsius: number;
    /** (measured - expected) / 2.5 K */
    standard_score: number;
    /** when it does not fit */
    remark?: string;
  }[];
  /** what your steamer does, in words */
  words: string[];
  /** what the readings cannot tell */
  unidentified: string[];
  /** which reading would tell most */
  next_reading: {
    /** over the tip */
    layers: number;
    /** pace [metres per second] */
    pace_metres_per_second: number;
    /** in words */
    text: string;
  };
  /** what a fold test found, in the form that pace and plan take */
  calibration: {
    /** whether readings stand behind it; false: the prior */
    tested: boolean;
    /** machine, head and towel */
    head_key: string;
    /** head and covering */
    cloth_key: string;
    /** covering that was tested */
    covering: string;
    /** towel during the test */
    towel: "none" | "wrapped" | "laid";
    /** contact length along the travel [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number;
    /** air pressure at the test [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number;
    /** most probable scores [4 entries] */
    mode: number[];
    /** lower triangle of the Laplace map [4 entries] */
    factor: number[][];
    /** of the samples, sum 1 [16 to 4096 entries] */
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
  /** a head with its towel, as the cloth feels it */
  head?: {
    /** contact length along the travel [metres] [at least 0.002, at most 1] */
    length_metres: number | string;
    /** dew temperature of the steam under the head [celsius] [more than 0, at most 110] */
    dew_celsius: number | string;
    /** effective exchange between steam and surface [watts per m2 kelvin] [at least 10, at most 10000] */
    film_watts_per_m2_kelvin: number | string;
    /** most heat the supply can bring [watts per m2] [at least 1000, at most 1000000] */
    flux_cap_watts_per_m2: number | string;
    /** speed at which steam is pushed into the cloth [metres per second] [at least 0, at most 0.1] */
    forced_gas_metres_per_second: number | string;
    /** reach of the weaker steam before and behind the head [metres] [at least 0, at most 0.2] Default 0.02. */
    skirt_length_metres?: number | string;
    /** strength of the skirt against that under the head [at least 0, at most 1] Default 0.25. */
    skirt_factor?: number;
    /** of this cloth, if known (phi) [at least 0, at most 1.5] */
    vapour_efficiency?: number;
    /** towel that belongs to these values Default "none". */
    towel?: "none" | "wrapped" | "laid";
  };
  /** fold tests of this machine, head and towel */
  fold_test?: {
    /** name of the machine */
    machine: string;
    /** the head; without a size, 80 mm along the travel and 200 mm across (estimate) */
    head: string | {
      /** name of the head */
      name: string;
      /** contact length along the travel [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** across the travel [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** towel during the test Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** the thermometer; without it no lag is corrected, which can only read low */
    probe?: {
      /** time in which the probe covers 63 % of a jump [seconds] [at least 0, at most 60] */
      time_constant_seconds: number | string;
    };
    /** temperature of the fold before each pass [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** what the fold was made of: a covering of the furniture, or test_fold Default "test_fold". */
    covering?: string;
    /** one layer of the test fold, when readings count layers [1 entries] */
    cloth?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** what lies under the fold [1 to 12 entries] */
    under?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** pace at which the practice target is judged [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** size of the ensemble; verdicts use 1024 [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** the passes [1 to 64 entries] */
    readings: {
      /** speed of the head [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** way of the head [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** time for that way [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** what lay over the tip */
      layers: number | {
        /** key of a material of the data files */
        material?: string;
        /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** whether steam can enter */
        permeable?: boolean;
        /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
        porosity?: number;
        /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
        tortuosity?: number;
        /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** highest reading of the pass [celsius] [at least -20, at most 120] */
      peak_celsius: number | string;
    }[];
    /** station pressure by barometer [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** height above sea level, if no pressure is given [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
  } | {
    /** name of the machine */
    machine: string;
    /** the head; without a size, 80 mm along the travel and 200 mm across (estimate) */
    head: string | {
      /** name of the head */
      name: string;
      /** contact length along the travel [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** across the travel [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** towel during the test Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** the thermometer; without it no lag is corrected, which can only read low */
    probe?: {
      /** time in which the probe covers 63 % of a jump [seconds] [at least 0, at most 60] */
      time_constant_seconds: number | string;
    };
    /** temperature of the fold before each pass [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** what the fold was made of: a covering of the furniture, or test_fold Default "test_fold". */
    covering?: string;
    /** one layer of the test fold, when readings count layers [1 entries] */
    cloth?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** what lies under the fold [1 to 12 entries] */
    under?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** pace at which the practice target is judged [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** size of the ensemble; verdicts use 1024 [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** the passes [1 to 64 entries] */
    readings: {
      /** speed of the head [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** way of the head [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** time for that way [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** what lay over the tip */
      layers: number | {
        /** key of a material of the data files */
        material?: string;
        /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** whether steam can enter */
        permeable?: boolean;
        /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
        porosity?: number;
        /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
        tortuosity?: number;
        /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** highest reading of the pass [celsius] [at least -20, at most 120] */
      peak_celsius: number | string;
    }[];
    /** station pressure by barometer [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** height above sea level, if no pressure is given [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
  }[];
  /** what fold tests found */
  calibration?: {
    /** whether readings stand behind it; false: the prior */
    tested: boolean;
    /** machine, head and towel */
    head_key: string;
    /** head and covering */
    cloth_key: string;
    /** covering that was tested */
    covering: string;
    /** towel during the test */
    towel: "none" | "wrapped" | "laid";
    /** contact length along the travel [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** air pressure at the test [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** most probable scores [4 entries] */
    mode: number[];
    /** lower triangle of the Laplace map [4 entries] */
    factor: number[][];
    /** of the samples, sum 1 [16 to 4096 entries] */
    weights: number[];
  } | {
    /** whether readings stand behind it; false: the prior */
    tested: boolean;
    /** machine, head and towel */
    head_key: string;
    /** head and covering */
    cloth_key: string;
    /** covering that was tested */
    covering: string;
    /** towel during the test */
    towel: "none" | "wrapped" | "laid";
    /** contact length along the travel [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** air pressure at the test [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** most probable scores [4 entries] */
    mode: number[];
    /** lower triangle of the Laplace map [4 entries] */
    factor: number[][];
    /** of the samples, sum 1 [16 to 4096 entries] */
    weights: number[];
  }[];
  /** no test yet: what is usual */
  prior?: {
    /** name of the machine Default "machine". */
    machine?: string;
    /** name of the head Default "head". */
    head?: string;
    /** towel Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** contact length along the travel [metres] [at least 0.01, at most 0.6] Default 0.08. */
    length_metres?: number | string;
  };
  /** temperature of the item before [celsius] [at least -20, at most 50] Default 20. */
  start_celsius?: number | string;
  /** the covering is damp to the hand Default false. */
  damp?: boolean;
  /** confidence of kill and of no harm [at least 0.5, at most 0.99] Default 0.95. */
  confidence?: number;
  /** size of the ensemble where no fold test gives it; verdicts use 1024 [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** most water the covering may take up; 50 is an estimate, a hidden-spot test may show another [grams per m2] [at least 5, at most 500] Default 50. */
  wetting_limit_grams_per_m2?: number | string;
  /** station pressure by barometer [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** height above sea level, if no pressure is given [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** an edge, as furniture gives it in `treat` */
  edge: {
    /** what kind of edge */
    kind: "seam" | "welt" | "tape_edge" | "fold" | "quilting" | "pleat" | "skirt" | "zip" | "label" | "handle" | "tuft" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap";
    /** what covers it */
    covering: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
    /** what lies behind the covering Default "batting_foam". */
    fill?: "batting_foam" | "foam" | "wood" | "none";
    /** a finish of wood as furniture names it, or a key of the damage limits */
    finish?: string;
    /** the layers themselves, if known; then target_depth_metres too [1 to 12 entries] */
    stack?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** deepest place where an egg may lie [metres] [more than 0, at most 0.2] */
    target_depth_metres?: number | string;
    /** by a hidden-spot wetting test of this covering [grams per m2] [at least 5, at most 500] */
    wetting_limit_grams_per_m2?: number | string;
  };
};

export type PaceAnswer = {
  /** what the pace stands on */
  basis: "fold_test" | "prior" | "head";
  /** at the recommended pace; without a window at the fastest harmless one */
  verdict_at_recommended: "lethal" | "short" | "not_proven";
  /** harm, apart from kill */
  harm_at_recommended: "none" | "scorch" | "soak" | "barred" | "unknown";
  /** slowest and fastest [2 entries] */
  window_metres_per_second: number[] | null;
  /** the pace to plan [metres per second] */
  recommended_metres_per_second: number | null;
  /** how */
  style: "glide" | "place_hold_move" | null;
  /** for place_hold_move [seconds] */
  hold_seconds?: number;
  /** for place_hold_move [metres] */
  move_metres?: number;
  /** passes one after the other */
  passes: number;
  /** towel */
  towel: "none" | "wrapped" | "laid";
  /** the two limits */
  limited_by: {
    /** what forbids slower */
    low: "soak" | "scorch" | "steady_hand" | null;
    /** what forbids faster */
    high: "egg" | "mobile" | null;
  };
  /** why there is no window, or what limits it */
  reason: {
    /** short name for programs */
    code: string;
    /** a sentence for people */
    text: string;
  } | null;
  /** alternatives, looked at with a smaller ensemble, when there is no window */
  tried: {
    /** towel */
    towel: "none" | "wrapped" | "laid";
    /** passes */
    passes: number;
    /** slowest and fastest [2 entries] */
    window_metres_per_second: number[] | null;
    /** what was tried */
    text: string;
  }[];
  /** of the hardest stage, at most 0.99 */
  kill_probability_at_recommended: number | null;
  /** contact and escape included */
  kill_by_stage: {
    /** probability, printed at most as 0.99 */
    egg: number;
    /** probability, printed at most as 0.99 */
    nymph: number;
    /** probability, printed at most as 0.99 */
    adult: number;
  } | null;
  /** shown apart */
  engorged_adult: {
    /** probability, printed at most as 0.99 */
    kill_probability: number;
    /** what follows */
    text: string;
  } | null;
  /** water left at the recommended pace */
  condensate_grams_per_m2: {
    /** half [grams per m2] */
    p50: number;
    /** 95 % [grams per m2] */
    p95: number;
  } | null;
  /** with and without moving air, surface water only [2 entries] */
  dry_minutes: number[] | null;
  /** where the eggs are */
  target_depth_metres: {
    /** median of where eggs may sit [metres] */
    p50: number;
    /** target [metres] */
    p90: number;
  } | null;
  /** samples that the weights leave */
  effective_samples: number;
  /** size of the ensemble */
  samples: number;
  /** over pace */
  curve: {
    /** planned pace [metres per second] */
    pace_metres_per_second: number;
    /** weight that kills */
    lethal_share: number;
    /** weight that does no harm */
    harmless_share: number;
    /** peak where the eggs are */
    target_celsius_quantiles: {
      /** 5 % of the weight lies below [celsius] */
      p05: number;
      /** 25 % of the weight lies below [celsius] */
      p25: number;
      /** half of the weight lies below [celsius] */
      p50: number;
      /** 75 % of the weight lies below [celsius] */
      p75: number;
      /** 95 % of the weight lies below [celsius] */
      p95: number;
    };
    /** water left by the pass */
    condensate_grams_per_m2: {
      /** 5 % of the weight lies below [grams per m2] */
      p05: number;
      /** 25 % of the weight lies below [grams per m2] */
      p25: number;
      /** half of the weight lies below [grams per m2] */
      p50: number;
      /** 75 % of the weight lies below [grams per m2] */
      p75: number;
      /** 95 % of the weight lies below [grams per m2] */
      p95: number;
    };
  }[];
  /** the median case at the recommended pace (else one inch per second), as a request of the question pass; its depths are for the asker to choose */
  middle_case: unknown;
  /** for orientation: what the customary pace would do (common practice) */
  one_inch_per_second: {
    /** peak where the eggs are */
    target_celsius: {
      /** 5 % of the weight lies below [celsius] */
      p05: number;
      /** 25 % of the weight lies below [celsius] */
      p25: number;
      /** half of the weight lies below [celsius] */
      p50: number;
      /** 75 % of the weight lies below [celsius] */
      p75: number;
      /** 95 % of the weight lies below [celsius] */
      p95: number;
    };
    /** weight that kills */
    lethal_share: number;
    /** median [grams per m2] */
    condensate_grams_per_m2: number;
    /** in words */
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

/** A sofa or a mattress in three dimensions, with every edge that a steam head runs along. */
export type FurnitureRequest = {
  /** kind of furniture */
  item: "sofa" | "mattress";
  /** sofa: seats, three if left out [at least 1, at most 4] */
  seats?: number;
  /** mattress: named size, queen if left out */
  size?: "twin" | "twin_xl" | "full" | "queen" | "king" | "california_king" | "80x200" | "90x190" | "90x200" | "100x200" | "120x200" | "140x200" | "160x200" | "180x200";
  /** over the arms of a sofa, across a mattress; wins over size [metres] [at least 0, at most 10] */
  width_metres?: number | string;
  /** mattress: foot to head; wins over size [metres] [at least 0, at most 10] */
  length_metres?: number | string;
  /** sofa: front to back [metres] [at least 0, at most 10] */
  depth_metres?: number | string;
  /** sofa: floor to the top of the back cushions [metres] [at least 0, at most 10] */
  height_metres?: number | string;
  /** sofa: floor to the top of the seat cushions [metres] [at least 0, at most 10] */
  seat_height_metres?: number | string;
  /** sofa: floor to the top of the arms [metres] [at least 0, at most 10] */
  arm_height_metres?: number | string;
  /** sofa: one arm [metres] [at least 0, at most 10] */
  arm_width_metres?: number | string;
  /** sofa: floor to the underside [metres] [at least 0, at most 10] */
  leg_height_metres?: number | string;
  /** sofa: boxing of the seat cushions [metres] [at least 0, at most 10] */
  seat_cushion_thickness_metres?: number | string;
  /** sofa: boxing of the back cushions [metres] [at least 0, at most 10] */
  back_cushion_thickness_metres?: number | string;
  /** mattress [metres] [at least 0, at most 10] */
  thickness_metres?: number | string;
  /** mattress: floor to its underside; 0 lies on the floor [metres] [at least 0, at most 10] */
  base_height_metres?: number | string;
  /** sofa: a skirt hangs to the floor */
  skirted?: boolean;
  /** sofa: rows of buttons on the back cushions */
  tufted?: boolean;
  /** cloth; unknown for a sofa and mattress_tick for a mattress if left out */
  covering?: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
  /** sofa: finish of the wooden legs */
  finish?: "bare" | "oil" | "wax" | "shellac" | "lacquer" | "varnish" | "paint" | "unknown";
  /** most water the covering takes up without a mark, by a hidden-spot wetting test [grams per m2] [at least 5, at most 500] */
  wetting_limit_grams_per_m2?: number | string;
};

export type FurnitureAnswer = {
  /** as asked */
  item: string;
  /** in words */
  title: string;
  /** corners */
  vertices_metres: number[][];
  /** faces of convex bodies that touch and do not overlap */
  faces: {
    /** unique */
    name: string;
    /** its part */
    part: string;
    /** faces of one body close it */
    body: string;
    /** counter-clockwise from outside [3 to 1000 entries] */
    vertices: number[];
  }[];
  /** parts to open one by one */
  parts: {
    /** as faces and edges name it */
    name: string;
    /** in words */
    title: string;
  }[];
  /** every edge, part by part */
  edges: {
    /** stable name, from build to build */
    id: string;
    /** in words */
    title: string;
    /** kind of edge */
    kind: "seam" | "welt" | "tape_edge" | "fold" | "tuft" | "quilting" | "pleat" | "skirt" | "zip" | "handle" | "label" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap";
    /** name of its part */
    part: string;
    /** faces on which the line runs */
    faces: string[];
    /** the line; the first point comes again at the end of a closed one [2 to 1000 entries] */
    points_metres: number[][];
    /** along the line [metres] [more than 0] */
    length_metres: number;
    /** mean above the floor [metres] [at least 0] */
    height_metres: number;
    /** above the floor [2 entries] */
    height_range_metres: number[];
    /** reached without lifting a cushion, turning the item or opening anything */
    in_sight: boolean;
    /** what lies between head and bug; handed on unchanged as `edge` of the question pace */
    treat: {
      /** kind of edge */
      kind: "seam" | "welt" | "tape_edge" | "fold" | "tuft" | "quilting" | "pleat" | "skirt" | "zip" | "handle" | "label" | "vent" | "staple_line" | "dust_cover_edge" | "leg_joint" | "gap";
      /** cloth over it */
      covering: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
      /** what lies under the cloth */
      fill: "batting_foam" | "foam" | "wood" | "none";
      /** finish of the wood met there */
      finish?: "bare" | "oil" | "wax" | "shellac" | "lacquer" | "varnish" | "paint" | "unknown";
      /** by the wetting test of the item [grams per m2] */
      wetting_limit_grams_per_m2?: number;
    };
  }[];
  /** what the item was built with */
  dimensions: {
    /** what was measured */
    name: string;
    /** as built [metres] */
    value_metres: number;
    /** where the value comes from */
    source: string;
    /** given, handbook, practice, estimate, from memory */
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
  /** a head with its towel, as the cloth feels it */
  head?: {
    /** contact length along the travel [metres] [at least 0.002, at most 1] */
    length_metres: number | string;
    /** dew temperature of the steam under the head [celsius] [more than 0, at most 110] */
    dew_celsius: number | string;
    /** effective exchange between steam and surface [watts per m2 kelvin] [at least 10, at most 10000] */
    film_watts_per_m2_kelvin: number | string;
    /** most heat the supply can bring [watts per m2] [at least 1000, at most 1000000] */
    flux_cap_watts_per_m2: number | string;
    /** speed at which steam is pushed into the cloth [metres per second] [at least 0, at most 0.1] */
    forced_gas_metres_per_second: number | string;
    /** reach of the weaker steam before and behind the head [metres] [at least 0, at most 0.2] Default 0.02. */
    skirt_length_metres?: number | string;
    /** strength of the skirt against that under the head [at least 0, at most 1] Default 0.25. */
    skirt_factor?: number;
    /** of this cloth, if known (phi) [at least 0, at most 1.5] */
    vapour_efficiency?: number;
    /** towel that belongs to these values Default "none". */
    towel?: "none" | "wrapped" | "laid";
  };
  /** fold tests of this machine, head and towel */
  fold_test?: {
    /** name of the machine */
    machine: string;
    /** the head; without a size, 80 mm along the travel and 200 mm across (estimate) */
    head: string | {
      /** name of the head */
      name: string;
      /** contact length along the travel [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** across the travel [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** towel during the test Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** the thermometer; without it no lag is corrected, which can only read low */
    probe?: {
      /** time in which the probe covers 63 % of a jump [seconds] [at least 0, at most 60] */
      time_constant_seconds: number | string;
    };
    /** temperature of the fold before each pass [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** what the fold was made of: a covering of the furniture, or test_fold Default "test_fold". */
    covering?: string;
    /** one layer of the test fold, when readings count layers [1 entries] */
    cloth?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** what lies under the fold [1 to 12 entries] */
    under?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** pace at which the practice target is judged [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** size of the ensemble; verdicts use 1024 [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** the passes [1 to 64 entries] */
    readings: {
      /** speed of the head [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** way of the head [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** time for that way [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** what lay over the tip */
      layers: number | {
        /** key of a material of the data files */
        material?: string;
        /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** whether steam can enter */
        permeable?: boolean;
        /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
        porosity?: number;
        /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
        tortuosity?: number;
        /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** highest reading of the pass [celsius] [at least -20, at most 120] */
      peak_celsius: number | string;
    }[];
    /** station pressure by barometer [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** height above sea level, if no pressure is given [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
  } | {
    /** name of the machine */
    machine: string;
    /** the head; without a size, 80 mm along the travel and 200 mm across (estimate) */
    head: string | {
      /** name of the head */
      name: string;
      /** contact length along the travel [metres] [at least 0.01, at most 0.6] Default 0.08. */
      length_metres?: number | string;
      /** across the travel [metres] [at least 0.005, at most 0.6] Default 0.2. */
      width_metres?: number | string;
    };
    /** towel during the test Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** the thermometer; without it no lag is corrected, which can only read low */
    probe?: {
      /** time in which the probe covers 63 % of a jump [seconds] [at least 0, at most 60] */
      time_constant_seconds: number | string;
    };
    /** temperature of the fold before each pass [celsius] [at least -20, at most 50] Default 20. */
    start_celsius?: number | string;
    /** what the fold was made of: a covering of the furniture, or test_fold Default "test_fold". */
    covering?: string;
    /** one layer of the test fold, when readings count layers [1 entries] */
    cloth?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** what lies under the fold [1 to 12 entries] */
    under?: {
      /** key of a material of the data files */
      material?: string;
      /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
      thickness_metres?: number | string;
      /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
      heat_capacity_joules_per_m3_kelvin?: number | string;
      /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
      conductivity_watts_per_metre_kelvin?: number | string;
      /** whether steam can enter */
      permeable?: boolean;
      /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
      porosity?: number;
      /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
      tortuosity?: number;
      /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
      sorption_scale_kilograms_per_m3?: number | string;
    }[];
    /** pace at which the practice target is judged [metres per second] [at least 0.002, at most 0.1] Default 0.0254. */
    working_pace_metres_per_second?: number | string;
    /** size of the ensemble; verdicts use 1024 [at least 64, at most 4096] Default 1024. */
    samples?: number;
    /** the passes [1 to 64 entries] */
    readings: {
      /** speed of the head [metres per second] [at least 0.001, at most 0.3] */
      pace_metres_per_second?: number | string;
      /** way of the head [metres] [more than 0, at most 10] */
      distance_metres?: number | string;
      /** time for that way [seconds] [more than 0, at most 600] */
      seconds?: number | string;
      /** what lay over the tip */
      layers: number | {
        /** key of a material of the data files */
        material?: string;
        /** thickness; a material's usual thickness if left out [metres] [at least 1e-05, at most 0.5] */
        thickness_metres?: number | string;
        /** heat capacity of the dry layer by volume [joules per m3 kelvin] [at least 1000, at most 10000000] */
        heat_capacity_joules_per_m3_kelvin?: number | string;
        /** conductivity of the dry layer [watts per metre kelvin] [at least 0.005, at most 5] */
        conductivity_watts_per_metre_kelvin?: number | string;
        /** whether steam can enter */
        permeable?: boolean;
        /** share of gas in the layer's volume; a permeable layer needs it [at least 0.01, at most 0.999] */
        porosity?: number;
        /** lengthening of the gas paths; a permeable layer needs it [at least 1, at most 20] */
        tortuosity?: number;
        /** water-holding scale W_h; a permeable layer needs it [kilograms per m3] [at least 0.01, at most 200] */
        sorption_scale_kilograms_per_m3?: number | string;
      }[];
      /** highest reading of the pass [celsius] [at least -20, at most 120] */
      peak_celsius: number | string;
    }[];
    /** station pressure by barometer [pascal] [at least 50000, at most 110000] */
    pressure_pascal?: number | string;
    /** height above sea level, if no pressure is given [metres] [at least -430, at most 5500] */
    elevation_metres?: number | string;
  }[];
  /** what fold tests found */
  calibration?: {
    /** whether readings stand behind it; false: the prior */
    tested: boolean;
    /** machine, head and towel */
    head_key: string;
    /** head and covering */
    cloth_key: string;
    /** covering that was tested */
    covering: string;
    /** towel during the test */
    towel: "none" | "wrapped" | "laid";
    /** contact length along the travel [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** air pressure at the test [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** most probable scores [4 entries] */
    mode: number[];
    /** lower triangle of the Laplace map [4 entries] */
    factor: number[][];
    /** of the samples, sum 1 [16 to 4096 entries] */
    weights: number[];
  } | {
    /** whether readings stand behind it; false: the prior */
    tested: boolean;
    /** machine, head and towel */
    head_key: string;
    /** head and covering */
    cloth_key: string;
    /** covering that was tested */
    covering: string;
    /** towel during the test */
    towel: "none" | "wrapped" | "laid";
    /** contact length along the travel [metres] [at least 0.01, at most 0.6] */
    head_length_metres: number | string;
    /** air pressure at the test [pascal] [at least 50000, at most 110000] */
    pressure_pascal: number | string;
    /** most probable scores [4 entries] */
    mode: number[];
    /** lower triangle of the Laplace map [4 entries] */
    factor: number[][];
    /** of the samples, sum 1 [16 to 4096 entries] */
    weights: number[];
  }[];
  /** no test yet: what is usual */
  prior?: {
    /** name of the machine Default "machine". */
    machine?: string;
    /** name of the head Default "head". */
    head?: string;
    /** towel Default "none". */
    towel?: "none" | "wrapped" | "laid";
    /** contact length along the travel [metres] [at least 0.01, at most 0.6] Default 0.08. */
    length_metres?: number | string;
  };
  /** temperature of the item before [celsius] [at least -20, at most 50] Default 20. */
  start_celsius?: number | string;
  /** the covering is damp to the hand Default false. */
  damp?: boolean;
  /** confidence of kill and of no harm [at least 0.5, at most 0.99] Default 0.95. */
  confidence?: number;
  /** size of the ensemble where no fold test gives it; verdicts use 1024 [at least 64, at most 4096] Default 1024. */
  samples?: number;
  /** most water the covering may take up; 50 is an estimate, a hidden-spot test may show another [grams per m2] [at least 5, at most 500] Default 50. */
  wetting_limit_grams_per_m2?: number | string;
  /** station pressure by barometer [pascal] [at least 50000, at most 110000] */
  pressure_pascal?: number | string;
  /** height above sea level, if no pressure is given [metres] [at least -430, at most 5500] */
  elevation_metres?: number | string;
  /** request of the question furniture [1 to 40 entries] */
  items: {
    /** kind of furniture */
    item: "sofa" | "mattress";
    /** sofa: seats, three if left out [at least 1, at most 4] */
    seats?: number;
    /** mattress: named size, queen if left out */
    size?: "twin" | "twin_xl" | "full" | "queen" | "king" | "california_king" | "80x200" | "90x190" | "90x200" | "100x200" | "120x200" | "140x200" | "160x200" | "180x200";
    /** over the arms of a sofa, across a mattress; wins over size [metres] [at least 0, at most 10] */
    width_metres?: number | string;
    /** mattress: foot to head; wins over size [metres] [at least 0, at most 10] */
    length_metres?: number | string;
    /** sofa: front to back [metres] [at least 0, at most 10] */
    depth_metres?: number | string;
    /** sofa: floor to the top of the back cushions [metres] [at least 0, at most 10] */
    height_metres?: number | string;
    /** sofa: floor to the top of the seat cushions [metres] [at least 0, at most 10] */
    seat_height_metres?: number | string;
    /** sofa: floor to the top of the arms [metres] [at least 0, at most 10] */
    arm_height_metres?: number | string;
    /** sofa: one arm [metres] [at least 0, at most 10] */
    arm_width_metres?: number | string;
    /** sofa: floor to the underside [metres] [at least 0, at most 10] */
    leg_height_metres?: number | string;
    /** sofa: boxing of the seat cushions [metres] [at least 0, at most 10] */
    seat_cushion_thickness_metres?: number | string;
    /** sofa: boxing of the back cushions [metres] [at least 0, at most 10] */
    back_cushion_thickness_metres?: number | string;
    /** mattress [metres] [at least 0, at most 10] */
    thickness_metres?: number | string;
    /** mattress: floor to its underside; 0 lies on the floor [metres] [at least 0, at most 10] */
    base_height_metres?: number | string;
    /** sofa: a skirt hangs to the floor */
    skirted?: boolean;
    /** sofa: rows of buttons on the back cushions */
    tufted?: boolean;
    /** cloth; unknown for a sofa and mattress_tick for a mattress if left out */
    covering?: "cotton" | "linen" | "polyester" | "velvet" | "wool" | "viscose" | "acrylic" | "olefin" | "leather" | "coated" | "mattress_tick" | "unknown";
    /** sofa: finish of the wooden legs */
    finish?: "bare" | "oil" | "wax" | "shellac" | "lacquer" | "varnish" | "paint" | "unknown";
    /** most water the covering takes up without a mark, by a hidden-spot wetting test [grams per m2] [at least 5, at most 500] */
    wetting_limit_grams_per_m2?: number | string;
  }[];
};

export type PlanAnswer = {
  /** items as given */
  items: {
    /** name of the item */
    title: string;
    /** edges of the item */
    edges: number;
    /** of them with a pace */
    edges_with_window: number;
  }[];
  /** item by item, top to bottom */
  edges: {
    /** item, from 0 */
    item_index: number;
    /** edge of the item */
    id: string;
    /** name of the edge */
    title: string;
    /** part of the item */
    part: string;
    /** length [metres] */
    length_metres: number;
    /** mean height above the floor [metres] */
    height_metres: number;
    /** seen without moving the item */
    in_sight: boolean;
    /** time for all passes, without changes of place; null without a pace [seconds] */
    seconds: number | null;
    /** which entry of `paces` is its pace */
    pace_index: number;
  }[];
  /** the different answers; edges alike share one */
  paces: {
    /** what the pace stands on */
    basis: "fold_test" | "prior" | "head";
    /** at the recommended pace; without a window at the fastest harmless one */
    verdict_at_recommended: "lethal" | "short" | "not_proven";
    /** harm, apart from kill */
    harm_at_recommended: "none" | "scorch" | "soak" | "barred" | "unknown";
    /** slowest and fastest [2 entries] */
    window_metres_per_second: number[] | null;
    /** the pace to plan [metres per second] */
    recommended_metres_per_second: number | null;
    /** how */
    style: "glide" | "place_hold_move" | null;
    /** for place_hold_move [seconds] */
    hold_seconds?: number;
    /** for place_hold_move [metres] */
    move_metres?: number;
    /** passes one after the other */
    passes: number;
    /** towel */
    towel: "none" | "wrapped" | "laid";
    /** the two limits */
    limited_by: {
      /** what forbids slower */
      low: "soak" | "scorch" | "steady_hand" | null;
      /** what forbids faster */
      high: "egg" | "mobile" | null;
    };
    /** why there is no window, or what limits it */
    reason: {
      /** short name for programs */
      code: string;
      /** a sentence for people */
      text: string;
    } | null;
    /** alternatives, looked at with a smaller ensemble, when there is no window */
    tried: {
      /** towel */
      towel: "none" | "wrapped" | "laid";
      /** passes */
      passes: number;
      /** slowest and fastest [2 entries] */
      window_metres_per_second: number[] | null;
      /** what was tried */
      text: string;
    }[];
    /** of the hardest stage, at most 0.99 */
    kill_probability_at_recommended: number | null;
    /** contact and escape included */
    kill_by_stage: {
      /** probability, printed at most as 0.99 */
      egg: number;
      /** probability, printed at most as 0.99 */
      nymph: number;
      /** probability, printed at most as 0.99 */
      adult: number;
    } | null;
    /** shown apart */
    engorged_adult: {
      /** probability, printed at most as 0.99 */
      kill_probability: number;
      /** what follows */
      text: string;
    } | null;
    /** water left at the recommended pace */
    condensate_grams_per_m2: {
      /** half [grams per m2] */
      p50: number;
      /** 95 % [grams per m2] */
      p95: number;
    } | null;
    /** with and without moving air, surface water only [2 entries] */
    dry_minutes: number[] | null;
    /** where the eggs are */
    target_depth_metres: {
      /** median of where eggs may sit [metres] */
      p50: number;
      /** target [metres] */
      p90: number;
    } | null;
    /** samples that the weights leave */
    effective_samples: number;
    /** size of the ensemble */
    samples: number;
    /** over pace */
    curve: {
      /** planned pace [metres per second] */
      pace_metres_per_second: number;
      /** weight that kills */
      lethal_share: number;
      /** weight that does no harm */
      harmless_share: number;
      /** peak where the eggs are */
      target_celsius_quantiles: {
        /** 5 % of the weight lies below [celsius] */
        p05: number;
        /** 25 % of the weight lies below [celsius] */
        p25: number;
        /** half of the weight lies below [celsius] */
        p50: number;
        /** 75 % of the weight lies below [celsius] */
        p75: number;
        /** 95 % of the weight lies below [celsius] */
        p95: number;
      };
      /** water left by the pass */
      condensate_grams_per_m2: {
        /** 5 % of the weight lies below [grams per m2] */
        p05: number;
        /** 25 % of the weight lies below [grams per m2] */
        p25: number;
        /** half of the weight lies below [grams per m2] */
        p50: number;
        /** 75 % of the weight lies below [grams per m2] */
        p75: number;
        /** 95 % of the weight lies below [grams per m2] */
        p95: number;
      };
    }[];
    /** the median case at the recommended pace (else one inch per second), as a request of the question pass; its depths are for the asker to choose */
    middle_case: unknown;
    /** for orientation: what the customary pace would do (common practice) */
    one_inch_per_second: {
      /** peak where the eggs are */
      target_celsius: {
        /** 5 % of the weight lies below [celsius] */
        p05: number;
        /** 25 % of the weight lies below [celsius] */
        p25: number;
        /** half of the weight lies below [celsius] */
        p50: number;
        /** 75 % of the weight lies below [celsius] */
        p75: number;
        /** 95 % of the weight lies below [celsius] */
        p95: number;
      };
      /** weight that kills */
      lethal_share: number;
      /** median [grams per m2] */
      condensate_grams_per_m2: number;
      /** in words */
      text: string;
    } | null;
  }[];
  /** edges with a pace */
  edges_with_window: number;
  /** all edges */
  edge_count: number;
  /** share of edges with a pace */
  share_with_window: number;
  /** their length [metres] */
  length_with_window_metres: number;
  /** of all edges [metres] */
  length_metres: number;
  /** for all edges with a pace, without changes of place [minutes] */
  minutes: number;
  /** what leaves edges without a pace, most edges first */
  closed_by: {
    /** reason */
    code: string;
    /** edges without a pace for it */
    edges: number;
    /** what it means and what would open them */
    text: string;
  }[];
  /** one sentence */
  summary: string;
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
  /** lines of events.ndjson */
  lines?: string[];
  /** events as objects, where bytes do not matter */
  events?: unknown[];
};

export type FoldEventsAnswer = {
  /** what the record says now */
  state: {
    /** What the job is called. Its subject is the job's id. */
    job: {
      /** subject of its events */
      id: string;
      /** the statement shown; a correction names it */
      event: string;
      /** all standing statements about it; several agree or conflict */
      events: string[];
      /** what people call it; no names of persons, no addresses */
      title: string;
      /** the day the job began */
      opened_on?: string;
      /** above sea level [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** a remark */
      note?: string;
      /** true in made-up data, such as the demo's */
      invented?: boolean;
      [key: string]: unknown;
    } | null;
    /** A home that is looked at or treated. */
    dwelling: {
      /** subject of its events */
      id: string;
      /** the statement shown; a correction names it */
      event: string;
      /** all standing statements about it; several agree or conflict */
      events: string[];
      /** what people call it; no names of persons, no addresses */
      title: string;
      /** apartment, house, ... */
      kind?: string;
      /** the job it belongs to */
      job?: string;
      /** above sea level [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** a remark */
      note?: string;
      /** true in made-up data, such as the demo's */
      invented?: boolean;
      [key: string]: unknown;
    } | null;
    /** all dwellings; dwelling is null unless there is one */
    dwellings: {
      /** subject of its events */
      id: string;
      /** the statement shown; a correction names it */
      event: string;
      /** all standing statements about it; several agree or conflict */
      events: string[];
      /** what people call it; no names of persons, no addresses */
      title: string;
      /** apartment, house, ... */
      kind?: string;
      /** the job it belongs to */
      job?: string;
      /** above sea level [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** a remark */
      note?: string;
      /** true in made-up data, such as the demo's */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** by id */
    rooms: {
      /** subject of its events */
      id: string;
      /** the statement shown; a correction names it */
      event: string;
      /** all standing statements about it; several agree or conflict */
      events: string[];
      /** what people call it; no names of persons, no addresses */
      title: string;
      /** the dwelling it is in */
      dwelling?: string;
      /** where its walls stand */
      outline?: {
        /** left wall, on the dwelling's plan [metres] [at least -1000, at most 1000] */
        x_metres: number;
        /** far wall, on the dwelling's plan [metres] [at least -1000, at most 1000] */
        y_metres: number;
        /** left to right [metres] [more than 0, at most 200] */
        width_metres: number;
        /** far to near [metres] [more than 0, at most 200] */
        depth_metres: number;
        [key: string]: unknown;
      };
      /** a remark */
      note?: string;
      /** true in made-up data, such as the demo's */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** by id */
    items: {
      /** subject of its events */
      id: string;
      /** the statement shown; a correction names it */
      event: string;
      /** all standing statements about it; several agree or conflict */
      events: string[];
      /** what people call it; no names of persons, no addresses */
      title: string;
      /** sofa, mattress: the word the question furniture takes */
      kind: string;
      /** the room it stands in */
      room?: string;
      /** of a sofa [at least 1, at most 20] */
      seats?: number;
      /** name of a mattress size */
      size?: string;
      /** where measured [metres] [more than 0, at most 20] */
      length_metres?: number;
      /** where measured [metres] [more than 0, at most 20] */
      width_metres?: number;
      /** where measured [metres] [more than 0, at most 20] */
      depth_metres?: number;
      /** where measured [metres] [more than 0, at most 20] */
      height_metres?: number;
      /** the cloth, a word the question furniture takes; unknown if not known */
      covering: string;
      /** what is on the cloth or wood, if known */
      finish?: string;
      /** water the covering took without a mark in a hidden-spot test [grams per m2] [at least 5, at most 500] */
      wetting_limit_grams_per_m2?: number;
      /** where in the room it stands */
      place?: {
        /** its middle, from the room's left wall [metres] [at least -1000, at most 1000] */
        x_metres: number;
        /** its middle, from the room's far wall [metres] [at least -1000, at most 1000] */
        y_metres: number;
        /** turned clockwise, seen from above [at least -360, at most 360] */
        turn_degrees?: number;
        [key: string]: unknown;
      };
      /** a remark */
      note?: string;
      /** true in made-up data, such as the demo's */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** equipment */
    kit: {
      /** by id */
      machines: {
        /** subject of its events */
        id: string;
        /** the statement shown; a correction names it */
        event: string;
        /** all standing statements about it; several agree or conflict */
        events: string[];
        /** what people call it; no names of persons, no addresses */
        title: string;
        /** as its plate says [watts] [more than 0, at most 50000] */
        power_watts?: number;
        /** what the person typed, key by key, with the unit as typed */
        typed?: {
          [key: string]: unknown;
        };
        /** a remark */
        note?: string;
        /** true in made-up data, such as the demo's */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      /** by id */
      heads: {
        /** subject of its events */
        id: string;
        /** the statement shown; a correction names it */
        event: string;
        /** all standing statements about it; several agree or conflict */
        events: string[];
        /** what people call it; no names of persons, no addresses */
        title: string;
        /** the machine it belongs to */
        machine?: string;
        /** along the pass [metres] [more than 0, at most 2] */
        length_metres: number;
        /** across the pass [metres] [more than 0, at most 2] */
        width_metres?: number;
        /** what the person typed, key by key, with the unit as typed */
        typed?: {
          [key: string]: unknown;
        };
        /** a remark */
        note?: string;
        /** true in made-up data, such as the demo's */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      /** by id */
      towels: {
        /** subject of its events */
        id: string;
        /** the statement shown; a correction names it */
        event: string;
        /** all standing statements about it; several agree or conflict */
        events: string[];
        /** what people call it; no names of persons, no addresses */
        title: string;
        /** no towel, around the head, or lying on the cloth */
        use: "none" | "wrapped" | "laid";
        /** as it lies [metres] [more than 0, at most 0.1] */
        thickness_metres?: number;
        /** what the person typed, key by key, with the unit as typed */
        typed?: {
          [key: string]: unknown;
        };
        /** a remark */
        note?: string;
        /** true in made-up data, such as the demo's */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      /** by id */
      probes: {
        /** subject of its events */
        id: string;
        /** the statement shown; a correction names it */
        event: string;
        /** all standing statements about it; several agree or conflict */
        events: string[];
        /** what people call it; no names of persons, no addresses */
        title: string;
        /** until 63 % of a sudden change shows [seconds] [more than 0, at most 600] */
        time_constant_seconds: number;
        /** what the person typed, key by key, with the unit as typed */
        typed?: {
          [key: string]: unknown;
        };
        /** a remark */
        note?: string;
        /** true in made-up data, such as the demo's */
        invented?: boolean;
        [key: string]: unknown;
      }[];
    };
    /** by id */
    fold_tests: {
      /** subject of its events */
      id: string;
      /** the statement shown; a correction names it */
      event: string;
      /** all standing statements about it; several agree or conflict */
      events: string[];
      /** what people call it; no names of persons, no addresses */
      title: string;
      /** the machine used */
      machine?: string;
      /** the head used */
      head?: string;
      /** the towel used */
      towel?: string;
      /** the probe used */
      probe?: string;
      /** of the cloth before the passes [celsius] [at least -25, at most 60] */
      start_celsius?: number;
      /** above sea level [metres] [at least -450, at most 6000] */
      elevation_metres?: number;
      /** the kind of cloth that was folded */
      covering?: string;
      /** material of one layer of the fold */
      cloth?: string;
      /** what the person typed, key by key, with the unit as typed */
      typed?: {
        [key: string]: unknown;
      };
      /** a remark */
      note?: string;
      /** true in made-up data, such as the demo's */
      invented?: boolean;
      /** of this test, by id */
      readings: {
        /** subject of its events */
        id: string;
        /** the statement shown; a correction names it */
        event: string;
        /** all standing statements about it; several agree or conflict */
        events: string[];
        /** the test it belongs to */
        fold_test: string;
        /** speed of the head [metres per second] [more than 0, at most 2] */
        pace_metres_per_second?: number;
        /** length of the pass [metres] [more than 0, at most 20] */
        distance_metres?: number;
        /** time for that length [seconds] [more than 0, at most 3600] */
        seconds?: number;
        /** over the tip: how many, or a list that names each */
        layers: number | unknown[];
        /** highest temperature shown [celsius] [at least -25, at most 150] */
        peak_celsius: number;
        /** what the person typed, key by key, with the unit as typed */
        typed?: {
          [key: string]: unknown;
        };
        /** a remark */
        note?: string;
        /** true in made-up data, such as the demo's */
        invented?: boolean;
        [key: string]: unknown;
      }[];
      [key: string]: unknown;
    }[];
    /** whose fold test has not arrived */
    readings_without_test: {
      /** subject of its events */
      id: string;
      /** the statement shown; a correction names it */
      event: string;
      /** all standing statements about it; several agree or conflict */
      events: string[];
      /** the test it belongs to */
      fold_test: string;
      /** speed of the head [metres per second] [more than 0, at most 2] */
      pace_metres_per_second?: number;
      /** length of the pass [metres] [more than 0, at most 20] */
      distance_metres?: number;
      /** time for that length [seconds] [more than 0, at most 3600] */
      seconds?: number;
      /** over the tip: how many, or a list that names each */
      layers: number | unknown[];
      /** highest temperature shown [celsius] [at least -25, at most 150] */
      peak_celsius: number;
      /** what the person typed, key by key, with the unit as typed */
      typed?: {
        [key: string]: unknown;
      };
      /** a remark */
      note?: string;
      /** true in made-up data, such as the demo's */
      invented?: boolean;
      [key: string]: unknown;
    }[];
    /** How this job is shown. */
    settings: {
      /** subject of its events */
      id: string;
      /** the statement shown; a correction names it */
      event: string;
      /** all standing statements about it; several agree or conflict */
      events: string[];
      /** unit of temperatures */
      temperature?: "C" | "F";
      /** unit of small lengths and of paces */
      length?: "mm" | "in";
      /** language tag, such as en */
      language?: string;
      /** the fold test that the plan rests on */
      fold_test?: string;
      /** a remark */
      note?: string;
      /** true in made-up data, such as the demo's */
      invented?: boolean;
      [key: string]: unknown;
    } | null;
    /** by id, a fold test with its readings */
    removed: {
      /** kind of the entity */
      kind: string;
      /** the entity as it was */
      entity: {
        /** its subject */
        id: string;
        /** as above */
        event: string;
        /** as above */
        events: string[];
        [key: string]: unknown;
      };
      /** the removals; a correction of each puts it back */
      removed_by: string[];
    }[];
  };
  /** open contradictions; a verdict must hold for the worst of the values */
  conflicts: {
    /** the entity */
    subject: string;
    /** kind of the statements */
    kind: string;
    /** statements of which none corrects another */
    rivals: string[];
    /** what each says, in the same order */
    values: unknown[];
  }[];
  /** kept, not read */
  unknown: {
    /** kind */
    kind: string;
    /** how many events */
    count: number;
  }[];
  /** kept, not part of the state */
  refused: {
    /** the event */
    id: string;
    /** why */
    error: {
      /** kind of error */
      kind: string;
      /** a sentence */
      message: string;
      /** JSON pointer into the event */
      where: string;
      [key: string]: unknown;
    };
    /** a sound correction has replaced it */
    settled: boolean;
  }[];
  /** cannot be kept in a record */
  not_events: {
    /** JSON pointer into the request */
    where: string;
    /** why */
    error: {
      /** kind of error */
      kind: string;
      /** a sentence */
      message: string;
      /** JSON pointer into the event */
      where: string;
      [key: string]: unknown;
    };
  }[];
  /** events of the record, refused and unknown ones too */
  event_count: number;
  /** SHA-256 of the lines sorted by id, each with a line feed; equal hash, equal record */
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

export interface Questions {
  saturation: { request: SaturationRequest; answer: SaturationAnswer };
  conduction: { request: ConductionRequest; answer: ConductionAnswer };
  dose: { request: DoseRequest; answer: DoseAnswer };
  pass: { request: PassRequest; answer: PassAnswer };
  fold_test: { request: FoldTestRequest; answer: FoldTestAnswer };
  pace: { request: PaceRequest; answer: PaceAnswer };
  furniture: { request: FurnitureRequest; answer: FurnitureAnswer };
  plan: { request: PlanRequest; answer: PlanAnswer };
  fold_events: { request: FoldEventsRequest; answer: FoldEventsAnswer };
}

export type QuestionName = keyof Questions;

export const question_names = [
  "saturation",
  "conduction",
  "dose",
  "pass",
  "fold_test",
  "pace",
  "furniture",
  "plan",
  "fold_events",
] as const satisfies readonly QuestionName[];
