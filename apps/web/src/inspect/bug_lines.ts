// Own line drawings for the identification help, on a field of 110 by 110. Shapes from memory, to be checked.
export interface BugLines { bodies: string[]; lines: string[]; fine: string[] }

/** Both sides of a drawing that is the same left and right of x = 55. */
function mirrored(paths: string[]): string[] {
  const other = (path: string) => path.replace(/(-?\d+(?:\.\d+)?) (-?\d+(?:\.\d+)?)/g, (_all, x: string, y: string) => `${110 - Number(x)} ${y}`);
  return paths.flatMap((path) => [path, other(path)]);
}

const k_bug_body = ['M55 14 C60 14 63 17 63 22 L47 22 C47 17 50 14 55 14 Z', 'M36 33 C38 22 46 21 55 22 C64 21 72 22 74 33 L70 38 L40 38 Z',
  'M40 38 L70 38 C82 46 86 58 84 70 C81 88 68 98 55 98 C42 98 29 88 26 70 C24 58 28 46 40 38 Z'];
const k_bug_legs = mirrored(['M38 36 L24 30 L17 36', 'M33 46 L17 48 L11 58', 'M28 58 L14 68 L11 82', 'M51 15 L44 8 L38 10']);
const k_bug_rings = ['M31 55 C45 60 65 60 79 55', 'M27 65 C43 71 67 71 83 65', 'M28 75 C43 81 67 81 82 75', 'M34 85 C46 90 64 90 76 85', 'M44 40 C46 50 50 52 54 52', 'M66 40 C64 50 60 52 56 52'];

export const k_bug_lines: Record<string, BugLines> = {
  bed_bug: { bodies: k_bug_body, lines: k_bug_legs, fine: [...k_bug_rings, ...mirrored(['M36 30 L33 28', 'M36 34 L33 33'])] },
  bat_bug: { bodies: k_bug_body, lines: k_bug_legs, fine: [...k_bug_rings, ...mirrored(['M38 26 L28 18', 'M36 29 L25 23', 'M35 32 L24 29', 'M41 23 L34 14', 'M36 35 L27 34'])] },
  carpet_beetle: {
    bodies: ['M55 16 C66 16 74 28 75 48 C76 68 68 86 55 86 C42 86 34 68 35 48 C36 28 44 16 55 16 Z'],
    lines: ['M40 28 L70 28', 'M36 38 L74 38', 'M35 48 L75 48', 'M35 58 L75 58', 'M38 68 L72 68', 'M43 78 L67 78'],
    fine: [...mirrored(['M38 32 L26 28', 'M36 42 L22 40', 'M35 52 L21 52', 'M36 62 L22 65', 'M40 73 L28 80', 'M47 84 L38 100', 'M50 85 L44 102', 'M53 86 L51 103', 'M44 80 L32 92'])],
  },
  booklouse: {
    bodies: ['M55 18 C66 18 70 26 69 34 C67 42 62 44 55 44 C48 44 43 42 41 34 C40 26 44 18 55 18 Z', 'M48 45 L62 45 L64 56 L46 56 Z', 'M46 57 C60 52 74 62 73 78 C71 92 63 98 55 98 C47 98 39 92 37 78 C36 70 38 60 46 57 Z'],
    lines: mirrored(['M47 48 L34 44 L28 50', 'M46 53 L31 56 L26 66', 'M44 60 L29 70 L26 84']),
    fine: mirrored(['M50 20 C40 8 26 6 14 14', 'M44 70 C50 73 52 73 55 73', 'M43 82 C48 85 52 85 55 85']),
  },
  cockroach: {
    bodies: ['M55 20 C72 20 80 30 80 40 C74 44 64 45 55 45 C46 45 36 44 30 40 C30 30 38 20 55 20 Z', 'M31 43 C44 48 66 48 79 43 C84 62 78 88 55 94 C32 88 26 62 31 43 Z'],
    lines: mirrored(['M50 20 C40 8 20 4 4 22', 'M33 44 L18 42 L10 50', 'M31 54 L14 60 L8 74', 'M32 66 L17 80 L14 98', 'M46 91 L40 104']),
    fine: ['M31 54 C45 59 65 59 79 54', 'M31 64 C45 69 65 69 79 64', 'M34 74 C46 79 64 79 76 74', 'M40 84 C48 88 62 88 70 84'],
  },
  spider_beetle: {
    bodies: ['M55 18 C61 18 64 23 63 28 L47 28 C46 23 49 18 55 18 Z', 'M46 29 L64 29 C67 34 66 38 63 41 L47 41 C44 38 43 34 46 29 Z', 'M55 41 C74 41 84 54 82 70 C80 88 68 97 55 97 C42 97 30 88 28 70 C26 54 36 41 55 41 Z'],
    lines: mirrored(['M50 19 C42 10 32 8 22 14', 'M46 36 L28 30 L14 42', 'M32 52 L14 56 L6 74', 'M28 68 L12 80 L8 100']),
    fine: ['M55 42 L55 96', 'M40 56 C37 62 36 70 38 78'],
  },
  flea: {
    bodies: ['M30 42 C34 30 48 26 62 32 C82 38 92 52 88 68 C80 82 58 82 42 72 C30 64 26 54 30 42 Z', 'M30 42 C22 42 18 48 20 56 C24 58 28 58 31 57 Z'],
    lines: ['M22 57 L18 70 L22 72', 'M36 66 L28 84 L34 88', 'M48 74 L40 92 L48 98', 'M66 78 C84 72 90 82 84 92 L72 96 L66 106', 'M60 78 L58 92 L68 100'],
    fine: ['M44 32 C40 44 40 60 46 73', 'M54 30 C50 44 50 62 56 77', 'M64 33 C60 46 60 64 66 79', 'M74 38 C71 50 71 66 75 78', 'M31 44 L38 40', 'M32 48 L39 45', 'M32 53 L39 51'],
  },
  tick: {
    bodies: ['M55 28 C76 28 88 46 84 68 C80 88 68 98 55 98 C42 98 30 88 26 68 C22 46 34 28 55 28 Z', 'M49 28 L52 14 L58 14 L61 28 Z'],
    lines: mirrored(['M42 32 L26 20 L16 22', 'M33 40 L14 36 L6 42', 'M29 50 L12 56 L5 66', 'M28 62 L14 76 L10 88']),
    fine: ['M40 32 C40 50 48 56 55 56 C62 56 70 50 70 32', ...mirrored(['M50 16 L44 12'])],
  },
};
