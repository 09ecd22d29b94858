import { caseRoof } from './case-roof.ts';

/** A level section with a door over it. Invented. */
export const dampRoof = (name: string, doorIn: number | null, more: Record<string, unknown>) =>
  caseRoof(
    name,
    JSON.stringify({
      version: 1,
      label: 'Invented section',
      invented: true,
      outline: [
        [0, 0],
        [30, 0],
        [30, 24],
        [0, 24],
      ],
      edges: [
        { side: 0, kind: 'gutter', mayDrain: 'yes' },
        { side: 1, kind: 'rake', mayDrain: 'no' },
        {
          side: 2,
          kind: 'wall',
          mayDrain: 'no',
          openings: doorIn === 0 ? [] : [{ kind: 'door', fromFt: 4, toFt: 7, heightIn: doorIn }],
        },
        { side: 3, kind: 'rake', mayDrain: 'no' },
      ],
      existing: { surface: 'level', readOn: 'covering', buildUpIn: 2 },
      ...more,
    }),
  );
