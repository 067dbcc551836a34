// Words that every place uses, Spanish.
import type { Words } from '../en';

type Everywhere = Omit<Words, 'inspect' | 'kit' | 'plan' | 'treat' | 'prove' | 'record' | 'report' | 'visit'>;

export const everywhere: Everywhere = {
  app: { name: 'Last Egg', tagline: 'A qué ritmo mover la boquilla, borde por borde, para que muera el último huevo.' },
  places: { inspect: 'Revisar', kit: 'Equipo', plan: 'Plan', treat: 'Tratar', prove: 'Verificar', record: 'Registro' },
  ask: { inspect: '¿Dónde están?', kit: '¿Qué puede de verdad mi vaporizador?', plan: '¿Qué, a qué ritmo, con qué certeza?', treat: '¿Lo hago bien, ahora?', prove: '¿Llegó a cada borde?', record: '¿Qué se guarda?' },
  skip: 'Ir al contenido',

  kept: {
    none: 'Sin datos aún',
    entered: 'Anotado, guardando …',
    saved: 'Guardado aquí',
    failed: 'Sin guardar',
    safe: 'A salvo en un archivo exportado',
    newer: (count) => (count === 1 ? '1 dato más nuevo que el último archivo exportado' : `${count} datos más nuevos que el último archivo exportado`),
    never: 'Aún no hay archivo exportado: la única copia está en este equipo',
    persisted: 'El navegador prometió conservar este almacén.',
    notPersisted: 'El navegador puede borrar este almacén si falta espacio. Exporte un archivo para estar a salvo.',
    stages: ['Anotado', 'Guardado aquí', 'A salvo fuera'],
    unsaved: (count) => (count === 1 ? '1 dato no está guardado.' : `${count} datos no están guardados.`),
    unsavedWhy: 'El almacén de este navegador lo rechazó. Libere espacio en el equipo, o exporte: el archivo también los lleva.',
    saveAgain: 'Guardar de nuevo',
    otherTab: 'También abierto en otra pestaña. Ambas escriben en el mismo registro.',
    facts: (count) => (count === 1 ? '1 dato' : `${count} datos`),
  },

  blank: {
    title: 'No hay nada registrado en este equipo',
    text: 'Empiece con el apartamento de muestra, o con un trabajo propio. Todo queda en este equipo hasta que lo exporte.',
    lost: (count) => `Este navegador guardaba ${count} datos y ahora no tiene ninguno. Importe su último archivo exportado.`,
    demo: 'Abrir el apartamento de muestra',
    demoNote: 'Todo lo que contiene es inventado.',
    own: 'Empezar un trabajo propio',
    import: 'Importar un archivo .lastegg',
    ownTitle: 'Nombre del trabajo',
    start: 'Empezar',
  },
  invented: 'Datos de muestra inventados',

  states: { lethal: 'letal', short: 'insuficiente', not_proven: 'no demostrado', barred: 'vetado', waiting: 'calculando' },
  statesLong: {
    lethal: 'Letal: a este ritmo muere un huevo en el punto buscado, con la confianza pedida.',
    short: 'Insuficiente: ningún ritmo que podamos aconsejar mata allí.',
    not_proven: 'No demostrado: lo que se sabe no lo decide.',
    barred: 'Vetado: el vapor lo dañaría, o no está permitido.',
    waiting: 'Calculando',
  },
  harm: {
    none: 'no se espera daño', scorch: 'se quemaría', soak: 'se empaparía', barred: 'vapor vetado', unknown: 'daño desconocido: primero una prueba en una zona oculta',
  },
  towel: { none: 'boquilla sin toalla', wrapped: 'toalla envuelta', laid: 'toalla tendida' },
  basis: {
    fold_test: 'De su prueba de pliegue', same_machine: 'Esta boquilla no está probada: vapor como con otra boquilla de la máquina, lo demás como es usual', prior: 'Aún sin prueba: lo que suelen dar los vaporizadores', head: 'De la boquilla según su descripción',
  },

  kinds: {
    seam: 'costura', welt: 'vivo', tape_edge: 'ribete', fold: 'pliegue', tuft: 'capitoné', quilting: 'acolchado', pleat: 'tabla', skirt: 'faldón',
    zip: 'cremallera', handle: 'asa', label: 'etiqueta', vent: 'respiradero', staple_line: 'línea de grapas', dust_cover_edge: 'borde de la tela inferior',
    leg_joint: 'unión de la pata', gap: 'hueco', wood_joint: 'unión de madera', metal_joint: 'unión metálica', wall_joint: 'unión de pared', screw_hole: 'agujero de tornillo',
    drawer_runner: 'corredera de cajón', headboard_back: 'parte trasera de la cabecera', skirting_gap: 'hueco del zócalo', carpet_edge: 'borde de alfombra', pile: 'pelo de alfombra',
    curtain_heading: 'cabezal de cortina', heap: 'montón', electrical_cover: 'tapa eléctrica',
  },
  coverings: {
    cotton: 'algodón', linen: 'lino', polyester: 'poliéster', velvet: 'terciopelo', wool: 'lana', viscose: 'viscosa', acrylic: 'acrílico',
    olefin: 'olefina', leather: 'cuero', coated: 'vinilo o recubierto', mattress_tick: 'tela de colchón', unknown: 'no se sabe',
  },
  sources: { common_practice: 'práctica común', memory: 'de memoria, por comprobar',
    'estimate: the kit of the job is what the record says': 'el registro de este trabajo' },
  noSource: {
    'no source': 'sin fuente', 'no source; licensed trade decides': 'sin fuente; decide el oficio con licencia', 'no source; local code decides': 'sin fuente; decide la norma local',
    'no source; the supplier decides': 'sin fuente; decide el proveedor', 'the kit of the job': 'su equipo',
  },
  qualities: { measured: 'medido', handbook: 'manual', practice: 'práctica', estimate: 'estimación', 'from memory': 'de memoria' },
  sizes: {
    twin: 'individual', twin_xl: 'individual larga', full: 'matrimonial', queen: 'queen', king: 'king', california_king: 'king California',
  },
  limits: {
    soak: 'agua que queda en la tela', scorch: 'calor en la superficie', steady_hand: 'más lento tiembla la mano',
    egg: 'vivirían huevos', mobile: 'vivirían ninfas o adultos',
  },
  unknowns: {
    dew_temperature_celsius: 'la temperatura de rocío del vapor', film_watts_per_m2_kelvin: 'la rapidez con que entra calor en la tela',
    vapour_efficiency: 'lo bien que el vapor atraviesa la tela', forced_gas_metres_per_second: 'la fuerza con que el vapor entra en la tela',
  },

  cautions: [
    'El vapor quema. Nunca abra una caldera caliente; antes revise fugas en la manguera y la boquilla.',
    'Nunca se da vapor a tomacorrientes, aparatos eléctricos ni cables.',
    'Acabado desconocido: primero una prueba en una zona oculta.',
    'En los pliegues se esconden agujas y objetos filosos: mire antes de meter la mano.',
    'Deciden las normas locales, las etiquetas y los oficios con licencia.',
  ],

  update: { ready: 'Hay una versión nueva. Tómela entre visitas.', held: 'Hay una versión nueva. Se ofrece aquí cuando termine esta visita.', now: 'Usarla ahora' },
  offline: 'Funciona sin red',
  close: 'Cerrar', cancel: 'Cancelar', save: 'Guardar', back: 'Atrás', loading: 'Abriendo el registro …',
  measured: 'medido', computed: 'calculado',
  error: {
    engine: 'El motor rechazó esta pregunta',
    record: 'No se pudo abrir el registro',
    where: 'en',
    retry: 'Reintentar',
    keptAnyway: 'Sus datos están guardados; solo falló el cálculo.',
    stopped: 'El cálculo se detuvo.',
  },
  measure: {
    inHundred: (count) => `${count} de 100`,
    underOne: 'menos de 1 de cada 100',
    perFoot: 's por pie',
    perThirty: 's por 30 cm',
  },
};
