import math from 'mathjs/lib/browser/math.js';

/**
 * The only door to mathjs (unit conversion, least squares).
 * The one-file build is imported on purpose: the package's module build takes about eight times as long to load,
 * and every command and page would wait for it (0.2 s against 1.5 s, measured).
 */
export { math };
