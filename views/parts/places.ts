import { createContext, useContext } from 'hono/jsx';

/** Places that the drawings of a page show: rows point only at what is drawn. */
export const Places = createContext<ReadonlySet<string>>(new Set());

export const useIsDrawn = (place: string): boolean => useContext(Places).has(place);
