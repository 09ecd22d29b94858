import { type InputProblem, problemLine } from '../../input/problems.ts';

/** The sentence for a person, without its place: it stands beside the box and in the summary alike. */
export function problemSentence(problem: InputProblem): string {
  const line = problemLine({ ...problem, path: '' }).replace(/^: /, '');
  return line.charAt(0).toUpperCase() + line.slice(1);
}
