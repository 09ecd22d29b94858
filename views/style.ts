import { drawingCss, sunCss } from '../src/drawing/drawing-css.ts';
import { baseCss, shellCss } from './style/base.ts';
import { pageCss, printCss } from './style/page.ts';

/** The whole style of the pages as one text: served as a file, or carried inside a page that is saved. */
export const styleSheet = (): string => [drawingCss(), baseCss, shellCss, pageCss, sunCss, printCss].join('\n');
