import { createContext, useContext } from 'hono/jsx';

/** Anchors on the drawings of a page ("after-limit-door"): rows link only to what is drawn. */
export const Places = createContext<ReadonlySet<string>>(new Set());

export const useIsDrawn = (anchor: string): boolean => useContext(Places).has(anchor);
