// Words of the place Prove, US English.
export const prove = {
};
