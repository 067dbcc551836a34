// Words that every place uses, US English.
export const everywhere = {
  app: { name: 'Last Egg', tagline: 'How fast to move the head, edge by edge, so that the last egg dies.' },
  places: { inspect: 'Inspect', kit: 'Kit', plan: 'Plan', treat: 'Treat', prove: 'Prove', record: 'Record' },
  ask: { inspect: 'Where are they?', kit: 'What can my steamer really do?', plan: 'What, how fast, how sure?', treat: 'Am I doing it right, now?', prove: 'Did every edge get it?', record: 'What is kept?' },
  skip: 'Skip to the content',

  kept: {
    none: 'Nothing entered yet',
    entered: 'Entered, saving …',
    saved: 'Saved on this device',
    failed: 'Not saved',
    safe: 'Safe in an exported file',
    newer: (count: number) => (count === 1 ? '1 fact newer than the last exported file' : `${count} facts newer than the last exported file`),
    never: 'No exported file yet: this device holds the only copy',
    persisted: 'The browser has promised to keep this store.',
    notPersisted: 'The browser may clear this store when space runs out. Export a file to be safe.',
    stages: ['Entered', 'Saved here', 'Safe elsewhere'],
    unsaved: (count: number) => (count === 1 ? '1 fact is not saved.' : `${count} facts are not saved.`),
    unsavedWhy: 'The store of this browser refused. Free some space on the device, or export: the file holds them too.',
    saveAgain: 'Save again',
    otherTab: 'Open in another tab too. Both write to the one record.',
    facts: (count: number) => (count === 1 ? '1 fact' : `${count} facts`),
  },

  blank: {
    title: 'Nothing is recorded on this device',
    text: 'Start with the demo apartment, or with your own job. It all stays on this device until you export it.',
    lost: (count: number) => `This browser kept ${count} facts before and now holds none. Import your last exported file.`,
    demo: 'Open the demo apartment',
    demoNote: 'Everything in it is invented.',
    own: 'Start my own job',
    import: 'Import a .lastegg file',
    ownTitle: 'Name of the job',
    start: 'Start',
  },
  invented: 'Invented demo data',

  states: { lethal: 'lethal', short: 'short', not_proven: 'not proven', barred: 'barred', waiting: 'computing' },
  statesLong: {
    lethal: 'Lethal: an egg at the target dies at this pace, at the asked confidence.',
    short: 'Short: no pace we can advise kills there.',
    not_proven: 'Not proven: what is known does not settle it.',
    barred: 'Barred: steam would ruin this, or is not allowed on it.',
    waiting: 'Computing',
  },
  harm: {
    none: 'no harm expected', scorch: 'would scorch', soak: 'would soak', barred: 'steam barred', unknown: 'harm unknown: hidden spot test first',
  },
  towel: { none: 'bare head', wrapped: 'towel wrapped', laid: 'towel laid on' },
  basis: {
    fold_test: 'From your fold test', same_machine: 'This head is not tested: steam as another head of the machine, the rest as usual', prior: 'No test yet: from what steamers usually do', head: 'From the head as described',
  },

  kinds: {
    seam: 'seam', welt: 'welt', tape_edge: 'tape edge', fold: 'fold', tuft: 'tuft', quilting: 'quilting', pleat: 'pleat', skirt: 'skirt',
    zip: 'zip', handle: 'handle', label: 'label', vent: 'vent', staple_line: 'staple line', dust_cover_edge: 'dust cover edge',
    leg_joint: 'leg joint', gap: 'gap', wood_joint: 'wood joint', metal_joint: 'metal joint', wall_joint: 'wall joint', screw_hole: 'screw hole',
    drawer_runner: 'drawer runner', headboard_back: 'back of the headboard', skirting_gap: 'gap at the baseboard', carpet_edge: 'carpet edge', pile: 'carpet pile',
    curtain_heading: 'curtain heading', heap: 'heap', electrical_cover: 'electrical cover',
  } as Record<string, string>,
  coverings: {
    cotton: 'cotton', linen: 'linen', polyester: 'polyester', velvet: 'velvet', wool: 'wool', viscose: 'viscose', acrylic: 'acrylic',
    olefin: 'olefin', leather: 'leather', coated: 'vinyl or coated', mattress_tick: 'mattress tick', unknown: 'not known',
  } as Record<string, string>,
  sources: { common_practice: 'common practice', memory: 'from memory, to be checked',
    'estimate: the kit of the job is what the record says': 'the record of this job' } as Record<string, string>,
  noSource: {
    'no source': 'no source', 'no source; licensed trade decides': 'no source; the licensed trade decides', 'no source; local code decides': 'no source; local code decides',
    'no source; the supplier decides': 'no source; the supplier decides', 'the kit of the job': 'its kit',
  } as Record<string, string>,
  qualities: { measured: 'measured', handbook: 'handbook', practice: 'practice', estimate: 'estimate', 'from memory': 'from memory' } as Record<string, string>,
  sizes: {
    twin: 'twin', twin_xl: 'twin XL', full: 'full', queen: 'queen', king: 'king', california_king: 'California king',
  } as Record<string, string>,
  limits: {
    soak: 'water left in the cloth', scorch: 'heat of the surface', steady_hand: 'no hand is steady slower',
    egg: 'eggs would live', mobile: 'nymphs or adults would live',
  } as Record<string, string>,
  unknowns: {
    dew_temperature_celsius: 'the dew temperature of the steam', film_watts_per_m2_kelvin: 'how fast heat enters the cloth',
    vapour_efficiency: 'how well vapour passes the cloth', forced_gas_metres_per_second: 'how hard steam is pushed into the cloth',
  } as Record<string, string>,

  cautions: [
    'Steam burns. Never open a hot boiler; check hose and head for leaks first.',
    'Outlets, electronics and wiring are never steamed.',
    'Unknown finish: a hidden spot test first.',
    'Needles and sharps hide in folds: look before you reach.',
    'Local code, labels and licensed trades decide.',
  ],

  update: { ready: 'A new version is ready. Take it between visits.', held: 'A new version is ready. It is offered here when this visit is over.', now: 'Use it now' },
  offline: 'Works with no network',
  close: 'Close', cancel: 'Cancel', save: 'Save', back: 'Back', loading: 'Opening the record …',
  measured: 'measured', computed: 'computed',
  error: {
    engine: 'The engine refused this question',
    record: 'The record could not be opened',
    where: 'at',
    retry: 'Try again',
    keptAnyway: 'Your facts are saved; only the computation failed.',
    stopped: 'The computation stopped.',
  },
  measure: {
    inHundred: (count: number) => `${count} in 100`,
    underOne: 'under 1 in 100',
    perFoot: 's per foot',
    perThirty: 's per 30 cm',
  },
};
