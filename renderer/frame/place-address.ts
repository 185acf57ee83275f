// Where each thing that can be found is looked at.
import type { Place } from '../../app/shop/find.contract.ts';

export function addressOfPlace(place: Place) {
  switch (place.kind) {
    case 'job':
      return { to: '/jobs/$jobId', params: { jobId: String(place.jobId) } } as const;
    case 'part':
      return { to: '/stock/parts/$partId', params: { partId: String(place.partId) } } as const;
    case 'can':
      return {
        to: '/stock/plates/$outline',
        params: { outline: place.outline },
        search: { can: place.canId },
      } as const;
    case 'plate':
      return {
        to: '/stock/plates/$outline',
        params: { outline: place.outline },
        search: { plate: place.pieceId },
      } as const;
    case 'gauge':
      return { to: '/gauges/$gaugeId', params: { gaugeId: String(place.gaugeId) } } as const;
    case 'family':
      return { to: '/specs/$familyId', params: { familyId: String(place.familyId) } } as const;
  }
}
