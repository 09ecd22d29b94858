/** How a covering or a board is put on; cautions hang on it. */
export type WorkMethod =
  | 'torch'
  | 'hot-asphalt'
  | 'cold-adhesive'
  | 'self-adhered'
  | 'hot-air'
  | 'solvent-adhesive'
  | 'mechanical-fastening'
  | 'foam-adhesive'
  | 'liquid-resin'
  | 'spray-foam'
  | 'ballast';
