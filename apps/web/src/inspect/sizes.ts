/** Size names the engine's furniture knows for a mattress. */
export const k_mattress_sizes = ['twin', 'twin_xl', 'full', 'queen', 'king', 'california_king'];
