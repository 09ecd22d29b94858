import type { SavedRoof } from '../../store/store.ts';
import type { Answer } from '../answers.ts';
import { NotThere, type Shop } from '../context.ts';

/** The answer for a saved roof's last readable file. */
export function answerOf({ answers }: Shop, { text }: SavedRoof): Answer {
  const answer = answers.of(text);
  if ('ok' in answer) {
    throw new NotThere('The roof file that was kept here can no longer be read. Edit it as text.');
  }
  return answer;
}
