// Words of the report's frame, Spanish.
import type { Words } from '../en';

export const report: Words['report'] = {
  edge: 'Borde', state: 'Resultado', kills: 'Mata, en el peor punto', why: 'Por qué',
  states: { lethal: 'letal', short: 'insuficiente', not_proven: 'no demostrado', barred: 'vapor vetado', not_treated: 'sin tratar' },
  inHundred: (count) => `${count} de 100`,
  ofEdges: (lethal, all) => `${lethal} de ${all} bordes letales`,
  picture: (title, lethal, all) => `${title}: ${lethal} de ${all} bordes letales`,
  lines: 'Líneas: gruesa y continua, letal; de puntos, no demostrado; de rayas, insuficiente; de raya y punto, vapor vetado; gris y fina, sin tratar. Los bordes del lado no visible están solo en las tablas.',
  foot: (code) => `Last Egg · registro ${code}`,
  basis: 'En qué se basa este informe',
  record: 'Registro (SHA-256)', facts: 'Datos', engine: 'Motor', samples: 'Muestras', data: 'Fuentes de datos',
  effective: (count) => `al menos ${count} efectivas`,
};
