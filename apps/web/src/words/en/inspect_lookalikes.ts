// Words of the identification help of Inspect. Sizes of the bed bug and its egg: Norwegian Institute of Public Health (page
// read). Everything else from memory, to be checked against a handbook of household insects.
export const lookalikes = {
  title: 'Is it a bed bug?',
  intro: 'Catch it on tape, light from the side, enlarge it with the camera.',
  memory: 'From memory, to be checked. A specialist decides where a decision hangs on it.',
  sized: 'Sizes: Norwegian Institute of Public Health. The rest from memory, to be checked.',
  tells: 'What tells them apart',
  scale: 'Drawn for shape, not to one scale.',
  kinds: [
    { key: 'bed_bug', name: 'Bed bug', size: '5 to 6 mm, egg 1 mm', tells: 'Flat oval, six legs, no wings. Short hair on the shield behind the head, shorter than the eye is wide. Slow feeler of four parts.' },
    { key: 'bat_bug', name: 'Bat bug', size: '5 to 6 mm', tells: 'Same shape. Hair on the shield is longer than the eye is wide. Bats in attic or wall. Only a lens tells: send it in.' },
    { key: 'carpet_beetle', name: 'Carpet beetle larva', size: '3 to 5 mm', tells: 'A hairy, striped grub with tufts at its end, never flat. Leaves bristly skins; eats wool, bites nobody.' },
    { key: 'booklouse', name: 'Booklouse', size: '1 to 2 mm', tells: 'Pale and soft like a small nymph, but with a big head, long thread feelers and a waist. Lives where it is damp.' },
    { key: 'cockroach', name: 'Cockroach nymph', size: '3 mm and more', tells: 'Feelers as long as the body, two tails at the end, runs fast. The head hides under the shield.' },
    { key: 'spider_beetle', name: 'Spider beetle', size: '2 to 4 mm', tells: 'Round and shiny like a drop of blood; the shell is hard and does not flatten. Legs look long like a spider’s.' },
    { key: 'flea', name: 'Flea', size: '2 to 3 mm', tells: 'Flat from side to side, not from above. Jumps. Strong hind legs. Where pets lie.' },
    { key: 'tick', name: 'Tick', size: '2 to 5 mm', tells: 'Eight legs when grown, no feelers, one body without rings. Sticks in the skin.' },
  ],
};
