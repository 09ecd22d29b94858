import { describe, expect, it } from 'vitest';
import { type CaseRoof, caseRoof, caseRows, caseText, everythingSaid, findingIds, said } from './case-roof.ts';

// Cases C57 and C61 of the project's case collection, from their roof files; facts not stated there stay not known.

const covering = ({ answer }: CaseRoof, id: string) => answer.membranes.find((report) => report.id === id)!;
const place = ({ answer }: CaseRoof, id: string): number => answer.membranes.findIndex((report) => report.id === id);
const levelOf = ({ answer }: CaseRoof, id: string) => answer.findings.find((finding) => finding.id === id)?.level;

describe('C57: kitchen exhaust fan on the roof', () => {
  const roof = caseRoof('c57');
  const bitumen = ['sbs-self-adhered', 'sbs-self-adhered-cool', 'sbs-cold', 'sbs-torch', 'app-torch'];
  const rankLast = ['epdm-white', 'epdm-black', ...bitumen];

  caseRows('check values', [
    {
      key: 'rank_last: EPDM and modified bitumen behind PVC, either order',
      got: () => rankLast.every((id) => place(roof, id) > place(roof, 'pvc') && covering(roof, id).score === null),
      value: true,
      basis: 'P',
    },
    {
      key: 'containment_required',
      got: () => said(roof, 'grease').includes('fit a containment tray') && levelOf(roof, 'grease') === 'fix',
      value: true,
      basis: 'F',
    },
  ]);

  it('PVC may be used, with the caution; GREASE is said', () => {
    expect(covering(roof, 'pvc').veto).toBeNull();
    expect(findingIds(roof)).toContain('grease');
    expect(covering(roof, 'epdm-black').veto!.why).toContain('Grease or oil reaches this roof');
    expect(roof.answer.layouts.some(({ rejected }) => rejected === null)).toBe(true);
  });

  it('no sheet is called immune', () => {
    const immune = [everythingSaid(roof), ...roof.answer.membranes.map(({ plain }) => plain)]
      .join('\n')
      .match(/.{12}immune/g);
    expect(immune).toEqual([expect.stringContaining('no sheet is')]);
  });

  it('without grease EPDM is weighed again', () => {
    const dry = caseRoof('c57 without grease', caseText('c57').replace('"grease": true', '"grease": false'));
    expect(covering(dry, 'epdm-black').veto).toBeNull();
    expect(findingIds(dry)).not.toContain('grease');
  });
});

describe('C61: 38 F, self-adhered sheet, and a torch appears', () => {
  const roof = caseRoof('c61');

  caseRows('check values', [
    {
      key: 'below_min_temp',
      got: () =>
        ['sbs-self-adhered', 'sbs-self-adhered-cool'].every((id) => covering(roof, id).veto?.why.includes('50 F')),
      value: true,
      basis: 'P',
    },
    {
      key: 'change_needs_replan',
      got: () => said(roof, 'cold-application').includes('changing the method means planning the job again'),
      value: true,
      basis: 'F',
    },
  ]);

  it('fails for compatibility; COLD_APPLICATION, HOT_WORK and COMBUSTIBLE_DECK are said', () => {
    expect(findingIds(roof)).toEqual(
      expect.arrayContaining(['cold-application', 'hot-work-asked', 'combustible-deck']),
    );
    expect(levelOf(roof, 'combustible-deck')).toBe('stop');
    expect(said(roof, 'combustible-deck')).toContain('plank');
    expect(said(roof, 'hot-work-asked')).toContain('plan, price and cautions are made again first');
  });

  it('the torch is not offered as the way out of the cold', () => {
    expect(covering(roof, 'sbs-torch').veto).not.toBeNull();
    expect(roof.answer.chosenMembrane).not.toMatch(/torch/);
    expect(said(roof, 'wait-for-warmth')).toContain('would win on a warmer day (50 F and rising)');
    const words = [everythingSaid(roof), ...roof.answer.membranes.map(({ plain }) => plain)].join('\n');
    expect(words).not.toMatch(/torch(ed|ing)? (instead|may be used|is a way)/i);
  });

  it('at 70 F the self-adhered sheet is back, and the torch is still out', () => {
    const text = caseText('c61').replace('"workTemperatureF": 38', '"workTemperatureF": 70');
    const day = caseRoof('c61 at 70 F', text);
    expect(covering(day, 'sbs-self-adhered-cool').veto).toBeNull();
    expect(covering(day, 'sbs-torch').veto).not.toBeNull();
    expect(findingIds(day)).not.toContain('cold-application');
    expect(findingIds(day)).toContain('combustible-deck');
  });

  it('nobody asks for a torch: nothing is said of hot work', () => {
    const silent = caseRoof('c61 without the torch', caseText('c61').replace(', "membrane": "sbs-torch"', ''));
    expect(findingIds(silent)).not.toContain('hot-work-asked');
    expect(findingIds(silent)).toContain('cold-application');
  });
});
