// Words of the place Treat, US English.
export const treat = {
};
