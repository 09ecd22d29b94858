import type { Cited } from '../sources.ts';

export interface SafetyLimit extends Cited {
  value: number;
}

/**
 * Figures that decide whether a caution holds. Federal values; states with their own plan may be stricter (state-plans.ts).
 * Known doubts: the 5,580-sq-ft figure for power cutters, the 15-mph and 25-mph hand-over winds and the 2-in pond are
 * memory or practice; the guard heights differ between OSHA (39 in), the building code (42 in) and California (24 in).
 */
export const safetyLimits = {
  fallDutyFt: { value: 6, source: 'osha-1926-501', at: '(b)(1) and (b)(10)', grade: 'found' },
  holeDropFt: { value: 6, source: 'osha-1926-501', at: '(b)(4)', grade: 'found' },
  lowSlopeIn12: { value: 4, source: 'osha-1926-500', at: '(b), low-slope roof', grade: 'found' },
  monitorWidthFt: { value: 50, source: 'osha-1926-501', at: '(b)(10)', grade: 'found' },
  lineFt: { value: 6, source: 'osha-1926-502', at: '(f)(1)', grade: 'found' },
  lineAcrossTravelFt: { value: 10, source: 'osha-1926-502', at: '(f)(1)', grade: 'found' },
  flagSpacingFt: { value: 6, source: 'osha-1926-502', at: '(f)(2)', grade: 'found' },
  guardIn: { value: 39, source: 'osha-1926-502', at: '(b)(1)', grade: 'found' },
  codeGuardIn: { value: 42, source: 'imc-304-11', at: '304.11', grade: 'found' },
  codeGuardEdgeFt: { value: 10, source: 'imc-304-11', at: '304.11, equality taken as inside', grade: 'found' },
  codeGuardDropIn: { value: 30, source: 'imc-304-11', at: '304.11', grade: 'found' },
  freeFallFt: { value: 6, source: 'osha-1926-502', at: '(d)(16)', grade: 'found' },
  decelerationFt: { value: 3.5, source: 'osha-1926-502', at: '(d)(16)', grade: 'found' },
  harnessStretchFt: { value: 1, source: 'practice', at: 'arrest clearance', grade: 'practice' },
  arrestMarginFt: { value: 2, source: 'practice', at: 'arrest clearance, 2 to 3', grade: 'practice' },
  harnessRingFt: { value: 5, source: 'practice', at: 'height of the ring above the feet', grade: 'practice' },
  otherTradesFt: { value: 15, source: 'osha-letters', at: '2000-08-01 and 2002-11-15', grade: 'found' },
  storageFt: { value: 6, source: 'osha-1926-502', at: '(j)(7)', grade: 'found' },
  stepIn: { value: 19, source: 'osha-1926', at: '1051(a)', grade: 'found' },
  ladderAboveFt: { value: 3, source: 'osha-1926', at: '1053(b)(1)', grade: 'found' },
  kettleFt: { value: 20, source: 'ifc-2018', at: 'section 303', grade: 'found' },
  fuelFt: { value: 10, source: 'ifc-2018', at: 'section 303', grade: 'found' },
  fuelShieldedFt: { value: 2, source: 'ifc-2018', at: 'section 303', grade: 'found' },
  cylinderToTorchFt: { value: 10, source: 'practice', at: 'torch to cylinder', grade: 'practice' },
  cylinderToHeaterFt: { value: 6, source: 'osha-1926', at: '153(h)(13)', grade: 'found' },
  solventIgnitionFt: { value: 50, source: 'osha-1926', at: '152(f)(3)', grade: 'memory' },
  intakeFt: { value: 50, source: 'practice', at: 'fume sources and air intakes', grade: 'practice' },
  generatorFt: { value: 20, source: 'cpsc-generator', at: 'distance from openings', grade: 'found' },
  extinguisherAreaSqFt: { value: 3000, source: 'osha-1926', at: '150(c)', grade: 'found' },
  extinguishersPerTorch: { value: 2, source: 'torch-program', at: 'within 10 ft of each torch', grade: 'found' },
  torchesApartFt: { value: 20, source: 'torch-program', at: 'own pair beyond 20 ft', grade: 'found' },
  asbestosBuiltBefore: { value: 1990, source: 'practice', at: 'age as a prompt only', grade: 'practice' },
  asbestosCutterSqFt: { value: 5580, source: 'neshap-asbestos', at: 'Appendix A, interpretive rule', grade: 'memory' },
  smallDwellingUnits: { value: 4, source: 'fr-60-38725', at: 'small residential building', grade: 'found' },
  leadBuiltBefore: { value: 1978, source: 'epa-rrp', at: 'target housing', grade: 'found' },
  leadPaintSqFt: { value: 20, source: 'epa-rrp', at: 'exterior, equality taken as covered', grade: 'found' },
  heatIndexF: { value: 80, source: 'osha-heat-proposal', at: 'initial trigger', grade: 'found' },
  highHeatIndexF: { value: 90, source: 'osha-heat-proposal', at: 'high trigger', grade: 'found' },
  coldF: { value: 20, source: 'practice', at: 'cold stress', grade: 'practice' },
  pondForEngineerIn: { value: 2, source: 'practice', at: 'water load', grade: 'practice' },
  stockPsf: { value: 20, source: 'memory', at: 'usual least roof live load, not a stocking permit', grade: 'memory' },
  addedLoadShare: { value: 0.05, source: 'iebc-gravity', at: '606.2', grade: 'found' },
  chuteFt: { value: 20, source: 'osha-1926', at: '252', grade: 'found' },
  windCareMph: { value: 15, source: 'practice', at: 'loose sheets', grade: 'practice' },
  windStopMph: { value: 25, source: 'practice', at: 'boards and sheets', grade: 'practice' },
  gustStopMph: { value: 35, source: 'uk-wind-guide', at: 'stop at 35 mph gust', grade: 'found' },
  rainPercent: { value: 30, source: 'practice', at: 'open roof', grade: 'practice' },
  thunderMinutes: { value: 30, source: 'osha-noaa-lightning', at: 'return after the last thunder', grade: 'found' },
  lineClearanceFt: { value: 10, source: 'line-clearance-twin', at: 'up to 50 kV', grade: 'found' },
  lineClearanceKv: { value: 50, source: 'line-clearance-twin', at: 'up to 50 kV', grade: 'found' },
  lineClearanceInPerKv: { value: 0.4, source: 'line-clearance-twin', at: 'above 50 kV', grade: 'found' },
  maintenanceFt: { value: 15, source: 'osha-1910', at: '28(b)(13)', grade: 'found' },
  conduitGapIn: { value: 1.5, source: 'nec-300-4', at: '300.4(E), 2011 wording', grade: 'found' },
  cordDropPercent: { value: 5, source: 'practice', at: 'voltage at the welder', grade: 'practice' },
} as const satisfies Record<string, SafetyLimit>;
