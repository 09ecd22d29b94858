/** The published one-file build of the library: same functions, one file to load instead of some two thousand. */
declare module 'mathjs/lib/browser/math.js' {
  import type { MathJsInstance } from 'mathjs';

  const math: MathJsInstance;
  export default math;
}
