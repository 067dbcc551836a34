// Words of the place Treat, Spanish. The field screen is read at arm's length: its words are few and short.
import type { Words } from '../en';

export const treat: Words['treat'] = {
  noItem: 'Aún no hay piezas. Agregue una en Revisar.',
  left: 'por hacer',
  edgesLeft: (count) => (count === 1 ? '1 borde' : `${count} bordes`),
  minutesWord: 'de vapor, sin contar los cambios de lugar',
  lengthWord: 'de bordes',
  computing: (count) => (count === 1 ? 'Aún se calcula 1 borde' : `Aún se calculan ${count} bordes`),
  start: 'Empezar a tratar',
  goOn: 'Seguir',
  allDone: 'En esta pieza no queda nada que tenga ritmo.',
  redoStart: (count) => (count === 1 ? 'Repetir 1 borde' : `Repetir ${count} bordes`),
  redoTitle: 'Por repetir',
  list: 'Bordes, en orden',
  treatThis: (title) => `Tratar: ${title}`,
  practicePace: 'sin ritmo',
  hold: (seconds) => `mantenga ${seconds} s`,
  status: {
    todo: 'por hacer', redo: 'por repetir', done: 'letal', unproven: 'no demostrado', judging: 'en evaluación', skipped: 'para después',
    out_of_reach: 'no se alcanzó', left: 'se deja como está', barred: 'vetado',
  },
  rough: 'primera vista',

  causes: {
    too_fast: 'demasiado rápido', near_limit: 'demasiado cerca del límite', unclear_record: 'tiempo desconocido', not_passed: 'sin pasada', saw_live_bug: 'se vio una chinche viva',
    no_model: 'boquilla o toalla sin probar', none: '',
  },

  orderTitle: '¿En qué sentido?',
  order: { top_to_bottom: 'De arriba abajo', bottom_to_top: 'De abajo arriba' },
  orderWhy: {
    top_to_bottom: 'Práctica común: el vapor sube, y las chinches de arriba se dispersarían.',
    bottom_to_top: 'Algunas guías: las chinches que caen reciben poca dosis, así que empiece por abajo.',
  },

  practiceTitle: (count) => (count === 1 ? '1 borde no tiene ritmo' : `${count} bordes no tienen ritmo`),
  practiceText: 'Nada de lo calculado mata allí sin daño. Hecho como es práctica, a 1 in/s, ese borde cuenta como no demostrado.',
  practice: { leave: 'Dejarlos fuera', practice: 'Hacerlos como es práctica' },

  minutesTitle: 'Minutos que quedan',
  minutes: { all: 'todos', ten: '10', twenty: '20', forty: '40', sixty: '60' },
  minutesChosen: (edges, minutes) => (edges === 1 ? `1 borde en ${minutes} min, primero donde más mueren por minuto` : `${edges} bordes en ${minutes} min, primero donde más mueren por minuto`),
  ranking: 'Ordenando los bordes …',

  refill: (minutes) => `El tanque pedirá agua tras unos ${minutes} min de vapor.`,
  slowed: (count) => (count === 1 ? 'Más lento tras sus lecturas: 1 borde.' : `Más lento tras sus lecturas: ${count} bordes.`),
  noRefill: 'El tanque alcanza para lo que queda aquí.',
  towelLife: (minutes) => `Cambie la toalla tras ${minutes} min de vapor.`,
  noForecast: 'Sin previsión de agua y toalla: en Equipo no están el tanque, la potencia y el agua del vaporizador.',
  awakeRefused: 'Este navegador no puede mantener la pantalla encendida: ponga el bloqueo del teléfono en nunca mientras trata.',
  soundMissing: 'Este navegador no toca el compás. Siga la marca en la pantalla.',

  before: {
    title: 'Antes del primer borde',
    practice: 'Práctica común, sin fuente:',
    steam: 'El vapor sale seco: suelte la primera agua en un balde.',
    towel: { none: 'Sin toalla en la boquilla.', wrapped: 'Una toalla seca envuelve la boquilla.', laid: 'Una toalla seca está sobre la tela.' },
    tilt: 'Boquilla un poco inclinada, para que las chinches pasen debajo y no se empujen.',
    flat: 'Tablas y faldones bien extendidos.',
    needles: 'Agujas y objetos filosos: mire antes de meter la mano.',
    smoke: 'El vapor puede activar el detector de humo.',
    outlets: 'Nunca se da vapor a tomacorrientes ni aparatos eléctricos.',
    burn: 'El vapor quema. Nunca abra una caldera caliente.',
    ready: 'Listo',
  },

  field: {
    mark: 'Marcar', start: 'Empezar', again: 'Otra vez', done: 'Listo', retry: 'Reintentar', bug: 'Chinche viva', more: 'Más', close: 'Cerrar',
    move: 'Mueva', computing: 'Calculando el próximo ritmo', paused: 'En pausa: este borde empieza de nuevo', interrupted: 'Interrumpido: repita este borde',
    unsaved: 'Sin guardar', finished: 'Hecho', toRedo: (count) => (count === 1 ? 'repetir 1 borde' : `repetir ${count} bordes`),
    towel: { none: 'Sin toalla', wrapped: 'Toalla en la boquilla', laid: 'Toalla sobre la tela' },
    fresh: 'Toalla nueva',
    harm: { none: '', scorch: '¿quemado?', soak: '¿empapado?', barred: 'vetado', unknown: '¿daño?' },
    putBack: 'repetir', fast: 'muy rápido', slow: 'muy lento', practice: 'práctica',
    label: (title) => `Tratando: ${title}`,
    number: { left: 'tiempo que queda en este borde', planned: 'tiempo previsto de este borde', hold: 'segundos que mantener', count: 'empieza en' },
    noSound: 'sin sonido', mayGoDark: 'la pantalla puede apagarse',
    track: (length, beat) => `El borde, ${length}, con el lugar donde debe ir la boquilla; ${beat} entre compases`,
    fillers: ['el', 'la', 'los', 'las', 'un', 'una', 'de', 'del', 'y', 'e', 'a', 'al', 'en', 'con', 'entre', 'por', 'para', 'sobre', 'bajo', 'desde', 'donde', 'lado', 'panel', 'alrededor', 'largo', 'detrás', 'debajo', 'junto', 'asiento'],
  },

  more: {
    title: 'Este borde', left: (edges, way, time) => `Queda aquí: ${edges}, ${way}, ${time}`, goOn: 'Seguir', pause: 'Pausa', undo: 'Deshacer la última marca', undoNote: 'Dentro de 10 s el borde sigue como si no se hubiera marcado.',
    reach: 'No se alcanza', skip: 'Dejar para después', towel: 'Toalla cambiada', reading: 'Leer la superficie', louder: 'Más fuerte', softer: 'Más suave', leave: 'Salir de la guía',
  },

  sound: {
    title: 'Sonido y teclas', pitch: 'Tono', low: 'grave', middle: 'medio', high: 'agudo', loudness: 'Volumen', soft: 'bajo', medium: 'medio', loud: 'alto',
    hear: '¿Se oye esto?', vibrate: 'Vibración', on: 'sí', off: 'no', noVibration: 'Este navegador no vibra.',
    keys: (names) => `Marcar con: ${names}, el control grande, un botón de audífonos.`, keyNames: { Space: 'barra espaciadora', Enter: 'Intro', PageDown: 'Av Pág', PageUp: 'Re Pág', ArrowLeft: 'flecha izquierda', ArrowRight: 'flecha derecha', ArrowUp: 'flecha arriba', ArrowDown: 'flecha abajo' },
    learn: 'Elegir otra tecla o pedal', press: 'Presiónela ahora …', usual: 'Volver a las teclas usuales',
  },

  reading: {
    title: 'Superficie tras la boquilla', gun: 'Termómetro infrarrojo', palm: 'Dorso de la mano', where: 'En qué parte del borde', start: 'inicio', middle: 'medio', end: 'final',
    cold: 'frío', warm: 'tibio', hot: 'caliente', after: (seconds) => `${seconds} s después de irse la boquilla`,
    palmLater: (seconds) => `La mano, solo desde ${seconds} s después de la boquilla: antes puede quemar.`,
    palmNever: 'Con la mano no: sigue demasiado caliente por más de un cuarto de hora, o no se conoce el ritmo.',
    save: 'Guardar lectura', tooLate: 'Hace más de 10 minutos: ya no sirve.', number: 'Escriba un número, como 150', range: (low, high) => `Entre ${low} y ${high}`,
    note: 'Una lectura puede quitar un veredicto; nunca lo da.',
    learnt: 'Lo que dijo la superficie',
  },

  leave: { button: 'Dejarlo como está', title: '¿Por qué no se repite?', reasons: ['No queda tiempo', 'Ya está muy mojado', 'La tela sufriría', 'Otro método', 'El cliente no quiere'] },
};
