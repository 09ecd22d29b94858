import { type WorkStep, within } from './crew-step.ts';
import type { PlannedReport } from './types.ts';

/** Before anything is laid over a roof that stays. Common practice, no source; cores because moisture is not seen. */
const coresFirst: WorkStep = {
  title: 'Cut cores before anything is laid over the old roof',
  hold: true,
  lines: [
    'One at the lowest spot and one in every part that looks or feels different, down to the deck. Count the coverings, press the insulation by hand, look at the deck. Close every core the same day.',
    'Go: one covering, dry all through, a deck that is sound.',
    'Stop and call: a second covering, wet insulation past the places that are marked, a soft or rusted deck.',
  ],
};

const cutOut =
  'Wet insulation is cut out down to the deck, the deck there looked at, and the place filled up to the old level with dry board.';

/** How the ground is made ready for the boards. Common practice, no source. */
const groundLines: Readonly<Record<PlannedReport['work'], readonly string[]>> = {
  'tear-off': [
    'Strip the old roof, sweep, and look at every sheet of the deck: soft, wet, split or loose is replaced first.',
  ],
  partly: ['Take off the part of the old roof that is planned to go, evenly, and sweep.', cutOut],
  're-cover': [
    'Sweep the old roof. Gravel, blisters, ridges and whatever is loose come off; the membrane is cut free where it holds tension.',
    cutOut,
  ],
};

const newDeck = [
  'The new deck is built first, on joists that somebody has found sound. No list here counts it.',
  'Open to the sky the rooms below are shut off from rain every night: cover what is open, watertight, before the crew leaves.',
];

/** The old metal at the edges makes room for the new, which covers the old roof as well. */
const edgeLine =
  'Take the old edge metal off and look at the wood behind it. The new metal covers the old roof and the boards.';

/** What the boards lie on is made ready and shot before the first board. */
export function groundSteps({ work, ground, stripped }: PlannedReport): WorkStep[] {
  const spot = within('spot-level');
  const survey: WorkStep = {
    title: `Shoot ${ground}`,
    hold: true,
    lines: [
      ...(stripped ? newDeck : groundLines[work]),
      ...(work === 'tear-off' ? [] : [edgeLine]),
      'Set the level over point 1 and read every check point. Write the readings in the table below.',
      `Go: every point within ${spot} of the plan.`,
      `Shim here: a point more than ${spot} low. Fill it up to the plan before the boards.`,
      `Stop and call: a point more than ${spot} high, a soft spot, a sag that moves underfoot, or anything that the plan does not show.`,
    ],
  };
  return work === 'tear-off' ? [survey] : [coresFirst, survey];
}
