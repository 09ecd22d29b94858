import type { CoveringClass } from '../slope-minimums.ts';
import type { Cited } from '../sources.ts';

/** Properties on which a veto or a score depends. */
export type MembraneTrait =
  | 'open-flame'
  | 'kettle'
  | 'asphaltic'
  | 'single-ply'
  | 'oil-sensitive'
  | 'residue-sensitive'
  | 'pond-intolerant'
  | 'coating'
  | 'not-silicone';

export interface MembraneOption extends Cited {
  id: string;
  name: string;
  /** For the middle of a sentence. */
  shortName: string;
  /** How the code groups it (least slope). */
  covering: CoveringClass;
  /** ASTM standards under which the code lists the covering. */
  standard: string;
  traits: readonly MembraneTrait[];
  /** What it is, for the owner. */
  what: string;
}

/**
 * The coverings that are compared. The citation is the code list that names the standard.
 * Thickness grades, laps, heat, limits and scores stand in the other tables of this folder, keyed by `id`.
 * The silicone and acrylic rows are coatings for a roof that stays; PMMA is a liquid membrane with fleece.
 * Known doubt: per-type minimum thickness of SBS sheets differs by edition and is not stored.
 */
export const membraneOptions = [
  {
    id: 'tpo',
    name: 'TPO sheet, white, 60 mil',
    shortName: 'white TPO',
    covering: 'thermoplastic',
    standard: 'ASTM D6878',
    traits: ['single-ply', 'oil-sensitive', 'residue-sensitive', 'not-silicone'],
    what: 'One layer of white plastic sheet; the seams are welded together with hot air.',
    source: 'minn-1305',
    at: '1507.13',
    grade: 'found',
  },
  {
    id: 'pvc',
    name: 'PVC sheet, white, 60 mil',
    shortName: 'white PVC',
    covering: 'thermoplastic',
    standard: 'ASTM D4434',
    traits: ['single-ply', 'residue-sensitive', 'not-silicone'],
    what: 'One layer of white vinyl sheet; the seams are welded together with hot air.',
    source: 'minn-1305',
    at: '1507.13',
    grade: 'found',
  },
  {
    id: 'epdm-white',
    name: 'EPDM rubber, white, 60 mil',
    shortName: 'white EPDM',
    covering: 'thermoset',
    standard: 'ASTM D4637',
    traits: ['single-ply', 'oil-sensitive', 'residue-sensitive', 'not-silicone'],
    what: 'One layer of rubber sheet with a white face; the seams are taped.',
    source: 'ufgs-epdm',
    at: 'materials',
    grade: 'found',
  },
  {
    id: 'epdm-black',
    name: 'EPDM rubber, black, 60 mil',
    shortName: 'black EPDM',
    covering: 'thermoset',
    standard: 'ASTM D4637',
    traits: ['single-ply', 'oil-sensitive', 'residue-sensitive', 'not-silicone'],
    what: 'One layer of black rubber sheet; the seams are taped.',
    source: 'ufgs-epdm',
    at: 'materials',
    grade: 'found',
  },
  {
    id: 'sbs-self-adhered',
    name: 'SBS modified bitumen, self-adhered, standard granule',
    shortName: 'self-adhered SBS',
    covering: 'modified-bitumen',
    standard: 'ASTM D6162, D6163 or D6164',
    traits: ['asphaltic', 'oil-sensitive', 'pond-intolerant', 'not-silicone'],
    what: 'Two layers of rubberized asphalt sheet that stick by themselves, the upper one with mineral granules.',
    source: 'minn-1305',
    at: '1507.11',
    grade: 'found',
  },
  {
    id: 'sbs-self-adhered-cool',
    name: 'SBS modified bitumen, self-adhered, cool white granule',
    shortName: 'self-adhered SBS with cool granules',
    covering: 'modified-bitumen',
    standard: 'ASTM D6162, D6163 or D6164',
    traits: ['asphaltic', 'oil-sensitive', 'pond-intolerant', 'not-silicone'],
    what: 'Two layers of rubberized asphalt sheet that stick by themselves, the upper one with bright, sun-reflecting granules.',
    source: 'minn-1305',
    at: '1507.11',
    grade: 'found',
  },
  {
    id: 'sbs-cold',
    name: 'SBS modified bitumen in cold adhesive, standard granule',
    shortName: 'SBS in cold adhesive',
    covering: 'modified-bitumen',
    standard: 'ASTM D6162, D6163 or D6164',
    traits: ['asphaltic', 'oil-sensitive', 'pond-intolerant', 'not-silicone'],
    what: 'Two layers of rubberized asphalt sheet, each bedded in adhesive that is spread cold.',
    source: 'minn-1305',
    at: '1507.11',
    grade: 'found',
  },
  {
    id: 'sbs-torch',
    name: 'SBS modified bitumen, torch applied',
    shortName: 'torched SBS',
    covering: 'modified-bitumen',
    standard: 'ASTM D6162, D6163 or D6164',
    traits: ['open-flame', 'asphaltic', 'oil-sensitive', 'pond-intolerant', 'not-silicone'],
    what: 'Two layers of rubberized asphalt sheet melted on with a gas torch.',
    source: 'minn-1305',
    at: '1507.11',
    grade: 'found',
  },
  {
    id: 'app-torch',
    name: 'APP modified bitumen, torch applied',
    shortName: 'torched APP',
    covering: 'modified-bitumen',
    standard: 'ASTM D6222 or D6223',
    traits: ['open-flame', 'asphaltic', 'oil-sensitive', 'pond-intolerant', 'not-silicone'],
    what: 'Layers of plastic-modified asphalt sheet melted on with a gas torch.',
    source: 'ti-809-roofing',
    at: 'modified bitumen',
    grade: 'found',
  },
  {
    id: 'bur-hot',
    name: 'Built-up roof in hot asphalt with gravel',
    shortName: 'hot built-up roofing',
    covering: 'built-up',
    standard: 'ASTM D312 and D2178',
    traits: ['kettle', 'asphaltic', 'oil-sensitive', 'pond-intolerant', 'not-silicone'],
    what: 'Three to five layers of felt mopped in hot asphalt from a kettle, covered with gravel.',
    source: 'minn-1305',
    at: '1507.10',
    grade: 'found',
  },
  {
    id: 'pmma',
    name: 'Liquid PMMA membrane with fleece',
    shortName: 'liquid PMMA',
    covering: 'liquid-applied',
    standard: 'by evaluation report',
    traits: ['not-silicone'],
    what: 'A liquid resin rolled out in two coats with a fleece between; it cures to one skin without seams.',
    source: 'memory',
    at: 'liquid-applied coverings',
    grade: 'memory',
  },
  {
    id: 'silicone',
    name: 'Liquid silicone coating over the old roof',
    shortName: 'silicone coating',
    covering: 'liquid-applied',
    standard: 'ASTM D6694',
    traits: ['coating'],
    what: 'A white silicone coat rolled over the old roof, which stays.',
    source: 'astm-d6694',
    at: 'scope',
    grade: 'found',
  },
  {
    id: 'acrylic',
    name: 'Acrylic coating over the old roof',
    shortName: 'acrylic coating',
    covering: 'liquid-applied',
    standard: 'ASTM D6083',
    traits: ['coating', 'pond-intolerant', 'not-silicone'],
    what: 'A white water-based coat rolled over the old roof, which stays.',
    source: 'minn-1305',
    at: '1507.15',
    grade: 'found',
  },
  {
    id: 'roll-roofing',
    name: 'Mineral roll roofing',
    shortName: 'roll roofing',
    covering: 'roll-roofing',
    standard: 'ASTM D3909 or D6380 Class M',
    traits: ['asphaltic', 'oil-sensitive', 'pond-intolerant', 'not-silicone'],
    what: 'One thin layer of granule-faced asphalt felt nailed down.',
    source: 'memory',
    at: 'standards of roll roofing',
    grade: 'memory',
  },
] as const satisfies readonly MembraneOption[];

export type MembraneId = (typeof membraneOptions)[number]['id'];
