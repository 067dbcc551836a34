// Words of the place Treat, US English.
export const treat = {
  noItem: 'No item yet. Add one under Inspect.',
  left: 'left to do',
  edgesLeft: (count: number) => (count === 1 ? '1 edge' : `${count} edges`),
  minutesWord: 'of steaming, without changes of place',
  lengthWord: 'of edges',
  computing: (count: number) => (count === 1 ? '1 edge is still computed' : `${count} edges are still computed`),
  start: 'Start treating',
  goOn: 'Go on',
  allDone: 'Nothing with a pace is left on this item.',
  redoStart: (count: number) => (count === 1 ? 'Redo 1 edge' : `Redo ${count} edges`),
  redoTitle: 'To do again',
  list: 'Edges, in order',
  treatThis: (title: string) => `Treat: ${title}`,
  practicePace: 'no pace',
  hold: (seconds: string) => `hold ${seconds} s`,
  status: {
    todo: 'to do', redo: 'to do again', done: 'lethal', unproven: 'not proven', judging: 'being judged', skipped: 'left for later',
    out_of_reach: 'could not be reached', left: 'left as it is', barred: 'barred',
  } as Record<string, string>,
  rough: 'first look',

  causes: {
    too_fast: 'too fast', near_limit: 'too near the limit', unclear_record: 'time not known', not_passed: 'not passed', saw_live_bug: 'live bug seen',
    no_model: 'head or towel not tested', none: '',
  } as Record<string, string>,

  orderTitle: 'Which way?',
  order: { top_to_bottom: 'Top to bottom', bottom_to_top: 'Bottom to top' },
  orderWhy: {
    top_to_bottom: 'Common practice: steam rises, and bugs above would scatter.',
    bottom_to_top: 'Some guidance: bugs that fall get only a weak dose, so begin below.',
  },

  practiceTitle: (count: number) => (count === 1 ? '1 edge has no pace' : `${count} edges have no pace`),
  practiceText: 'Nothing computed kills there without harm. Done as practice has it, 1 in/s, such an edge counts as not proven.',
  practice: { leave: 'Leave them out', practice: 'Do them by practice' },

  minutesTitle: 'Minutes left',
  minutes: { all: 'all', ten: '10', twenty: '20', forty: '40', sixty: '60' },
  minutesChosen: (edges: number, minutes: string) => (edges === 1 ? `1 edge in ${minutes} min, most killed per minute first` : `${edges} edges in ${minutes} min, most killed per minute first`),
  ranking: 'Ranking the edges …',

  refill: (minutes: string) => `The tank wants water after about ${minutes} min of steam.`,
  slowed: (count: number) => (count === 1 ? 'Slower after your readings: 1 edge.' : `Slower after your readings: ${count} edges.`),
  noRefill: 'The tank lasts for what is left here.',
  towelLife: (minutes: string) => `Change the towel after ${minutes} min of steam.`,
  noForecast: 'No forecast of water and towel: tank, power and water of the steamer are not recorded under Kit.',
  awakeRefused: 'This browser cannot keep the screen on: set the phone’s screen lock to never while you treat.',
  soundMissing: 'This browser plays no beats. Follow the mark on the screen.',

  before: {
    title: 'Before the first edge',
    practice: 'Common practice, no source:',
    steam: 'Steam flows dry: let the first water out into a bucket.',
    towel: { none: 'No towel on the head.', wrapped: 'A dry towel is wrapped round the head.', laid: 'A dry towel lies on the cloth.' },
    tilt: 'Head tilted a little, so that bugs pass beneath it and are not pushed along.',
    flat: 'Pleats and skirts laid flat.',
    needles: 'Needles and sharps: look before you reach.',
    smoke: 'Steam can set off the smoke detector.',
    outlets: 'Outlets and electronics are never steamed.',
    burn: 'Steam burns. Never open a hot boiler.',
    ready: 'Ready',
  },

  field: {
    mark: 'Mark', start: 'Start', again: 'Again', done: 'Done', retry: 'Try again', bug: 'Live bug', more: 'More', close: 'Close',
    move: 'Move', computing: 'Computing the next pace', paused: 'Paused: this edge starts again', interrupted: 'Interrupted: do this edge again',
    unsaved: 'Not saved', finished: 'Done', toRedo: (count: number) => (count === 1 ? '1 edge again' : `${count} edges again`),
    towel: { none: 'Towel off', wrapped: 'Towel round the head', laid: 'Towel on the cloth' },
    fresh: 'Fresh towel',
    harm: { none: '', scorch: 'scorched?', soak: 'soaked?', barred: 'barred', unknown: 'harm?' } as Record<string, string>,
    putBack: 'again', fast: 'too fast', slow: 'too slow', practice: 'practice',
    label: (title: string) => `Treating: ${title}`,
    number: { left: 'time left on this edge', planned: 'planned time of this edge', hold: 'seconds to hold', count: 'starts in' },
    noSound: 'no sound', mayGoDark: 'the screen may go dark',
    track: (length: string, beat: string) => `The edge, ${length}, with the place where the head should be; ${beat} from beat to beat`,
    /** Words that a short name of an edge can do without. */
    fillers: ['the', 'of', 'and', 'a', 'an', 'at', 'in', 'to', 'between', 'along', 'around', 'over', 'from', 'where', 'side', 'panel', 'under', 'behind', 'seat'],
  },

  more: {
    title: 'This edge', left: (edges: string, way: string, time: string) => `Left here: ${edges}, ${way}, ${time}`, goOn: 'Go on', pause: 'Pause', undo: 'Undo the last mark', undoNote: 'Within 10 s the edge goes on as if the mark had not been made.',
    reach: 'Could not reach', skip: 'Leave for later', towel: 'Towel changed', reading: 'Read the surface', louder: 'Louder', softer: 'Softer', leave: 'Leave the guide',
  },

  sound: {
    title: 'Sound and keys', pitch: 'Pitch', low: 'low', middle: 'middle', high: 'high', loudness: 'Loudness', soft: 'soft', medium: 'medium', loud: 'loud',
    hear: 'Can you hear this?', vibrate: 'Vibration', on: 'on', off: 'off', noVibration: 'This browser does not vibrate.',
    keys: (names: string) => `Mark with: ${names}, the big control, a headset button.`, keyNames: { Space: 'Space', Enter: 'Enter', PageDown: 'PageDown', PageUp: 'PageUp', ArrowLeft: 'left arrow', ArrowRight: 'right arrow', ArrowUp: 'up arrow', ArrowDown: 'down arrow' } as Record<string, string>,
    learn: 'Set another key or foot switch', press: 'Press it now …', usual: 'Usual keys again',
  },

  reading: {
    title: 'Surface behind the head', gun: 'Infrared gun', palm: 'Back of the hand', where: 'Where on the edge', start: 'start', middle: 'middle', end: 'end',
    cold: 'cold', warm: 'warm', hot: 'hot', after: (seconds: string) => `${seconds} s after the head had left`,
    palmLater: (seconds: string) => `The hand only from ${seconds} s after the head: before, it may burn.`,
    palmNever: 'Not with the hand: it stays too hot for longer than a quarter of an hour, or no pace is known.',
    save: 'Save reading', tooLate: 'More than 10 minutes ago: no longer of use.', number: 'Type a number, such as 150', range: (low: string, high: string) => `Between ${low} and ${high}`,
    note: 'A reading can take a verdict back; it never grants one.',
    learnt: 'What the surface said',
  },

  leave: { button: 'Leave it as it is', title: 'Why is it not done again?', reasons: ['No time left', 'Too wet already', 'Cloth would suffer', 'Other method instead', 'Client does not want it'] },
};
