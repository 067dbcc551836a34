// The page's words in British English: only the entries that differ from en.ts. English of other countries, save the United
// States and Canada, gets these too. Sizes of beds keep their names: they are those of the United States, beside metric ones.
import type { Words } from './en';
import type { Overlay } from './overlay';

export const enGb: Overlay<Words> = {
  blank: {
    text: 'Start with the demo flat, or with your own job. It all stays on this device until you export it.',
    demo: 'Open the demo flat',
  },
  kinds: { welt: 'piping', skirt: 'valance', skirting_gap: 'gap at the skirting board' },
  cautions: [
    'Steam burns. Never open a hot boiler; check hose and head for leaks first.',
    'Sockets, electronics and wiring are never steamed.',
    'Unknown finish: a hidden spot test first.',
    'Needles and sharps hide in folds: look before you reach.',
    'Local regulations, labels and licensed trades decide.',
  ],
  inspect: {
    dimensionNames: { casing_thickness: 'thickness of the architrave', casing_width: 'width of the architrave' },
    lookalikes: {
      kinds: [
        { key: 'bed_bug', name: 'Bed bug', size: '5 to 6 mm, egg 1 mm', tells: 'Flat oval, six legs, no wings. Short hair on the shield behind the head, shorter than the eye is wide. Slow feeler of four parts.' },
        { key: 'bat_bug', name: 'Bat bug', size: '5 to 6 mm', tells: 'Same shape. Hair on the shield is longer than the eye is wide. Bats in loft or wall. Only a lens tells: send it in.' },
        { key: 'carpet_beetle', name: 'Carpet beetle larva', size: '3 to 5 mm', tells: 'A hairy, striped grub with tufts at its end, never flat. Leaves bristly skins; eats wool, bites nobody.' },
        { key: 'booklouse', name: 'Booklouse', size: '1 to 2 mm', tells: 'Pale and soft like a small nymph, but with a big head, long thread feelers and a waist. Lives where it is damp.' },
        { key: 'cockroach', name: 'Cockroach nymph', size: '3 mm and more', tells: 'Feelers as long as the body, two tails at the end, runs fast. The head hides under the shield.' },
        { key: 'spider_beetle', name: 'Spider beetle', size: '2 to 4 mm', tells: 'Round and shiny like a drop of blood; the shell is hard and does not flatten. Legs look long like a spider’s.' },
        { key: 'flea', name: 'Flea', size: '2 to 3 mm', tells: 'Flat from side to side, not from above. Jumps. Strong hind legs. Where pets lie.' },
        { key: 'tick', name: 'Tick', size: '2 to 5 mm', tells: 'Eight legs when grown, no feelers, one body without rings. Sticks in the skin.' },
      ],
    },
    people: {
      what: { pressurised_cans: 'Pressurised cans', mould: 'Mould' },
      asks: { neighbours: 'Speak to the neighbours' },
    },
    item: {
      box_spring: 'Divan base', headboard_wood: 'Wooden headboard', cot: 'Cot', ottoman: 'Footstool', night_table: 'Bedside table', dresser: 'Chest of drawers',
      stroller: 'Pushchair', baseboard: 'Skirting board', socket_plate: 'Socket plate',
    },
    plan: 'The flat from above',
    roomNames: ['Bedroom', 'Living room', 'Kitchen', 'Hall', 'Bathroom', 'Cupboard'],
    options: { skirted: 'Valance to the floor' },
    cloth: {
      wettingRecipe: ['Weigh a dry towel, then put a measured amount of water on a hidden hand-wide square.', 'Let it dry. No ring or mark: note grams per square metre.', 'A hand-wide square (10 by 10 cm) takes one gram for every 100 g/m2.'],
    },
  },
  kit: {
    picture: { title: { under_real_edge: 'The edge of a cushion in section; the probe tip lies behind the cord of the piping, the head passes over it.' } },
    readingHow: { under_real_edge: 'The tip under the real piping or fold, where eggs may sit. One pass.' },
  },
  plan: { cautionSteam: 'Steam burns. Sockets and electronics are never steamed. Unknown finish: hidden spot test first.' },
  treat: { before: { flat: 'Pleats and valances laid flat.', outlets: 'Sockets and electronics are never steamed.' } },
  record: { factKinds: { dryer: 'tumble dryer' } },
  report: {
    lines: 'Lines: thick and whole, lethal; dotted, not proven; dashed, short; dash and dot, steam barred; thin grey, not treated. Edges on the far side are in the tables only.',
  },
  visit: {
    circuitsNone: 'No circuit is on record: find circuit breaker and sockets before anything is plugged in.', breaker: 'Circuit breaker',
    circuitRule: 'At most 80 % of the circuit breaker, less what runs already. From memory, to be checked: local regulations decide.',
    rows: { dryer: 'Tumble dryer' }, wait: { dryer: 'tumble dryer in use' }, cord: 'lead from another room', leftWhy: { no_dryer: 'no tumble dryer' },
    kindsOfMethod: { dryer: 'tumble dryer' },
    sheetEnd: 'Something not clear? Ask us before the visit. Local regulations and labels go before this sheet.',
  },
};
