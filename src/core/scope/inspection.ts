import { feetInches, inches } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { centroid, distanceFt, signedAreaSqFt } from '../geometry/vector.ts';
import type { InspectedFinding, Point } from '../report/types.ts';
import { areaWords, placeWords, sideWords, startWords } from '../report/words.ts';
import type { FoundBy, InspectionFinding } from '../roof.ts';
import type { Site } from '../site/site.ts';
import { kindRow } from './bearing.ts';
import { stretchOf } from './places.ts';

const foundWords: Readonly<Record<FoundBy, string>> = {
  eye: 'seen',
  probe: 'probed',
  core: 'core cut',
  scan: 'moisture scan',
  'from-below': 'seen from below',
};

function whereOf(finding: InspectionFinding, line: readonly [Point, Point] | null, { edges, roof }: Site): string {
  if (line !== null) {
    const side = finding.side ?? 0;
    const name = sideWords(edges, side);
    const whole = finding.fromFt === null && finding.toFt === null;
    return whole
      ? `all along the ${name}`
      : `${name}, ${feetInches(finding.fromFt ?? 0)} to ${feetInches(distanceFt(...line) + (finding.fromFt ?? 0))} from ${startWords(roof.outline, side)}`;
  }
  const spot = finding.at ?? (finding.outline === null ? null : centroid(finding.outline));
  return spot === null ? 'place not noted' : placeWords(edges, spot);
}

function extentOf({ outline, areaSqFt, sizeIn }: InspectionFinding, line: readonly [Point, Point] | null): string {
  const drawn = outline === null ? areaSqFt : Math.abs(signedAreaSqFt(outline));
  return [
    ...(line === null ? [] : [`${feetInches(distanceFt(...line))} along`]),
    ...(drawn === null ? [] : [areaWords(drawn)]),
    ...(sizeIn === null ? [] : [inches(sizeIn)]),
  ].join(', ');
}

/** The findings of the roof file in its own order, numbered from 1, with what each tells and what it does not. */
export function inspectionOf(site: Site): InspectedFinding[] {
  return site.roof.findings.map((finding, i) => {
    const row = kindRow(finding.kind);
    const { kind, at, outline, severity, foundBy, note, photos } = finding;
    const line = stretchOf(finding, site.roof.outline);
    return {
      number: i + 1,
      kind,
      title: row.title,
      where: whereOf(finding, line, site),
      at,
      outline,
      line,
      extent: extentOf(finding, line),
      severity,
      foundBy: foundBy === null ? null : foundWords[foundBy],
      tells: row.tells,
      tellsNot: row.tellsNot,
      note,
      photos,
      source: sourceNote(row),
    };
  });
}
