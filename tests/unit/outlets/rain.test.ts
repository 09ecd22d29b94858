import { describe, expect, it } from 'vitest';
import { rainFor } from '../../../src/core/outlets/rain.ts';
import { findCity } from '../../../src/core/outlets/rain-city.ts';
import type { Rain } from '../../../src/core/roof.ts';
import { stateCode } from '../../../src/core/site/town.ts';
import { rules } from './rules.ts';

const irc = rules('irc-2021', 'ipc-2021');
const ibc2018 = rules('ibc-2018', 'ipc-2018');
const at = (city: string | null, state: string | null = null, rain: Rain | null = null) => ({
  city,
  state,
  rain,
  climateZone: null,
  groundSnowPsf: null,
  californiaZone: null,
});

describe('finding the town', () => {
  it.each([
    ['Birmingham', 'AL'],
    ['birmingham, al', null],
    ['BIRMINGHAM, Alabama', null],
    ['  Birmingham ', 'alabama'],
    ['Saint Louis, MO', null],
    ['St. Louis', 'MO'],
    ['Washington, D.C.', null],
  ])('%s / %s is listed', (city, state) => {
    expect(findCity(city, state).kind).toBe('listed');
  });

  it('knows postal codes and names, and no other text', () => {
    expect(stateCode('ny')).toBe('NY');
    expect(stateCode('New York')).toBe('NY');
    expect(stateCode('')).toBeNull();
    expect(stateCode('Ontario')).toBeNull();
  });
});

describe('design rain', () => {
  it('uses the listed rate, with its grade', () => {
    const rain = rainFor(at('Mobile, AL'), irc);
    expect(rain.primaryInPerHr).toBe(4.6);
    expect(rain.source.grade).toBe('found');
    expect(rain.assumed).toEqual([]);
    expect(rainFor(at('Denver, CO'), irc).source.grade).toBe('memory');
  });

  it('takes the greatest of the state for a town that is not listed, and says how to find out', () => {
    const rain = rainFor(at('Nowhere Junction, TX'), irc);
    expect(rain.primaryInPerHr).toBe(4.6);
    expect(rain.assumed).toHaveLength(1);
    expect(rain.assumed[0].because).toContain('Texas');
    expect(rain.assumed[0].findOut).toContain('precipitation-frequency');
  });

  it('takes the greatest of the states that share a name, and the greatest of the mainland for nothing at all', () => {
    expect(rainFor(at('Springfield'), irc).primaryInPerHr).toBe(3.4);
    expect(rainFor(at('Springfield'), irc).assumed[0].because).toContain('several states');
    expect(rainFor(at(null), irc).primaryInPerHr).toBe(4.8);
    expect(rainFor(at('Atlantis'), irc).assumed[0].because).toContain('could be placed');
  });

  it('overflow: twice the hourly rate where 15 minutes are asked for, the same rate under IBC 2018 with IPC', () => {
    expect(rainFor(at('Mobile, AL'), irc).overflowInPerHr).toBeCloseTo(9.2, 12);
    expect(rainFor(at('Mobile, AL'), ibc2018).overflowInPerHr).toBe(4.6);
    expect(rainFor(at('Mobile, AL'), ibc2018).overflowBasis).toContain('same hourly rate');
  });

  it('a local amendment wins over everything', () => {
    const fixed = rules('ibc-2018', 'ipc-2018', { rainInPerHr: 6 });
    const rain = rainFor(at('Dallas, TX', null, { inPerHr: 4.2, durationMin: 60, returnYears: 100 }), fixed);
    expect(rain.primaryInPerHr).toBe(6);
    expect(rain.overflowInPerHr).toBe(6);
  });
});

describe('own rain by duration', () => {
  const own = (inPerHr: number, durationMin: number | null, returnYears: number | null = 100, city = 'Mobile, AL') =>
    rainFor(at(city, null, { inPerHr, durationMin, returnYears }), irc);

  it('60 minutes is the primary rate', () => {
    expect(own(5, 60).primaryInPerHr).toBe(5);
    expect(own(5, 60).assumed).toEqual([]);
  });

  it('a bare number is taken as hourly, and both gaps are listed', () => {
    const rain = own(5, null, null);
    expect(rain.primaryInPerHr).toBe(5);
    expect(rain.assumed.map((each) => each.path)).toEqual(['place.rain.durationMin', 'place.rain.returnYears']);
  });

  it('15 minutes is the overflow rate; the primary stays with the town', () => {
    const rain = own(8.1, 15);
    expect(rain.primaryInPerHr).toBe(4.6);
    expect(rain.overflowInPerHr).toBe(8.1);
  });

  it('15 minutes in an unlisted town stands for the hour too, on the safe side', () => {
    const rain = own(8.1, 15, 100, 'Nowhere Junction, TX');
    expect(rain.primaryInPerHr).toBe(8.1);
    expect(rain.assumed[0].because).toContain('less than an hour');
  });

  it('30 minutes gives 15 by 4 x 0.72 x P30 (NSPC 2015, Appendix A)', () => {
    expect(own(5, 30).overflowInPerHr).toBeCloseTo(4 * 0.72 * 2.5, 12);
  });

  it('20 minutes says nothing sure of 15: twice the hourly rate', () => {
    expect(own(6, 20).overflowInPerHr).toBeCloseTo(9.2, 12);
  });

  it('5 minutes is the gutter rate, and may be of 10 years', () => {
    const rain = own(9, 5, 10);
    expect(rain.gutterInPerHr).toBe(9);
    expect(rain.gutterAssumed).toBeNull();
    expect(own(5, 60).gutterAssumed?.findOut).toContain('5 minutes');
    expect(rain.findings).toEqual([]);
    expect(own(9, 5, 5).findings.map((finding) => finding.id)).toEqual(['rain-return-too-short']);
  });

  it('a day of rain is not used, a ten-year rain is asked about', () => {
    const day = own(0.3, 1440);
    expect(day.primaryInPerHr).toBe(4.6);
    expect(day.findings.map((finding) => finding.id)).toEqual(['rain-duration-too-long']);
    expect(own(3, 60, 10).findings.map((finding) => finding.id)).toEqual(['rain-return-too-short']);
  });

  it('overflow and gutter rates are never under the primary one', () => {
    for (const durationMin of [null, 5, 10, 15, 20, 30, 45, 60, 120]) {
      const rain = own(1, durationMin);
      expect(rain.overflowInPerHr).toBeGreaterThanOrEqual(rain.primaryInPerHr);
      expect(rain.gutterInPerHr).toBeGreaterThanOrEqual(rain.primaryInPerHr);
    }
  });
});
