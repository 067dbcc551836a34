/** Size names the engine's furniture knows for a mattress, the usual ones of the person's country first. */
export const k_mattress_sizes_us = ['twin', 'twin_xl', 'full', 'queen', 'king', 'california_king'];
export const k_mattress_sizes_metric = ['80x200', '90x190', '90x200', '100x200', '120x200', '140x200', '160x200', '180x200'];
