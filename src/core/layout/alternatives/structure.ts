import { sleeperFigures } from '../../../../reference/alternatives.ts';
import { feetInches, inches, plainNumber, slopeInWords } from '../../../units/print.ts';
import { readSag } from '../../drainage/read-sag.ts';
import { boardFeet, psf } from '../../report/page-figures.ts';
import type { Alternative } from '../../report/types.ts';
import { placeWords } from '../../report/words.ts';
import { type AlternativeFacts, alternative } from './facts.ts';

/** Sag under this is the error of reading it, or a deck as it is always built. */
const LEAST_SAG_IN = 0.5;
const LEAST_POND_SQ_FT = 10;

/** Plates under the high bearing that give a span its fall, whole ones. */
export const platesFor = (spanFt: number, slopeInPerFt: number): number =>
  Math.ceil((spanFt * slopeInPerFt) / sleeperFigures.plateIn - 1e-9);

/** Mending joists that sag, before anything is laid on them. */
export function structureFor({ site, existing, chosen }: AlternativeFacts): Alternative | null {
  const sag = site.measured.sag ?? readSag(site.measured.readings);
  const pond = existing.ponds.find(({ birdBath, areaSqFt }) => !birdBath && areaSqFt > LEAST_POND_SQ_FT);
  if (sag === null || sag.sagIn < LEAST_SAG_IN || pond === undefined || existing.edgeFirst) return null;
  const spanFt = site.roof.existing.sag?.spanFt ?? site.roof.deck.joists?.spanFt ?? null;
  const slope = site.given.faceInPerFt;
  const filled = chosen?.levellingBoardFt ?? 0;
  return alternative(
    'structure-first',
    `The surface hangs ${inches(sag.sagIn)}, ${placeWords(site.edges, sag.at)}, and water of ${psf(pond.greatestLoadPsf)} stands in it.`,
    [
      { name: 'to take out', value: `${inches(sag.sagIn)} of sag, as far as the engineer allows` },
      {
        name: 'bearing raised instead',
        value:
          spanFt === null
            ? 'not known: joist span'
            : `${inches(spanFt * slope)} at one end of a ${feetInches(spanFt)} span for ${slopeInWords(slope)}: ${plainNumber(platesFor(spanFt, slope))} plates of ${inches(sleeperFigures.plateIn)}`,
      },
      ...(filled > 0.5 ? [{ name: 'fill that falls away', value: `up to ${boardFeet(filled)}` }] : []),
    ],
  );
}
