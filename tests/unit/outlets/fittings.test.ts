import { describe, expect, it } from 'vitest';
import type { DrainInput } from '../../../src/core/outlets/size-drain.ts';
import { sizeDrain } from '../../../src/core/outlets/size-drain.ts';
import { leaderFlowGpm } from '../../../src/core/outlets/storm-pipe.ts';
import { strainerFlowGpm } from '../../../src/core/outlets/strainer.ts';
import { duty } from './duty.ts';

const drain = (changes: Partial<DrainInput> = {}): DrainInput => ({
  ...duty(4000, 3, changes),
  kind: 'drain',
  sizeIn: 4,
  insertBoreIn: null,
  strainer: null,
  strainerFreeSqIn: null,
  usableHeadIn: null,
  horizontalSlopeInPerFt: null,
  makersCurve: null,
  ...changes,
});

const told = (input: DrainInput, id: string) => sizeDrain(input).findings.find((finding) => finding.id === id);

describe('a drain with an insert is as small as the insert', () => {
  // IPC Table 1106.2, vertical: 3 in 87 gpm, 4 in 180 gpm. 4,000 sq ft at 3 in/h are 124.8 gpm.
  it('a 4-in drain with a 3-in insert is a 3-in drain: 87 gpm, not 180, and too small', () => {
    expect(sizeDrain(drain()).adequate).toBe(true);
    const rating = sizeDrain(drain({ insertBoreIn: 3 }));
    expect(rating).toMatchObject({ capacityGpm: 87, adequate: false, headIn: null });
    expect(rating.basis).toContain('3-in bore');
    expect(told(drain({ insertBoreIn: 3 }), 'drain-insert')).toMatchObject({
      level: 'fix',
      value: '3 in',
      limit: '4 in',
    });
    expect(told(drain({ insertBoreIn: 3 }), 'drain-insert')?.message).toContain(
      'A 4-in drain with a 3-in insert is a 3-in drain. It carries 87 gpm instead of 180 gpm.',
    );
  });

  it('a bore between two sizes takes the smaller row; the insert alone decides where the drain is not known', () => {
    expect(sizeDrain(drain({ insertBoreIn: 3.5 })).capacityGpm).toBe(87);
    expect(sizeDrain(drain({ sizeIn: null, insertBoreIn: 3 })).capacityGpm).toBe(87);
  });

  it('a bore under the smallest row follows the formula behind the leader tables (NSPC 2006, Table 13.6.1)', () => {
    const rating = sizeDrain(drain({ insertBoreIn: 1.5 }));
    expect(rating.capacityGpm).toBeCloseTo(leaderFlowGpm(1.5), 9);
    expect(rating.capacityGpm!).toBeLessThan(23);
    expect(rating.source?.id).toBe('nspc-2006');
  });

  it('an insert that still carries the flow is told, not failed', () => {
    expect(told(drain({ insertBoreIn: 3, drainsSqFt: 1000 }), 'drain-insert')).toMatchObject({ level: 'note' });
  });
});

describe('strainers', () => {
  // Chicago 18-29-1105: 1.5 times (dome) and 2 times (flat) the area of the pipe; a 4-in pipe has 12.57 sq in.
  it('a flat grate needs twice the area of its pipe, a dome one and a half times', () => {
    const flat = told(drain({ strainer: 'flat', strainerFreeSqIn: 20 }), 'strainer-too-small');
    expect(flat).toMatchObject({ level: 'fix', value: '20 sq in', limit: '25.1 sq in' });
    expect(told(drain({ strainer: 'dome', strainerFreeSqIn: 20 }), 'strainer-too-small')).toBeUndefined();
    expect(told(drain({ strainer: 'dome', strainerFreeSqIn: 18 }), 'strainer-too-small')?.limit).toBe('18.8 sq in');
  });

  it('the insert counts there too: a 3-in bore has 7.07 sq in', () => {
    expect(told(drain({ insertBoreIn: 3, strainer: 'flat', strainerFreeSqIn: 14 }), 'strainer-too-small')?.limit).toBe(
      '14.1 sq in',
    );
  });

  it('few openings choke the drain: 4 sq in under 2 in of water pass 24.3 gpm', () => {
    expect(strainerFlowGpm(4, 2)).toBeCloseTo(4.3 * 4 * Math.SQRT2, 9);
    const rating = sizeDrain(drain({ strainer: 'flat', strainerFreeSqIn: 4 }));
    expect(rating.capacityGpm).toBeCloseTo(24.32, 2);
    expect(rating.adequate).toBe(false);
  });

  it('an open pipe is told; a flat grate that nobody measured is asked about; a dome is left in peace', () => {
    expect(told(drain({ strainer: 'none' }), 'drain-no-strainer')?.level).toBe('fix');
    expect(told(drain({ strainer: 'flat' }), 'strainer-area-not-known')?.message).toContain('25.1 sq in');
    expect(sizeDrain(drain({ strainer: 'dome' })).findings).toEqual([]);
    expect(sizeDrain(drain()).findings).toEqual([]);
  });
});
