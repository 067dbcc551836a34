// The page's words in British English: only the entries that differ from en.ts. English of other countries, save the United
// States and Canada, gets these too. Sizes of beds keep their names: they are those of the United States, beside metric ones.
import type { Words } from './en';
import type { Overlay } from './overlay';

export const enGb: Overlay<Words> = {
  blank: {
    text: 'Start with the demo flat, or with your own job. It all stays on this device until you export it.',
    demo: 'Open the demo flat',
  },
  kinds: { skirting_gap: 'gap at the skirting board' },
  cautions: [
    'Steam burns. Never open a hot boiler; check hose and head for leaks first.',
    'Sockets, electronics and wiring are never steamed.',
    'Unknown finish: a hidden spot test first.',
    'Needles and sharps hide in folds: look before you reach.',
    'Local regulations, labels and licensed trades decide.',
  ],
  inspect: {
    dimensionNames: { casing_thickness: 'thickness of the architrave', casing_width: 'width of the architrave' },
    people: {
      what: { pressurised_cans: 'Pressurised cans', mould: 'Mould' },
      asks: { neighbours: 'Speak to the neighbours' },
    },
    item: {
      headboard_wood: 'Wooden headboard', cot: 'Cot', ottoman: 'Footstool', night_table: 'Bedside table', dresser: 'Chest of drawers',
      stroller: 'Pushchair', baseboard: 'Skirting board', socket_plate: 'Socket plate',
    },
    plan: 'The flat from above',
    roomNames: ['Bedroom', 'Living room', 'Kitchen', 'Hall', 'Bathroom', 'Cupboard'],
    cloth: {
      wettingRecipe: ['Weigh a dry towel, then put a measured amount of water on a hidden hand-wide square.', 'Let it dry. No ring or mark: note grams per square metre.', 'A hand-wide square (10 by 10 cm) takes one gram for every 100 g/m2.'],
    },
  },
  plan: { cautionSteam: 'Steam burns. Sockets and electronics are never steamed. Unknown finish: hidden spot test first.' },
  treat: { before: { outlets: 'Sockets and electronics are never steamed.' } },
  record: { factKinds: { dryer: 'tumble dryer' } },
  report: {
    lines: 'Lines: thick and whole, lethal; dotted, not proven; dashed, short; dash and dot, steam barred; thin grey, not treated. Edges on the far side are in the tables only.',
  },
  visit: {
    circuitsNone: 'No circuit is on record: find circuit breaker and sockets before anything is plugged in.', breaker: 'Circuit breaker',
    circuitRule: 'At most 80 % of the circuit breaker, less what runs already. From memory, to be checked: local regulations decide.',
    rows: { dryer: 'Tumble dryer' }, wait: { dryer: 'tumble dryer in use' }, cord: 'cable from another room', leftWhy: { no_dryer: 'no tumble dryer' },
    kindsOfMethod: { dryer: 'tumble dryer' },
    sheetEnd: 'Something not clear? Ask us before the visit. Local regulations and labels go before this sheet.',
  },
};
