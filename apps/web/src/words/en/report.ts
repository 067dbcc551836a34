// Words of the report's frame, US English. Its sentences come from the engine with codes and parameters.
export const report = {
  edge: 'Edge', state: 'Result', kills: 'Kills, worst place', why: 'Why',
  states: { lethal: 'lethal', short: 'short', not_proven: 'not proven', barred: 'steam barred', not_treated: 'not treated' },
  inHundred: (count: number) => `${count} in 100`,
  ofEdges: (lethal: number, all: number) => `${lethal} of ${all} edges lethal`,
  picture: (title: string, lethal: number, all: number) => `${title}: ${lethal} of ${all} edges lethal`,
  lines: 'Lines: thick and whole, lethal; dotted, not proven; dashed, short; dash and dot, steam barred; thin gray, not treated. Edges on the far side are in the tables only.',
  foot: (code: string) => `Last Egg · record ${code}`,
  basis: 'What this report stands on',
  record: 'Record (SHA-256)', facts: 'Facts', engine: 'Engine', samples: 'Samples', data: 'Data',
  effective: (count: number) => `at least ${count} effective`,
};
