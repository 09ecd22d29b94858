import { describe, expect, it } from 'vitest';
import { stationWeather } from '../../../reference/weather.ts';
import { townWeathers, weatherFor } from '../../../src/core/heat/place-weather.ts';

const place = (city: string | null, state: string | null, climateZone: string | null) => ({
  city,
  state,
  climateZone,
  rain: null,
  groundSnowPsf: null,
  californiaZone: null,
});

describe('design weather of a place', () => {
  it.each([
    ['Nashville, TN', null, 'Nashville'],
    ['st. louis', 'Missouri', 'St Louis'],
    ['Phoenix', null, 'Phoenix'],
  ])('%s is listed', (city, state, found) => {
    const { row, assumed } = weatherFor(place(city, state, '8'));
    expect(row.city).toBe(found);
    expect(assumed).toEqual([]);
  });

  it.each([
    ['a town of its state and zone', 'Redding', 'CA', '3B', 'Palm Springs'],
    ['its zone where the state has none of it', 'Taos', 'NM', '7', 'Duluth'],
    ['the number of the zone where it has no letter', 'Nowhere', null, '6', 'Helena'],
    ['its state where no zone is given', 'Odessa', 'TX', null, 'Austin'],
    ['a town in the middle where nothing is known', null, null, null, 'St Louis'],
  ])('falls back to %s and lists it', (_, city, state, zone, found) => {
    const { row, assumed } = weatherFor(place(city, state, zone));
    expect(row.city).toBe(found);
    expect(assumed).toHaveLength(1);
    expect(assumed[0].value).toContain(found);
    expect(assumed[0].findOut).not.toBeNull();
  });

  it('each town stands once, cold below hot, and standard time within an hour of its meridian', () => {
    expect(new Set(stationWeather.map(({ state, city }) => `${city}|${state}`)).size).toBe(stationWeather.length);
    for (const row of stationWeather) {
      expect(row.coldF).toBeLessThan(row.hotF);
      expect(row.hotWetBulbF).toBeLessThan(row.hotF);
      expect(Math.abs(row.lonDeg / 15 - row.utcOffsetH), row.city).toBeLessThan(1.01);
    }
  });

  it('each town has its winter', () => {
    expect(townWeathers).toHaveLength(stationWeather.length);
    for (const { winter, coldF } of townWeathers) expect(winter.januaryF).toBeGreaterThan(coldF);
  });

  // Sums pin the table: a digit that is changed by accident shows.
  it('adds up', () => {
    const sum = (of: (row: (typeof stationWeather)[number]) => number) => stationWeather.reduce((s, r) => s + of(r), 0);
    expect(stationWeather).toHaveLength(67);
    expect(sum((r) => r.hotF + r.hotWetBulbF + r.dailyRangeF + r.coldF)).toBeCloseTo(13_342.2, 6);
    expect(sum((r) => r.latDeg + r.lonDeg)).toBeCloseTo(-3981.38, 6);
  });
});
